/** Edges of the platform and the doors in them, as segments. */

import type { Door, Platform, Point } from './records.ts';

export interface Segment {
  readonly a: Point;
  readonly b: Point;
}

export function edgeOf(platform: Platform, index: number): Segment {
  const corners = platform.outline;
  const a = corners[index % corners.length];
  const b = corners[(index + 1) % corners.length];
  if (!a || !b) throw new Error('platform without corners');
  return { a, b };
}

export function openEdgesOf(platform: Platform): Segment[] {
  return platform.openEdges.map((index) => edgeOf(platform, index));
}

/** The stretch of the edge that the door takes up. */
export function doorway(platform: Platform, door: Door): Segment {
  const { a, b } = edgeOf(platform, door.edge);
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const at = (along: number): Point => ({
    x: a.x + ((b.x - a.x) * along) / length,
    y: a.y + ((b.y - a.y) * along) / length,
  });
  return { a: at(door.offset), b: at(door.offset + door.width) };
}

export type OpeningKind = 'door' | 'steps' | 'ramp';

/** What leads down over an open edge is no door. */
export function openingKind(platform: Platform, { edge, stepFree }: Door): OpeningKind {
  if (platform.height <= 0 || !platform.openEdges.includes(edge)) return 'door';
  return stepFree ? 'ramp' : 'steps';
}
