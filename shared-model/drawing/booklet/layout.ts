/** Which panel, or which page of a panel, comes on which sheet, and where. */

import type { Panel, Strip } from '../../pages/bindings/strip.ts';
import type { Box } from '../primitives.ts';
import type { BookletOrder, PlacedPage, Size } from './order.ts';

/** What one sheet carries. */
export interface Piece {
  /** Index into the panels of the strip. */
  readonly panel: number;
  /** Places of the panel's pages on it, left to right as they are read. */
  readonly places: readonly number[];
}

export interface Layout {
  readonly perSheet: 'panel' | 'page';
  readonly sheet: Size;
  /** The same on every sheet: what is left when it is cut out. */
  readonly box: Box;
  /** Null: a sheet side that stays empty. */
  readonly pieces: readonly (Piece | null)[];
}

/** PDFs round their pages to whole points, so that A4 may be 0.04 mm higher than A4. */
const SLACK = 0.5;

/** Null: not even one page fits the paper. */
export function layoutOf(order: BookletOrder, strip: Strip): Layout | null {
  const across = strip.panels.reduce((most, { pages }) => Math.max(most, pages.length), 1);
  const whole = { width: across * order.page.width, height: order.page.height };
  for (const [perSheet, size] of [['panel', whole] as const, ['page', order.page] as const]) {
    const sheet = sheetFor(size, order.paper);
    if (sheet)
      return { perSheet, sheet, box: middleOf(sheet, size), pieces: piecesOf(order, strip, perSheet) };
  }
  return null;
}

/** The paper upright or across, whichever way round the piece is, if it goes on it. */
function sheetFor(piece: Size, { width, height }: Size): Size | null {
  const ways = [
    { width, height },
    { width: height, height: width },
  ];
  const likePiece = piece.width > piece.height ? ways.toReversed() : ways;
  return likePiece.find((way) => fits(piece, way)) ?? null;
}

function fits(piece: Size, sheet: Size): boolean {
  return piece.width <= sheet.width + SLACK && piece.height <= sheet.height + SLACK;
}

function middleOf(sheet: Size, { width, height }: Size): Box {
  return { x: (sheet.width - width) / 2, y: (sheet.height - height) / 2, width, height };
}

function piecesOf(
  { binding }: BookletOrder,
  { panels }: Strip,
  perSheet: Layout['perSheet'],
): (Piece | null)[] {
  const all = panels.flatMap((panel, index): Piece[] => {
    const places = panel.pages.map((_, place) => place);
    if (perSheet === 'panel') return [{ panel: index, places }];
    // One after the other as they lie on the flat strip.
    return (panel.upright ? places : places.toReversed()).map((place) => ({ panel: index, places: [place] }));
  });
  return binding.kind === 'book' ? frontsAndBacks(all, panels) : all;
}

/** Every sheet of a book has two sides; covers that nothing is printed in are left out. */
function frontsAndBacks(pieces: readonly Piece[], panels: readonly Panel[]): (Piece | null)[] {
  const printed = ({ panel }: Piece): boolean => panels[panel]?.pages.some((page) => page !== null) ?? false;
  const [front, back] = [pieces[0], pieces.at(-1)];
  const leaves = pieces.slice(1, -1);
  return [
    ...(front && printed(front) ? [null, front] : []),
    ...leaves,
    ...(back && printed(back) ? [back, null] : []),
  ];
}

/** The pages on a sheet, each in the middle of its room; blanks are left out. */
export function placedPages(
  order: BookletOrder,
  { pages, upright }: Panel,
  piece: Piece,
  box: Box,
): PlacedPage[] {
  return piece.places.flatMap((place, index) => {
    const ref = pages[place] ?? null;
    const size = ref && order.sizeOf(ref);
    if (!ref || !size) return [];
    const room = roomOf(order.page, upright, index, box);
    return [{ ref, ...size, ...corner(middleOf(room, size), room), turned: !upright }];
  });
}

function corner(inner: Box, room: Box): { readonly x: number; readonly y: number } {
  return { x: room.x + inner.x, y: room.y + inner.y };
}

/** Of the `index`th page of a piece as read, on its sheet. */
export function roomOf({ width, height }: Size, upright: boolean, index: number, box: Box): Box {
  const x = upright ? box.x + index * width : box.x + box.width - (index + 1) * width;
  return { x, y: box.y, width, height };
}
