import { describe, expect, it } from 'vitest';
import type { Document } from '#model/document/document.ts';
import { plotSheets, type PlotOptions } from '#model/drawing/plot-sheet.ts';
import { ISO_SCALES, offeredScales } from '#model/drawing/scales.ts';
import {
  aConcert,
  aDocument,
  anInstrument,
  aPlatform,
  aPlayer,
  aSetup,
  aStand,
  SIDE,
} from '../../helpers/build.ts';
import { boxOf, overlappingTexts, roughMeasure, textsIn } from './drawings.ts';
import { inventedReport, plotRequest, sheetsOf } from './plot-request.ts';
import { sixty } from './sixty-items.ts';

const trio: Document = aDocument(
  aConcert({ name: 'Evening', venue: 'Lindenhof', date: '2027-03-14', revision: 'B', author: 'M. Okafor' }),
  aPlayer({ id: 'player-1', name: 'Clarinet', x: -900, chair: { model: 'orchestra-chair', height: 460 } }),
  aPlayer({ id: 'player-2', name: 'Viola', x: 900 }),
  anInstrument(),
  aStand({ id: 'stand-3', x: 820, y: 1450, facing: -20, lip: 980, sides: [{ ...SIDE, turned: true }] }),
);

const options = (fields: Partial<PlotOptions>): PlotOptions => ({
  paper: 'A4',
  orientation: 'auto',
  scale: null,
  ...fields,
});

function allTexts(document: Document): string[] {
  const { sheets } = sheetsOf(plotRequest(document, { report: inventedReport(document) }));
  return sheets.flatMap((sheet) => textsIn(sheet.children).map(({ text }) => text));
}

