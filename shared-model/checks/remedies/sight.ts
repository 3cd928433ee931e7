/** What helps against a player whom too small a share of the house sees well. */

import { concertOf } from '../../document/document.ts';
import type { PlacedRecord } from '../../document/records.ts';
import type { Remedy } from '../finding.ts';
import { attemptsAt, type Attempt, type Search, type Task } from './attempt.ts';
import { moveOfWeight, remediesOfEachKind, type Movables } from './each-kind.ts';
import { createHarmCheck } from './harm.ts';
import { createSightMeter } from './sight-meter.ts';
import { lowerTogether, standsAmong } from './ways.ts';
import { ofWeight } from './weights.ts';

/** Of each weight so many things are tried, worst cover first. */
const MOST_COVERS = 3;

/**
 * One change of each kind that makes the house see him; several desks lowered together if no single thing does. What is
 * bulky is moved only where nothing else helps.
 */
export function sightRemedies(task: Task): Search {
  const search = searchFor(task);
  const { attempt, things } = search;
  return { attempt, least: () => leastOf(search), things };
}

function leastOf({ covers, couldClear, attempt }: SightSearch): Remedy[] {
  const worthTrying: Movables = (weight) =>
    covers(weight)
      .slice(0, MOST_COVERS)
      .filter((item) => couldClear([item]));
  const alone = remediesOfEachKind(worthTrying, attempt);
  if (alone.length > 0) return alone;
  const stands = standsAmong(covers('light'));
  const together = couldClear(stands) ? lowerTogether(stands, attempt) : null;
  const rest = together ?? moveOfWeight(worthTrying, 'bulky', attempt);
  return rest ? [rest] : [];
}

interface SightSearch {
  /** What covers him and may be moved, worst first; he himself is the first among the persons. */
  readonly covers: Movables;
  /** False: even without these things he would not be seen, so nothing done to them can help. */
  readonly couldClear: (items: readonly PlacedRecord[]) => boolean;
  readonly attempt: Attempt;
  readonly things: readonly string[];
}

function searchFor(task: Task): SightSearch {
  const { document, setup, finding } = task;
  const player = finding.subjects[0] ?? '';
  const { houseShare } = concertOf(document).limits;
  const meter = createSightMeter(document, setup, player);
  const cleared = (share: number): number | null => (share >= houseShare ? share : null);
  return {
    covers: (weight) => ofWeight(document, [player, ...meter.covers], weight),
    couldClear: (items) => {
      const ids = new Set(items.map(({ id }): string => id));
      return ids.has(player) || cleared(meter.seenWellWithout(ids)) !== null;
    },
    attempt: attemptsAt(task, {
      cleared: (changed) => cleared(meter.seenWell(changed)),
      harms: createHarmCheck(task),
      lack: (changed) => Math.max(0, houseShare - meter.seenWell(changed)),
    }),
    things: [...meter.covers.slice(0, MOST_COVERS), player],
  };
}
