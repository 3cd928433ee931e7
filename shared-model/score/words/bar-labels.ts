/** How a bar of a piece is named, wherever its number alone would not tell which one it is. */

import type { Music } from '../music.ts';
import { movementOf } from '../music/bar-names.ts';
import { t } from '../../words/say.ts';
import { withoutMovement } from './movement-words.ts';

/**
 * By index: "12"; "12 of movement 2" where the number stands in several movements; "#14", the fourteenth bar of the file,
 * where there is none, or where it stands twice in one.
 */
export function barLabels(music: Pick<Music, 'bars' | 'movements'>): (bar: number) => string {
  const numberOf = (bar: number): string => music.bars[bar]?.number ?? '';
  const inMovement = (bar: number): string => `${movementOf(music, bar)} ${numberOf(bar)}`;
  const indices = music.bars.map((_, bar) => bar);
  const [anywhere, near] = [countsOf(indices.map(numberOf)), countsOf(indices.map(inMovement))];
  return (bar) => {
    const number = numberOf(bar);
    if (number === '') return `#${bar + 1}`;
    if (anywhere.get(number) === 1) return number;
    return near.get(inMovement(bar)) === 1
      ? t`${number} of movement ${movementOf(music, bar) + 1}`
      : `#${bar + 1}`;
  };
}

function countsOf(keys: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return counts;
}

/** Of two labels: "3", "3 to 4", "3 to 4 of movement 2". */
export function labelRange(first: string, last: string): string {
  if (first === last) return first;
  const { bar, movement } = withoutMovement(first);
  const isOne = movement !== null && withoutMovement(last).movement === movement;
  return t`${isOne ? bar : first} to ${last}`;
}

/** "bar 3", "bars 3 to 4 of movement 2" */
export function labelsWords(first: string, last: string): string {
  const range = labelRange(first, last);
  return first === last ? t`bar ${range}` : t`bars ${range}`;
}
