/** Packs read back from their PDFs by two readers that know nothing of how they were made: pdf.js and poppler. */

import { Writable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { placedInSetup, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { whatItIs } from '#model/drawing/sheet/marks-table.ts';
import { PAPERS } from '#model/drawing/papers.ts';
import { readDocument } from '#model/file-format/read.ts';
import { readFileSync } from 'node:fs';
import { printPack, type PackOrder, type PackStep } from '../../../../electron/services/pack.ts';
import { demoPath } from '../../../../electron/services/program.ts';
import { aConcert, aDocument, aPlayer, aSeatBlock } from '../../../helpers/build.ts';
import { lengthIn, setByTapes } from '../../../shared-model/drawing/pack/taped-marks.ts';
import { EVENING } from '../../../shared-model/drawing/pack/pack-request.ts';
import { sixty } from '../../../shared-model/drawing/sixty-items.ts';
import { demoDuo, keeping } from '../paper/plans.ts';
import { openPdf, pageTexts, pathBoxes, poppler, type PageText } from '../pdf-reading.ts';

const NOW = new Date('2027-02-13T12:00:00');

async function printed(document: Document, order: Partial<PackOrder> = {}) {
  const chunks: Buffer[] = [];
  const sink = new Writable({ write: (chunk: Buffer, _, done) => (chunks.push(chunk), done()) });
  const pack = await printPack(
    { document, paper: 'A4', scale: null, sheets: null, now: NOW, ...order },
    sink,
  );
  const bytes = new Uint8Array(Buffer.concat(chunks));
  return { ...pack, bytes, pdf: await openPdf(bytes) };
}

async function textsOf(pdf: PDFDocumentProxy): Promise<PageText[][]> {
  const pages: PageText[][] = [];
  for (let page = 1; page <= pdf.numPages; page++) pages.push(await pageTexts(await pdf.getPage(page)));
  return pages;
}

function demo(): Document {
  const read = readDocument(readFileSync(demoPath(), 'utf8'));
  if (!read.ok) throw new Error(read.problem.message);
  return read.document;
}

/** Pairs of texts on one page that have more than a hair in common. */
function overlaps(page: readonly PageText[]): string[] {
  return page.flatMap((a, index) =>
    page.slice(index + 1).flatMap((b) => {
      const width = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
      const height = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
      return Math.min(width, height) < 0.2 ? [] : [`${a.text} | ${b.text}`];
    }),
  );
}

describe('a pack in print', () => {
  it.each([
    ['the demo concert', demo(), 'A4'],
    ['the demo concert', demo(), 'Letter'],
    ['sixty items', sixty, 'A4'],
    ['a kept page plan', keeping(demoDuo()), 'Letter'],
  ] as const)(
    '%s (%s) has no text under 7 pt and no two texts on each other',
    async (_, document, paper) => {
      const { pdf, sheets } = await printed(document, { paper });
      expect(pdf.numPages).toBe(sheets);
      for (const [index, page] of (await textsOf(pdf)).entries()) {
        expect(page.length).toBeGreaterThan(0);
        for (const { size, text } of page) expect(size, text).toBeGreaterThanOrEqual(7);
        expect(overlaps(page), `sheet ${index + 1}`).toEqual([]);
      }
    },
    240_000,
  );

  it('says its title and language, is tagged, and tells in words what it draws', async () => {
    const { pdf, bytes } = await printed(EVENING, { sheets: ['plot-1', 'seats-1', 'view-1-1'] });
    const { info } = (await pdf.getMetadata()) as unknown as { info: Record<string, unknown> };
    expect(info).toMatchObject({ Title: 'Evening', Language: 'en' });
    expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true });
    for (let page = 1; page <= pdf.numPages; page++) {
      const tree = await (await pdf.getPage(page)).getStructTree();
      const alts = JSON.stringify(tree).match(/"alt":"[^"]{20,}/g) ?? [];
      expect(alts.length, `sheet ${page}`).toBeGreaterThan(0);
    }
    const told = poppler('pdfinfo', bytes);
    if (told !== null) expect(told).toMatch(/Tagged:\s+yes/);
  });

  it('has metadata that is XML whatever the concert is called', async () => {
    const { bytes } = await printed(aDocument(aConcert({ name: 'Duo & <Trio>' })), { sheets: ['cautions'] });
    const text = Buffer.from(bytes).toString('latin1');
    expect(text).toContain('Duo &amp; &lt;Trio&gt;');
    expect(text).not.toContain('Duo & <Trio></rdf:li>');
    const { info } = (await (await openPdf(bytes)).getMetadata()) as unknown as {
      info: Record<string, unknown>;
    };
    expect(info['Title']).toBe('Duo & <Trio>');
  });

  it('lists its sheets under their pieces, each leading to its page', async () => {
    const { pdf, entries } = await printed(EVENING, { sheets: ['cover', 'plot', 'marks-2', 'cautions'] });
    const outline = await pdf.getOutline();
    expect(outline.map(({ title }) => title)).toEqual(['Cover and programme', 'First', 'Second', 'Cautions']);
    const second = outline[2]?.items ?? [];
    expect(second.map(({ title }: { title: string }) => title)).toEqual(['Stage plot', 'Marks']);
    const [page] = second[1]?.dest as [Parameters<typeof pdf.getPageIndex>[0]];
    const marks = entries.find(({ entry }) => entry.name === 'marks-2');
    expect(await pdf.getPageIndex(page)).toBe((marks?.first ?? 0) - 1);
  });

  it.each(PAPERS)('on $name two readers find the same page boxes, $width x $height mm', async (paper) => {
    // ISO 216 and ANSI/ASME Y14.1: 72 points to 25.4 mm.
    const wanted = [paper.width, paper.height].map((length) => (length * 72) / 25.4);
    const { pdf, bytes } = await printed(EVENING, { paper: paper.name, sheets: ['plot-1', 'marks-1'] });
    const told = poppler('pdfinfo', bytes, '-f', '1', '-l', '99');
    for (let number = 1; number <= pdf.numPages; number++) {
      const [, , width = 0, height = 0] = (await pdf.getPage(number)).view;
      const sides = [width, height].toSorted((a, b) => a - b);
      sides.forEach((side, index) => expect(Math.abs(side - (wanted[index] ?? 0))).toBeLessThan(0.01));
      if (told === null) continue;
      const [, w, h] = new RegExp(`Page\\s+${number} size:\\s+([\\d.]+) x ([\\d.]+) pts`).exec(told) ?? [];
      expect(Math.abs(Number(w) - width)).toBeLessThan(0.01);
      expect(Math.abs(Number(h) - height)).toBeLessThan(0.01);
    }
  });

  it.each([
    ['metric', 1000],
    ['imperial', 304.8],
  ] as const)('every scale bar measures what it says, %s', async (units, unit) => {
    const room = aDocument(aConcert({ units }), aSeatBlock(), aPlayer());
    const { pdf } = await printed(room, { sheets: ['plot-1', 'floor-1', 'section-1', 'seats-1'] });
    let bars = 0;
    for (const [index, texts] of (await textsOf(pdf)).entries()) {
      const scale = texts.map(({ text }) => /^SCALE 1:(\d+)/.exec(text)?.[1]).find(Boolean);
      if (!texts.some(({ text }) => text.startsWith('The whole bar'))) continue;
      const boxes = await pathBoxes(await pdf.getPage(index + 1));
      // The blocks of the bar are all that is 2.2 mm high and stands side by side; its last figure has the unit.
      const flat = boxes.filter((box) => Math.abs(box.height - (2.2 * 72) / 25.4) < 0.01);
      const widest = flat.reduce((a, b) => (b.width > a.width ? b : a));
      const blocks = flat.filter((box) => Math.abs(box.y - widest.y) < 0.01);
      const [left, right] = [
        Math.min(...blocks.map(({ x }) => x)),
        Math.max(...blocks.map(({ x, width }) => x + width)),
      ];
      const last = texts
        .filter(({ y }) => y > widest.y && y < widest.y + 15)
        .map(({ text }) => /^(\d+) (?:m|ft)$/.exec(text)?.[1])
        .find(Boolean);
      const points = (Number(last) * unit * 72) / 25.4 / Number(scale);
      expect(Math.abs(right - left - points), `sheet ${index + 1}`).toBeLessThan(0.01);
      bars += 1;
    }
    expect(bars).toBe(4);
  });

  it('has its words where two readers find them', async () => {
    const { pdf, bytes } = await printed(EVENING, { sheets: ['marks-1'] });
    const told = poppler('pdftotext', bytes, '-bbox', '-f', '1', '-l', '1');
    if (told === null) return;
    const page = await pdf.getPage(1);
    const [, , , height = 0] = page.view;
    const texts = await pageTexts(page);
    const words = [...told.matchAll(/<word xMin="([\d.]+)" yMin="([\d.]+)" xMax="([\d.]+)"[^>]*>([^<]+)</g)];
    let compared = 0;
    for (const { text, x, width, y } of texts) {
      const same = words.filter((word) => word[4] === text);
      const [only] = same;
      if (!only || same.length > 1 || texts.filter((other) => other.text === text).length > 1) continue;
      expect(Math.abs(Number(only[1]) - x), text).toBeLessThan(0.01);
      expect(Math.abs(Number(only[3]) - x - width), text).toBeLessThan(0.01);
      // Its baseline lies within the box that poppler gives a word.
      expect(height - y).toBeGreaterThan(Number(only[2]));
      compared += 1;
    }
    expect(compared).toBeGreaterThan(10);
  });
});

