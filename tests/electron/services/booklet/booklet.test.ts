/** Booklets read back with pdf.js: what is on which sheet, which way round, how large. */

import { describe, expect, it } from 'vitest';
import type { Binding, PageRef } from '#model/pages/bindings/binding.ts';
import { book, concertina, looseRow, pagesOf, ridgeBooklet } from '#model/pages/bindings/make.ts';
import { renderBooklet, type BookletJob } from '../../../../electron/services/booklet.ts';
import { openPartPdf, type OpenedPart } from '../../../../electron/services/part-pdf.ts';
import { openPdf, pageTexts, poppler, type PageText } from '../pdf-reading.ts';
import { A4, partPdf } from './invented-parts.ts';
import { placedForms, turnOf, type PlacedForm } from './placed-pages.ts';

const MM = 72 / 25.4;
const A3_PAPER = { name: 'A3', width: 297, height: 420 };
const A4_PAPER = { name: 'A4', width: 210, height: 297 };

interface ReadSheet {
  readonly width: number;
  readonly height: number;
  readonly forms: readonly PlacedForm[];
  readonly texts: readonly PageText[];
  readonly words: string;
}

async function printed(
  job: Partial<BookletJob> & Pick<BookletJob, 'binding'>,
  parts: Record<string, OpenedPart>,
) {
  const result = await renderBooklet({
    title: 'Septet, second stand',
    players: Object.keys(parts),
    page: null,
    paper: A3_PAPER,
    cues: [],
    now: new Date(0),
    sourceOf: ({ part, page }: PageRef) => (parts[part] ? { part: parts[part], page: page - 1 } : null),
    ...job,
  });
  return { ...result, read: await readSheets(result.bytes) };
}

async function readSheets(bytes: Uint8Array): Promise<ReadSheet[]> {
  const pdf = await openPdf(bytes);
  const sheets: ReadSheet[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number);
    const texts = await pageTexts(page);
    const { width, height } = page.getViewport({ scale: 1 });
    const words = texts.map(({ text }) => text).join(' ');
    sheets.push({ width, height, forms: await placedForms(page), texts, words });
  }
  return sheets;
}

async function part(name: string, pages: number, look = {}): Promise<OpenedPart> {
  return openPartPdf(await partPdf(name, { pages, ...look }), `${name}.pdf`);
}

function ridge(
  leaves: number,
  pagesPerPanel: number,
  stackSide: 0 | 1,
  names = ['clarinet', 'cello'],
): Binding {
  const places = (leaves + 1) * pagesPerPanel;
  const sides = names.map((name) => pagesOf(name, 1, places));
  return ridgeBooklet({ leaves, pagesPerPanel, stackSide, sides: [sides[0] ?? [], sides[1] ?? []] });
}

/** Names on a sheet as a part's own words, from left to right on the sheet. */
function pagesOn({ texts }: ReadSheet): string[] {
  return texts
    .filter(({ text }) => / page \d+$/.test(text))
    .toSorted((a, b) => a.x - b.x)
    .map(({ text }) => text);
}

