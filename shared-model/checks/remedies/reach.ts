/** What helps against grips that are too far or take too long: things nearer to the player, or him nearer to them. */

import type { Document } from '../../document/document.ts';
import { isPlaced, type PlacedRecord } from '../../document/records.ts';
import type { Finding, Remedy } from '../finding.ts';
import { findingsOf } from '../reach/findings.ts';
import { reachResults, type DetailedReach } from '../reach/reach.ts';
import { attemptsAt, type Attempt, type Search, type Task } from './attempt.ts';
import { excerpt } from './excerpt.ts';
import { createHarmCheck, isSameComplaint } from './harm.ts';
import { moveTowards } from './towards.ts';
import { ofWeight, WEIGHTS } from './weights.ts';

/** The shortest move towards each other of what is to be gripped, or else of him who is to grip it. */
export function reachRemedies(task: Task): Search | null {
  const ends = endsOf(task);
  if (!ends) return null;
  const attempt = attemptsAt(task, {
    cleared: (changed) => measuredClear(task, ends, changed),
    harms: createHarmCheck(task),
  });
  return { attempt, least: () => leastMove(task, ends, attempt), things: [] };
}

function leastMove(task: Task, ends: Ends, attempt: Attempt): Remedy[] {
  for (const weight of WEIGHTS) {
    const movable = ofWeight(task.document, [ends.thing.id, ends.player.id], weight);
    const [item] = movable;
    const remedy = item ? moveTowards(item, item === ends.player ? ends.thing : ends.player, attempt) : null;
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
