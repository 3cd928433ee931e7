import { describe, expect, it } from 'vitest';
import type { Primitive, Sheet } from '#model/drawing/primitives.ts';
import { createMeasure } from '../../../electron/services/fonts.ts';
import { paintPdf, type PdfMeta } from '../../../electron/services/pdf-painter.ts';
import { openPdf, pageTexts, pathBoxes, poppler } from './pdf-reading.ts';

const META: PdfMeta = {
  title: 'Evening: stage plot',
  author: 'M. Okafor',
  created: new Date('2027-02-20T10:00:00Z'),
  language: 'en',
};

const sheet = (children: readonly Primitive[], width = 210, height = 297): Sheet => ({
  title: 'Plan',
  width,
  height,
  children,
});

const text = (words: string, fields: Partial<Extract<Primitive, { kind: 'text' }>> = {}): Primitive => ({
  kind: 'text',
  text: words,
  x: 50,
  y: 60,
  size: 5,
  weight: 'regular',
  anchor: 'start',
  colour: '#191d22',
  ...fields,
});

const POINTS = 72 / 25.4;

async function paintedPage(children: readonly Primitive[]) {
  const { bytes } = await paintPdf([sheet(children)], META);
  return (await openPdf(bytes)).getPage(1);
}

describe('paintPdf', () => {
  it.each([
    // ISO 216: A4 210 x 297 mm, A3 297 x 420 mm. Letter 8.5 x 11 in, Tabloid 11 x 17 in: ANSI Y14.1, from memory.
    ['A4', 210, 297, 595.276, 841.89],
    ['A3', 297, 420, 841.89, 1190.551],
    ['Letter', 215.9, 279.4, 612, 792],
    ['Tabloid', 279.4, 431.8, 792, 1224],
  ])('makes a %s page exactly as large as that', async (_, width, height, wide, high) => {
    const { bytes } = await paintPdf([sheet([], width, height)], META);
    const [, , right, top] = (await (await openPdf(bytes)).getPage(1)).view;
    expect(right).toBeCloseTo(wide, 2);
    expect(top).toBeCloseTo(high, 2);
    const info = poppler('pdfinfo', bytes);
    if (info === null) return;
    const [, w, h] = /Page size:\s+([\d.]+) x ([\d.]+) pts/.exec(info) ?? [];
    expect(Math.abs(Number(w) - wide)).toBeLessThan(0.01);
    expect(Math.abs(Number(h) - high)).toBeLessThan(0.01);
  });

  it('puts paths where the sheet has them', async () => {
    const path: Primitive = {
      kind: 'path',
      path: [['M', 10, 20], ['L', 30, 20], ['L', 30, 50], ['L', 10, 50], ['Z']],
      stroke: { colour: '#000000', width: 0.2, dash: [2, 1] },
    };
    const [box] = await pathBoxes(await paintedPage([path]));
    expect(box?.x).toBeCloseTo(10 * POINTS, 2);
    expect(box?.y).toBeCloseTo((297 - 50) * POINTS, 2);
    expect(box?.width).toBeCloseTo(20 * POINTS, 2);
    expect(box?.height).toBeCloseTo(30 * POINTS, 2);
  });

  it('sets text on its baseline, anchored and turned, as wide as it was measured', async () => {
    const measure = createMeasure();
    const words = 'Bass clarinet in B♭, AV';
    const page = await paintedPage([
      text(words, { anchor: 'end' }),
      text(words, { y: 100, turn: 90, weight: 'bold' }),
    ]);
    const texts = await pageTexts(page);
    const [level, upright] = [
      texts.filter((each) => each.height < 12),
      texts.filter((each) => each.height >= 12),
    ];
    const right = Math.max(...level.map((each) => each.x + each.width));
    const left = Math.min(...level.map((each) => each.x));
    expect(right).toBeCloseTo(50 * POINTS, 0);
    expect(right - left).toBeCloseTo(measure(words, 5, 'regular') * POINTS, 0);
    // Turned clockwise by 90 degrees the text runs down the page from its anchor.
    expect(Math.max(...upright.map((each) => each.y + each.height))).toBeCloseTo((297 - 100) * POINTS, 0);
  });

  it('embeds every font it uses', async () => {
    const { bytes } = await paintPdf(
      [sheet([text('Viola'), text('B♭'), text('Чайка', { weight: 'bold' })])],
      META,
    );
    const fonts = poppler('pdffonts', bytes);
    if (fonts === null) return;
    const rows = fonts.trim().split('\n').slice(2);
    expect(rows.length).toBe(3);
    // Columns: name, type, encoding, emb, sub, uni, object.
    for (const row of rows) expect(row).toMatch(/TrueType.*\byes\s+yes\s+yes\b/);
  });

  it('can be read back as text, foreign letters too', async () => {
    const { bytes } = await paintPdf([sheet([text('Dvořák, B♭, Чайка, Ωμέγα')])], META);
    const read = poppler('pdftotext', bytes);
    if (read === null) return;
    for (const words of ['Dvořák', '♭', 'Чайка', 'Ωμέγα']) expect(read).toContain(words);
  });

  it('reports characters that no font has, and prints boxes for them', async () => {
    const { bytes, missingGlyphs } = await paintPdf([sheet([text('中文中'), text('中')])], META);
    expect(missingGlyphs).toEqual(['中', '文']);
    const texts = await pageTexts(await (await openPdf(bytes)).getPage(1));
    expect(texts.map((each) => each.text).join('')).toBe('□□□□');
  });

  it('names title, language and maker, and is tagged with the words of its pictures', async () => {
    const figure: Primitive = { kind: 'group', description: 'Plan at 1:50', children: [text('P1')] };
    const cell: Primitive = { kind: 'group', role: 'cell', children: [text('820 SL', { y: 80 })] };
    const table: Primitive = {
      kind: 'group',
      role: 'table',
      children: [{ kind: 'group', role: 'row', children: [cell] }],
    };
    const { bytes } = await paintPdf([sheet([figure, table])], META);
    const document = await openPdf(bytes);
    const { info } = await document.getMetadata();
    expect(info).toMatchObject({
      Title: META.title,
      Author: META.author,
      Language: 'en',
      PDFFormatVersion: '1.7',
    });
    expect(await document.getMarkInfo()).toMatchObject({ Marked: true });
    const tree = JSON.stringify(await (await document.getPage(1)).getStructTree());
    expect(tree).toContain('"role":"Figure"');
    expect(tree).toContain('"alt":"Plan at 1:50"');
    for (const role of ['Table', 'TR', 'TD']) expect(tree).toContain(`"role":"${role}"`);
    expect(await document.getOutline()).toMatchObject([{ title: 'Plan' }]);
  });

  it('gives the same bytes for the same sheets and meta, and others for another date', async () => {
    const sheets = [sheet([text('Viola'), text('B♭')]), sheet([text('two')])];
    const [first, second] = [await paintPdf(sheets, META), await paintPdf(sheets, META)];
    expect(Buffer.compare(first.bytes, second.bytes)).toBe(0);
    const later = await paintPdf(sheets, { ...META, created: new Date('2027-02-21T10:00:00Z') });
    expect(Buffer.compare(first.bytes, later.bytes)).not.toBe(0);
  });

  it('clips a group', async () => {
    const inner: Primitive = {
      kind: 'path',
      path: [
        ['M', 0, 0],
        ['L', 100, 100],
      ],
      stroke: { colour: '#000000', width: 1 },
    };
    const page = await paintedPage([
      { kind: 'group', clip: { x: 5, y: 5, width: 10, height: 10 }, children: [inner] },
    ]);
    const boxes = await pathBoxes(page);
    expect(boxes.some(({ width }) => Math.abs(width - 10 * POINTS) < 0.01)).toBe(true);
  });
});
