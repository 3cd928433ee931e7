/** Sets of drums, from above circles whose hull is the room they take. */

import { convexHull } from '../../geometry/convex-hull.ts';
import { boundsOf } from '../../geometry/polygon.ts';
import type { Millimetres, Point } from '../../document/records.ts';
import type { LocalBox } from '../boxes.ts';
import { circle } from '../shapes.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import type { LargeInstrumentModel } from './model.ts';

export interface Drum extends Point {
  readonly diameter: Millimetres;
  readonly top: Millimetres;
  readonly bottom?: Millimetres;
}

interface Niche {
  readonly halfWidth: Millimetres;
  /** How far towards the drums it goes, along y. */
  readonly from: Millimetres;
}

interface DrumSet {
  readonly drums: readonly Drum[];
  /** The player stands inside the arc: room that the hull of the drums leaves him on his side. */
  readonly niche?: Niche;
  readonly playerAt: Point;
  /** Lowest point of the shells, unless a drum has its own. */
  readonly bottom?: Millimetres;
}

/** A shell is about as deep as its head is wide. */
const bottomOf = (drum: Drum, set: DrumSet): Millimetres =>
  drum.bottom ?? set.bottom ?? Math.max(0, drum.top - drum.diameter);

export function drumOf(id: string, name: () => string, set: DrumSet): LargeInstrumentModel {
  const hull = convexHull(set.drums.flatMap((drum) => circle(drum, drum.diameter / 2)));
  const outline = set.niche ? withNiche(hull, set.niche) : hull;
  const bounds = boundsOf(outline);
  return {
    id,
    get name() {
      return name();
    },
    outline,
    width: bounds.maxX - bounds.minX,
    depth: bounds.maxY - bounds.minY,
    height: set.drums.reduce((highest, drum) => Math.max(highest, drum.top), 0),
    boxes: set.drums.map((drum) => shell(drum, bottomOf(drum, set))),
    playerAt: set.playerAt,
    source: COMMON_PRACTICE,
  };
}

/** Seen from the side a shell is as wide as its diameter; a square box of the same width stands for it. */
function shell({ x, y, diameter, top }: Drum, bottom: Millimetres): LocalBox {
  return { x, y, width: diameter, depth: diameter, bottom, top };
}

/** Cuts the niche into the one edge of the hull that spans it on the player's side, which runs from +x to -x. */
function withNiche(hull: readonly Point[], { halfWidth, from }: Niche): Point[] {
  return hull.flatMap((a, index) => {
    const b = hull[(index + 1) % hull.length] ?? a;
    if (a.x <= halfWidth || b.x >= -halfWidth) return [a];
    const edgeAt = (x: number): Point => ({ x, y: a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x) });
    const [left, right] = [edgeAt(halfWidth), edgeAt(-halfWidth)];
    return [a, left, { x: halfWidth, y: from }, { x: -halfWidth, y: from }, right];
  });
}
