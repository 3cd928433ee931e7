/** What crew measure from: centre line, front edge, and a grid with figures; and the words that say which way is what. */

import { platformOf } from '../../document/document.ts';
import type { Units } from '../../document/measures.ts';
import type { Point } from '../../document/records.ts';
import { atMost } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import { boxContains, boxOfPoints, grownBox, textBox } from '../bounds.ts';
import { firstFree, type Occupancy } from '../occupancy.ts';
import { line, roundedRectangle } from '../outline.ts';
import type { Box, GroupPrimitive, PathItem, Primitive, TextPrimitive } from '../primitives.ts';
import { CAP_HEIGHT, DASH, TEXT, WEIGHT } from '../style.ts';
import { textLine } from '../text.ts';
import { onPage, pen, type PlanContext } from './context.ts';

/** How far the figures and words stand outside the platform, mm on paper. `platformMargin` is what they need. */
const FIGURES_OUT = 1.4;
const DATUM_OUT = 9;
const WORDS_OUT = 12.6;

/** Room on paper that the platform needs on every side for its words and figures. */
export const PLATFORM_MARGIN = 14.5;

/** Grid lines and their figures; figures that would fall on what is `taken` are left out. Static. */
export function drawGrid(context: PlanContext, taken: Occupancy): GroupPrimitive {
  const { palette, units, scale } = context;
  const step = gridStep(units, scale);
  const platform = platformBox(context);
  const origin = onPage(context, { x: 0, y: 0 });
  const lines: PathItem[] = [];
  const figures: TextPrimitive[] = [];
  for (const at of multiplesWithin(
    step.mm / scale,
    platform.x - origin.x,
    platform.x + platform.width - origin.x,
  )) {
    const x = origin.x + at.distance;
    lines.push(...line({ x, y: platform.y }, { x, y: platform.y + platform.height }));
    if (at.index !== 0)
      figures.push(figure(context, step.figure(at.index), { x, y: platform.y - FIGURES_OUT }));
  }
  for (const at of multiplesWithin(
    step.mm / scale,
    origin.y - platform.y - platform.height,
    origin.y - platform.y,
  )) {
    const y = origin.y - at.distance;
    lines.push(...line({ x: platform.x, y }, { x: platform.x + platform.width, y }));
    if (at.index === 0) continue;
    const spot = { x: platform.x - FIGURES_OUT, y: y + HALF_CAP };
    figures.push({ ...figure(context, step.figure(at.index), spot), anchor: 'end' });
  }
  return {
    kind: 'group',
    description: t`Grid every ${step.words}`,
    children: [
      { kind: 'path', path: lines, ...pen(palette.hairline, WEIGHT.hair) },
      ...figures.flatMap((text) => firstFree([text], taken, { measure: context.measure, air: 0.2 })),
    ],
  };
}

/** Centre line and front edge, each with its name. Static. */
export function drawDatum(context: PlanContext, taken: Occupancy): GroupPrimitive {
  const { palette } = context;
  const platform = platformBox(context);
  const { x, y } = onPage(context, { x: 0, y: 0 });
  const [bottom, right] = [Math.max(platform.y + platform.height, y), platform.x + platform.width];
  const top = { of: 'centre', at: (out: number) => ({ x, y: platform.y - out }) } as const;
  const foot = { of: 'centre', at: (out: number) => ({ x, y: bottom + out }) } as const;
  const left = { of: 'edge', at: (out: number) => ({ x: platform.x - out, y }) } as const;
  const end = { of: 'edge', at: (out: number) => ({ x: right + out, y }) } as const;
  // The centre line is named at both ends, the edge at one of them: where no seat is in the way.
  const centre = [top, foot].map((one) => datumEnd(context, one, taken));
  const stageLeft = datumEnd(context, end, taken);
  const stageRight = stageLeft.plate.length > 0 ? bareEnd(left, taken) : datumEnd(context, left, taken);
  const ends = [...centre, stageLeft, stageRight];
  const course = boxOfPoints([...centre.map(({ at }) => at), { x, y: platform.y }, { x, y: bottom }]);
  const sides = [stageLeft, stageRight].map(({ at }) =>
    boxOfPoints([at, { x: at.x < x ? platform.x : right, y }]),
  );
  for (const box of [course, ...sides]) if (box) taken.take(grownBox(box, HALF_GAP));
  const lines = [
    line(centre[0]?.at ?? { x, y: platform.y }, centre[1]?.at ?? { x, y: bottom }),
    line(stageRight.at, { x: platform.x, y }),
    line({ x: right, y }, stageLeft.at),
  ];
  return {
    kind: 'group',
    description: t`Centre line and front edge: all distances are measured from these`,
    children: [
      ...lines.map((path): Primitive => ({
        kind: 'path',
        path,
        ...pen(palette.ink, WEIGHT.fine, DASH.chain),
      })),
      ...ends.flatMap(({ plate: drawn }) => drawn),
    ],
  };
}

