/**
 * The look on one sheet: symbols, colours, lines and letters as the program has them, so that whoever draws something new
 * can hold it against what is there. Made from the program's own tables; nothing is repeated here.
 */

import { mapPath, shift, type Affine } from '#model/drawing/affine.ts';
import { bounds } from '#model/drawing/bounds.ts';
import { rectangle } from '#model/drawing/outline.ts';
import { PALETTES, type PaletteName } from '#model/drawing/palette.ts';
import type { Primitive, Sheet } from '#model/drawing/primitives.ts';
import { BANDS, bandMark, bandRim, SIGHT_BANDS } from '#model/drawing/sight-bands.ts';
import { DASH, TEXT, WEIGHT } from '#model/drawing/style.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { createMeasure } from '../../electron/services/fonts.ts';
import { symbolOf, type Symbol } from '../../renderer/app/parts/symbol-of.ts';
import { text } from '../../renderer/app/text.ts';
import { shelves } from '../../renderer/app/words/names.ts';
import { SHELVES, THINGS, type Shelf, type Thing } from '../../renderer/store/things.ts';

const measure = createMeasure();
const INK = PALETTES.print.ink;
const FAINT = PALETTES.print.faint;

const MARGIN = 14;
const WIDTH = 594;
/** What is as large as a room, what is as large as a piano, people with a slide or a long neck before them, and all else. */
const [ROOM, LARGE, PEOPLE, USUAL] = [300, 75, 60, 40];
const LARGE_ONES: readonly Shelf[] = ['keyboards', 'percussion', 'levels', 'house'];
const CELL = { width: 40, height: 41, label: 8 };
const PER_ROW = Math.floor((WIDTH - 2 * MARGIN) / CELL.width);

export function specimenSheet(): Sheet {
  const symbols = SHELVES.reduce<Block>(
    (above, shelf) => beside(above, shelfBlock(shelf, above.bottom)),
    heading('Symbols from above', MARGIN),
  );
  const colours = beside(symbols, colourBlock(symbols.bottom));
  const lines = beside(colours, lineBlock(colours.bottom));
  return {
    title: 'Standlines: symbols, colours, lines and letters',
    width: WIDTH,
    height: lines.bottom + MARGIN,
    children: [
      {
        kind: 'path',
        path: rectangle({ x: 0, y: 0, width: WIDTH, height: lines.bottom + MARGIN }),
        fill: '#ffffff',
      },
      ...lines.drawn,
    ],
  };
}

interface Block {
  readonly drawn: readonly Primitive[];
  readonly bottom: number;
}

function beside(above: Block, next: Block): Block {
  return { drawn: [...above.drawn, ...next.drawn], bottom: next.bottom };
}

function heading(words: string, top: number): Block {
  const at = { x: MARGIN, y: top + TEXT.heading };
  return { drawn: [letters(words, at, { size: TEXT.heading, bold: true })], bottom: top + 2 * TEXT.heading };
}

interface Lettering {
  readonly size?: number;
  readonly bold?: boolean;
  readonly middle?: boolean;
  readonly colour?: string;
}

function letters(
  text: string,
  at: { readonly x: number; readonly y: number },
  { size = TEXT.body, bold = false, middle = false, colour = INK }: Lettering = {},
): Primitive {
  const weight = bold ? 'bold' : 'regular';
  return { kind: 'text', text, ...at, size, weight, anchor: middle ? 'middle' : 'start', colour };
}

function shelfBlock(shelf: Shelf, top: number): Block {
  // With and without a player it is the same instrument.
  const isTwice = ({ name }: Thing) => name.endsWith(text.toPlace.withPlayer(''));
  const things = THINGS.filter((thing) => thing.shelf === shelf && !isTwice(thing));
  const words = `${shelves[shelf]}, 1:${scaleOn(shelf)}`;
  const title = letters(words, { x: MARGIN, y: top + TEXT.strong }, { size: TEXT.strong, bold: true });
  const first = top + 2 * TEXT.strong;
  const cells = things.flatMap((thing, index) => {
    const x = MARGIN + (index % PER_ROW) * CELL.width;
    return cellOf(thing, x, first + Math.floor(index / PER_ROW) * CELL.height);
  });
  return { drawn: [title, ...cells], bottom: first + Math.ceil(things.length / PER_ROW) * CELL.height + 2 };
}

function scaleOn(shelf: Shelf): number {
  if (shelf === 'players') return PEOPLE;
  return LARGE_ONES.includes(shelf) ? LARGE : USUAL;
}

