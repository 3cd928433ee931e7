/** The plan of a changeover: where everything stood, where it will stand, and the ways between, at a standard scale. */

import { platformOf, allOf, setupsOf } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Storage } from '../../document/records.ts';
import { stepFrom, stepThing, stepTo, workWord, type Telling } from '../../programme/step-words.ts';
import { t } from '../../words/say.ts';
import { boxOfPoints, grownBox, joinBoxes, boxContains, textBoxes } from '../bounds.ts';
import { createOccupancy, type Occupancy } from '../occupancy.ts';
import { drawGround, planContext, stageExtent, type PlanContext } from '../plan.ts';
import { onPage, pen } from '../plan/context.ts';
import { scaleBar } from '../plan/scale-bar.ts';
import { roundedRectangle } from '../outline.ts';
import type { Box, GroupPrimitive, Primitive } from '../primitives.ts';
import { largestScale } from '../scales.ts';
import { notes } from '../sheet/legend.ts';
import { CAP_HEIGHT, TEXT, WEIGHT } from '../style.ts';
import { oneLine, textLine } from '../text.ts';
import { itemBox } from '../plan/label-requests.ts';
import { drawLabels } from '../plan/labels.ts';
import { arrowBoxes, drawArrows } from './arrows.ts';
import { changeoverKey, changeoverLayout } from './layout.ts';
import { doorMarks, placeMarks, storageName, thingMarks, unitBox } from './marks.ts';
import type { ChangeoverDrawing } from './request.ts';
import { unitsOf, type Run } from './runs.ts';
import { drawArrived, drawLeft, drawStaying } from './things.ts';

export interface ChangeoverPlan {
  readonly scale: number;
  readonly children: readonly Primitive[];
  /** What could not be shown, for the one who prints. */
  readonly notes: readonly string[];
}

/** The denominator of the largest standard scale that goes into the body; null: none does. */
export function changeoverPlanScale(drawing: ChangeoverDrawing, body: Box): number | null {
  return largestScale(drawing.units, (scale) => changeoverPlanFits(drawing, body, scale));
}

export function changeoverPlanFits(drawing: ChangeoverDrawing, body: Box, scale: number): boolean {
  return changeoverLayout(drawing, { body, stage: extentOf(drawing), scale }) !== null;
}

/** Throws when it does not fit at that scale: ask `changeoverPlanFits` first. */
export function changeoverPlan(
  drawing: ChangeoverDrawing,
  run: Run,
  { body, scale }: { readonly body: Box; readonly scale: number },
): ChangeoverPlan {
  const { units, palette } = drawing;
  const layout = changeoverLayout(drawing, { body, stage: extentOf(drawing), scale }, run);
  if (!layout) throw new Error(`the changeover does not fit at 1:${scale}`);
  const { title, bar } = layout;
  const context = contextOf(drawing, { area: layout.plan, scale });
  const drawn = drawnPlan(context, drawing, run);
  return {
    scale,
    children: [
      ...title.draw(body),
      drawn.group,
      scaleBar({ scale, units, palette, x: bar.x, y: bar.y, width: bar.width }),
      notes(changeoverKey(), layout.notes, drawing),
    ],
    notes:
      drawn.dropped.length === 0
        ? []
        : [
            t`No room on the plan for the numbers of steps ${drawn.dropped.join(', ')}; they are in the lists.`,
          ],
  };
}

/** The platform and all that stands on it before or after. */
function extentOf({ document, change }: ChangeoverDrawing): Box {
  const setups = [change.from, change.to].flatMap((setup) => setup ?? []);
  const boxes = setups.map((setup) => stageExtent(document, setup));
  return joinBoxes(boxes) ?? boxOfPoints(platformOf(document).outline) ?? { x: 0, y: 0, width: 0, height: 0 };
}

interface Placing {
  readonly area: Box;
  readonly scale: number;
}

function contextOf(drawing: ChangeoverDrawing, { area, scale }: Placing): PlanContext {
  const { document, measure, units, palette } = drawing;
  const stage = extentOf(drawing);
  return planContext({
    ...{ document, measure, units, palette, area, scale },
    setup: shownSetup(drawing),
    report: null,
    origin: {
      x: area.x + area.width / 2 - (stage.x + stage.width / 2) / scale,
      y: area.y + area.height / 2 + (stage.y + stage.height / 2) / scale,
    },
    layers: {
      ...{ seats: false, sightBands: null, marks: false, names: false, words: true },
      ...{ dimensions: 'none', grid: false, reach: false, routes: false },
    },
  });
}

