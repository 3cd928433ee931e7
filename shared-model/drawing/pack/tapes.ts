/**
 * Marks by two tapes: how far each is from two fixed points, for a crew without a square. Two circles meet well only
 * where they cross steeply, so a mark near the line between its points is measured from two others.
 */

import { formatBare, formatFine, type Units } from '../../document/measures.ts';
import type { Millimetres, Point } from '../../document/records.ts';
import { atMost } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';

export interface FixedPoint extends Point {
  /** "A" */
  readonly letter: string;
}

/** Two fixed points, to the left of the line from the first to the second of which lies whatever is measured from them. */
export type Base = readonly [FixedPoint, FixedPoint];

export interface TapedMark {
  readonly base: Base;
  readonly distances: readonly [Millimetres, Millimetres];
  /** By as much as this rounding both distances moves the mark at the most. */
  readonly off: Millimetres;
  /** The mark lies on the other side of the line than the rest of the platform. */
  readonly beyond: boolean;
  /** A third distance, to tell a slip of the tape; null: there is no third point. */
  readonly check: { readonly from: FixedPoint; readonly distance: Millimetres } | null;
}

/** What a tape can be read to: whole millimetres, sixteenths of an inch. */
const PART: Readonly<Record<Units, number>> = { metric: 1, imperial: 16 };
const INCH = 25.4;

/** Tapes that cross as steeply as this, or more, are as good as any: both distances may be out by half as much as the mark. */
const STEEP = 0.5;
/** A slip of the tape moves a mark by more than four times as much. Common practice, no source. */
const FLAT = 0.25;

/** From the first of the bases from which the tapes cross steeply; from the steepest where they do from none. */
export function taped(mark: Point, bases: readonly Base[], units: Units): TapedMark | null {
  const tries = bases
    .map((base) => ({ base, steepness: steepnessAt(mark, base) }))
    .filter(({ steepness }) => steepness > 0)
    .toSorted((a, b) => Math.min(STEEP, b.steepness) - Math.min(STEEP, a.steepness));
  const [best] = tries;
  if (!best) return null;
  const { base } = best;
  const all = bases.flat();
  const third = all.find(({ letter }) => base.every((own) => own.letter !== letter));
  return {
    base,
    distances: [distance(mark, base[0]), distance(mark, base[1])],
    off: roundingOf(units) / best.steepness,
    beyond: sideOf(mark, base) < 0,
    check: third ? { from: third, distance: distance(mark, third) } : null,
  };
}

/**
 * Sine of half the angle at which the two circles cross: an error of e in both distances moves the mark by e divided by
 * this, at the worst. 0: on the line between the points, or on one of them.
 */
function steepnessAt(mark: Point, [a, b]: Base): number {
  const [toA, toB] = [distance(mark, a), distance(mark, b)];
  if (toA < 1 || toB < 1) return 0;
  const cosine = ((a.x - mark.x) * (b.x - mark.x) + (a.y - mark.y) * (b.y - mark.y)) / (toA * toB);
  return Math.sqrt(Math.max(0, (1 - Math.abs(cosine)) / 2));
}

export function isSteep(mark: Point, base: Base): boolean {
  return steepnessAt(mark, base) >= STEEP;
}

/** Tapes from these points run nearly alike at the mark. */
export function isFlat(mark: Point, base: Base): boolean {
  return steepnessAt(mark, base) < FLAT;
}

/** The most by which a figure differs from what it stands for. */
function roundingOf(units: Units): Millimetres {
  return (units === 'metric' ? 1 : INCH) / PART[units] / 2;
}

/** "Figures are rounded to whole millimetres, which moves no mark by more than 1 mm." */
export function roundingWords(tapes: readonly TapedMark[], units: Units): string {
  const most = tapes.reduce((so, { off }) => Math.max(so, off), 0);
  return units === 'metric'
    ? t`Distances are rounded to whole millimetres, which moves no mark by more than ${atMost(Math.ceil(most * 10) / 10, 1)} mm.`
    : t`Distances are rounded to the nearest 1/16 in, which moves no mark by more than ${Math.ceil((most / INCH) * 16)}/16 in.`;
}

/** Positive to the left of the line from the first point to the second. */
function sideOf({ x, y }: Point, [a, b]: Base): number {
  return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
}

export function distance(a: Point, b: Point): Millimetres {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** "A 3210" and "B 4481". */
export function tapeWords({ base, distances }: TapedMark, units: Units): [string, string] {
  const word = (index: 0 | 1): string => `${base[index].letter} ${tapeLength(distances[index], units)}`;
  return [word(0), word(1)];
}

export function tapeLength(length: Millimetres, units: Units): string {
  return formatFine(length, units, PART[units]);
}

/** To tell a slip, whole millimetres or quarters of an inch are enough. */
export function checkWords({ check }: TapedMark, units: Units): string {
  return check ? `${check.from.letter} ${formatBare(check.distance, units)}` : '';
}

/**
 * Corners of a platform to measure from, front stage right first, then on round it: A, B, C, D. Those that lie farthest out to
 * the four sides; a platform with a round front has them where its sides begin.
 */
export function cornerPoints(outline: readonly Point[]): FixedPoint[] {
  const corners: Point[] = [];
  for (const [across, up] of OUT) {
    const farthest = outline.reduce<Point | null>(
      (best, point) =>
        !best || point.x * across + point.y * up > best.x * across + best.y * up ? point : best,
      null,
    );
    const isNew = farthest && corners.every((corner) => distance(corner, farthest) > APART);
    if (isNew) corners.push(farthest);
  }
  return corners.map(({ x, y }, index) => ({ x, y, letter: LETTERS.charAt(index) }));
}

const OUT = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;
const LETTERS = 'ABCD';
/** Nearer to each other than this two corners are no base. */
const APART: Millimetres = 1000;

/** Corner to corner round the platform, the front first. */
export function basesOf(points: readonly FixedPoint[]): Base[] {
  return points.flatMap((point, index): Base[] => {
    const next = points[(index + 1) % points.length];
    return next && next !== point && (points.length > 2 || index === 0) ? [[point, next]] : [];
  });
}
