/** The pages about the checks in German: the same pages, figures and sources, and no English left in them. */

import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { checkPages } from '#model/checks/about/about.ts';
import type { AboutPage } from '#model/checks/about/check-page.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';

const ENGLISH = checkPages('metric');

beforeEach(() => speakFrom('de', german));
afterEach(speakEnglish);

/** All of a page that is the same in every language. */
function structure({ id, verdicts, figures, settings, computes, unknown, caution, related }: AboutPage) {
  return {
    id,
    verdicts: verdicts.map(({ code, severity }) => [code, severity]),
    figures: figures.map(({ value, source }) => [numbersIn(value), source.standing]),
    settings: settings.map((setting) => ({ ...setting, what: '' })),
    counts: [computes.length, unknown.length, caution === null],
    related,
  };
}

/** "7.5" and "7,5" are one number. */
function numbersIn(words: string): string[] {
  return (words.match(/\d+(?:[.,]\d+)?/g) ?? []).map((number) => number.replace(',', '.'));
}

function proseOf({
  title,
  asks,
  computes,
  verdicts,
  figures,
  settings,
  unknown,
  caution,
}: AboutPage): string[] {
  return [
    title,
    asks,
    ...computes,
    ...verdicts.map(({ when }) => when),
    ...figures.map(({ what }) => what),
    ...settings.map(({ what }) => what),
    ...unknown,
    caution ?? '',
  ].filter(Boolean);
}

/** Words of English that German does not have. */
const ENGLISH_WORDS = /\b(the|of|and|from|with|what|by|as|or|to|is|for|memory|quoted|table)\b/;

describe.each(ENGLISH.map((english, index) => [english.id, english, index] as const))(
  '%s',
  (_, english, index) => {
    const page = (): AboutPage => {
      const found = checkPages('metric')[index];
      if (!found) throw new Error('the page is missing');
      return found;
    };

    test('has the same verdicts, figures and links', () => {
      expect(structure(page())).toEqual(structure(english));
    });

    test('says everything in German', () => {
      const prose = proseOf(page());
      expect(prose).toHaveLength(proseOf(english).length);
      for (const words of prose) expect(proseOf(english)).not.toContain(words);
      for (const words of [...prose, ...page().figures.map(({ value }) => value)])
        expect(words).not.toMatch(ENGLISH_WORDS);
    });

    test('has numbers with a comma', () => {
      for (const words of [...proseOf(page()), ...page().figures.map(({ value }) => value)])
        expect(words).not.toMatch(/\d\.\d/);
    });
  },
);

test('titles of sources stay, and what is said about them does not', () => {
  const sources = new Map(
    checkPages('metric').flatMap(({ figures }, page) =>
      figures.map(({ source }, figure) => [source.cited, ENGLISH[page]?.figures[figure]?.source.standing]),
    ),
  );
  expect(sources.get('TxDOT Roadway Design Manual §19.2.1.3')).toBe('published');
  expect(sources.get('ADA/ABA 403.5.1')).toBe('published');
  expect(sources.get('MTM-1, aus dem Gedächtnis')).toBe('memory');
  expect(sources.get('übliche Praxis, ohne Quelle')).toBe('practice');
  expect(sources.get('eigene Wahl dieses Programms, ohne Quelle')).toBe('own');
});

test('a figure stands where German wants it', () => {
  const pages = JSON.stringify(checkPages('metric'));
  expect(pages).toContain('815 mm auf höchstens 610 mm, zwischen solchen Stücken mindestens 1220 mm');
  expect(pages).toContain('0,82 bis 1,31 m/s');
  expect(pages).toContain('1,5-fach');
});
