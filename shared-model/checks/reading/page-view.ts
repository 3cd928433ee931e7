/**
 * What an eye sees of a page: the lines on it fill the page up to a margin. All points of a plane are the same height
 * below the eye, so distance, angle and apparent size have their extremes where the plane's coordinates say, exactly.
 */

import type { Rectangle3 } from '../../document/desks.ts';
import type { Degrees, Millimetres } from '../../document/records.ts';
import { degrees, type Vec3 } from '../../geometry/frame.ts';
import { MARGIN } from './published.ts';
import { cross, difference, dot, lengthOf } from './vectors.ts';

export interface PageView {
  /** From the eye to the nearest and to the farthest point of any line. */
  readonly nearest: Millimetres;
  readonly farthest: Millimetres;
  /** Between the line of sight and the page's normal, at the middle of the page. Over 90: seen from behind. */
  readonly angle: Degrees;
  /** The same at the line that is worst off. */
  readonly greatestAngle: Degrees;
  /**
   * What a small height on the page, measured up it, covers of the field of view: its share of the distance with the
   * tilt's foreshortening, 1/mm. At the middle, and at the line that looks smallest. 0: seen from behind.
   */
  readonly scale: { readonly middle: number; readonly least: number };
}

/** An eye and a stretch of a page in the frame of the page's plane: x to the reader's right, y up the page. */
interface OnPlane {
  /** Of the eye over the plane; negative behind it. */
  readonly height: Millimetres;
  /** Ends of the stretch, from the foot of the eye's height. */
  readonly across: readonly [Millimetres, Millimetres];
  readonly up: readonly [Millimetres, Millimetres];
}

/** The pages of a row of `count` as the eye sees them, from the reader's left. */
export function pageViews(row: Rectangle3, count: number, eye: Vec3): PageView[] {
  const [lipLeft, lipRight, , topLeft] = row;
  const [right, upwards] = [difference(lipRight, lipLeft), difference(topLeft, lipLeft)];
  const [width, height] = [lengthOf(right), lengthOf(upwards)];
  const fromCorner = difference(eye, lipLeft);
  const foot = { across: dot(fromCorner, right) / width, up: dot(fromCorner, upwards) / height };
  const over = dot(fromCorner, cross(right, upwards)) / (width * height);
  return Array.from({ length: count }, (_, page) => {
    const [left, end] = [(width * page) / count, (width * (page + 1)) / count];
    return viewOf({
      height: over,
      across: [left + MARGIN - foot.across, end - MARGIN - foot.across],
      up: [MARGIN - foot.up, height - MARGIN - foot.up],
    });
  });
}

function viewOf({ height, across, up }: OnPlane): PageView {
  const distance = (a: number, b: number): number => Math.hypot(height, a, b);
  const [nearA, farA, nearB, farB] = [
    nearestTo0(across),
    farthestFrom0(across),
    nearestTo0(up),
    farthestFrom0(up),
  ];
  const farthest = distance(farA, farB);
  const [middleA, middleB] = [(across[0] + across[1]) / 2, (up[0] + up[1]) / 2];
  const scale = (a: number, b: number): number =>
    height > 0 ? Math.hypot(height, a) / distance(a, b) ** 2 : 0;
  return {
    nearest: distance(nearA, nearB),
    farthest,
    angle: angleAt(height, distance(middleA, middleB)),
    // The cosine is height / distance: in front of the page the farthest line is worst off, behind it the nearest.
    greatestAngle: angleAt(height, height > 0 ? farthest : distance(nearA, nearB)),
    // Up the page it only shrinks away from the foot; across it first grows, if at all, and then shrinks.
    scale: { middle: scale(middleA, middleB), least: Math.min(scale(nearA, farB), scale(farA, farB)) },
  };
}

/** An eye on the page itself looks along it. */
function angleAt(height: number, distance: number): Degrees {
  return distance === 0 ? 90 : degrees(Math.acos(height / distance));
}

function nearestTo0([low, high]: readonly [number, number]): number {
  return low > 0 ? low : high < 0 ? high : 0;
}

function farthestFrom0([low, high]: readonly [number, number]): number {
  return Math.abs(low) > Math.abs(high) ? low : high;
}
