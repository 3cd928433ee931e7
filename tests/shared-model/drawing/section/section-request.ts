/** Sections for tests, and what can be read from them. */

import { venueModel } from '#model/catalogue/venues.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { SectionPlacement, SectionRequest } from '#model/drawing/section.ts';
import type { GroupPrimitive, Primitive } from '#model/drawing/primitives.ts';
import {
  aConcert,
  aLargeInstrument,
  anInstrument,
  aPlayer,
  aSetup,
  aStand,
  SETUP,
} from '../../../helpers/build.ts';
import { groupsIn, roughMeasure } from '../drawings.ts';

/** At 1:100 with the front edge at (100, 80) on the page, to the platform's edge. */
export function sectionOf(
  document: Document,
  fields: Partial<SectionRequest & SectionPlacement> = {},
): SectionRequest & SectionPlacement {
  return {
    document,
    setup: SETUP,
    cut: { through: 'centre' },
    focus: { kind: 'edge' },
    palette: PALETTES.print,
    measure: roughMeasure,
    units: 'metric',
    scale: 100,
    origin: { x: 100, y: 80 },
    area: null,
    ...fields,
  };
}

/** Three players, a marimba and two stands: invented. */
export const PLAYERS: readonly AnyRecord[] = [
  aPlayer({ id: 'player-1', name: 'Oboe', x: -700, y: 1400, facing: 40 }),
  aPlayer({
    id: 'player-2',
    name: 'Cello',
    x: 800,
    y: 1300,
    facing: -35,
    chair: { model: 'cello-chair', height: 480 },
  }),
  aPlayer({ id: 'player-3', name: 'Marimba', x: 0, y: 3200 }),
  anInstrument({ id: 'instrument-1', model: 'oboe', player: asId('player-1') }),
  anInstrument({ id: 'instrument-2', model: 'cello', player: asId('player-2') }),
  aLargeInstrument({ x: 0, y: 2700 }),
  aStand({ id: 'stand-1', x: -350, y: 900, facing: 200 }),
  aStand({ id: 'stand-2', x: 500, y: 800, facing: 150, lip: 700 }),
];

/** A house of the catalogue with those players. */
export function houseWithPlayers(venue: string): Document {
  const house = venueModel(venue);
  if (!house) throw new Error(`no venue ${venue}`);
  return documentOf([aConcert(), aSetup(), ...house.records(), ...PLAYERS]);
}

/** What the lines of sight say of themselves: "clear", "cut by a head in front". */
export function lineWords(drawn: readonly Primitive[]): string[] {
  return lineGroups(drawn).map(({ description = '' }) => description.replace(/^.*: /, ''));
}

export function lineGroups(drawn: readonly Primitive[]): GroupPrimitive[] {
  return groupsIn(drawn).filter(({ description }) => description?.startsWith('Line of sight'));
}
