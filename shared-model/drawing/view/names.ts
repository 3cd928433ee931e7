/** Names over the heads that are to be seen, as far as they find room. */

import { textBox } from '../bounds.ts';
import { createOccupancy, type Occupancy } from '../occupancy.ts';
import { line } from '../outline.ts';
import type { Primitive } from '../primitives.ts';
import { ASCENT, LEADING, TEXT, WEIGHT } from '../style.ts';
import { fitted, textLine } from '../text.ts';
import type { ViewContext } from './context.ts';
import type { Head } from './heads.ts';

/** The nearest player's name comes first; a name that finds no room is left out. */
export function namesOver(context: ViewContext, heads: readonly Head[]): Primitive[] {
  const taken = createOccupancy(heads.map(({ box }) => box));
  return heads
    .filter(({ seen }) => seen)
    .toSorted((a, b) => a.depth - b.depth)
    .flatMap((head) => nameOver(context, head, taken));
}

const GAP = 1.2;
const LONGEST = 45;
/** Lines that a name may be put higher when others are in its way. */
const MOST_LINES_UP = 4;

/** Right over the head, or some lines higher with a line down to it. */
function nameOver(context: ViewContext, { player, box }: Head, taken: Occupancy): Primitive[] {
  const { palette, measure, width } = context;
  const look = { size: TEXT.body, weight: 'bold', colour: palette.ink, anchor: 'middle' } as const;
  const words = fitted(player.name, LONGEST, look, measure);
  if (words === '') return [];
  const half = measure(words, look.size, look.weight) / 2;
  const middle = box.x + box.width / 2;
  const x = Math.max(half + GAP, Math.min(width - half - GAP, middle));
  for (let lines = 0; lines <= MOST_LINES_UP; lines++) {
    const y = box.y - GAP - lines * look.size * LEADING;
    if (y < look.size * ASCENT) return [];
    const text = textLine(words, { x, y }, look);
    const room = textBox(text, measure);
    if (taken.isTaken(room)) continue;
    taken.take(room);
    return lines === 0 ? [text] : [leader(context, middle, [y + GAP, box.y - GAP / 2]), text];
  }
  return [];
}

function leader({ palette }: ViewContext, x: number, [from, to]: readonly [number, number]): Primitive {
  const path = line({ x, y: from }, { x, y: to });
  return { kind: 'path', path, stroke: { colour: palette.ink, width: WEIGHT.hair } };
}
