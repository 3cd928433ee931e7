/** The verb `score` as it is typed. Figures of the fixture are worked out by hand in its first lines. */

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { commandLine } from '../../../electron/cli/command-line.ts';
import { nodeFs } from '../../../electron/services/fs.ts';
import { temporaryFolder } from '../../helpers/folders.ts';

const DANCES = fileURLToPath(new URL('../../fixtures/scores/two-dances.musicxml', import.meta.url));

async function run(...words: string[]) {
  const complaints: string[] = [];
  let out = '';
  const code = await commandLine(['score', ...words], {
    fs: nodeFs,
    now: () => new Date('2027-02-13T12:00:00'),
    state: temporaryFolder(),
    print: (text) => (out += text),
    complain: (line) => complaints.push(line),
  });
  return { code, out, complaints };
}

interface Told {
  readonly measures: number;
  readonly movements: readonly number[];
  readonly playOrder: readonly string[];
  readonly seconds: { readonly scoreOrder: number; readonly performed: number };
  readonly bars: readonly { readonly number: string; readonly quarters: string }[];
  readonly parts: readonly {
    readonly name: string;
    readonly cueNotes: number;
    readonly rests: {
      readonly atLeast2s: number;
      readonly atLeast3s: number;
      readonly longest: readonly {
        readonly from: number;
        readonly seconds: number;
        readonly fromNumber: string;
      }[];
    };
    readonly pageReadings: readonly { readonly page: number; readonly from: number; readonly to: number }[];
  }[];
  readonly remarks: readonly { readonly code: string }[];
}

async function told(...words: string[]): Promise<Told> {
  const { code, out, complaints } = await run(...words, '--json');
  expect({ code, complaints }).toEqual({ code: 0, complaints: [] });
  return JSON.parse(out) as Told;
}

describe('score', () => {
  it('counts a single bar as one', async () => {
    const file = join(temporaryFolder(), 'one-bar.musicxml');
    const part = '<score-part id="P1"><part-name>Viola</part-name></score-part>';
    const bar = '<measure number="1"><note><rest/><duration>4</duration></note></measure>';
    writeFileSync(
      file,
      `<score-partwise version="4.0"><part-list>${part}</part-list><part id="P1">${bar}</part></score-partwise>`,
    );
    expect((await run(file)).out).toMatch(/^1 bar, \S+ as written; 1 bar, \S+ as performed$/m);
  });

  it('tells everything as data', async () => {
    const score = await told(DANCES);
    expect(score).toMatchObject({ measures: 10, movements: [0, 6], playOrder: ['0-4', '0-3', '5-9', '6-7'] });
    expect(score.bars.map(({ number, quarters }) => `${number}:${quarters}`).join(' ')).toBe(
      '0:1 1:3 2:3 3:3 X1:2 4:3 1:2 2:2 3:2 4:2',
    );
    expect(score.seconds.scoreOrder).toBeCloseTo(18, 9);
    expect(score.seconds.performed).toBeCloseTo(86 / 3, 9);
    expect(score.remarks).toEqual([]);
  });

  it("tells each player's rests and pages", async () => {
    const [oboe, horn] = (await told(DANCES)).parts;
    expect(oboe).toMatchObject({ name: 'Oboe', cueNotes: 1, rests: { atLeast2s: 4, atLeast3s: 2 } });
    const froms = oboe?.rests.longest.map(({ from, seconds }) => [from, seconds]) ?? [];
    [8 / 3, 8 + 8 / 3, 50 / 3 + 2, 50 / 3 + 10].forEach((from, index) => {
      expect(froms[index]?.[0]).toBeCloseTo(from, 9);
      expect(froms[index]?.[1]).toBeCloseTo(index < 2 ? 4 : 2, 9);
    });
    expect(horn?.rests.longest.map(({ fromNumber }) => fromNumber)).toEqual(['1', '1']);
    const pages = oboe?.pageReadings.map(({ page, to }) => [page, Math.round(to * 1000) / 1000]);
    expect(pages).toEqual([
      [1, 8],
      [1, 16.667],
      [2, 24.667],
      [2, 28.667],
    ]);
  });

  it('tells it in words', async () => {
    const { code, out } = await run(DANCES);
    expect(code).toBe(0);
    expect(out).toContain('Two Dances\n10 bars, 0:18.0 as written; 16 bars, 0:28.7 as performed');
    expect(out).toContain(
      '  0 to X1, 0 to 3 of movement 1, 4 of movement 1 to 4 of movement 2, 1 to 2 of movement 2',
    );
    expect(out).toContain('  pages: 1 from 0, 2 from 1 of movement 2');
    expect(out).toContain('     4.0 s at  0:02.7, bars 2 to 3 of movement 1, first time');
    expect(out).toContain('     4.0 s at  0:10.7, bars 2 to 3 of movement 1, second time');
  });

  it('names bars by their places where one movement has a number twice, and says so', async () => {
    const file = join(temporaryFolder(), 'twice.musicxml');
    const whole = '<note><rest/><duration>4</duration></note>';
    const bars = ['1', '2', '2', ''].map((number, index) => {
      const divisions = index === 0 ? '<attributes><divisions>1</divisions></attributes>' : '';
      return `<measure number="${number}">${divisions}${whole}</measure>`;
    });
    const list = '<score-part id="P1"><part-name>Oboe</part-name></score-part>';
    writeFileSync(
      file,
      `<score-partwise version="4.0"><part-list>${list}</part-list><part id="P1">${bars.join('')}</part></score-partwise>`,
    );
    const { out } = await run(file, '--order', '1-#2, #3-#4');
    expect(out).toContain('  1 to #2, #3 to #4');
    expect(out).toContain('#4 is the 4th bar of the file');
    expect(out).toContain('bars 1 to #4');
  });

  it('takes what is typed over', async () => {
    expect((await told(DANCES, '--tempo', '60')).seconds.performed).toBeCloseTo(37, 9);
    expect((await told(DANCES, '--tempo', '120@#7')).seconds.performed).toBeCloseTo(50 / 3 + 6, 9);
    expect((await told(DANCES, '--order', '#1-#6')).playOrder).toEqual(['0-5']);
    expect((await run(DANCES, '--tempo', '60@99')).complaints[0]).toContain('no bar has that number');
    expect((await run(DANCES, '--tempo', 'fast')).complaints[0]).toContain('is not a tempo such as 96');
    expect((await run(DANCES, '--order', '4')).complaints[0]).toContain('write which: #6, #10');
  });

  it.each([
    ['no file', 'missing.musicxml', null, 'is not there'],
    ['text', 'a.musicxml', 'do re mi', 'is no MusicXML'],
    ['entities', 'a.xml', '<!DOCTYPE a [<!ENTITY b "c">]><score-partwise/>', 'declares entities'],
    ['a cut archive', 'a.mxl', 'PK\u0003\u0004 and nothing more', 'is cut short'],
  ])('refuses %s in one line and prints nothing', async (_, name, content, reason) => {
    const path = join(temporaryFolder(), name);
    if (content !== null) writeFileSync(path, content);
    const { code, out, complaints } = await run(path);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toMatch(new RegExp(`^standlines: "${name}".*${reason}`));
  });

  it('wants a file, and the options it knows', async () => {
    expect((await run()).complaints).toEqual(['standlines: score needs a FILE']);
    expect((await run(DANCES, '--fast')).code).toBe(2);
    expect((await run(DANCES, '--root', 'x')).complaints[0]).toContain('is one score');
  });
});
