/** How a booklet is put together and put up: drawings, steps in plain words, and what is to be seen after each turn. */

import { statesOf, viewOf, type SideIndex, type View } from '../../pages/bindings/binding.ts';
import type { Strip } from '../../pages/bindings/strip.ts';
import { msgid, ngettext, t } from '../../words/say.ts';
import type { Box, Primitive, Sheet } from '../primitives.ts';
import { gap, grouped, heading, paragraph, type Block } from '../sheet/blocks.ts';
import { flow } from '../sheet/flow.ts';
import { tableBlocks, type Table } from '../sheet/table.ts';
import { ASCENT, LEADING, TEXT, WEIGHT } from '../style.ts';
import { fitted, oneLine, textLine } from '../text.ts';
import { cautionFor, stepsFor } from './assembly-words.ts';
import { concertinaDrawing } from './concertina-drawing.ts';
import { enlarged } from './enlarged.ts';
import type { Layout } from './layout.ts';
import type { BookletOrder } from './order.ts';
import { overRidgeDrawing } from './ridge-drawing.ts';
import { stripDrawing } from './strip-drawing.ts';

const MARGIN = 15;
/** Lines of text with more letters than fit into this are hard to follow, so that larger sheets have larger letters. */
const WIDEST = 190;

/** On large paper it may be made less large than that, if it needs fewer sheets then. */
const SHARES = [1, 0.95, 0.9, 0.85] as const;

/** As many sheets as it takes, on the booklet's paper, which they fill: on large paper all but the ruler is larger. */
export function assemblySheets(order: BookletOrder, strip: Strip, layout: Layout): Sheet[] {
  const { width, height } = order.paper;
  const largest = Math.max(1, (width - 2 * MARGIN) / WIDEST);
  const title = oneLine(titleOf(order));
  const tried = SHARES.map((share) => pagesAt(Math.max(1, share * largest), { order, strip, layout }));
  const fewest = tried.reduce((least, pages) => Math.min(least, pages.length), Infinity);
  const pages = tried.find(({ length }) => length === fewest) ?? [];
  return pages.map((children) => ({ title, width, height, children }));
}

interface Assembled {
  readonly order: BookletOrder;
  readonly strip: Strip;
  readonly layout: Layout;
}

/** What is on each sheet, so many times as large as it is on small paper. */
function pagesAt(factor: number, { order, strip, layout }: Assembled): Primitive[][] {
  const { width, height } = order.paper;
  const body: Box = {
    x: MARGIN / factor,
    y: MARGIN / factor,
    width: (width - 2 * MARGIN) / factor,
    height: (height - 2 * MARGIN) / factor,
  };
  const blocks = assemblyBlocks(order, strip, layout, { width: body.width, factor });
  return flow(blocks, body).map((children) => enlarged(children, factor));
}

export interface Room {
  readonly width: number;
  /** By how much it is made larger after that. */
  readonly factor: number;
}

/** The same as pieces of text and drawings, to be set on other sheets. */
export function assemblyBlocks(
  order: BookletOrder,
  strip: Strip,
  layout: Layout,
  { width, factor }: Room,
): Block[] {
  const { tools } = order;
  const steps = stepsFor(order, strip, layout);
  return [
    titleBlock(order, width),
    ...warningBlocks(order, width),
    ...drawings(order, strip, width),
    heading(t`In this order`, width, tools),
    ...steps.map((words, index) => paragraph(`${index + 1}.  ${words}`, width, tools, { after: 1.6 })),
    ...rulerBlock({ width, factor }, order),
    heading(t`Who sees what`, width, tools),
    ...tableBlocks(viewTable(order), width, tools, t`Who sees what`),
    paragraph(cautionFor(order), width, tools, { colour: tools.palette.warning }),
  ];
}

function titleOf({ title }: BookletOrder): string {
  return t`${title}: how to put it together`;
}

function titleBlock(order: BookletOrder, width: number): Block {
  const { tools } = order;
  const type = { size: TEXT.title, weight: 'bold' } as const;
  return {
    height: TEXT.title * LEADING,
    draw: ({ x, y }) => {
      const words = fitted(titleOf(order), width, type, tools.measure);
      return [
        grouped('title', [
          textLine(words, { x, y: y + TEXT.title * ASCENT }, { ...type, colour: tools.palette.ink }),
        ]),
      ];
    },
  };
}

function warningBlocks({ warning, tools }: BookletOrder, width: number): Block[] {
  return warning === undefined ? [] : [paragraph(warning, width, tools, { colour: tools.palette.warning })];
}

function drawings(order: BookletOrder, strip: Strip, width: number): Block[] {
  if (strip.joints.length === 0) return [];
  const shown = [
    stripDrawing(order, strip, width),
    ...(order.binding.kind === 'ridge' ? [overRidgeDrawing(order, width)] : []),
    ...(order.binding.kind === 'concertina' ? [concertinaDrawing(order, width)] : []),
  ];
  return [gap(2), ...shown.flatMap((drawing) => [drawing, gap(3)])];
}

/** A hundred millimetres to hold a ruler against. */
function rulerBlock({ width, factor }: Room, { tools: { palette, measure } }: BookletOrder): Block[] {
  const printed = Math.min(100, 10 * Math.floor((width * factor) / 10));
  const length = printed / factor;
  const type = { size: TEXT.small, weight: 'regular' } as const;
  const draw = ({ x, y }: { readonly x: number; readonly y: number }): Primitive[] => {
    const stroke = { colour: palette.ink, width: WEIGHT.medium };
    const words = fitted(
      t`${printed} mm on the ruler, if it was printed at 100 %`,
      width - length - 4,
      type,
      measure,
    );
    return [
      {
        kind: 'path',
        path: [
          ['M', x, y + 3],
          ['L', x + length, y + 3],
        ],
        stroke,
      },
      {
        kind: 'path',
        path: [
          ['M', x, y + 1],
          ['L', x, y + 5],
        ],
        stroke,
      },
      {
        kind: 'path',
        path: [
          ['M', x + length, y + 1],
          ['L', x + length, y + 5],
        ],
        stroke,
      },
      grouped('paragraph', [
        textLine(words, { x: x + length + 4, y: y + 4 }, { ...type, colour: palette.ink }),
      ]),
    ];
  };
  return [{ height: 7, draw }];
}

/** One row a state: before the first turn, and after each. */
function viewTable(order: BookletOrder): Table {
  const { binding, players, cues } = order;
  const sides = binding.views.flatMap((_, side) => (players[side] ? [side as SideIndex] : []));
  return {
    columns: [
      { title: t`View`, parts: 8, align: 'end', bold: true },
      { title: t`When`, parts: 40 },
      ...sides.map((side) => ({ title: players[side] ?? '', parts: 40 })),
    ],
    rows: Array.from({ length: statesOf(binding) }, (_, state) => [
      String(state + 1),
      state === 0 ? t`at the beginning` : turnedWords(state, cues[state - 1]),
      ...sides.map((side) => pagesInWords(viewOf(binding, side, state))),
    ]),
  };
}

function turnedWords(turn: number, cue = ''): string {
  return cue === '' ? t`turned (turn ${turn})` : t`turned ${cue}`;
}

function pagesInWords(view: View): string {
  if (view.every((page) => page === null)) return t`nothing`;
  const numbers = view.map((page) => (page ? String(page.page) : t`blank`));
  const pages = numbers.join(', ');
  return ngettext(msgid`page ${pages}`, `pages ${pages}`, numbers.length);
}
