/** From where to where: the ways of the steps as arrows, each with the number that the lists give it. */

import type { Point } from '../../document/records.ts';
import type { Step } from '../../programme/changeover.ts';
import type { Unit } from '../../programme/units.ts';
import { boxesAlong } from '../plan/line-boxes.ts';
import { createOccupancy, type Occupancy } from '../occupancy.ts';
import { onPage, pen, type PlanContext } from '../plan/context.ts';
import { polygon, polyline, roundedRectangle } from '../outline.ts';
import { boxContains, grownBox } from '../bounds.ts';
import type { Box, GroupPrimitive, Primitive } from '../primitives.ts';
import { CAP_HEIGHT, TEXT, WEIGHT } from '../style.ts';
import { textLine } from '../text.ts';
import { unitBox } from './marks.ts';
import { unitsOf, type Run } from './runs.ts';

/** How far beyond its opening an arrow begins or ends, mm on paper: not so far that it meets the words there. */
const BEYOND = 1.5;
const HEAD = { length: 2.6, half: 0.95 };
/** A way shorter than this on paper has no room for an arrow: its number stands beside the thing. */
const SHORTEST = 4;

interface Arrow {
  readonly step: Step;
  /** On the page. */
  readonly points: readonly Point[];
}

export interface DrawnArrows {
  readonly lines: readonly Primitive[];
  readonly numbers: readonly Primitive[];
  /** Numbers of the steps for whose number there was no room. */
  readonly dropped: readonly number[];
}

/** `texts`: what numbers must not cover; they are put in it. */
export function drawArrows(context: PlanContext, run: Run, texts: Occupancy): DrawnArrows {
  const arrows = run.steps.map((step): Arrow => ({ step, points: trackOf(context, step) }));
  const lines = arrows.flatMap(({ points }) => arrowOf(context, points));
  const crossed = createOccupancy(arrows.flatMap(({ points }) => trackBoxes(points)));
  const solid = createOccupancy(
    unitsOf(run)
      .filter(isSolid)
      .map((unit) => unitBox(context, unit)),
  );
  const dropped: number[] = [];
  const numbers = arrows.flatMap((arrow): Primitive[] => {
    const box = placeFor(context, arrow, { texts, crossed, solid });
    if (!box) {
      dropped.push(arrow.step.number);
      return [];
    }
    texts.take(box);
    return [...leaderOf(context, arrow, box), numberAt(context, arrow.step, box)];
  });
  return { lines, numbers, dropped };
}

/** Levels carry all else: a number may lie on them. */
function isSolid({ thing }: Unit): boolean {
  return thing.item !== 'riser';
}

/** Where arrows run, in short pieces. */
export function arrowBoxes(context: PlanContext, steps: readonly Step[]): Box[] {
  return steps.flatMap((step) => trackBoxes(trackOf(context, step)));
}

/** "3A", "4AB": the step and who takes it. */
export function stepMark({ number, hands }: Pick<Step, 'number' | 'hands'>): string {
  return `${number}${hands === 'both' ? 'AB' : hands}`;
}

/** The way on the page; what lies beyond the platform is cut short. */
function trackOf(context: PlanContext, { from, to, way, work }: Step): Point[] {
  if (work === 'turn' || work === 'adjust') return [];
  const points = way.points.map((point) => onPage(context, point));
  if (from && to) return points;
  return from
    ? shortened(points, way.door !== null)
    : shortened(points.toReversed(), way.door !== null).toReversed();
}

/** The last leg, beyond the opening, at most so long; without one the way ends at the edge. */
function shortened(points: readonly Point[], hasDoor: boolean): Point[] {
  const [before, last] = [points.at(-2), points.at(-1)];
  if (!before || !last || !hasDoor || points.length < 3) return [...points];
  const length = Math.hypot(last.x - before.x, last.y - before.y);
  if (length <= BEYOND) return [...points];
  const share = BEYOND / length;
  const cut = { x: before.x + share * (last.x - before.x), y: before.y + share * (last.y - before.y) };
  return [...points.slice(0, -1), cut];
}

function arrowOf({ palette }: PlanContext, points: readonly Point[]): Primitive[] {
  const [before, tip] = [points.at(-2), points.at(-1)];
  if (!before || !tip || lengthOf(points) < SHORTEST) return [];
  const length = Math.hypot(tip.x - before.x, tip.y - before.y) || 1;
  const [ux, uy] = [(tip.x - before.x) / length, (tip.y - before.y) / length];
  const at = (along: number, aside: number): Point => ({
    x: tip.x - along * ux - aside * uy,
    y: tip.y - along * uy + aside * ux,
  });
  const shaft = [...points.slice(0, -1), at(HEAD.length * 0.8, 0)];
  return [
    // The halo keeps crossing arrows apart in a photocopy.
    { kind: 'path', path: polyline(shaft), stroke: { colour: palette.paper, width: HALO } },
    { kind: 'path', path: polyline(shaft), ...pen(palette.ink, WEIGHT.medium) },
    {
      kind: 'path',
      path: polygon([tip, at(HEAD.length, HEAD.half), at(HEAD.length, -HEAD.half)]),
      fill: palette.ink,
    },
  ];
}

const HALO = 1.1;

function lengthOf(points: readonly Point[]): number {
  return points.reduce((sum, point, index) => {
    const before = points[index - 1];
    return before ? sum + Math.hypot(point.x - before.x, point.y - before.y) : sum;
  }, 0);
}