/** The centre line as far as the plan goes. */
export function centreLineBox({ origin, area }: PlanContext): Box {
  const [top, height] = area ? [area.y, area.height] : [origin.y - 400, 800];
  return { x: origin.x - HALF_GAP, y: top, width: 2 * HALF_GAP, height };
}

/** Words keep this far off the centre line, mm. */
const HALF_GAP = 0.5;

interface DatumEnd {
  readonly of: 'centre' | 'edge';
  readonly at: (out: number) => Point;
}

interface DrawnEnd {
  readonly at: Point;
  readonly plate: readonly Primitive[];
}

/** How far off the platform the names of the datum lines are tried, mm. */
const DATUM_OUTS = [DATUM_OUT, 11, 13, 7, 16];

function datumEnd(context: PlanContext, end: DatumEnd, taken: Occupancy): DrawnEnd {
  if (!context.layers.words) return bareEnd(end, taken);
  const words = end.of === 'edge' ? t`EDGE` : t`CL`;
  const width = context.measure(words, TEXT.small, 'bold') + 2;
  for (const out of DATUM_OUTS) {
    const at = end.at(out + (end.of === 'edge' ? width / 2 - PLATE_OVERHANG : 0));
    const box = { x: at.x - width / 2, y: at.y - PLATE_HEIGHT / 2, width, height: PLATE_HEIGHT };
    const isOff = context.area !== null && !boxContains(context.area, box);
    if (isOff || taken.isTaken(grownBox(box, HALF_GAP))) continue;
    taken.take(grownBox(box, 2 * HALF_GAP));
    return { at, plate: plate(context, words, box) };
  }
  return bareEnd(end, taken);
}

/** A line without a name, as long as the seats beside it allow. */
function bareEnd({ at }: DatumEnd, taken: Occupancy): DrawnEnd {
  const lengths = [DATUM_OUT, 7, 5, 3, 1.5];
  const free = lengths.find((out) => {
    const box = boxOfPoints([at(0), at(out)]);
    return box !== null && !taken.isTaken(grownBox(box, HALF_GAP));
  });
  return { at: at(free ?? 0), plate: [] };
}

/** The plate of the edge may stand this much nearer, for it lies along its line. */
const PLATE_OVERHANG = 3;
const PLATE_HEIGHT = 4;

/** HOUSE, UPSTAGE, STAGE LEFT and STAGE RIGHT: a plan has no north, it has a house. Static. */
export function drawWords(context: PlanContext, taken: Occupancy): GroupPrimitive {
  const box = platformBox(context);
  const [middleX, middleY] = [box.x + box.width / 2, box.y + box.height / 2];
  const look = {
    size: TEXT.strong,
    weight: 'bold',
    colour: context.palette.faint,
    anchor: 'middle',
  } as const;
  const cap = TEXT.strong * CAP_HEIGHT;
  // `out` leads away from the platform; further out where seats or other words are in the way.
  const level = (words: string, y: number, out: number) =>
    places((share, further) => {
      const x = middleX + share * Math.max(box.width, LEAST_SPREAD);
      return textLine(words, { x, y: y + out * further }, look);
    });
  const upright = (words: string, x: number, out: number) =>
    places((share, further) => {
      const y = middleY - share * box.height;
      return textLine(words, { x: x + out * further, y }, { ...look, turn: -90 });
    }, BESIDE);
  const words = [
    level(t`UPSTAGE`, box.y - WORDS_OUT + cap, -1),
    level(t`HOUSE`, box.y + box.height + WORDS_OUT, 1),
    upright(t`STAGE RIGHT`, box.x - WORDS_OUT + cap, -1),
    upright(t`STAGE LEFT`, box.x + box.width + WORDS_OUT, 1),
  ];
  return {
    kind: 'group',
    description: t`The house is at the bottom, stage left on the right-hand side`,
    children: words.flatMap((candidates) =>
      firstFree(
        candidates.filter((text) => isOnArea(context, text)),
        taken,
        { measure: context.measure, air: 0.9 },
      ),
    ),
  };
}

