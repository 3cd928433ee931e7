/** What a change makes wrong elsewhere: a remedy may not trade one fault for another. */

import { setupsOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { facingFindings } from '../facing/findings.ts';
import type { Finding, RemedyChange, Severity, Unit } from '../finding.ts';
import { reachFindings } from '../reach/findings.ts';
import { readingFindings } from '../reading/findings.ts';
import { roomFindings } from '../room/room-findings.ts';
import type { Task } from './attempt.ts';
import { createCrowdMeter, type CrowdMeter } from './crowd-meter.ts';

export type HarmCheck = (changed: Document, change: RemedyChange) => boolean;

/**
 * A change does harm when a finding comes that was not there, or becomes worse: one as grave as the finding that is to
 * be cleared, any nearness to an open edge, any page that can no longer be read well; or when another player is no
 * longer seen well. Routes are left to the next full check.
 */
export function createHarmCheck(task: Task): HarmCheck {
  const checked = new Map<Id<'setup'>, SetupHarm>();
  const harmIn = (setup: Id<'setup'>): SetupHarm => {
    const known = checked.get(setup) ?? setupHarm({ ...task, setup });
    checked.set(setup, known);
    return known;
  };
  return (changed, change) => setupsTouched(task, change).some((setup) => harmIn(setup)(changed));
}

/** The ids of what a change touches. */
export function itemsOf(change: RemedyChange): string[] {
  return change.kind === 'lowerAll' ? change.items.map(({ item }) => item) : [change.item];
}

/** What stays for the whole concert stands in every setup. */
function setupsTouched({ document, setup }: Task, change: RemedyChange): Id<'setup'>[] {
  const staysOn = itemsOf(change).some((id) => {
    const record = document.records.get(id);
    return record !== undefined && 'setup' in record && record.setup === null;
  });
  return staysOn ? setupsOf(document).map(({ id }) => id) : [setup];
}

type SetupHarm = (changed: Document) => boolean;

/** Quick checks first. */
const CHECKS: readonly ((document: Document, setup: Id<'setup'>) => Finding[])[] = [
  (document, setup) => roomFindings(document, setup, null),
  reachFindings,
  (document, setup) => facingFindings(document, setup),
  (document, setup) => readingFindings(document, setup),
];

function setupHarm({ document, setup, finding }: Task): SetupHarm {
  const before = CHECKS.map((check) => byKey(check(document, setup)));
  let crowd: CrowdMeter | null = null;
  const isHarm = (found: Finding, known: ReadonlyMap<string, Finding> | undefined): boolean =>
    matters(found, finding.severity) && isWorse(found, known?.get(keyOf(found)));
  return (changed) =>
    CHECKS.some((check, index) => check(changed, setup).some((found) => isHarm(found, before[index]))) ||
    (crowd ??= createCrowdMeter(document, setup)).losesSight(changed);
}

const SEVERITIES: readonly Severity[] = ['fail', 'caution', 'note'];

function matters({ code, severity }: Finding, cleared: Severity): boolean {
  return (
    SEVERITIES.indexOf(severity) <= SEVERITIES.indexOf(cleared) ||
    code === 'room.edge' ||
    (code === 'reading.angle' && severity !== 'note')
  );
}

/** Less than this is measured, but not noticed. */
const NOTICED: Readonly<Record<Unit, number>> = { mm: 1, share: 0.01, s: 0.1, count: 0, degrees: 1 };

function isWorse(found: Finding, known: Finding | undefined): boolean {
  if (!known || SEVERITIES.indexOf(found.severity) < SEVERITIES.indexOf(known.severity)) return true;
  return lackOf(found) > lackOf(known) + NOTICED[found.unit];
}

function lackOf({ measured, required }: Finding): number {
  return Math.abs(measured - required);
}

/** The worst of each code and subjects. What is in the way of eyes may change without a new complaint. */
function byKey(findings: readonly Finding[]): Map<string, Finding> {
  const worst = new Map<string, Finding>();
  for (const found of findings) {
    const known = worst.get(keyOf(found));
    if (!known || isWorse(found, known)) worst.set(keyOf(found), found);
  }
  return worst;
}

function keyOf({ code, subjects }: Finding): string {
  return [code, ...(code.startsWith('facing.') ? subjects.slice(0, 2) : subjects)].join(' ');
}
