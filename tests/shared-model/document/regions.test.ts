/** Against Unicode's own data: cldr-core, supplemental/measurementData.json. */

import measurementData from 'cldr-core/supplemental/measurementData.json' with { type: 'json' };
import territoryInfo from 'cldr-core/supplemental/territoryInfo.json' with { type: 'json' };
import { expect, test } from 'vitest';
import { paperIn, unitsIn } from '#model/document/regions.ts';

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