describe('a ridge booklet, a panel a sheet', () => {
  const leaves = 2;
  const making = Promise.all([part('clarinet', 6), part('cello', 6)]).then(([clarinet, cello]) =>
    printed(
      { binding: ridge(leaves, 2, 1), cues: ['after bar 48', 'after bar 75'] },
      { clarinet: clarinet!, cello: cello! },
    ),
  );

  it('has its panels in strip order, two pages each, every other one on its head', async () => {
    const { read, printed: count } = await making;
    expect(count).toBe(6);
    expect(read.slice(0, 6).map(pagesOn)).toEqual([
      ['clarinet page 2', 'clarinet page 1'],
      ['cello page 1', 'cello page 2'],
      ['clarinet page 4', 'clarinet page 3'],
      ['cello page 3', 'cello page 4'],
      ['clarinet page 6', 'clarinet page 5'],
      ['cello page 5', 'cello page 6'],
    ]);
    expect(read.slice(0, 6).map(({ forms }) => forms.map(turnOf))).toEqual(
      [180, 0, 180, 0, 180, 0].map((turn) => [turn, turn]),
    );
  });

  it('has every sheet as large as A3 and every page as large as A4, to a hundredth of a point', async () => {
    for (const { width, height, forms } of (await making).read.slice(0, 6)) {
      expect(width).toBeCloseTo(420 * MM, 2);
      expect(height).toBeCloseTo(297 * MM, 2);
      for (const form of forms) {
        expect(form.width).toBeCloseTo(A4[0], 2);
        expect(form.height).toBeCloseTo(A4[1], 2);
      }
      // Side by side, in the middle of the sheet.
      const [left, right] = forms.toSorted((a, b) => a.x - b.x);
      expect((left?.x ?? 0) + (left?.width ?? 0)).toBeCloseTo(right?.x ?? 0, 2);
      expect(left?.x).toBeCloseTo(width / 2 - A4[0], 2);
      expect(left?.y).toBeCloseTo((height - A4[1]) / 2, 2);
    }
  });

  it('says at every joint what is taped to what, on both sheets at the edges that meet', async () => {
    const { read } = await making;
    const joints = ['A to A (ridge)', 'B to B (hem)', 'C to C (ridge)', 'D to D (hem)', 'E to E (ridge)'];
    joints.forEach((joint, index) => {
      const [above, below] = [read[index]!, read[index + 1]!].map(({ texts }) =>
        texts.find(({ text }) => text === `tape ${joint}`),
      );
      expect(above?.y).toBeLessThan(25);
      expect(below?.y).toBeGreaterThan(297 * MM - 25);
      expect(above?.x).toBeCloseTo(below?.x ?? NaN, 1);
    });
    expect(read[0]?.words).toContain('fix to clarinet’s desk');
    expect(read[5]?.words).toContain('fix to cello’s desk');
  });

  it('labels every panel with its reader and view, and says where card goes', async () => {
    const { read } = await making;
    expect(read[2]?.words).toContain('clarinet, 1i, view 2 of 3');
    expect(read[5]?.words).toContain('cello, B, view 3 of 3');
    expect(read.slice(0, 6).map(({ words }) => words.includes('card behind'))).toEqual([
      false,
      true,
      false,
      true,
      false,
      false,
    ]);
  });

  it('has each cue at the foot of the panels read last before the turn, for the one who turns and the other', async () => {
    const { read } = await making;
    const cues = read
      .slice(0, 6)
      .map(({ texts }) => texts.filter(({ text }) => text.startsWith('after bar')));
    expect(cues.map((each) => each.map(({ text }) => text))).toEqual([
      ['after bar 48: cello turns'],
      ['after bar 48: turn for both'],
      ['after bar 75: cello turns'],
      ['after bar 75: turn for both'],
      [],
      [],
    ]);
    // At the reader's right: on a panel on its head that is the left end of its upper edge.
    expect(cues[1]![0]!.x).toBeGreaterThan(210 * MM);
    expect(cues[1]![0]!.y).toBeLessThan(25);
    expect(cues[0]![0]!.x).toBeLessThan(210 * MM);
    expect(cues[0]![0]!.y).toBeGreaterThan(297 * MM - 30);
  });

  it('ends with one sheet that says how it is put together', async () => {
    const { read, sheets } = await making;
    expect(sheets).toBe(7);
    const words = read[6]?.words ?? '';
    for (const said of [
      'how to put it together',
      'In this order',
      'panels 1o and 2o',
      'Who sees what',
      'top-heavy',
    ])
      expect(words).toContain(said);
  });

  it('has no text of its own under 7 pt, and embeds every font of its own', async () => {
    const { read, bytes } = await making;
    for (const { texts } of read) for (const { size } of texts) expect(size).toBeGreaterThanOrEqual(7);
    const fonts = poppler('pdffonts', bytes);
    if (fonts === null) return;
    const rows = fonts.trim().split('\n').slice(2);
    expect(rows.some((row) => row.includes('Atkinson'))).toBe(true);
    // The invented part names Helvetica without embedding it, as a part may.
    for (const row of rows.filter((each) => !each.startsWith('Helvetica')))
      expect(row).toMatch(/\byes\s+yes\s+yes\b/);
  });

  it('is the same, byte by byte, when it is made again', async () => {
    const again = async () => {
      const parts = { clarinet: await part('clarinet', 4), cello: await part('cello', 4) };
      return (await printed({ binding: ridge(1, 2, 0) }, parts)).bytes;
    };
    expect(Buffer.from(await again()).equals(Buffer.from(await again()))).toBe(true);
  });
});