function cellOf(thing: Thing, x: number, y: number): Primitive[] {
  const middle = x + CELL.width / 2;
  const symbol = symbolOf(thing, 'light');
  const scale = symbol?.records.some(({ kind }) => kind === 'storage') ? ROOM : scaleOn(thing.shelf);
  const name = thing.name.split(', ').map((words, line) => {
    const at = { x: middle, y: y + CELL.height - CELL.label + 3 + line * 3.4 };
    return letters(words, at, { size: TEXT.small, middle: true, colour: FAINT });
  });
  return [
    ...(symbol ? drawnAt(symbol, scale, { x: middle, y: y + (CELL.height - CELL.label) / 2 }) : []),
    ...name,
  ];
}

/** By its middle. */
function drawnAt(symbol: Symbol, scale: number, { x, y }: Vec2): Primitive[] {
  const drawn = symbol.draw(scale);
  const box = bounds(drawn, measure);
  if (!box) return [];
  const map = shift(x - box.x - box.width / 2, y - box.y - box.height / 2);
  return drawn.map((primitive) => moved(primitive, map));
}

function moved(primitive: Primitive, map: Affine): Primitive {
  if (primitive.kind === 'path') return { ...primitive, path: mapPath(map, primitive.path) };
  if (primitive.kind === 'text') return { ...primitive, x: primitive.x + map.e, y: primitive.y + map.f };
  const { subject: _, ...group } = primitive;
  return { ...group, children: primitive.children.map((child) => moved(child, map)) };
}

const SWATCH = { width: 34, height: 12 };

function colourBlock(top: number): Block {
  const title = heading('Colours of drawings: on paper, in light and in dark windows', top);
  const names = Object.keys(PALETTES.print) as (keyof typeof PALETTES.print)[];
  const rows = Object.keys(PALETTES) as PaletteName[];
  const perRow = Math.ceil(names.length / 2);
  const drawn = names.flatMap((name, index) => {
    const x = MARGIN + (index % perRow) * (SWATCH.width + 3);
    const y = title.bottom + Math.floor(index / perRow) * (rows.length * SWATCH.height + 12);
    const swatches = rows.flatMap((palette, row) =>
      swatch(PALETTES[palette][name], x, y + row * SWATCH.height),
    );
    return [...swatches, letters(name, { x, y: y + rows.length * SWATCH.height + 4 }, { size: TEXT.small })];
  });
  const bands = bandBlock(title.bottom + 2 * (rows.length * SWATCH.height + 12) + 4);
  return { drawn: [...title.drawn, ...drawn, ...bands.drawn], bottom: bands.bottom };
}

function swatch(colour: string, x: number, y: number): Primitive[] {
  const box = rectangle({ x, y, ...SWATCH });
  const onDark = Number.parseInt(colour.slice(1, 3), 16) + Number.parseInt(colour.slice(3, 5), 16) < 256;
  const words = { size: TEXT.small, colour: onDark ? '#ffffff' : '#000000' };
  return [
    { kind: 'path', path: box, fill: colour, stroke: { colour: FAINT, width: WEIGHT.hair } },
    letters(colour, { x: x + 2, y: y + 7 }, words),
  ];
}

/** What share of him a place sees: each band has a mark, too. */
function bandBlock(top: number): Block {
  const title = heading('Shares of a player that a place sees', top);
  const drawn = SIGHT_BANDS.flatMap((band): Primitive[] => {
    const { fill, mark, words } = BANDS[band];
    const at = { x: MARGIN + 6 + band * 60, y: title.bottom + 6 };
    return [
      { kind: 'path', path: bandRim(at, 5), fill, stroke: { colour: INK, width: WEIGHT.thin } },
      { kind: 'path', path: bandMark(band, at, 3), fill: mark },
      letters(words, { x: at.x + 8, y: at.y + 1 }),
    ];
  });
  return { drawn: [...title.drawn, ...drawn], bottom: title.bottom + 20 };
}

function lineBlock(top: number): Block {
  const title = heading('Lines and letters, mm', top);
  const weights = Object.entries(WEIGHT).map(([name, width]) => ({
    name: `${name} ${width}`,
    width,
    dash: [],
  }));
  const dashes = Object.entries(DASH).map(([name, dash]) => ({ name, width: WEIGHT.medium, dash }));
  const rows = [...weights, ...dashes].flatMap(({ name, width, dash }, index): Primitive[] => {
    const y = title.bottom + index * 7;
    return [
      {
        kind: 'path',
        path: [
          ['M', MARGIN, y],
          ['L', MARGIN + 90, y],
        ],
        stroke: { colour: INK, width, ...(dash.length > 0 ? { dash } : {}) },
      },
      letters(name, { x: MARGIN + 96, y: y + 1 }),
    ];
  });
  const sizes = Object.entries(TEXT).map(([name, size], index) =>
    letters(
      `${name} ${size}: 820 SL, 1450 US, bar 12, ♯ ♭`,
      { x: 200, y: title.bottom + index * 11 },
      { size },
    ),
  );
  return { drawn: [...title.drawn, ...rows, ...sizes], bottom: title.bottom + 72 };
}
