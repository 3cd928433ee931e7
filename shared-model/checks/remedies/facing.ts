/** What helps against eyes that cannot meet, partners behind one's back, and backs to the house. */

import type { Document } from '../../document/document.ts';
import { facingResults } from '../facing/facing.ts';
import { PROFILE } from '../facing/published.ts';
import type { Remedy } from '../finding.ts';
import { isBeyond } from '../reading/gaze.ts';
import { attemptsAt, type Attempt, type Task } from './attempt.ts';
import { moveOfWeight, remediesOfEachKind } from './each-kind.ts';
import { excerpt } from './excerpt.ts';
import { createHarmCheck } from './harm.ts';
import { standsReadBy, withOwnStands } from './own-stands.ts';
import { scenesOf } from './scenes.ts';
import { lowerTogether, standsAmong, turnRound } from './ways.ts';
import { ofWeight, type Weight } from './weights.ts';

/** One change of each kind to one thing that is in the way, or to one of the two; else all desks down together. */
export function blockedRemedies(task: Task): Remedy[] {
  const { document, finding } = task;
  const attempt = attemptsAt(task, { cleared: eyesMeet(task), harms: createHarmCheck(task) });
  const [a = '', b = '', ...inTheWay] = finding.subjects;
  const movables = (weight: Weight) => ofWeight(document, [...inTheWay, a, b], weight);
  const alone = remediesOfEachKind(movables, attempt);
  if (alone.length > 0) return alone;
  const together = lowerTogether(standsAmong(movables('light')), attempt);
  return together ? [together] : [];
}

/** 0 when nothing has to be lowered any more for these two; everything else is there only to be in their way. */
function eyesMeet({ document, setup, finding }: Task): (changed: Document) => number | null {
  const scenes = scenesOf(document, setup);
  const players = finding.subjects.slice(0, 2);
  return (changed) => {
    const { pairs } = facingResults(excerpt(changed, players), setup, scenes.of(changed).occluders);
    return pairs.some(({ blockers }) => blockers.length > 0) ? null : 0;
  };
}

/** Whoever looks turned round with his pages; or his page moved aside, or else one of the two. */
export function turnRemedies(task: Task): Remedy[] {
  const { document, setup, finding } = task;
  const attempt = attemptsAt(task, { cleared: bodiesRest(task), harms: createHarmCheck(task) });
  const [looker = '', partner = ''] = finding.subjects;
  const pages = standsReadBy(document, setup, looker).map(({ id }) => id);
  const movables = (weight: Weight) => ofWeight(document, [...pages, partner, looker], weight);
  return [
    turnOf(task, attempt),
    moveOfWeight(movables, 'light', attempt) ?? moveOfWeight(movables, 'person', attempt),
  ].filter((remedy) => remedy !== null);
}

/** He turned back, with his pages. */
export function houseRemedies(task: Task): Remedy[] {
  const attempt = attemptsAt(task, { cleared: frontOf(task), harms: createHarmCheck(task) });
  const turn = turnOf(task, attempt);
  return turn ? [turn] : [];
}

/** Farther round, one would rather set him elsewhere. */
const FARTHEST_TURN = 120;

function turnOf({ document, setup, finding }: Task, attempt: Attempt): Remedy | null {
  const [player = ''] = finding.subjects;
  const together =
    ofWeight(document, [player], 'person').length > 0 && withOwnStands(document, setup, player);
  return together ? turnRound(together, FARTHEST_TURN, attempt) : null;
}

/** By how much the one who turns farther has to, degrees, once neither of the two turns the body. */
function bodiesRest({ setup, finding }: Task): (changed: Document) => number | null {
  const players = finding.subjects.slice(0, 2);
  return (changed) => {
    const stands = players.flatMap((player) => standsReadBy(changed, setup, player));
    const { pairs } = facingResults(excerpt(changed, [...players, ...stands.map(({ id }) => id)]), setup, []);
    const glances = pairs.flatMap(({ glances }) => glances);
    if (glances.some(({ turn }) => turn === 'body')) return null;
    return glances.reduce((most, { bearing }) => Math.max(most, Math.abs(bearing)), 0);
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