describe('marks by two tapes, set from the paper alone', () => {
  it.each([
    ['metric', 1],
    // Sixteenths of an inch: 1/32 in off at the most, and the root of two times that where tapes cross at right angles.
    ['imperial', (2 * 25.4) / 32],
  ] as const)('come as near to their places as whole figures allow, %s', async (units, within) => {
    const document = { records: new Map(demo().records) };
    const concert = [...document.records.values()].find((record) => record.kind === 'concert');
    if (concert?.kind !== 'concert') throw new Error('a document has a concert');
    document.records.set(concert.id, { ...concert, units });
    const { pdf } = await printed(document, { sheets: ['marks-1'] });
    const texts = (await textsOf(pdf)).flat();
    const points = pointsOn(texts, units);
    const rows = tapedRows(texts);
    const marked = placedInSetup(document, asId<'setup'>('setup-1'));
    let set = 0;
    for (const record of marked) {
      const row = rows.find(({ what }) => what === whatItIs(record));
      if (!row || rows.filter(({ what }) => what === row.what).length > 1) continue;
      const [first, second] = row.tapes.map((said) => {
        const from = points.get(said.charAt(0));
        if (!from) throw new Error(`no point for ${said}`);
        return { from, distance: lengthIn(said.slice(2), units) };
      });
      const { x, y } = setByTapes(first!, second!);
      expect(Math.hypot(x - record.x, y - record.y), row.what).toBeLessThan(within);
      set += 1;
    }
    expect(set).toBeGreaterThan(3);
  });
});

