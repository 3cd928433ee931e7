/** Entries of a cue card: on the left when or which mark, then the words, on the right the pages as they lie before him. */

import { line, rectangle } from '../outline.ts';
import type { Primitive } from '../primitives.ts';
import { grouped, linesOfText, type Block, type Spot, type TextTools } from '../sheet/blocks.ts';
import { ASCENT, CAP_HEIGHT, DASH, LEADING, TEXT, WEIGHT } from '../style.ts';
import { textLine, wrapped, type Type } from '../text.ts';
import type { Shown } from './moments.ts';

const WORDS: Type = { size: TEXT.body, weight: 'regular' };
const BOLD: Type = { size: TEXT.body, weight: 'bold' };
const SMALL: Type = { size: TEXT.small, weight: 'regular' };
const PAD = 1.1;
const GAP = 2;

export interface Columns {
  readonly width: number;
  /** Of the first column. */
  readonly left: number;
  /** Of the pages; 0: there are none. */
  readonly right: number;
}

export interface Entry {
  readonly left: readonly string[];
  readonly words: string;
  readonly more: readonly string[];
  readonly warning: string | null;
  readonly shown: readonly Shown[];
}

export function entryBlock(entry: Entry, columns: Columns, tools: TextTools, header?: Block): Block {
  const { palette, measure } = tools;
  const middle = columns.width - columns.left - GAP - (columns.right > 0 ? columns.right + GAP : 0);
  const left = entry.left.map((words, index) => ({ words, type: index === 0 ? BOLD : WORDS }));
  const said = [
    ...(entry.words === '' ? [] : wrapped(entry.words, middle, BOLD, measure)).map((words) => ({
      words,
      type: BOLD,
    })),
    ...entry.more
      .flatMap((text) => wrapped(text, middle, WORDS, measure))
      .map((words) => ({ words, type: WORDS })),
    ...(entry.warning === null
      ? []
      : wrapped(`! ${entry.warning}`, middle, BOLD, measure).map((words) => ({
          words,
          type: BOLD,
          colour: palette.warning,
        }))),
  ];
  const pages = pageRows(entry.shown, columns.right);
  const lines = Math.max(left.length, said.length) * TEXT.body * LEADING;
  const height = Math.max(lines, pages.height) + 2 * PAD;
  const column = (texts: readonly { words: string; type: Type; colour?: string }[], at: Spot) =>
    texts.flatMap(({ words, type, colour = palette.ink }, index) =>
      linesOfText([words], { x: at.x, y: at.y + index * TEXT.body * LEADING }, { ...type, colour }),
    );
  return {
    height,
    ...(header ? { header } : {}),
    draw: ({ x, y }) => [
      grouped('row', [
        grouped('cell', column(left, { x, y: y + PAD })),
        grouped('cell', column(said, { x: x + columns.left + GAP, y: y + PAD })),
        grouped('cell', pages.draw({ x: x + columns.width - columns.right, y: y + PAD }, tools)),
      ]),
      {
        kind: 'path',
        path: line({ x, y: y + height }, { x: x + columns.width, y: y + height }),
        stroke: { colour: palette.hairline, width: WEIGHT.hair },
      },
    ],
  };
}

