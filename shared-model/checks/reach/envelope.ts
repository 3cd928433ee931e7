/** What a player's free hands sweep over at one height, for the plan. */

import { circle } from '../../catalogue/shapes.ts';
import { find, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Point } from '../../document/records.ts';
import type { Hand } from '../report.ts';
import { USUAL_SETTINGS } from './effort.ts';
import { freeHands, reachersOf, type Reacher } from './hands.ts';
import { armLimit, leanLimit, type Arm } from './postures.ts';

/** Rings in the stage frame, mm; empty where the hand does not get to that height. */
export interface HandEnvelope {
  readonly hand: Hand;
  /** By the arm alone. */
  readonly arm: readonly Point[];
  /** With a lean. */
  readonly lean: readonly Point[];
}

/**
 * For each free hand the circles that a sphere about its shoulder leaves at `height` (mm above the platform's floor).
 * When anyone may play it is the end that reaches less far there. No free hand, or no such player: none.
 */
export function reachEnvelope(
  document: Document,
  setup: Id<'setup'>,
  playerId: Id<'player'>,
  height: number,
): HandEnvelope[] {
  const player = find(document, playerId);
  if (!player) return [];
  const reachers = reachersOf(document, setup, player);
  const short = reachers.reduce((a, b) => (radiusOf(b, height) < radiusOf(a, height) ? b : a));
  return freeHands(document, setup, playerId).map((hand) => envelopeOf(short, hand, height));
}

const radiusOf = ({ arm, floor }: Reacher, height: number): number => armLimit(arm, height - floor) ?? -1;

function envelopeOf(reacher: Reacher, hand: Hand, height: number): HandEnvelope {
  const ring = (limit: (arm: Arm, height: number) => number | null) => {
    const radius = limit(reacher.arm, height - reacher.floor);
    return radius === null ? [] : circle(reacher.shoulders[hand], radius);
  };
  return { hand, arm: ring(armLimit), lean: ring((arm, at) => leanLimit(arm, at, USUAL_SETTINGS.trunkLean)) };
}