describe('plotSheets', () => {
  it('picks the largest standard scale that fits, of ISO 5455 only', () => {
    for (const paper of ['A4', 'A3', 'Letter', 'Tabloid'] as const) {
      const { choice } = sheetsOf(plotRequest(trio, { options: options({ paper }) }));
      expect(ISO_SCALES).toContain(choice.scale);
      const larger = ISO_SCALES[ISO_SCALES.indexOf(choice.scale ?? 0) - 1];
      if (larger === undefined) throw new Error('the platform should not fit at 1:10');
      expect(plotSheets(plotRequest(trio, { options: options({ paper, scale: larger }) })).ok).toBe(false);
    }
  });

  it('refuses a scale that does not fit and says what would', () => {
    const result = plotSheets(plotRequest(trio, { options: options({ scale: 20 }) }));
    if (result.ok) throw new Error('8 m at 1:20 are 400 mm and cannot fit on A4');
    expect(result.code).toBe('plot.doesNotFit');
    expect(result.message).toContain('1:50 on A4');
    for (const { paper, orientation, scale } of result.fits) {
      expect(plotSheets(plotRequest(trio, { options: { paper, orientation, scale } })).ok).toBe(true);
    }
  });

  it('refuses a ratio that is no standard scale, and prints 1:25 only when asked, with a remark', () => {
    const odd = plotSheets(plotRequest(trio, { options: options({ scale: 37 }) }));
    expect(odd).toMatchObject({ ok: false, code: 'plot.unknownScale' });
    const small = aDocument(
      aPlatform({
        outline: [
          { x: -1500, y: 0 },
          { x: 1500, y: 0 },
          { x: 1500, y: 2000 },
          { x: -1500, y: 2000 },
        ],
      }),
    );
    const { sheets } = sheetsOf(plotRequest(small, { options: options({ paper: 'A3', scale: 25 }) }));
    const texts = textsIn(sheets[0]?.children ?? []).map(({ text }) => text);
    expect(texts.some((text) => text.includes('not an ISO 5455 scale'))).toBe(true);
  });

  it('refuses a platform that fits at no scale', () => {
    const vast = aDocument(
      aPlatform({
        outline: [
          { x: -1e6, y: 0 },
          { x: 1e6, y: 0 },
          { x: 1e6, y: 1e6 },
          { x: -1e6, y: 1e6 },
        ],
      }),
    );
    expect(plotSheets(plotRequest(vast))).toMatchObject({ ok: false, code: 'plot.doesNotFit', fits: [] });
  });

  it('fills the title block with the fields of ISO 7200 that it knows', () => {
    const texts = allTexts(trio);
    for (const words of [
      'Lindenhof',
      'Evening',
      'Trio',
      '14/03/2027',
      '20/02/2027',
      'B',
      'M. Okafor',
      'SCALE 1:50',
      'mm',
      'A4',
    ]) {
      expect(texts).toContain(words);
    }
    expect(texts.some((text) => /^1 of \d+$/.test(text))).toBe(true);
  });

  it('lists every mark in the words of the crew', () => {
    const texts = allTexts(trio);
    for (const words of ['S1', '820 SL', '1450 US', '20° towards SR', '980', '65°'])
      expect(texts).toContain(words);
    expect(texts.join(' ')).toContain('Orchestral stand');
  });

  it('prints figures, findings with advice, worst first, and the cautions', () => {
    const texts = allTexts(trio);
    expect(texts).toContain('62 %');
    expect(texts.indexOf('Fails')).toBeLessThan(texts.indexOf('Caution'));
    expect(texts.join(' ')).toContain('Lower the desk by 85 mm.');
    expect(texts.join(' ')).toContain('Local codes, the venue and licensed practice');
  });

  it('works in feet and inches', () => {
    const { choice, sheets } = sheetsOf(
      plotRequest(trio, { units: 'imperial', options: options({ paper: 'Letter' }) }),
    );
    expect(offeredScales('imperial').slice(0, -1)).toContain(choice.scale);
    const texts = sheets.flatMap((sheet) => textsIn(sheet.children).map(({ text }) => text));
    expect(texts.some((text) => text.startsWith(`SCALE 1:${choice.scale} (`))).toBe(true);
    expect(texts.some((text) => /^\d+'-\d+.* SL$/.test(text))).toBe(true);
  });

  it('cuts no title of sensible length: it shrinks or goes on a second line', () => {
    const name = 'Hedge and Harbour: an evening for three players and a quantity of percussion';
    const document = aDocument(
      aConcert({ name }),
      aSetup({ name: 'Serenade in B flat for a wind octet and bass' }),
    );
    for (const paper of ['A4', 'Letter'] as const) {
      for (const sheet of sheetsOf(plotRequest(document, { options: options({ paper }) })).sheets) {
        const texts = textsIn(sheet.children).map(({ text }) => text);
        expect(texts.filter((text) => text.includes('…'))).toEqual([]);
        expect(texts.join(' ')).toContain(name);
      }
    }
  });

  it('picks by size alone: what fits at a scale on one sheet of its size is not drawn smaller there', () => {
    for (const units of ['metric', 'imperial'] as const) {
      for (const paper of ['A4', 'A3', 'Letter', 'Tabloid'] as const) {
        const { choice } = sheetsOf(plotRequest(trio, { units, options: options({ paper }) }));
        const scales = offeredScales(units);
        const larger = scales.slice(0, scales.indexOf(choice.scale ?? 0));
        for (const scale of larger)
          expect(plotSheets(plotRequest(trio, { units, options: options({ paper, scale }) })).ok).toBe(false);
      }
    }
  });

  it('gives an imperial concert imperial scales on every sheet', () => {
    for (const document of [trio, sixty]) {
      const { sheets } = sheetsOf(
        plotRequest(document, { units: 'imperial', report: inventedReport(document) }),
      );
      const scales = sheets.flatMap((sheet) =>
        textsIn(sheet.children).filter(({ text }) => text.startsWith('SCALE ')),
      );
      expect(scales.length).toBeGreaterThan(2);
      for (const { text } of scales) expect(text).toMatch(/= 1'-0"\)$/);
    }
  });

  it('throws for a setup that is not there: that is a bug of the caller', () => {
    const request = plotRequest(trio);
    expect(() => plotSheets({ ...request, setup: 'nowhere' as typeof request.setup })).toThrow('nowhere');
  });
});

describe.each([
  ['the trio on A4', trio, options({})],
  ['the trio on Letter, upright', trio, options({ paper: 'Letter', orientation: 'portrait' })],
  ['sixty items on A4', sixty, options({})],
  ['sixty items on A3', sixty, options({ paper: 'A3' })],
] as const)('every sheet of %s', (_, document, wanted) => {
  const { sheets, notes } = sheetsOf(
    plotRequest(document, { options: wanted, report: inventedReport(document) }),
  );

  it('has no text under 7 pt', () => {
    for (const sheet of sheets) {
      for (const { size } of textsIn(sheet.children)) expect((size * 72) / 25.4).toBeGreaterThanOrEqual(7);
    }
  });

  it('has no two texts on each other', () => {
    for (const sheet of sheets)
      expect(overlappingTexts(sheet.children, roughMeasure), sheet.title).toEqual([]);
  });

  it('keeps inside its frame', () => {
    for (const sheet of sheets) {
      const box = boxOf(sheet.children);
      expect(box.x).toBeGreaterThan(19);
      expect(box.y).toBeGreaterThan(9);
      expect(box.x + box.width).toBeLessThan(sheet.width - 9);
      expect(box.y + box.height).toBeLessThan(sheet.height - 9);
    }
  });

  it('leaves nothing out', () => {
    expect(notes).toEqual([]);
  });
});

describe('hostile text', () => {
  const nasty = `\u202Eevil\n\t\u0000 ${'long'.repeat(2500)} <&"> \ud800 中文`;
  const document = aDocument(
    aConcert({ name: nasty, venue: nasty, author: nasty, revision: nasty, date: nasty }),
    aSetup({ name: nasty, notes: nasty.repeat(3) }),
    aPlayer({ name: nasty }),
    aStand({ name: nasty }),
  );

  it('stays in its place and in the frame', () => {
    const { sheets } = sheetsOf(plotRequest(document, { report: inventedReport(document) }));
    for (const sheet of sheets) {
      expect(overlappingTexts(sheet.children, roughMeasure)).toEqual([]);
      const box = boxOf(sheet.children);
      expect(box.x + box.width).toBeLessThan(sheet.width - 9);
      for (const { text } of textsIn(sheet.children)) expect(text).not.toMatch(/[\p{Cc}\p{Cf}]/u);
    }
  });
});
