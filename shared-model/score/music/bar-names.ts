/** Bars as people name them: by the printed number, or as "#14", the fourteenth bar of the file, counted from 1. */

import type { Music } from '../music.ts';
import { Refusal } from '../problem.ts';

/** Index of the bar. Throws `Refusal` for a number that no bar, or more than one, prints. */
export function barNamed(music: Music, name: string, what: string): number {
  const wanted = name.trim();
  const bad = (advice: string) =>
    new Refusal({ code: 'typed.bad', what, given: name.trim().slice(0, 60), advice });
  const ordinal = /^#(\d{1,6})$/.exec(wanted)?.[1];
  if (ordinal !== undefined) {
    const index = Number(ordinal) - 1;
    if (index >= 0 && index < music.bars.length) return index;
    throw bad(`the score has bars #1 to #${music.bars.length}`);
  }
  const found = music.bars.flatMap(({ number }, index) => (number === wanted ? [index] : []));
  const [only, another] = found;
  if (only === undefined) throw bad('no bar has that number; #1 is the first bar of the file');
  if (another === undefined) return only;
  const ordinals = found.slice(0, 6).map((index) => `#${index + 1}`);
  throw bad(`${found.length} bars have that number; write which: ${ordinals.join(', ')}`);
}
