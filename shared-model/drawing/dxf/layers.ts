/** The layers of a plan for another drawing program: our own names, in plain words that every version of DXF takes. */

import type { PlacedRecord } from '../../document/records.ts';

/** Colours by index: 1 red, 3 green, 5 blue, 7 black or white, 8 grey, and so on (the index of the DXF reference). */
export const LAYERS = {
  platform: 7,
  'open-edges': 1,
  doors: 3,
  'centre-line': 8,
  'house-seats': 8,
  players: 5,
  stands: 7,
  seats: 4,
  'instrument-stands': 6,
  tables: 30,
  pianos: 7,
  'large-instruments': 30,
  lamps: 2,
  cables: 40,
  risers: 9,
  objects: 8,
  'waiting-places': 8,
  marks: 5,
  names: 5,
  dimensions: 8,
} as const;

export type LayerName = keyof typeof LAYERS;

export const LAYER_OF: Readonly<Record<PlacedRecord['kind'], LayerName>> = {
  player: 'players',
  stand: 'stands',
  instrumentStand: 'instrument-stands',
  table: 'tables',
  seat: 'seats',
  piano: 'pianos',
  largeInstrument: 'large-instruments',
  lamp: 'lamps',
  riser: 'risers',
  shape: 'objects',
};
