/**
 * What to do about a finding: changes that were tried on a copy of the document and measured again by the same check.
 * No change is suggested that was not seen to work.
 */

import type { Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Finding, FindingCode, Remedy } from './finding.ts';
import type { Task } from './remedies/attempt.ts';
import { cableRemedies } from './remedies/cable.ts';
import { blockedRemedies, houseRemedies, turnRemedies } from './remedies/facing.ts';
import { reachRemedies } from './remedies/reach.ts';
import { readingRemedies, rowRemedies } from './remedies/reading.ts';
import { roomRemedies } from './remedies/room.ts';
import { sightRemedies } from './remedies/sight.ts';
import { routeRemedies } from './remedies/ways-out.ts';
import { levelRemedies, wheelchairRemedies } from './remedies/wheelchair.ts';

/**
 * Of codes that are not here no placing of things decides: what hands hold, how large a part is printed, which doors the
 * building has, how a cable runs.
 */
const SOLVERS: Partial<Readonly<Record<FindingCode, (task: Task) => Remedy[]>>> = {
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
export function suggestRemedies(document: Document, setup: Id<'setup'>, finding: Finding): Remedy[] {
  return SOLVERS[finding.code]?.({ document, setup, finding }) ?? [];
}

/** The first of `suggestRemedies`. */
export function suggestRemedy(document: Document, setup: Id<'setup'>, finding: Finding): Remedy | null {
  return suggestRemedies(document, setup, finding)[0] ?? null;
}
