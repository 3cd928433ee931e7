/** What is in the way of somebody in a wheelchair. Cautions of the tool's own: codes, the venue and he himself decide. */

import { inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightOn } from '../../document/levels.ts';
import type { Player, Riser, Seat } from '../../document/records.ts';
import { outlineOf } from '../../catalogue/outlines.ts';
import { depthInPolygon } from '../../geometry/polygon.ts';
import type { Finding } from '../finding.ts';
import type { RouteResult, TurningCircle } from '../report.ts';
import { onWheels, wheelchairUsers } from './gait.ts';
import { LEAST_STEP } from './level-edges.ts';
import { narrowRoutes } from './route-findings.ts';
import { routeResults } from './routes.ts';
import { TURNING_DIAMETER } from './turning.ts';
import { exitsOf } from './walls.ts';

/** A circle may be found too narrow by so much; one that lacks less is not named. */
const ACCURACY = 1;

export function wheelchairFindings(
  document: Document,
  setup: Id<'setup'>,
  routes: readonly RouteResult[] = routeResults(document, setup),
): Finding[] {
  const users = wheelchairUsers(document, setup);
  if (users.length === 0) return [];
  const ids = new Set<string>(users.map(({ id }) => id));
  const ways = routes.filter(({ player }) => ids.has(player));
  return [...wayOut(document, setup, { users, ways }), ...ways.flatMap(turningFindings)];
}

interface Users {
  readonly users: readonly (Player | Seat)[];
  readonly ways: readonly RouteResult[];
}

/** One reason why somebody does not get out, and no more: without a step-free exit there is no use in a wider way. */
function wayOut(document: Document, setup: Id<'setup'>, { users, ways }: Users): Finding[] {
  const exits = exitsOf(document);
  // That there is no way out at all is said for everybody.
  if (exits.length === 0) return [];
  if (!exits.some(({ stepFree }) => stepFree)) return [noStepFreeExit(users)];
  const risers = inSetup(document, setup, 'riser');
  const lifted = users.flatMap((user) => {
    const height = floorHeightOn(risers, user);
    const isStuck = ways.some(({ player, exit }) => player === user.id && exit === null);
    return isStuck && height > LEAST_STEP ? [onLevel(user, { height, risers })] : [];
  });
  const stuck = new Set(lifted.map(({ subjects }) => subjects[0]));
  const routes = ways.filter(({ player }) => !stuck.has(player));
  return [...lifted, ...narrowRoutes(document, { setup, routes, gait: onWheels(document) })];
}

function noStepFreeExit(users: readonly (Player | Seat)[]): Finding {
  const [first] = users;
  return {
    code: 'room.noStepFreeExit',
    severity: 'caution',
    subjects: users.map(({ id }) => id),
    measured: 0,
    required: 1,
    unit: 'count',
    where: first ? { x: first.x, y: first.y } : null,
    detail: {},
  };
}

interface Level {
  readonly height: number;
  readonly risers: readonly Riser[];
}

function onLevel({ id, x, y }: Player | Seat, { height, risers }: Level): Finding {
  const under = risers.find(
    (riser) => riser.height === height && depthInPolygon({ x, y }, outlineOf(riser)) >= 0,
  );
  return {
    code: 'room.wheelchairLevel',
    severity: 'caution',
    subjects: under ? [id, under.id] : [id],
    measured: height,
    required: LEAST_STEP,
    unit: 'mm',
    where: { x, y },
    detail: {},
  };
}

/** Too little room to turn at his place, in the tightest of his bends, and at the exit. */
function turningFindings(route: RouteResult): Finding[] {
  return (['place', 'bend', 'exit'] as const).flatMap((at) => {
    const tight = route.turning
      .filter((circle) => circle.at === at && circle.diameter < TURNING_DIAMETER - ACCURACY)
      .sort((a, b) => a.diameter - b.diameter)[0];
    return tight ? [tooTight(route, tight)] : [];
  });
}

function tooTight({ player, exit }: RouteResult, { at, near, diameter }: TurningCircle): Finding {
  return {
    code: 'room.turning',
    severity: 'caution',
    subjects: at === 'exit' && exit !== null ? [player, exit] : [player],
    measured: diameter,
    required: TURNING_DIAMETER,
    unit: 'mm',
    where: near,
    detail: { at },
  };
}
