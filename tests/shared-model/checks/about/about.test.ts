/** The pages about the checks: one for every code, with the figures that the checks compute with, and the sources named. */

import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkPages, pageOf, type CheckPageId } from '#model/checks/about/about.ts';
import type { AboutPage } from '#model/checks/about/check-page.ts';
import type { FindingCode, Severity } from '#model/checks/finding.ts';
import { checkSetup } from '#model/checks/check-setup.ts';
import { WALKING } from '#model/checks/reach/published.ts';
import { STAFF } from '#model/checks/reading/published.ts';
import { whoDecides } from '#model/checks/room/room-words.ts';
import { USUAL_LIMITS } from '#model/checks/sentence-parts.ts';
import { SETUP } from '../../../helpers/build.ts';
import { FAULTS, MORE_FAULTS } from '../faults.ts';

const PAGES = checkPages('metric');
const CODES = Object.keys(FAULTS) as FindingCode[];

const page = (id: CheckPageId): AboutPage => {
  const found = PAGES.find((one) => one.id === id);
  if (!found) throw new Error(`no page ${id}`);
  return found;
};

const wordsOf = ({
  title,
  asks,
  computes,
  verdicts,
  figures,
  settings,
  unknown,
  caution,
}: AboutPage): string[] => [
  title,
  asks,
  ...computes,
  ...verdicts.map(({ when }) => when),
  ...figures.flatMap(({ what, value, source }) => [what, value, source.cited]),
  ...settings.map(({ what }) => what),
  ...unknown,
  ...(caution === null ? [] : [caution]),
];

describe('every code has its page', () => {
  test.each(CODES)('%s', (code) => {
    expect(page(pageOf(code)).verdicts.map((verdict) => verdict.code)).toContain(code);
  });

  test('and a page speaks of no code that another page judges', () => {
    for (const { id, verdicts } of PAGES)
      for (const { code } of verdicts) expect([code, pageOf(code)]).toEqual([code, id]);
  });

  test('and names every gravity in which the code comes', () => {
    const told = new Set(
      PAGES.flatMap(({ verdicts }) => verdicts.map(({ code, severity }) => `${code} ${severity}`)),
    );
    const documents = [...Object.values(FAULTS).map(({ faulty }) => faulty), ...MORE_FAULTS];
    const seen = documents.flatMap((document) =>
      checkSetup(document, SETUP).findings.map(
        ({ code, severity }: { code: FindingCode; severity: Severity }) => `${code} ${severity}`,
      ),
    );
    expect(seen.length).toBeGreaterThan(CODES.length - 1);
    expect(seen.filter((one) => !told.has(one))).toEqual([]);
  });
});

test('page names differ, and every link leads to a page', () => {
  const ids = PAGES.map(({ id }) => id as string);
  expect(new Set(ids).size).toBe(ids.length);
  const others = ['changeover', 'sources'];
  for (const { id, related } of PAGES) {
    expect(related).not.toContain(id);
    for (const other of related) expect([...ids, ...others]).toContain(other);
  }
});

test.each(PAGES)('$id says what it computes and what it does not know', (one) => {
  expect(one.computes.length).toBeGreaterThan(0);
  expect(one.unknown.length).toBeGreaterThan(0);
  expect(one.asks.endsWith('?')).toBe(true);
  for (const words of wordsOf(one)) expect(words).not.toMatch(/NaN|undefined|Infinity|null/);
});

test('where people can be hurt, the page hands on to those who decide', () => {
  const dangerous = CODES.filter((code) =>
    /^room\.(offPlatform|edge|door|route|step|cable|cableRamp|noExit|noStepFreeExit|wheelchair|turning)/.test(
      code,
    ),
  );
  expect(dangerous.length).toBeGreaterThan(8);
  for (const code of dangerous) expect(page(pageOf(code)).caution).toContain(whoDecides());
});

