/**
 * Cards on sheets: about as large as A5 or half a Letter sheet, so that two come of an A4 and four of an A3 (common practice, no
 * source). They share their edges, so that one cut parts two of them.
 */

import type { Size } from '../booklet/order.ts';
import { line } from '../outline.ts';
import type { Palette } from '../palette.ts';
import type { Box, Primitive } from '../primitives.ts';
import { DASH, WEIGHT } from '../style.ts';

export interface CardGrid {
  readonly sheet: Size;
  /** The cards of a sheet, row by row. */
  readonly cards: readonly Box[];
}

/** Of A5 upright; a card comes out as near to it as the paper allows. */
const WANTED = 148;

const WAYS = [
  { across: 1, down: 1, lying: false },
  { across: 2, down: 1, lying: true },
  { across: 2, down: 2, lying: false },
  { across: 4, down: 2, lying: true },
];

export function cardGrid(paper: Size): CardGrid {
  const grids = WAYS.map(({ across, down, lying }) => {
    const sheet = lying
      ? { width: paper.height, height: paper.width }
      : { width: paper.width, height: paper.height };
    return { sheet, across, down };
  });
  const off = ({ sheet, across }: (typeof grids)[number]): number => Math.abs(sheet.width / across - WANTED);
  const { sheet, across, down } = grids.reduce((best, grid) => (off(grid) < off(best) ? grid : best));
  const [width, height] = [sheet.width / across, sheet.height / down];
  const cards = Array.from({ length: across * down }, (_, index) => ({
    x: (index % across) * width,
    y: Math.floor(index / across) * height,
    width,
    height,
  }));
  return { sheet, cards };
}

/** Between the cards. */
export function cutLines({ sheet, cards }: CardGrid, { faint }: Palette): Primitive[] {
  const inside = (places: readonly number[]) => [...new Set(places)].filter((place) => place > 0);
  const lines = [
    ...inside(cards.map(({ x }) => x)).map((x) => line({ x, y: 0 }, { x, y: sheet.height })),
    ...inside(cards.map(({ y }) => y)).map((y) => line({ x: 0, y }, { x: sheet.width, y })),
  ];
  const stroke = { colour: faint, width: WEIGHT.thin, dash: DASH.dashed };
  return lines.map((path) => ({ kind: 'path', path, stroke }));
}
