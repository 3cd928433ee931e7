/** A solid as somebody sees it: the faces that look at him, lit, with their outlines. */

import type { Vec3 } from '../../geometry/frame.ts';
import { BARE, CREASE, OUTLINE, PLAIN, withRings, type Face, type Ink } from './face.ts';
import type { Marks, Mesh, MeshFace, Part, Solid } from './mesh.ts';
import { heightOver, planeOf, turnedOver, type Plane } from './plane.ts';
import { isInJoint } from './joints.ts';
import { cutOutOutline, limbOutline } from './round-outlines.ts';
import { lit, type Light } from './shade.ts';
import { between, dot } from './vectors.ts';

/** Who looks at solids, one after the other, and numbers what he sees. */
export interface Onlooker {
  readonly eye: Vec3;
  readonly light: Light;
  /** A number that no body has yet. */
  nextBody(): number;
}

/** The faces of a solid that the eye is before. `solid` numbers it. */
export function seenFaces({ parts, quiet }: Solid, solid: number, onlooker: Onlooker): Face[] {
  const faces = parts.flatMap((part) =>
    part.kind === 'mesh' ? meshFaces(part, solid, onlooker) : flatFace(part, solid, onlooker),
  );
  return quiet ? faces.map(quietened) : faces;
}

function quietened(face: Face): Face {
  const softer = (ink: readonly Ink[]): Ink[] => ink.map((edge) => (edge === OUTLINE ? CREASE : edge));
  return withRings(
    face,
    face.rings.map(({ corners, ink }) => ({ corners, ink: ink && softer(ink) })),
  );
}

/** An eye nearer than this to a face's plane, mm, sees its edge only. */
const EDGE_ON = 1e-6;

function flatFace(part: Exclude<Part, Mesh>, solid: number, onlooker: Onlooker): Face[] {
  const { eye, light, nextBody } = onlooker;
  const outline = part.kind === 'limb' ? limbOutline(part, eye) : cutOutOutline(part, eye);
  const corners = outline ? flat(outline) : [];
  const plane = planeOf(corners);
  if (!plane) return [];
  if (heightOver(plane, eye) <= EDGE_ON) return [];
  const rings = [{ corners, ink: outline && inkRound(part, outline, eye) }];
  return [
    { solid, body: nextBody(), plane, rings, fill: lit(part.fill, plane, light), stroke: null, layer: 0 },
  ];
}

function inkRound(part: Exclude<Part, Mesh>, outline: readonly Vec3[], eye: Vec3): Ink[] {
  if (part.kind === 'limb' && part.bare) return outline.map(() => BARE);
  return outline.map((corner, i) => {
    const edge = between(corner, outline[(i + 1) % outline.length] ?? corner, 0.5);
    return part.kind === 'limb' && isInJoint(part, edge, eye) ? BARE : OUTLINE;
  });
}

interface Seen {
  readonly face: MeshFace;
  readonly corners: readonly number[];
  /** Looks to the eye. */
  readonly plane: Plane;
  /** It is the face's back that looks to the eye. */
  readonly turned: boolean;
}

function meshFaces({ points, faces, convex, over }: Mesh, solid: number, onlooker: Onlooker): Face[] {
  const at = flat(points);
  const seen = faces.map((face) => look(face, at, onlooker.eye));
  const across = neighboursOf(faces);
  const body = onlooker.nextBody();
  const found: Face[] = [];
  for (const each of seen) {
    if (!each) continue;
    const { face, corners, plane, turned } = each;
    const ink = inkOf(each, (from, to) => seen[across.get(edgeKey(to, from)) ?? -1] ?? null);
    const area: Face = {
      solid,
      body: convex ? body : onlooker.nextBody(),
      plane,
      rings: [turned ? { corners: reversed(corners), ink: reversedInk(ink) } : { corners, ink }],
      fill: lit(turned ? (face.back ?? face.fill) : face.fill, plane, onlooker.light),
      stroke: null,
      layer: over ? 1 : 0,
    };
    found.push(area);
    if (face.marks && !turned) found.push(...marksOn(face.marks, area));
  }
  return found;
}

function look(face: MeshFace, at: readonly number[], eye: Vec3): Seen | null {
  const corners: number[] = [];
  for (const point of face.corners) {
    corners.push(at[3 * point] ?? 0, at[3 * point + 1] ?? 0, at[3 * point + 2] ?? 0);
  }
  const plane = planeOf(corners);
  if (!plane) return null;
  const height = heightOver(plane, eye);
  if (height > EDGE_ON) return { face, corners, plane, turned: false };
  if (face.back === undefined || height >= -EDGE_ON) return null;
  return { face, corners, plane: turnedOver(plane), turned: true };
}

/** By its two ends in order, so that the face on the other side has the reversed one. */
const edgeKey = (from: number, to: number): number => from * 65_536 + to;

function neighboursOf(faces: readonly MeshFace[]): Map<number, number> {
  const neighbours = new Map<number, number>();
  if (faces.length < 2) return neighbours;
  faces.forEach(({ corners }, index) => {
    corners.forEach((corner, i) => {
      neighbours.set(edgeKey(corner, corners[(i + 1) % corners.length] ?? corner), index);
    });
  });
  return neighbours;
}

/** Two faces that turn less than this from one another are one soft surface: cosine of 40 degrees. */
const SOFT = Math.cos((40 * Math.PI) / 180);

/** An edge whose other side cannot be seen belongs to the outline. */
function inkOf({ face, plane }: Seen, beyond: (from: number, to: number) => Seen | null): Ink[] {
  const { corners } = face;
  return corners.map((corner, i) => {
    const neighbour = beyond(corner, corners[(i + 1) % corners.length] ?? corner);
    if (!neighbour) return OUTLINE;
    return dot(plane, neighbour.plane) > SOFT ? BARE : CREASE;
  });
}

/** Reversing the corners a, b, c, d gives the edges dc, cb, ba, ad. */
function reversedInk(ink: readonly Ink[]): Ink[] {
  const [closing = BARE, ...rest] = ink.toReversed();
  return [...rest, closing];
}

function marksOn(marks: readonly Marks[], { solid, body, plane, layer }: Face): Face[] {
  return marks.map((mark) => ({
    solid,
    body,
    plane,
    rings: mark.rings.map((points) => ({
      corners: flat(points),
      ink: 'fill' in mark ? points.map((): Ink => PLAIN) : null,
    })),
    fill: 'fill' in mark ? mark.fill : null,
    stroke: 'stroke' in mark ? mark.stroke : null,
    layer: layer + 1,
  }));
}

function flat(points: readonly Vec3[]): number[] {
  const numbers: number[] = [];
  for (const { x, y, z } of points) numbers.push(x, y, z);
  return numbers;
}

function reversed(corners: readonly number[]): number[] {
  const numbers: number[] = [];
  for (let i = corners.length - 3; i >= 0; i -= 3) {
    numbers.push(corners[i] ?? 0, corners[i + 1] ?? 0, corners[i + 2] ?? 0);
  }
  return numbers;
}
