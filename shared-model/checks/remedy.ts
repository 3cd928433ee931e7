/**
 * What to do about a finding: changes that were tried on a copy of the document and measured again by the same check.
 * No change is suggested that was not seen to work.
 */

import type { Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Finding, FindingCode, Remedy } from './finding.ts';
import type { Search, Task } from './remedies/attempt.ts';
import { cableRemedies } from './remedies/cable.ts';
import { blockedRemedies, houseRemedies, turnRemedies } from './remedies/facing.ts';
import { mendMost, type MendMost, type MendOrder } from './remedies/mend-most.ts';
import { oneOrTwo } from './remedies/pairs.ts';
import { reachRemedies } from './remedies/reach.ts';
import { readingRemedies, rowRemedies } from './remedies/reading.ts';
import { roomRemedies } from './remedies/room.ts';
import { settable } from './remedies/settable.ts';
import { sightRemedies } from './remedies/sight.ts';
import { routeRemedies } from './remedies/ways-out.ts';
import { levelRemedies, wheelchairRemedies } from './remedies/wheelchair.ts';

/**
 * Of codes that are not here no placing of things decides: what hands hold, how large a part is printed, which doors the
 * building has, how a cable runs.
 */
const SOLVERS: Partial<Readonly<Record<FindingCode, (task: Task) => Search | null>>> = {
  'sight.house': sightRemedies,
  'reach.far': reachRemedies,
  'reach.late': reachRemedies,
  'reading.angle': readingRemedies,
  'reading.far': rowRemedies,
  'reading.turn': rowRemedies,
  'facing.blocked': blockedRemedies,
  'facing.turn': turnRemedies,
  'facing.house': houseRemedies,
  'room.overlap': roomRemedies('room.overlap'),
  'room.offPlatform': roomRemedies('room.offPlatform'),
  'room.elbow': roomRemedies('room.elbow'),
  'room.edge': roomRemedies('room.edge'),
  'room.door': roomRemedies('room.door'),
  'room.route': routeRemedies,
  'room.step': routeRemedies,
  'room.cable': cableRemedies,
  'room.wheelchairLevel': levelRemedies,
  'room.wheelchairRoute': wheelchairRemedies,
  'room.turning': wheelchairRemedies,
};

/** Whether changes are tried against findings of this code at all: of the others nothing is known. */
export function isTried(code: FindingCode): boolean {
  return code in SOLVERS;
}

/**
 * The smallest change of each kind that clears the finding, best first; empty when none of those tried does. Amounts
 * are round (5 mm of height, 10 mm on plan, 1 degree) and the next smaller one does not do. The building, levels and
 * the house stay as they are, and nothing else becomes wrong. The same document gives the same answer.
 */
export function leastRemedies(document: Document, setup: Id<'setup'>, finding: Finding): Remedy[] {
  return searchOf({ document, setup, finding })?.least() ?? [];
}

/**
 * What is told: `leastRemedies` with amounts that a person can set, where these clear the finding as well; where there
 * are none, a desk laid flatter, or two changes together.
 */
export function suggestRemedies(document: Document, setup: Id<'setup'>, finding: Finding): Remedy[] {
  const task = { document, setup, finding };
  const search = searchOf(task);
  if (!search) return [];
  const alone = search.least().map((remedy) => settable(document, remedy, search.attempt));
  if (alone.length > 0) return alone;
  const other = oneOrTwo(task, search);
  return other ? [other] : [];
}

/** Of these changes the one that clears most of these findings, two at least. */
export function mendingMost(order: MendOrder): MendMost | null {
  return mendMost(order, searchOf);
}

function searchOf(task: Task): Search | null {
  return SOLVERS[task.finding.code]?.(task) ?? null;
}
