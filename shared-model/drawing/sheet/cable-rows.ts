/** A lamp's cable corner by corner, as rows of the table of marks. */

import { formatAcross, formatDepth, formatLength, type Units } from '../../document/measures.ts';
import type { Lamp, Millimetres, Point } from '../../document/records.ts';
import { t } from '../../words/say.ts';

/** "cable 5995 mm, not covered"; nothing of a lamp without one. */
export function cableNotes(lamp: Lamp, units: Units): string[] {
  const length = cableLength(lamp);
  if (length === 0) return [];
  const told = formatLength(length, units);
  return [lamp.cableCovered ? t`cable ${told}, covered` : t`cable ${told}, not covered`];
}

/** What, off centre and from the edge: "Cable of L1 by", "1800 SL", "4300 US", ..., and "Socket of L1" at the last. */
export function cableRows(lamp: Lamp, mark: string, units: Units): string[][] {
  const corners = cornersOf(lamp);
  return corners.map((corner, index) => [
    index === corners.length - 1 ? t`Socket of ${mark}` : t`Cable of ${mark} by`,
    formatAcross(corner.x, units),
    formatDepth(corner.y, units),
  ]);
}

/** Where the cable turns and where it ends; a point on top of the one before it, or of the lamp, is no corner. */
export function cornersOf(lamp: Lamp): Point[] {
  return lamp.cable.filter((point, index) => distance(point, lamp.cable[index - 1] ?? lamp) >= SAME);
}

/** Closer points than this are one, mm. */
const SAME = 1;

/** From the lamp corner by corner to its socket; 0 without a cable. */
export function cableLength(lamp: Lamp): Millimetres {
  return lengthOf([lamp, ...cornersOf(lamp)]);
}

function lengthOf(course: readonly Point[]): Millimetres {
  return course.reduce((sum, point, index) => sum + distance(point, course[index - 1] ?? point), 0);
}

function distance(a: Point, b: Point): Millimetres {
  return Math.hypot(b.x - a.x, b.y - a.y);
}
