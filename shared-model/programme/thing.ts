/** What a thing is to the crew: which kind, which model, and whether one can stand in for another. */

import { instrumentStandModel } from '../catalogue/instrument-stands.ts';
import { largeInstrumentModel } from '../catalogue/large-instruments.ts';
import { pianoModel } from '../catalogue/pianos.ts';
import { seatModel, WHEELCHAIR } from '../catalogue/seats.ts';
import { standModel } from '../catalogue/stands.ts';
import { tableModel } from '../catalogue/tables.ts';
import { kindWord } from '../document/labels.ts';
import type { PlacedRecord, Stock, StockItem } from '../document/records.ts';
import { t } from '../words/say.ts';

/** A kind of thing and its model; a thing that has no models goes by its name, or by none. */
export interface Thing {
  readonly item: StockItem;
  readonly model: string;
}

/** What a placed record is to those who carry it; of a player it is his chair. Null: nobody carries it. */
export function thingOf(record: PlacedRecord): Thing | null {
  switch (record.kind) {
    case 'player':
      return record.chair && record.chair.model !== WHEELCHAIR.id
        ? { item: 'seat', model: record.chair.model }
        : null;
    case 'seat':
      // Whoever needs a wheelchair comes in it.
      return record.model === WHEELCHAIR.id ? null : { item: 'seat', model: record.model };
    case 'shape':
      return record.fixed ? null : { item: 'shape', model: record.name.trim() };
    case 'riser':
    case 'lamp':
      return { item: record.kind, model: '' };
    default:
      return { item: record.kind, model: record.model };
  }
}

/**
 * Two things of one key can stand in for each other: the same kind and model, and the same size where that cannot be
 * set. Lip, tilt, height of a seat or of a lamp and a piano's lid are set anew.
 */
export function interchangeKey(record: PlacedRecord): string {
  const thing = thingOf(record);
  if (!thing) return '';
  return [thing.item, thing.model, ...fixedSizes(record)].join('|');
}

function fixedSizes(record: PlacedRecord): readonly (string | number)[] {
  switch (record.kind) {
    case 'stand':
      return [record.deskWidth, record.deskHeight];
    case 'table':
    case 'riser':
      return [record.width, record.depth, record.height];
    case 'shape':
      return [record.height, ...record.outline.flatMap(({ x, y }) => [Math.round(x), Math.round(y)])];
    default:
      return [];
  }
}

/** "Orchestral stand"; without a model what it is called, or the word for its kind. */
export function thingName({ item, model }: Thing): string {
  const known = modelName({ item, model });
  if (known) return known;
  if (item === 'shape' && model !== '') return model;
  return item === 'cable' ? t`cable` : kindWord(item);
}

/** The catalogue's name for a model; undefined where a kind has none or it is not known. */
function modelName({ item, model }: Thing): string | undefined {
  switch (item) {
    case 'stand':
      return standModel(model)?.name;
    case 'instrumentStand':
      return instrumentStandModel(model)?.name;
    case 'table':
      return tableModel(model)?.name;
    case 'seat':
      return seatModel(model)?.name;
    case 'piano':
      return pianoModel(model)?.name;
    case 'largeInstrument':
      return largeInstrumentModel(model)?.name;
    default:
      return undefined;
  }
}

/** What a row of the stock counts, as a thing. */
export function thingOfStock({ item, model, name }: Stock): Thing {
  return { item, model: item === 'shape' ? name.trim() : model };
}
