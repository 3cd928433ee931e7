/** Names over the heads that are to be seen, as far as they find room. */

import type { Point } from '../../document/records.ts';
import { textBox } from '../bounds.ts';
import { createOccupancy, type Occupancy } from '../occupancy.ts';
import { line } from '../outline.ts';
import { boxesAlong } from '../plan/line-boxes.ts';
import type { Box, Primitive, TextPrimitive } from '../primitives.ts';
import { ASCENT, LEADING, TEXT, WEIGHT } from '../style.ts';
import { fitted, textLine } from '../text.ts';
import type { ViewContext } from './context.ts';
import type { Head } from './heads.ts';

/**
 * Names right over their heads come first, the nearest player's before the others; then those that have to stand elsewhere, with
 * a line to the head that passes by every other name and head. A name that finds no room is left out.
 */
export function namesOver(context: ViewContext, heads: readonly Head[]): Primitive[] {
  const taken = createOccupancy(heads.map(({ box }) => box));
  const drawn: Primitive[] = [];
  const apart: Head[] = [];
  for (const head of heads.filter(({ seen }) => seen).toSorted((a, b) => a.depth - b.depth)) {
    const name = rightOver(context, head, taken);
    if (name) drawn.push(name);
    else apart.push(head);
  }
  return [...drawn, ...apart.flatMap((head) => elsewhere(context, head, taken))];
}

const GAP = 1.2;
const LONGEST = 45;
/** Lines that a name may be put higher when others are in its way. */
const MOST_LINES_UP = 7;
/** And to the sides of its head, in shares of its own width. */
const ASIDE = [0, -0.5, 0.5, -1, 1, -1.6, 1.6];

const LOOK = { size: TEXT.body, weight: 'bold', anchor: 'middle' } as const;

function rightOver(context: ViewContext, head: Head, taken: Occupancy): TextPrimitive | null {
  const name = nameAt(context, head, { lines: 0, aside: 0 });
  if (!name || taken.isTaken(textBox(name, context.measure))) return null;
  taken.take(textBox(name, context.measure));
  return name;
}

function elsewhere(context: ViewContext, head: Head, taken: Occupancy): Primitive[] {
  for (let lines = 1; lines <= MOST_LINES_UP; lines++) {
    for (const aside of ASIDE) {
      const name = nameAt(context, head, { lines, aside });
      if (!name) continue;
      const room = textBox(name, context.measure);
      const ends = leaderEnds(room, head.box);
      const along = boxesAlong(...ends);
      if ([room, ...along].some((box) => taken.isTaken(box))) continue;
      for (const box of [room, ...along]) taken.take(box);
      const stroke = { colour: context.palette.ink, width: WEIGHT.hair };
      return [{ kind: 'path', path: line(...ends), stroke }, name];
    }
  }
  return [];
}

interface Spot {
  /** Higher than right over the head. */
  readonly lines: number;
  readonly aside: number;
}

/** Within the picture; null: there is no name, or no room so far up. */
function nameAt(
  { palette, measure, width }: ViewContext,
  { player, box }: Head,
  spot: Spot,
): TextPrimitive | null {
  const words = fitted(player.name, LONGEST, LOOK, measure);
  const y = box.y - GAP - spot.lines * LOOK.size * LEADING;
  if (words === '' || y < LOOK.size * ASCENT) return null;
  const half = measure(words, LOOK.size, LOOK.weight) / 2;
  const middle = box.x + box.width / 2 + spot.aside * 2 * half;
  const x = Math.max(half + GAP, Math.min(width - half - GAP, middle));
  return textLine(words, { x, y }, { ...LOOK, colour: palette.ink });
}

/** From under the name, as near as may be to over the head, down to the head. */
function leaderEnds(room: Box, head: Box): [Point, Point] {
  const middle = head.x + head.width / 2;
  const x = Math.max(room.x + 1, Math.min(room.x + room.width - 1, middle));
  return [
    { x, y: room.y + room.height + GAP / 2 },
    { x: middle, y: head.y - GAP / 2 },
  ];
}
