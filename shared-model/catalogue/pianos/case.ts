/**
 * The curved case of a grand: straight at the keyboard and along the spine, an S along the bentside, a round tail.
 * The proportions are our own drawing of the usual shape; makers differ by some centimetres.
 */

import type { Millimetres, Point } from '../../document/records.ts';

/** Along the case from the keyboard's front, and across it from the spine; shares of length and width. */
type Share = readonly [along: number, across: number];
type Cubic = readonly [Share, Share, Share, Share];

const BENTSIDE: readonly Cubic[] = [
  [
    [0.34, 1],
    [0.52, 1],
    [0.55, 0.86],
    [0.63, 0.72],
  ],
  [
    [0.63, 0.72],
    [0.7, 0.59],
    [0.8, 0.56],
    [0.9, 0.5],
  ],
  [
    [0.9, 0.5],
    [0.96, 0.46],
    [1, 0.38],
    [1, 0.24],
  ],
  [
    [1, 0.24],
    [1, 0.1],
    [0.98, 0],
    [0.93, 0],
  ],
];

const STEPS = 8;

/** Corners about the middle of the case: pianist's left end of the keyboard first, then round by his right. */
export function grandOutline(length: Millimetres, width: Millimetres): Point[] {
  const shares: Share[] = [
    [0, 0],
    [0, 1],
    ...BENTSIDE.flatMap((cubic, index) => sampled(cubic, index === 0)),
  ];
  return shares.map(([along, across]) => ({ x: width / 2 - across * width, y: length / 2 - along * length }));
}

/** How far the case reaches from the spine, as a share of its width, at a share of its length from the keyboard. */
export function caseWidthShare(along: number): number {
  return acrossAt(
    BENTSIDE.slice(0, 3).flatMap((cubic, index) => sampled(cubic, index === 0)),
    along,
  );
}

function acrossAt(points: readonly Share[], along: number): number {
  let before = points[0] ?? [0, 1];
  for (const point of points) {
    if (point[0] >= along) return between(before, point, along);
    before = point;
  }
  return before[1];
}

function between(a: Share, b: Share, along: number): number {
  const length = b[0] - a[0];
  return length > 0 ? a[1] + ((b[1] - a[1]) * Math.max(0, along - a[0])) / length : b[1];
}

function sampled(cubic: Cubic, withStart: boolean): Share[] {
  const points: Share[] = [];
  for (let step = withStart ? 0 : 1; step <= STEPS; step++) points.push(onCubic(cubic, step / STEPS));
  return points;
}

function onCubic([a, b, c, d]: Cubic, t: number): Share {
  const s = 1 - t;
  const mix = (axis: 0 | 1) =>
    s * s * s * a[axis] + 3 * s * s * t * b[axis] + 3 * s * t * t * c[axis] + t * t * t * d[axis];
  return [mix(0), mix(1)];
}
