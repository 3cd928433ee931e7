/** Whether and how every player gets to what his hands need, and how long it takes him. */

import { find, type Document } from '../../document/document.ts';
import { asId, type Id } from '../../document/ids.ts';
import { floorHeightAt } from '../../document/levels.ts';
import { isPlaced, type Player, type Point } from '../../document/records.ts';
import type { FreeTime, Grip, Hand, Manner, ReachResult } from '../report.ts';
import type { Vec3 } from '../../geometry/frame.ts';
import {
  effortOf,
  leastEffort,
  planReachInPlace,
  reachInPlace,
  USUAL_SETTINGS,
  type Effort,
  type ReachSettings,
  type Task,
} from './effort.ts';
import { freeTimeFor } from './free-time.ts';
import { gripsOf } from './grips.ts';
import { approachNeeded, type IfNearer } from './if-nearer.ts';
import { NO_TIME } from './motion-times.ts';
import { freeHands, reachersOf, type Reacher } from './hands.ts';

/** A result with what the findings tell besides. */
export interface DetailedReach extends ReachResult {
  /** Standard deviation of the arm about what stature predicts, mm; 0 when it was measured. */
  readonly armResidual: number;
  /** Greatest distance from the shoulder, mm, that asks for no step at the grip's height. */
  readonly reachInPlace: number;
  readonly ifNearer: IfNearer;
}

/**
 * One result a grip of `gripsOf`, in its order.
 *
 * The arm is the mean that stature predicts, with its residual beside it: half of all people of a stature have a
 * shorter one. When anyone may play, both ends are tried, with the short and the long arm of the survey, and the one
 * who gets there worse is reported. Times are 0 when the manner is `none`.
 */
export function reachResults(
  document: Document,
  setup: Id<'setup'>,
  settings: ReachSettings = USUAL_SETTINGS,
): DetailedReach[] {
  return gripsOf(document, setup).flatMap((grip) => {
    const player = find(document, asId<'player'>(grip.player));
    if (!player) return [];
    const hands = freeHands(document, setup, player.id);
    return [reachOf({ document, setup, player, grip, hands, settings })];
  });
}

export interface ReachQuestion {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly player: Player;
  readonly grip: Grip;
  /** Those that may be used. */
  readonly hands: readonly Hand[];
  readonly settings?: ReachSettings;
}

/** How a player gets to any grip, whether or not it is one of his. */
export function reachOf(question: ReachQuestion): DetailedReach {
  const { document, setup, player, grip, hands, settings = USUAL_SETTINGS } = question;
  const floorThere = floorHeightAt(document, setup, grip);
  const freeTime = freeTimeFor(document, setup, grip);
  const spot = spotOf(document, grip);
  return reachersOf(document, setup, player)
    .map((reacher) => resultOf({ reacher, grip, hands, floorThere, spot, freeTime, settings }))
    .reduce(worseOf);
}

interface Case {
  readonly reacher: Reacher;
  readonly grip: Grip;
  /** The free ones. */
  readonly hands: readonly Hand[];
  readonly floorThere: number;
  /** Of the stand, or of what the instrument waits on. */
  readonly spot: Point;
  readonly freeTime: FreeTime | null;
  readonly settings: ReachSettings;
}

function resultOf({ reacher, grip, hands, floorThere, spot, freeTime, settings }: Case): DetailedReach {
  const hand = nearerOf(reacher, grip, hands);
  const shoulder = reacher.shoulders[hand ?? nearerOf(reacher, grip, BOTH_HANDS) ?? 'left'];
  const task = { grip, shoulder, floorThere };
  const { manner, stoops, time } = hand ? effortOf(reacher, task, settings) : NO_HAND;
  return {
    grip,
    hand,
    distance: distanceTo(grip, shoulder),
    armReach: reacher.arm.length,
    manner,
    seconds: time.usual,
    secondsRange: [time.least, time.most],
    freeTime: freeTime?.seconds ?? null,
    freeTimeSource: freeTime?.source ?? null,
    freeTimeAt: freeTime?.at ?? null,
    stoops,
    armResidual: reacher.armResidual,
    reachInPlace: reachInPlace(reacher, task, settings),
    ifNearer: ifNearer(reacher, task, spot, settings),
  };
}

function ifNearer(reacher: Reacher, task: Task, from: Point, settings: ReachSettings): IfNearer {
  const least = leastEffort(reacher, task, settings);
  const limit = planReachInPlace(reacher, task, settings);
  return {
    by: approachNeeded({ from, to: reacher.player, ...task, limit }),
    seconds: least?.time.usual ?? null,
    stoops: least?.stoops ?? false,
  };
}

function spotOf(document: Document, grip: Grip): Point {
  const item = document.records.get(grip.item);
  const thing = item?.kind === 'instrument' ? document.records.get(item.support ?? '') : item;
  return thing && isPlaced(thing) ? thing : grip;
}

const BOTH_HANDS: readonly Hand[] = ['left', 'right'];
const NO_HAND: Effort = { manner: 'none', stoops: false, time: NO_TIME };

/** At one height the nearer shoulder is never worse off, so only it is tried. Equal distances: the left. */
function nearerOf({ shoulders }: Reacher, grip: Grip, hands: readonly Hand[]): Hand | null {
  const distance = (hand: Hand) => distanceTo(grip, shoulders[hand]);
  const [first, second] = hands;
  if (first === undefined || second === undefined) return first ?? null;
  return distance(second) < distance(first) ? second : first;
}

function distanceTo(grip: Vec3, shoulder: Vec3): number {
  return Math.hypot(grip.x - shoulder.x, grip.y - shoulder.y, grip.z - shoulder.z);
}

const MANNERS: readonly Manner[] = ['reach', 'lean', 'step', 'walk', 'none'];

function worseOf(small: DetailedReach, tall: DetailedReach): DetailedReach {
  const rank = MANNERS.indexOf(tall.manner) - MANNERS.indexOf(small.manner);
  const lacks = ({ distance, armReach }: DetailedReach) => distance - armReach;
  return rank > 0 || (rank === 0 && lacks(tall) > lacks(small)) ? tall : small;
}