/** "A: 4200 SR, at edge." of the words over the table; they may go on over a line. */
function pointsOn(texts: readonly PageText[], units: 'metric' | 'imperial') {
  const words = texts.map(({ text }) => text).join(' ');
  const number = (said: string | undefined): number => (said === undefined ? 0 : lengthIn(said, units));
  const length = units === 'metric' ? String.raw`\d+` : String.raw`\d+'-\d+(?: \d+\/\d+)?"`;
  const pattern = new RegExp(
    `([A-D]): (?:(${length}) (SL|SR)|on centre), (?:(${length}) (US|DS)|at edge)\\.`,
    'g',
  );
  return new Map(
    [...words.matchAll(pattern)].map(([, letter = '', across, side, depth, way]) => [
      letter,
      { x: number(across) * (side === 'SR' ? -1 : 1), y: number(depth) * (way === 'DS' ? -1 : 1) },
    ]),
  );
}

/** What stands in one line with two tapes: "Clarinet (player)", "A 3951.8", "B 5311.1". */
function tapedRows(texts: readonly PageText[]) {
  const isTape = ({ text }: PageText): boolean => /^[A-D] \d/.test(text);
  return texts.filter(isTape).flatMap((first) => {
    const line = texts.filter(({ y }) => Math.abs(y - first.y) < 1).toSorted((a, b) => a.x - b.x);
    const tapes = line.filter(isTape);
    const what = line.filter(({ x }) => x < (tapes[0]?.x ?? 0)).at(-1);
    return tapes[0] === first && what && tapes.length >= 2
      ? [{ what: what.text, tapes: tapes.slice(0, 2).map(({ text }) => text) }]
      : [];
  });
}

