/** What the routes say: none, too narrow, or with a cable across. Cautions all; codes and the venue decide. */

import { concertOf, inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { isPlaced, type Lamp } from '../../document/records.ts';
import { gapBetweenSegments, type Gap } from '../../geometry/segments.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import type { Finding } from '../finding.ts';
import type { RouteResult } from '../report.ts';
import { clearancesOf } from './clearance.ts';
import { beside } from './beside.ts';
import { climbing, onFoot, wheelchairUsers, type Gait } from './gait.ts';
import { groundOf } from './ground.ts';
import { FIRST_STEP } from './first-step.ts';
import { isNarrow, narrowPlaceOf, type NarrowWay } from './narrow-place.ts';
import { narrowStretches, pinchVerdict } from './pinch-points.ts';
import { routeResults } from './routes.ts';
import { highSteps, stepFindings } from './step-findings.ts';
import { walkerFrom } from './walk.ts';
import { exitsOf } from './walls.ts';

export function routeFindings(
  document: Document,
  setup: Id<'setup'>,
  routes: readonly RouteResult[] = routeResults(document, setup),
): Finding[] {
  if (exitsOf(document).length === 0) return [noExit()];
  const users = new Set<string>(wheelchairUsers(document, setup).map(({ id }) => id));
  const walking = routes.filter(({ player }) => !users.has(player));
  const highest = highSteps(document, setup);
  const isLevel = (route: RouteResult): boolean => highest(route) === null;
  return [
    ...narrowRoutes(document, { setup, routes: walking.filter(isLevel), gait: onFoot(document) }),
    ...narrowRoutes(document, {
      setup,
      routes: walking.filter((route) => !isLevel(route)),
      gait: climbing(document),
    }),
    ...stepFindings(walking, highest),
  ];
}

/** Routes of who gets along in one manner. */
export interface Routes {
  readonly setup: Id<'setup'>;
  readonly routes: readonly RouteResult[];
  readonly gait: Gait;
}

/** `room.route`, or `room.wheelchairRoute` on wheels, for each route that is narrower than asked. */
export function narrowRoutes(document: Document, { setup, routes, gait }: Routes): Finding[] {
  const narrow = routes.filter(({ width }) => isNarrow(width, gait.asked));
  if (narrow.length === 0) return [];
  const clearances = clearancesOf(groundOf(document, setup, gait));
  const exits = exitsOf(document);
  return narrow.map((route) => {
    const person = document.records.get(route.player);
    const spot = person && isPlaced(person) ? person : { x: 0, y: 0 };
    const walker = walkerFrom(spot, route.player, { clearances, gait });
    const exit = exits.find(({ id }) => id === route.exit);
    return narrowRoute({ route, walker, exit, asked: gait.asked });
  });
}

/**
 * One finding a lamp: `measured` is the number of routes that its cable lies across. A cable that is covered is named
 * only where wheels go over it.
 */
export function cableFindings(
  document: Document,
  setup: Id<'setup'>,
  routes: readonly RouteResult[] = routeResults(document, setup),
): Finding[] {
  const { routeWidth } = concertOf(document).limits;
  const users = new Set<string>(wheelchairUsers(document, setup).map(({ id }) => id));
  const onWheels = routes.filter(({ player }) => users.has(player));
  return inSetup(document, setup, 'lamp').flatMap((lamp) => {
    const over = lamp.cableCovered ? onWheels : routes;
    const crossed = over.flatMap((route) => {
      const way = users.has(route.player) ? route.path : beyondFirstStep(route.path);
      const gap = cableToWay(lamp, way, Math.min(route.width, routeWidth) / 2);
      return gap ? [{ player: route.player, at: gap.a }] : [];
    });
    return crossed[0] ? [cableAcross(lamp, crossed[0], crossed.length)] : [];
  });
}

function noExit(): Finding {
  return {
    code: 'room.noExit',
    severity: 'caution',
    subjects: [],
    measured: 0,
    required: 1,
    unit: 'count',
    where: null,
    detail: {},
  };
}

interface NarrowRoute extends Pick<NarrowWay, 'walker' | 'exit' | 'asked'> {
  readonly route: RouteResult;
}

/** `measured` is the width of the route; its subjects are what it is narrow between: the door, or at most two things. */
function narrowRoute({ route, walker, exit, asked }: NarrowRoute): Finding {
  const { path, width } = route;
  const { where, isDoor, reach, stations } = narrowPlaceOf({ walker, path, width, asked, exit });
  const things = reach === null ? [] : beside(walker, where, reach);
  const stretches = narrowStretches(stations);
  return {
    code: walker.onWheels ? 'room.wheelchairRoute' : 'room.route',
    severity: 'caution',
    subjects: [route.player, ...(isDoor && exit ? [exit.id] : things)],
    measured: width,
    required: asked,
    unit: 'mm',
    where,
    detail: {
      exit: route.exit ?? '',
      pinch: pinchVerdict(stretches),
      narrowLength: stretches.reduce((sum, { from, to }) => sum + to - from, 0),
    },
  };
}

/** Where the cable comes into the strip that is gone over; null when nowhere. */
function cableToWay(lamp: Lamp, way: readonly Vec2[], halfWidth: number): Gap | null {
  let nearest: Gap | null = null;
  forEachLeg(lamp.cable, (a, b) =>
    forEachLeg(way, (c, d) => {
      const gap = gapBetweenSegments(a, b, c, d);
      // A cable that runs along the very border of the strip is not in it.
      if (gap.distance < halfWidth - 1 && gap.distance < (nearest?.distance ?? Infinity)) nearest = gap;
    }),
  );
  return nearest;
}

function beyondFirstStep(path: readonly Vec2[]): Vec2[] {
  const [spot] = path;
  if (!spot) return [];
  const far = path.findIndex((point) => distance(point, spot) > FIRST_STEP);
  const [inner, outer] = [path[far - 1], path[far]];
  if (!inner || !outer) return [];
  // The last leg that begins within the first step begins anew where it leaves it: by halving, to a millimetre.
  let [low, high] = [0, 1];
  const at = (share: number): Vec2 => ({
    x: inner.x + share * (outer.x - inner.x),
    y: inner.y + share * (outer.y - inner.y),
  });
  for (let halving = 0; halving < 20; halving++) {
    const middle = (low + high) / 2;
    if (distance(at(middle), spot) > FIRST_STEP) high = middle;
    else low = middle;
  }
  return [at(high), ...path.slice(far)];
}

function distance(a: Vec2, b: Vec2): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function forEachLeg(path: readonly Vec2[], visit: (a: Vec2, b: Vec2) => void): void {
  path.forEach((a, index) => {
    const b = path[index + 1];
    if (b) visit(a, b);
  });
}

function cableAcross(
  lamp: Lamp,
  { player, at }: { readonly player: string; readonly at: Vec2 },
  count: number,
): Finding {
  return {
    code: lamp.cableCovered ? 'room.cableRamp' : 'room.cable',
    severity: lamp.cableCovered ? 'note' : 'caution',
    subjects: [lamp.id, player],
    measured: count,
    required: 0,
    unit: 'count',
    where: at,
    detail: {},
  };
}
