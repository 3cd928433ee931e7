/** Drawings and tables in German: its grammar, its decimal comma, and what no language changes. */

import { afterEach, beforeEach, describe, expect, it, test } from 'vitest';
import { inventoryRows, markRows } from '#model/drawing/csv-tables.ts';
import { chosenEntries, packEntries } from '#model/drawing/pack/pack.ts';
import { basesOf, cornerPoints, roundingWords, taped } from '#model/drawing/pack/tapes.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import { describeItem, planContext } from '#model/drawing/plan.ts';
import { gridStep } from '#model/drawing/plan/datum.ts';
import { scaleBar } from '#model/drawing/plan/scale-bar.ts';
import { BANDS } from '#model/drawing/sight-bands.ts';
import { marksTable } from '#model/drawing/sheet/marks-table.ts';
import { unbreakable } from '#model/drawing/text.ts';
import { sheetToSvg } from '#model/drawing/to-svg.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { aDocument, aLamp, aLargeInstrument, aPlayer, aStand, SETUP, SIDE } from '../../helpers/build.ts';
import { EVENING } from './pack/pack-request.ts';
import { planRequest, textsIn } from './drawings.ts';
import { plotRequest, sheetsOf } from './plot-request.ts';

beforeEach(() => {
  speakFrom('de', german);
});
afterEach(speakEnglish);

function inEnglish<T>(said: () => T): T {
  speakEnglish();
  const result = said();
  speakFrom('de', german);
  return result;
}

const rowOf = (...records: AnyRecord[]): readonly string[] =>
  marksTable(plotRequest(aDocument(...records), { units: 'metric' })).rows[0] ?? [];
const notesOf = (...records: AnyRecord[]): string => rowOf(...records).at(-1) ?? '';

describe('the table of marks', () => {
  it('gives places as they are seen from the house, and keeps the capitals of nouns', () => {
    const row = rowOf(aPlayer({ name: 'Viola', x: 820, y: 1450, facing: 20 }));
    expect(row.slice(1, 5)).toEqual(['Viola (Spieler)', '820 re', '1450 hi', '20° nach re']);
  });

  it('has one page and more than one', () => {
    const pages = (pagesAcross: number): string => notesOf(aStand({ sides: [{ ...SIDE, pagesAcross }] }));
    expect([pages(1), pages(2)].map((notes) => notes.replace(/^[^,]*, /, ''))).toEqual([
      expect.stringMatching(/^1 Seite(,|$)/),
      expect.stringMatching(/^2 Seiten(,|$)/),
    ]);
  });

  it('turns the sides of the stage round, which are the player’s in English', () => {
    // Facing the house, a marimba player has the low bars on his left, which the house sees on its right.
    const marimba = aLargeInstrument({ model: 'marimba-5-octave', facing: 0 });
    expect(notesOf(marimba)).toContain('tiefes Ende rechts (vom Saal)');
    expect(inEnglish(() => notesOf(marimba))).toContain('low end stage left');
  });

  it('says at the heads of its columns and under them what the letters are', () => {
    const texts = textsIn(sheetsOf(plotRequest(aDocument(aStand({})))).sheets[0]?.children ?? []);
    const words = texts.map(({ text }) => text).join(' ');
    for (const said of ['SAAL', 'HINTEN', 'LINKS', 'RECHTS', 'KANTE', 'ML'])
      expect(texts.map(({ text }) => text)).toContain(said);
    expect(words).toContain('li, re: vom Saal aus gesehen; hi: nach hinten, vo: nach vorn');
  });
});

test('a thing is described in the order of German', () => {
  const stand = aStand({ x: -820, y: 1450, facing: 20, lip: 900 });
  const context = planContext(planRequest(aDocument(stand)));
  expect(describeItem(stand, context)).toBe(
    'PU1 Pult: 820 li, 1450 hi, Auflage zeigt 20° nach re, Leiste 900 mm',
  );
});

describe('figures', () => {
  it('have the decimal comma where they are read', () => {
    const bar = scaleBar({ scale: 48, units: 'metric', palette: PALETTES.print, x: 0, y: 0, width: 60 });
    expect(textsIn([bar]).map(({ text }) => text)).toContain('Die ganze Maßstabsleiste muss 41,7 mm messen.');
    expect(gridStep('metric', 20).figure(1)).toBe('0,5 m');
    const outline = [
      { x: -4000, y: 0 },
      { x: 4000, y: 0 },
      { x: 4000, y: 6000 },
      { x: -4000, y: 6000 },
    ];
    const tape = taped({ x: 100, y: 2000 }, basesOf(cornerPoints(outline)), 'metric');
    expect(roundingWords(tape ? [tape] : [], 'metric')).toMatch(/um mehr als \d,\d mm\.$/);
  });

  it('are not torn from their side', () => {
    expect(unbreakable('Pult 820 re, 1450 hi')).toEqual(['Pult', '820 re,', '1450 hi']);
  });
});

describe('tables for a spreadsheet', () => {
  const document = aDocument(
    aPlayer({ name: 'Viola', x: 812.5, facing: -20 }),
    aStand({ x: -820.25, tilt: 62.5 }),
    aLamp({ cable: [{ x: 0, y: 3000 }] }),
  );
  const figuresOf = (rows: readonly (readonly unknown[])[]): unknown[][] =>
    rows.map((row) => row.filter((cell) => typeof cell === 'number'));

  it('name their columns in German and keep their figures to the digit', () => {
    const own = markRows(document, SETUP);
    const english = inEnglish(() => markRows(document, SETUP));
    expect(own[0]?.slice(0, 4)).toEqual(['Marke', 'Was', 'Von der Mitte', 'Von der Kante']);
    expect(figuresOf(own)).toEqual(figuresOf(english));
    expect(figuresOf(own)[1]).toContain(812.5);
    expect(inventoryRows(document)[0]).toContain('Höchstens zugleich');
  });
});

describe('a pack', () => {
  it('is asked for by the same names, which its titles are not', () => {
    const own = packEntries(EVENING);
    expect(own.map(({ name }) => name)).toEqual(
      inEnglish(() => packEntries(EVENING).map(({ name }) => name)),
    );
    expect(own.map(({ title }) => title)).toContain('Umbau von „First“');
    expect(chosenEntries(EVENING, ['marks-1'])).toMatchObject({ entries: [{ title: 'Marken' }] });
  });
});

test('a drawing says in which language it is', () => {
  const sheet = { title: 'Plan', width: 10, height: 10, children: [] };
  expect(sheetToSvg(sheet)).toContain('xml:lang="de"');
  expect(inEnglish(() => sheetToSvg(sheet))).toContain('xml:lang="en"');
});

test('what is kept in tables of the program speaks the language of the moment', () => {
  expect(BANDS[4].words).toBe('über 90 % sichtbar');
  expect(inEnglish(() => BANDS[4].words)).toBe('over 90 % seen');
});

test('no word of a stage plot is cut for want of room', () => {
  const document = aDocument(aPlayer({ name: 'Viola' }), aStand({ x: 900, y: 900 }));
  const texts = textsIn(sheetsOf(plotRequest(document)).sheets[0]?.children ?? []).map(({ text }) => text);
  expect(texts).toContain('Veranstalter oder Ort');
  expect(texts.filter((text) => text.endsWith('…'))).toEqual([]);
});
