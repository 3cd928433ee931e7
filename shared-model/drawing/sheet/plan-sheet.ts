/** The first sheet: the plan of the platform with everything on it, and as much of the house as fits below. */

import { t } from '../../words/say.ts';
import { describeItem, drawAnnotations, drawGround, drawRisers, drawThings, planContext } from '../plan.ts';
import type { PlanContext } from '../plan.ts';
import { houseShown } from '../plan/house-shown.ts';
import { drawRoutes } from '../plan/overlays.ts';
import type { LabelPlaces } from '../plan/label-places.ts';
import { rectangle } from '../outline.ts';
import type { GroupPrimitive, Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { notes } from './legend.ts';
import { planKey, planNotes, type PlanFacts } from './plan-key.ts';
import type { PlanLayout } from './plan-layout.ts';
import type { PlotSheetRequest } from './request.ts';
import { titleBlock, type TitleFields } from './title-block.ts';

export interface DrawnPlan {
  readonly children: readonly Primitive[];
  /** Marks that found no room on the plan. */
  readonly dropped: readonly string[];
}

/** What of the plan's sheet is known before the plan is drawn. */
export interface PlanSheetFacts extends Pick<PlanFacts, 'marksSheet' | 'mapSheet'> {
  readonly fields: TitleFields;
}

export function planSheet(
  request: PlotSheetRequest,
  layout: PlanLayout,
  { fields, ...sheets }: PlanSheetFacts,
): DrawnPlan {
  const context = contextOf(request, layout);
  const { plan, labels } = drawPlan(context);
  const isHouseCut = houseShown(context).isCut;
  const withoutFigures = labels.withoutFigures.map(({ mark }) => mark);
  const withoutNames = labels.withoutNames.map(({ mark }) => mark);
  const drawn = new Set(context.items.map(({ id }): string => id));
  const notShown = [...context.marks].flatMap(([id, mark]) => (drawn.has(id) ? [] : [mark]));
  return {
    children: [
      frameLine(request, layout),
      ...titleBlock(fields, layout.title, request),
      plan,
      notes(
        planNotes(request, { ...sheets, isHouseCut, notShown, withoutFigures, withoutNames }),
        layout.notes,
        request,
      ),
      ...planKey(request, layout.scale, layout.key),
    ],
    dropped: labels.dropped.map(({ mark, name }) => mark || name),
  };
}

function contextOf(request: PlotSheetRequest, { scale, origin, area }: PlanLayout): PlanContext {
  return planContext({
    ...request,
    scale,
    origin,
    area,
    layers: {
      seats: true,
      sightBands: null,
      marks: true,
      names: true,
      words: true,
      dimensions: 'coordinates',
      grid: true,
      reach: false,
      routes: false,
    },
  });
}

function drawPlan(context: PlanContext): { plan: GroupPrimitive; labels: LabelPlaces } {
  const ground = [...drawGround(context), ...drawRisers(context)];
  const items = drawThings(context);
  const { above, labels } = drawAnnotations(context, [...ground, ...items]);
  const words = context.items.map((record) => describeItem(record, context)).join('. ');
  return {
    plan: {
      kind: 'group',
      ...(context.area ? { clip: context.area } : {}),
      description: t`Plan at 1:${context.scale}, the house at the bottom, stage left on the right. ${words}`,
      children: [...ground, ...drawRoutes(context), ...items, ...above],
    },
    labels,
  };
}

function frameLine({ palette }: PlotSheetRequest, { page }: PlanLayout): Primitive {
  return { kind: 'path', path: rectangle(page.frame), stroke: { colour: palette.ink, width: WEIGHT.bold } };
}
