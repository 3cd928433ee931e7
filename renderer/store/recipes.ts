/** How a new record of each kind starts out: the catalogue's usual measures. */

import { bodies } from '#model/catalogue/people.ts';
import type { InstrumentModel } from '#model/catalogue/instruments.ts';
import type { InstrumentStandModel } from '#model/catalogue/instrument-stands.ts';
import { seatModel, type SeatModel } from '#model/catalogue/seats.ts';
import { paperModel } from '#model/catalogue/paper.ts';
import { rectangle } from '#model/catalogue/shapes.ts';
import { standModel, USUAL_STAND, type StandModel } from '#model/catalogue/stands.ts';
import type { TableModel } from '#model/catalogue/tables.ts';
import type { NewRecord } from '#model/commands/add.ts';
import type { Id } from '#model/document/ids.ts';
import type { Units } from '#model/document/measures.ts';
import type { Chair, Person, Point, Stand, StandSide } from '#model/document/records.ts';

/** Where and how something new is set. */
export interface Spot extends Point {
  readonly setup: Id<'setup'> | null;
  readonly facing: number;
  readonly units: Units;
}

const placedAt = <K extends string>(kind: K, { setup, x, y, facing }: Spot) =>
  ({ kind, name: '', setup, x, y, facing }) as const;

/** A person of middling height of either sex, until the director knows better. */
export const SOMEBODY: Person = {
  population: 'pooled',
  size: { by: 'percentile', percentile: 50 },
  shoes: 25,
  measured: { eyeHeight: null, shoulderHeight: null, armLength: null },
};

const SIT_ON: Readonly<Record<string, string>> = {
  cello: 'cello-chair',
  'viol-bass': 'cello-chair',
  'double-bass': 'high-stool',
};

const STANDING_FAMILIES: readonly InstrumentModel['family'][] = ['voice', 'percussion'];

/** The seat that players of the instrument mostly use in chamber music; null: they stand. */
export function usualChair(instrument: InstrumentModel): Chair | null {
  if (STANDING_FAMILIES.includes(instrument.family)) return null;
  return chairOf(SIT_ON[instrument.id] ?? 'orchestra-chair');
}

export function chairOf(id: string): Chair | null {
  const model = seatModel(id);
  return model ? { model: id, height: model.height.usual } : null;
}

/** The lip stands this much under the eyes: the page's upper edge is then a little lower than they are. */
const LIP_BELOW_EYES = 520;

/** A lip at which the person reads comfortably and the house still sees the face; common practice, no source. */
export function usualLip(model: StandModel, person: Person, chair: Chair | null): number {
  const wanted = bodies(person, chair?.height ?? null).small.eyeHeight - LIP_BELOW_EYES;
  const round = Math.round(wanted / 10) * 10;
  return Math.min(model.lip.most, Math.max(model.lip.least, round));
}

export function newSide(reader: Id<'player'> | null, units: Units): StandSide {
  const paper = paperModel(units === 'metric' ? 'a4' : 'letter');
  return {
    reader,
    pagesAcross: 2,
    pageWidth: paper?.width ?? 210,
    pageHeight: paper?.height ?? 297,
    staffSize: null,
    turned: true,
    freeTime: null,
  };
}

type NewStand = Omit<Stand, 'id'>;

export function newStand(model: StandModel, form: Stand['form'], spot: Spot): NewStand {
  const side = newSide(null, spot.units);
  return {
    ...placedAt('stand', spot),
    form,
    model: model.id,
    deskWidth: model.deskWidth,
    deskHeight: model.deskHeight,
    lip: model.lip.usual,
    tilt: model.tilt.usual,
    sides: form === 'single' ? [side] : [side, side],
  };
}

export function usualStandModel(): StandModel {
  return standModel('orchestral') ?? USUAL_STAND;
}

export const newSeat = (model: SeatModel, spot: Spot): NewRecord => ({
  ...placedAt('seat', spot),
  model: model.id,
  height: model.height.usual,
});

export const newInstrumentStand = (model: InstrumentStandModel, spot: Spot): NewRecord => ({
  ...placedAt('instrumentStand', spot),
  model: model.id,
  height: model.takeHeight,
});

export const newTable = ({ id, width, depth, height }: TableModel, spot: Spot): NewRecord => ({
  ...placedAt('table', spot),
  model: id,
  width,
  depth,
  height,
});

export const newLargeInstrument = (model: string, spot: Spot): NewRecord => ({
  ...placedAt('largeInstrument', spot),
  // Its player looks over it at the house.
  model,
  player: null,
});

export const newPiano = (model: string, spot: Spot): NewRecord => ({
  // The usual way: the keyboard to stage right, so that an open lid sends the sound to the house.
  ...placedAt('piano', { ...spot, facing: 90 }),
  model,
  lid: 'half',
  player: null,
});

export const newLamp = (spot: Spot): NewRecord => ({
  ...placedAt('lamp', spot),
  height: 1500,
  cable: [],
  cableCovered: false,
});

export const newRiser = (width: number, depth: number, spot: Spot): NewRecord => ({
  ...placedAt('riser', spot),
  width,
  depth,
  height: 200,
});

/** Of the whole concert, like the house. */
export const newStorage = ({ x, y }: Point, name: string): NewRecord => ({
  kind: 'storage',
  name,
  x,
  y,
  door: null,
});

export interface ShapeSize {
  readonly name: string;
  readonly outline: readonly Point[];
  readonly height: number;
  readonly fixed: boolean;
}

export const newShape = ({ name, outline, height, fixed }: ShapeSize, spot: Spot): NewRecord => ({
  ...placedAt('shape', { ...spot, setup: fixed ? null : spot.setup }),
  name,
  outline,
  height,
  fixed,
});

export const boxOutline = (width: number, depth: number): Point[] => rectangle(width, depth);
