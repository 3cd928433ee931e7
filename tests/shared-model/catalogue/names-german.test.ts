/** Names of the catalogue are said when they are read, so they follow the language, whatever was read before. */

import { afterEach, describe, expect, test } from 'vitest';
import { INSTRUMENT_MODELS } from '#model/catalogue/instruments.ts';
import { INSTRUMENT_STAND_MODELS } from '#model/catalogue/instrument-stands.ts';
import { LARGE_INSTRUMENT_MODELS } from '#model/catalogue/large-instruments.ts';
import { PAPER_MODELS } from '#model/catalogue/paper.ts';
import { PIANO_MODELS, pianoModel } from '#model/catalogue/pianos.ts';
import { SEAT_MODELS } from '#model/catalogue/seats.ts';
import { STAND_MODELS } from '#model/catalogue/stands.ts';
import { TABLE_MODELS } from '#model/catalogue/tables.ts';
import { VENUE_MODELS, venueModel } from '#model/catalogue/venues.ts';
import type { Model } from '#model/catalogue/sources.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';

const LISTS: readonly (readonly [string, readonly Model[]])[] = [
  ['instruments', INSTRUMENT_MODELS],
  ['large instruments', LARGE_INSTRUMENT_MODELS],
  ['pianos', PIANO_MODELS],
  ['stands', STAND_MODELS],
  ['instrument stands', INSTRUMENT_STAND_MODELS],
  ['seats', SEAT_MODELS],
  ['tables', TABLE_MODELS],
  ['paper', PAPER_MODELS],
  ['houses', VENUE_MODELS],
];

/** Sizes of paper that are called alike everywhere. */
const ALIKE = /^(A\d|B4 .*|Letter|Tabloid|Legal)$/;

afterEach(speakEnglish);

describe.each(LISTS)('%s', (_, models) => {
  test('have a German name each, no two alike', () => {
    const english = models.map(({ id, name }) => [id, name] as const);
    speakFrom('de', german);
    for (const [index, [id, name]] of english.entries()) {
      const model = models[index];
      expect(model?.id).toBe(id);
      expect([name, model?.name]).toEqual([name, ALIKE.test(name) ? name : german[name]]);
    }
    expect(new Set(models.map(({ name }) => name)).size).toBe(models.length);
    speakEnglish();
    expect(models.map(({ name }) => name)).toEqual(english.map(([, name]) => name));
  });
});

describe('a house', () => {
  test('is told in German, its left and right as seen from the house', () => {
    speakFrom('de', german);
    const hall = venueModel('small-concert-hall');
    expect(hall?.summary).toBe(
      '396 Plätze: 308 im ansteigenden Parkett und 88 im Rang, vor einem Podium von 12 × 7,5 m, 800 mm hoch.',
    );
    const places = (hall?.records() ?? []).filter((record) => record.kind === 'place');
    // +x is stage left, which lies on the right-hand side of those who sit in the house.
    expect(places.find(({ x }) => x < -1000)?.name).toBe('Rollstuhlplatz links');
    expect(places.find(({ x }) => x > 1000)?.name).toBe('Rollstuhlplatz rechts');
  });

  test.each(VENUE_MODELS.map((venue) => [venue.id, venue] as const))(
    '%s: only its names change',
    (_, venue) => {
      const english = venue.records();
      speakFrom('de', german);
      const told = venue.records();
      expect(told.map((record) => ({ ...record, name: '' }))).toEqual(
        english.map((record) => ({ ...record, name: '' })),
      );
      expect(told.map(({ name }) => name)).toEqual(english.map(({ name }) => german[name]));
    },
  );
});

test('a B flat clarinet is one in B', () => {
  speakFrom('de', german);
  expect(INSTRUMENT_MODELS.find(({ id }) => id === 'clarinet-b-flat')?.name).toBe('Klarinette in B');
  expect(pianoModel('grand-275')?.name).toBe('Konzertflügel, 275');
});