describe('printPack', () => {
  it('tells how far it is, from the first entry to the last sheet', async () => {
    const steps: PackStep[] = [];
    const sink = new Writable({ write: (_, __, done) => done() });
    const order: PackOrder = {
      document: EVENING,
      paper: 'A4',
      scale: null,
      sheets: ['plot', 'cautions'],
      now: NOW,
    };
    const { sheets } = await printPack(order, sink, { progress: (step) => steps.push(step) });
    expect(steps[0]).toEqual({ doing: 'counting', done: 0, of: 3 });
    expect(steps.at(-1)).toEqual({ doing: 'drawing', done: sheets, of: sheets });
  });

  it('stops at the next sheet when it is told to', async () => {
    const stopper = new AbortController();
    const sink = new Writable({ write: (_, __, done) => done() });
    let last = 0;
    const progress = ({ doing, done }: PackStep): void => {
      if (doing === 'drawing') last = done;
      if (last === 2) stopper.abort();
    };
    const order: PackOrder = { document: EVENING, paper: 'A4', scale: null, sheets: null, now: NOW };
    await expect(printPack(order, sink, { progress, signal: stopper.signal })).rejects.toMatchObject({
      code: 'pack.stopped',
    });
    expect(last).toBe(2);
  });

  it('rejects with what the place it writes to has to say', async () => {
    const sink = new Writable({
      write: (_, __, done) => done(Object.assign(new Error('full'), { code: 'ENOSPC' })),
    });
    const order: PackOrder = { document: EVENING, paper: 'A4', scale: null, sheets: null, now: NOW };
    await expect(printPack(order, sink)).rejects.toMatchObject({ code: 'ENOSPC' });
  });

  it('has its plots at the scale that was asked for, written on each and true on the paper', async () => {
    const { sheets, pdf } = await printed(EVENING, { sheets: ['plot'], scale: 100 });
    expect(sheets).toBe(2);
    for (const number of [1, 2]) {
      const words = (await pageTexts(await pdf.getPage(number))).map(({ text }) => text).join(' ');
      expect(words).toContain('1:100');
    }
    const largest = await printed(EVENING, { sheets: ['plot-1'] });
    const [words] = [(await pageTexts(await largest.pdf.getPage(1))).map(({ text }) => text).join(' ')];
    expect(words).not.toContain('1:100');
  });

  it('refuses a scale at which a plot does not fit, with the largest that does', async () => {
    const refused = printed(EVENING, { sheets: ['cover', 'plot'], scale: 10 });
    await expect(refused).rejects.toMatchObject({ code: 'plot.doesNotFit' });
    const message = await refused.catch((error: Error) => error.message);
    const fits = Number(/does not fit on A4 at 1:10\. Choose 1:(\d+) on A4/.exec(String(message))?.[1]);
    expect((await printed(EVENING, { sheets: ['plot'], scale: fits })).sheets).toBe(2);
    await expect(printed(EVENING, { sheets: ['plot'], scale: 37 })).rejects.toMatchObject({
      code: 'plot.unknownScale',
    });
    // What has no plot in it has nothing that would not fit.
    expect((await printed(EVENING, { sheets: ['cautions'], scale: 10 })).sheets).toBe(1);
  });

  it('refuses a sheet that the pack cannot have, naming those it can', async () => {
    const sink = new Writable({ write: (_, __, done) => done() });
    const order: PackOrder = {
      document: aDocument(),
      paper: 'A4',
      scale: null,
      sheets: ['plot-7'],
      now: NOW,
    };
    await expect(printPack(order, sink)).rejects.toMatchObject({
      code: 'pack.unknownSheet',
      message: expect.stringMatching(/no sheet "plot-7".*plot-1/) as string,
    });
  });
});
