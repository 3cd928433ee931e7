/**
 * What stands on a rectangle of floor, as one sees it from above: plain shapes by which a musician knows the instrument.
 * Only the rectangle is to scale by a source; the proportions inside are common practice, no source.
 */

import type { LargeInstrumentModel } from '../../catalogue/large-instruments.ts';
import { centredRectangle, circle, ellipse, line, polygon, polyline, rectangle } from '../outline.ts';
import type { PathItem } from '../primitives.ts';

/** In the instrument's own frame: its player is at +y and looks along -y, +x is on his left. */
export interface CaseSymbol {
  /** The wooden body; it may be smaller than the room that the instrument takes. */
  readonly body: readonly PathItem[];
  /** Keys and heads, pale. */
  readonly pale?: readonly PathItem[];
  readonly lines?: readonly PathItem[];
  /** Metal seen from its edge. */
  readonly edges?: readonly PathItem[];
}

type Size = Pick<LargeInstrumentModel, 'width' | 'depth'>;

const SYMBOLS: Readonly<Record<string, (size: Size) => CaseSymbol>> = {
  'bass-drum': bassDrum,
  'tam-tam': tamTam,
  'tubular-bells': tubularBells,
  harp,
  harpsichord,
  celesta: cabinet,
  'chest-organ': cabinet,
  cimbalom,
};

/** Null: nothing but its outline is drawn. */
export function caseSymbol({ id, width, depth }: LargeInstrumentModel): CaseSymbol | null {
  return Object.hasOwn(SYMBOLS, id) ? (SYMBOLS[id]?.({ width, depth }) ?? null) : null;
}

/** On edge: a shell between two heads, on a cradle that is a little shorter. */
function bassDrum({ width, depth }: Size): CaseSymbol {
  const head = width * 0.3;
  const hoop = 45;
  return {
    body: centredRectangle(2 * head, depth),
    pale: [-1, 1].flatMap((side) => centredRectangle(hoop, depth, { x: side * (head - hoop / 2), y: 0 })),
    edges: [-0.3, 0.3].flatMap((at) =>
      line({ x: -width / 2, y: at * depth }, { x: width / 2, y: at * depth }),
    ),
  };
}

/** The plate hangs in the middle of its frame, whose feet stand across. */
function tamTam({ width, depth }: Size): CaseSymbol {
  const post = width / 2 - 30;
  return {
    body: centredRectangle(width, 70),
    pale: centredRectangle(0.74 * width, 30),
    edges: [-post, post].flatMap((x) => line({ x, y: -depth / 2 }, { x, y: depth / 2 })),
  };
}

/** Two rows of tubes, the nearer with the gaps of a keyboard. */
function tubularBells({ width, depth }: Size): CaseSymbol {
  const NATURALS = 10;
  const at = (tube: number) => width * (0.42 - (0.84 * tube) / (NATURALS - 1));
  const naturals = Array.from({ length: NATURALS }, (_, tube) => circle({ x: at(tube), y: -55 }, 22));
  const sharps = [0, 1, 3, 4, 5, 7, 8].map((tube) => circle({ x: at(tube + 0.5), y: 55 }, 22));
  return {
    body: centredRectangle(width, 200),
    pale: [...naturals, ...sharps].flat(),
    edges: [-1, 1].flatMap((side) =>
      line({ x: side * (width / 2 - 25), y: -depth / 2 }, { x: side * (width / 2 - 25), y: depth / 2 }),
    ),
  };
}

/** Broad at the foot, where the column is, narrow at the player's shoulder; the strings along its middle. */
function harp({ width, depth }: Size): CaseSymbol {
  const [foot, shoulder] = [-depth / 2, depth / 2];
  const column = { x: 0, y: foot + 70 };
  return {
    body: [
      ['M', -width / 2, foot + 150],
      ['C', -width / 2, foot - 50, width / 2, foot - 50, width / 2, foot + 150],
      ['C', width * 0.4, 0, 70, shoulder - 100, 60, shoulder],
      ['L', -60, shoulder],
      ['C', -70, shoulder - 100, -width * 0.4, 0, -width / 2, foot + 150],
      ['Z'],
    ],
    pale: circle(column, 55),
    lines: line({ x: 0, y: column.y + 55 }, { x: 0, y: shoulder - 40 }),
  };
}

/** A straight spine on the player's left, a bent side on his right, and two rows of keys. */
function harpsichord({ width, depth }: Size): CaseSymbol {
  const [left, right, front, tail] = [width / 2, -width / 2, depth / 2, -depth / 2];
  const row = (from: number) =>
    rectangle({ x: right + 70, y: front - from - 120, width: width - 140, height: 120 });
  return {
    body: [
      ['M', left, front],
      ['L', left, tail],
      ['L', left - width * 0.22, tail],
      ['C', left - width * 0.34, 0, right + width * 0.04, front - depth * 0.42, right, front - depth * 0.3],
      ['L', right, front],
      ['Z'],
    ],
    pale: [...row(40), ...row(175)],
    lines: line({ x: right, y: front - 360 }, { x: left, y: front - 360 }),
  };
}

/** A case with keys at the player's side. */
function cabinet({ width, depth }: Size): CaseSymbol {
  const [half, front] = [width / 2 - 110, depth / 2 - 30];
  const keys = { x: -half, y: front - 140, width: 2 * half, height: 140 };
  const octaves = [1, 2, 3, 4].flatMap((octave) => {
    const x = -half + (2 * half * octave) / 5;
    return line({ x, y: keys.y }, { x, y: front });
  });
  return {
    body: centredRectangle(width, depth),
    pale: rectangle(keys),
    lines: [...octaves, ...line({ x: -width / 2, y: keys.y - 60 }, { x: width / 2, y: keys.y - 60 })],
  };
}

/** A trapeze, long at the player's side, with its strings across and two bridges along it. */
function cimbalom({ width, depth }: Size): CaseSymbol {
  const [near, far] = [depth / 2, -depth / 2];
  const halfAt = (y: number) => (width / 2) * (0.62 + (0.38 * (y - far)) / depth);
  const corners = [
    { x: halfAt(near), y: near },
    { x: -halfAt(near), y: near },
    { x: -halfAt(far), y: far },
    { x: halfAt(far), y: far },
  ];
  const strings = Array.from({ length: 7 }, (_, string) => {
    const y = far + (depth * (string + 1)) / 8;
    return line({ x: 0.92 * halfAt(y), y }, { x: -0.92 * halfAt(y), y });
  });
  const bridges = [-0.35, 0.3].flatMap((share) =>
    polyline([
      { x: share * halfAt(near), y: near - 60 },
      { x: share * halfAt(far), y: far + 60 },
    ]),
  );
  const holes = [-0.6, 0.6].flatMap((share) => ellipse({ x: share * halfAt(0), y: 0 }, 60, 60));
  return { body: polygon(corners), pale: holes, lines: [...strings.flat(), ...bridges] };
}
