/**
 * Where a dragged item settles, and why. Each axis settles by itself on the nearest line within reach; when no line
 * is near, on a round figure, so that the crew gets "820" and not "818.37". Every line that caught the item is
 * handed back as a guide, to be drawn with its reason.
 */

import type { Units } from '#model/document/measures.ts';
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
  | 'midway'
  /** As far from a neighbour as that is from the next one. */
  | 'evenly'
  /** A side of the item touches another edge of the platform. */
  | 'platformEdge'
  | 'grid';

export interface Guide {
  /** `x`: the line runs up- and downstage at this x; `y`: across the stage at this y. */
  readonly axis: 'x' | 'y';
  readonly at: number;
  readonly reason: GuideReason;
  /** The neighbours that the line comes from. */
  readonly with: readonly string[];
  /** Of even spacing, mm. */
  readonly gap?: number;
}

export interface Neighbour extends Vec2 {
  readonly id: string;
}

/** How far the item reaches from its spot, as positive lengths. */
export interface Spread {
  readonly downstage: number;
  readonly upstage?: number;
  readonly stageLeft?: number;
  readonly stageRight?: number;
}

/** Edges of the platform that run straight up- and downstage (`x`) or across (`y`). */
export interface StraightEdges {
  readonly x: readonly number[];
  readonly y: readonly number[];
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
  /** Left out: none of them catches. */
  readonly edges?: StraightEdges;
  /** The step of the grid that is shown, mm; left out: none is. Its lines catch where nothing else does. */
  readonly grid?: number;
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
  const x = settleAxis(request.wanted.x, linesAcross(request), { ...request, axis: 'x' });
  const y = settleAxis(request.wanted.y, linesInDepth(request), { ...request, axis: 'y' });
  return { x: x.at, y: y.at, guides: [...x.guides, ...y.guides] };
}

const INCH = 25.4;
const ROUND_FIGURES: Readonly<Record<Units, readonly number[]>> = {
  metric: [5, 10, 20, 50, 100, 200, 500, 1000],
  imperial: [0.25, 0.5, 1, 2, 3, 6, 12, 24, 48].map((inches) => inches * INCH),
};

/** Round figures in the units shown, still fine enough at the camera's scale: one step is at least four pixels. */
export function roundFigureFor(scale: number, units: Units): number {
  const steps = ROUND_FIGURES[units];
  return steps.find((step) => step * scale >= 4) ?? steps.at(-1) ?? 0;
}

/** The edges of an outline that run straight along an axis, but not the front edge, which has lines of its own. */
export function straightEdges(outline: readonly Vec2[]): StraightEdges {
  const edges = { x: new Set<number>(), y: new Set<number>() };
  outline.forEach((a, index) => {
    const b = outline[(index + 1) % outline.length] ?? a;
    if (a.x === b.x) edges.x.add(a.x);
    if (a.y === b.y && a.y !== 0) edges.y.add(a.y);
  });
  return { x: [...edges.x], y: [...edges.y] };
}

interface AxisRequest extends Pick<SnapRequest, 'within' | 'roundTo' | 'grid'> {
  readonly axis: 'x' | 'y';
}

function settleAxis(
  wanted: number,
  lines: readonly Line[],
  { axis, within, roundTo, grid }: AxisRequest,
): { at: number; guides: Guide[] } {
  let best: Line | null = null;
  for (const line of lines) {
    const distance = Math.abs(line.settle - wanted);
    if (distance <= within && (!best || distance < Math.abs(best.settle - wanted))) best = line;
  }
  if (best) return { at: best.settle, guides: guidesAt(best, lines) };
  const onGrid = grid ? Math.round(wanted / grid) * grid || 0 : null;
  if (onGrid !== null && Math.abs(onGrid - wanted) <= within)
    return { at: onGrid, guides: [guide(axis, onGrid, 'grid', [])] };
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

function linesAcross({ neighbours, wanted, spread, edges }: SnapRequest): Line[] {
  const lines = [line('x', 0, 'centreLine', [])];
  for (const { id, x } of neighbours) {
    lines.push(line('x', x, 'inLine', [id]));
    if (Math.abs(x) > 1) lines.push(line('x', -x, 'mirrored', [id]));
  }
  for (const at of edges?.x ?? [])
    lines.push(
      touching('x', at, at - (spread.stageLeft ?? 0)),
      touching('x', at, at + (spread.stageRight ?? 0)),
    );
  return [...lines, ...midway('x', wanted, neighbours), ...evenly('x', wanted, neighbours)];
}

function linesInDepth({ neighbours, wanted, spread, edges, edgeDistance }: SnapRequest): Line[] {
  const atFront: Line = { settle: spread.downstage, guide: guide('y', 0, 'frontEdge', []) };
  const clear: Line = {
    settle: spread.downstage + edgeDistance,
    guide: guide('y', edgeDistance, 'edgeDistance', []),
  };
  const lines = neighbours.map(({ id, y }) => line('y', y, 'inLine', [id]));
  for (const at of edges?.y ?? [])
    lines.push(touching('y', at, at - (spread.upstage ?? 0)), touching('y', at, at + spread.downstage));
  return [atFront, clear, ...lines, ...midway('y', wanted, neighbours), ...evenly('y', wanted, neighbours)];
}

/** A side of the item on an edge of the platform. */
function touching(axis: 'x' | 'y', edge: number, settle: number): Line {
  return { settle, guide: guide(axis, edge, 'platformEdge', []) };
}

/** Neighbours farther aside than this are of another row. */
const SAME_ROW = 1000;
/** Closer ones, as a player and his stand, make no row. */
const LEAST_GAP = 300;

/** On from the two nearest neighbours of the same row, on either side, by as much as they are apart. */
function evenly(axis: 'x' | 'y', wanted: Vec2, neighbours: readonly Neighbour[]): Line[] {
  const aside = axis === 'x' ? 'y' : 'x';
  const row = neighbours
    .filter((each) => Math.abs(each[aside] - wanted[aside]) <= SAME_ROW)
    .toSorted((a, b) => a[axis] - b[axis]);
  const below = row.filter((each) => each[axis] <= wanted[axis]).toReversed();
  const above = row.filter((each) => each[axis] > wanted[axis]);
  return [below, above].flatMap(([near, far]) => {
    if (!near || !far) return [];
    const gap = near[axis] - far[axis];
    if (Math.abs(gap) < LEAST_GAP) return [];
    const at = near[axis] + gap;
    const reason: Guide = { axis, at, reason: 'evenly', with: [near.id, far.id], gap: Math.abs(gap) };
    return [{ settle: at, guide: reason }];
  });
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
