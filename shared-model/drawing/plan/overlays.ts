/** What the checks found, drawn on the plan: grips that hands must get to, and routes to the exits. */

import type { Manner, ReachResult, RouteResult } from '../../checks/report.ts';
import { find } from '../../document/document.ts';
import { asId } from '../../document/ids.ts';
import { circle, line, polygon, polyline } from '../outline.ts';
import type { GroupPrimitive, Primitive } from '../primitives.ts';
import { DASH, WEIGHT } from '../style.ts';
import { onPage, pen, type PlanContext } from './context.ts';

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
  return [{ kind: 'group', subject: grip.item, description: `Grip: ${manner}`, children }];
}

export function drawRoutes(context: PlanContext): GroupPrimitive[] {
  if (!context.layers.routes || !context.report) return [];
  return context.report.routes.flatMap((route) => drawRoute(context, route));
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
      description: 'Route to an exit',
      children: [
        { kind: 'path', path: polyline(spots), ...pen(route, WEIGHT.medium, DASH.dashed) },
        { kind: 'path', path: head, fill: route },
      ],
    },
  ];
}
