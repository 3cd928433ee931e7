/** What stands in the line of sight of a row: heads of the rows before it, or things on the platform. */

import { bodies, type Body } from '../../catalogue/people.ts';
import { LISTENER } from '../scene/house.ts';
import { cutOf } from '../facing/cuts.ts';
import { eyeLine, heightsOver, isMet, type Cut, type EyeLine } from '../facing/eye-line.ts';
import type { Scene } from '../scene.ts';
import type { FocusPoint } from './rake-focus.ts';
import { spotOfPlane, type SightPlane } from './rake-plane.ts';
import type { PlaneRow } from './rake-rows.ts';
import type { RakeRow } from './rake.ts';

/** Where a line of sight is cut first. */
export interface LineCut {
  readonly by: 'head' | 'thing';
  /** The seat block of the head, or the record of the thing. */
  readonly record: string;
  /** Of the way from the eye to the focus, in plan: 0..1. */
  readonly share: number;
}

/** Whoever sits in the house, as for the heads of the scene. */
export const LISTENER_BODY: Body = bodies(LISTENER, 450).tall;

/** From the eyes to the crown: a row whose C is less looks into a head. */
export const EYE_TO_CROWN = LISTENER_BODY.crown - LISTENER_BODY.eyeHeight;

/** An eye on the plane, and the rows before it whose heads are in line with it, nearest first. */
export interface EyeOnPlane {
  readonly out: number;
  readonly z: number;
  readonly looks: 1 | -1;
  readonly inLine: readonly PlaneRow[];
}

export function eyeOfRow({ out, eyeZ, looks, shifted, ahead }: RakeRow): EyeOnPlane {
  return { out, z: eyeZ, looks, inLine: ahead.filter((front) => front.shifted === shifted) };
}

/** The first of the things and heads that cut the line of sight to the focus; null: none does. */
export function firstCut(
  eye: EyeOnPlane,
  focus: FocusPoint,
  { plane, scene }: { readonly plane: SightPlane; readonly scene: Scene },
): LineCut | null {
  const [head, thing] = [headCut(eye, focus), thingCut(eye, focus, { plane, scene })];
  return head && thing ? (head.share <= thing.share ? head : thing) : (head ?? thing);
}

/** The nearest head in line that reaches above the line of sight. */
function headCut({ out, z, looks, inLine }: EyeOnPlane, focus: FocusPoint): LineCut | null {
  const whole = out - focus.out;
  if (whole * looks <= 0) return null;
  for (const front of inLine) {
    const share = (out - front.out) / whole;
    const over = z + (focus.z - z) * share - front.eyeZ;
    if (share < 1 && over < EYE_TO_CROWN && over > -BODY_BELOW_EYE) {
      return { by: 'head', record: front.block, share };
    }
  }
  return null;
}

/** Whoever looks under somebody's seat looks past him. */
const BODY_BELOW_EYE = 1200;

/** The nearest thing of the scene in the straight line to the focus; the player who is looked at is no thing. */
function thingCut(
  { out, z }: EyeOnPlane,
  focus: FocusPoint,
  { plane, scene }: { readonly plane: SightPlane; readonly scene: Scene },
): LineCut | null {
  const line = eyeLine({ ...spotOfPlane(plane, out), z }, focus);
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
