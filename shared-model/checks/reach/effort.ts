/** What it costs one player with one hand to get to one grip: how, and how long. */

import { facingTowards, normaliseFacing, type Vec3 } from '../../geometry/frame.ts';
import type { Player } from '../../document/records.ts';
import type { Grip, Manner } from '../report.ts';
import type { Reacher } from './hands.ts';
import {
  motionTime,
  NO_TIME,
  reachTime,
  stepTime,
  sumOf,
  turnTime,
  walkTime,
  type Span,
} from './motion-times.ts';
import { armLimit, leanLimit, stoopLimit, type Arm } from './postures.ts';
import { BEND_AND_RISE, STAND_AND_SIT, STAND_OFF, STEP, TRUNK_LEAN, type ReachCase } from './published.ts';

export interface Effort {
  readonly manner: Manner;
  /** He stoops or squats for it. */
  readonly stoops: boolean;
  /** To get there, and back after a walk. Nothing when the manner is `none`. */
  readonly time: Span;
}

export interface ReachSettings {
  /** How far the trunk may lean for a reach, degrees. */
  readonly trunkLean: number;
}

export const USUAL_SETTINGS: ReachSettings = { trunkLean: TRUNK_LEAN };

/** Takes one leaf of several by its edge, or a single thing from about its place. */
const CASES: Readonly<Record<Grip['purpose'], ReachCase>> = { turnCorner: 'C', turnRidge: 'C', pickUp: 'B' };

/** A grip to get to, with one hand. */
export interface Task {
  readonly grip: Grip;
  /** The shoulder joint of the hand, where he is now. */
  readonly shoulder: Vec3;
  /** Height of the floor that he would walk to. */
  readonly floorThere: number;
}

/**
 * The least effort that brings a hand to a grip: the arm alone, a lean (or a stoop, to pick a thing up), one step, a
 * walk. Who sits does not step: he gets up and walks. Ways are straight lines; what is in the way is not looked at.
 */
export function effortOf(reacher: Reacher, task: Task, settings: ReachSettings = USUAL_SETTINGS): Effort {
  const { grip, shoulder } = task;
  const inPlan = Math.hypot(grip.x - shoulder.x, grip.y - shoulder.y);
  const limits = limitsOf(reacher.arm, grip.z - reacher.floor, grip, settings);
  const hand = reachTime(CASES[grip.purpose], wayOfHand(reacher, grip));
  if (inPlan <= limits.arm) return { manner: 'reach', stoops: false, time: hand };
  if (inPlan <= limits.lean) return { manner: 'lean', stoops: false, time: hand };
  if (inPlan <= limits.stoop) return { manner: 'lean', stoops: true, time: sumOf(hand, stoopTime(true)) };
  return step(reacher, grip, inPlan, limits) ?? walk(reacher, task, settings);
}

/** Greatest distance in plan for each posture; minus infinity where it does not get there at all. */
interface Limits {
  readonly arm: number;
  readonly lean: number;
  readonly stoop: number;
}

function limitsOf(arm: Arm, height: number, { purpose }: Grip, { trunkLean }: ReachSettings): Limits {
  const stoop = purpose === 'pickUp' ? stoopLimit(arm, height) : null;
  return {
    arm: armLimit(arm, height) ?? -Infinity,
    lean: leanLimit(arm, height, trunkLean) ?? -Infinity,
    stoop: stoop ?? -Infinity,
  };
}

/** One step that brings the shoulder near enough to lean, or else to stoop; null when one is not enough. */
function step(reacher: Reacher, grip: Grip, inPlan: number, limits: Limits): Effort | null {
  const stoops = inPlan - limits.lean > STEP;
  const length = inPlan - (stoops ? limits.stoop : limits.lean);
  if (reacher.player.chair || length > STEP) return null;
  // The body has carried the hand a part of the way.
  const way = Math.min(wayOfHand(reacher, grip), reacher.arm.length);
  const time = sumOf(stepTime(length), reachTime(CASES[grip.purpose], way), stoopTime(stoops));
  return { manner: 'step', stoops, time };
}

/** He walks until the arm alone gets there, or with a lean or a stoop if it does not at that height, and back. */
function walk(reacher: Reacher, { grip, floorThere }: Task, settings: ReachSettings): Effort {
  const limits = limitsOf(reacher.standingArm, grip.z - floorThere, grip, settings);
  const nearEnough = [limits.arm, limits.lean, limits.stoop].find((limit) => limit >= 0);
  if (nearEnough === undefined) return { manner: 'none', stoops: false, time: NO_TIME };
  const stoops = limits.arm < 0 && limits.lean < 0;
  const oneWay = wayOnFoot(reacher.player, grip, Math.max(nearEnough, STAND_OFF));
  const getUp = reacher.player.chair ? motionTime(STAND_AND_SIT) : NO_TIME;
  const hand = reachTime(CASES[grip.purpose], reacher.standingArm.length);
  return { manner: 'walk', stoops, time: sumOf(getUp, oneWay, hand, stoopTime(stoops), oneWay) };
}

function wayOnFoot(player: Player, grip: Grip, standOff: number): Span {
  const distance = Math.max(0, Math.hypot(grip.x - player.x, grip.y - player.y) - standOff);
  return sumOf(turnTime(normaliseFacing(facingTowards(player, grip) - player.facing)), walkTime(distance));
}

/** From where the hands are while he plays. */
function wayOfHand({ handsAt }: Reacher, grip: Grip): number {
  return Math.hypot(grip.x - handsAt.x, grip.y - handsAt.y, grip.z - handsAt.z);
}

function stoopTime(stoops: boolean): Span {
  return stoops ? motionTime(BEND_AND_RISE) : NO_TIME;
}

/** The least that a grip at its height costs from the place, however near it is; null when nobody gets to that height there. */
export function leastEffort(reacher: Reacher, { grip }: Task, settings = USUAL_SETTINGS): Effort | null {
  const limits = limitsOf(reacher.arm, grip.z - reacher.floor, grip, settings);
  const hand = reachTime(CASES[grip.purpose], Math.abs(grip.z - reacher.handsAt.z));
  if (limits.arm >= 0) return { manner: 'reach', stoops: false, time: hand };
  if (limits.lean >= 0) return { manner: 'lean', stoops: false, time: hand };
  return limits.stoop >= 0 ? { manner: 'lean', stoops: true, time: sumOf(hand, stoopTime(true)) } : null;
}

/** Greatest distance in plan from the shoulder that asks for no step at the grip's height; negative: none. */
export function planReachInPlace(reacher: Reacher, { grip }: Task, settings = USUAL_SETTINGS): number {
  const { arm, lean, stoop } = limitsOf(reacher.arm, grip.z - reacher.floor, grip, settings);
  return Math.max(arm, lean, stoop);
}

/**
 * Greatest distance of a grip at its height from the shoulder, in 3D, that asks for no step, mm: what a stand or a
 * table would have to come within. At a height that cannot be got to it is the arm's length.
 */
export function reachInPlace(reacher: Reacher, task: Task, settings = USUAL_SETTINGS): number {
  const farthest = planReachInPlace(reacher, task, settings);
  return farthest < 0 ? reacher.arm.length : Math.hypot(farthest, task.grip.z - task.shoulder.z);
}
