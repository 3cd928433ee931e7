/** Part PDFs: what is read of sound ones, and what is said about all others, quickly and in one line. */

import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { PDFDocument, PDFName } from '@cantoo/pdf-lib';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { looseRow, pagesOf } from '#model/pages/bindings/make.ts';
import { renderBooklet } from '../../../../electron/services/booklet.ts';
import { FaultError } from '../../../../electron/services/faults.ts';
import { openPartPdf, readPartPdf } from '../../../../electron/services/part-pdf.ts';
import { temporaryFolder } from '../../../helpers/folders.ts';
import { openPdf, pageTexts } from '../pdf-reading.ts';
import { partPdf } from './invented-parts.ts';

/** Read and printed, as somebody would who chooses the file. */
async function use(bytes: Uint8Array): Promise<string> {
  const part = await openPartPdf(bytes, 'part.pdf');
  const count = Math.min(4, part.pages.length);
  const { bytes: booklet } = await renderBooklet({
    title: 'Test',
    binding: looseRow(pagesOf('part', 1, count)),
    players: ['Horn'],
    page: null,
    paper: { name: 'large', width: 1200, height: 1300 },
    cues: [],
    now: new Date(0),
    sourceOf: ({ page }) => ({ part, page: page - 1 }),
  });
  const pdf = await openPdf(booklet);
  return (await pageTexts(await pdf.getPage(1))).map(({ text }) => text).join(' ');
}

/** The sentence with which it is refused, or what is on its first sheet; and what it took. */
async function told(bytes: Uint8Array) {
  // Time of the processor, which others may be using too.
  const start = process.cpuUsage();
  const words = await use(bytes).catch((error: unknown) => {
    if (!(error instanceof FaultError)) throw error;
    return `REFUSED ${error.code}: ${error.message}`;
  });
  const { user, system } = process.cpuUsage(start);
  return { words, seconds: (user + system) / 1e6 };
}

async function refusal(bytes: Uint8Array, code: string): Promise<string> {
  const { words, seconds } = await told(bytes);
  expect(words.startsWith(`REFUSED ${code}: "part.pdf" `), words).toBe(true);
  expect(words).toMatch(/^[^\n\r]{1,220}\.$/);
  expect(seconds).toBeLessThan(2);
  return words;
}

let sound: Uint8Array;
beforeAll(async () => {
  sound = await partPdf('horn', { pages: 3, staves: 2 });
});

describe('a sound part', () => {
  it('is read as pages with their true size in millimetres', async () => {
    expect(await readPartPdf(sound, 'horn.pdf')).toEqual({
      pages: Array.from({ length: 3 }, () => ({
        width: expect.closeTo(210, 2),
        height: expect.closeTo(297, 2),
      })),
      notes: [],
    });
  });

  // UserUnit: ISO 32000-1, 7.7.3.3: the size of a unit in 1/72 inch. Rotate: degrees clockwise when displayed.
  it.each([
    [{ size: [612, 792] }, 215.9, 279.4],
    [{ size: [612, 792], rotate: 90 }, 279.4, 215.9],
    [{ size: [612, 792], crop: 36 }, 190.5, 254],
    [{ size: [306, 396], userUnit: 2 }, 215.9, 279.4],
  ] as const)('%o is %s by %s mm', async (look, width, height) => {
    const { pages } = await readPartPdf(await partPdf('horn', { pages: 1, ...look }), 'horn.pdf');
    expect(pages[0]?.width).toBeCloseTo(width, 6);
    expect(pages[0]?.height).toBeCloseTo(height, 6);
  });

  it('with pen strokes laid over a page is printed, and that they are left out is said', async () => {
    const document = await PDFDocument.load(sound);
    const { context } = document;
    const ink = context.register(
      context.obj({ Type: 'Annot', Subtype: 'Ink', Rect: [0, 0, 9, 9], InkList: [[0, 0, 9, 9]] }),
    );
    document.getPage(1).node.addAnnot(ink);
    const { notes } = await readPartPdf(await document.save(), 'horn.pdf');
    expect(notes).toEqual([expect.stringContaining('laid over page 2: they are not printed')]);
  });
});

