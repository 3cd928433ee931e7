/** What a change makes wrong elsewhere: a remedy may not trade one fault for another. */

import { setupsOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Degrees } from '../../document/records.ts';
import { facingResults } from '../facing/facing.ts';
import { facingFindings } from '../facing/findings.ts';
import type { FindingCode, RemedyChange, Severity, Unit } from '../finding.ts';
import type { Task } from './attempt.ts';
import { createCrowdMeter, type CrowdMeter } from './crowd-meter.ts';
import { QUICK_CHECKS, type Complaint, type QuickCheck } from './quick-checks.ts';
import { scenesOf } from './scenes.ts';

export type HarmCheck = (changed: Document, change: RemedyChange) => boolean;

/**
 * A change does harm when a finding comes that was not there, or becomes worse: one as grave as the finding that is to
 * be cleared, any nearness to an open edge, any page that is seen too steeply, any back to the house; or when another
 * player is no longer seen well. Routes are left to ways-harm.ts, or to the next full check.
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
  switch (change.kind) {
    case 'lowerAll':
      return change.items.map(({ item }) => item);
    case 'moveTogether':
    case 'turnTogether':
      return [...change.items];
    case 'both':
      return [...new Set([...itemsOf(change.first), ...itemsOf(change.second)])];
    default:
      return [change.item];
  }
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

function setupHarm({ document, setup, finding }: Task): SetupHarm {
  const scenes = scenesOf(document, setup);
  const facing: QuickCheck = (there) =>
    facingFindings(there, setup, facingResults(there, setup, scenes.of(there).occluders));
  const objections = [...QUICK_CHECKS, facing].map((check) =>
    complaintsWorse(
      check(document, setup),
      (there) => check(there, setup).filter((found) => matters(found, finding.severity)),
      toleranceFor(finding.code),
    ),
  );
  let crowd: CrowdMeter | null = null;
  objections.push((changed) =>
    (crowd ??= createCrowdMeter(document, scenes.base)).losesSight(scenes.of(changed)),
  );
  return (changed) => {
    const objector = objections.findIndex((objects) => objects(changed));
    // What objected to one change is likely to object to the next: it is asked first.
    if (objector > 0) objections.unshift(...objections.splice(objector, 1));
    return objector >= 0;
  };
}

/** Whether something is said of a changed document that was not said `before`, or was not as bad then. */
export function complaintsWorse(
  before: readonly Complaint[],
  said: (changed: Document) => readonly Complaint[],
  tolerance: Tolerance = noticed,
): (changed: Document) => boolean {
  const worst = worstOfEach(before);
  return (changed) => said(changed).some((found) => isWorse(found, worst.get(keyOf(found)), tolerance));
}

const SEVERITIES: readonly Severity[] = ['fail', 'caution', 'note'];

function matters({ code, severity }: Complaint, cleared: Severity): boolean {
  return (
    SEVERITIES.indexOf(severity) <= SEVERITIES.indexOf(cleared) ||
    code === 'room.edge' ||
    code === 'facing.house' ||
    (code === 'reading.angle' && severity !== 'note')
  );
}

/** Less than this is measured, but not noticed. */
const NOTICED: Readonly<Record<Unit, number>> = {
  mm: 1,
  share: 0.01,
  s: 0.1,
  count: 0,
  degrees: 1,
  minutesOfArc: 0.1,
};

/** By how much what is found may be worse than it was. */
type Tolerance = (found: Complaint) => number;

function noticed({ unit }: Complaint): number {
  return NOTICED[unit];
}

/** A glance may be turned so much farther where somebody is kept from harm by it. A figure of the tool's own. */
const GLANCE_FOR_SAFETY: Degrees = 5;

/**
 * Whether somebody can fall, or not get out, weighs more than how far he turns his head: a glance that was already far
 * may then become a little farther. Nothing else may become worse.
 */
function toleranceFor(cleared: FindingCode): Tolerance {
  if (!SAFETY.has(cleared)) return noticed;
  return (found) => (found.code === 'facing.turn' ? GLANCE_FOR_SAFETY : noticed(found));
}

const SAFETY: ReadonlySet<FindingCode> = new Set([
  'room.edge',
  'room.offPlatform',
  'room.door',
  'room.wheelchairLevel',
  'room.wheelchairRoute',
  'room.turning',
] satisfies FindingCode[]);

function isWorse(found: Complaint, known: Complaint | undefined, tolerance: Tolerance = noticed): boolean {
  if (!known || SEVERITIES.indexOf(found.severity) < SEVERITIES.indexOf(known.severity)) return true;
  return lackOf(found) > lackOf(known) + tolerance(found);
}

function lackOf({ measured, required }: Complaint): number {
  return Math.abs(measured - required);
}

function worstOfEach(complaints: readonly Complaint[]): Map<string, Complaint> {
  const worst = new Map<string, Complaint>();
  for (const found of complaints) {
    const known = worst.get(keyOf(found));
    if (!known || isWorse(found, known)) worst.set(keyOf(found), found);
  }
  return worst;
}

/** The same complaint about the same things, in either order; of eyes that do not meet, about the same two players. */
export function isSameComplaint(a: Complaint, b: Complaint): boolean {
  return keyOf(a) === keyOf(b);
}

function keyOf({ code, subjects }: Complaint): string {
  const named = code.startsWith('facing.') ? subjects.slice(0, 2) : [...subjects];
  return [code, ...named.sort()].join(' ');
}
