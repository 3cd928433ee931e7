/** The platform's outline as it was traced, with the doors and open edges of the one before where they belong now. */

import { allOf, platformOf } from '../document/document.ts';
import { doorway, edgeOf, type Segment } from '../document/openings.ts';
import type { Door, Platform, Point } from '../document/records.ts';
import { signedArea } from '../geometry/polygon.ts';
import { nearestOnSegment } from '../geometry/segments.ts';
import { t } from '../words/say.ts';
import { refuse, type Command } from './command.ts';
import { editsOf, propose } from './propose.ts';
import { tidy } from './spots.ts';
import { nameOf } from './words.ts';

export interface TracePlatform {
  /** Corner after corner, either way round. */
  readonly outline: readonly Point[];
}

/**
 * A door goes into the nearest edge that looks the same way and is long enough for it. An edge is open when the
 * nearest edge before that looked the same way was; where none was, it is closed. Refused when a door fits nowhere.
 */
export const tracePlatform: Command<TracePlatform> = (document, { outline }) => {
  const before = platformOf(document);
  const corners = sameWayRound(
    outline.map(({ x, y }) => ({ x: tidy(x), y: tidy(y) })),
    before.outline,
  );
  if (corners.length < 3) return refuse(t`A platform has at least three corners.`);
  const bare: Platform = { ...before, outline: corners, openEdges: [] };
  const after: Platform = { ...bare, openEdges: openEdgesOf(before, bare) };
  const doors: Door[] = [];
  for (const door of allOf(document, 'door')) {
    const moved = refitted(door, before, after);
    if (!moved) return refuse(nowhereWords(nameOf(document, door)));
    doors.push(moved);
  }
  return propose(document, editsOf([after, ...doors]), { label: t`trace the platform`, select: [after.id] });
};

function nowhereWords(door: string): string {
  return t`No edge of the new outline is long enough for ${door}; remove it first, or make it narrower.`;
}

function sameWayRound(corners: readonly Point[], before: readonly Point[]): readonly Point[] {
  return signedArea(corners) * signedArea(before) < 0 ? corners.toReversed() : corners;
}

function openEdgesOf(before: Platform, after: Platform): number[] {
  return edgesOf(after).flatMap((edge, index) => {
    const [like] = edgesOf(before)
      .map((old, oldIndex) => ({ oldIndex, cost: costOf(middleOf(edge), directionOf(edge), old) }))
      .sort((a, b) => a.cost - b.cost);
    return like && like.cost < Infinity && before.openEdges.includes(like.oldIndex) ? [index] : [];
  });
}

function refitted(door: Door, before: Platform, after: Platform): Door | null {
  const place = doorway(before, door);
  const [best] = edgesOf(after)
    .map((edge, index) => ({
      edge,
      index,
      cost: costOf(middleOf(place), directionOf(edgeOf(before, door.edge)), edge),
    }))
    .filter(({ edge }) => lengthOf(edge) >= door.width)
    .sort((a, b) => a.cost - b.cost);
  if (!best) return null;
  const way = directionOf(best.edge);
  const middle = middleOf(place);
  const along = (middle.x - best.edge.a.x) * way.x + (middle.y - best.edge.a.y) * way.y - door.width / 2;
  const offset = tidy(Math.max(0, Math.min(along, lengthOf(best.edge) - door.width)));
  return { ...door, edge: best.index, offset };
}

/** How far a spot is from an edge; endless when the edge looks another way than `way` by more than 60 degrees. */
function costOf(spot: Point, way: Point, edge: Segment): number {
  const own = directionOf(edge);
  if (own.x * way.x + own.y * way.y < 0.5) return Infinity;
  const near = nearestOnSegment(spot, edge.a, edge.b);
  return Math.hypot(near.x - spot.x, near.y - spot.y);
}

function edgesOf(platform: Platform): Segment[] {
  return platform.outline.map((_, index) => edgeOf(platform, index));
}

function middleOf({ a, b }: Segment): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function directionOf(edge: Segment): Point {
  const length = lengthOf(edge) || 1;
  return { x: (edge.b.x - edge.a.x) / length, y: (edge.b.y - edge.a.y) / length };
}

function lengthOf({ a, b }: Segment): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}
