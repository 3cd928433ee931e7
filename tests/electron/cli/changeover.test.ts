/** `standlines changeover` on the demo concert. */

import { describe, expect, it } from 'vitest';
import { commandLine } from '../../../electron/cli/command-line.ts';
import { nodeFs } from '../../../electron/services/fs.ts';
import { temporaryFolder } from '../../helpers/folders.ts';

async function run(...words: string[]) {
  const [printed, complained]: [string[], string[]] = [[], []];
  const code = await commandLine(['changeover', ...words], {
    fs: nodeFs,
    now: () => new Date(0),
    state: temporaryFolder(),
    print: (text) => void printed.push(text),
    complain: (line) => void complained.push(line),
  });
  return { code, out: printed.join(''), complained };
}

describe('standlines changeover', () => {
  it('tells the first set-up, what is between the pieces, and the last strike', async () => {
    const { code, out, complained } = await run('demo');
    expect([code, complained]).toEqual([0, []]);
    const titles = out.split('\n').filter((line) => /^(First|From|Last)/.test(line));
    expect(titles).toEqual([
      'First set-up: Lock Gates',
      'From Lock Gates to Hedgerow Dances, opened out',
      'From Hedgerow Dances, opened out to Low Water',
      'Last strike: Low Water',
    ]);
    expect(out).toMatch(/A and B {2}Set LI1 Marimba, 5 octaves: Percussion room, through Green room/);
    expect(out).toMatch(/Local codes, the venue/);
  });

  it('gives the same as data, by record ids', async () => {
    const { out } = await run('demo', '--json');
    const data = JSON.parse(out) as {
      changeovers: {
        from: string | null;
        seconds: number;
        secondsRange: number[];
        steps: { hands: string; begins: number }[];
      }[];
      stock: { shortages: unknown[]; lines: { item: string }[] };
    };
    expect(data.changeovers.map(({ from }) => from)).toEqual([null, 'setup-1', 'setup-3', 'setup-4']);
    for (const { seconds, secondsRange, steps } of data.changeovers) {
      expect(secondsRange[0]).toBeLessThan(seconds);
      expect(secondsRange[1]).toBeGreaterThan(seconds);
      expect(steps.map(({ begins }) => begins)).toEqual(
        steps.map(({ begins }) => begins).sort((a, b) => a - b),
      );
    }
    expect(data.stock.shortages).toEqual([]);
    expect(data.stock.lines.map(({ item }) => item)).toContain('cable');
  });

  it('takes one file', async () => {
    expect(await run()).toMatchObject({ code: 2, out: '' });
    expect(await run('demo', 'more')).toMatchObject({ code: 2, out: '' });
  });
});
