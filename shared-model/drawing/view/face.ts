/** The flat pieces that a picture is painted from. Corners are kept as plain numbers: this is where the time goes. */

import type { Stroke } from '../primitives.ts';
import type { Plane } from './plane.ts';

/** How an edge is drawn: not at all, for the surface goes on beyond it, as a crease inside an outline, or as part of an outline. */
export const BARE = 0;
export const CREASE = 1;
export const OUTLINE = 2;
/** The edge of a mark: nothing goes on beyond it. */
export const PLAIN = 3;
export type Ink = typeof BARE | typeof CREASE | typeof OUTLINE | typeof PLAIN;

/** Corners x, y, z, x, y, z, ... in one plane. `ink[i]` is the edge from corner i to the next; null: none is drawn. */
export interface Ring {
  readonly corners: readonly number[];
  readonly ink: readonly Ink[] | null;
}

/** One or more rings in one plane that are painted together: a polygon, or lines and areas that lie on one. */
export interface Face {
  /** Number of the solid it belongs to. */
  readonly solid: number;
  /** Number of the convex body it is part of: faces of one body that look to the eye never hide one another. */
  readonly body: number;
  /** Its normal looks to the eye. */
  readonly plane: Plane;
  readonly rings: readonly Ring[];
  /** Of the area; null: the rings are open lines. */
  readonly fill: string | null;
  /** Of open lines. */
  readonly stroke: Stroke | null;
  /** How many faces that lie on one another are below it: marks lie on their face, pages on their desk. */
  readonly layer: number;
}

/** The same face with other rings. Written out, so that all faces have one layout in memory. */
export function withRings({ solid, body, plane, fill, stroke, layer }: Face, rings: readonly Ring[]): Face {
  return { solid, body, plane, rings, fill, stroke, layer };
}
