import { beforeAll, describe, expect, it } from 'vitest';
import type { Document } from '#model/document/document.ts';
import type { PlotOptions } from '#model/drawing/plot-sheet.ts';
import type { Units } from '#model/document/measures.ts';
import { createMeasure } from '../../../electron/services/fonts.ts';
import { paintPdf } from '../../../electron/services/pdf-painter.ts';
import {
  aConcert,
  aDocument,
  anInstrument,
  aPlatform,
  aPlayer,
  aRiser,
  aSeatBlock,
  aStand,
} from '../../helpers/build.ts';
import { inventedReport, plotRequest, sheetsOf } from '../../shared-model/drawing/plot-request.ts';
import { openPdf, pageTexts, pathBoxes, poppler, type PageBox, type PageText } from './pdf-reading.ts';

const POINTS_PER_METRE = (1000 * 72) / 25.4;

interface Print {
  readonly bytes: Uint8Array;
  readonly texts: PageText[][];
  readonly paths: PageBox[];
}

async function print(
  document: Document,
  options: Partial<PlotOptions> = {},
  units: Units = 'metric',
): Promise<Print> {
  const request = plotRequest(document, {
    measure: createMeasure(),
    report: inventedReport(document),
    options: { paper: 'A3', orientation: 'auto', scale: null, ...options },
    units,
  });
  const meta = { title: 'Plot', author: '', created: new Date(0), language: 'en' };
  const { bytes } = await paintPdf(sheetsOf(request).sheets, meta);
  const pdf = await openPdf(bytes);
  const texts: PageText[][] = [];
  for (let page = 1; page <= pdf.numPages; page++) texts.push(await pageTexts(await pdf.getPage(page)));
  return { bytes, texts, paths: await pathBoxes(await pdf.getPage(1)) };
}

/** 3 m square, so that it fits at 1:20 on A3. */
const small = aDocument(
  aPlatform({
    outline: [
      { x: -1500, y: 0 },
      { x: 1500, y: 0 },
      { x: 1500, y: 3000 },
      { x: -1500, y: 3000 },
    ],
  }),
  aRiser({ x: 0, y: 1500, width: 1219.2, depth: 2438.4 }),
);

const hasWidth = (paths: readonly PageBox[], width: number, tolerance: number) =>
  paths.some((path) => Math.abs(path.width - width) < tolerance);

describe('the scale of a print, read back from the PDF', () => {
  it.each([
    // Arithmetic, 72 points to an inch of 25.4 mm: 1 m at 1:50 is 20 mm = 56.693 pt, at 1:20 50 mm = 141.732 pt.
    [50, 56.693],
    [20, 141.732],
  ])('at 1:%s has a metre of the scale bar of %s pt', async (scale, points) => {
    const { paths } = await print(small, { scale });
    expect(hasWidth(paths, points, 0.01)).toBe(true);
    expect(points).toBeCloseTo(POINTS_PER_METRE / scale, 3);
  });

  it.each([
    // Auburn University drafting notes: a 4 by 8 foot platform draws 1 by 2 in at 1/4" = 1'-0" and 2 by 4 in at 1/2".
    [48, 72, 144],
    [24, 144, 288],
  ])('at 1:%s draws a 4 by 8 foot riser %s by %s pt', async (scale, width, height) => {
    const { paths } = await print(small, { scale, paper: 'Tabloid' }, 'imperial');
    expect(
      paths.some((path) => Math.abs(path.width - width) < 0.05 && Math.abs(path.height - height) < 0.05),
    ).toBe(true);
  });

  it.each([
    [50, 'metric'],
    [100, 'metric'],
    [48, 'imperial'],
  ] as const)('at 1:%s (%s) has a bar as long as its figures say (F4)', async (scale, units) => {
    const { paths, texts } = await print(small, { scale }, units);
    // The blocks of the bar are the widest of the paths 2.2 mm high, and what stands in one row with it.
    const flat = paths.filter((path) => Math.abs(path.height - (2.2 * 72) / 25.4) < 0.01);
    const widest = flat.reduce((a, b) => (b.width > a.width ? b : a));
    const blocks = flat.filter((path) => Math.abs(path.y - widest.y) < 0.01);
    expect(blocks.length).toBeGreaterThan(1);
    // Its figures stand just above it; the last one has the unit.
    const last = texts[0]
      ?.filter((each) => each.y > widest.y && each.y < widest.y + 15)
      .map((each) => /^(\d+) (m|ft)$/.exec(each.text))
      .find((match) => match !== null);
    if (!last) throw new Error('the scale bar has no last figure');
    const labelled = Number(last[1]) * (last[2] === 'm' ? 1000 : 304.8);
    const left = Math.min(...blocks.map((path) => path.x));
    const right = Math.max(...blocks.map((path) => path.x + path.width));
    const printed = ((right - left) / (72 / 25.4)) * scale;
    expect(Math.abs(printed / labelled - 1)).toBeLessThan(0.001);
  });
});

