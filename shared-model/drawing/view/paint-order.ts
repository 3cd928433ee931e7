/**
 * Exact hidden surfaces: faces in an order in which each may be painted over those before it.
 *
 * Binary space partition (Fuchs, Kedem and Naylor, "On visible surface generation by a priori tree structures",
 * SIGGRAPH 1980): whatever lies on the eye's side of a plane can hide what lies beyond it, never the other way round. So
 * paint what is beyond, then what lies in the plane, then what is before it; a face that the plane cuts is cut. The tree
 * is walked while it is made and never kept, for the eye moves with every picture.
 */

import type { Vec3 } from '../../geometry/frame.ts';
import { ACROSS, BEFORE, BEHIND, cutFace, sideOf, WITHIN } from './clip.ts';
import type { Face } from './face.ts';
import { heightOver, type Plane } from './plane.ts';

/** The faces, cut where they have to be, farthest first. Faces in one plane keep the order in which they are given. */
export function paintOrder(faces: readonly Face[], eye: Vec3): Face[] {
  const painted: Face[] = [];
  const waiting: Task[] = [{ faces, done: false }];
  for (let task = waiting.pop(); task; task = waiting.pop()) {
    if (task.done || isOneBody(task.faces)) {
      for (const face of task.faces) painted.push(face);
      continue;
    }
    const { far, within, near } = parted(task.faces, eye);
    waiting.push({ faces: near, done: false }, { faces: within, done: true }, { faces: far, done: false });
  }
  return painted;
}

interface Task {
  readonly faces: readonly Face[];
  /** In their order already. */
  readonly done: boolean;
}

/** Faces of one convex body never hide one another, so they are in order as they are. */
function isOneBody(faces: readonly Face[]): boolean {
  const body = faces[0]?.body;
  for (const face of faces) if (face.body !== body) return false;
  return true;
}

interface Parted {
  readonly far: readonly Face[];
  readonly within: readonly Face[];
  readonly near: readonly Face[];
}

function parted(faces: readonly Face[], eye: Vec3): Parted {
  const plane = bestPlane(faces);
  const before: Face[] = [];
  const within: Face[] = [];
  const behind: Face[] = [];
  for (const face of faces) {
    const side = sideOf(face, plane);
    // A face lies in its own plane even where its corners are a little off it, or it would be cut without end.
    if (side === WITHIN || face.plane === plane) within.push(face);
    else if (side === BEFORE) before.push(face);
    else if (side === BEHIND) behind.push(face);
    else {
      const cut = cutFace(face, plane);
      if (cut.before) before.push(cut.before);
      if (cut.behind) behind.push(cut.behind);
    }
  }
  const eyeIsBefore = heightOver(plane, eye) >= 0;
  return { far: eyeIsBefore ? behind : before, within, near: eyeIsBefore ? before : behind };
}

/** Planes that are tried at each step: more find fewer cuts, and cost time. */
const TRIALS = 6;
/** A cut costs as much as so many faces out of balance. */
const CUT_COST = 8;

/** The plane among some of the faces' own that cuts few faces and leaves about as many on either side. */
function bestPlane(faces: readonly Face[]): Plane {
  const first = faces[0];
  if (!first) throw new Error('no faces to part');
  let best = first.plane;
  let least = Infinity;
  const step = Math.max(1, Math.floor(faces.length / TRIALS));
  for (let index = 0; index < faces.length; index += step) {
    const plane = faces[index]?.plane ?? best;
    const cost = costOf(plane, faces, least);
    if (cost < least) [best, least] = [plane, cost];
  }
  return best;
}

/** Stops counting once it is no better than `least`. */
function costOf(plane: Plane, faces: readonly Face[], least: number): number {
  let [before, behind, cuts] = [0, 0, 0];
  for (const face of faces) {
    const side = sideOf(face, plane);
    if (side === BEFORE) before++;
    else if (side === BEHIND) behind++;
    else if (side === ACROSS && ++cuts * CUT_COST >= least) return Infinity;
  }
  return cuts * CUT_COST + Math.abs(before - behind);
}
