/** Seat map, its figures and the sections say whether heads count: one goes by the setting, the other does not. */

import { describe, expect, it } from 'vitest';
import { checkSetup } from '#model/checks/check-setup.ts';
import type { Document } from '#model/document/document.ts';
import { aConcert, aDocument, aSeatBlock, SETUP } from '../../helpers/build.ts';
import { textsIn } from './drawings.ts';
import { plotRequest, sheetsOf } from './plot-request.ts';
import { PLAYERS } from './section/section-request.ts';

/** A flat floor: heads in front hide much of whoever is on the platform. */
const house = (headsInFront: boolean): Document =>
  aDocument(aConcert({ headsInFront }), ...PLAYERS, aSeatBlock({ rows: 6, riser: 0 }));

function wordsOf(document: Document): {
  readonly map: string;
  readonly section: string;
  readonly all: string;
} {
  const { sheets } = sheetsOf(plotRequest(document, { report: checkSetup(document, SETUP) }));
  const words = (end: string): string =>
    sheets
      .filter(({ title }) => title.endsWith(end))
      .flatMap(({ children }) => textsIn(children).map(({ text }) => text))
      .join(' ');
  return { map: words('seat map'), section: words('sections'), all: words('') };
}

describe('a plot', () => {
  it('says on the seat map, over its figures and on the sections that heads count', () => {
    const { map, section, all } = wordsOf(house(true));
    expect(map).toContain('The heads of the people in front count.');
    expect(all.split('The heads of the people in front count.')).toHaveLength(3);
    expect(section).toContain('Here the heads of the rows in front count, as they do on the seat map.');
  });

  it('says that they do not where the concert does not count them, though the sections do', () => {
    const { map, section, all } = wordsOf(house(false));
    expect(map).toContain('The heads of the people in front do not count.');
    expect(all.split('The heads of the people in front do not count.')).toHaveLength(3);
    expect(section).toContain('count; on the seat map they do not.');
  });
});

describe('what is counted', () => {
  it('is as the sheets say: shares seen go by the setting', () => {
    const seen = (headsInFront: boolean): number =>
      checkSetup(house(headsInFront), SETUP).sight.figures.reduce((sum, { median }) => sum + median, 0);
    expect(seen(true)).toBeLessThan(seen(false));
  });
});
