/** Keys to what a sheet shows: letters of the marks, signs of the plan, bands of the seat map. */

import type { SightBand } from '../../checks/report.ts';
import { msgid, ngettext, t } from '../../words/say.ts';
import { circle, line, roundedRectangle } from '../outline.ts';
import { drawSocket } from '../plan/furniture.ts';
import type { Box, Primitive } from '../primitives.ts';
import { bandMark, bandRim, BANDS, SIGHT_BANDS } from '../sight-bands.ts';
import { ASCENT, CAP_HEIGHT, LEADING, TEXT, WEIGHT } from '../style.ts';
import { textLine, wrapped, type Type } from '../text.ts';
import { grouped, linesOfText, type Spot, type TextTools } from './blocks.ts';

const SMALL: Type = { size: TEXT.small, weight: 'regular' };

/** Lines of notes in a box, from its top; what does not fit is left out, whole lines at a time. */
export function notes(paragraphs: readonly string[], box: Box, { palette, measure }: TextTools): Primitive {
  const lines = paragraphs.flatMap((words) => wrapped(words, box.width, SMALL, measure));
  const room = Math.floor(box.height / (SMALL.size * LEADING) + 1e-6);
  return grouped('paragraph', linesOfText(lines.slice(0, room), box, { ...SMALL, colour: palette.ink }));
}

/** Height of notes set in a width. */
export function notesHeight(paragraphs: readonly string[], width: number, { measure }: TextTools): number {
  const lines = paragraphs.reduce((sum, words) => sum + wrapped(words, width, SMALL, measure).length, 0);
  return lines * SMALL.size * LEADING;
}

export const BAND_ROW = 5.6;

/** The five bands under each other, each as a seat looks, in words, and with how many places are in it. */
export function bandKey(counts: readonly number[] | null, at: Spot, { palette }: TextTools): Primitive[] {
  return SIGHT_BANDS.map((band, row) => {
    const y = at.y + row * BAND_ROW;
    const words = counts ? `${BANDS[band].words}: ${placeCount(counts[band] ?? 0)}` : BANDS[band].words;
    const text = textLine(
      words,
      { x: at.x + 7, y: y + 2.2 + (CAP_HEIGHT * TEXT.body) / 2 },
      { size: TEXT.body, weight: 'regular', colour: palette.ink },
    );
    return grouped('paragraph', [...bandSwatch(band, { x: at.x, y }, palette.ink), text]);
  });
}

export function placeCount(count: number): string {
  return ngettext(msgid`${count} place`, `${count} places`, count);
}

function bandSwatch(band: SightBand, { x, y }: Spot, ink: string): Primitive[] {
  const { fill, mark } = BANDS[band];
  const middle = { x: x + 2.5, y: y + 2.2 };
  const swatch = roundedRectangle({ x, y, width: 5, height: 4.4 }, 0.9);
  return [
    { kind: 'path', path: swatch, fill, stroke: { colour: ink, width: WEIGHT.thin } },
    { kind: 'path', path: bandMark(band, middle, 1.35), fill: mark },
    { kind: 'path', path: bandRim(middle, 1.35), stroke: { colour: mark, width: WEIGHT.thin } },
  ];
}

/** Signs of what is not on every plan are explained only where it is. */
export interface SignsShown {
  readonly socket: boolean;
  readonly wheelchair: boolean;
}

/** What the signs of the plan mean, in one or two rows of swatches with words. */
export function signKey(at: Spot, width: number, tools: TextTools, shown: SignsShown): Primitive[] {
  const { palette, measure } = tools;
  const drawn: Primitive[] = [];
  let [x, y] = [at.x, at.y];
  for (const { words, draw } of signsOf(shown)) {
    const needed = SIGN_WIDTH + 1.6 + measure(words, SMALL.size, SMALL.weight);
    if (x > at.x && x + needed > at.x + width) [x, y] = [at.x, y + SIGN_ROW];
    const text = textLine(
      words,
      { x: x + SIGN_WIDTH + 1.6, y: y + SMALL.size * ASCENT },
      { ...SMALL, colour: palette.ink },
    );
    drawn.push(grouped('paragraph', [...draw({ x, y: y + SMALL.size * 0.45 }, tools), text]));
    x += needed + 4.5;
  }
  return drawn;
}

/** Height of the sign key in a width. */
export function signKeyHeight(width: number, { measure }: TextTools, shown: SignsShown): number {
  let [x, rows] = [0, 1];
  for (const { words } of signsOf(shown)) {
    const needed = SIGN_WIDTH + 1.6 + measure(words, SMALL.size, SMALL.weight);
    if (x > 0 && x + needed > width) [x, rows] = [0, rows + 1];
    x += needed + 4.5;
  }
  return rows * SIGN_ROW;
}

