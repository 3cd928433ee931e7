/** What is written on the plan of a changeover: the marks that the lists have, names of doors, and where they lead. */

import { allOf, platformOf } from '../../document/document.ts';
import { doorway } from '../../document/openings.ts';
import type { Door, Storage } from '../../document/records.ts';
import type { Step } from '../../programme/changeover.ts';
import { unitMark } from '../../programme/step-words.ts';
import type { Unit } from '../../programme/units.ts';
import { t } from '../../words/say.ts';
import { boxOfPoints, grownBox, textBoxes } from '../bounds.ts';
import { createOccupancy } from '../occupancy.ts';
import { onPage, type PlanContext } from '../plan/context.ts';
import { placeLabels, type LabelPlaces } from '../plan/label-places.ts';
import { middleOf, type LabelRequest } from '../plan/label-requests.ts';
import { labelSize, wallBoxes } from '../plan/labels.ts';
import type { Box, Primitive } from '../primitives.ts';
import { TEXT } from '../style.ts';
import { fitted, oneLine } from '../text.ts';
import type { ChangeoverDrawing } from './request.ts';
import type { Run } from './runs.ts';

export interface Written {
  readonly requests: readonly LabelRequest[];
  /** What is drawn already: its texts are kept clear of. */
  readonly drawn: readonly Primitive[];
  /** Lines and things that labels would rather leave uncovered. */
  readonly things: readonly Box[];
  /** Lines and things that nothing may be written over; left out: none. */
  readonly keptClear?: readonly Box[];
}

export function placeMarks(
  context: PlanContext,
  { requests, drawn, things, keptClear = [] }: Written,
): LabelPlaces {
  return placeLabels(requests, {
    sizeOf: (request) => labelSize(context, request),
    texts: createOccupancy(textBoxes(drawn, context.measure).map((box) => grownBox(box, 0.6))),
    things,
    barred: [...buildingBoxes(context), ...keptClear],
    area: context.area,
  });
}

/** Walls, open edges and doorways: a name across them would be hard to read. */
function buildingBoxes(context: PlanContext): Box[] {
  const doors = allOf(context.document, 'door').map((door) => grownBox(doorBox(context, door), DOOR_AIR));
  return [...wallBoxes(context).map((box) => grownBox(box, 0.5)), ...doors];
}

/** As far as jambs and the arrow through a doorway reach, mm on paper. */
const DOOR_AIR = 2.5;

function doorBox(context: PlanContext, door: Door): Box {
  const { a, b } = doorway(platformOf(context.document), door);
  return boxOfPoints([onPage(context, a), onPage(context, b)]) ?? { x: 0, y: 0, width: 0, height: 0 };
}

/** Things in a bubble as on the plot of the setup they come to stand in; what leaves its place, by the mark it had. */
export function thingMarks(
  context: PlanContext,
  { document, change: { from, to } }: ChangeoverDrawing,
  { steps, inPlace, count }: Run,
): LabelRequest[] {
  // In one of several drawings what stands still has no mark: the others have it.
  const here = [...steps.flatMap((step) => step.to ?? []), ...(count === 1 ? inPlace : [])];
  const seen = new Set<string>();
  const now = here.flatMap((unit): LabelRequest[] => {
    const mark = to === null || seen.has(unit.record.id) ? '' : unitMark(document, unit, to);
    seen.add(unit.record.id);
    return mark === '' ? [] : [requestFor(context, unit, { mark, name: '' })];
  });
  const before = steps.flatMap(({ from: unit, work }): LabelRequest[] => {
    if (!unit || from === null || work === 'turn' || work === 'adjust') return [];
    const mark = unitMark(document, unit, from);
    return [requestFor(context, unit, to === null ? { mark, name: '' } : { mark: '', name: t`was ${mark}` })];
  });
  return [...now, ...before];
}

function requestFor(
  context: PlanContext,
  unit: Unit,
  words: Pick<LabelRequest, 'mark' | 'name'>,
): LabelRequest {
  const item = unitBox(context, unit);
  return { subject: unit.record.id, ...words, figures: [], item, target: middleOf(item), inside: null };
}

export function unitBox(context: PlanContext, { outline, spot }: Unit): Box {
  const at = onPage(context, spot);
  return (
    boxOfPoints(outline.map((corner) => onPage(context, corner))) ?? { x: at.x, y: at.y, width: 0, height: 0 }
  );
}

/** Doors by their names, with the storage places beyond them that lie off the sheet: "Green room: to Chair store". */
export function doorMarks(
  context: PlanContext,
  { document, change }: ChangeoverDrawing,
  offSheet: readonly Storage[],
): LabelRequest[] {
  return allOf(document, 'door').flatMap((door): LabelRequest[] => {
    const beyond = offSheet.filter((storage) => leadsTo(door, storage, change.steps)).map(storageName);
    const words = [oneLine(door.name), beyond.length > 0 ? t`to ${beyond.join(', ')}` : ''];
    const name = words.filter((part) => part !== '').join(': ');
    const short = fitted(name, LONGEST, { size: TEXT.body, weight: 'regular' }, context.measure);
    return name === '' ? [] : [doorRequest(context, { door, name: short })];
  });
}

/** Of a door's words, mm. */
const LONGEST = 110;

interface NamedDoor {
  readonly door: Door;
  readonly name: string;
}

function doorRequest(context: PlanContext, { door, name }: NamedDoor): LabelRequest {
  const item = doorBox(context, door);
  return { subject: door.id, mark: '', name, figures: [], item, target: middleOf(item), inside: null };
}

function leadsTo(door: Door, storage: Storage, steps: readonly Step[]): boolean {
  if (storage.door !== null) return storage.door === door.id;
  return steps.some((step) => step.storage?.id === storage.id && step.way.door === door.id);
}

export function storageName({ name }: Storage): string {
  return oneLine(name) || t`Storage`;
}
