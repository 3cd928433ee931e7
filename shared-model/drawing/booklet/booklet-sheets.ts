/** A booklet as sheets to print: its panels in strip order at true size with all marks, then how to put it together. */

import { stripOf, type Strip } from '../../pages/bindings/strip.ts';
import { atMost } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import type { Primitive } from '../primitives.ts';
import { grouped } from '../sheet/blocks.ts';
import { TEXT } from '../style.ts';
import { fitted, oneLine, textLine } from '../text.ts';
import { assemblyMarks } from './assembly-marks.ts';
import { assemblySheets } from './assembly.ts';
import { blankPage } from './blank-page.ts';
import { layoutOf, placedPages, roomOf, type Layout, type Piece } from './layout.ts';
import { onHead } from './on-head.ts';
import type { BookletOrder, BookletRefusal, BookletSheet, BookletSheets, Size } from './order.ts';
import { readerMarks } from './reader-marks.ts';

export type {
  BookletOrder,
  BookletRefusal,
  BookletSheet,
  BookletSheets,
  NamedSize,
  PlacedPage,
  Size,
} from './order.ts';

const COVER_MARGIN = 14;

/** Refused when the paper is smaller than a page. */
export function bookletSheets(order: BookletOrder): BookletSheets | BookletRefusal {
  const strip = stripOf(order.binding);
  const layout = layoutOf(order, strip);
  if (!layout) return doesNotFit(order);
  const { pieces, perSheet } = layout;
  const printed = pieces.map((piece, index) =>
    pieceSheet(order, { strip, layout, piece, number: index + 1 }),
  );
  const how = assemblySheets(order, strip, layout).map((sheet) => ({ sheet, pages: [] }));
  return { ok: true, sheets: [...printed, ...how], printed: printed.length, perSheet };
}

function doesNotFit({ page, paper }: BookletOrder): BookletRefusal {
  const sides = ({ width, height }: Size): string => `${tenths(width)} x ${tenths(height)} mm`;
  return {
    ok: false,
    code: 'booklet.doesNotFit',
    message: t`A page of ${sides(page)} does not go on ${paper.name} (${sides(paper)}) at its true size: choose a larger paper.`,
  };
}

function tenths(length: number): string {
  return atMost(Math.round(length * 10) / 10, 1);
}

interface OneSheet {
  readonly strip: Strip;
  readonly layout: Layout;
  readonly piece: Piece | null;
  readonly number: number;
}

function pieceSheet(order: BookletOrder, { strip, layout, piece, number }: OneSheet): BookletSheet {
  const panel = piece && strip.panels[piece.panel];
  if (!piece || !panel) {
    const title = oneLine(t`${order.title}: sheet ${number}, outside of a cover`);
    const children = coverWords(order, layout, number === 1 ? 'front' : 'back');
    return { sheet: { title, ...layout.sheet, children }, pages: [] };
  }
  const title = oneLine(t`${order.title}: sheet ${number}, panel ${panel.name}`);
  const { box } = layout;
  const forReader = [...blanks(order, panel, piece, layout), ...readerMarks(order, panel, piece, box)];
  // One paragraph for each of the two that they are for: a tag for every note would double the file's objects.
  const children = [
    grouped('paragraph', panel.upright ? forReader : onHead(forReader, box)),
    grouped('paragraph', assemblyMarks(order, { strip, layout, piece, number })),
  ];
  return {
    sheet: { title, ...layout.sheet, children },
    pages: placedPages(order, panel, piece, box),
  };
}

/** The outside of a book has no music: without a word it would be taken for a misprint, and thrown away. */
function coverWords({ title, tools }: BookletOrder, { box }: Layout, cover: 'front' | 'back'): Primitive[] {
  const words =
    cover === 'front'
      ? t`Front cover: leave blank; the first page is on its back`
      : t`Back cover: leave blank; the last page is on its other side`;
  const spot = { x: box.x + box.width / 2, anchor: 'middle' as const };
  const width = box.width - 2 * COVER_MARGIN;
  const lines = [
    { words: title, type: { size: TEXT.title, weight: 'bold' as const }, y: box.y + box.height * 0.3 },
    { words, type: { size: TEXT.body, weight: 'regular' as const }, y: box.y + box.height * 0.3 + 8 },
  ];
  return [
    grouped(
      'paragraph',
      lines.map(({ words: line, type, y }) =>
        textLine(
          fitted(line, width, type, tools.measure),
          { ...spot, y },
          { ...type, ...spot, colour: tools.palette.ink },
        ),
      ),
    ),
  ];
}

/** Drawn as they are read; what stands on its head is turned as a whole afterwards. */
function blanks(
  order: BookletOrder,
  { pages, side }: Strip['panels'][number],
  { places }: Piece,
  { box }: Layout,
): Primitive[] {
  return places.flatMap((place, index) => {
    const ref = pages[place] ?? null;
    if (!ref || order.sizeOf(ref)) return [];
    return blankPage(ref, order.players[side] ?? '', roomOf(order.page, true, index, box), order.tools);
  });
}
