/** What helps against eyes that cannot meet, partners behind one's back, and backs to the house. */

import type { Document } from '../../document/document.ts';
import { facingResults } from '../facing/facing.ts';
import { PROFILE } from '../facing/published.ts';
import type { Remedy } from '../finding.ts';
import { isBeyond } from '../reading/gaze.ts';
import { attemptsAt, type Attempt, type Search, type Task } from './attempt.ts';
import { moveOfWeight, remediesOfEachKind } from './each-kind.ts';
import { excerpt } from './excerpt.ts';
import { createHarmCheck } from './harm.ts';
import { standsReadBy, withOwnStands } from './own-stands.ts';
import { scenesOf } from './scenes.ts';
import { lowerTogether, standsAmong, turnRound } from './ways.ts';
import { ofWeight, type Weight } from './weights.ts';

/** One change of each kind to one thing that is in the way, or to one of the two; else all desks down together. */
export function blockedRemedies(task: Task): Search {
  const { document, finding } = task;
  const lack = lowering(task);
  const attempt = attemptsAt(task, {
    cleared: (changed) => (lack(changed) > 0 ? null : 0),
    harms: createHarmCheck(task),
    lack,
  });
  const [a = '', b = '', ...inTheWay] = finding.subjects;
  const movables = (weight: Weight) => ofWeight(document, [...inTheWay, a, b], weight);
  const least = (): Remedy[] => {
    const alone = remediesOfEachKind(movables, attempt);
    if (alone.length > 0) return alone;
    const together = lowerTogether(standsAmong(movables('light')), attempt);
    return together ? [together] : [];
  };
  return { attempt, least, things: [...inTheWay, a, b] };
}

/** By how much things have to be lowered, mm, for these two; everything else is there only to be in their way. */
function lowering({ document, setup, finding }: Task): (changed: Document) => number {
  const scenes = scenesOf(document, setup);
  const players = finding.subjects.slice(0, 2);
  return (changed) => {
    const { pairs } = facingResults(excerpt(changed, players), setup, scenes.of(changed).occluders);
    return pairs.flatMap(({ blockers }) => blockers).reduce((sum, { lowerBy }) => sum + lowerBy, 0);
  };
}

/** Whoever looks turned round with his pages; or his page moved aside, or else one of the two. */
export function turnRemedies(task: Task): Search {
  const { document, setup, finding } = task;
  const bearing = farthestGlance(task);
  const attempt = attemptsAt(task, {
    cleared: (changed) => (bearing(changed).body ? null : bearing(changed).most),
    harms: createHarmCheck(task),
    lack: (changed) => Math.max(0, bearing(changed).most - finding.required),
  });
  const [looker = '', partner = ''] = finding.subjects;
  const pages = standsReadBy(document, setup, looker).map(({ id }) => id);
  const movables = (weight: Weight) => ofWeight(document, [...pages, partner, looker], weight);
  const least = (): Remedy[] =>
    [
      turnOf(task, attempt),
      moveOfWeight(movables, 'light', attempt) ?? moveOfWeight(movables, 'person', attempt),
    ].filter((remedy) => remedy !== null);
  return { attempt, least, things: [looker, partner, ...pages] };
}

/** He turned back, with his pages. */
export function houseRemedies(task: Task): Search {
  const attempt = attemptsAt(task, { cleared: frontOf(task), harms: createHarmCheck(task) });
  const least = (): Remedy[] => {
    const turn = turnOf(task, attempt);
    return turn ? [turn] : [];
  };
  return { attempt, least, things: [] };
}

/** Farther round, one would rather set him elsewhere. */
const FARTHEST_TURN = 120;

function turnOf({ document, setup, finding }: Task, attempt: Attempt): Remedy | null {
  const [player = ''] = finding.subjects;
  const together =
    ofWeight(document, [player], 'person').length > 0 && withOwnStands(document, setup, player);
  return together ? turnRound(together, FARTHEST_TURN, attempt) : null;
}

/** How far the one who turns farther has to, degrees, and whether either of the two turns the body for it. */
function farthestGlance({
  setup,
  finding,
}: Task): (changed: Document) => { readonly most: number; readonly body: boolean } {
  const players = finding.subjects.slice(0, 2);
  return (changed) => {
    const stands = players.flatMap((player) => standsReadBy(changed, setup, player));
    const { pairs } = facingResults(excerpt(changed, [...players, ...stands.map(({ id }) => id)]), setup, []);
    const glances = pairs.flatMap(({ glances }) => glances);
    return {
      most: glances.reduce((most, { bearing }) => Math.max(most, Math.abs(bearing)), 0),
      body: glances.some(({ turn }) => turn === 'body'),
    };
  };
}

/** How far he faces from the house, degrees, once that is no more than a profile. */
function frontOf({ setup, finding }: Task): (changed: Document) => number | null {
  const [player = ''] = finding.subjects;
  return (changed) => {
    const { toHouse } = facingResults(excerpt(changed, [player]), setup, []);
    const angle = toHouse[0]?.angle ?? 0;
    return isBeyond(angle, PROFILE) ? null : angle;
  };
}
