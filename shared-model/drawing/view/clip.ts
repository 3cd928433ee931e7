/** Cutting faces at planes. */

import { BARE, withRings, type Face, type Ink, type Ring } from './face.ts';
import type { Plane } from './plane.ts';

/**
 * What is nearer to a plane than this, in mm, lies in it. A stage is some 1e5 mm large, so rounding is about 1e-10;
 * a hundredth of a millimetre is far above that, and a thousandth of what a picture can show.
 */
export const IN_PLANE = 0.01;

/** Where a face lies: in a plane, before it, behind it, or on both sides. */
export const WITHIN = 0;
export const BEFORE = 1;
export const BEHIND = 2;
export const ACROSS = 3;
export type Side = typeof WITHIN | typeof BEFORE | typeof BEHIND | typeof ACROSS;

/** The hot loop of the painting order: it makes no objects. */
export function sideOf({ rings }: Face, { x, y, z, d }: Plane): Side {
  let side = 0;
  for (const { corners } of rings) {
    for (let i = 0; i < corners.length; i += 3) {
      const height = x * (corners[i] ?? 0) + y * (corners[i + 1] ?? 0) + z * (corners[i + 2] ?? 0) - d;
      if (height > IN_PLANE) side |= BEFORE;
      else if (height < -IN_PLANE) side |= BEHIND;
      if (side === ACROSS) return ACROSS;
    }
  }
  return side as Side;
}

/** The part of a face before a plane; the face itself when it is not cut, null when nothing is left. */
export function partBefore(face: Face, plane: Plane): Face | null {
  const side = sideOf(face, plane);
  if (side === ACROSS) return keep(face, plane, 1);
  return side === BEFORE ? face : null;
}

/** Both parts of a face that a plane cuts. */
export function cutFace(
  face: Face,
  plane: Plane,
): { readonly before: Face | null; readonly behind: Face | null } {
  return { before: keep(face, plane, 1), behind: keep(face, plane, -1) };
}

/** Which part is kept: 1 what is before the plane, -1 what is behind it. */
type Kept = 1 | -1;

function keep(face: Face, plane: Plane, kept: Kept): Face | null {
  const rings: Ring[] = [];
  for (const ring of face.rings) {
    if (face.fill === null) cutLine(ring.corners, plane, kept, rings);
    else cutArea(ring, plane, kept, rings);
  }
  return rings.length > 0 ? withRings(face, rings) : null;
}

/** One step of the method of Sutherland and Hodgman (1974); the new edge along the cut is not drawn. */
function cutArea({ corners, ink }: Ring, plane: Plane, kept: Kept, out: Ring[]): void {
  const left: number[] = [];
  const leftInk: Ink[] = [];
  const count = corners.length / 3;
  let heightA = kept * heightAt(corners, 0, plane);
  for (let corner = 0; corner < count; corner++) {
    const next = (corner + 1) % count;
    const heightB = kept * heightAt(corners, next, plane);
    const edge = ink?.[corner] ?? BARE;
    if (heightA >= 0) {
      add(corners, corner, left);
      leftInk.push(edge);
    }
    if (heightA >= 0 !== heightB >= 0) {
      addBetween(corners, [corner, next], heightA / (heightA - heightB), left);
      leftInk.push(heightA >= 0 ? BARE : edge);
    }
    heightA = heightB;
  }
  if (left.length > 6) out.push({ corners: left, ink: ink && leftInk });
}

function cutLine(corners: readonly number[], plane: Plane, kept: Kept, out: Ring[]): void {
  let run: number[] = [];
  const close = (): void => {
    if (run.length > 3) out.push({ corners: run, ink: null });
    run = [];
  };
  for (let corner = 0; corner < corners.length / 3; corner++) {
    const heightB = kept * heightAt(corners, corner, plane);
    const heightA = corner > 0 ? kept * heightAt(corners, corner - 1, plane) : heightB;
    if (heightA >= 0 !== heightB >= 0) {
      addBetween(corners, [corner - 1, corner], heightA / (heightA - heightB), run);
    }
    if (heightB >= 0) add(corners, corner, run);
    else close();
  }
  close();
}

function heightAt(corners: readonly number[], corner: number, { x, y, z, d }: Plane): number {
  const i = 3 * corner;
  return x * (corners[i] ?? 0) + y * (corners[i + 1] ?? 0) + z * (corners[i + 2] ?? 0) - d;
}

function add(corners: readonly number[], corner: number, to: number[]): void {
  const i = 3 * corner;
  to.push(corners[i] ?? 0, corners[i + 1] ?? 0, corners[i + 2] ?? 0);
}

/** The point that is so much of the way from one corner to another. */
function addBetween(
  corners: readonly number[],
  [a, b]: readonly [number, number],
  share: number,
  to: number[],
): void {
  for (let axis = 0; axis < 3; axis++) {
    const [from, end] = [corners[3 * a + axis] ?? 0, corners[3 * b + axis] ?? 0];
    to.push(from + (end - from) * share);
  }
}
