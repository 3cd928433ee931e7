/** A plot of some of its sheets: those and no others, numbered among themselves, none sending to a sheet that is not there. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PLOT_PARTS, plotPartsOf, plotSheets, type PlotPart } from '#model/drawing/plot-sheet.ts';
import { aDocument, aPlatform, aPlayer, aStand, SETUP } from '../../helpers/build.ts';
import { textsIn } from './drawings.ts';
import { inventedReport, plotRequest, sheetsOf } from './plot-request.ts';

const document = aDocument(aPlayer(), aStand());
const report = inventedReport(document);

const asked = (parts?: readonly PlotPart[]) =>
  plotRequest(document, {
    report,
    options: { paper: 'A4', orientation: 'auto', scale: null, ...(parts ? { parts } : {}) },
  });

/** A heading of each part. */
const HEADINGS: Readonly<Record<PlotPart, string>> = {
  plot: 'Stage plot',
  seats: 'Seat map',
  section: 'Sections on the centre line',
  marks: 'Marks',
  inventory: 'Inventory',
  figures: 'Sightlines',
  findings: 'Findings',
  cautions: 'Cautions',
};

const some = fc.subarray([...PLOT_PARTS], { minLength: 1 });

describe('the parts of a plot', () => {
  it('are printed when they are asked for, on the sheets that are named', () => {
    fc.assert(
      fc.property(some, (parts) => {
        const { sheets, places, choice } = sheetsOf(asked(parts));
        const texts = sheets.map(({ children }) => textsIn(children).map(({ text }) => text));
        for (const part of PLOT_PARTS) {
          const on = texts.flatMap((all, index) => (all.includes(HEADINGS[part]) ? [index + 1] : []));
          expect(on.length > 0, part).toBe(parts.includes(part));
          expect(places.get(part), part).toEqual(expect.arrayContaining(on));
        }
        expect(new Set([...places.values()].flat()).size).toBe(sheets.length);
        expect(choice.scale !== null).toBe(parts.includes('plot'));
        const numbers = texts.flat().filter((text) => /^\d+ of \d+$/.test(text));
        expect(numbers).toEqual(sheets.map((_, index) => `${index + 1} of ${sheets.length}`));
      }),
      { numRuns: 25 },
    );
  });

  it('are all of them unless some are asked for', () => {
    expect(sheetsOf(asked()).sheets).toEqual(sheetsOf(asked(PLOT_PARTS)).sheets);
  });

  it('send to no sheet that is not printed', () => {
    const words = textsIn(sheetsOf(asked(['plot'])).sheets[0]?.children ?? [])
      .map(({ text }) => text)
      .join(' ');
    expect(words).not.toMatch(/sheet \d/);
  });

  it('can be printed without a plan that fits on no paper', () => {
    const side = 1e6;
    const outline = [
      { x: -side, y: 0 },
      { x: side, y: 0 },
      { x: side, y: side },
      { x: -side, y: side },
    ];
    const vast = aDocument(aPlatform({ outline }), aStand());
    const options = { paper: 'A4', orientation: 'auto', scale: null, parts: ['marks'] } as const;
    expect(sheetsOf(plotRequest(vast, { options })).sheets).toHaveLength(1);
  });

  it('are refused where none of them has anything to print', () => {
    const empty = aDocument();
    const options = { paper: 'A4', orientation: 'auto', scale: null, parts: ['marks'] } as const;
    expect(plotPartsOf(empty, SETUP)).not.toContain('marks');
    expect(plotSheets(plotRequest(empty, { options }))).toMatchObject({
      ok: false,
      code: 'plot.nothingToPrint',
    });
  });
});
