/** The save routine. The order of its steps is stated in save-file.ts, and each is made to fail in turn. */

import {
  chmodSync,
  linkSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { execFileSync } from 'node:child_process';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { FaultError } from '../../../electron/services/faults.ts';
import { nodeFs } from '../../../electron/services/fs.ts';
import { hashOf, saveFile, type SaveJob } from '../../../electron/services/save-file.ts';
import { failingFs } from '../../helpers/failing-fs.ts';
import { temporariesIn, temporaryFolder } from '../../helpers/folders.ts';

const OLD = Buffer.from('the old version, whole');
const NEW = Buffer.from('the new version, whole and longer');

function job(path: string, change: Partial<SaveJob> = {}): SaveJob {
  return {
    path,
    bytes: NEW,
    expectedHash: hashOf(OLD),
    replace: false,
    device: null,
    backup: true,
    newMode: 0o666,
    ...change,
  };
}

function oldFile(folder = temporaryFolder(), name = 'concert.standlines'): string {
  const path = join(folder, name);
  writeFileSync(path, OLD);
  return path;
}

async function faultCode(work: Promise<unknown>): Promise<string> {
  const error = await work.then(
    () => null,
    (reason: unknown) => reason,
  );
  return error instanceof FaultError ? error.code : ((error as NodeJS.ErrnoException | null)?.code ?? 'none');
}

describe('the order of a save', () => {
  it('flushes the file before the rename and the folder after it', async () => {
    const path = oldFile();
    const { fs, steps } = failingFs({ at: Infinity, code: '' });
    await saveFile(fs, job(path));
    expect(steps).toEqual([
      'realpath',
      'stat',
      'access',
      ...['open r', 'read', 'close'],
      ...['open wx', 'write', 'fstat', 'chmod', 'sync', 'close'],
      ...['link', 'rename'],
      'rename',
      ...['open r', 'sync', 'close'],
    ]);
  });

  it('keeps the version before beside the file, and the permission bits', async () => {
    const path = oldFile();
    chmodSync(path, 0o640);
    const saved = await saveFile(nodeFs, job(path));
    expect(readFileSync(path)).toEqual(NEW);
    expect(readFileSync(`${path}.bak`)).toEqual(OLD);
    expect(statSync(path).mode & 0o777).toBe(0o640);
    expect(saved).toMatchObject({ path, hash: hashOf(NEW), warning: null });
    expect(temporariesIn(join(path, '..'))).toEqual([]);
  });
});

describe.each(['ENOSPC', 'EIO', 'EACCES', 'EROFS', 'EBUSY'])('a disk that answers %s', (code) => {
  it.each([false, true])(
    'at every step (for ever: %s) leaves the old or the new file, whole',
    async (forever) => {
      let outcomes = '';
      for (let at = 1; ; at += 1) {
        const path = oldFile();
        const { fs, steps } = failingFs({ at, code, forever });
        const result = await saveFile(fs, job(path)).then(
          (saved) => saved,
          (error: unknown) => error as Error,
        );
        const onDisk = readFileSync(path);
        const failed = result instanceof Error;
        expect(failed ? OLD : NEW, `step ${at}: ${steps.at(-1)}`).toEqual(onDisk);
        expect(temporariesIn(join(path, '..')), `step ${at}: ${steps.at(-1)}`).toEqual([]);
        outcomes += failed ? 'f' : result.warning ? 'w' : 's';
        if (at > steps.length) break;
      }
      // Failures before the rename, warnings for the backup and for the folder after it, and a clean save at last.
      expect(outcomes).toMatch(/^f+.*w+s$/);
      expect(outcomes.length).toBeGreaterThan(15);
    },
  );
});

it('says "saved" when only the folder could not be flushed after the rename', async () => {
  const path = oldFile();
  const { fs, steps } = failingFs({ at: 17, code: 'EIO' });
  const saved = await saveFile(fs, job(path));
  expect(steps[16]).toBe('sync');
  expect(steps[14]).toBe('rename');
  expect(saved.warning).toMatch(/^Saved, but the disk reported an error/);
  expect(readFileSync(path)).toEqual(NEW);
});

it('notices a write that was cut short without an error', async () => {
  const path = oldFile();
  const cutting = {
    ...nodeFs,
    open: async (name: string, flags: string | number, mode?: number) => {
      const file = await nodeFs.open(name, flags, mode);
      if (flags !== 'wx') return file;
      const writeFile = (bytes: Uint8Array) => file.writeFile(bytes.subarray(0, 5));
      return { ...bound(file), writeFile };
    },
  };
  expect(await faultCode(saveFile(cutting, job(path)))).toBe('ENOSPC');
  expect(readFileSync(path)).toEqual(OLD);
  expect(temporariesIn(join(path, '..'))).toEqual([]);
});

function bound(file: Awaited<ReturnType<typeof nodeFs.open>>) {
  return {
    readFile: () => file.readFile(),
    stat: () => file.stat(),
    chmod: (mode: number) => file.chmod(mode),
    sync: () => file.sync(),
    close: () => file.close(),
  };
}

describe('what is refused', () => {
  it('a file that another program changed, even with the same size and time', async () => {
    const path = oldFile();
    const { atime, mtime } = statSync(path);
    const theirs = Buffer.from(OLD.toString().replace('old', 'OLD'));
    writeFileSync(path, theirs);
    (await import('node:fs')).utimesSync(path, atime, mtime);
    expect(await faultCode(saveFile(nodeFs, job(path)))).toBe('file.changedOnDisk');
    expect(readFileSync(path)).toEqual(theirs);
  });

  it('a new file where one exists, until the user agrees', async () => {
    const path = oldFile();
    expect(await faultCode(saveFile(nodeFs, job(path, { expectedHash: null })))).toBe('file.exists');
    await saveFile(nodeFs, job(path, { expectedHash: null, replace: true }));
    expect(readFileSync(path)).toEqual(NEW);
  });

  it('a file that was deleted meanwhile, until the user agrees', async () => {
    const path = join(temporaryFolder(), 'gone.standlines');
    expect(await faultCode(saveFile(nodeFs, job(path)))).toBe('file.gone');
    await saveFile(nodeFs, job(path, { replace: true }));
    expect(readFileSync(path)).toEqual(NEW);
  });

  it('a file marked read-only, for root too, until the user agrees', async () => {
    const path = oldFile();
    chmodSync(path, 0o444);
    expect(await faultCode(saveFile(nodeFs, job(path)))).toBe('file.readOnly');
    expect(readFileSync(path)).toEqual(OLD);
    await saveFile(nodeFs, job(path, { replace: true }));
    expect(readFileSync(path)).toEqual(NEW);
    expect(statSync(path).mode & 0o777).toBe(0o444);
  });

  it('a file whose drive has gone, so that nothing is written under its mount point', async () => {
    const path = oldFile();
    const device = statSync(path).dev + 1;
    expect(await faultCode(saveFile(nodeFs, job(path, { device, replace: true })))).toBe('disk.gone');
    expect(readdirSync(join(path, '..'))).toEqual([basename(path)]);
  });

  it('a new file in a folder that is not there', async () => {
    const path = join(temporaryFolder(), 'missing', 'a.standlines');
    expect(await faultCode(saveFile(nodeFs, job(path, { expectedHash: null })))).toBe('file.noFolder');
  });

  it('folders, pipes and circular links', async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'folder.standlines'));
    execFileSync('mkfifo', [join(folder, 'pipe.standlines')]);
    symlinkSync('circle.standlines', join(folder, 'circle.standlines'));
    const codeFor = (name: string) => faultCode(saveFile(nodeFs, job(join(folder, name), { replace: true })));
    expect(await codeFor('folder.standlines')).toBe('file.isFolder');
    expect(await codeFor('pipe.standlines')).toBe('file.notRegular');
    expect(await codeFor('circle.standlines')).toBe('ELOOP');
  });
});

