/**
 * Flat occluders that lie within another one of the same record and owner, as a page does that nowhere overhangs its
 * desk. Whatever they hide, the other one hides too, so the kernel leaves them out.
 */

import type { Occluder, QuadOccluder, Triple } from '../scene.ts';

/** A corner this far (mm) out of the plane or over an edge still counts as within: rounding, and no more. */
const ROUNDING = 1e-9;

/** Records with more quads than this are left as they are. */
const LARGEST_GROUP = 16;

/** 1 for each occluder that lies within another, 0 for the rest. Of two equal ones the later is left out. */
export function nestedQuads(occluders: readonly Occluder[]): Uint8Array {
  const nested = new Uint8Array(occluders.length);
  for (const group of quadsByRecord(occluders).values()) {
    // Every one is held against every other: worth it for desks and pages, not for a wall of facets.
    if (group.length > LARGEST_GROUP) continue;
    for (const inner of group) {
      const within = group.some(
        (outer) => outer !== inner && !nested[outer.index] && liesWithin(inner, outer),
      );
      if (within) nested[inner.index] = 1;
    }
  }
  return nested;
}

interface IndexedQuad {
  readonly index: number;
  readonly quad: QuadOccluder;
}

function quadsByRecord(occluders: readonly Occluder[]): Map<string, IndexedQuad[]> {
  const groups = new Map<string, IndexedQuad[]>();
  occluders.forEach((quad, index) => {
    if (quad.kind !== 'quad') return;
    const key = JSON.stringify([quad.record, quad.owner]);
    const group = groups.get(key) ?? [];
    group.push({ index, quad });
    groups.set(key, group);
  });
  return groups;
}

function liesWithin({ quad: inner }: IndexedQuad, { quad: outer }: IndexedQuad): boolean {
  const normal = unitNormal(outer);
  if (!normal) return false;
  return [...outer.corners, ...inner.corners].every((corner) => liesOn(corner, outer, normal));
}

/** Whether a point lies on a flat quadrilateral, its edges included. */
function liesOn(point: Triple, { corners }: QuadOccluder, normal: Triple): boolean {
  return corners.every((corner, i) => {
    const next = corners[(i + 1) % 4] ?? corner;
    const edge = minus(next, corner);
    const reach = minus(point, corner);
    const outOfPlane = Math.abs(dot(reach, normal));
    const inwards = dot(cross(edge, reach), normal);
    return outOfPlane <= ROUNDING && inwards >= -ROUNDING * Math.hypot(...edge);
  });
}

/** From the diagonals; null when the quadrilateral has no area. */
function unitNormal({ corners: [a, b, c, d] }: QuadOccluder): Triple | null {
  const normal = cross(minus(c, a), minus(d, b));
  const length = Math.hypot(...normal);
  return length > 0 ? [normal[0] / length, normal[1] / length, normal[2] / length] : null;
}

function minus(a: Triple, b: Triple): Triple {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function cross(a: Triple, b: Triple): Triple {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function dot(a: Triple, b: Triple): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
