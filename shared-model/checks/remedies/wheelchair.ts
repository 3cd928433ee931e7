/** What helps against a way that is too narrow for a wheelchair, too little room to turn it, and a level under it. */

import { outlineOf } from '../../catalogue/outlines.ts';
import { placedInSetup, type Document } from '../../document/document.ts';
import { floorHeightAt } from '../../document/levels.ts';
import { isPlaced } from '../../document/records.ts';
import { depthInPolygon } from '../../geometry/polygon.ts';
import type { Finding, Remedy } from '../finding.ts';
import type { RouteResult } from '../report.ts';
import { wheelchairWay } from '../room/routes.ts';
import { TURNING_DIAMETER } from '../room/turning.ts';
import { wheelchairFindings } from '../room/wheelchair-findings.ts';
import { attemptsAt, type Search, type Task } from './attempt.ts';
import { withOwnStands } from './own-stands.ts';
import { createWaysHarmCheck } from './ways-harm.ts';
import { clearedWay } from './ways-out.ts';
import { ALL_ROUND, moveOne, waysOf } from './ways.ts';
import { weightOf } from './weights.ts';

/** The shortest straight move of one thing there, or else of the user, after which the same check finds nothing new. */
export function wheelchairRemedies(task: Task): Search {
  const before = keysOf(task.document, task);
  const attempt = attemptsAt(task, {
    cleared: (changed) => measuredClear(task, changed, before),
    harms: createWaysHarmCheck(task),
  });
  return { attempt, least: () => clearedWay(task, thingsThere(task), attempt), things: [] };
}

/** Down from a level one is not moved farther, mm. */
const FARTHEST_DOWN = 2000;
const COARSE_DOWN = 200;

/** The shortest move of the user, with the stands he reads from, to where he can roll out. */
export function levelRemedies(task: Task): Search | null {
  const { document, setup, finding } = task;
  const [user = ''] = finding.subjects;
  const record = document.records.get(user);
  const together = withOwnStands(document, setup, user);
  if (!record || !isPlaced(record) || weightOf(document, record) === null || !together) return null;
  const before = keysOf(document, task);
  const attempt = attemptsAt(task, {
    cleared: (changed) => downClear(task, changed, before),
    harms: createWaysHarmCheck(task),
  });
  const ways = waysOf(together, ALL_ROUND);
  const least = (): Remedy[] => {
    const remedy = moveOne(ways, { coarse: COARSE_DOWN, most: FARTHEST_DOWN }, attempt);
    return remedy ? [remedy] : [];
  };
  return { attempt, least, things: [] };
}

/** How high he still is, mm, when he can roll out from there. */
function downClear(task: Task, changed: Document, before: ReadonlySet<string>): number | null {
  const { setup, finding } = task;
  const user = changed.records.get(finding.subjects[0] ?? '');
  if (!user || !isPlaced(user)) return null;
  const height = floorHeightAt(changed, setup, user);
  // Looking for his way takes far longer than this, and as high as he was he does not get away.
  if (height >= finding.measured) return null;
  const after = keysOf(changed, task);
  return after.has(keyOf(finding)) || [...after].some((key) => !before.has(key)) ? null : height;
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