const SIGN_WIDTH = 7;
const SIGN_ROW = 4.6;

interface Sign {
  readonly words: string;
  /** Draws the sign in `SIGN_WIDTH`, about the height of `at`. */
  readonly draw: (at: Spot, tools: TextTools) => Primitive[];
}

const across = ({ x, y }: Spot, from: number, to: number) => line({ x: x + from, y }, { x: x + to, y });

const SIGNS: readonly Sign[] = [
  {
    get words() {
      return t`reader’s side of a desk`;
    },
    draw: (at, { palette }) => [
      {
        kind: 'path',
        path: roundedRectangle({ x: at.x, y: at.y - 1.4, width: 6.4, height: 2.2 }, 0),
        fill: palette.desk,
      },
      {
        kind: 'path',
        path: roundedRectangle({ x: at.x + 0.7, y: at.y - 1.2, width: 5, height: 2 }, 0),
        fill: palette.page,
      },
      {
        kind: 'path',
        path: across({ x: at.x, y: at.y + 0.9 }, 0, 6.4),
        stroke: { colour: palette.ink, width: WEIGHT.heavy },
      },
    ],
  },
  {
    get words() {
      return t`player, facing down`;
    },
    draw: (at, { palette }) => [
      {
        kind: 'path',
        path: roundedRectangle({ x: at.x + 0.4, y: at.y - 1.3, width: 5.6, height: 2.6 }, 1.3),
        fill: palette.player,
        stroke: { colour: palette.ink, width: WEIGHT.thin },
      },
      { kind: 'path', path: circle({ x: at.x + 3.2, y: at.y }, 0.95), fill: palette.playerHead },
      {
        kind: 'path',
        path: [
          ['M', at.x + 2.6, at.y + 0.6],
          ['L', at.x + 3.2, at.y + 2],
          ['L', at.x + 3.8, at.y + 0.6],
          ['Z'],
        ],
        fill: palette.playerHead,
      },
    ],
  },
  {
    get words() {
      return t`open edge, drop`;
    },
    draw: (at, { palette }) => [
      {
        kind: 'path',
        path: across({ x: at.x, y: at.y - 0.6 }, 0, 6.4),
        stroke: { colour: palette.warning, width: WEIGHT.heavy },
      },
      ...[1.4, 3.2, 5].map((x): Primitive => ({
        kind: 'path',
        path: [
          ['M', at.x + x - 0.6, at.y - 0.6],
          ['L', at.x + x, at.y + 1.1],
          ['L', at.x + x + 0.6, at.y - 0.6],
          ['Z'],
        ],
        fill: palette.warning,
      })),
    ],
  },
  {
    get words() {
      return t`cable`;
    },
    draw: (at, { palette }) => [
      {
        kind: 'path',
        path: across(at, 0, 6.4),
        stroke: { colour: palette.cable, width: WEIGHT.medium, dash: [1, 0.8] },
      },
    ],
  },
  {
    get words() {
      return t`covered cable`;
    },
    draw: (at, { palette }) => [
      { kind: 'path', path: across(at, 0, 6.4), stroke: { colour: palette.ink, width: 1.3 } },
      { kind: 'path', path: across(at, 0, 6.4), stroke: { colour: palette.paper, width: 1 } },
      {
        kind: 'path',
        path: across(at, 0, 6.4),
        stroke: { colour: palette.cable, width: WEIGHT.medium, dash: [1, 0.8] },
      },
    ],
  },
];

const SOCKET: Sign = {
  get words() {
    return t`socket`;
  },
  draw: (at, { palette }) => {
    const middle = { x: at.x + 5.4, y: at.y };
    return [
      {
        kind: 'path',
        path: across(at, 0, 4.4),
        stroke: { colour: palette.cable, width: WEIGHT.medium, dash: [1, 0.8] },
      },
      ...drawSocket(middle, palette),
    ];
  },
};

const TURNING: Sign = {
  get words() {
    return t`room to turn a wheelchair, and its way`;
  },
  draw: (at, { palette }) => [
    {
      kind: 'path',
      path: circle({ x: at.x + 1.6, y: at.y }, 1.5),
      stroke: { colour: palette.route, width: WEIGHT.medium, dash: [1, 0.5] },
    },
    {
      kind: 'path',
      path: across(at, 3.6, 6.4),
      stroke: { colour: palette.route, width: WEIGHT.medium, dash: [1, 0.5] },
    },
  ],
};

function signsOf({ socket, wheelchair }: SignsShown): readonly Sign[] {
  return [...SIGNS, ...(socket ? [SOCKET] : []), ...(wheelchair ? [TURNING] : [])];
}
