/** What somebody hears who has a pack read to him: the structure as poppler tells it. */

import { Writable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { printPack } from '../../../../electron/services/pack.ts';
import { EVENING } from '../../../shared-model/drawing/pack/pack-request.ts';
import { poppler } from '../pdf-reading.ts';

async function structure(sheets: readonly string[]): Promise<string | null> {
  const chunks: Buffer[] = [];
  const sink = new Writable({ write: (chunk: Buffer, _, done) => (chunks.push(chunk), done()) });
  await printPack({ document: EVENING, paper: 'A4', scale: null, sheets, now: new Date(0) }, sink);
  return poppler('pdfinfo', new Uint8Array(Buffer.concat(chunks)), '-struct-text');
}

/** Each sheet's part of what is told. */
const sheetsIn = (told: string): string[] => told.split(/^ *Sect\b.*$/m).slice(1);

describe('the structure of a pack', () => {
  it('begins each sheet with its title', async ({ skip }) => {
    const told = await structure(['cover', 'plot-1', 'marks-1', 'cautions']);
    if (told === null) return skip('pdfinfo is not installed');
    for (const sheet of sheetsIn(told)) {
      const first = /^ *(H1|H2|P|Table|Figure)\b/m.exec(sheet);
      expect(first?.[1], sheet.slice(0, 200)).toBe('H1');
    }
    expect(sheetsIn(told).length).toBeGreaterThanOrEqual(4);
  });

  it('has a blank between caption and value, and between lines of one passage', async ({ skip }) => {
    const told = await structure(['marks-1']);
    if (told === null) return skip('pdfinfo is not installed');
    const words = told.replaceAll(/"\s*\n\s*"/g, '');
    expect(words).toMatch(/Title\s+Evening/);
    expect(words).not.toMatch(/TitleEvening|PaperA4|Unitsmm/);
    // Out of the words over the table, which take several lines.
    expect(words).toMatch(/stage left or right of the centre line/);
  });

  it('names the head of every row of a table', async ({ skip }) => {
    const told = await structure(['marks-1']);
    if (told === null) return skip('pdfinfo is not installed');
    const rows = told.split(/^ *TR\b.*$/m).slice(1);
    expect(rows.length).toBeGreaterThan(4);
    expect(told).toMatch(/TH[^\n]*\n?[^\n]*Scope[^\n]*Row/);
    const heads = rows.filter((row) => /^ *TH\b/m.test(row));
    expect(heads.length).toBe(rows.length);
  });
});