describe('a plot in print', () => {
  const trio = aDocument(
    aConcert({ name: 'Evening', venue: 'Lindenhof' }),
    aPlayer({ id: 'player-1', name: 'Clarinet', x: -1500, y: 1000 }),
    aPlayer({ id: 'player-2', name: 'Viola', x: 1500, y: 1000 }),
    anInstrument(),
    aStand({ x: 820, y: 1450, lip: 980 }),
  );
  let printed: Print;
  beforeAll(async () => {
    printed = await print(trio);
  });

  it('has the player at stage left on the right-hand side', () => {
    const spot = (name: string) => printed.texts[0]?.find((each) => each.text === name)?.x ?? NaN;
    expect(spot('Viola')).toBeGreaterThan(spot('Clarinet'));
    expect(spot('STAGE LEFT')).toBeGreaterThan(spot('STAGE RIGHT'));
  });

  it('gives the same words to another reader', () => {
    const read = poppler('pdftotext', printed.bytes, '-layout');
    if (read === null) return;
    for (const words of ['820 SL', '1450 US', 'SCALE 1:50', 'Lindenhof', 'Clarinet', 'HOUSE', 'Cautions']) {
      expect(read).toContain(words);
    }
  });

  it('has only embedded fonts', () => {
    const fonts = poppler('pdffonts', printed.bytes);
    if (fonts === null) return;
    for (const row of fonts.trim().split('\n').slice(2)) expect(row).toMatch(/\byes\s+yes\s+yes\b/);
  });

  it('is vector throughout: no picture in it', async () => {
    const text = Buffer.from(printed.bytes).toString('latin1');
    expect(text).not.toContain('/Subtype /Image');
  });
});

describe('sixty items in print', () => {
  const full = aDocument(
    aPlatform({
      outline: [
        { x: -7000, y: 0 },
        { x: 7000, y: 0 },
        { x: 7000, y: 9000 },
        { x: -7000, y: 9000 },
      ],
    }),
    aSeatBlock({ rows: 14, seatsPerRow: 22 }),
    ...Array.from({ length: 30 }, (_, index) => {
      const [x, y] = [((index % 10) - 4.5) * 1250, 1200 + Math.floor(index / 10) * 2400];
      const name = `Player with a name ${index + 1}`;
      return [
        aPlayer({ id: `player-${index + 1}`, name, x, y: y + 700 }),
        aStand({ id: `stand-${index + 1}`, x, y }),
      ];
    }).flat(),
  );

  it.each(['A4', 'A3'] as const)(
    'on %s has no text under 7 pt and no two texts on each other',
    async (paper) => {
      const { texts } = await print(full, { paper });
      for (const page of texts) {
        page.forEach((a, index) => {
          expect(a.size).toBeGreaterThanOrEqual(7);
          for (const b of page.slice(index + 1)) {
            const width = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
            const height = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
            expect(Math.min(width, height), `${a.text} | ${b.text}`).toBeLessThan(0.2);
          }
        });
      }
    },
  );
});

describe('hostile text in print', () => {
  it('survives, in bounded time, with a file that both readers open', async () => {
    const nasty = `\u202Eevil\n\t\u0000${'long'.repeat(2500)} <&"> \ud800 中文 שלום`;
    const document = aDocument(
      aConcert({ name: nasty, venue: nasty }),
      aPlayer({ name: nasty }),
      aStand({ name: nasty }),
    );
    const { bytes, texts } = await print(document);
    expect(texts.length).toBeGreaterThan(1);
    for (const each of texts.flat()) expect(each.text).not.toMatch(/[\u202a-\u202e]/);
    const info = poppler('pdfinfo', bytes);
    if (info !== null) expect(info).toMatch(/Pages:\s+\d/);
  });
});
