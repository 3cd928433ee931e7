/** Where the floor of the platform has a step: the edges of levels, without those between levels of one height. */

import { floorHeightOn } from '../../document/levels.ts';
import type { Segment } from '../../document/openings.ts';
import type { Millimetres, Riser } from '../../document/records.ts';
import { outlineOf } from '../../catalogue/outlines.ts';
import { forEachEdge } from '../../geometry/polygon.ts';
import { turn } from '../../geometry/segments.ts';
import { between, lengthOf } from './walls.ts';

/** A rise that wheels get over: 1/4 in (6.5 mm as printed), ADA Standards 1991, 4.5.2 and figure 7(c). */
export const LEAST_STEP = 6.5;

/** The floor is looked at so far to either side of an edge. */
const ASIDE: Millimetres = 1;

/** Pieces of the risers' edges with floors of different heights on their two sides. */
export function levelEdges(risers: readonly Riser[]): Segment[] {
  const edges = risers.flatMap((riser) => {
    const found: Segment[] = [];
    forEachEdge(outlineOf(riser), (a, b) => found.push({ a, b }));
    return found;
  });
  return edges.flatMap((edge) => piecesOf(edge, edges).filter((piece) => isStep(piece, risers)));
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

function isStep(piece: Segment, risers: readonly Riser[]): boolean {
  const { x, y } = between(piece, 0.5);
  const length = lengthOf(piece);
  const [dx, dy] = [(ASIDE * (piece.b.y - piece.a.y)) / length, (ASIDE * (piece.a.x - piece.b.x)) / length];
  const [one, other] = [
    { x: x + dx, y: y + dy },
    { x: x - dx, y: y - dy },
  ];
  return Math.abs(floorHeightOn(risers, one) - floorHeightOn(risers, other)) > LEAST_STEP;
}
