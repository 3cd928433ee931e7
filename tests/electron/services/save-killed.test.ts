/** Saves by a process that is killed, has no room, or has no rights. Each runs in a child of its own. */

import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { chmodSync, chownSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bundle, type Bundle } from '../../helpers/bundle.ts';
import { temporariesIn, temporaryFolder } from '../../helpers/folders.ts';
import { sweepFolders } from '../../../electron/services/sweep.ts';
import { nodeFs } from '../../../electron/services/fs.ts';
import { contentOf, isWhole } from './whole-content.ts';

const KILLS = 60;
const NOBODY = 65534;

let child: Bundle;
beforeAll(async () => {
  child = await bundle('electron/services/saving-child.ts');
});
afterAll(() => child.remove());

function documentIn(folder: string): string {
  const path = join(folder, 'concert.standlines');
  writeFileSync(path, contentOf(1));
  return path;
}

/** Starts a saver, waits until it is ready and `delay` ms more, and kills it. */
function killAfter(path: string, delay: number): Promise<void> {
  const saver = spawn(process.execPath, [child.script, path, 'loop'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  saver.stdout.once('data', () => setTimeout(() => saver.kill('SIGKILL'), delay));
  return new Promise((resolve) => saver.once('exit', () => resolve()));
}

/** Delays of 0 to 40 ms, the same ones at every run. */
function* delays(): Generator<number> {
  for (let state = 20270213; ;) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    yield (state / 2 ** 32) * 40;
  }
}

it(`${KILLS} kills at arbitrary moments leave a whole file, and the next start clears up`, async () => {
  const folder = temporaryFolder();
  const path = documentIn(folder);
  const moments = delays();
  let changed = 0;
  for (let kill = 0; kill < KILLS; kill += 1) {
    const before = readFileSync(path);
    await killAfter(path, moments.next().value as number);
    const after = readFileSync(path);
    expect(isWhole(after), `kill ${kill}`).toBe(true);
    if (!after.equals(before)) changed += 1;
  }
  // Some kills must have hit after a save and some before, or the moments prove nothing.
  expect(changed).toBeGreaterThan(0);
  const inTwoHours = new Date(Date.now() + 2 * 3600_000);
  const left = temporariesIn(folder).length;
  expect(await sweepFolders(nodeFs, [folder], inTwoHours)).toBe(left);
  expect(temporariesIn(folder)).toEqual([]);
});

it('a kill at each single step leaves the old file before the rename and the new one after it', () => {
  const outcomes: string[] = [];
  for (let step = 1; ; step += 1) {
    const path = documentIn(temporaryFolder());
    const { signal } = spawnSync(process.execPath, [child.script, path, 'stop', String(step)]);
    const bytes = readFileSync(path);
    outcomes.push(bytes.equals(contentOf(1)) ? 'old' : bytes.equals(contentOf(2)) ? 'new' : 'broken');
    if (signal === null) break;
  }
  // Step 15 is the rename itself (see the order in save-file.test.ts); the last run was not killed.
  expect(outcomes).toEqual([...Array<string>(15).fill('old'), ...Array<string>(4).fill('new')]);
});

describe('on a disk of 4 MB that is full', () => {
  it('the save is refused, the old file stays and no temporary is left', (context) => {
    const works = spawnSync('unshare', ['-Urm', 'true']).status === 0;
    if (!works) context.skip('unshare cannot make a mount of its own here: the full disk was not tried');
    const folder = temporaryFolder();
    const source = documentIn(temporaryFolder());
    const script = `mount -t tmpfs -o size=4m tmpfs "$1" && cp "$2" "$1/concert.standlines" &&
      "$3" "$4" "$1/concert.standlines" once && ls -A "$1" && sha256sum "$1/concert.standlines" "$2" | cut -c1-64`;
    const words = ['-Urm', 'sh', '-c', script, 'sh', folder, source, process.execPath, child.script];
    const lines = execFileSync('unshare', words, { encoding: 'utf8' }).trim().split('\n');
    expect(lines.slice(0, 3)).toEqual(['ready', 'ENOSPC', 'concert.standlines']);
    expect(lines[3]).toBe(lines[4]);
  });
});

describe('as a user without rights', () => {
  const runAsNobody = (path: string) =>
    spawnSync(process.execPath, [child.script, path, 'once'], { uid: NOBODY, gid: NOBODY, encoding: 'utf8' });

  it('a folder that cannot be written in is refused and nothing is left there', (context) => {
    if (process.getuid?.() !== 0)
      context.skip('only root can become another user: the rights were not tried');
    const folder = join(temporaryFolder(), 'locked');
    mkdirSync(folder);
    chmodSync(join(folder, '..'), 0o755);
    const path = documentIn(folder);
    chownSync(path, NOBODY, NOBODY);
    chmodSync(folder, 0o555);
    expect(runAsNobody(path).stdout).toBe('ready\nEACCES\n');
    expect(readFileSync(path).equals(contentOf(1))).toBe(true);
    expect(temporariesIn(folder)).toEqual([]);
  });

  it('a file of another user is not replaced without a question', (context) => {
    if (process.getuid?.() !== 0)
      context.skip('only root can become another user: the rights were not tried');
    const folder = join(temporaryFolder(), 'shared');
    mkdirSync(folder);
    chmodSync(join(folder, '..'), 0o755);
    const path = documentIn(folder);
    chmodSync(path, 0o644);
    chmodSync(folder, 0o777);
    expect(runAsNobody(path).stdout).toBe('ready\nfile.readOnly\n');
    expect(readFileSync(path).equals(contentOf(1))).toBe(true);
  });
});
