/**
 * Writing a file so that whatever happens there is either the old or the new one, whole. Own code because the
 * packaged helpers ignore short writes (a full disk cuts the good file) and never flush the folder.
 */

import { createHash, randomBytes } from 'node:crypto';
import { constants } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import { errorCode, type Fs, type OpenFile } from './fs.ts';
import { backupName, temporaryName } from './temporary-names.ts';

export interface SaveJob {
  readonly path: string;
  readonly bytes: Uint8Array;
  /** SHA-256 of what is believed to be on disk; null: a new file; `any`: the program's own file, no question. */
  readonly expectedHash: string | null | 'any';
  /** The user agreed to replace whatever is there. */
  readonly replace: boolean;
  /** Device the file was on when it was opened; null: not known. */
  readonly device: number | null;
  /** Keep the version before this one next to the file. */
  readonly backup: boolean;
  /** Permission bits of a file that is new. */
  readonly newMode: number;
}

export interface SavedFile {
  /** Where it really is, links followed. */
  readonly path: string;
  readonly hash: string;
  readonly device: number;
  readonly warning: string | null;
}

interface Target {
  readonly path: string;
  readonly folder: string;
  readonly device: number;
  /** Permission bits of the old file; null: there is none. */
  readonly mode: number | null;
}

export function hashOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/**
 * Saves `job.bytes`. Throws `FaultError` when the save is refused and the system's error when a step fails; in both
 * cases the old file is untouched and no temporary file remains (unless it cannot be removed either).
 */
export async function saveFile(fs: Fs, job: SaveJob): Promise<SavedFile> {
  const target = await findTarget(fs, job.path);
  await refuseIfReadOnly(fs, job, target);
  refuseIfOtherDevice(job, target);
  await refuseIfChanged(fs, job, target);
  const temporary = await writeTemporary(fs, job, target);
  let remark: string | null;
  try {
    remark = job.backup && target.mode !== null ? await keepBackup(fs, target.path) : null;
    await fs.rename(temporary, target.path);
  } catch (error) {
    await removeQuietly(fs, temporary);
    throw error;
  }
  const warning = (await flushFolder(fs, target.folder)) ?? remark;
  return { path: target.path, hash: hashOf(job.bytes), device: target.device, warning };
}

/** Follows links, so that a linked document stays a link and its target is replaced. */
async function findTarget(fs: Fs, path: string): Promise<Target> {
  const real = await existingPath(fs, path);
  if (real === null) return newTarget(fs, path);
  const stats = await fs.stat(real);
  if (stats.isDirectory())
    throw new FaultError('file.isFolder', t`"${basename(path)}" is a folder, not a file.`);
  if (!stats.isFile()) {
    throw new FaultError(
      'file.notRegular',
      t`"${basename(path)}" is not an ordinary file. Choose another name.`,
    );
  }
  return { path: real, folder: dirname(real), device: stats.dev, mode: stats.mode & 0o7777 };
}

async function newTarget(fs: Fs, path: string): Promise<Target> {
  const folder = await existingPath(fs, dirname(path));
  if (folder === null) throw new FaultError('file.noFolder', t`There is no folder ${dirname(path)}.`);
  const { dev } = await fs.stat(folder);
  return { path: join(folder, basename(path)), folder, device: dev, mode: null };
}

async function existingPath(fs: Fs, path: string): Promise<string | null> {
  try {
    return await fs.realpath(path);
  } catch (error) {
    if (errorCode(error) === 'ENOENT') return null;
    throw error;
  }
}

/** A rename would quietly replace a file that its owner has locked, so ask first. */
async function refuseIfReadOnly(fs: Fs, job: SaveJob, target: Target): Promise<void> {
  if (target.mode === null || job.replace) return;
  if (!(await isReadOnly(fs, target.path, target.mode))) return;
  throw new FaultError(
    'file.readOnly',
    t`"${basename(target.path)}" is marked read-only. Replace it all the same, or save under another name.`,
  );
}