/** Names over the columns, and the mark of each stand over its pages. */
export function headerBlock(
  titles: readonly [string, string],
  marks: readonly { readonly mark: string; readonly pages: number }[],
  columns: Columns,
  { palette }: TextTools,
): Block {
  const height = TEXT.small * LEADING + 1.2;
  return {
    height: height + 0.6,
    keepsWithNext: true,
    draw: ({ x, y }) => {
      const baseline = y + TEXT.small * ASCENT + 0.4;
      const look = { ...SMALL, colour: palette.ink };
      const from = x + columns.width - columns.right;
      const places = stationPlaces(marks.map(({ pages }) => pages));
      const perRow = placesOf(columns.right);
      const fits = marks.reduce((sum, { pages }) => sum + pages, 0) <= perRow;
      const over = fits
        ? marks.map(({ mark }, index) =>
            textLine(mark, { x: from + (places[index] ?? 0), y: baseline }, look),
          )
        : [textLine(marks.map(({ mark }) => mark).join(', '), { x: from, y: baseline }, look)];
      return [
        grouped('row', [
          grouped('headerCell', [textLine(titles[0], { x, y: baseline }, look)]),
          grouped('headerCell', [textLine(titles[1], { x: x + columns.left + GAP, y: baseline }, look)]),
          grouped('headerCell', over),
        ]),
        {
          kind: 'path',
          path: line({ x, y: y + height }, { x: x + columns.width, y: y + height }),
          stroke: { colour: palette.ink, width: WEIGHT.fine },
        },
      ];
    },
  };
}

/** Of a page as drawn, upright like the paper. */
const PAGE = { width: 5.6, height: 7.4, gap: 0.6 } as const;
const STATION_GAP = 2.2;
/** Pages beyond this go into another row. */
const MOST_ACROSS = 8;

/** Room for the pages of his stands side by side. */
export function pagesWidth(counts: readonly number[]): number {
  const all = counts.reduce((sum, count) => sum + count, 0);
  if (all === 0) return 0;
  const stations = counts.filter((count) => count > 0).length;
  if (all > MOST_ACROSS) return MOST_ACROSS * (PAGE.width + PAGE.gap);
  return Math.max(9, all * (PAGE.width + PAGE.gap) - PAGE.gap * stations + (stations - 1) * STATION_GAP);
}

function placesOf(width: number): number {
  return Math.max(1, Math.floor((width + 0.01) / PAGE.width));
}

function stationPlaces(counts: readonly number[]): number[] {
  let x = 0;
  return counts.map((count) => {
    const at = x;
    x += count * (PAGE.width + PAGE.gap) - PAGE.gap + STATION_GAP;
    return at;
  });
}

interface PlacedBox {
  readonly page: number | null;
  readonly isNew: boolean;
  readonly x: number;
  readonly y: number;
}

function pageRows(
  shown: readonly Shown[],
  width: number,
): { readonly height: number; readonly draw: (at: Spot, tools: TextTools) => Primitive[] } {
  const boxes: PlacedBox[] = [];
  let [x, y] = [0, 0];
  shown.forEach(({ view, isNew }, index) => {
    if (index > 0) x += STATION_GAP - PAGE.gap;
    for (const page of view) {
      if (x + PAGE.width > width + 0.01) [x, y] = [0, y + PAGE.height + PAGE.gap];
      boxes.push({ page, isNew, x, y });
      x += PAGE.width + PAGE.gap;
    }
  });
  return {
    height: boxes.length === 0 ? 0 : y + PAGE.height,
    draw: (at, tools) => boxes.flatMap((box) => pageBox(box, at, tools)),
  };
}

/** What has just been turned stands out by its weight, not by its colour. */
function pageBox({ page, isNew, x, y }: PlacedBox, at: Spot, { palette }: TextTools): Primitive[] {
  const box = { x: at.x + x, y: at.y + y, width: PAGE.width, height: PAGE.height };
  const colour = isNew ? palette.ink : palette.faint;
  const stroke = { colour, width: isNew ? WEIGHT.medium : WEIGHT.thin };
  if (page === null) return [{ kind: 'path', path: rectangle(box), stroke: { ...stroke, dash: DASH.short } }];
  const size = page > 99 ? TEXT.small : TEXT.body;
  const spot = { x: box.x + box.width / 2, y: box.y + box.height / 2 + (size * CAP_HEIGHT) / 2 };
  return [
    { kind: 'path', path: rectangle(box), stroke },
    textLine(String(page), spot, { size, weight: isNew ? 'bold' : 'regular', colour, anchor: 'middle' }),
  ];
}
