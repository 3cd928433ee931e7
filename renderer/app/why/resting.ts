/**
 * When words about a control come and go. They wait until the pointer rests, come at once where others have just been,
 * stay while the pointer is on the control or on themselves, and go when it is used.
 */

export interface Pace {
  /** Milliseconds until words come. */
  readonly rest: number;
  /** Milliseconds for the pointer's way from the control to its words; also how long the next ones come at once. */
  readonly leave: number;
}

export const PACE: Pace = { rest: 500, leave: 220 };

export class Resting<T> {
  readonly #show: (on: T | null) => void;
  readonly #pace: Pace;
  #on: T | null = null;
  #next: T | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(show: (on: T | null) => void, pace = PACE) {
    this.#show = show;
    this.#pace = pace;
  }

  get isShown(): boolean {
    return this.#on !== null;
  }

  /** The pointer or the focus is on it now; null: on nothing that has words. */
  over(thing: T | null): void {
    if (thing === this.#next) return;
    this.#next = thing;
    clearTimeout(this.#timer);
    if (thing === this.#on) return;
    if (thing === null) this.#timer = setTimeout(() => this.gone(), this.#pace.leave);
    else if (this.isShown) this.#tell(thing);
    else this.#timer = setTimeout(() => this.#tell(thing), this.#pace.rest);
  }

  /** The pointer is on the words: they stay. */
  stay(): void {
    this.over(this.#on);
  }

  /** Put away, or what they were about is being used: not again before something else was pointed at. */
  gone(): void {
    clearTimeout(this.#timer);
    if (this.#on !== null) this.#tell(null);
  }

  #tell(thing: T | null): void {
    this.#on = thing;
    this.#show(thing);
  }
}
