/** What is printed speaks the language that was asked for, and the program itself English. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { speakEnglish } from '#model/words/catalogue.ts';
import { commandLine } from '../../../electron/cli/command-line.ts';
import { readOrder } from '../../../electron/cli/usage.ts';
import { nodeFs } from '../../../electron/services/fs.ts';
import { temporaryFolder } from '../../helpers/folders.ts';

afterEach(speakEnglish);

async function run(...words: string[]): Promise<{ code: number; out: string }> {
  let out = '';
  const code = await commandLine(words, {
    fs: nodeFs,
    now: () => new Date('2027-02-13T12:00:00'),
    state: temporaryFolder(),
    print: (text) => (out += text),
    complain: (line) => (out += line),
  });
  return { code, out };
}

describe('--language', () => {
  it.each(['check', 'plot', 'pack', 'changeover', 'turns', 'booklet'])('is known to %s', (verb) => {
    const out = { plot: ['--out', 'a.pdf'], booklet: ['--out', 'a.pdf'], pack: ['--out-dir', 'a'] };
    const words = [verb, 'demo', ...(out[verb as keyof typeof out] ?? [])];
    expect(readOrder(words)).toMatchObject({ language: 'en' });
    expect(readOrder([...words, '--language', 'DE'])).toMatchObject({ language: 'de' });
    expect(() => readOrder([...words, '--language', 'fr'])).toThrow('is not one of en, de');
  });

  it('is written into the PDF, and the next print is English again', async () => {
    const folder = temporaryFolder();
    const printed = async (...more: string[]): Promise<string> => {
      const words = ['pack', 'demo', '--out-dir', folder, '--paper', 'A4', '--sheets', 'cautions', ...more];
      expect(await run(...words)).toMatchObject({ code: 0, out: expect.stringContaining('1 sheet on A4') });
      return readFileSync(join(folder, 'pack.pdf'), 'latin1');
    };
    expect(await printed('--language', 'de')).toContain('/Lang (de)');
    expect(await printed()).toContain('/Lang (en)');
  });
});
