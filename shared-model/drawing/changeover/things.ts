/**
 * Things before and after, told apart without colour: what leaves its place is dashed and empty, what comes to stand there
 * is drawn as on the plot, and what stays is fainter than either.
 */

import type { Step } from '../../programme/changeover.ts';
import type { Unit } from '../../programme/units.ts';
import { polygon } from '../outline.ts';
import { drawItem } from '../plan/items.ts';
import { paint, pen, type PlanContext } from '../plan/context.ts';
import { chairSymbol } from '../plan/seats.ts';
import { itemToPage } from '../plan/context.ts';
import type { Primitive } from '../primitives.ts';
import { DASH, WEIGHT } from '../style.ts';
import type { Run } from './runs.ts';

/** What stands still: part of the building, shared, in its right place already, or still in its old one. */
export function drawStaying(context: PlanContext, { inPlace, waiting }: Run): Primitive[] {
  const shared = context.items
    .filter(({ setup, kind }) => setup === null && kind !== 'player')
    .map((record) => drawItem(record, context));
  return [...shared, ...[...inPlace, ...waiting].map((unit) => outline(context, unit))];
}

function outline(context: PlanContext, unit: Unit): Primitive {
  const { palette } = context;
  return paint(context.toPage, polygon(unit.outline), {
    fill: palette.tableTint,
    ...pen(palette.faint, WEIGHT.thin),
  });
}

/** The old places, on the ground. */
export function drawLeft(context: PlanContext, steps: readonly Step[]): Primitive[] {
  return steps
    .filter(({ from, work }) => from !== null && work !== 'adjust')
    .flatMap(({ from }) =>
      from
        ? [paint(context.toPage, polygon(from.outline), pen(context.palette.ink, WEIGHT.fine, DASH.short))]
        : [],
    );
}

/** The new places; a pair is drawn once. */
export function drawArrived(context: PlanContext, steps: readonly Step[]): Primitive[] {
  const units = steps.flatMap(({ to }) => to ?? []).sort((a, b) => layerOf(a) - layerOf(b));
  const seen = new Set<string>();
  return units.flatMap((unit): Primitive[] => {
    const { record } = unit;
    if (record.kind === 'player') {
      const map = itemToPage(context, record);
      return record.chair ? chairSymbol(context, map, record.chair.model) : [];
    }
    if (seen.has(record.id)) return [];
    seen.add(record.id);
    return [drawItem(record, context)];
  });
}

/** Levels lie under everything. */
function layerOf({ thing }: Unit): number {
  return thing.item === 'riser' ? 0 : 1;
}