describe('names and links', () => {
  it('a linked document stays a link and its target is replaced', async () => {
    const path = oldFile();
    const link = join(temporaryFolder(), 'link.standlines');
    symlinkSync(path, link);
    const saved = await saveFile(nodeFs, job(link));
    expect(saved.path).toBe(path);
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
    expect(readFileSync(path)).toEqual(NEW);
  });

  it('the other name of a hard-linked file keeps the old version', async () => {
    const path = oldFile();
    linkSync(path, `${path}.other`);
    await saveFile(nodeFs, job(path));
    expect(readFileSync(`${path}.other`)).toEqual(OLD);
  });

  it.each([
    'Dvořák – Trio.standlines',
    'Dvor\u030ca\u0301k.standlines',
    '日本.standlines',
    '🎻.standlines',
    '-rf.standlines',
    `${'x'.repeat(244)}.standlines`,
    `${'é'.repeat(122)}.standlines`,
  ])('saves as %s', async (name) => {
    const path = join(temporaryFolder(), name);
    await saveFile(nodeFs, job(path, { expectedHash: null }));
    await saveFile(nodeFs, job(path, { expectedHash: hashOf(NEW), bytes: OLD }));
    expect(readFileSync(path)).toEqual(OLD);
    expect(temporariesIn(join(path, '..'))).toEqual([]);
  });

  it('a name of 256 bytes is refused by the system, not by a crash', async () => {
    const path = join(temporaryFolder(), 'x'.repeat(256));
    expect(await faultCode(saveFile(nodeFs, job(path, { expectedHash: null })))).toBe('ENAMETOOLONG');
  });
});
