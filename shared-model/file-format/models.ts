/** Which catalogue ids the `model` of a record can be; another one is read, with a note, and taken for a usual thing. */

import { INSTRUMENT_MODELS } from '../catalogue/instruments.ts';
import { INSTRUMENT_STAND_MODELS } from '../catalogue/instrument-stands.ts';
import { LARGE_INSTRUMENT_MODELS } from '../catalogue/large-instruments.ts';
import { PIANO_MODELS } from '../catalogue/pianos.ts';
import { SEAT_MODELS } from '../catalogue/seats.ts';
import { STAND_MODELS } from '../catalogue/stands.ts';
import { TABLE_MODELS } from '../catalogue/tables.ts';
import type { AnyRecord, Kind, StockItem } from '../document/records.ts';

const MODELS: Partial<Record<Kind | StockItem, readonly { readonly id: string }[]>> = {
  // Of the chair he sits on.
  player: SEAT_MODELS,
  instrument: INSTRUMENT_MODELS,
  stand: STAND_MODELS,
  instrumentStand: INSTRUMENT_STAND_MODELS,
  table: TABLE_MODELS,
  seat: SEAT_MODELS,
  piano: PIANO_MODELS,
  largeInstrument: LARGE_INSTRUMENT_MODELS,
};

/** The catalogue ids for a kind of record, for a player those of his chair; empty: the kind has no model. */
export function modelsOf(kind: Kind): readonly string[] {
  return (MODELS[kind] ?? []).map(({ id }) => id);
}

/** The model a record names that the catalogue does not have; null when all is known. */
export function unknownModel(record: AnyRecord): string | null {
  const named = modelNamedBy(record);
  const kind = record.kind === 'stock' ? record.item : record.kind;
  return named !== null && !MODELS[kind]?.some(({ id }) => id === named) ? named : null;
}

function modelNamedBy(record: AnyRecord): string | null {
  if (record.kind === 'stock' && record.model === '') return null;
  if ('model' in record) return record.model;
  return record.kind === 'player' ? (record.chair?.model ?? null) : null;
}
