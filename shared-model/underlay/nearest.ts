/** What of an underlay's lines is near a spot: a corner, or else a line. */

import type { Underlay, UnderlayLines } from '../document/records.ts';
import type { Vec2 } from '../geometry/frame.ts';
import { nearestOnSegment } from '../geometry/segments.ts';
import { stageToUnderlay, underlayToStage } from './place.ts';

export interface Near {
  readonly at: Vec2;
  readonly what: 'corner' | 'line';
}

/** On the stage, at most `within` mm away; null: nothing is. A picture has no lines. */
export function nearestOf(underlay: Underlay, spot: Vec2, within: number): Near | null {
  if (!underlay.shown || underlay.content.type === 'picture') return null;
  const own = stageToUnderlay(underlay, spot);
  const found = nearestIn(underlay.content, own, within / underlay.scale);
  return found && { ...found, at: underlayToStage(underlay, found.at) };
}

/** A corner counts before a line, though the line is nearer: every corner is on one. */
function nearestIn(content: UnderlayLines, spot: Vec2, within: number): Near | null {
  const boxes = lineBoxes(content);
  let corner: Found | null = null;
  let line: Found | null = null;
  content.lines.forEach((numbers, index) => {
    if (!isNearBox(boxes, index, spot, within)) return;
    for (let at = 0; at + 1 < numbers.length; at += 2) {
      const point = pointAt(numbers, at);
      corner = nearer(corner, point, spot, within);
      if (at >= 2) line = nearer(line, nearestOnSegment(spot, pointAt(numbers, at - 2), point), spot, within);
    }
  });
  // The compiler does not follow assignments in a callback.
  const [best, other] = [corner as Found | null, line as Found | null];
  if (best) return { at: best.at, what: 'corner' };
  return other && { at: other.at, what: 'line' };
}

interface Found {
  readonly at: Vec2;
  readonly distance: number;
}

function nearer(best: Found | null, at: Vec2, spot: Vec2, within: number): Found | null {
  const distance = Math.hypot(at.x - spot.x, at.y - spot.y);
  return distance <= Math.min(within, best?.distance ?? Infinity) ? { at, distance } : best;
}

function pointAt(numbers: readonly number[], at: number): Vec2 {
  return { x: numbers[at] ?? 0, y: numbers[at + 1] ?? 0 };
}

const known = new WeakMap<UnderlayLines, Float64Array>();

/** Least and greatest x, y of each line, so that a far line costs nothing. */
export function lineBoxes(content: UnderlayLines): Float64Array {
  const before = known.get(content);
  if (before) return before;
  const boxes = new Float64Array(content.lines.length * 4);
  content.lines.forEach((numbers, index) => {
    const box = [Infinity, Infinity, -Infinity, -Infinity];
    for (let at = 0; at + 1 < numbers.length; at += 2) {
      const { x, y } = pointAt(numbers, at);
      box[0] = Math.min(box[0] ?? x, x);
      box[1] = Math.min(box[1] ?? y, y);
      box[2] = Math.max(box[2] ?? x, x);
      box[3] = Math.max(box[3] ?? y, y);
    }
    boxes.set(box, index * 4);
  });
  known.set(content, boxes);
  return boxes;
}

function isNearBox(boxes: Float64Array, index: number, { x, y }: Vec2, within: number): boolean {
  const [minX = 0, minY = 0, maxX = 0, maxY = 0] = boxes.subarray(index * 4, index * 4 + 4);
  return x >= minX - within && x <= maxX + within && y >= minY - within && y <= maxY + within;
}
