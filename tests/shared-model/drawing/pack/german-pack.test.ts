/** A whole pack in German, whose words are longer: nothing is set smaller for it, written over, or cut. */

import { afterEach, describe, expect, it } from 'vitest';
import type { Document } from '#model/document/document.ts';
import { countPack, packSheets } from '#model/drawing/pack/pack.ts';
import type { PaperName } from '#model/drawing/papers.ts';
import type { Sheet } from '#model/drawing/primitives.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { german } from '#model/words/german/index.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { overlappingTexts, roughMeasure, textsIn } from '../drawings.ts';
import { sixty } from '../sixty-items.ts';
import { EVENING, packOf } from './pack-request.ts';

afterEach(speakEnglish);

function sheetsOf(document: Document, paper: PaperName): Sheet[] {
  const request = packOf(document, { paper });
  const steps = countPack(request);
  for (;;) {
    const step = steps.next();
    if (step.done) return [...packSheets(request, step.value)].map(({ sheet }) => sheet);
  }
}

/** What is left of it, after its sheet. */
const cutIn = (sheets: readonly Sheet[]): string[] =>
  sheets.flatMap(({ title, children }) =>
    textsIn(children).flatMap(({ text }) => (text.includes('…') ? [`${title}: ${text}`] : [])),
  );

describe.each([
  ['two pieces in a house', EVENING],
  ['sixty things', sixty],
] as const)('a German pack of %s', (_, document) => {
  it.each(['A4', 'Letter'] as const)(
    'has on %s no text under 7 pt, none on another and none cut',
    (paper) => {
      speakFrom('de', german);
      const sheets = sheetsOf(document, paper);
      expect(sheets.some(({ title }) => title.includes('Bühnenplan'))).toBe(true);
      for (const { children, title } of sheets) {
        for (const { size } of textsIn(children)) expect(size * (72 / 25.4)).toBeGreaterThanOrEqual(7);
        expect(overlappingTexts(children, roughMeasure), title).toEqual([]);
      }
      expect(cutIn(sheets)).toEqual([]);
    },
    120_000,
  );
});
