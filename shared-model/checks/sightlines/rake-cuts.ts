/** What stands in the line of sight of a row: heads of the rows before it, or things on the platform. */

import { bodies } from '../../catalogue/people.ts';
import { LISTENER } from '../scene/house.ts';
import type { Vec3 } from '../../geometry/frame.ts';
import { cutOf } from '../facing/cuts.ts';
import { eyeLine, heightsOver, isMet, type Cut, type EyeLine } from '../facing/eye-line.ts';
import type { Scene } from '../scene.ts';
import type { FocusPoint } from './rake-focus.ts';
import { spotOfPlane, type SightPlane } from './rake-plane.ts';
import type { RakeRow } from './rake.ts';

/** Where a line of sight is cut first. */
export interface LineCut {
  readonly by: 'head' | 'thing';
  /** The seat block of the head, or the record of the thing. */
  readonly record: string;
  /** Of the way from the eye to the focus, in plan: 0..1. */
  readonly share: number;
}

/** As for the heads of the scene. */
const USUAL_SEAT_HEIGHT = 450;

/** From the eyes to the crown of whoever sits in the house: a row whose C is less looks into a head. */
export function eyeToCrown(): number {
  const { crown, eyeHeight } = bodies(LISTENER, USUAL_SEAT_HEIGHT).tall;
  return crown - eyeHeight;
}

/** The first of the things and heads that cut a row's line of sight to the focus; null: none does. */
export function firstCut(row: RakeRow, focus: FocusPoint, plane: SightPlane, scene: Scene): LineCut | null {
  const eye = { ...spotOfPlane(plane, row.out), z: row.eyeZ };
  const cuts = [headCut(row, focus), thingCut(eye, focus, scene)].filter((cut) => cut !== null);
  return cuts.reduce<LineCut | null>((first, cut) => (first && first.share <= cut.share ? first : cut), null);
}

/** The nearest head in line that reaches above the line of sight. */
function headCut(row: RakeRow, focus: FocusPoint): LineCut | null {
  const whole = row.out - focus.out;
  if (whole * row.looks <= 0) return null;
  for (const front of row.ahead) {
    const share = (row.out - front.out) / whole;
    if (front.shifted !== row.shifted || share >= 1) continue;
    const over = row.eyeZ + (focus.z - row.eyeZ) * share - front.eyeZ;
    if (over < eyeToCrown() && over > -BODY_BELOW_EYE) return { by: 'head', record: front.block, share };
  }
  return null;
}

/** Whoever looks under somebody's seat looks past him. */
const BODY_BELOW_EYE = 1200;

/** The nearest thing of the scene in the straight line between two points; the player who is looked at is no thing. */
export function thingCut(eye: Vec3, focus: FocusPoint, scene: Scene): LineCut | null {
  const line = eyeLine(eye, focus);
  if (!line) return null;
  const seen = focus.focus.kind === 'player' ? focus.focus.player : null;
  let first: LineCut | null = null;
  for (const thing of scene.occluders) {
    if (seen !== null && thing.owner === seen) continue;
    const cut = cutOf(line, thing);
    if (!cut || !isMet(heightsOver(line, cut))) continue;
    const share = entryOf(line, cut) / line.length;
    if (!first || share < first.share) first = { by: 'thing', record: thing.record, share };
  }
  return first;
}

/** How far along the line it enters a cut that it meets; for a round one, where it passes its axis. */
function entryOf(line: EyeLine, cut: Cut): number {
  if (cut.kind === 'round') return Math.min(cut.last, Math.max(cut.first, cut.ahead));
  const over = cut.corners.map(({ ahead, z }) => ({ ahead, by: z - line.from.z - line.slope * ahead }));
  let entry = line.length;
  // The corners are in no order: among all their chords are the edges, and no chord is met before the nearest edge.
  for (const a of over) {
    for (const b of over) {
      if (a.by >= 0 && b.by < 0)
        entry = Math.min(entry, a.ahead + ((b.ahead - a.ahead) * a.by) / (a.by - b.by));
    }
  }
  return entry;
}
