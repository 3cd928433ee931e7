/** Where the floor of the platform has a step: the edges of levels, without those between levels of one height. */

import { floorHeightOn } from '../../document/levels.ts';
import type { Segment } from '../../document/openings.ts';
import type { Millimetres, Point, Riser } from '../../document/records.ts';
import { outlineOf } from '../../catalogue/outlines.ts';
import { forEachEdge } from '../../geometry/polygon.ts';
import { turn } from '../../geometry/segments.ts';
import { between, lengthOf } from './walls.ts';

/** A rise that wheels get over: 1/4 in (6.5 mm as printed), ADA Standards 1991, 4.5.2 and figure 7(c). */
export const LEAST_STEP = 6.5;

/** A rise that people take for a step and no more. Common practice, no source. */
export const HIGHEST_STEP: Millimetres = 200;

/** The floor is looked at so far to either side of an edge. */
const ASIDE: Millimetres = 1;

/** A piece of the edge of the higher of two floors. */
export interface LevelEdge extends Segment {
  readonly riser: Riser;
  /** Heights of the two floors above the platform's. */
  readonly high: Millimetres;
  readonly low: Millimetres;
  /** A point of the lower floor. */
  readonly below: Point;
}

/** Pieces of the risers' edges whose floors, looked at `aside` to either side, differ by more than `step`. */
export function levelEdges(
  risers: readonly Riser[],
  step: Millimetres = LEAST_STEP,
  aside: Millimetres = ASIDE,
): LevelEdge[] {
  // Between two levels that are both low no step can be higher than the higher of them.
  if (!risers.some(({ height }) => height > step)) return [];
  const edges = risers.flatMap((riser) => edgesOf(riser).map((edge) => ({ edge, riser })));
  const all = edges.map(({ edge }) => edge);
  return edges.flatMap(({ edge, riser }) =>
    riser.height <= step
      ? []
      : piecesOf(edge, all)
          .map((piece) => levelEdge(piece, { riser, risers, aside }))
          // Of two edges in one place the step belongs to that of the higher floor.
          .filter(({ high, low }) => high === riser.height && high - low > step),
  );
}

function edgesOf(riser: Riser): Segment[] {
  const found: Segment[] = [];
  forEachEdge(outlineOf(riser), (a, b) => found.push({ a, b }));
  return found;
}

/** The edge cut wherever another one crosses it or ends at it. */
function piecesOf(edge: Segment, edges: readonly Segment[]): Segment[] {
  const cuts = edges.flatMap((other) => sharesAlong(edge, other)).filter((share) => share > 0 && share < 1);
  const shares = [0, ...cuts.sort((a, b) => a - b), 1];
  return shares.flatMap((from, index) => {
    const to = shares[index + 1];
    if (to === undefined || (to - from) * lengthOf(edge) < ASIDE) return [];
    return [{ a: between(edge, from), b: between(edge, to) }];
  });
}

/** Where along `edge` the line of `other` crosses it; of a parallel one, where its ends lie. */
function sharesAlong(edge: Segment, { a, b }: Segment): number[] {
  const [left, right] = [turn(a, b, edge.a), turn(a, b, edge.b)];
  if (Math.abs(left - right) > 1e-6 * lengthOf(edge)) return [left / (left - right)];
  const [dx, dy] = [edge.b.x - edge.a.x, edge.b.y - edge.a.y];
  const squared = dx * dx + dy * dy;
  return [a, b].map(({ x, y }) => ((x - edge.a.x) * dx + (y - edge.a.y) * dy) / squared);
}

interface Floors {
  readonly riser: Riser;
  readonly risers: readonly Riser[];
  readonly aside: Millimetres;
}

function levelEdge(piece: Segment, { riser, risers, aside }: Floors): LevelEdge {
  const { x, y } = between(piece, 0.5);
  const length = lengthOf(piece);
  const [dx, dy] = [(aside * (piece.b.y - piece.a.y)) / length, (aside * (piece.a.x - piece.b.x)) / length];
  const sides = [
    { x: x + dx, y: y + dy },
    { x: x - dx, y: y - dy },
  ] as const;
  const [one, other] = [floorHeightOn(risers, sides[0]), floorHeightOn(risers, sides[1])];
  const [high, low, below] = one > other ? [one, other, sides[1]] : [other, one, sides[0]];
  return { ...piece, riser, high, low, below };
}
