/** Arms from the shoulder joints to where the hands are, bent at the elbow. */

import type { Vec3 } from '../../../geometry/frame.ts';
import type { ViewContext } from '../context.ts';
import { limb, type Part, type Place } from '../mesh.ts';
import { cross, difference, lengthOf, scaled, sum } from '../vectors.ts';
import { chestOf, type Build } from './trunk.ts';

/** Where both hands are, in the player's own frame, and which way the elbows go: down, or out to the sides. */
export interface Hands {
  readonly left: Vec3;
  readonly right: Vec3;
  readonly elbows: 'down' | 'out' | 'bowing';
}

export function armParts({ tints }: ViewContext, build: Build, hands: Hands, place: Place): Part[] {
  const { body } = build;
  const put = ({ x, y, z }: Vec3): Vec3 => place(x, y, z);
  const chest = chestOf(build, place);
  return ([1, -1] as const).flatMap((side) => {
    const shoulder = { x: side * (body.shoulderBreadth / 2 - SHOULDER), y: 0, z: body.shoulderHeight - 62 };
    const wish = side === 1 ? hands.left : hands.right;
    // To the middle of the hand, which is some 90 mm short of the fingertips.
    const reach = body.armLength - 90;
    const { elbow, hand } = bentArm(shoulder, wish, reach, elbowWay(side, hands.elbows));
    const wrist = towards(hand, elbow, 40);
    const upper = limb(put(shoulder), put(elbow), [SHOULDER, 43], tints.coat);
    const lower = limb(put(elbow), put(wrist), [43, 33], tints.coat);
    return [
      { ...upper, joined: [lower, ...chest] },
      { ...lower, joined: [upper] },
      limb(put(wrist), put(hand), [29, 35], tints.skin),
    ];
  });
}

/** Radius of the upper arm at the shoulder. From memory. */
const SHOULDER = 54;

/** The left arm of who bows hangs under his instrument. */
function elbowWay(side: 1 | -1, way: Hands['elbows']): Vec3 {
  const isOut = way === 'out' || (way === 'bowing' && side === -1);
  return isOut ? { x: side * 0.9, y: 0.25, z: -0.45 } : { x: side * 0.45, y: 0.35, z: -1 };
}

/** Upper arm and forearm as two sides of a triangle; a hand that is out of reach comes as near as it can. */
function bentArm(shoulder: Vec3, wish: Vec3, reach: number, way: Vec3): { elbow: Vec3; hand: Vec3 } {
  const away = difference(wish, shoulder);
  const distance = Math.max(1, lengthOf(away));
  const far = Math.min(distance, reach * 0.99);
  const along = scaled(away, 1 / distance);
  const hand = sum(shoulder, scaled(along, far));
  const upper = reach * UPPER_SHARE;
  const lower = reach - upper;
  const foot = (far * far + upper * upper - lower * lower) / (2 * far);
  const out = Math.sqrt(Math.max(0, upper * upper - foot * foot));
  // The part of the wished direction that is square to the line from shoulder to hand.
  const square = cross(cross(along, way), along);
  const size = Math.max(1e-6, lengthOf(square));
  return { elbow: sum(sum(shoulder, scaled(along, foot)), scaled(square, out / size)), hand };
}

/** From memory: the elbow is about the middle of the arm without the fingers. */
const UPPER_SHARE = 0.5;

/** A point so many mm from one point on the way to another. */
function towards(from: Vec3, to: Vec3, by: number): Vec3 {
  const way = difference(to, from);
  return sum(from, scaled(way, by / Math.max(1, lengthOf(way))));
}
