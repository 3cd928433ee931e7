/** What helps against a way that is too narrow for a wheelchair, and against too little room to turn it. */

import { outlineOf } from '../../catalogue/outlines.ts';
import { placedInSetup, type Document } from '../../document/document.ts';
import { depthInPolygon } from '../../geometry/polygon.ts';
import type { Finding, Remedy } from '../finding.ts';
import type { RouteResult } from '../report.ts';
import { wheelchairWay } from '../room/routes.ts';
import { TURNING_DIAMETER } from '../room/turning.ts';
import { wheelchairFindings } from '../room/wheelchair-findings.ts';
import { attemptsAt, type Task } from './attempt.ts';
import { createHarmCheck } from './harm.ts';
import { everyWay, moveOne, STRAIGHT } from './ways.ts';
import { ofWeight, WEIGHTS } from './weights.ts';

/** Of each weight so many things are tried, nearest first: every trial looks for the whole way anew. */
const MOST_THINGS = 3;
const COARSE = 120;
/** Things are moved by what is lacking and so much more, mm, and no farther than FARTHEST. */
const DETOUR = 360;
const FARTHEST = 1000;

/** The shortest straight move of one thing there, or else of the user, after which the same check finds nothing new. */
export function wheelchairRemedies(task: Task): Remedy[] {
  const { document, finding } = task;
  const before = keysOf(document, task);
  const attempt = attemptsAt(task, {
    cleared: (changed) => measuredClear(task, changed, before),
    harms: createHarmCheck(task),
  });
  const most = Math.min(finding.required - finding.measured + DETOUR, FARTHEST);
  const near = thingsThere(task);
  for (const weight of WEIGHTS) {
    const things = ofWeight(document, near, weight).slice(0, MOST_THINGS);
    const remedy = moveOne(everyWay(things, STRAIGHT), { coarse: COARSE, most }, attempt);
    if (remedy) return [remedy];
  }
  return [];
}

/** What is named as being beside the narrowest place; or what reaches to where somebody turns, the nearest first. */
function thingsThere({ document, setup, finding: { code, subjects, where, detail } }: Task): string[] {
  if (code === 'room.wheelchairRoute' || !where) return subjects.slice(1);
  const [user = ''] = subjects;
  const reached = placedInSetup(document, setup)
    .filter(({ id, kind }) => id !== user && kind !== 'riser')
    .map((record) => ({ id: record.id, distance: -depthInPolygon(where, outlineOf(record)) }))
    .filter(({ distance }) => distance < TURNING_DIAMETER)
    .sort((a, b) => a.distance - b.distance);
  return [...reached.map(({ id }) => id), ...(detail['at'] === 'place' ? [user] : [])];
}

/** Width of the way, or of the tightest circle there, when the finding is gone and none has come in its place. */
function measuredClear(task: Task, changed: Document, before: ReadonlySet<string>): number | null {
  const { setup, finding } = task;
  const way = wheelchairWay(changed, setup, finding.subjects[0] ?? '');
  const after = keysOf(changed, task, way);
  if (!way || after.has(keyOf(finding)) || [...after].some((key) => !before.has(key))) return null;
  if (finding.code === 'room.wheelchairRoute') return way.width;
  const circles = way.turning.filter(({ at }) => at === finding.detail['at']);
  return circles.reduce((least, { diameter }) => Math.min(least, diameter), TURNING_DIAMETER);
}

/** What is said of the user's way. */
function keysOf(
  document: Document,
  { setup, finding }: Task,
  way: RouteResult | null = wheelchairWay(document, setup, finding.subjects[0] ?? ''),
): Set<string> {
  const said = way ? wheelchairFindings(document, setup, [way]) : [];
  return new Set(said.filter(({ subjects }) => subjects[0] === way?.player).map(keyOf));
}

/** The things that a way is narrow between may be others afterwards. */
function keyOf({ code, detail }: Finding): string {
  return `${code} ${detail['at'] ?? ''}`;
}