function places(
  textAt: (share: number, further: number) => TextPrimitive,
  aside: readonly number[] = ASIDE,
): TextPrimitive[] {
  const at = (shares: readonly number[]): TextPrimitive[] =>
    FURTHER.flatMap((further) => shares.map((share) => textAt(share, further)));
  return [...at(aside), ...at(FAR_ASIDE)];
}

function isOnArea({ area, measure }: PlanContext, text: TextPrimitive): boolean {
  return area === null || boxContains(area, textBox(text, measure));
}

/** How much further off the platform the words are tried, mm; nearer where only that keeps them off the seats. */
const FURTHER = [0, -5, 5, 10, 16, 24, 34, 46];
/** Where the words are tried, in shares of the platform's breadth off its middle. */
const ASIDE = [0.25, -0.25, 0.38, -0.38];
/** The same of its depth, for words that run along its sides. */
const BESIDE = [0, 0.13, -0.13, 0.25, -0.25];
/** Beyond its corners, when everything before it is full. */
const FAR_ASIDE = [0.6, -0.6, 0.8, -0.8];
/** Beside the centre line's plate even when the platform is small on paper. */
const LEAST_SPREAD = 64;

/** The platform's box on the page. */
export function platformBox(context: PlanContext): Box {
  const corners = platformOf(context.document).outline.map((corner) => onPage(context, corner));
  return boxOfPoints(corners) ?? { x: context.origin.x, y: context.origin.y, width: 0, height: 0 };
}

const HALF_CAP = (TEXT.small * CAP_HEIGHT) / 2;

/** A name on a small plate that covers the line it names. */
function plate({ palette }: PlanContext, words: string, box: Box): Primitive[] {
  const text = textLine(
    words,
    { x: box.x + box.width / 2, y: box.y + box.height / 2 + HALF_CAP },
    { size: TEXT.small, weight: 'bold', colour: palette.ink, anchor: 'middle' },
  );
  return [
    { kind: 'path', path: roundedRectangle(box, 0.8), fill: palette.paper, ...pen(palette.ink, WEIGHT.thin) },
    text,
  ];
}

function figure({ palette }: PlanContext, words: string, at: { x: number; y: number }): TextPrimitive {
  return textLine(words, at, {
    size: TEXT.small,
    weight: 'regular',
    colour: palette.faint,
    anchor: 'middle',
  });
}

interface GridStep {
  readonly mm: number;
  readonly words: string;
  readonly figure: (index: number) => string;
}

const FOOT = 304.8;
const LEAST_GRID = 10;
/** Half metres only where whole ones would stand far apart. */
const LEAST_FINE_GRID = 20;

/** The finest of the usual steps whose lines stand far enough apart to carry figures. */
export function gridStep(units: Units, scale: number): GridStep {
  const metric = units === 'metric';
  const steps = metric ? [500, 1000, 2000, 5000, 10_000] : [1, 2, 4, 10, 20, 50].map((feet) => feet * FOOT);
  const least = (step: number): number => (step === 500 ? LEAST_FINE_GRID : LEAST_GRID);
  const mm = steps.find((step) => step / scale >= least(step)) ?? steps.at(-1) ?? 1000;
  const unit = metric ? 1000 : FOOT;
  const count = (index: number): string => atMost((Math.abs(index) * mm) / unit, 1);
  return {
    mm,
    words: metric ? `${count(1)} m` : `${count(1)} ft`,
    figure: (index) => (metric ? `${count(index)} m` : `${count(index)}'`),
  };
}

function multiplesWithin(step: number, from: number, to: number): { index: number; distance: number }[] {
  const first = Math.ceil(from / step - 1e-6);
  const last = Math.floor(to / step + 1e-6);
  const count = Math.min(Math.max(0, last - first + 1), MOST_GRID_LINES);
  return Array.from({ length: count }, (_, i) => ({ index: first + i, distance: (first + i) * step }));
}

const MOST_GRID_LINES = 500;
