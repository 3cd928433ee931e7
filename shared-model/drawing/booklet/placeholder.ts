/** What stands for a page of a part where only the sheet is shown and not what is printed on it: its frame and its number. */

import { rectangle } from '../outline.ts';
import type { Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { textLine } from '../text.ts';
import type { TextTools } from '../sheet/blocks.ts';
import { onHead } from './on-head.ts';
import type { PlacedPage } from './order.ts';

/** Of its number, as a share of the page's width. */
const NUMBER = 0.28;

export function placeholder(page: PlacedPage, { palette }: TextTools): Primitive[] {
  const { ref, width, height, x, y, turned } = page;
  const stroke = { colour: palette.hairline, width: WEIGHT.medium };
  const size = NUMBER * Math.min(width, height);
  const spot = { x: x + width / 2, y: y + height / 2 + size / 3 };
  const look = { size, weight: 'bold', colour: palette.hairline, anchor: 'middle' } as const;
  const drawn: Primitive[] = [
    { kind: 'path', path: rectangle(page), fill: palette.paper, stroke },
    textLine(String(ref.page), spot, look),
  ];
  return turned ? onHead(drawn, page) : drawn;
}
