/** Whether players who typed a table each go through the same bars in the same order. */

import { compare } from '../fraction.ts';
import { MOST_BARS } from '../limits.ts';
import { Refusal } from '../problem.ts';
import type { Entry } from './entries.ts';
import type { TablePlayer } from './part-table.ts';

export interface Played {
  /** As printed. */
  readonly number: number;
  readonly entry: Entry;
}

/** Throws `Refusal` beyond what music can have. */
export function playedOf(entries: readonly Entry[]): Played[] {
  const count = entries.reduce((sum, { first, last }) => sum + last - first + 1, 0);
  if (count > MOST_BARS) throw new Refusal({ code: 'score.tooLarge', what: 'bars', most: MOST_BARS });
  return entries.flatMap((entry) =>
    Array.from({ length: entry.last - entry.first + 1 }, (_, index) => ({
      number: entry.first + index,
      entry,
    })),
  );
}

/** Throws `Refusal` at the first bar in which `player` differs from one of those before. */
export function checkSameBars(before: readonly TablePlayer[], player: TablePlayer): void {
  const [first] = before;
  if (!first) return;
  const { played } = player;
  for (const [index, { number, entry }] of played.entries()) {
    const other = first.played[index];
    if (other && other.number !== number)
      throw new Refusal({
        code: 'tables.order',
        row: entry.row,
        bar: number,
        other: { name: first.name, row: other.entry.row, bar: other.number },
      });
    for (const { name, played: theirs } of before) checkBeats(entry, number, { name, there: theirs[index] });
  }
  if (played.length === first.played.length) return;
  throw new Refusal({
    code: 'tables.count',
    bars: played.length,
    other: { name: first.name, bars: first.played.length },
  });
}

function checkBeats(
  { beats, row }: Entry,
  bar: number,
  { name, there }: { readonly name: string; readonly there: Played | undefined },
): void {
  const theirs = there?.entry.beats;
  if (!beats || !theirs || compare(beats, theirs) === 0) return;
  const other = { name, row: there.entry.row, beats: theirs.n / theirs.d };
  throw new Refusal({ code: 'tables.beats', row, bar, beats: beats.n / beats.d, other });
}
