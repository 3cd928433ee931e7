/** What solids are made of, before anybody looks at them. */

import { signedArea } from '../../geometry/polygon.ts';
import type { Vec2, Vec3 } from '../../geometry/frame.ts';
import type { Stroke } from '../primitives.ts';
import { convexPieces } from './convex-pieces.ts';

/** Areas in one colour, or open lines with one pen, that lie on a face and are painted with it. */
export type Marks = { readonly rings: readonly (readonly Vec3[])[] } & (
  { readonly fill: string } | { readonly stroke: Stroke }
);

export interface MeshFace {
  /** Indices into the mesh's points, anticlockwise for who sees its front. Plane and convex. */
  readonly corners: readonly number[];
  readonly fill: string;
  /** Colour of its back; left out: nobody can see that side. */
  readonly back?: string;
  /** On its front. */
  readonly marks?: readonly Marks[];
}

/** Plane faces over shared points. Where two faces meet in a soft edge no line is drawn. */
export interface Mesh {
  readonly kind: 'mesh';
  /** For the eye it lies right on another mesh. */
  readonly over?: boolean;
  readonly points: readonly Vec3[];
  readonly faces: readonly MeshFace[];
  /** No face of it can hide another that looks the same way; what is open stands on something. */
  readonly convex: boolean;
}

/** A round limb, rod or head: all within a radius of a line, the radius growing evenly from one end to the other. */
export interface Limb {
  readonly kind: 'limb';
  readonly from: Vec3;
  readonly to: Vec3;
  readonly radii: readonly [number, number];
  readonly fill: string;
  /** What it grows from or goes on in: where one runs into the other no line is drawn. */
  readonly joined?: readonly Limb[];
  /** It has no outline at all. */
  readonly bare?: true;
}

/** An upright figure cut out of card that turns to whoever looks: y of its outline is up from its foot. */
export interface CutOut {
  readonly kind: 'cutOut';
  readonly foot: Vec3;
  readonly outline: readonly Vec2[];
  readonly fill: string;
}

export type Part = Mesh | Limb | CutOut;

/** One thing of the stage or the house; `subject` is the record that it is drawn for. */
export interface Solid {
  readonly subject: string;
  readonly parts: readonly Part[];
  /** Its outlines are drawn no stronger than creases: what is only there for the place. */
  readonly quiet?: true;
}

/** From an item's own frame to the stage. */
export type Place = (x: number, y: number, z: number) => Vec3;

export function limb(from: Vec3, to: Vec3, radii: number | readonly [number, number], fill: string): Limb {
  return { kind: 'limb', from, to, radii: typeof radii === 'number' ? [radii, radii] : radii, fill };
}

export interface SheetColours {
  readonly fill: string;
  /** Left out: like the front. */
  readonly back?: string;
  readonly marks?: readonly Marks[];
  readonly over?: boolean;
}

/** A thin convex plate that can be seen from both sides, anticlockwise from its front. */
export function sheet(
  corners: readonly Vec3[],
  { fill, back = fill, marks, over = false }: SheetColours,
): Mesh {
  const face: MeshFace = { corners: corners.map((_, index) => index), fill, back };
  return { kind: 'mesh', over, points: corners, faces: [marks ? { ...face, marks } : face], convex: true };
}

export interface PrismColours {
  readonly top: string;
  readonly side: string;
  /** On the top. */
  readonly marks?: readonly Marks[];
  /** Left out: it stands on something. */
  readonly bottom?: string;
}

/** All in one colour, to be seen from below as well. */
export function allOver(colour: string): PrismColours {
  return { top: colour, side: colour, bottom: colour };
}

/** An upright prism over a simple outline, in an item's own frame. */
export function prism(
  outline: readonly Vec2[],
  [bottom, top]: readonly [number, number],
  place: Place,
  colours: PrismColours,
): Mesh {
  const ring = signedArea(outline) < 0 ? outline.toReversed() : outline;
  const pieces = convexPieces(ring);
  return {
    kind: 'mesh',
    points: [...ring.map(({ x, y }) => place(x, y, bottom)), ...ring.map(({ x, y }) => place(x, y, top))],
    faces: [
      ...sidesOf(ring.length, colours),
      ...topsOf(pieces, ring.length, colours),
      ...undersides(pieces, colours),
    ],
    convex: pieces.length === 1,
  };
}

function sidesOf(count: number, { side }: PrismColours): MeshFace[] {
  return Array.from({ length: count }, (_, i): MeshFace => {
    const next = (i + 1) % count;
    return { corners: [i, next, next + count, i + count], fill: side };
  });
}

/** The marks go with the last piece: faces of one plane keep their order, so they lie on all pieces. */
function topsOf(pieces: readonly number[][], count: number, { top, marks }: PrismColours): MeshFace[] {
  return pieces.map((piece, index): MeshFace => {
    const face = { corners: piece.map((corner) => corner + count), fill: top };
    return marks && index === pieces.length - 1 ? { ...face, marks } : face;
  });
}

function undersides(pieces: readonly number[][], { bottom }: PrismColours): MeshFace[] {
  if (bottom === undefined) return [];
  return pieces.map((piece) => ({ corners: piece.toReversed(), fill: bottom }));
}

/**
 * Rings of equally many corners, anticlockwise from above, from the lowest up, joined and closed at both ends. The
 * rings have to bulge: none narrower than the line from the one below to the one above. `fillOf` gets the number of the
 * ring below a face; of the face over the highest ring, that ring's own.
 */
export function loft(rings: readonly (readonly Vec3[])[], fillOf: (ring: number) => string): Mesh {
  const count = rings[0]?.length ?? 0;
  const points = rings.flat();
  const faces: MeshFace[] = [];
  const add = (corners: readonly number[], ring: number): void => {
    faces.push({ corners, fill: fillOf(ring) });
  };
  add(
    Array.from({ length: count }, (_, i) => count - 1 - i),
    0,
  );
  for (let ring = 0; ring + 1 < rings.length; ring++) {
    const low = ring * count;
    for (let i = 0; i < count; i++) {
      const next = (i + 1) % count;
      add([low + i, low + next, low + next + count, low + i + count], ring);
    }
  }
  add(
    Array.from({ length: count }, (_, i) => points.length - count + i),
    rings.length - 1,
  );
  return { kind: 'mesh', points, faces, convex: true };
}
