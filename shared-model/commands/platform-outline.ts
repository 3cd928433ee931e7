/** Edits the corners of the platform; doors and open edges follow. */

import type { Document } from '../document/document.ts';
import { allOf, platformOf } from '../document/document.ts';
import { doorway, edgeOf, type Segment } from '../document/openings.ts';
import type { Door, Platform, Point } from '../document/records.ts';
import { t } from '../words/say.ts';
import { refuse, type Command, type Outcome } from './command.ts';
import { editsOf, propose } from './propose.ts';
import { tidy } from './spots.ts';
import { nameOf } from './words.ts';

export interface MoveCorners {
  /** Corners by index, and where each goes. */
  readonly moves: readonly (Point & { readonly corner: number })[];
}

/** Moves one corner, the two of an edge, or more at once. */
export const moveCorners: Command<MoveCorners> = (document, { moves }) => {
  const platform = platformOf(document);
  const missing = moves.find(({ corner }) => !platform.outline[corner]);
  if (missing) return noSuchCorner(missing.corner);
  const outline = platform.outline.map((corner, index) => {
    const to = moves.find((move) => move.corner === index);
    return to ? { x: tidy(to.x), y: tidy(to.y) } : corner;
  });
  const label =
    moves.length === 1 ? t`move a corner of the platform` : t`move ${moves.length} corners of the platform`;
  return reshape(document, { outline, openEdges: platform.openEdges }, (edge) => edge, label);
};

export interface InsertCorner extends Point {
  /** The edge that the new corner divides. */
  readonly edge: number;
}

/** Divides an edge in two; both halves are open when it was. A door must lie clear of the new corner. */
export const insertCorner: Command<InsertCorner> = (document, { edge, x, y }) => {
  const platform = platformOf(document);
  if (!platform.outline[edge]) return noSuchEdge(edge);
  const corner = { x: tidy(x), y: tidy(y) };
  const whole = edgeOf(platform, edge);
  const cut = alongOf(corner, whole);
  const inTheWay = doorsOf(document, edge).find(
    (door) => door.offset < cut && cut < door.offset + door.width,
  );
  if (inTheWay) return refuse(inTheWayWords(nameOf(document, inTheWay)));
  const outline = [...platform.outline.slice(0, edge + 1), corner, ...platform.outline.slice(edge + 1)];
  const follow = (old: number, door?: Door): number => {
    const isBehind = old === edge && door !== undefined && door.offset >= cut;
    return old > edge || isBehind ? old + 1 : old;
  };
  const kept = platform.openEdges.map((open) => follow(open));
  const openEdges = platform.openEdges.includes(edge) ? [...kept, edge + 1] : kept;
  return reshape(document, { outline, openEdges }, follow, t`add a corner to the platform`);
};

export interface RemoveCorner {
  readonly corner: number;
}

/** Joins the two edges that meet in the corner; the joint edge is open when one of them was. */
export const removeCorner: Command<RemoveCorner> = (document, { corner }) => {
  const platform = platformOf(document);
  const count = platform.outline.length;
  if (!platform.outline[corner]) return noSuchCorner(corner);
  if (count <= 3) return refuse(t`A platform has at least three corners.`);
  const outline = platform.outline.filter((_, index) => index !== corner);
  const follow = (old: number): number => (old >= corner ? (old + count - 2) % (count - 1) : old);
  const openEdges = [...new Set(platform.openEdges.map(follow))];
  return reshape(document, { outline, openEdges }, follow, t`remove a corner of the platform`);
};

/** Where the doors of an old edge are to be looked for. */
type Follow = (edge: number, door?: Door) => number;

function reshape(
  document: Document,
  shape: Pick<Platform, 'outline' | 'openEdges'>,
  follow: Follow,
  label: string,
): Outcome {
  const before = platformOf(document);
  const openEdges = [...shape.openEdges].sort((a, b) => a - b);
  const after: Platform = { ...before, outline: shape.outline, openEdges };
  const doors = allOf(document, 'door').map((door) => refitted(door, before, after, follow(door.edge, door)));
  return propose(document, editsOf([after, ...doors]), { label });
}

/** The door in the edge it follows, as near as can be to where it was. */
function refitted(door: Door, before: Platform, after: Platform, edge: number): Door {
  const { a, b } = doorway(before, door);
  const wall = edgeOf(after, edge);
  if (isSameSegment(edgeOf(before, door.edge), wall)) return { ...door, edge };
  const room = Math.hypot(wall.b.x - wall.a.x, wall.b.y - wall.a.y) - door.width;
  const offset = alongOf({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, wall) - door.width / 2;
  // A wall that is too short for the door is refused by the rules of the document.
  return { ...door, edge, offset: tidy(Math.max(0, Math.min(offset, room))) };
}

function doorsOf(document: Document, edge: number): Door[] {
  return allOf(document, 'door').filter((door) => door.edge === edge);
}

/** How far along the segment, from its first end, the point lies beside it. */
function alongOf(point: Point, { a, b }: Segment): number {
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  return ((point.x - a.x) * (b.x - a.x) + (point.y - a.y) * (b.y - a.y)) / length;
}

function isSameSegment(p: Segment, q: Segment): boolean {
  return p.a.x === q.a.x && p.a.y === q.a.y && p.b.x === q.b.x && p.b.y === q.b.y;
}

function inTheWayWords(door: string): string {
  return t`${door} is where the new corner would be; move it first.`;
}

function noSuchCorner(index: number): Outcome {
  return refuse(t`The platform has no corner ${index}.`);
}

function noSuchEdge(index: number): Outcome {
  return refuse(t`The platform has no edge ${index}.`);
}
