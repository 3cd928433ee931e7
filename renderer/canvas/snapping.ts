/**
 * Where a dragged item settles, and why. Each axis settles by itself on the nearest line within reach; when no line
 * is near, on a round figure, so that the crew gets "820" and not "818.37". Every line that caught the item is
 * handed back as a guide, to be drawn with its reason.
 */

import type { Vec2 } from '#model/geometry/frame.ts';

export type GuideReason =
  | 'centreLine'
  | 'frontEdge'
  /** The least distance to the front edge that the director asked for. */
  | 'edgeDistance'
  | 'inLine'
  /** As far from the centre line as a neighbour on the other side. */
  | 'mirrored'
  /** Half-way between two neighbours. */
  | 'midway';

export interface Guide {
  /** `x`: the line runs up- and downstage at this x; `y`: across the stage at this y. */
  readonly axis: 'x' | 'y';
  readonly at: number;
  readonly reason: GuideReason;
  /** The neighbours that the line comes from. */
  readonly with: readonly string[];
}

export interface Neighbour extends Vec2 {
  readonly id: string;
}

/** How far the item reaches from its spot, as positive lengths. */
export interface Spread {
  readonly downstage: number;
}

export interface SnapRequest {
  readonly wanted: Vec2;
  readonly spread: Spread;
  readonly neighbours: readonly Neighbour[];
  /** Least distance from the front edge, mm. */
  readonly edgeDistance: number;
  /** How near a line has to be to catch, mm. */
  readonly within: number;
  /** Positions are rounded to this many mm when no line catches; 0: not at all. */
  readonly roundTo: number;
}

export interface Settled extends Vec2 {
  readonly guides: readonly Guide[];
}

interface Line {
  /** Where the item's spot comes to lie. */
  readonly settle: number;
  readonly guide: Guide;
}

export function settle(request: SnapRequest): Settled {
  const x = settleAxis(request.wanted.x, linesAcross(request), request);
  const y = settleAxis(request.wanted.y, linesInDepth(request), request);
  return { x: x.at, y: y.at, guides: [...x.guides, ...y.guides] };
}

/** Round figures that are still fine enough at the camera's scale: one step is at least four pixels. */
export function roundFigureFor(scale: number): number {
  const steps = [5, 10, 20, 50, 100, 200, 500];
  return steps.find((step) => step * scale >= 4) ?? 1000;
}

function settleAxis(
  wanted: number,
  lines: readonly Line[],
  { within, roundTo }: SnapRequest,
): { at: number; guides: Guide[] } {
  let best: Line | null = null;
  for (const line of lines) {
    const distance = Math.abs(line.settle - wanted);
    if (distance <= within && (!best || distance < Math.abs(best.settle - wanted))) best = line;
  }
  if (best) return { at: best.settle, guides: guidesAt(best, lines) };
  return { at: roundTo > 0 ? Math.round(wanted / roundTo) * roundTo || 0 : wanted, guides: [] };
}

/** All reasons that hold where the item settled, not only the first found. */
function guidesAt(best: Line, lines: readonly Line[]): Guide[] {
  const found = lines.filter((line) => Math.abs(line.settle - best.settle) < 0.5);
  const byReason = new Map<string, Guide>();
  for (const { guide } of found) {
    const known = byReason.get(guide.reason);
    byReason.set(guide.reason, known ? { ...known, with: [...known.with, ...guide.with] } : guide);
  }
  return [...byReason.values()];
}

function linesAcross({ neighbours, wanted }: SnapRequest): Line[] {
  const lines = [line('x', 0, 'centreLine', [])];
  for (const { id, x } of neighbours) {
    lines.push(line('x', x, 'inLine', [id]));
    if (Math.abs(x) > 1) lines.push(line('x', -x, 'mirrored', [id]));
  }
  return [...lines, ...midway('x', wanted, neighbours)];
}

function linesInDepth({ neighbours, wanted, spread, edgeDistance }: SnapRequest): Line[] {
  const touching: Line = { settle: spread.downstage, guide: guide('y', 0, 'frontEdge', []) };
  const clear: Line = {
    settle: spread.downstage + edgeDistance,
    guide: guide('y', edgeDistance, 'edgeDistance', []),
  };
  const lines = neighbours.map(({ id, y }) => line('y', y, 'inLine', [id]));
  return [touching, clear, ...lines, ...midway('y', wanted, neighbours)];
}

/** The middle between the nearest neighbours on either side. */
function midway(axis: 'x' | 'y', wanted: Vec2, neighbours: readonly Neighbour[]): Line[] {
  let below: Neighbour | null = null;
  let above: Neighbour | null = null;
  for (const neighbour of neighbours) {
    const at = neighbour[axis];
    if (at < wanted[axis] && (!below || at > below[axis])) below = neighbour;
    if (at > wanted[axis] && (!above || at < above[axis])) above = neighbour;
  }
  if (!below || !above) return [];
  return [line(axis, (below[axis] + above[axis]) / 2, 'midway', [below.id, above.id])];
}

function line(axis: 'x' | 'y', at: number, reason: GuideReason, others: readonly string[]): Line {
  return { settle: at, guide: guide(axis, at, reason, others) };
}

function guide(axis: 'x' | 'y', at: number, reason: GuideReason, others: readonly string[]): Guide {
  return { axis, at, reason, with: others };
}
