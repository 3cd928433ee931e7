/** A priority queue of things numbered from 0 (binary heap): the one with the least key comes out first. */
export class LeastFirst {
  /** Of what was taken out last. */
  lastKey = NaN;
  private readonly keys: number[] = [];
  private readonly items: number[] = [];

  push(key: number, item: number): void {
    let at = this.keys.length;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      if (this.keyAt(parent) <= key) break;
      this.move(parent, at);
      at = parent;
    }
    this.keys[at] = key;
    this.items[at] = item;
  }

  /** The item that is next, its key in `lastKey`; -1 when there is none. */
  pop(): number {
    const item = this.items[0];
    const last = this.items.pop();
    const key = this.keys.pop();
    if (item === undefined || last === undefined || key === undefined) return -1;
    this.lastKey = this.keys[0] ?? key;
    if (this.keys.length > 0) this.sink(key, last);
    return item;
  }

  /** Puts the entry in at the top and lets smaller children rise past it. */
  private sink(key: number, item: number): void {
    let at = 0;
    for (;;) {
      const left = 2 * at + 1;
      if (left >= this.keys.length) break;
      const child = this.keyAt(left + 1) < this.keyAt(left) ? left + 1 : left;
      if (this.keyAt(child) >= key) break;
      this.move(child, at);
      at = child;
    }
    this.keys[at] = key;
    this.items[at] = item;
  }

  private keyAt(index: number): number {
    return this.keys[index] ?? Infinity;
  }

  private move(from: number, to: number): void {
    this.keys[to] = this.keyAt(from);
    this.items[to] = this.items[from] ?? 0;
  }
}
