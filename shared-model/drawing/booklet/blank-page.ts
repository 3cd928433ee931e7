/** What is printed in place of a page of which there is no PDF: its number, so that the booklet can be tried and filled later. */

import type { PageRef } from '../../pages/bindings/binding.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import { t } from '../../words/say.ts';
import { rectangle } from '../outline.ts';
import type { Box, Primitive } from '../primitives.ts';
import { grouped, type TextTools } from '../sheet/blocks.ts';
import { TEXT, WEIGHT } from '../style.ts';
import { fitted, textLine } from '../text.ts';

/** Clear of the words at the edges. */
const INSET = 14;
const NUMBER_SIZE = 60;

/** Upright in `room`. */
export function blankPage(
  ref: PageRef,
  whose: string,
  room: Box,
  { palette, measure }: TextTools,
): Primitive[] {
  const middle = room.x + room.width / 2;
  const frame = {
    x: room.x + INSET,
    y: room.y + INSET,
    width: room.width - 2 * INSET,
    height: room.height - 2 * INSET,
  };
  const size = Math.min(NUMBER_SIZE, frame.height / 3, frame.width / 3);
  const name = fitted(whose, frame.width - 8, { size: TEXT.title, weight: 'regular' }, measure);
  const baseline = room.y + room.height * 0.56;
  const look = { anchor: 'middle' as const, colour: palette.ink };
  return [
    { kind: 'path', path: rectangle(frame), stroke: { colour: palette.hairline, width: WEIGHT.medium } },
    underline({ x: middle, y: baseline + size * 0.16 }, size, palette.ink),
    grouped('paragraph', [
      textLine(
        name,
        { x: middle, y: room.y + room.height * 0.3 },
        { ...look, size: TEXT.title, weight: 'regular' },
      ),
      textLine(String(ref.page), { x: middle, y: baseline }, { ...look, size, weight: 'bold' }),
      textLine(
        t`no PDF of this page: paste it here`,
        { x: middle, y: room.y + room.height * 0.66 },
        {
          ...look,
          size: TEXT.body,
          weight: 'regular',
          colour: palette.faint,
        },
      ),
    ]),
  ];
}

/** On a panel that stands on its head a 6 would be taken for a 9. */
function underline({ x, y }: Vec2, size: number, colour: string): Primitive {
  const bar = { x: x - size * 0.35, y, width: size * 0.7, height: size * 0.04 };
  return { kind: 'path', path: rectangle(bar), fill: colour };
}