describe('encrypted', () => {
  const encrypted = (user: string, owner: string, bits: number): Uint8Array | null => {
    const folder = temporaryFolder();
    const [from, to] = [join(folder, 'a.pdf'), join(folder, 'b.pdf')];
    writeFileSync(from, sound);
    try {
      execFileSync(
        'qpdf',
        [
          '--encrypt',
          user,
          owner,
          String(bits),
          ...(bits < 256 ? ['--allow-weak-crypto'] : []),
          '--',
          from,
          to,
        ].toSorted((a, b) => Number(b === '--allow-weak-crypto') - Number(a === '--allow-weak-crypto')),
      );
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
      console.warn('NOT RUN: qpdf is not on this machine, so encrypted parts were not tried.');
      return null;
    }
    return readFileSync(to);
  };

  it.each([40, 128, 256])('with an owner password only (%i bit) is printed', async (bits) => {
    const bytes = encrypted('', 'owner', bits);
    if (bytes) expect((await told(bytes)).words).toContain('horn page 1');
  });

  it.each([40, 128, 256])('with a user password (%i bit) is refused', async (bits) => {
    const bytes = encrypted('secret', 'owner', bits);
    if (bytes) expect(await refusal(bytes, 'pdf.locked')).toContain('locked with a password');
  });
});

