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
import {
  aConcert,
  aDocument,
  aDoor,
  anInstrument,
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
  const path = join(temporaryFolder(), 'concert.standlines');
  writeFileSync(path, writeDocument(document));
  const complaints: string[] = [];
  let out = '';
  const code = await commandLine([words[0] ?? '', path, ...words.slice(1)], {
    fs: nodeFs,
    now: () => new Date('2027-02-13T12:00:00'),
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
  const told = { fs: broken, now: () => new Date(), print: () => undefined, complain: () => undefined };
  await expect(commandLine(words, told)).rejects.toThrow('planted');
});
