/**
 * The demo's music is what the program makes of our own score: read, given to the first setup, paged. Run with `-u` after
 * a change of the score to write the demo anew.
 */

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { setScore } from '#model/commands/score.ts';
import { applyDiff } from '#model/document/diff.ts';
import { allOf, documentOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { Music } from '#model/document/music.ts';
import { readDocument } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { instanceOf } from '#model/pages/instance/instance-of.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import { withPages } from '#model/score/music/typed-over.ts';
import { nodeFs } from '../../../electron/services/fs.ts';
import { openScore } from '../../../electron/services/score-file.ts';
import { temporaryFolder } from '../../helpers/folders.ts';
import { LOCK_GATES_PAGES, lockGates } from '../../helpers/lock-gates.ts';

const DEMO = fileURLToPath(new URL('../../../assets/demo-concert.standlines', import.meta.url));
const SETUP = asId<'setup'>('setup-1');

function demo(): Document {
  const read = readDocument(readFileSync(DEMO, 'utf8'));
  if (!read.ok) throw new Error(read.problem.message);
  return read.document;
}

async function paged(): Promise<Music> {
  const file = join(temporaryFolder(), 'lock-gates.musicxml');
  writeFileSync(file, lockGates());
  const { music } = await openScore(nodeFs, file, { root: null, repeatsAfterJump: false });
  return music.parts.reduce((so, { name }, index) => {
    const typed = withPages(so, index, LOCK_GATES_PAGES[name as keyof typeof LOCK_GATES_PAGES]);
    if (!typed.ok) throw new Error(`pages of ${name}: ${typed.problem.code}`);
    return typed.value;
  }, music);
}

test('the demo holds the music of its first setup as the program reads it', async () => {
  const silent = documentOf([...demo().records.values()].filter(({ kind }) => kind !== 'score'));
  const given = setScore(silent, { setup: SETUP, music: await paged(), source: 'lock-gates.musicxml' });
  if (!given.ok) throw new Error(given.reason);
  await expect(writeDocument(applyDiff(silent, given.diff))).toMatchFileSnapshot(DEMO);
});

test('lasts as long as its tempos say, with the repeat', () => {
  const [score] = allOf(demo(), 'score');
  expect(score?.music.remarks).toEqual([]);
  expect(score?.players).toEqual(['player-1', 'player-2']);
  const asked = instanceOf(demo(), SETUP);
  if (!asked.ok) throw new Error(asked.missing.join(' '));
  // 29 bars of 4 quarters at 76, 31 + 16 of 3 at 92, 24 of 4 at 60.
  const seconds = (29 * 4 * 60) / 76 + (47 * 3 * 60) / 92 + 24 * 4;
  expect(asked.instance.players[0]?.readings.at(-1)?.to).toBeCloseTo(seconds, 9);
});

test('a plan of two turns is known to be the best', () => {
  const asked = instanceOf(demo(), SETUP);
  if (!asked.ok) throw new Error(asked.missing.join(' '));
  const result = planNow(asked.instance);
  if (result.status !== 'planned') throw new Error(result.status);
  expect(result.cost.turns).toBe(2);
  expect(result.proof.turns).toEqual({ value: 2, atLeast: 2 });
});