describe('not as it should be', () => {
  const text = (words: string) => new TextEncoder().encode(words);
  const header = '%PDF-1.7\n';
  const catalog = '1 0 obj\n<</Type/Catalog/Pages 2 0 R>>\nendobj\n';
  const trailer = 'trailer\n<</Root 1 0 R/Size 9>>\nstartxref\n0\n%%EOF\n';
  const small = (objects: string) => text(header + catalog + objects + trailer);
  const repeated = (piece: string, bytes: number) => piece.repeat(Math.ceil(bytes / piece.length));

  it.each([
    ['empty', new Uint8Array(), 'pdf.notAPdf'],
    ['a text', text('Dear all, the part is not ready.'), 'pdf.notAPdf'],
    ['a picture', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0), 'pdf.notAPdf'],
    ['a header alone', text(header), 'pdf.damaged'],
    ['no pages at all', small('2 0 obj\n<</Type/Pages/Kids[]/Count 0>>\nendobj\n'), 'pdf.noPages'],
    [
      'a tree of pages that is a circle',
      small('2 0 obj\n<</Type/Pages/Kids[2 0 R]/Count 1>>\nendobj\n'),
      'pdf.damaged',
    ],
    [
      'pages that are not there',
      small('2 0 obj\n<</Type/Pages/Kids[7 0 R]/Count 1>>\nendobj\n'),
      'pdf.damaged',
    ],
    ['nested without end', small(`2 0 obj\n${'['.repeat(200_000)}\nendobj\n`), 'pdf.damaged'],
    [
      'a catalog without pages',
      text(`${header}1 0 obj\n<</Type/Catalog>>\nendobj\n${trailer}`),
      'pdf.damaged',
    ],
  ])('%s', async (_, bytes, code) => {
    await refusal(bytes, code);
  });

  it('thousands of pages', async () => {
    const kids = Array.from({ length: 3000 }, () => '3 0 R').join(' ');
    const page = '3 0 obj\n<</Type/Page/MediaBox[0 0 9 9]>>\nendobj\n';
    await refusal(small(`2 0 obj\n<</Type/Pages/Kids[${kids}]>>\nendobj\n${page}`), 'pdf.damaged');
    const own = Array.from(
      { length: 3000 },
      (_, index) => `${index + 9} 0 obj\n<</Type/Page>>\nendobj\n`,
    ).join('');
    const refs = Array.from({ length: 3000 }, (_, index) => `${index + 9} 0 R`).join(' ');
    await refusal(small(`2 0 obj\n<</Type/Pages/Kids[${refs}]>>\nendobj\n${own}`), 'pdf.tooLarge');
  });

  it.each([
    ['digits', '1 1 1 1 1 1 1 '],
    ['letters', 'rubbish '],
    ['objects never closed', '7 0 obj <<\n'],
    ['objects never closed, of numbers', '7 0 obj 12\n'],
    ['streams never closed', '7 0 obj <<>> stream\n'],
    ['words of tables', 'trailer '],
    ['tables', 'xref\n0 1\n'],
    ['numbers of tables', 'startxref\n1\n'],
    ['brackets', '7 0 obj [[[[[[[[ endobj\n'],
    ['strings', '7 0 obj (((((((( endobj\n'],
    ['streams within streams', '7 0 obj <<>> stream stream stream endobj\n'],
    ['tiny objects', '7 0 obj 1 endobj\n'],
    ['names', '7 0 obj /a#41b endobj\n'],
    ['comments', '% 7 0 obj\n'],
    ['blanks', '            \n'],
    ['nothing but zeros', '\0'],
  ])('thirty megabytes of %s', async (_, piece) => {
    const { words, seconds } = await told(small(`2 0 obj\n<</Kids[]>>\nendobj\n${repeated(piece, 30e6)}`));
    expect(words).toMatch(/^REFUSED pdf\.(damaged|tooLarge|noPages): "part.pdf" [^\n\r]{1,200}\.$/);
    expect(seconds).toBeLessThan(2);
  });

  it('larger than any part', async () => {
    expect(await refusal(text(header + ' '.repeat(33 * 1024 * 1024)), 'pdf.tooLarge')).toContain('34 MB');
  });

  it('large and encrypted', async () => {
    const bytes = text(`${header}${' '.repeat(11e6)}trailer\n<</Encrypt 9 0 R>>\n`);
    expect(await refusal(bytes, 'pdf.tooLarge')).toContain('save it without encryption');
  });

  it('packed objects that swell to a gigabyte', async () => {
    const packed = deflateSync(Buffer.alloc(256 * 1024 * 1024, 32));
    const stream = `5 0 obj\n<</Type/ObjStm/N 1/First 4/Filter/FlateDecode/Length ${packed.length}>>\nstream\n`;
    const start = text(header + catalog + stream);
    await refusal(
      Buffer.concat([start, packed, text('\nendstream\nendobj\n'), text(trailer)]),
      'pdf.tooLarge',
    );
  });

  it('a page whose pieces swell to a gigabyte', async () => {
    const packed = deflateSync(Buffer.alloc(128 * 1024 * 1024, 32));
    const piece = Buffer.concat([
      text(`4 0 obj\n<</Filter/FlateDecode/Length ${packed.length}>>\nstream\n`),
      packed,
      text('\nendstream\nendobj\n'),
    ]);
    const page =
      '3 0 obj\n<</Type/Page/MediaBox[0 0 595 842]/Contents[4 0 R 4 0 R]/Resources<<>>>>\nendobj\n';
    const pages = '2 0 obj\n<</Type/Pages/Kids[3 0 R]/Count 1>>\nendobj\n';
    await refusal(
      Buffer.concat([text(header + catalog + pages + page), piece, text(trailer)]),
      'pdf.tooLarge',
    );
  });

  it('cut off anywhere, or with any bytes changed: printed or refused, never anything else', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 0, max: sound.length }),
        fc.array(fc.tuple(fc.nat(sound.length - 1), fc.nat(255)), { maxLength: 12 }),
        async (length, changes) => {
          const bytes = sound.slice(0, length > sound.length / 2 ? sound.length : length);
          for (const [at, value] of changes) if (at < bytes.length) bytes[at] = value;
          expect((await told(bytes)).seconds).toBeLessThan(2);
        },
      ),
      { numRuns: 150 },
    );
  });
});

it('a page in several pieces is one page', async () => {
  const document = await PDFDocument.load(sound);
  const page = document.getPage(0);
  const { context } = document;
  const pieces = ['q 1 0 0 1 0 0 cm BT /F1 14 Tf 72 ', '144 Td (in ', 'pieces) Tj ET Q'].map((words) =>
    context.register(context.flateStream(words)),
  );
  page.node.set(PDFName.of('Contents'), context.obj(pieces));
  const font = context.register(context.obj({ Type: 'Font', Subtype: 'Type1', BaseFont: 'Times-Roman' }));
  page.node.setFontDictionary(PDFName.of('F1'), font);
  expect((await told(await document.save())).words).toContain('in pieces');
});
