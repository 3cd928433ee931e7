/** Ways out on foot that lead over the edge of a high level, because there is no other. */

import { inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightOn } from '../../document/levels.ts';
import type { Point, Riser } from '../../document/records.ts';
import { outlineOf } from '../../catalogue/outlines.ts';
import { depthInPolygon } from '../../geometry/polygon.ts';
import { gapBetweenSegments } from '../../geometry/segments.ts';
import type { Finding } from '../finding.ts';
import type { RouteResult } from '../report.ts';
import { before } from './ground.ts';
import { HIGHEST_STEP, levelEdges } from './level-edges.ts';
import { exitsOf } from './walls.ts';

/** A step higher than HIGHEST_STEP that a way goes over. */
interface Step {
  readonly riser: string;
  readonly height: number;
  readonly at: Point;
}

/** The highest step that a way goes over; null when none is high. */
export type HighestStepOf = (route: RouteResult) => Step | null;

export function highSteps(document: Document, setup: Id<'setup'>): HighestStepOf {
  const risers = inSetup(document, setup, 'riser');
  const edges = levelEdges(risers, HIGHEST_STEP);
  const doors = doorSteps(document, risers);
  return ({ path, exit }) => {
    const atDoor = exit === null ? undefined : doors.get(exit);
    const steps = atDoor ? [atDoor] : [];
    path.forEach((a, index) => {
      const b = path[index + 1];
      if (!b) return;
      for (const { riser, high, low, ...edge } of edges) {
        const gap = gapBetweenSegments(a, b, edge.a, edge.b);
        if (gap.distance === 0) steps.push({ riser: riser.id, height: high - low, at: gap.b });
      }
    });
    return steps.reduce<Step | null>((most, next) => (next.height > (most?.height ?? 0) ? next : most), null);
  };
}

/** `measured`: the height of the highest step on the way. One finding a way. */
export function stepFindings(routes: readonly RouteResult[], highest: HighestStepOf): Finding[] {
  return routes.flatMap((route) => {
    const step = highest(route);
    return step ? [findingOf(route, step)] : [];
  });
}

/** Exits with a high level before them: the door itself is on the floor of the platform. */
function doorSteps(document: Document, risers: readonly Riser[]): ReadonlyMap<string, Step> {
  const steps = new Map<string, Step>();
  for (const exit of exitsOf(document)) {
    const at = before(exit);
    const height = floorHeightOn(risers, at);
    const riser = risers.find((one) => one.height === height && depthInPolygon(at, outlineOf(one)) >= 0);
    if (riser && height > HIGHEST_STEP) steps.set(exit.id, { riser: riser.id, height, at: exit.middle });
  }
  return steps;
}

function findingOf({ player, exit }: RouteResult, { riser, height, at }: Step): Finding {
  return {
    code: 'room.step',
    severity: 'caution',
    subjects: [player, riser],
    measured: height,
    required: HIGHEST_STEP,
    unit: 'mm',
    where: at,
    detail: { exit: exit ?? '' },
  };
}
