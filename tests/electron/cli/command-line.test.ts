/** The verbs on documents of the edge: no house, no players, many of everything. */

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Document } from '#model/document/document.ts';
import { documentOf } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { commandLine } from '../../../electron/cli/command-line.ts';
import { nodeFs } from '../../../electron/services/fs.ts';
import { DEFAULT_SETTINGS, writeSettings } from '../../../electron/services/settings.ts';
import {
  aConcert,
  aDocument,
  aDoor,
  anInstrument,
  anInstrumentStand,
  aPlace,
  aPlatform,
  aPlayer,
  aSeatBlock,
  aSetup,
  aStand,
  SIDE,
} from '../../helpers/build.ts';
import { temporaryFolder } from '../../helpers/folders.ts';

interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly complaints: readonly string[];
}

async function run(document: Document, ...words: string[]): Promise<Outcome> {
  const state = temporaryFolder();
  return runIn(state, document, ...words);
}

async function runIn(state: string, document: Document, ...words: string[]): Promise<Outcome> {
  const path = join(temporaryFolder(), 'concert.standlines');
  writeFileSync(path, writeDocument(document));
  const complaints: string[] = [];
  let out = '';
  const code = await commandLine([words[0] ?? '', path, ...words.slice(1)], {
    fs: nodeFs,
    now: () => new Date('2027-02-13T12:00:00'),
    state,
    print: (text) => (out += text),
    complain: (line) => complaints.push(line),
  });
  return { code, out, complaints };
}

const READER = aStand({ sides: [{ ...SIDE, reader: asId('player-1'), turned: true }] });

const EDGES: readonly (readonly [string, Document])[] = [
  ['an empty platform before an empty house', documentOf([aConcert(), aSetup(), aPlatform(), aDoor()])],
  ['a house and nobody on the platform', aDocument()],
  ['a platform without a way out', documentOf([aConcert(), aSetup(), aPlatform(), aPlayer()])],
  ['a player without a house', documentOf([aConcert(), aSetup(), aPlatform(), aDoor(), aPlayer(), READER])],
  ['a player in the lap of the only place', aDocument(aPlayer({ x: 0, y: 0 }), aPlace({ x: 0, y: -1 }))],
  [
    'names that are empty, long and in every script',
    aDocument(aConcert({ name: '' }), aPlayer({ name: 'Ž'.repeat(80) }), anInstrument({ name: '日本 🎻' })),
  ],
  ['imperial units', aDocument(aConcert({ units: 'imperial' }), aPlayer(), READER)],
  ['a house of two thousand seats', aDocument(aSeatBlock({ rows: 40, seatsPerRow: 50 }), aPlayer(), READER)],
];