it('the stack on the other side reverses the strip', async () => {
  const parts = { clarinet: await part('clarinet', 2), cello: await part('cello', 2) };
  const { read } = await printed({ binding: ridge(1, 1, 0), paper: A4_PAPER }, parts);
  expect(read.slice(0, 4).map(pagesOn)).toEqual([
    ['clarinet page 2'],
    ['cello page 2'],
    ['clarinet page 1'],
    ['cello page 1'],
  ]);
  expect(read.slice(0, 4).map(({ forms }) => forms.map(turnOf))).toEqual([[180], [0], [180], [0]]);
  expect(read[4]?.words).toContain('for clarinet: page 1 (view 1)');
});

describe('a page a sheet, where the paper is smaller than a panel', () => {
  it('numbers the seams and lays the sheets of a panel from left to right as they lie on the strip', async () => {
    const parts = { clarinet: await part('clarinet', 6), cello: await part('cello', 6) };
    const {
      read,
      notes,
      printed: count,
    } = await printed({ binding: ridge(1, 3, 1), paper: A4_PAPER }, parts);
    expect(count).toBe(12);
    expect(read.slice(0, 6).map(pagesOn).flat()).toEqual([
      'clarinet page 3',
      'clarinet page 2',
      'clarinet page 1',
      'cello page 1',
      'cello page 2',
      'cello page 3',
    ]);
    expect(notes.join()).toContain('every page has a sheet of its own');
    expect(read[0]?.words).toContain('tape 1 to 1 (side by side)');
    expect(read[1]?.words).toContain('tape 1 to 1 (side by side)');
    expect(read[1]?.words).toContain('tape 2 to 2 (side by side)');
    expect(read[0]?.words).toContain('tape A1 to A1 (ridge)');
    expect(read[3]?.words).toContain('tape A1 to A1 (ridge)');
  });

  it('is refused when not even a page goes on it', async () => {
    const parts = { clarinet: await part('clarinet', 1, { size: [720, 936] }) };
    const binding = looseRow(pagesOf('clarinet', 1, 1));
    await expect(printed({ binding, paper: A4_PAPER }, parts)).rejects.toThrow('does not go on A4');
  });
});

