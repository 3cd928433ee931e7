/** Packs of concerts with names that nobody would set by hand, read back from their PDFs word by word. */

import { Writable } from 'node:stream';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Document } from '#model/document/document.ts';
import type { PaperName } from '#model/drawing/papers.ts';
import { readDocument } from '#model/file-format/read.ts';
import { printPack } from '../../../../electron/services/pack.ts';
import { demoPath } from '../../../../electron/services/program.ts';
import { EVENING } from '../../../shared-model/drawing/pack/pack-request.ts';
import { sixty } from '../../../shared-model/drawing/sixty-items.ts';
import { openPdf, overlaps, pageTexts } from '../pdf-reading.ts';
import { hostile } from './hostile-names.ts';

function demo(): Document {
  const read = readDocument(readFileSync(demoPath(), 'utf8'));
  if (!read.ok) throw new Error(read.problem.message);
  return read.document;
}

async function printed(document: Document, paper: PaperName) {
  const chunks: Buffer[] = [];
  const sink = new Writable({ write: (chunk: Buffer, _, done) => (chunks.push(chunk), done()) });
  await printPack({ document, paper, sheets: null, scale: null, now: new Date('2027-02-13T12:00:00') }, sink);
  return openPdf(new Uint8Array(Buffer.concat(chunks)));
}

describe('a pack of a concert with hostile names', () => {
  it.each([
    { name: 'the demo', document: demo(), paper: 'Tabloid' },
    { name: 'two pieces', document: EVENING, paper: 'A4' },
    { name: 'sixty items', document: sixty, paper: 'A3' },
  ] as const)(
    '$name on $paper: no two words on each other, and none beyond the page',
    async ({ document, paper }) => {
      const pdf = await printed(hostile(document), paper);
      for (let number = 1; number <= pdf.numPages; number++) {
        const page = await pdf.getPage(number);
        const [, , width = 0, height = 0] = page.view;
        const texts = await pageTexts(page);
        expect.soft(overlaps(texts), `sheet ${number} of ${paper}`).toEqual([]);
        const beyond = texts.filter(
          (text) => text.x < 0 || text.x + text.width > width || text.y < 0 || text.y > height,
        );
        expect.soft(beyond, `sheet ${number} of ${paper}`).toEqual([]);
      }
    },
    240_000,
  );
});
