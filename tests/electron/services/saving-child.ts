/**
 * A program that saves, for tests that kill it. `PATH loop`: saves again and again, alternating two contents.
 * `PATH once`: saves once. `PATH stop N`: kills itself at step N of a save. Prints "ready" before the first save.
 */

import { readFileSync, writeSync } from 'node:fs';
import { nodeFs } from '../../../electron/services/fs.ts';
import { hashOf, saveFile, type SaveJob } from '../../../electron/services/save-file.ts';
import { failingFs } from '../../helpers/failing-fs.ts';
import { contentOf } from './whole-content.ts';

const [path = '', mode, step] = process.argv.slice(2);

function job(round: number): SaveJob {
  const expectedHash = hashOf(readFileSync(path));
  return {
    path,
    bytes: contentOf(round),
    expectedHash,
    replace: false,
    device: null,
    backup: true,
    newMode: 0o666,
  };
}

writeSync(1, 'ready\n');
if (mode === 'loop') for (let round = 0; ; round += 1) await saveFile(nodeFs, job(round));
if (mode === 'stop') await saveStoppedAt(Number(step));
if (mode === 'once') await saveOnce();

async function saveStoppedAt(at: number): Promise<void> {
  const { fs } = failingFs({ at, code: 'KILL', fail: () => process.kill(process.pid, 'SIGKILL') });
  await saveFile(fs, job(2));
}

async function saveOnce(): Promise<void> {
  const outcome = await saveFile(nodeFs, job(2)).then(
    (saved) => saved.warning ?? 'saved',
    (error: NodeJS.ErrnoException) => error.code ?? error.message,
  );
  writeSync(1, `${outcome}\n`);
}
