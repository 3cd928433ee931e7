/**
 * The scene of a setup in plain numbers: what the sight check computes on, and what `check --geometry` prints so
 * that another program can recompute it. Millimetres in the stage frame of document/records.ts.
 */

export type Triple = readonly [number, number, number];

/** An eye point in the house. `id` is unique: block id, row and seat number, or the id of a single place. */
export interface SeatPoint {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** The seat block or place it belongs to. */
  readonly record: string;
  /** "C 12", or the place's name. */
  readonly label: string;
  /** Index of the row in its block from the front; 0 for a single place. */
  readonly row: number;
}

/** A player's window: `width` wide, from z0 to z1, through (x, y), square to the horizontal line from the eye. */
export interface Target {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly z0: number;
  readonly z1: number;
  readonly width: number;
  /** Height of the chin: what is above it is the face window. */
  readonly chin: number;
}

interface OccluderCommon {
  readonly id: string;
  /** The record to blame, for "what hides him". */
  readonly record: string;
  /** Does not hide the target of this id. */
  readonly owner?: string;
}

/** A planar convex quadrilateral, corners in order round it. */
export interface QuadOccluder extends OccluderCommon {
  readonly kind: 'quad';
  readonly corners: readonly [Triple, Triple, Triple, Triple];
}

/** A box: `size` is [dx, dy, dz] before it is turned by `yaw` degrees anticlockwise from above about its centre. */
export interface BoxOccluder extends OccluderCommon {
  readonly kind: 'box';
  readonly center: Triple;
  readonly size: Triple;
  readonly yaw: number;
}

/** Every point within `r` of the vertical segment from z0 to z1 at (x, y). */
export interface CapsuleOccluder extends OccluderCommon {
  readonly kind: 'capsule';
  readonly x: number;
  readonly y: number;
  readonly z0: number;
  readonly z1: number;
  readonly r: number;
}

export type Occluder = QuadOccluder | BoxOccluder | CapsuleOccluder;

export interface Scene {
  readonly seats: readonly SeatPoint[];
  readonly targets: readonly Target[];
  readonly occluders: readonly Occluder[];
}
