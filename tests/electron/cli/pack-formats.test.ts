/** `standlines pack` in its formats: what it refuses, and what it leaves alone. */

import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { writeDocument } from '#model/file-format/write.ts';
import { commandLine } from '../../../electron/cli/command-line.ts';
import { nodeFs } from '../../../electron/services/fs.ts';
import { temporaryFolder } from '../../helpers/folders.ts';
import { EVENING } from '../../shared-model/drawing/pack/pack-request.ts';

async function packed(folder: string, ...words: string[]) {
  const file = join(folder, 'evening.standlines');
  writeFileSync(file, writeDocument(EVENING));
  const sheets = words.includes('--sheets') ? [] : ['--sheets', 'cautions'];
  const [printed, complaints]: [string[], string[]] = [[], []];
  const status = await commandLine(
    ['pack', file, '--out-dir', join(folder, 'out'), ...sheets, '--paper', 'A4', ...words],
    {
      ...{ fs: nodeFs, now: () => new Date(0), state: join(folder, 'state') },
      print: (text) => void printed.push(text),
      complain: (line) => void complaints.push(line),
    },
  );
  return { status, printed: printed.join(''), complaint: complaints.join('\n') };
}

it.each([
  [['--sheets', 'plot', '--scale', '1:10'], /does not fit on A4 at 1:10\. Choose 1:\d+ on A4/],
  [['--sheets', 'plot', '--scale', '1:37'], /1:37 is not a standard drawing scale/],
  [['--scale', 'large'], /--scale/],
  [['--format', 'gif'], /--format "gif" is not one of pdf, svg, png, dxf, csv/],
  [['--format', ','], /names no format/],
  [['--dpi', '150'], /--dpi goes with --format png/],
  [['--format', 'png', '--dpi', 'fine'], /not a number of dots per inch/],
  [['--format', 'png', '--dpi', '35'], /36 to 600 dots per inch, not 35/],
  [['--format', 'png', '--dpi', '601'], /36 to 600 dots per inch, not 601/],
])('%j is refused, and nothing is written', async (words, sentence) => {
  const folder = temporaryFolder();
  const { status, printed, complaint } = await packed(folder, ...words);
  expect([status, printed]).toEqual([2, '']);
  expect(complaint).toMatch(sentence);
  expect(existsSync(join(folder, 'out')) ? readdirSync(join(folder, 'out')) : []).toEqual([]);
});

it('replaces no file but the PDF unless that is said', async () => {
  const folder = temporaryFolder();
  const out = join(folder, 'out');
  expect((await packed(folder, '--format', 'pdf,svg,csv')).status).toBe(0);
  expect(readdirSync(out).sort()).toEqual(
    ['01-cautions.svg', 'inventory.csv', 'marks-1.csv', 'marks-2.csv', 'pack.pdf'].sort(),
  );
  writeFileSync(join(out, '01-cautions.svg'), 'mine');
  writeFileSync(join(out, 'pack.pdf'), 'old');

  const refused = await packed(folder, '--format', 'pdf,svg');
  expect([refused.status, refused.printed]).toEqual([2, '']);
  expect(refused.complaint).toMatch(/already a "01-cautions\.svg" .* --replace/);
  expect(readFileSync(join(out, '01-cautions.svg'), 'utf8')).toBe('mine');
  expect(readFileSync(join(out, 'pack.pdf'), 'utf8')).toBe('old');

  expect((await packed(folder, '--format', 'pdf')).status).toBe(0);
  expect(readFileSync(join(out, 'pack.pdf'), 'latin1').slice(0, 5)).toBe('%PDF-');
  expect((await packed(folder, '--format', 'svg', '--replace')).status).toBe(0);
  expect(readFileSync(join(out, '01-cautions.svg'), 'utf8')).toContain('<svg');
});
