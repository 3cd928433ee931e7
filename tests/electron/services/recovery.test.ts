/** Unsaved work: kept, offered to the right program, and never deleted but by choice. */

import { spawn } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { nodeFs } from '../../../electron/services/fs.ts';
import { createRecovery } from '../../../electron/services/recovery.ts';
import { isRunning, ownerOf, type Owner } from '../../../electron/services/running.ts';
import { temporaryFolder } from '../../helpers/folders.ts';

/** No process can have this number on Linux (the largest is 4,194,304), macOS or Windows' practice. */
const DEAD: Owner = { pid: 99_999_999, started: '1' };

const WORK = { name: 'Trio', path: '/home/somebody/trio.standlines', hash: 'f'.repeat(64), text: '{"a": 1}' };

function recoveryOf(state: string, owner?: Owner, now = () => new Date('2027-02-13T19:00:00Z')) {
  return createRecovery({ fs: nodeFs, state, now, ...(owner ? { owner } : {}) });
}

/** A process that lives until the test ends. */
function livingProcess(): Owner {
  const child = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1e9)'], { stdio: 'ignore' });
  onTestFinished(() => void child.kill());
  return ownerOf(child.pid ?? 0);
}

it('offers what a dead program kept, newest first, with its text, place and time', async () => {
  const state = temporaryFolder();
  await recoveryOf(state, DEAD).keep('one', WORK);
  await recoveryOf(state, DEAD, () => new Date('2027-02-13T20:00:00Z')).keep('two', {
    ...WORK,
    name: 'Later',
    path: null,
  });
  const offered = await recoveryOf(state).list();
  expect(offered.map(({ entry }) => [entry.name, entry.path, entry.savedAt])).toEqual([
    ['Later', null, '2027-02-13T20:00:00.000Z'],
    ['Trio', WORK.path, '2027-02-13T19:00:00.000Z'],
  ]);
  expect((await recoveryOf(state).read(offered[1]?.id ?? '')).text).toBe(WORK.text);
});

describe('two programs at once', () => {
  it('do not offer each other their live work', async () => {
    const state = temporaryFolder();
    await recoveryOf(state, livingProcess()).keep('document', WORK);
    expect(await recoveryOf(state).list()).toEqual([]);
  });

  it('a later process with the same number is not the owner', async () => {
    const living = livingProcess();
    expect(isRunning(living)).toBe(true);
    expect(isRunning({ pid: living.pid, started: '1' })).toBe(process.platform !== 'linux');
    expect(isRunning(DEAD)).toBe(false);
  });

  it('keep apart what their windows call by the same key', async () => {
    const state = temporaryFolder();
    await recoveryOf(state, DEAD).keep('document', { ...WORK, text: 'first' });
    await recoveryOf(state, DEAD).keep('document', { ...WORK, text: 'second' });
    const texts = (await recoveryOf(state).list()).map(({ entry }) => entry.text);
    expect(texts.sort()).toEqual(['first', 'second']);
  });
});

it('offers its own work only once the window that kept it has gone', async () => {
  const recovery = recoveryOf(temporaryFolder());
  await recovery.keep('document', WORK);
  expect(await recovery.list()).toEqual([]);
  recovery.disown();
  expect(await recovery.list()).toHaveLength(1);
  await recovery.keep('another', WORK);
  expect(await recovery.list()).toHaveLength(1);
});

it('keeps an entry through listing and reading, until it is dropped or discarded', async () => {
  const state = temporaryFolder();
  const dead = recoveryOf(state, DEAD);
  await dead.keep('a', WORK);
  await dead.keep('b', WORK);
  const recovery = recoveryOf(state);
  for (let start = 0; start < 3; start += 1) {
    const [first] = await recovery.list();
    await recovery.read(first?.id ?? '');
  }
  expect(await recovery.list()).toHaveLength(2);
  await dead.drop('a');
  expect(await recovery.list()).toHaveLength(1);
  await recovery.discard((await recovery.list())[0]?.id ?? '');
  expect(await recovery.list()).toEqual([]);
  expect(readdirSync(join(state, 'recovery'))).toEqual([]);
});

it('falls back to the autosave before when the last one is damaged, and never throws over rubbish', async () => {
  const state = temporaryFolder();
  const dead = recoveryOf(state, DEAD);
  await dead.keep('a', { ...WORK, text: 'earlier' });
  await dead.keep('a', { ...WORK, text: 'later' });
  const folder = join(state, 'recovery');
  const [name = ''] = readdirSync(folder).filter((entry) => entry.endsWith('.json'));
  writeFileSync(join(folder, name), '{"name": "Tri');
  writeFileSync(join(folder, `${'0'.repeat(32)}.json`), '\0\0\0');
  writeFileSync(join(folder, 'notes.txt'), 'not ours');
  const offered = await recoveryOf(state).list();
  expect(offered.map(({ entry }) => entry.text)).toEqual(['earlier']);
});

it('work that was opened from an entry takes its place, and the entry stays while that fails', async () => {
  const state = temporaryFolder();
  await recoveryOf(state, DEAD).keep('a', { ...WORK, text: 'before' });
  const recovery = recoveryOf(state);
  const [opened] = await recovery.list();
  const full = createRecovery({
    fs: { ...nodeFs, rename: () => Promise.reject(new Error('full')) },
    state,
    now: () => new Date(),
  });
  await expect(full.keep('b', { ...WORK, text: 'after' }, opened?.id)).rejects.toThrow('full');
  expect((await recovery.list()).map(({ entry }) => entry.text)).toEqual(['before']);
  await recovery.keep('b', { ...WORK, text: 'after' }, opened?.id);
  recovery.disown();
  expect((await recovery.list()).map(({ entry }) => entry.text)).toEqual(['after']);
});

it('reads entries of older versions, which do not say what the file held', async () => {
  const state = temporaryFolder();
  await recoveryOf(state, DEAD).keep('a', WORK);
  const folder = join(state, 'recovery');
  const [name = ''] = readdirSync(folder);
  const { hash, ...older } = JSON.parse(readFileSync(join(folder, name), 'utf8')) as Record<string, unknown>;
  expect(hash).toBe(WORK.hash);
  writeFileSync(join(folder, name), JSON.stringify(older));
  expect((await recoveryOf(state).list()).map(({ entry }) => entry.hash)).toEqual([null]);
});
