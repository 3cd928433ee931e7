/** What helps against grips that are too far or take too long: things nearer to the player, or him nearer to them. */

import type { Document } from '../../document/document.ts';
import { isPlaced, type PlacedRecord, type Point } from '../../document/records.ts';
import { facingTowards, facingVector, type Vec2 } from '../../geometry/frame.ts';
import type { Finding, Remedy } from '../finding.ts';
import { findingsOf } from '../reach/findings.ts';
import { reachResults, type DetailedReach } from '../reach/reach.ts';
import { attemptsAt, type Attempt, type Task } from './attempt.ts';
import { excerpt } from './excerpt.ts';
import { createHarmCheck, isSameComplaint } from './harm.ts';
import { moveOne, type Way } from './ways.ts';
import { ofWeight, WEIGHTS } from './weights.ts';

/** Away from the straight line, degrees: something may stand there. */
const ASIDE = [0, -15, 15, -30, 30, -45, 45, -60, 60];
const COARSE = 100;
/** Nothing is brought from farther, mm. */
const FARTHEST = 3000;

/** The shortest move towards each other of what is to be gripped, or else of him who is to grip it. */
export function reachRemedies(task: Task): Remedy[] {
  const ends = endsOf(task);
  if (!ends) return [];
  const attempt = attemptsAt(task, {
    cleared: (changed) => measuredClear(task, ends, changed),
    harms: createHarmCheck(task),
  });
  for (const weight of WEIGHTS) {
    const movable = ofWeight(task.document, [ends.thing.id, ends.player.id], weight);
    const remedy = movable[0] ? moveTowards(movable[0], ends, attempt) : null;
    if (remedy) return [remedy];
  }
  return [];
}

interface Ends {
  readonly player: PlacedRecord;
  /** The stand with the page, or what the instrument waits on. */
  readonly thing: PlacedRecord;
}

function endsOf({ document, finding }: Task): Ends | null {
  const [playerId = '', itemId = ''] = finding.subjects;
  const player = document.records.get(playerId);
  const item = document.records.get(itemId);
  const thing = item?.kind === 'instrument' ? document.records.get(item.support ?? '') : item;
  if (!player || !thing || !isPlaced(player) || !isPlaced(thing)) return null;
  return { player, thing };
}

function moveTowards(item: PlacedRecord, { player, thing }: Ends, attempt: Attempt): Remedy | null {
  const other = item === player ? thing : player;
  const most = Math.min(FARTHEST, Math.hypot(other.x - item.x, other.y - item.y));
  return moveOne(waysTowards(item, other), { coarse: COARSE, most }, attempt);
}

function waysTowards(item: PlacedRecord, other: Point): Way[] {
  const straight = facingTowards(item, other);
  const direction = (aside: number): Vec2 => facingVector(straight + aside);
  return ASIDE.map((aside) => ({ item, direction: direction(aside) }));
}

/** Distance (mm) or slowest time (s) of the worst of the grips that the finding is about, when none is wrong. */
function measuredClear({ setup, finding }: Task, { player, thing }: Ends, changed: Document): number | null {
  const results = reachResults(excerpt(changed, [player.id, thing.id]), setup).filter(
    ({ grip }) => grip.player === finding.subjects[0] && grip.item === finding.subjects[1],
  );
  const [first, ...rest] = results;
  if (!first || results.some((result) => findingsOf(result).some((found) => isSameComplaint(found, finding))))
    return null;
  const worst = rest.reduce((a, b) => (lackOf(finding, b) > lackOf(finding, a) ? b : a), first);
  return finding.code === 'reach.late' ? worst.secondsRange[1] : worst.distance;
}

function lackOf({ code }: Finding, { secondsRange, distance, reachInPlace }: DetailedReach): number {
  return code === 'reach.late' ? secondsRange[1] : distance - reachInPlace;
}
