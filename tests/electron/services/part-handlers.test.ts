/** Part PDFs and tables as a window gets them, over a real disk. */

import { createHash } from 'node:crypto';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { degrees, PDFDocument } from '@cantoo/pdf-lib';
import { describe, expect, it } from 'vitest';
import { testShell } from '../../helpers/services.ts';
import { partPdf } from './booklet/invented-parts.ts';

const shell = () => {
  const made = testShell();
  const put = (name: string, content: string | Uint8Array) => {
    writeFileSync(join(made.folder, name), content);
    return made.services.handles.handleOf(join(made.folder, name));
  };
  return { ...made, put };
};
const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

async function mixed(): Promise<Uint8Array> {
  const document = await PDFDocument.create();
  document.addPage([595, 842]);
  document.addPage([612, 792]).setRotation(degrees(90));
  document.addPage([595, 842]).setCropBox(20, 20, 500, 700);
  return document.save();
}

describe('a part PDF', () => {
  it('is told by its hash and its pages in millimetres', async () => {
    const { handlers, put } = shell();
    const bytes = await partPdf('Oboe', { pages: 2 });
    const handle = put('Obóe (1).PDF', bytes);
    expect(await handlers['part.read'](handle)).toEqual({
      ok: true,
      value: {
        name: 'Obóe (1).PDF',
        sha256: sha256(bytes),
        // A4 (ISO 216), as points that this PDF rounds to 1/1000.
        sizes: [1, 2].map(() => ({ width: 210, height: 297 })),
        notes: [],
      },
    });
    const answer = await handlers['part.bytes'](handle);
    expect(answer.ok && Buffer.from(answer.value, 'base64').equals(Buffer.from(bytes))).toBe(true);
    expect(await handlers['part.hash'](handle)).toEqual({ ok: true, value: sha256(bytes) });
  });

  it('with pages cropped, turned and of several sizes says so, a line each', async () => {
    const { handlers, put } = shell();
    const answer = await handlers['part.read'](put('mixed.pdf', await mixed()));
    if (!answer.ok) throw new Error(answer.error.message);
    expect(answer.value.notes).toEqual([
      '"mixed.pdf" is cropped on page 3: what lies outside is neither shown nor printed.',
      '"mixed.pdf" has page 2 turned in the file: taken as they are looked at.',
      '"mixed.pdf" has pages of different sizes: page 1 is 210 x 297 mm, page 2 is 279 x 216 mm.',
    ]);
  });

  it.each([
    ['is no PDF', 'letter.pdf', async () => Buffer.from('Dear Viola'), 'pdf.notAPdf'],
    [
      'is cut short',
      'cut.pdf',
      async () => (await partPdf('Oboe', { pages: 1 })).slice(0, 300),
      'pdf.damaged',
    ],
    ['is a poster', 'poster.pdf', () => partPdf('Oboe', { pages: 1, size: [4000, 5000] }), 'pdf.pageSize'],
    ['is a stamp', 'stamp.pdf', () => partPdf('Oboe', { pages: 1, size: [100, 300] }), 'pdf.pageSize'],
    ['has no plain name', 'oboe.ps', () => partPdf('Oboe', { pages: 1 }), 'pdf.name'],
    ['has a long name', `${'o'.repeat(197)}.pdf`, () => partPdf('Oboe', { pages: 1 }), 'pdf.name'],
  ])('that %s is refused in one line', async (_, name, content, code) => {
    const { handlers, put } = shell();
    const handle = put(name, await content());
    for (const channel of ['part.read', 'part.bytes'] as const) {
      const answer = await handlers[channel](handle);
      if (answer.ok) throw new Error('it was read');
      expect(answer.error.code).toBe(code);
      expect(answer.error.message).toMatch(/^[^\n]+\.$/);
    }
  });

  it('is found beside the concert by its name and nowhere else', async () => {
    const { handlers, put, folder, services } = shell();
    const concert = put('trio.standlines', '{}');
    const handle = put('oboe.pdf', await partPdf('Oboe', { pages: 1 }));
    mkdirSync(join(folder, 'inner.pdf'));
    writeFileSync(join(folder, 'state.txt'), 'private');
    expect(await handlers['part.beside'](concert, 'oboe.pdf')).toEqual({ ok: true, value: handle });
    for (const name of ['viola.pdf', 'inner.pdf', 'state.txt', '../oboe.pdf', './oboe.pdf', 'a\0.pdf'])
      expect(await handlers['part.beside'](concert, name), name).toEqual({ ok: true, value: null });
    rmSync(join(folder, 'oboe.pdf'));
    expect(await handlers['part.hash'](handle)).toEqual({ ok: true, value: null });
    const nowhere = services.handles.handleOf(join(folder, 'gone', 'trio.standlines'));
    expect(await handlers['part.beside'](nowhere, 'oboe.pdf')).toEqual({ ok: true, value: null });
  });
});

describe('a table', () => {
  it.each([
    ['UTF-8', Buffer.from('page;first bar;last bar\n1;1;8\n')],
    ['UTF-16', Buffer.from('\ufeffpage;first bar;last bar\n1;1;8\n', 'utf16le')],
  ])('in %s is read as text', async (_, bytes) => {
    const { handlers, put } = shell();
    expect(await handlers['table.read'](put('viola.csv', bytes))).toEqual({
      ok: true,
      value: { name: 'viola.csv', text: 'page;first bar;last bar\n1;1;8\n' },
    });
  });

  it.each([
    ['bytes of a spreadsheet', Buffer.from('PK\u0003\u0004\u0000'), 'table.notText'],
    ['endless', Buffer.alloc(1024 * 1024 + 1, 0x31), 'table.tooLarge'],
  ])('that is %s is refused', async (_, bytes, code) => {
    const { handlers, put } = shell();
    expect(await handlers['table.read'](put('viola.csv', bytes))).toMatchObject({ error: { code } });
  });
});
