/** How kinds of things are called. */

import type * as english from '../names.ts';

export const shelves: typeof english.shelves = {
  players: 'Spieler',
  stands: 'Notenpulte',
  seats: 'Stühle und Hocker',
  keyboards: 'Klaviere und Flügel',
  percussion: 'Schlagwerk und Großinstrumente',
  holders: 'Instrumentenständer',
  tables: 'Tische',
  levels: 'Podeste und Lampen',
  house: 'Gegenstände und Säulen',
};

export const kinds: typeof english.kinds = {
  concert: 'Konzert',
  score: 'Musik',
  pagePlan: 'Seitenplan',
  setup: 'Aufstellung',
  platform: 'Podium',
  door: 'Tür',
  seatBlock: 'Block',
  place: 'Platz im Saal',
  storage: 'Lager',
  stock: 'Bestand',
  underlay: 'Unterlage',
  player: 'Spieler',
  instrument: 'Instrument',
  stand: 'Pult',
  instrumentStand: 'Instrumentenständer',
  table: 'Tisch',
  seat: 'Sitz',
  piano: 'Klavier',
  largeInstrument: 'Großinstrument',
  lamp: 'Lampe',
  riser: 'Podest',
  shape: 'Gegenstand',
  group: 'Gruppe',
};

export const kindsMany: typeof english.kindsMany = {
  concert: 'Konzert',
  score: 'Musik',
  pagePlan: 'Seitenpläne',
  setup: 'Aufstellungen',
  platform: 'Podium',
  door: 'Türen',
  seatBlock: 'Blöcke',
  place: 'Einzelne Plätze',
  storage: 'Lager',
  stock: 'Bestand',
  underlay: 'Unterlagen',
  player: 'Spieler',
  instrument: 'Instrumente',
  stand: 'Pulte',
  instrumentStand: 'Instrumentenständer',
  table: 'Tische',
  seat: 'Sitze',
  piano: 'Klaviere',
  largeInstrument: 'Großinstrumente',
  lamp: 'Lampen',
  riser: 'Podeste',
  shape: 'Gegenstände',
  group: 'Gruppen',
};

export const severities: typeof english.severities = {
  fail: 'Verfehlt',
  caution: 'Vorsicht',
  note: 'Hinweis',
};

export const guides: typeof english.guides = {
  centreLine: () => 'auf der Mittellinie',
  frontEdge: () => 'an der Vorderkante',
  edgeDistance: (_, distance) => `${distance} von der Vorderkante`,
  inLine: (others) => (others ? `in einer Linie mit ${others}` : 'in einer Linie'),
  mirrored: (others) => (others ? `gegenüber von ${others}` : 'gegenüber'),
  evenly: (others, gap) => `gleichmäßig mit ${others}, Abstand ${gap}`,
  platformEdge: () => 'an der Podiumskante',
  grid: () => 'auf dem Raster',
  midway: (others) => (others ? `mittig zwischen ${others}` : 'mittig'),
};
