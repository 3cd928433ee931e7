/** Against Unicode's own data: cldr-core, supplemental/measurementData.json. */

import measurementData from 'cldr-core/supplemental/measurementData.json' with { type: 'json' };
import territoryInfo from 'cldr-core/supplemental/territoryInfo.json' with { type: 'json' };
import { expect, test } from 'vitest';
import { dayIn, paperIn, unitsIn } from '#model/document/regions.ts';

const { measurementSystem, paperSize } = measurementData.supplemental.measurementData;
const regions = Object.keys(territoryInfo.supplemental.territoryInfo).filter((region) =>
  /^[A-Z]{2}$/.test(region),
);

const among = (table: object, region: string): string =>
  new Map<string, string>(Object.entries(table)).get(region) ?? new Map(Object.entries(table)).get('001');

test('every region has the units and the paper that are usual there', () => {
  expect(regions.length).toBeGreaterThan(200);
  for (const region of regions) {
    const tag = `en-${region}`;
    expect([region, unitsIn(tag)]).toEqual([
      region,
      among(measurementSystem, region) === 'US' ? 'imperial' : 'metric',
    ]);
    expect([region, paperIn(tag)]).toEqual([
      region,
      among(paperSize, region) === 'US-Letter' ? 'Letter' : 'A4',
    ]);
  }
});

test.each(['en', 'de', '', 'not a tag', 'es-419', 'x-private'])('"%s" names no such region', (tag) => {
  expect([unitsIn(tag), paperIn(tag)]).toEqual(['metric', 'A4']);
});

test.each(['es-Latn-US', 'en-us', 'en-US-u-hc-h12'])('"%s" names one', (tag) => {
  expect([unitsIn(tag), paperIn(tag)]).toEqual(['imperial', 'Letter']);
});

// Unicode CLDR 48, dates of de, en-GB and en-US (main/*/ca-gregorian.json, dateFormats medium and long), and what is usual there.
test.each([
  ['de-DE', '26.11.2026', '26.11.2026'],
  ['en-GB', '26/11/2026', '26 November 2026'],
  ['en-US', 'Nov 26, 2026', 'Nov 26, 2026'],
])('a day in %s', (tag, short, long) => {
  expect([dayIn(tag, '2026-11-26', 'short'), dayIn(tag, ' 2026-11-26 ', 'long')]).toEqual([short, long]);
});

test.each([
  '',
  'in the spring',
  '2026-02-31',
  '2026-13-01',
  '26.11.2026',
  '0050-01-01',
  '2026-11-26 at 19:30',
])('"%s" is no such day and stays as it is', (words) => {
  for (const tag of ['de-DE', 'en-GB', 'en-US']) expect(dayIn(tag, words, 'short')).toBe(words);
});
