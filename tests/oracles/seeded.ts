/** Random numbers that are the same on every run: mulberry32 (Tommy Ettinger, public domain). */

export interface Dice {
  /** Evenly in from..to. */
  between(from: number, to: number): number;
  /** A whole number in from..to, both included. */
  whole(from: number, to: number): number;
  /** True with a probability. */
  chance(probability: number): boolean;
  pick<T>(items: readonly T[]): T;
}

export function diceOf(seed: number): Dice {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  const between = (from: number, to: number): number => from + (to - from) * next();
  return {
    between,
    whole: (from, to) => Math.floor(between(from, to + 1)),
    chance: (probability) => next() < probability,
    pick: (items) => {
      const item = items[Math.floor(next() * items.length)];
      if (item === undefined) throw new Error('nothing to pick from');
      return item;
    },
  };
}
