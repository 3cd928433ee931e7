/** What helps against a way out that is too narrow, leads over a high step, or is not there: for whoever goes it. */

import { outlineOf } from '../../catalogue/outlines.ts';
import { concertOf, placedInSetup, type Document } from '../../document/document.ts';
import { isPlaced, type PlacedRecord } from '../../document/records.ts';
import { facingTowards, facingVector, type Vec2 } from '../../geometry/frame.ts';
import { forEachEdge, pointInPolygon } from '../../geometry/polygon.ts';
import { gapBetweenSegments } from '../../geometry/segments.ts';
import type { Finding, Remedy } from '../finding.ts';
import type { RouteResult } from '../report.ts';
import { routeFindings } from '../room/route-findings.ts';
import { wayOnFoot } from '../room/routes.ts';
import { attemptsAt, type Attempt, type Search, type Task } from './attempt.ts';
import { createWaysHarmCheck } from './ways-harm.ts';
import { moveOne, STRAIGHT, waysOf, type Way } from './ways.ts';
import { FARTHEST_FOR_ROOM, ofWeight, weightOf, WEIGHTS } from './weights.ts';

/** Of each weight so many things are tried: every trial looks for the whole way anew. */
const MOST_THINGS = 3;
const COARSE = 120;
/** Things are moved by what is lacking and so much more, mm. */
const DETOUR = 360;

/** The shortest move of one thing beside the narrow place or on the way there would be without it; or else of himself. */
export function routeRemedies(task: Task): Search | null {
  const { finding } = task;
  const [player = ''] = finding.subjects;
  const inTheWay = standingInWay(task);
  if (!inTheWay) return null;
  const attempt = attemptsAt(task, {
    cleared: (changed) => measuredClear(task, changed),
    harms: createWaysHarmCheck(task),
  });
  // Who sits on a high level was meant to.
  const himself = finding.code === 'room.step' ? [] : [player];
  const near = [...finding.subjects.slice(1), ...inTheWay, ...himself];
  return { attempt, least: () => clearedWay(task, near, attempt), things: [] };
}

/** The shortest move of one of these things that clears a way; each of what is lighter before what is heavier. */
export function clearedWay(task: Task, near: readonly string[], attempt: Attempt): Remedy[] {
  const { document, finding } = task;
  const most = finding.code === 'room.step' ? Infinity : finding.required - finding.measured + DETOUR;
  for (const weight of WEIGHTS) {
    const ways = ofWeight(document, near, weight)
      .slice(0, MOST_THINGS)
      .flatMap((thing) => waysOfThing(thing, finding));
    const remedy = moveOne(
      ways,
      { coarse: COARSE, most: Math.min(most, FARTHEST_FOR_ROOM[weight]) },
      attempt,
    );
    if (remedy) return [remedy];
  }
  return [];
}

/** Straight, and away from the spot that the finding is about. */
function waysOfThing(thing: PlacedRecord, { where }: Finding): Way[] {
  const isThere = where && Math.hypot(where.x - thing.x, where.y - thing.y) > 0;
  const away = isThere ? [facingVector(facingTowards(where, thing))] : [];
  return waysOf([thing.id], [...STRAIGHT, ...away]);
}

/** Width of his way, or 0 for no high step on it, when the finding is gone and none has come in its place. */
function measuredClear({ document, setup, finding }: Task, changed: Document): number | null {
  const [player = ''] = finding.subjects;
  const said = (there: Document, way: RouteResult | null): Set<string> =>
    new Set(way ? routeFindings(there, setup, [way]).map(({ code }) => code) : []);
  const way = wayOnFoot(changed, setup, player);
  const after = said(changed, way);
  if (!way || after.has(finding.code)) return null;
  const before = said(document, wayOnFoot(document, setup, player));
  if ([...after].some((code) => !before.has(code))) return null;
  return finding.code === 'room.step' ? 0 : way.width;
}

/**
 * What stands on the way that he would have if nothing that may be moved stood anywhere, nearest to him first. Null: even
 * then he would have none, and each trial would only take its time.
 */
function standingInWay({ document, setup, finding }: Task): string[] | null {
  const [player = ''] = finding.subjects;
  const movable = placedInSetup(document, setup).filter(
    (record) => record.id !== player && weightOf(document, record) !== null,
  );
  const gone = new Set<string>(movable.map(({ id }) => id));
  const bare = { records: new Map([...document.records].filter(([id]) => !gone.has(id))) };
  const way = wayOnFoot(bare, setup, player);
  if (!way || routeFindings(bare, setup, [way]).some(({ code }) => code === finding.code)) return null;
  const half = concertOf(document).limits.routeWidth / 2;
  const spot = document.records.get(player);
  const from = spot && isPlaced(spot) ? spot : { x: 0, y: 0 };
  return movable
    .filter((record) => isOnWay(record, way.path, half))
    .sort((a, b) => Math.hypot(a.x - from.x, a.y - from.y) - Math.hypot(b.x - from.x, b.y - from.y))
    .map(({ id }) => id);
}

function isOnWay(record: PlacedRecord, path: readonly Vec2[], half: number): boolean {
  const outline = outlineOf(record);
  return path.some((a, index) => {
    const b = path[index + 1];
    if (!b) return false;
    let isNear = pointInPolygon(a, outline);
    forEachEdge(outline, (c, d) => (isNear ||= gapBetweenSegments(a, b, c, d).distance < half));
    return isNear;
  });
}