describe('pages as PDFs may have them', () => {
  const binding = looseRow(pagesOf('horn', 1, 1));
  const paper = { name: 'large', width: 600, height: 700 };
  // Each: what the page is, and where its words and lower left corner come to lie when it is looked at.
  it.each([
    ['plain', {}, [595.276, 841.89], 0],
    ['turned by 90', { rotate: 90 }, [841.89, 595.276], 270],
    ['turned by 180', { rotate: 180 }, [595.276, 841.89], 180],
    ['turned by 270', { rotate: 270 }, [841.89, 595.276], 90],
    ['cropped', { crop: 20 }, [555.276, 801.89], 0],
    ['in other units', { userUnit: 1.5, size: [500, 600] }, [750, 900], 0],
    ['off the origin', { origin: [-100, 300] }, [595.276, 841.89], 0],
    [
      'all at once',
      { origin: [30, -40], crop: 15, rotate: 90, userUnit: 2, size: [300, 400] },
      [740, 540],
      270,
    ],
    ['of an odd size', { size: [648, 864] }, [648, 864], 0],
  ] as const)('%s', async (_, look, [width, height], turn) => {
    const parts = { horn: await part('horn', 1, look) };
    const { read } = await printed({ binding, paper, players: ['Horn'] }, parts);
    const [form] = read[0]?.forms ?? [];
    expect(form?.width).toBeCloseTo(width, 2);
    expect(form?.height).toBeCloseTo(height, 2);
    expect(form && turnOf(form)).toBe(turn);
    expect(form?.x).toBeCloseTo((read[0]!.width - width) / 2, 2);
    expect(form?.y).toBeCloseTo((read[0]!.height - height) / 2, 2);
    // Cut off at what is seen of it, and nowhere else.
    const word = read[0]?.texts.find(({ text }) => text.startsWith('horn page'));
    expect(word!.x).toBeGreaterThan(form!.x);
    expect(word!.x + word!.width).toBeLessThan(form!.x + form!.width);
    expect(word!.y).toBeGreaterThan(form!.y);
    expect(word!.y + word!.height).toBeLessThan(form!.y + form!.height);
  });

  it('of different sizes in one part lie each in the middle of the largest', async () => {
    const parts = { horn: await part('horn', 1), flute: await part('flute', 1, { size: [500, 700] }) };
    const row = looseRow([...pagesOf('horn', 1, 1), ...pagesOf('flute', 1, 1)]);
    const { read } = await printed({ binding: row, players: ['both'], paper: A4_PAPER }, parts);
    expect(read[1]?.forms[0]?.x).toBeCloseTo((210 * MM - 500) / 2, 2);
    expect(read[1]?.forms[0]?.width).toBeCloseTo(500, 2);
  });

  it('larger than the page size that was asked for are named', async () => {
    const parts = { horn: await part('horn', 1, { size: [648, 864] }) };
    await expect(printed({ binding, page: { width: 210, height: 297 } }, parts)).rejects.toThrow(
      'Page 1 of "horn.pdf" is 228.6 x 304.8 mm: it is larger than the page size of the booklet, 210 x 297 mm.',
    );
  });

  it('too small for any stand are named', async () => {
    const parts = { horn: await part('horn', 1, { size: [20, 30] }) };
    await expect(printed({ binding }, parts)).rejects.toThrow('no page for a stand is that size');
  });
});

