/** What a picture shows at a spot, for clicks on it. */

import type { Vec2 } from '../../geometry/frame.ts';
import type { PathItem, Primitive } from '../primitives.ts';

/** A painted area that belongs to something, with the box round it. */
export interface PaintedArea {
  readonly subject: string;
  readonly path: readonly PathItem[];
  readonly low: Vec2;
  readonly high: Vec2;
}

/** The subject of the group whose area was painted last at a spot of the paper, mm; null: no area of a subject. */
export function subjectAt(drawn: readonly Primitive[], spot: Vec2): string | null {
  return topmostAt(paintedAreas(drawn), spot);
}

/** For many spots of one picture: its areas, in painting order. */
export function paintedAreas(drawn: readonly Primitive[]): PaintedArea[] {
  const areas: PaintedArea[] = [];
  const collect = (primitives: readonly Primitive[], subject: string | null): void => {
    for (const each of primitives) {
      if (each.kind === 'group') collect(each.children, each.subject ?? subject);
      else if (each.kind === 'path' && each.fill !== undefined && subject !== null) {
        areas.push(areaOf(subject, each.path));
      }
    }
  };
  collect(drawn, null);
  return areas;
}

export function topmostAt(areas: readonly PaintedArea[], { x, y }: Vec2): string | null {
  for (let index = areas.length - 1; index >= 0; index--) {
    const area = areas[index];
    if (!area || x < area.low.x || x > area.high.x || y < area.low.y || y > area.high.y) continue;
    if (isInside(area.path, x, y)) return area.subject;
  }
  return null;
}

function areaOf(subject: string, path: readonly PathItem[]): PaintedArea {
  let [lowX, lowY, highX, highY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const item of path) {
    if (item[0] !== 'M' && item[0] !== 'L') continue;
    lowX = Math.min(lowX, item[1]);
    lowY = Math.min(lowY, item[2]);
    highX = Math.max(highX, item[1]);
    highY = Math.max(highY, item[2]);
  }
  return { subject, path, low: { x: lowX, y: lowY }, high: { x: highX, y: highY } };
}

/** Whether a spot is inside a path of straight lines: a line from it to the right crosses the edges an odd number of times. */
function isInside(path: readonly PathItem[], x: number, y: number): boolean {
  let inside = false;
  let [startX, startY, atX, atY] = [0, 0, 0, 0];
  for (const item of path) {
    if (item[0] === 'C') continue;
    const toX = item[0] === 'Z' ? startX : item[1];
    const toY = item[0] === 'Z' ? startY : item[2];
    if (item[0] === 'M') {
      startX = toX;
      startY = toY;
    } else if (atY > y !== toY > y && x < atX + ((y - atY) / (toY - atY)) * (toX - atX)) inside = !inside;
    atX = toX;
    atY = toY;
  }
  return inside;
}
