/** What the checks found, drawn on the plan: grips that hands must get to, and routes to the exits. */

import type { Manner, ReachResult, RouteResult, TurningCircle } from '../../checks/report.ts';
import { TURNING_DIAMETER } from '../../checks/room/turning.ts';
import { find } from '../../document/document.ts';
import { asId } from '../../document/ids.ts';
import { formatLength } from '../../document/measures.ts';
import type { Point } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { circle, line, polygon, polyline, type Path } from '../outline.ts';
import type { GroupPrimitive, Primitive } from '../primitives.ts';
import { DASH, WEIGHT } from '../style.ts';
import { onPage, pen, type PlanContext, type PlanLayers } from './context.ts';

/** A line from each player to each of his grips: the harder it is to get there, the more broken the line. */
export function drawReach(context: PlanContext): GroupPrimitive[] {
  if (!context.layers.reach || !context.report) return [];
  return context.report.reach.flatMap((result) => drawGrip(context, result));
}

const BROKEN: Readonly<Record<Manner, readonly number[] | undefined>> = {
  reach: undefined,
  lean: DASH.dashed,
  step: DASH.short,
  walk: DASH.dotted,
  none: DASH.dotted,
};

const GRIPS: Readonly<Record<Manner, () => string>> = {
  reach: () => t`Grip: reach`,
  lean: () => t`Grip: lean`,
  step: () => t`Grip: step`,
  walk: () => t`Grip: walk`,
  none: () => t`Grip: none`,
};

function drawGrip(context: PlanContext, { grip, manner }: ReachResult): GroupPrimitive[] {
  const player = find(context.document, asId<'player'>(grip.player));
  if (!player) return [];
  const { palette } = context;
  const hard = manner === 'walk' || manner === 'none';
  const colour = hard ? palette.warning : palette.reach;
  const [from, to] = [onPage(context, player), onPage(context, grip)];
  const children: Primitive[] = [
    { kind: 'path', path: line(from, to), ...pen(colour, WEIGHT.medium, BROKEN[manner]) },
    {
      kind: 'path',
      path: circle(to, 0.9),
      fill: hard ? palette.paper : colour,
      ...pen(colour, WEIGHT.medium),
    },
  ];
  return [{ kind: 'group', subject: grip.item, description: GRIPS[manner](), children }];
}

/**
 * The routes, when the layer asks for them; of wheelchairs also those whose users are selected, and always the circles
 * in which they turn. On paper nothing can be selected, and the ways of all wheelchairs are there.
 */
export function drawRoutes(context: PlanContext): GroupPrimitive[] {
  return (context.report?.routes ?? []).flatMap((route) => {
    const isShown = isRouteShown(context, route);
    return [...(isShown ? drawRoute(context, route) : []), ...drawTurning(context, route, isShown)];
  });
}

function isRouteShown({ layers }: PlanContext, { player, turning }: RouteResult): boolean {
  return layers.routes || (turning.length > 0 && isLookedAt(layers, player));
}

/** The lines that `drawRoutes` draws, each as points on the page. */
export function wayLines(context: PlanContext): Point[][] {
  return (context.report?.routes ?? []).flatMap((route) => {
    const isShown = isRouteShown(context, route);
    const rings = circlesShown(route, isShown).map((found) =>
      circlePoints(middleOf(found), TURNING_DIAMETER / 2, RING_CORNERS),
    );
    const lines = isShown ? [[...route.path], ...rings] : rings;
    return lines.map((points) => points.map((point) => onPage(context, point)));
  });
}

const RING_CORNERS = 32;

/** All round, back to where it began. */
function circlePoints({ x, y }: Point, radius: number, corners: number): Point[] {
  return Array.from({ length: corners + 1 }, (_, corner) => {
    const angle = (2 * Math.PI * corner) / corners;
    return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
  });
}

function circlesShown({ turning }: RouteResult, all: boolean): TurningCircle[] {
  return turning.filter(({ at }) => all || at === 'place');
}

function isLookedAt({ dimensions }: PlanLayers, player: string): boolean {
  return dimensions === 'coordinates' || (dimensions !== 'none' && dimensions.includes(player));
}

/** Dashed, as wide as it takes to turn; within it, dotted, what there is where that is less. */
function drawTurning(context: PlanContext, route: RouteResult, all: boolean): GroupPrimitive[] {
  const { palette, scale } = context;
  const { player } = route;
  return circlesShown(route, all).map((found): GroupPrimitive => {
    const { diameter } = found;
    const isTight = diameter < TURNING_DIAMETER - 1;
    const colour = isTight ? palette.warning : palette.route;
    const ring = (width: number): Path => circle(onPage(context, middleOf(found)), width / 2 / scale);
    const asked: Primitive = {
      kind: 'path',
      path: ring(TURNING_DIAMETER),
      ...pen(colour, isTight ? WEIGHT.bold : WEIGHT.medium, DASH.dashed),
    };
    const free: Primitive = {
      kind: 'path',
      path: ring(diameter),
      ...pen(colour, WEIGHT.medium, DASH.dotted),
    };
    return {
      kind: 'group',
      subject: player,
      description: t`Room to turn a wheelchair: ${formatLength(Math.min(diameter, TURNING_DIAMETER), context.units)}`,
      children: isTight ? [asked, free] : [asked],
    };
  });
}

/** Where more room is free than it takes, the circle lies as near as it can to the spot it is asked for at. */
function middleOf({ x, y, near, diameter }: TurningCircle): Point {
  const [dx, dy] = [near.x - x, near.y - y];
  const away = Math.hypot(dx, dy) || 1;
  const spare = Math.max(0, Math.min(away, (diameter - TURNING_DIAMETER) / 2));
  return { x: x + (dx * spare) / away, y: y + (dy * spare) / away };
}

function drawRoute(context: PlanContext, { player, path }: RouteResult): GroupPrimitive[] {
  const spots = path.map((point) => onPage(context, point));
  const [before, end] = [spots.at(-2), spots.at(-1)];
  if (!before || !end) return [];
  const { route } = context.palette;
  const length = Math.hypot(end.x - before.x, end.y - before.y) || 1;
  const [ux, uy] = [(end.x - before.x) / length, (end.y - before.y) / length];
  const head = polygon([
    end,
    { x: end.x - 2 * ux - 0.9 * uy, y: end.y - 2 * uy + 0.9 * ux },
    { x: end.x - 2 * ux + 0.9 * uy, y: end.y - 2 * uy - 0.9 * ux },
  ]);
  return [
    {
      kind: 'group',
      subject: player,
      description: t`Route to an exit`,
      children: [
        { kind: 'path', path: polyline(spots), ...pen(route, WEIGHT.medium, DASH.dashed) },
        { kind: 'path', path: head, fill: route },
      ],
    },
  ];
}
