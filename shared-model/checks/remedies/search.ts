/** Finds how little is enough, in few trials. */

export interface Steps {
  /** Amounts that are tried first: its multiples, up to `most`. */
  readonly coarse: number;
  /** Amounts are round to this; `coarse` is a multiple of it. */
  readonly fine: number;
  readonly most: number;
}

export interface Found<Way> {
  readonly way: Way;
  readonly amount: number;
}

/**
 * The smallest amount found, over all ways, that passes: all ways are tried a coarse step farther at a time, and where
 * one passes the step is halved down to a fine one. So the fine step before the amount found does not pass. A way that
 * passes, fails and passes again within one coarse step may pass a little earlier than found. Null: none passes.
 */
export function smallestChange<Way>(
  ways: readonly Way[],
  { coarse, fine, most }: Steps,
  passes: (way: Way, amount: number) => boolean,
): Found<Way> | null {
  const last = Math.floor(most / fine);
  const stride = Math.max(1, Math.round(coarse / fine));
  for (let below = 0; below < last; below += stride) {
    const best = nearestWithin(ways, [below, Math.min(below + stride, last)], (way, step) =>
      passes(way, step * fine),
    );
    if (best) return { way: best.way, amount: best.amount * fine };
  }
  return null;
}

/** Of the ways that pass at `high` (and are taken not to at `low`) the one that passes first; whole steps. */
function nearestWithin<Way>(
  ways: readonly Way[],
  [low, high]: readonly [number, number],
  passes: (way: Way, step: number) => boolean,
): Found<Way> | null {
  let best: Found<Way> | null = null;
  for (const way of ways) {
    // A later way has to be better, not equal.
    const ceiling: number = best ? best.amount - 1 : high;
    if (ceiling <= low || !passes(way, ceiling)) continue;
    best = { way, amount: firstPassing([low, ceiling], (step) => passes(way, step)) };
  }
  return best;
}

/**
 * The step that passes, with one before it that does not: halves the gap between `low`, which is taken to fail, and
 * `high`, which passes, until they are neighbours.
 */
export function firstPassing(
  [low, high]: readonly [number, number],
  passes: (step: number) => boolean,
): number {
  let [fails, works] = [low, high];
  while (works - fails > 1) {
    const middle = (fails + works) >> 1;
    if (passes(middle)) works = middle;
    else fails = middle;
  }
  return works;
}
