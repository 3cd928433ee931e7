/**
 * Things that run into each other. Heights count: a desk may hang over knees, and legs stand between legs. Desks and
 * the paper on them are compared as boards in space, so that crossing rows are found wherever they cross.
 */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { PlacedRecord, Point } from '../../document/records.ts';
import { boundsOf, depthInPolygon, type Polygon } from '../../geometry/polygon.ts';
import { gapBetweenPolygons, polygonsOverlap } from '../../geometry/polygon-pairs.ts';
import type { Finding } from '../finding.ts';
import { boardsMeet, heightsOf, planBetween } from './boards.ts';
import { BoxGrid, touch } from './box-grid.ts';
import { mayShareRoom, partsMayShareRoom } from './may-share.ts';
import { shortestWayClear } from './overlap-depth.ts';
import { roomOf, type Room, type Thing } from './room.ts';
import type { Board, Solid } from './solids.ts';

/** Less than this is not seen with a tape measure. */
const NOTICED = 1;
/** In a heap of things, no more than so many collisions of one thing are named. */
const MOST_PARTNERS = 6;
/** Nor more than so many in all: whoever has a thousand to mend does not want the next ones yet, and they take minutes. */
const MOST_FINDINGS = 1000;

/** `measured` is minus the shortest shift that parts the two; `required` 0. Detail `more`: there are others, not listed. */
export function overlapFindings(
  document: Document,
  setup: Id<'setup'>,
  room: Room = roomOf(document, setup),
): Finding[] {
  const { things } = room;
  const grid = new BoxGrid(things.map((thing) => thing.bounds));
  const partners = new Uint8Array(things.length);
  const findings: Finding[] = [];
  for (const [index, a] of things.entries()) {
    for (const other of grid.touching(a.bounds)) {
      const b = things[other];
      if (other <= index || !b || isFull(partners, index) || isFull(partners, other)) continue;
      const clash = worstClash(a, b);
      if (!clash) continue;
      if (findings.length === MOST_FINDINGS) return andMore(findings);
      partners[index] = (partners[index] ?? 0) + 1;
      partners[other] = (partners[other] ?? 0) + 1;
      findings.push(overlapOf(a.record, b.record, clash));
    }
  }
  return findings;
}

/** Says with the last finding that there are others. */
function andMore(findings: readonly Finding[]): Finding[] {
  return findings.map((finding, index) =>
    index === findings.length - 1 ? { ...finding, detail: { ...finding.detail, more: 1 } } : finding,
  );
}

interface Clash {
  readonly depth: number;
  readonly at: Point;
  /** Whether desks or paper run into something, and not only what stands on the floor. */
  readonly part: 'desk' | 'floor';
}

function isFull(partners: Uint8Array, index: number): boolean {
  return (partners[index] ?? 0) >= MOST_PARTNERS;
}

function overlapOf(a: PlacedRecord, b: PlacedRecord, { depth, at, part }: Clash): Finding {
  return {
    code: 'room.overlap',
    severity: 'fail',
    subjects: [a.id, b.id],
    measured: -depth,
    required: 0,
    unit: 'mm',
    where: at,
    detail: { part },
  };
}

function worstClash(a: Thing, b: Thing): Clash | null {
  if (mayShareRoom(a.record, b.record) || isStacked(a, b)) return null;
  const clashes = [
    ...a.solids.flatMap((solid) => b.solids.map((other) => solidsClash(solid, other))),
    ...a.boards.flatMap((board) => b.solids.map((solid) => boardInSolid(board, solid))),
    ...b.boards.flatMap((board) => a.solids.map((solid) => boardInSolid(board, solid))),
    ...a.boards.flatMap((board) => b.boards.map((other) => boardsClash(board, other))),
  ];
  return clashes.reduce(
    (worst, clash) => (clash && clash.depth > (worst?.depth ?? NOTICED) ? clash : worst),
    null,
  );
}

/** A level may stand on a larger one. */
function isStacked(a: Thing, b: Thing): boolean {
  const [lower, upper] = [a.solids[0]?.outline, b.solids[0]?.outline];
  if (a.record.kind !== 'riser' || b.record.kind !== 'riser' || !lower || !upper) return false;
  return contains(lower, upper) || contains(upper, lower);
}

function contains(outer: Polygon, inner: Polygon): boolean {
  return inner.every((corner) => depthInPolygon(corner, outer) > -NOTICED);
}

function solidsClash(a: Solid, b: Solid): Clash | null {
  const together = Math.min(a.high, b.high) - Math.max(a.low, b.low);
  if (together <= NOTICED || partsMayShareRoom(a, b)) return null;
  return plansClash(a.outline, b.outline, 'floor');
}

function boardInSolid(board: Board, solid: Solid): Clash | null {
  const { low, high } = heightsOf(board.corners);
  if (Math.min(high, solid.high) - Math.max(low, solid.low) <= NOTICED) return null;
  return plansClash(planBetween(board.corners, solid.low, solid.high), solid.outline, 'desk');
}

function boardsClash(a: Board, b: Board): Clash | null {
  const [heightsA, heightsB] = [heightsOf(a.corners), heightsOf(b.corners)];
  const [low, high] = [Math.max(heightsA.low, heightsB.low), Math.min(heightsA.high, heightsB.high)];
  if (!boardsMeet(a.corners, b.corners)) return null;
  return plansClash(planBetween(a.corners, low, high), planBetween(b.corners, low, high), 'desk');
}

function plansClash(a: Polygon, b: Polygon, part: Clash['part']): Clash | null {
  if (a.length < 3 || b.length < 3 || !touch(boundsOf(a), boundsOf(b)) || !polygonsOverlap(a, b)) return null;
  return { depth: shortestWayClear(a, b).length, at: gapBetweenPolygons(a, b).a, part };
}
