/** Whether music that is opened is the piece that was there before, be it in another state. */

import type { Music } from '../document/music.ts';
import { isTyped, isTypedPart } from '../score/table/part-table.ts';

/**
 * Pages and PDFs say nothing about another piece, even where its bars have the same numbers. Pieces go by their titles; where
 * one of them has none, by all their bars, and where titles differ by all their rests, too. Music typed as tables knows
 * its bars' numbers only.
 */
export function isSamePiece(old: Music, opened: Music): boolean {
  const [title, other] = [titleOf(old), titleOf(opened)];
  if (isTyped(old) !== isTyped(opened)) return hasAllNumbers(old, opened);
  if (title === '' || other === '') return hasAllBars(old, opened);
  return title === other || (hasAllBars(old, opened) && hasAllRests(old, opened));
}

function titleOf({ title }: Music): string {
  return title.trim().toLowerCase();
}

/** However finely each of them divides a quarter. */
export function hasAllBars(old: Music, opened: Music): boolean {
  return (
    hasAllNumbers(old, opened) &&
    old.bars.every(
      ({ ticks }, bar) =>
        ticks * opened.ticksPerQuarter === (opened.bars[bar]?.ticks ?? -1) * old.ticksPerQuarter,
    )
  );
}

/** Of the parts that were not typed beside the score. */
function hasAllRests(old: Music, opened: Music): boolean {
  const restsOf = ({ parts }: Music): string =>
    JSON.stringify(parts.filter((part) => !isTypedPart(part)).map(({ silences }) => silences));
  return old.ticksPerQuarter === opened.ticksPerQuarter && restsOf(old) === restsOf(opened);
}

function hasAllNumbers(old: Music, opened: Music): boolean {
  return (
    old.bars.length === opened.bars.length &&
    old.bars.every(({ number }, bar) => opened.bars[bar]?.number === number)
  );
}
