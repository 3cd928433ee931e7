/** The point that a house looks at. */

import { platformOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Point } from '../../document/records.ts';
import type { Vec3 } from '../../geometry/frame.ts';
import { forEachEdge } from '../../geometry/polygon.ts';
import type { Scene } from '../scene.ts';
import { onPlane, spotOfPlane, type OnPlane, type SightPlane } from './rake-plane.ts';

/** The floor at the platform's edge, which is the classical choice, or the lowest point of a player's window. */
export type RakeFocus =
  { readonly kind: 'edge' } | { readonly kind: 'player'; readonly player: Id<'player'> };

export const PLATFORM_EDGE: RakeFocus = { kind: 'edge' };

export interface FocusPoint extends Vec3 {
  readonly focus: RakeFocus;
  /** Along the plane. */
  readonly out: number;
}

/** `from`: where along the plane the house begins. Null when the player is not on the scene. */
export function focusPoint(
  document: Document,
  { targets }: Pick<Scene, 'targets'>,
  { plane, from, focus }: { readonly plane: SightPlane; readonly from: number; readonly focus: RakeFocus },
): FocusPoint | null {
  if (focus.kind === 'edge') return { ...edgeBefore(document, plane, from), focus };
  const target = targets.find(({ id }) => id === focus.player);
  if (!target) return null;
  const { x, y, z0 } = target;
  return { x, y, z: z0, out: onPlane(plane, target).out, focus };
}

/** Where the plane first meets the platform, coming from the house; else the corner of it nearest to the plane. */
function edgeBefore(document: Document, plane: SightPlane, from: number): Omit<FocusPoint, 'focus'> {
  const { outline } = platformOf(document);
  const met = crossings(plane, outline);
  const before = met.filter((out) => out <= from);
  const nearest = (before.length > 0 ? before : met).reduce((most, out) => Math.max(most, out), -Infinity);
  if (Number.isFinite(nearest)) return { ...spotOfPlane(plane, nearest), z: 0, out: nearest };
  const corner = nearestCorner(plane, outline);
  return { ...corner, z: 0, out: onPlane(plane, corner).out };
}

/** Distances along the plane at which it crosses the edges of a ring. */
export function crossings(plane: SightPlane, ring: readonly Point[]): number[] {
  const found: number[] = [];
  forEachEdge(ring, (a, b) => {
    const [p, q] = [onPlane(plane, a), onPlane(plane, b)];
    if (p.beyond > 0 !== q.beyond > 0) found.push(crossingOf(p, q));
  });
  return found.sort((a, b) => a - b);
}

function crossingOf(p: OnPlane, q: OnPlane): number {
  return p.out + ((q.out - p.out) * p.beyond) / (p.beyond - q.beyond);
}

function nearestCorner(plane: SightPlane, outline: readonly Point[]): Point {
  let [corner, nearest] = [{ x: 0, y: 0 }, Infinity];
  for (const { x, y } of outline) {
    const away = Math.abs(onPlane(plane, { x, y }).beyond);
    if (away < nearest) [corner, nearest] = [{ x, y }, away];
  }
  return corner;
}
