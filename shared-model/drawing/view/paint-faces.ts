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

/**
 * Painters smooth the edges of areas: what is behind would shine through where a surface goes on in another piece. So
 * pieces reach over such seams, by this stroke on either side, and what lies on them reaches farther than they do.
 */
const SEAM = 0.3;

export function paintFace({ rings, fill, stroke, layer }: Face, camera: Camera, pens: Pens): PathPrimitive[] {
  if (fill === null) return stroke ? [{ kind: 'path', path: pathOf(rings, camera, false), stroke }] : [];
  const area: PathPrimitive = { kind: 'path', path: pathOf(rings, camera, true), fill };
  const seam = { colour: fill, width: SEAM * (1 + layer) };
  if (rings.every(({ ink }) => ink?.every((edge) => edge === BARE))) return [{ ...area, stroke: seam }];
  const painted = [area];
  const add = (ink: Ink, pen: Stroke): void => {
    const path = edgesOf(rings, camera, ink);
    if (path.length > 0) painted.push({ kind: 'path', path, stroke: pen });
  };
  const seams = seamsOf(rings, camera, seam.width / 2);
  if (seams.length > 0) painted.push({ kind: 'path', path: seams, stroke: seam });
  add(CREASE, pens.crease);
  add(OUTLINE, pens.outline);
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

/** Each seam for itself, and shorter by the pen's round ends, which would else stand out over outlines. */
function seamsOf(rings: readonly Ring[], camera: Camera, short: number): PathItem[] {
  const path: PathItem[] = [];
  for (const { corners, ink } of rings) {
    const count = corners.length / 3;
    ink?.forEach((edge, corner) => {
      if (edge !== BARE) return;
      const [, ax, ay] = lineTo('M', corners, corner, camera);
      const [, bx, by] = lineTo('L', corners, (corner + 1) % count, camera);
      const share = short / Math.hypot(bx - ax, by - ay);
      if (!(share < 0.5)) return;
      const [dx, dy] = [(bx - ax) * share, (by - ay) * share];
      path.push(['M', ax + dx, ay + dy], ['L', bx - dx, by - dy]);
    });
  }
  return path;
}

/** An item that leads to a corner. */
function lineTo(
  letter: 'M' | 'L',
  corners: readonly number[],
  corner: number,
  camera: Camera,
): readonly ['M' | 'L', number, number] {
  const i = 3 * corner;
  const at = project(camera, { x: corners[i] ?? 0, y: corners[i + 1] ?? 0, z: corners[i + 2] ?? 0 });
  return [letter, at.x, at.y];
}
