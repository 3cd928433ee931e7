/** Who gets a hand to a leaf of a station from where he plays, and how long turning it keeps that hand. */

import type { Desk } from '../../document/desks.ts';
import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Player, Stand } from '../../document/records.ts';
import type { Vec3 } from '../../geometry/frame.ts';
import { leafGrips } from '../../checks/reach/grips.ts';
import { freeHands } from '../../checks/reach/hands.ts';
import { reachTime } from '../../checks/reach/motion-times.ts';
import { reachOf, type DetailedReach } from '../../checks/reach/reach.ts';
import type { StationReach } from '../planner/instance.ts';

export interface LeafQuestion {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly stand: Stand;
  /** The leaf lies on this side. */
  readonly desk: Desk;
  readonly players: readonly Player[];
}

/**
 * One entry for each player and each hand that can let go and gets to all that it has to get to without a step: the leaf's
 * lower outer corner, and over a ridge its upper edge too. Nobody turns while he walks.
 */
export function leafReach({ document, setup, stand, desk, players }: LeafQuestion): StationReach[] {
  return players.flatMap((player) => {
    const grips = leafGrips(stand, desk, player.id);
    return freeHands(document, setup, player.id).flatMap((hand): StationReach[] => {
      const ways = grips.map((grip) => reachOf({ document, setup, player, grip, hands: [hand] }));
      if (ways.length === 0 || !ways.every(isAtHand)) return [];
      return [{ player: player.id, hand, side: desk.sideIndex, seconds: turnSeconds(ways, desk) }];
    });
  });
}

function isAtHand({ manner, stoops }: DetailedReach): boolean {
  return (manner === 'reach' || manner === 'lean') && !stoops;
}

/**
 * There, the leaf over to the other side, and back. The leaf weighs next to nothing, so its way is timed as a reach of the
 * same length: an assumption of this program. The careful end of the published range is taken.
 */
function turnSeconds(ways: readonly DetailedReach[], { paper }: Desk): number {
  const there = ways.reduce((most, { secondsRange }) => Math.max(most, secondsRange[1]), 0);
  const [left, right, , upperLeft] = paper ?? [];
  const across = left && right && upperLeft ? Math.max(apart(left, right), 2 * apart(left, upperLeft)) : 0;
  return 2 * there + reachTime('C', across).most;
}

function apart(a: Vec3, b: Vec3): number {
  return Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);
}
