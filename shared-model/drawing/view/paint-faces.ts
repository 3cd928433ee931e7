/** Faces in painting order as primitives: each its area, then those of its edges that are drawn. */

import type { PathItem, PathPrimitive, Stroke } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { project, type Camera } from './camera.ts';
import { BARE, CREASE, OUTLINE, type Face, type Ink, type Ring } from './face.ts';
import type { Tints } from './tints.ts';

export interface Pens {
  readonly crease: Stroke;
  readonly outline: Stroke;
}

export function pensOf({ crease, outline }: Tints): Pens {
  return {
    crease: { colour: crease, width: WEIGHT.hair },
    outline: { colour: outline, width: WEIGHT.thin },
  };
}

/** Painters smooth the edges of areas: what is behind would shine through where two pieces meet without a line. */
const SEAM = 0.3;

export function paintFace({ rings, fill, stroke }: Face, camera: Camera, pens: Pens): PathPrimitive[] {
  if (fill === null) return stroke ? [{ kind: 'path', path: pathOf(rings, camera, false), stroke }] : [];
  const area: PathPrimitive = { kind: 'path', path: pathOf(rings, camera, true), fill };
  if (stroke) return [{ ...area, stroke }];
  const seam = { colour: fill, width: SEAM };
  if (rings.every(({ ink }) => ink?.every((edge) => edge === BARE))) return [{ ...area, stroke: seam }];
  const painted = [area];
  for (const [ink, pen] of [
    [BARE, seam],
    [CREASE, pens.crease],
    [OUTLINE, pens.outline],
  ] as const) {
    const path = edgesOf(rings, camera, ink);
    if (path.length > 0) painted.push({ kind: 'path', path, stroke: pen });
  }
  return painted;
}

function pathOf(rings: readonly Ring[], camera: Camera, closed: boolean): PathItem[] {
  const path: PathItem[] = [];
  for (const { corners } of rings) {
    for (let corner = 0; corner < corners.length / 3; corner++) {
      path.push(lineTo(corner === 0 ? 'M' : 'L', corners, corner, camera));
    }
    if (closed) path.push(['Z']);
  }
  return path;
}

/** Edges of one kind, those that follow one another in one stroke. */
function edgesOf(rings: readonly Ring[], camera: Camera, wanted: Ink): PathItem[] {
  const path: PathItem[] = [];
  for (const { corners, ink } of rings) {
    if (!ink?.includes(wanted)) continue;
    const count = corners.length / 3;
    ink.forEach((edge, corner) => {
      if (edge !== wanted) return;
      if (corner === 0 || ink[corner - 1] !== wanted) path.push(lineTo('M', corners, corner, camera));
      path.push(lineTo('L', corners, (corner + 1) % count, camera));
    });
  }
  return path;
}

function lineTo(letter: 'M' | 'L', corners: readonly number[], corner: number, camera: Camera): PathItem {
  const i = 3 * corner;
  const at = project(camera, { x: corners[i] ?? 0, y: corners[i + 1] ?? 0, z: corners[i + 2] ?? 0 });
  return [letter, at.x, at.y];
}
