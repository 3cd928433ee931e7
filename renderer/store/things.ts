/** Everything that can be placed, as the store lists it: a name, words to find it by, and the command that sets it. */

import { INSTRUMENT_MODELS } from '#model/catalogue/instruments.ts';
import { INSTRUMENT_STAND_MODELS } from '#model/catalogue/instrument-stands.ts';
import { LARGE_INSTRUMENT_MODELS } from '#model/catalogue/large-instruments.ts';
import { PIANO_MODELS } from '#model/catalogue/pianos.ts';
import { SEAT_MODELS } from '#model/catalogue/seats.ts';
import { STAND_MODELS } from '#model/catalogue/stands.ts';
import { TABLE_MODELS } from '#model/catalogue/tables.ts';
import { circle } from '#model/catalogue/shapes.ts';
import { add, type NewRecord } from '#model/commands/add.ts';
import type { Outcome } from '#model/commands/command.ts';
import type { Document } from '#model/document/document.ts';
import { text } from '../app/text.ts';
import { addPlayer, addPlayerAt } from './players.ts';
import * as recipes from './recipes.ts';
import type { Spot } from './recipes.ts';

export type Shelf =
  'players' | 'stands' | 'seats' | 'holders' | 'tables' | 'percussion' | 'keyboards' | 'levels' | 'house';

export const SHELVES: readonly Shelf[] = [
  'players',
  'stands',
  'seats',
  'keyboards',
  'percussion',
  'holders',
  'tables',
  'levels',
  'house',
];

export interface Placing {
  readonly spot: Spot;
  /** Whether a player comes with a stand to read from. */
  readonly withStand: boolean;
}

export interface Thing {
  readonly id: string;
  readonly shelf: Shelf;
  readonly name: string;
  /** Further words it is found by, lower case. */
  readonly words: string;
  readonly place: (document: Document, placing: Placing) => Outcome;
  /** Mostly beyond the platform, behind it: that is where it goes when nobody points. */
  readonly beyond?: true;
}

const words = text.toPlace;
const by = words.foundBy;

const BASE = { x: 0, y: 0 };

export const THINGS: readonly Thing[] = [
  ...INSTRUMENT_MODELS.map(playerThing),
  ...PIANO_MODELS.map(({ id, name }) => withPlayer('piano', id, name)),
  ...LARGE_INSTRUMENT_MODELS.map(({ id, name }) => withPlayer('largeInstrument', id, name)),
  ...STAND_MODELS.map((model) =>
    single('stands', [model.id, model.name, by.stand], (spot) => recipes.newStand(model, 'single', spot)),
  ),
  ...STAND_MODELS.filter(({ id }) => id !== 'table-top').map((model) =>
    single('stands', [`${model.id}-pair`, words.backToBack(model.name), by.pair], (spot) =>
      recipes.newStand(model, 'backToBack', spot),
    ),
  ),
  ...SEAT_MODELS.map((model) =>
    single('seats', [model.id, model.name, by.seat], (spot) => recipes.newSeat(model, spot)),
  ),
  ...INSTRUMENT_STAND_MODELS.map((model) =>
    single('holders', [model.id, model.name, by.holder], (spot) => recipes.newInstrumentStand(model, spot)),
  ),
  ...TABLE_MODELS.map((model) =>
    single('tables', [model.id, model.name, by.table], (spot) => recipes.newTable(model, spot)),
  ),
  ...LARGE_INSTRUMENT_MODELS.map(({ id, name }) =>
    single('percussion', [`${id}-alone`, name, by.alone], (spot) => recipes.newLargeInstrument(id, spot)),
  ),
  ...PIANO_MODELS.map(({ id, name }) =>
    single('keyboards', [`${id}-alone`, name, by.pianoAlone], (spot) => recipes.newPiano(id, spot)),
  ),
  single('levels', ['riser', words.riser, by.riser], (spot) => recipes.newRiser(2000, 1000, spot)),
  single('levels', ['riser-small', words.smallRiser, by.smallRiser], (spot) =>
    recipes.newRiser(1000, 1000, spot),
  ),
  single('levels', ['lamp', words.lamp, by.lamp], (spot) => recipes.newLamp(spot)),
  single('house', ['box', words.box, by.box], (spot) =>
    recipes.newShape(
      { name: words.named.box, outline: recipes.boxOutline(1200, 600), height: 600, fixed: false },
      spot,
    ),
  ),
  single('house', ['screen', words.screen, by.screen], (spot) =>
    recipes.newShape(
      { name: words.named.screen, outline: recipes.boxOutline(2000, 80), height: 2200, fixed: false },
      spot,
    ),
  ),
  single('house', ['column', words.column, by.column], (spot) =>
    recipes.newShape(
      { name: words.named.column, outline: circle(BASE, 200), height: 3000, fixed: true },
      spot,
    ),
  ),
  {
    ...single('house', ['storage', words.storage, by.storage], (spot) =>
      recipes.newStorage(spot, text.toPlace.named.storage),
    ),
    beyond: true,
  },
];

const byId = new Map(THINGS.map((thing) => [thing.id, thing]));

export function thingOf(id: string): Thing | undefined {
  return byId.get(id);
}

/** The things whose name or words hold every word of the search. */
export function found(search: string, things: readonly Thing[] = THINGS): Thing[] {
  const wanted = search.toLowerCase().split(/\s+/).filter(Boolean);
  return things.filter((thing) => {
    const all = `${thing.name.toLowerCase()} ${thing.words}`;
    return wanted.every((word) => all.includes(word));
  });
}

function playerThing(model: (typeof INSTRUMENT_MODELS)[number]): Thing {
  return {
    id: `player-${model.id}`,
    shelf: 'players',
    name: model.name,
    words: words.families[model.family],
    place: (document, placing) => addPlayer(document, model, placing),
  };
}

function withPlayer(kind: 'piano' | 'largeInstrument', model: string, name: string): Thing {
  return {
    id: `player-at-${model}`,
    shelf: kind === 'piano' ? 'keyboards' : 'percussion',
    name: words.withPlayer(name),
    words: kind === 'piano' ? by.pianist : words.families.percussion,
    place: (document, { spot }) => addPlayerAt(document, { kind, model }, spot),
  };
}

function single(
  shelf: Shelf,
  [id, name, foundBy]: readonly [id: string, name: string, foundBy: string],
  recipe: (spot: Spot) => NewRecord,
): Thing {
  return { id, shelf, name, words: foundBy, place: (document, { spot }) => add(document, recipe(spot)) };
}
