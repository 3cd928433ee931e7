/** What the pack says of the evening agrees with the changeovers. */

import { describe, expect, it } from 'vitest';
import { inSetup, programmeOf, type Document } from '#model/document/document.ts';
import type { TextPrimitive } from '#model/drawing/primitives.ts';
import {
  chosenEntries,
  countPack,
  packEntries,
  packSheets,
  unknownSheetWords,
  type CountedPack,
  type PackRequest,
} from '#model/drawing/pack/pack.ts';
import { changeover } from '#model/programme/changeover.ts';
import { partsOf } from '#model/programme/programme.ts';
import { demoConcert } from '../../checks/remedies/demo.ts';
import { textsIn } from '../drawings.ts';
import { packOf } from './pack-request.ts';

const DEMO = demoConcert();

function counted(request: PackRequest): CountedPack {
  const steps = countPack(request);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

function textsOf(document: Document, words: readonly string[]): TextPrimitive[] {
  const chosen = chosenEntries(document, words);
  if ('unknown' in chosen) throw new Error(`no sheet ${chosen.unknown}`);
  const request: PackRequest = packOf(document, { entries: chosen.entries });
  return [...packSheets(request, counted(request))].flatMap(({ sheet }) => textsIn(sheet.children));
}

describe('the evening in the pack', () => {
  it('counts on the cover what stands after each changeover: chairs too, nothing of the building', () => {
    const counts = programmeOf(DEMO).map(({ id }) => {
      const { steps, stays } = changeover(DEMO, null, id);
      return steps.filter(({ to }) => to !== null).length + stays.length;
    });
    const shared = inSetup(DEMO, programmeOf(DEMO)[0]?.id ?? ('' as never), 'shape').filter(
      ({ setup, fixed }) => setup === null && !fixed,
    ).length;
    const texts = textsOf(DEMO, ['cover']).map(({ text }) => text);
    const at = texts.indexOf('Things set');
    expect(at).toBeGreaterThan(0);
    // Each row: number, piece, players, things; the time is left out where nobody gave it.
    const told = programmeOf(DEMO).map(({ name }) => {
      const row = texts.indexOf(name, at);
      return Number(texts[row + 2]);
    });
    expect(told).toEqual(counts.map((count) => count + shared));
  });

  it('has a sheet for each part of the evening, the first set-up and the last strike too', () => {
    const names = packEntries(DEMO)
      .filter(({ kind }) => kind === 'changeover')
      .map(({ name }) => name);
    expect(names).toHaveLength(partsOf(DEMO).length);
    expect(names).toEqual(['changeover-1', 'changeover-2', 'changeover-3', 'changeover-end']);
    const words = textsOf(DEMO, ['changeover-1', 'changeover-end'])
      .map(({ text }) => text)
      .join(' ');
    expect(words).toMatch(/First set-up: Lock Gates.*Last strike: Low Water/);
  });

  it('says to plan the turns first, and names what there is in groups', () => {
    const document = { records: new Map([...DEMO.records].filter(([, { kind }]) => kind !== 'pagePlan')) };
    expect(unknownSheetWords(document, 'cards')).toMatch(/no sheet "cards".*Plan the turns first/);
    const words = unknownSheetWords(DEMO, 'sketch');
    expect(words).toMatch(/It can have cover; plot-1 \.\.\. plot-3 \(\d+\);/);
    expect(words.length).toBeLessThan(600);
  });
});