describe.each(EDGES)('%s', (_what, document) => {
  it('is checked in words without gaps', async () => {
    const { code, out, complaints } = await run(document, 'check');
    expect([code, complaints]).toEqual([0, []]);
    expect(out).toContain('\nFindings\n');
    expect(out).not.toMatch(/undefined|NaN|null|Infinity|\[object/);
  });

  it('is checked as data without gaps', async () => {
    const { code, out } = await run(document, 'check', '--json', '--geometry');
    expect(code).toBe(0);
    const { scene, findings } = JSON.parse(out) as {
      scene: object;
      findings: { measured: number; required: number; headline: string; text: string }[];
    };
    expect(JSON.stringify(scene)).not.toContain('null');
    for (const { measured, required, headline, text } of findings) {
      expect([typeof measured, typeof required]).toEqual(['number', 'number']);
      expect(headline + text).not.toMatch(/undefined|NaN|Infinity/);
    }
  });

  it('is printed', async () => {
    const file = join(temporaryFolder(), 'plot.pdf');
    const { code, complaints } = await run(document, 'plot', '--out', file, '--paper', 'A3');
    expect([code, complaints]).toEqual([0, []]);
    expect(readFileSync(file).subarray(0, 5).toString()).toBe('%PDF-');
  });
});

it('prints on the paper used last, otherwise on the one that goes with the concert’s units', async () => {
  const file = join(temporaryFolder(), 'plot.pdf');
  const state = temporaryFolder();
  const paperOf = async (units: 'metric' | 'imperial') => {
    const { out } = await runIn(state, aDocument(aConcert({ units }), aPlayer()), 'plot', '--out', file);
    return / on (\w+) /.exec(out)?.[1];
  };
  expect([await paperOf('metric'), await paperOf('imperial')]).toEqual(['A4', 'Letter']);
  await writeSettings(nodeFs, state, { ...DEFAULT_SETTINGS, paper: 'A3' });
  expect([await paperOf('metric'), await paperOf('imperial')]).toEqual(['A3', 'A3']);
});

it('the default setup is the first of the programme, whatever its id', async () => {
  const document = aDocument(aSetup({ order: 2 }), aSetup({ id: 'setup-2', order: 1, name: 'Overture' }));
  const { out } = await run(document, 'check', '--json');
  expect(JSON.parse(out)).toMatchObject({
    setup: { id: 'setup-2', name: 'Overture' },
    setups: [{ id: 'setup-2' }, { id: 'setup-1' }],
  });
});

it('a bug is thrown and not told as bad input', async () => {
  const broken = { ...nodeFs, realpath: () => Promise.reject(new TypeError('planted')) };
  const words = ['check', 'a.standlines'];
  const told = {
    fs: broken,
    state: '',
    now: () => new Date(),
    print: () => undefined,
    complain: () => undefined,
  };
  await expect(commandLine(words, told)).rejects.toThrow('planted');
});

describe('a model that the catalogue does not have', () => {
  const odd = aDocument(aPlayer(), anInstrument({ model: 'oboe-of-glass' }), aStand({ model: 'of-ice' }));
  const notes = [
    'instrument "instrument-1": the catalogue has no model "oboe-of-glass"; it is taken for a usual one.',
    'stand "stand-1": the catalogue has no model "of-ice"; it is taken for a usual one.',
  ];
  const lines = notes.map((note) => `standlines: note: ${note}`);

  it('is noted in a line each, and the check is made', async () => {
    const { code, out, complaints } = await run(odd, 'check');
    expect([code, complaints]).toEqual([0, lines]);
    expect(out).not.toContain('oboe-of-glass');
  });

  it('is noted in the data, which stays JSON', async () => {
    const { code, out, complaints } = await run(odd, 'check', '--json');
    expect([code, complaints]).toEqual([0, lines]);
    expect(JSON.parse(out)).toMatchObject({ notes });
  });

  it('is noted, and the plot is printed', async () => {
    const { code, complaints } = await run(odd, 'plot', '--out', join(temporaryFolder(), 'plot.pdf'));
    expect([code, complaints]).toEqual([0, lines]);
  });

  it('is not mentioned where the command is refused: that is one line', async () => {
    const { code, complaints } = await run(odd, 'check', '--setup', 'Encore');
    expect([code, complaints.length]).toEqual([2, 1]);
    expect(complaints[0]).toContain('no setup "Encore"');
  });

  it('is noted twenty times, and the rest are counted', async () => {
    const stands = Array.from({ length: 25 }, (_, index) =>
      aStand({ id: `stand-${index + 1}`, model: 'of-ice', x: 50 * index }),
    );
    const { complaints } = await run(aDocument(...stands), 'check');
    expect(complaints).toHaveLength(21);
    expect(complaints[20]).toBe(
      'standlines: note: The catalogue does not have what 5 more of the records name.',
    );
  });
});

it('a concert whose models are all known has no notes', async () => {
  const { out } = await run(aDocument(), 'check', '--json');
  expect(JSON.parse(out)).toMatchObject({ notes: [] });
});

it('says what of the house hides somebody, and who stoops', async () => {
  const low = anInstrumentStand({ x: -500, y: 1700, height: 200 });
  const shaker = anInstrument({ model: 'clarinet-a', support: asId('instrumentStand-1') });
  const balcony = aSeatBlock({ rows: 2, name: 'Balcony', frontRail: 1800 });
  const { out } = await run(aDocument(aPlayer(), low, shaker, balcony), 'check');
  expect(out).toMatch(/covered by the rail of Balcony \(\d+ % of the player/);
  expect(out).toMatch(/take up .* stooping /);
});

it('tells what was tried against a finding, in place of what was not', async () => {
  const steep = aDocument(aPlayer(), { ...READER, facing: READER.facing + 80 });
  interface Told {
    readonly findings: readonly {
      readonly code: string;
      readonly tried: object | null;
      readonly advice: string;
    }[];
  }
  for (const flag of ['--what-if', '--json']) {
    const { findings } = JSON.parse((await run(steep, 'check', flag)).out) as Told;
    const angle = findings.find(({ code }) => code === 'reading.angle');
    expect(angle?.tried).toMatchObject({ kind: expect.any(String), after: expect.any(Number) });
    expect(angle?.advice).toMatch(/^(Move|Turn|Lower) .* \(tried\)\./);
  }
  const { out } = await run(steep, 'check');
  expect(out).toMatch(/steep angle\n.*\n +(Move|Turn|Lower) .* \(tried\)\./);
  expect(out).not.toContain('Try: turn');
});

it('the data have the form that DEVELOPERS.md describes', async () => {
  const { out } = await run(aDocument(aPlayer(), READER), 'check', '--geometry', '--what-if');
  const data = JSON.parse(out) as Readonly<Record<string, unknown>>;
  const keysOf = (value: unknown): string[] => Object.keys(value as object).sort();
  const first = (name: string): unknown => (data[name] as readonly unknown[])[0];
  expect(Object.keys(data)).toEqual(
    'file notes setup setups units findings sight reach routes reading facing whatIf scene'.split(' '),
  );
  expect(keysOf(first('findings'))).toEqual(
    'advice code detail headline labels measured required severity subjects text tried unit where'.split(' '),
  );
  expect(keysOf(first('sight'))).toEqual(
    'bands coveredBy faceSeenWell label median player seenWell worst'.split(' '),
  );
  expect(keysOf(first('reach'))).toEqual(
    'armReach armResidual distance freeTime freeTimeAt freeTimeSource grip hand ifNearer labels manner reachInPlace seconds secondsRange stoops'.split(
      ' ',
    ),
  );
  expect(keysOf(first('routes'))).toEqual('exit label path player turning width'.split(' '));
  expect(first('reach')).toMatchObject({ labels: ['player 1', 'stand 1'] });
  expect(keysOf(first('whatIf'))).toEqual('gone label lowered now record turned'.split(' '));
  expect(first('reading')).toMatchObject({ labels: ['player 1', 'stand 1'], player: 'player-1', side: 0 });
  expect(data['facing']).toMatchObject({ pairs: [], toHouse: [{ label: 'player 1', angle: 0 }] });
  expect(keysOf(data['scene'])).toEqual('occluders seats targets visible'.split(' '));
});

it('what the house would see without a thing is told only of things that change something', async () => {
  const { whatIf, scene } = JSON.parse(
    (await run(aDocument(aPlayer(), READER), 'check', '--geometry', '--what-if')).out,
  ) as {
    whatIf: {
      record: string;
      now: unknown;
      gone: unknown;
      lowered: { seen: unknown } | null;
      turned: { seen: unknown } | null;
    }[];
    scene: { occluders: { id: string }[] };
  };
  // The platform's sides are in the way of somebody's feet, and nobody would see a player better without them.
  expect(scene.occluders.some(({ id }) => id.startsWith('platform-1'))).toBe(true);
  expect(whatIf.map(({ record }) => record)).toEqual(['stand-1']);
  for (const { now, gone, lowered, turned } of whatIf) {
    expect(
      [gone, lowered?.seen, turned?.seen].some(
        (seen) => seen && JSON.stringify(seen) !== JSON.stringify(now),
      ),
    ).toBe(true);
  }
});

it('a name that turns the writing direction round does not reach the terminal, but the data', async () => {
  const name = '\u202egnp.exe';
  const odd = aDocument(aPlayer({ name }));
  expect((await run(odd, 'check')).out).toContain('gnp.exe (player 1)');
  expect((await run(odd, 'check')).out).not.toContain('\u202e');
  const { sight } = JSON.parse((await run(odd, 'check', '--json')).out) as { sight: { label: string }[] };
  expect(sight[0]?.label).toBe(`${name} (player 1)`);
  const plotted = await run(odd, 'plot', '--out', join(temporaryFolder(), 'plot.pdf'));
  expect(plotted.out).not.toContain('No font has');
});
