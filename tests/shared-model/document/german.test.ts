import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { INSTRUMENT_MODELS } from '#model/catalogue/instruments.ts';
import { instrumentWord } from '#model/document/instrument-words.ts';
import { countOfKind } from '#model/document/kind-counts.ts';
import { labelOf } from '#model/document/labels.ts';
import {
  formatApart,
  formatDepth,
  formatFacing,
  formatFine,
  formatLength,
  formatPosition,
} from '#model/document/measures.ts';
import { isPlaced } from '#model/document/records.ts';
import { letterKey, shortMarks } from '#model/document/short-marks.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { aDocument, anInstrument, aPlayer, aSetup, aStand, SETUP } from '../../helpers/build.ts';
import { documentOfEveryKind } from './every-kind.ts';

const marked = [aPlayer({}), aStand({}), aStand({ id: 'stand-2' })];

beforeEach(() => speakFrom('de', german));
afterEach(speakEnglish);

describe('in German', () => {
  test('a side of the stage is told as seen from the house, so stage left is on the right', () => {
    expect(formatPosition({ x: 820, y: 1450 }, 'metric')).toBe('820 re, 1450 hi');
    expect(formatPosition({ x: -820, y: -300 }, 'metric')).toBe('820 li, 300 vo');
    expect(formatPosition({ x: 0, y: 0 }, 'metric')).toBe('auf der Mitte, an der Kante');
    expect(formatDepth(304.8, 'imperial')).toBe(`1'-0" hi`);
    expect([0, 20, -20, 180].map((facing) => formatFacing(facing))).toEqual([
      'gerade zum Saal',
      '20° nach re',
      '20° nach li',
      'nach hinten',
    ]);
    expect(formatFacing(20.5, 1)).toBe('20,5° nach re');
  });

  test('parts of a millimetre stand behind a comma', () => {
    expect(formatApart([914.6, 915], 'metric')).toEqual(['914,6 mm', '915 mm']);
    expect(formatFine(914.64, 'metric', 10)).toBe('914,6');
    expect(formatLength(914.6, 'metric')).toBe('915 mm');
  });

  test('each kind has a word for one and one for many', () => {
    expect([1, 2, 12].map((count) => countOfKind('stand', count))).toEqual(['1 Pult', '2 Pulte', '12 Pulte']);
    expect([1, 3].map((count) => countOfKind('player', count))).toEqual(['1 Spieler', '3 Spieler']);
  });

  test('things have their names, their marks and the letters of the plan', () => {
    const bass = anInstrument({ model: 'clarinet-bass' });
    const document = aDocument(aSetup({}), ...marked, bass);
    expect(labelOf(document, SETUP, 'stand-2')).toBe('Pult 2');
    expect(labelOf(document, SETUP, bass.id)).toBe('Bassklarinette');
    expect([...shortMarks(marked).values()]).toEqual(['SP1', 'PU1', 'PU2']);
    expect(letterKey(marked)).toBe('SP Spieler · PU Pult');
  });
});

test('every carried instrument of the catalogue has a name of its own in both languages', () => {
  const inGerman = INSTRUMENT_MODELS.map(({ name }) => name);
  speakEnglish();
  const inEnglish = INSTRUMENT_MODELS.map(({ name }) => name);
  // What has no name goes by its id, in small letters; what has no German stays English.
  expect([...inGerman, ...inEnglish].filter((name) => !/^[A-ZÄÖÜ]/.test(name))).toEqual([]);
  expect(inEnglish.filter((name) => german[name] === undefined)).toEqual([]);
  expect(new Set(inGerman).size).toBe(INSTRUMENT_MODELS.length);
});

test('within a sentence an instrument has the small letter of English and the capital of German', () => {
  expect(['clarinet-b-flat', 'bongos', 'of-glass'].map(instrumentWord)).toEqual([
    'Klarinette in B',
    'Bongos',
    'of glass',
  ]);
  speakEnglish();
  expect(['clarinet-b-flat', 'bongos', 'recorder', 'of-glass'].map(instrumentWord)).toEqual([
    'clarinet in B flat',
    'bongos',
    'recorder',
    'of glass',
  ]);
});

test('no letters mean one thing on an English plan and another on a German one', () => {
  const inGerman = lettersAndWords();
  speakEnglish();
  const inEnglish = new Map(lettersAndWords());
  expect([inGerman.length, inEnglish.size]).toEqual([10, 10]);
  const shared = inGerman.filter(([letters]) => inEnglish.has(letters));
  expect(shared.map(([letters, german]) => [german, inEnglish.get(letters)])).toEqual([
    ['Instrumentenständer', 'instrument stand'],
    ['Tisch', 'table'],
    ['Lampe', 'lamp'],
  ]);
});

function lettersAndWords(): [letters: string, kind: string][] {
  const all = [...documentOfEveryKind().records.values()].filter(isPlaced);
  return letterKey(all)
    .split(' · ')
    .map((pair) => [pair.slice(0, pair.indexOf(' ')), pair.slice(pair.indexOf(' ') + 1)]);
}
