/** What the reach check has to say: grips that are too far, too late, or that no hand is free for. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Finding, FindingCode, Severity } from '../finding.ts';
import { reachResults, type DetailedReach } from './reach.ts';

/**
 * Findings of a setup, at most one of each code for a player and an item: the worst.
 *
 * `reach.far`: distance from the shoulder against what needs no step, mm. A page turn by walking, or a grip at a
 * height nobody gets to, fails; by a step it is a caution. Walking to an instrument is a note if it fits the rest, a caution
 * while the rest is not known. `reach.late`: seconds against the rest; a caution if only the slow end of the range is
 * late. `reach.noHand`: free hands against one.
 */
export function reachFindings(document: Document, setup: Id<'setup'>): Finding[] {
  return worstOfEach(reachResults(document, setup).flatMap(findingsOf));
}

export function findingsOf(result: DetailedReach): Finding[] {
  if (result.hand === null)
    return [finding(result, 'reach.noHand', 'fail', { measured: 0, required: 1, unit: 'count' })];
  return [tooFar(result), tooLate(result)].filter((found) => found !== null);
}

function tooFar(result: DetailedReach): Finding | null {
  const severity = severityOfWay(result);
  const figures = { measured: result.distance, required: result.reachInPlace, unit: 'mm' } as const;
  return severity && finding(result, 'reach.far', severity, figures);
}

function severityOfWay({ manner, grip, freeTime, seconds }: DetailedReach): Severity | null {
  if (manner === 'none') return 'fail';
  if (manner === 'step') return grip.purpose === 'pickUp' ? null : 'caution';
  if (manner !== 'walk') return null;
  if (grip.purpose !== 'pickUp') return 'fail';
  return freeTime !== null && seconds <= freeTime ? 'note' : 'caution';
}

function tooLate(result: DetailedReach): Finding | null {
  const { manner, seconds, secondsRange, freeTime } = result;
  if (manner === 'none' || freeTime === null || secondsRange[1] <= freeTime) return null;
  const late = seconds > freeTime;
  const measured = late ? seconds : secondsRange[1];
  return finding(result, 'reach.late', late ? 'fail' : 'caution', {
    measured,
    required: freeTime,
    unit: 's',
  });
}

type Figures = Pick<Finding, 'measured' | 'required' | 'unit'>;

function finding(result: DetailedReach, code: FindingCode, severity: Severity, figures: Figures): Finding {
  const { grip } = result;
  return {
    code,
    severity,
    subjects: [grip.player, grip.item],
    ...figures,
    where: { x: grip.x, y: grip.y },
    detail: detailOf(result),
  };
}

function detailOf(result: DetailedReach): Finding['detail'] {
  const { grip, hand, manner, stoops, ...figures } = result;
  return {
    ...nearerDetail(result),
    purpose: grip.purpose,
    hand: hand ?? 'none',
    manner,
    stoops: stoops ? 1 : 0,
    height: grip.z,
    distance: figures.distance,
    armReach: figures.armReach,
    armResidual: figures.armResidual,
    seconds: figures.seconds,
    secondsLeast: figures.secondsRange[0],
    secondsMost: figures.secondsRange[1],
    rest: figures.freeTimeSource ?? 'unknown',
    ...(figures.freeTimeAt ? { restBar: figures.freeTimeAt.bar, restAt: figures.freeTimeAt.seconds } : {}),
  };
}

/** `nearer`, `nearestSeconds` and `nearestStoops` are what `IfNearer` says; each is left out where there is none. */
function nearerDetail({ ifNearer: { by, seconds, stoops }, freeTime }: DetailedReach): Finding['detail'] {
  return {
    ...(by === null ? {} : { nearer: by }),
    ...(seconds === null ? {} : { nearestSeconds: seconds, nearestStoops: stoops ? 1 : 0 }),
    ...(freeTime === null ? {} : { restSeconds: freeTime }),
  };
}

const SEVERITIES: readonly Severity[] = ['note', 'caution', 'fail'];

/** Of the corner and the ridge of one stand only the worse is told. */
function worstOfEach(findings: readonly Finding[]): Finding[] {
  const worst = new Map<string, Finding>();
  for (const found of findings) {
    const key = [found.code, ...found.subjects].join(' ');
    const known = worst.get(key);
    if (!known || isWorse(found, known)) worst.set(key, found);
  }
  return [...worst.values()];
}

function isWorse(a: Finding, b: Finding): boolean {
  const rank = SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity);
  return rank > 0 || (rank === 0 && a.measured - a.required > b.measured - b.required);
}