/** The mode bits count too, because they mean nothing to the system when root asks. */
export async function isReadOnly(fs: Fs, path: string, mode: number): Promise<boolean> {
  if ((mode & 0o222) === 0) return true;
  try {
    await fs.access(path, constants.W_OK);
    return false;
  } catch (error) {
    if (['EACCES', 'EPERM', 'EROFS'].includes(errorCode(error))) return true;
    throw error;
  }
}

/** When a drive was pulled out, its empty mount point remains and would swallow the file. */
function refuseIfOtherDevice(job: SaveJob, target: Target): void {
  if (job.device === null || job.device === target.device) return;
  throw new FaultError(
    'disk.gone',
    t`The drive that held "${basename(job.path)}" is no longer at ${target.folder}. Put it back, or save elsewhere.`,
  );
}

async function refuseIfChanged(fs: Fs, job: SaveJob, target: Target): Promise<void> {
  if (job.replace || job.expectedHash === 'any') return;
  const name = basename(target.path);
  if (target.mode === null) {
    if (job.expectedHash === null) return;
    throw new FaultError(
      'file.gone',
      t`"${name}" has been moved or deleted since it was opened. Save it again?`,
    );
  }
  if (job.expectedHash === null) {
    throw new FaultError('file.exists', t`There is already a "${name}" in ${target.folder}. Replace it?`);
  }
  if ((await hashOnDisk(fs, target.path)) === job.expectedHash) return;
  throw new FaultError(
    'file.changedOnDisk',
    t`Another program has changed "${name}" since it was opened. Keep yours, load theirs, or save a copy.`,
  );
}

async function hashOnDisk(fs: Fs, path: string): Promise<string> {
  const file = await fs.open(path, 'r');
  try {
    return hashOf(await file.readFile());
  } finally {
    await file.close();
  }
}

/** In the same folder, because a rename is one step only within a file system. Returns its path. */
async function writeTemporary(fs: Fs, job: SaveJob, target: Target): Promise<string> {
  const name = temporaryName(basename(target.path), process.pid, randomBytes(6).toString('hex'));
  const path = join(target.folder, name);
  const file = await fs.open(path, 'wx', target.mode ?? job.newMode);
  try {
    await fill(file, job.bytes, target.mode);
  } catch (error) {
    await file.close().catch(() => undefined);
    await removeQuietly(fs, path);
    throw error;
  }
  return path;
}

async function fill(file: OpenFile, bytes: Uint8Array, mode: number | null): Promise<void> {
  await file.writeFile(bytes);
  const { size } = await file.stat();
  if (size !== bytes.length) throw Object.assign(new Error('short write'), { code: 'ENOSPC' });
  if (mode !== null) await file.chmod(mode);
  await file.sync();
  await file.close();
}

/** A failing backup must not stop the save itself. Returns a remark for the user, or null. */
async function keepBackup(fs: Fs, path: string): Promise<string | null> {
  const folder = dirname(path);
  const name = basename(path);
  const step = join(folder, temporaryName(name, process.pid, randomBytes(6).toString('hex')));
  try {
    await fs.link(path, step).catch(() => fs.copyFile(path, step));
    await fs.rename(step, join(folder, backupName(name)));
    return null;
  } catch {
    await removeQuietly(fs, step);
    return t`Saved, but the version before it could not be kept in ${folder}.`;
  }
}

/** By now the file is the new one, so an error is a warning and never "not saved". */
async function flushFolder(fs: Fs, folder: string): Promise<string | null> {
  if (process.platform === 'win32') return null;
  try {
    const opened = await fs.open(folder, 'r');
    try {
      await opened.sync();
    } finally {
      await opened.close();
    }
    return null;
  } catch {
    return t`Saved, but the disk reported an error in ${folder}. Keep a copy elsewhere.`;
  }
}

async function removeQuietly(fs: Fs, path: string): Promise<void> {
  await fs.unlink(path).catch(() => undefined);
}
