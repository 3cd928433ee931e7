/** The platform's boundary as walls to keep inside of, and the exits that break it. */

import { allOf, platformOf, type Document } from '../../document/document.ts';
import { doorway, edgeOf, type Segment } from '../../document/openings.ts';
import type { Door, Platform, Point } from '../../document/records.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import { signedArea } from '../../geometry/polygon.ts';

export interface Exit {
  readonly id: string;
  readonly doorway: Segment;
  readonly middle: Point;
  readonly width: number;
  readonly stepFree: boolean;
  /** Unit vector out of the platform. */
  readonly outward: Vec2;
}

/** What nobody goes over. `of`: the platform, or the level whose edge it is. */
export interface Wall extends Segment {
  readonly of: string;
}

export function exitsOf(document: Document): Exit[] {
  const platform = platformOf(document);
  return allOf(document, 'door')
    .filter((door) => door.exit)
    .map((door) => exitAt(platform, door));
}

/**
 * The platform's edges without the stretches that exits take up, those of them that are `open`. Open edges are walls too:
 * nobody walks over them.
 */
export function wallsOf(document: Document, open: (door: Door) => boolean = () => true): Wall[] {
  const platform = platformOf(document);
  const exits = allOf(document, 'door').filter((door) => door.exit && open(door));
  return platform.outline.flatMap((_, index) =>
    withoutDoors(
      edgeOf(platform, index),
      exits.filter((door) => door.edge === index),
    ).map((wall) => ({ ...wall, of: platform.id })),
  );
}

/** Unit vector square to edge `index`, away from the platform. */
export function outwardOf(platform: Platform, index: number): Vec2 {
  const { a, b } = edgeOf(platform, index);
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const side = signedArea(platform.outline) > 0 ? 1 : -1;
  return { x: (side * (b.y - a.y)) / length, y: (side * (a.x - b.x)) / length };
}

export function between({ a, b }: Segment, share: number): Point {
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
}

export function lengthOf({ a, b }: Segment): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

function exitAt(platform: Platform, door: Door): Exit {
  const opening = doorway(platform, door);
  return {
    id: door.id,
    doorway: opening,
    middle: between(opening, 0.5),
    width: lengthOf(opening),
    stepFree: door.stepFree,
    outward: outwardOf(platform, door.edge),
  };
}

/** What is left of an edge when the doors in it (which may overlap) are taken out. */
function withoutDoors(edge: Segment, doors: readonly Door[]): Segment[] {
  const length = lengthOf(edge);
  const left: Segment[] = [];
  let from = 0;
  for (const door of [...doors].sort((a, b) => a.offset - b.offset)) {
    if (door.offset > from) left.push(stretch(edge, from, Math.min(door.offset, length)));
    from = Math.max(from, door.offset + door.width);
  }
  if (from < length) left.push(stretch(edge, from, length));
  return left;
}

function stretch(edge: Segment, from: number, to: number): Segment {
  const length = lengthOf(edge) || 1;
  return { a: between(edge, from / length), b: between(edge, to / length) };
}