function shownSetup({ document, change: { from, to } }: ChangeoverDrawing): Id<'setup'> {
  const setup = to ?? from ?? setupsOf(document)[0]?.id;
  if (!setup) throw new Error('a document without a setup');
  return setup;
}

function drawnPlan(
  context: PlanContext,
  drawing: ChangeoverDrawing,
  run: Run,
): { readonly group: GroupPrimitive; readonly dropped: readonly number[] } {
  const ground = drawGround(context);
  const texts = createOccupancy(textBoxes(ground, context.measure).map((box) => grownBox(box, 0.6)));
  const places = storages(context, drawing, texts);
  const ways = arrowBoxes(context, run.steps);
  const doors = placeMarks(context, {
    requests: doorMarks(context, drawing, places.offSheet),
    drawn: [...ground, ...places.children],
    things: [],
    keptClear: [...ways, ...thingBoxes(context, run)],
  });
  for (const { box } of doors.placed) texts.take(grownBox(box, 0.4));
  // Steps come before marks: without its number an arrow says nothing.
  const arrows = drawArrows(context, run, texts);
  const named = drawLabels(context, doors);
  const marks = placeMarks(context, {
    requests: thingMarks(context, drawing, run),
    drawn: [...ground, ...places.children, ...named, ...arrows.numbers],
    things: ways,
  });
  return {
    dropped: arrows.dropped,
    group: {
      kind: 'group',
      ...(context.area ? { clip: context.area } : {}),
      description: describe(drawing, run, context.scale),
      children: [
        ...ground,
        ...drawStaying(context, run),
        ...drawArrived(context, run.steps),
        ...drawLeft(context, run.steps),
        ...places.children,
        ...arrows.lines,
        ...named,
        ...drawLabels(context, marks),
        ...arrows.numbers,
      ],
    },
  };
}

/** All that is drawn on the platform, also what belongs to the building. */
function thingBoxes(context: PlanContext, run: Run): Box[] {
  const shared = context.items.filter(({ setup, kind }) => setup === null && kind !== 'riser');
  return [
    ...shared.map((record) => itemBox(context, record)),
    ...unitsOf(run)
      .filter(({ thing }) => thing.item !== 'riser')
      .map((unit) => unitBox(context, unit)),
  ];
}

interface Places {
  readonly children: readonly Primitive[];
  /** Those that lie beyond the sheet, or where something is written. */
  readonly offSheet: readonly Storage[];
}

/** Storage places that lie on the sheet, each as a plate with its name. */
function storages(context: PlanContext, { document }: ChangeoverDrawing, texts: Occupancy): Places {
  const offSheet: Storage[] = [];
  const children = allOf(document, 'storage').flatMap((storage): Primitive[] => {
    const box = plateBox(context, storage);
    if ((context.area && !boxContains(context.area, box)) || texts.isTaken(box)) {
      offSheet.push(storage);
      return [];
    }
    texts.take(box);
    return [plate(context, storageName(storage), box)];
  });
  return { children, offSheet };
}

const PLATE = { size: TEXT.small, weight: 'bold' } as const;

function plateBox(context: PlanContext, storage: Storage): Box {
  const at = onPage(context, storage);
  const width = context.measure(storageName(storage), PLATE.size, PLATE.weight) + 4;
  return { x: at.x - width / 2, y: at.y - 2.5, width, height: 5 };
}

function plate({ palette }: PlanContext, words: string, box: Box): Primitive {
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 + (CAP_HEIGHT * PLATE.size) / 2 };
  return {
    kind: 'group',
    children: [
      {
        kind: 'path',
        path: roundedRectangle(box, 0.6),
        fill: palette.paper,
        ...pen(palette.ink, WEIGHT.medium),
      },
      textLine(words, at, { ...PLATE, colour: palette.ink, anchor: 'middle' }),
    ],
  };
}

/** All of its steps, for who has the sheet read to him. */
function describe({ document, change, units }: ChangeoverDrawing, run: Run, scale: number): string {
  const telling: Telling = { document, from: change.from, to: change.to, units };
  const steps = run.steps.map(
    (step) =>
      t`${step.number}. ${workWord(step.work)} ${stepThing(telling, step)}: from ${stepFrom(telling, step)} to ${stepTo(telling, step)}`,
  );
  return oneLine(t`Plan at 1:${scale}, the house at the bottom. ${steps.join('. ')}`);
}
