import { readFileSync } from 'node:fs';
import { afterEach, expect, test } from 'vitest';
import { checkSetup } from '#model/checks/check-setup.ts';
import { concertOf, setupsOf, type Document } from '#model/document/document.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { DEMO_IN_GERMAN } from '#model/file-format/demo-in-german.ts';
import { readDemo } from '#model/file-format/demo.ts';

const text = readFileSync(new URL('../../../assets/demo-concert.standlines', import.meta.url), 'utf8');

/** Titles and the names of people, of the house and of an instrument that is called so everywhere. */
const STAYING = [
  'Hedge and Harbour: an evening for three',
  'Hedgerow Dances',
  'Hedgerow Dances, opened out',
  'I. Halvorsen',
  'Lock Gates',
  'Low Water',
  'M. Ferrant',
  'Marimba',
  'P. Okonjo',
  'Viola',
];

function demo(locale: string): Document {
  const reading = readDemo(text, locale);
  if (!reading.ok) throw new Error(reading.problem.message);
  return reading.document;
}

afterEach(speakEnglish);

test('it is in feet where feet are usual', () => {
  expect(concertOf(demo('en-US')).units).toBe('imperial');
  expect(concertOf(demo('en-GB')).units).toBe('metric');
});

test('it has German names in a German window, and nothing else is changed', () => {
  const english = demo('de-DE');
  speakFrom('de', {});
  const german = demo('de-DE');
  const names = [...german.records.values()].map(({ name }) => name);
  expect(names).toContain('Klarinette');
  expect(names).toContain('Vorderes Parkett');
  const inEnglish = JSON.stringify([...english.records.values()]);
  const translated = Object.entries(DEMO_IN_GERMAN)
    .sort(([a], [b]) => b.length - a.length)
    .reduce((all, [from, to]) => all.replaceAll(JSON.stringify(from), JSON.stringify(to)), inEnglish);
  // As a truth value: nobody reads the difference of two whole concerts.
  expect(JSON.stringify([...german.records.values()]) === translated).toBe(true);
});

test('every name of it is in German, or stays with a reason', () => {
  const document = demo('de-DE');
  const said = [...document.records.values()].flatMap((record) => [
    record.name,
    ...(record.kind === 'setup' ? [record.notes] : []),
    ...(record.kind === 'score'
      ? record.music.parts.flatMap(({ name, instruments }) => [name, ...instruments.map((each) => each.name)])
      : []),
    ...(record.kind === 'concert' ? record.contacts.flatMap(({ name, role }) => [name, role]) : []),
  ]);
  const known = new Set([...Object.keys(DEMO_IN_GERMAN), ...STAYING, '']);
  expect(said.filter((each) => !known.has(each))).toEqual([]);
  expect(Object.keys(DEMO_IN_GERMAN).filter((each) => !said.includes(each))).toEqual([]);
});

test('its findings are the same in both languages', () => {
  const findings = (document: Document) =>
    setupsOf(document).map(({ id }) => checkSetup(document, id).findings.map(({ code }) => code));
  const inEnglish = findings(demo('de-DE'));
  speakFrom('de', {});
  expect(findings(demo('de-DE'))).toEqual(inEnglish);
});
