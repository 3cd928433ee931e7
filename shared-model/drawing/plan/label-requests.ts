/** What has to be labelled on a plan, and where the thing is. */

import { instrumentModel } from '../../catalogue/instruments.ts';
import { largeInstrumentModel } from '../../catalogue/large-instruments.ts';
import { chairOutline, outlineOf } from '../../catalogue/outlines.ts';
import { pianoModel } from '../../catalogue/pianos.ts';
import { formatAcross, formatDepth, type Units } from '../../document/measures.ts';
import type { PlacedRecord, Point } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { boxContains, boxOfPoints } from '../bounds.ts';
import type { Box } from '../primitives.ts';
import { oneLine } from '../text.ts';
import { onPage, type PlanContext } from './context.ts';
import { houseShown, placeBox } from './house-shown.ts';
import { useWords } from './place-words.ts';

export interface LabelRequest {
  readonly subject: string;
  /** In the bubble; empty: no bubble. */
  readonly mark: string;
  /** Beside the bubble; may be empty. */
  readonly name: string;
  /** Distances from the centre line and the front edge, line by line under mark and name; may be empty. */
  readonly figures: readonly string[];
  /** The thing's box on the page, and the point in it that a leader leads to. */
  readonly item: Box;
  readonly target: Point;
  /** Big, plain things carry their label inside, if it fits: in the middle, or in a corner where others stand on them. */
  readonly inside: 'middle' | 'corner' | null;
}

/** Labels of the items and of the single places in the house, as the layers ask for them. */
export function labelRequests(context: PlanContext): LabelRequest[] {
  const { marks, names } = context.layers;
  const items = context.items.map((record): LabelRequest => {
    const item = itemBox(context, record);
    return {
      subject: record.id,
      mark: marks ? (context.marks.get(record.id) ?? '') : '',
      name: names ? nameOf(context, record) : '',
      figures: hasCoordinates(context) ? [figuresUnder(context, record)] : [],
      item,
      target: hasCoordinates(context) ? onPage(context, record) : middleOf(item),
      inside: CARRY_LABELS[record.kind] ?? null,
    };
  });
  return [...items, ...placeRequests(context)].filter(
    (request) => (request.mark !== '' || request.name !== '') && itemIsInArea(context, request.item),
  );
}

export function hasCoordinates({ layers }: PlanContext): boolean {
  return layers.dimensions === 'coordinates';
}

function figuresUnder({ figuresOf, units }: PlanContext, record: PlacedRecord): string {
  return figuresOf ? figuresOf(record) : coordinatesOf(record, units);
}

/** "750 SR · 760 US": the two figures of the marks table. */
export function coordinatesOf({ x, y }: Point, units: Units): string {
  return [formatAcross(x, units), formatDepth(y, units)].join(BETWEEN);
}

/** Between the figures of a mark, where they may be set under each other. */
export const BETWEEN = ' · ';

/** The same figures under each other, for where things stand close side by side. */
export function stacked(request: LabelRequest): LabelRequest {
  return { ...request, figures: request.figures.flatMap((line) => line.split(BETWEEN)) };
}

export function middleOf({ x, y, width, height }: Box): Point {
  return { x: x + width / 2, y: y + height / 2 };
}

/** The box of a record's plan outline on the page, with the chair of a player who sits. */
export function itemBox(context: PlanContext, record: PlacedRecord): Box {
  const chair = record.kind === 'player' ? chairOutline(record) : null;
  const corners = [...outlineOf(record), ...(chair ?? [])].map((corner) => onPage(context, corner));
  const at = onPage(context, record);
  return boxOfPoints(corners) ?? { x: at.x, y: at.y, width: 0, height: 0 };
}

const CARRY_LABELS: Readonly<Partial<Record<PlacedRecord['kind'], 'middle' | 'corner'>>> = {
  piano: 'middle',
  table: 'middle',
  shape: 'middle',
  riser: 'corner',
};

/** What a stranger would call the thing; empty where the mark says enough. */
export function nameOf(context: Pick<PlanContext, 'held'>, record: PlacedRecord): string {
  if (record.name) return oneLine(record.name);
  if (record.kind === 'player') return heldNames(context, record);
  if (record.kind === 'piano') return pianoModel(record.model)?.name ?? '';
  if (record.kind === 'largeInstrument') return largeInstrumentModel(record.model)?.name ?? '';
  if (record.kind === 'lamp') return t`Lamp`;
  return '';
}

function heldNames(
  context: Pick<PlanContext, 'held'>,
  player: PlacedRecord & { readonly kind: 'player' },
): string {
  return (context.held.get(player.id) ?? [])
    .map((instrument) => oneLine(instrument.name) || (instrumentModel(instrument.model)?.name ?? ''))
    .filter((name) => name !== '')
    .join(', ');
}

function placeRequests(context: PlanContext): LabelRequest[] {
  if (!context.layers.seats || !context.layers.names) return [];
  return houseShown(context).places.map((place) => {
    const item = placeBox(context, place);
    const name = oneLine(place.name) || useWords(place);
    return { subject: place.id, mark: '', name, figures: [], item, target: middleOf(item), inside: null };
  });
}

function itemIsInArea({ area }: PlanContext, item: Box): boolean {
  return (
    !area ||
    boxContains(area, { x: item.x + item.width / 2, y: item.y + item.height / 2, width: 0, height: 0 })
  );
}
