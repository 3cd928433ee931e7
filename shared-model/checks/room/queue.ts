/** A priority queue of numbered things (binary heap): the one with the least key comes out first. */
export class LeastFirst {
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

  pop(): { readonly key: number; readonly item: number } | null {
    const [key, item] = [this.keys[0], this.items[0]];
    const [lastKey, lastItem] = [this.keys.pop(), this.items.pop()];
    if (key === undefined || item === undefined || lastKey === undefined || lastItem === undefined)
      return null;
    if (this.keys.length > 0) this.sink(lastKey, lastItem);
    return { key, item };
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
