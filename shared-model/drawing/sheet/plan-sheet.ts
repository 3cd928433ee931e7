/** The first sheet: the plan of the platform with everything on it, and as much of the house as fits below. */

import { inSetup } from '../../document/document.ts';
import { describeItem, drawAnnotations, drawGround, drawRisers, drawThings, planContext } from '../plan.ts';
import { rectangle } from '../outline.ts';
import type { GroupPrimitive, Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { notes } from './legend.ts';
import { planKey, planNotes } from './plan-key.ts';
import type { PlanLayout } from './plan-layout.ts';
import type { PlotSheetRequest } from './request.ts';
import { titleBlock, type TitleFields } from './title-block.ts';

export interface DrawnPlan {
  readonly children: readonly Primitive[];
  /** Marks that found no room on the plan. */
  readonly dropped: readonly string[];
}

export function planSheet(request: PlotSheetRequest, layout: PlanLayout, fields: TitleFields): DrawnPlan {
  const { plan, dropped } = drawPlan(request, layout);
  return {
    children: [
      frameLine(request, layout),
      ...titleBlock(fields, layout.title, request),
      plan,
      notes(planNotes(request), layout.notes, request),
      ...planKey(request, layout.scale, layout.key),
    ],
    dropped,
  };
}

/** More dimension lines than this would hide the plan; the table has them all. */
const MOST_DIMENSIONED = 12;

function drawPlan(
  request: PlotSheetRequest,
  layout: PlanLayout,
): { plan: GroupPrimitive; dropped: string[] } {
  const { document, setup } = request;
  const measured = inSetup(document, setup, 'player').length + inSetup(document, setup, 'stand').length;
  const context = planContext({
    ...request,
    scale: layout.scale,
    origin: layout.origin,
    area: layout.area,
    layers: {
      seats: true,
      sightBands: null,
      marks: true,
      names: true,
      words: true,
      dimensions: measured <= MOST_DIMENSIONED ? 'all' : 'none',
      grid: true,
      reach: false,
      routes: false,
    },
  });
  const ground = [...drawGround(context), ...drawRisers(context)];
  const items = drawThings(context);
  const { below, above, labels } = drawAnnotations(context, [...ground, ...items]);
  const words = context.items.map((record) => describeItem(record, context)).join('. ');
  return {
    plan: {
      kind: 'group',
      clip: layout.area,
      description: `Plan at 1:${layout.scale}, the house at the bottom, stage left on the right. ${words}`,
      children: [...ground, ...below, ...items, ...above],
    },
    dropped: labels.dropped.map((request) => request.mark || request.name),
  };
}

function frameLine({ palette }: PlotSheetRequest, { page }: PlanLayout): Primitive {
  return { kind: 'path', path: rectangle(page.frame), stroke: { colour: palette.ink, width: WEIGHT.bold } };
}