describe('other bindings', () => {
  it('numbered blanks stand for pages without a PDF', async () => {
    const { read } = await printed({ binding: ridge(1, 2, 0), players: ['Viola', 'Bass'] }, {});
    expect(read.slice(0, 4).every(({ forms }) => forms.length === 0)).toBe(true);
    expect(read[3]?.texts.filter(({ size }) => size > 100).map(({ text }) => text)).toEqual(['1', '2']);
    expect(
      read[0]?.texts
        .filter(({ size }) => size > 100)
        .map(({ text }) => text)
        .toSorted(),
    ).toEqual(['3', '4']);
  });

  it('a book comes as fronts and backs of its leaves', async () => {
    const parts = { tuba: await part('tuba', 5) };
    const { read, printed: count } = await printed(
      {
        binding: book(pagesOf('tuba', 1, 5)),
        players: ['Tuba'],
        paper: A4_PAPER,
        cues: ['after bar 9', 'after bar 20'],
      },
      parts,
    );
    // The fifth page is the front of a sheet that is not turned; its back stays empty.
    expect(count).toBe(6);
    expect(read.slice(0, 6).map(pagesOn)).toEqual([
      ...[1, 2, 3, 4, 5].map((page) => [`tuba page ${page}`]),
      [],
    ]);
    expect(read[0]?.words).toContain('after bar 9: turn');
    expect(read[2]?.words).toContain('after bar 20: turn');
    expect(read[5]?.words).toContain('Back cover: leave blank; the last page is on its other side');
  });

  it('a book that opens on the left says why its first sheet side has no music', async () => {
    const binding = book(pagesOf('tuba', 1, 4), true);
    const { read } = await printed(
      { binding, players: ['Tuba'], paper: A4_PAPER },
      { tuba: await part('tuba', 4) },
    );
    expect(read[0]?.forms).toEqual([]);
    expect(read[0]?.words).toContain('Front cover: leave blank; the first page is on its back');
    expect(read[1] && pagesOn(read[1])).toEqual(['tuba page 1']);
  });

  it('a concertina comes as its pages in a row, each taped to the next', async () => {
    const parts = { harp: await part('harp', 6) };
    const { read, printed: count } = await printed(
      {
        binding: concertina(pagesOf('harp', 1, 6)),
        players: ['Harp'],
        paper: A4_PAPER,
        cues: ['after bar 9', 'in the pause'],
      },
      parts,
    );
    expect(count).toBe(6);
    expect(read[0]?.words).toContain('tape A to A (folds inward)');
    expect(read[1]?.words).toContain('tape B to B (folds outward)');
    expect(read[1]?.words).toContain('after bar 9: turn');
    expect(read[3]?.words).toContain('in the pause: turn');
    expect(read.slice(0, 6).filter(({ words }) => words.includes(': turn'))).toHaveLength(2);
  });

  // Which joint bends how was found by folding paper; tests/oracles/fold-simulation/concertina.test.ts folds every width.
  it('a concertina of three open pages says which joints are scored on both sides', async () => {
    const order = {
      binding: concertina(pagesOf('horn', 1, 7), 3),
      players: ['Horn'],
      paper: A4_PAPER,
      page: A4_PAPER,
    };
    const { read } = await printed(order, {});
    expect(read[0]?.words).toContain('tape A to A (folds inward)');
    for (const index of [2, 3])
      expect(read[index]?.words).toContain('tape C to C (folds both ways: score both sides)');
    const steps = read[7]?.words ?? '';
    expect(steps).toContain('at A and F printed side on printed side, at B and E blank side on blank side');
    expect(steps).toContain('Score C and D on both sides');
    expect(steps).toContain('folded to and fro behind the last of them: at C blank side');
    const still = await printed({ ...order, binding: concertina(pagesOf('horn', 1, 3), 3) }, {});
    expect(still.read[1]?.words).toContain('tape B to B (stays flat)');
    expect(still.read[3]?.words).toContain('Nothing is folded');
  });
});

describe('the instructions', () => {
  it.each([
    ['A4', 210, 297, 2],
    ['Letter', 215.9, 279.4, 2],
    ['A3', 297, 420, 1],
    ['Tabloid', 279.4, 431.8, 1],
  ])('fill %s from margin to margin, and their ruler is true', async (name, width, height, sheets) => {
    const small = { size: [300, 400] as const };
    const parts = { clarinet: await part('clarinet', 6, small), cello: await part('cello', 6, small) };
    const paper = { name, width, height };
    const { read, printed: count } = await printed({ binding: ridge(2, 1, 0), paper, page: null }, parts);
    const [how] = read.slice(count);
    const lines = how?.texts ?? [];
    const right = lines.reduce((most, { x, width: length }) => Math.max(most, x + length), 0) / MM;
    const left = lines.reduce((least, { x }) => Math.min(least, x), Infinity) / MM;
    // Lines are broken at words, so that the longest ends a word before the margin at the most.
    expect(left).toBeCloseTo(15, 0);
    expect(right).toBeGreaterThan(width - 15 - 25);
    expect(right).toBeLessThan(width - 14.9);
    // The words of the ruler begin 4 mm, and what these are enlarged by, behind its 100 mm.
    const ruler = lines.find(({ text }) => text.startsWith('100 mm on the ruler'));
    const factor = Math.max(1, (0.95 * (width - 30)) / 190);
    expect((ruler?.x ?? 0) / MM).toBeGreaterThan(15 + 100 + 4 * factor - 0.1);
    expect((ruler?.x ?? 0) / MM).toBeLessThan(15 + 100 + (4 * factor) / 0.94);
    expect(read.length - count).toBe(sheets);
    // On large paper the letters are larger, too.
    expect(lines.reduce((least, { size }) => Math.min(least, size), Infinity)).toBeGreaterThan(6.9 * factor);
  });
});
