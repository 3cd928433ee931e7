/** Everything placed in a setup, each as it is drawn on the plan, at true size where the document has it. */

import type { Lamp, PlacedRecord } from '../../document/records.ts';
import { circle, polyline, polygon } from '../outline.ts';
import { planContext, type PlanContext, type PlanRequest } from '../plan/context.ts';
import { drawItem } from '../plan/items.ts';
import type { GroupPrimitive, PathItem } from '../primitives.ts';
import { IDENTITY, mapPath, type Affine } from '../affine.ts';
import { LAYER_OF } from './layers.ts';
import type { DxfPen } from './pen.ts';

/** Sizes that are paper sizes, such as hatching, are those of a plan at 1:50. */
const SCALE = 50;
/** From that plan, whose y runs down the page, back to true size. */
const TO_STAGE: Affine = { ...IDENTITY, a: SCALE, d: -SCALE };

/** A plan of the setup that items can be drawn from one by one. */
export function itemContext(
  request: Pick<PlanRequest, 'document' | 'setup' | 'units' | 'palette' | 'measure'>,
): PlanContext {
  const layers = {
    seats: false,
    sightBands: null,
    marks: false,
    names: false,
    words: false,
    dimensions: 'none',
    grid: false,
    reach: false,
    routes: false,
  } as const;
  return planContext({ ...request, layers, report: null, scale: SCALE, origin: { x: 0, y: 0 }, area: null });
}

export function drawThing(pen: DxfPen, record: PlacedRecord, context: PlanContext): void {
  const { x, y, facing } = record;
  pen.thing(ownPaths(record, context), { layer: LAYER_OF[record.kind], at: { x, y }, turn: facing });
  if (record.kind === 'lamp') drawCable(pen, record);
}

/** In its own frame: it stands at the origin and looks along -y. A fixed object has its outline and no hatching. */
function ownPaths(record: PlacedRecord, context: PlanContext): readonly (readonly PathItem[])[] {
  if (record.kind === 'shape') return [polygon(record.outline)];
  const bare = record.kind === 'lamp' ? { ...record, cable: [] } : record;
  return pathsOf(drawItem({ ...bare, x: 0, y: 0, facing: 0 }, context)).map((path) =>
    mapPath(TO_STAGE, path),
  );
}

function pathsOf({ children }: GroupPrimitive): (readonly PathItem[])[] {
  return children.flatMap((child) => {
    if (child.kind === 'path') return [child.path];
    return child.kind === 'group' ? pathsOf(child) : [];
  });
}

/** From the lamp to its socket, which is a circle. */
function drawCable(pen: DxfPen, lamp: Lamp): void {
  const socket = lamp.cable.at(-1);
  if (!socket) return;
  pen.path('cables', polyline([lamp, ...lamp.cable]));
  pen.path('cables', circle(socket, SOCKET_RADIUS));
}

const SOCKET_RADIUS = 40;
