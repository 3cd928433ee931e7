/** What is printed on a page, as far as the picture is large enough to show it. */

import type { StandSide } from '../../../document/records.ts';
import type { Vec3 } from '../../../geometry/frame.ts';
import { WEIGHT } from '../../style.ts';
import { sizeInPicture, type ViewContext } from '../context.ts';
import type { Marks } from '../mesh.ts';
import { mixed } from '../shade.ts';
import { between } from '../vectors.ts';

/** Corners of a page: lip left, lip right, top right, top left as its reader sees them. */
export type PageCorners = readonly [Vec3, Vec3, Vec3, Vec3];

/** Of the printed area from the edge of the page, mm. Common practice, no source. */
const MARGIN = 18;
/** A staff of usual size, for pages that do not say theirs. */
const USUAL_STAFF = 7;
/** From one staff to the next, in staff sizes. */
const PITCH = 3.9;

/** Smallest sizes on paper at which the five lines of a staff, and a staff at all, can be told apart. */
const LEAST_STAFF = 0.9;
const LEAST_PITCH = 0.7;

interface PageOf {
  readonly side: StandSide;
  /** Number of the page, so that no two look alike. */
  readonly page: number;
  readonly row: Vec3;
}

/** `row`: middle of all pages of the desk, so that they look alike. */
export function staves(context: ViewContext, corners: PageCorners, { side, page, row }: PageOf): Marks[] {
  const [a, b, c, d] = corners;
  const staff = side.staffSize ?? USUAL_STAFF;
  const size = sizeInPicture(context, staff, row);
  if (size * PITCH < LEAST_PITCH) return [];
  const { pageWidth: width, pageHeight: height } = side;
  const at = (x: number, y: number): Vec3 =>
    between(between(a, b, x / width), between(d, c, x / width), y / height);
  const across = (y: number): Vec3[] => [at(MARGIN, y), at(width - MARGIN, y)];
  const feet = feetOfStaves(height, staff);
  if (size < LEAST_STAFF) {
    const bands = feet.map((foot) => [...across(foot), ...across(foot + staff).toReversed()]);
    return [{ rings: bands, fill: mixed(context.tints.page, context.tints.print, 0.42) }];
  }
  const lines = feet.flatMap((foot) => [0, 1, 2, 3, 4].map((line) => across(foot + (line * staff) / 4)));
  const bars = feet.flatMap((foot, index) =>
    barsOf(page + index).map((share) => {
      const x = MARGIN + share * (width - 2 * MARGIN);
      return [at(x, foot), at(x, foot + staff)];
    }),
  );
  const pen = { colour: context.tints.print, width: Math.min(WEIGHT.hair, size * 0.05) };
  return [{ rings: [...lines, ...bars], stroke: pen }];
}

/** Lower lines of the staves, from the foot of the page. */
function feetOfStaves(height: number, staff: number): number[] {
  const count = Math.max(0, Math.floor((height - 2 * MARGIN) / (staff * PITCH)));
  return Array.from({ length: count }, (_, index) => MARGIN + (index + 0.7) * staff * PITCH);
}

/** Bar lines as shares of a staff: uneven, as bars are. */
function barsOf(number: number): number[] {
  const shift = ((number * 37) % 11) / 100;
  return [0, 0.24 + shift, 0.5 - shift / 2, 0.74 + shift / 3, 1];
}
