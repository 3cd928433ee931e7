/** Bars as people call them when they are played more than once. */

/** Which of the times that the same bar is played. */
export interface Pass {
  /** 1: the first. */
  readonly time: number;
  /** How often it is played in all. */
  readonly of: number;
}

const TIMES = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'] as const;

/** "bar 48"; "bar 48, second time" of one that is played more than once. */
export function barWords(label: string, pass: Pass | null): string {
  return pass === null || pass.of === 1 ? `bar ${label}` : `bar ${label}, ${timeWords(pass.time)}`;
}

function timeWords(time: number): string {
  return `${TIMES[time - 1] ?? `${time}th`} time`;
}

/**
 * For every bar of a performance, given by its index in the score: which time it is. Two bars of the same number, as in two
 * movements, are two bars.
 */
export function passesOf(played: ArrayLike<number>): Pass[] {
  const counts = new Map<number, number>();
  const times = Array.from(played, (bar) => {
    const time = (counts.get(bar) ?? 0) + 1;
    counts.set(bar, time);
    return { bar, time };
  });
  return times.map(({ bar, time }) => ({ time, of: counts.get(bar) ?? time }));
}
