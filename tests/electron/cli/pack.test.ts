import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { PACK_KINDS } from '#model/drawing/pack/pack.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { commandLine } from '../../../electron/cli/command-line.ts';
import { HELP } from '../../../electron/cli/usage.ts';
import { nodeFs } from '../../../electron/services/fs.ts';
import { temporaryFolder } from '../../helpers/folders.ts';
import { EVENING } from '../../shared-model/drawing/pack/pack-request.ts';

async function pack(...words: string[]) {
  const folder = temporaryFolder();
  const file = join(folder, 'evening.standlines');
  writeFileSync(file, writeDocument(EVENING));
  const complaints: string[] = [];
  let out = '';
  const code = await commandLine(['pack', file, ...words.map((word) => word.replace('OUT', folder))], {
    fs: nodeFs,
    now: () => new Date('2027-02-13T12:00:00'),
    state: temporaryFolder(),
    print: (text) => (out += text),
    complain: (line) => complaints.push(line),
  });
  return { code, out, complaints, folder };
}

describe('standlines pack', () => {
  it('writes the sheets that were named, into a folder that it makes', async () => {
    const { code, out, folder } = await pack(
      '--out-dir',
      'OUT/new',
      '--sheets',
      'cautions, plot-2',
      '--paper',
      'a3',
    );
    expect(code).toBe(0);
    expect(out).toContain('2 sheets on A3');
    expect(
      readFileSync(join(folder, 'new', 'pack.pdf'))
        .subarray(0, 5)
        .toString('latin1'),
    ).toBe('%PDF-');
  });

  it.each([
    [['--sheets', 'plot'], 'pack needs --out-dir DIR'],
    [['--out-dir', 'OUT', '--sheets', 'plot-9'], 'has no sheet "plot-9". It can have cover; plot-1'],
    [['--out-dir', 'OUT', '--sheets', ' , '], '--sheets names no sheet'],
    [['--out-dir', 'OUT', '--paper', 'A7'], '--paper "A7" is not one of A4, A3, Letter, Tabloid'],
    [['--out-dir', 'OUT/evening.standlines'], 'evening.standlines is a file, not a folder'],
    [['--out-dir', 'OUT/evening.standlines/sub'], 'is not a folder'],
  ])('refuses %j in one line and writes nothing', async (words, reason) => {
    const { code, out, complaints, folder } = await pack(...words);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toContain(reason);
    expect(existsSync(join(folder, 'pack.pdf'))).toBe(false);
  });

  it('ends where the system lets nobody make a folder', async ({ skip }) => {
    if (!existsSync('/proc/self')) return skip('this system has no /proc');
    const { code, complaints } = await pack('--out-dir', '/proc/standlines/pack');
    expect(code).toBe(2);
    expect(complaints).toEqual([expect.stringContaining('No folder can be made in /proc')]);
  });

  it('makes the folders over it, too', async () => {
    const { code, folder } = await pack('--out-dir', 'OUT/new/and/deep', '--sheets', 'cautions');
    expect(code).toBe(0);
    expect(existsSync(join(folder, 'new', 'and', 'deep', 'pack.pdf'))).toBe(true);
  });

  it('names every kind of sheet in its help', () => {
    for (const kind of PACK_KINDS) expect(HELP).toMatch(new RegExp(`^ {18}${kind} `, 'm'));
  });
});
