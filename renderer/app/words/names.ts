/** How kinds of things are called. */

import type { Severity } from '#model/checks/finding.ts';
import type { Kind } from '#model/document/records.ts';
import type { GuideReason } from '../../canvas/snapping.ts';
import type { Shelf } from '../../store/things.ts';

export const shelves: Readonly<Record<Shelf, string>> = {
  players: 'Players',
  stands: 'Music stands',
  seats: 'Chairs and stools',
  keyboards: 'Pianos',
  percussion: 'Percussion and large instruments',
  holders: 'Stands for instruments',
  tables: 'Tables',
  levels: 'Risers and lamps',
  house: 'Objects and columns',
};

export const kinds: Readonly<Record<Kind, string>> = {
  concert: 'Concert',
  score: 'Music',
  pagePlan: 'Page plan',
  setup: 'Setup',
  platform: 'Platform',
  door: 'Door',
  seatBlock: 'Seats',
  place: 'Place in the house',
  storage: 'Storage',
  stock: 'Stock',
  underlay: 'Underlay',
  player: 'Player',
  instrument: 'Instrument',
  stand: 'Music stand',
  instrumentStand: 'Instrument stand',
  table: 'Table',
  seat: 'Chair',
  piano: 'Piano',
  largeInstrument: 'Large instrument',
  lamp: 'Lamp',
  riser: 'Riser',
  shape: 'Object',
  group: 'Group',
};

export const kindsMany: Readonly<Record<Kind, string>> = {
  concert: 'Concert',
  score: 'Music',
  pagePlan: 'Page plans',
  setup: 'Setups',
  platform: 'Platform',
  door: 'Doors',
  seatBlock: 'Seats',
  place: 'Single places',
  storage: 'Storage',
  stock: 'Stock',
  underlay: 'Underlays',
  player: 'Players',
  instrument: 'Instruments',
  stand: 'Music stands',
  instrumentStand: 'Instrument stands',
  table: 'Tables',
  seat: 'Chairs',
  piano: 'Pianos',
  largeInstrument: 'Large instruments',
  lamp: 'Lamps',
  riser: 'Risers',
  shape: 'Objects',
  group: 'Groups',
};

export const severities: Readonly<Record<Severity, string>> = {
  fail: 'Fails',
  caution: 'Caution',
  note: 'Note',
};

export const guides: Readonly<Record<GuideReason, (others: string, distance: string) => string>> = {
  centreLine: () => 'on the centre line',
  frontEdge: () => 'at the front edge',
  edgeDistance: (_, distance) => `${distance} from the front edge`,
  inLine: (others) => (others ? `in line with ${others}` : 'in line'),
  mirrored: (others) => (others ? `opposite ${others}` : 'opposite'),
  evenly: (others, gap) => `evenly spaced with ${others}, ${gap} apart`,
  platformEdge: () => 'at the edge of the platform',
  grid: () => 'on the grid',
  midway: (others) => (others ? `half-way between ${others}` : 'half-way'),
};