const NUMBER = { height: 3.9, pad: 1, type: { size: TEXT.small, weight: 'bold' } } as const;

/** A number that found no room near its arrow, or near its thing where there is none, is led there by a line. */
function leaderOf(context: PlanContext, { step, points }: Arrow, box: Box): Primitive[] {
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const unit = step.to ?? step.from;
  const total = lengthOf(points);
  const targets =
    total < SHORTEST && unit
      ? [onPage(context, unit.spot)]
      : Array.from({ length: 21 }, (_, part) => pointAlong(points, (part / 20) * total));
  const far = ({ x, y }: Point): number => Math.hypot(x - middle.x, y - middle.y);
  const [nearest] = targets.toSorted((a, b) => far(a) - far(b));
  if (!nearest || far(nearest) <= NEAR) return [];
  return [{ kind: 'path', path: polyline([middle, nearest]), ...pen(context.palette.ink, WEIGHT.fine) }];
}

/** From the middle of a number to what it is of, mm. */
const NEAR = 6;

interface Room {
  readonly texts: Occupancy;
  readonly crossed: Occupancy;
  /** The things themselves. */
  readonly solid: Occupancy;
}

/** On or beside its own arrow, where it covers no other text, no thing, and as little of the arrows as can be. */
function placeFor(
  context: PlanContext,
  { step, points }: Arrow,
  { texts, crossed, solid }: Room,
): Box | null {
  const { type, pad, height } = NUMBER;
  const width = context.measure(stepMark(step), type.size, type.weight) + 2 * pad;
  let best: { box: Box; cost: number } | null = null;
  for (const { at, cost } of spotsFor(context, step, points)) {
    const box = { x: at.x - width / 2, y: at.y - height / 2, width, height };
    if (texts.isTaken(grownBox(box, 0.3)) || (context.area && !boxContains(context.area, box))) continue;
    const whole = cost + crossed.coveredArea(box) * CROSSING + solid.coveredArea(box) * COVERING;
    if (!best || whole < best.cost) best = { box, cost: whole };
  }
  return best?.box ?? null;
}

/** What a square millimetre of an arrow, or of a thing, under a number counts against a millimetre's distance. */
const [CROSSING, COVERING] = [0.35, 4];

interface NumberSpot {
  readonly at: Point;
  readonly cost: number;
}

/** Shorter than this an arrow would vanish under its own number, which then stands beside it. */
const SHORT_ARROW = 14;
/** From the arrow to the middle of a number beside it. */
const BESIDE = 3.4;

/** Along the arrow, on it and beside it, and in rings round the thing. */
function spotsFor(context: PlanContext, { from, to }: Step, points: readonly Point[]): NumberSpot[] {
  const unit = to ?? from;
  const home = unit ? onPage(context, unit.spot) : { x: 0, y: 0 };
  const total = lengthOf(points);
  const best = from && to ? 0.5 : to ? 0.8 : 0.2;
  const along =
    total < SHORTEST
      ? []
      : Array.from({ length: 37 }, (_, index) => 0.05 + index * 0.025).flatMap((share): NumberSpot[] => {
          const [at, next] = [pointAlong(points, share * total), pointAlong(points, share * total + 0.5)];
          const cost = 6 * Math.abs(share - best);
          const length = Math.hypot(next.x - at.x, next.y - at.y) || 1;
          const aside = { x: -(next.y - at.y) / length, y: (next.x - at.x) / length };
          const beside = [-BESIDE - 1, -BESIDE, BESIDE, BESIDE + 1].map((off) => ({
            at: { x: at.x + off * aside.x, y: at.y + off * aside.y },
            cost: cost + 5,
          }));
          return total < SHORT_ARROW ? beside : [{ at, cost }, ...beside];
        });
  const rings = [4.5, 6.5, 9, 12, 16].flatMap((radius) =>
    Array.from({ length: 16 }, (_, index): NumberSpot => {
      const angle = (index * Math.PI) / 8;
      return {
        at: { x: home.x + radius * Math.cos(angle), y: home.y + radius * Math.sin(angle) },
        cost: (total < SHORTEST ? 0 : 12) + radius * 0.8,
      };
    }),
  );
  return [...along, ...rings];
}

function pointAlong(points: readonly Point[], at: number): Point {
  let left = at;
  for (let index = 1; index < points.length; index++) {
    const [a, b] = [points[index - 1], points[index]];
    if (!a || !b) break;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (left <= length && length > 0) {
      return { x: a.x + (left / length) * (b.x - a.x), y: a.y + (left / length) * (b.y - a.y) };
    }
    left -= length;
  }
  return points.at(-1) ?? { x: 0, y: 0 };
}

function trackBoxes(points: readonly Point[]): Box[] {
  return points.slice(1).flatMap((b, index) => {
    const a = points[index];
    return a ? boxesAlong(a, b) : [];
  });
}

/** White on black, so that nobody takes it for a mark. */
function numberAt({ palette }: PlanContext, step: Step, box: Box): GroupPrimitive {
  const { type } = NUMBER;
  const text = textLine(
    stepMark(step),
    { x: box.x + box.width / 2, y: box.y + box.height / 2 + (CAP_HEIGHT * type.size) / 2 },
    { ...type, colour: palette.paper, anchor: 'middle' },
  );
  return {
    kind: 'group',
    children: [{ kind: 'path', path: roundedRectangle(box, box.height / 2), fill: palette.ink }, text],
  };
}