test('no page says that a rule is kept', () => {
  for (const one of PAGES)
    for (const words of wordsOf(one))
      expect(words).not.toMatch(/compl(y|ies|iant|iance)|legal|approved|safe to/i);
});

test('figures are those of the checks', () => {
  const values = (id: CheckPageId) =>
    page(id)
      .figures.map(({ value }) => value)
      .join('; ');
  expect(values('edge')).toContain(`${USUAL_LIMITS.edgeDistance} mm`);
  expect(values('ways')).toContain(`${USUAL_LIMITS.routeWidth} mm`);
  expect(values('reading')).toContain(`${STAFF.least} mm, ${STAFF.good} mm, ${STAFF.most} mm`);
  expect(values('reach')).toContain(`${WALKING.slow} to ${WALKING.brisk} m/s`);
});

/** Source of each: check-values.md, as the constants say; typed here once more, so that a slip in either is seen. */
test('and those of the sources', () => {
  const values = PAGES.flatMap(({ figures }) => figures.map(({ value }) => value)).join('; ');
  // Bands of the study; MOLA 2017; NUREG-0700 11.3.1.2-2; ADA/ABA 403.5.1; NUREG-0700 table 11.4 (56 to 58 mm); CIE 190 degrees.
  for (const figure of [
    '25 %, 50 %, 75 %, 90 %',
    '7 mm, 7.5 mm, 8.5 mm',
    '15°, 35°, 60°',
    '815 mm over at most 610 mm, such pieces at least 1220 mm apart',
    '57 mm',
    '95° to one side',
  ])
    expect(values).toContain(figure);
  // Residual of arm length on stature, sexes weighted equally: 22.11 mm (ANSUR II, table 2.4 of check-values.md).
  expect(values).toContain('22 mm');
});

test('in feet and inches no length is left in millimetres but the staves', () => {
  const imperial = checkPages('imperial').flatMap(wordsOf).join('\n');
  const left = [...imperial.matchAll(/[\d.]+ mm/g)].map(([length]) => length);
  expect(new Set(left)).toEqual(new Set(['7 mm', '7.5 mm', '8.5 mm']));
  expect(imperial).toContain(`3'-0"`);
});

test('what nobody has looked up is never told as published', () => {
  for (const { figures } of PAGES)
    for (const { source } of figures) {
      if (/from memory/.test(source.cited)) expect(source.standing).toBe('memory');
      if (/no source/.test(source.cited)) expect(['practice', 'own']).toContain(source.standing);
      if (/quoted|as quoted/.test(source.cited)) expect(['quoted', 'published']).toContain(source.standing);
    }
});

const VALUES = new URL('../../../../../shared/design/check-values.md', import.meta.url);

test('published sources are cited as the list of check values gives them', () => {
  if (!existsSync(VALUES))
    return console.warn('the list of check values is not there: citations were not compared');
  const list = readFileSync(VALUES, 'utf8').replaceAll(/[*“”"]/g, '');
  const cited = PAGES.flatMap(({ figures }) => figures.map(({ source }) => source.cited)).join('\n');
  for (const name of [
    'NATICK/TR-15/007, Dec 2014',
    'MTM-1 Data Card (MTM Association e.V., 2019, SI)',
    'TxDOT Roadway Design Manual §19.2.1.3',
    'Murtagh et al., Sports Med 2020',
    'NUREG-0700 rev 3 table 11.4',
    'NUREG-0700 rev 3, 11.3.1.2-2 (citing MIL-STD-1472G)',
    'NUREG-0700 rev 2, 1.3.1-4',
    'CIE International Lighting Vocabulary',
    'ADA/ABA 403.5.1',
    'ADA/ABA 403.5.2',
    'ISO 9241-3',
  ]) {
    expect([name, cited.includes(name)]).toEqual([name, true]);
    expect([name, list.includes(name) || list.includes(name.replace('ADA/ABA ', 'ADA '))]).toEqual([
      name,
      true,
    ]);
  }
});
