/** System errors in plain words: what is wrong, where, and what to do. */

import { basename, dirname } from 'node:path';
import type { Fault, Result } from '#contract/contract.ts';
import { t } from '#model/words/say.ts';
import { errorCode } from './fs.ts';

/** A failure that the user should read; services throw it inside and hand it out as a `Result`. */
export class FaultError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

type Sentence = readonly [code: string, sentence: (name: string, folder: string) => string];

const noPermission: Sentence[1] = (name, folder) =>
  t`No permission for "${name}" in ${folder}. Have it given to you, or choose another place.`;

const SENTENCES: Readonly<Record<string, Sentence>> = {
  ENOENT: ['file.notFound', (name, folder) => t`"${name}" is not there (looked in ${folder}).`],
  ENOTDIR: ['file.notFound', (name, folder) => t`"${name}" is not there: ${folder} is not a folder.`],
  EACCES: ['file.noPermission', noPermission],
  EPERM: ['file.noPermission', noPermission],
  EROFS: [
    'file.readOnlyPlace',
    (name, folder) => t`${folder} is read-only, so "${name}" cannot be written there. Choose another place.`,
  ],
  ENOSPC: [
    'disk.full',
    (name, folder) =>
      t`The disk is full: "${name}" could not be written in ${folder}. Free some space or choose another place.`,
  ],
  EDQUOT: [
    'disk.full',
    (name, folder) => t`Your share of the disk is used up: "${name}" could not be written in ${folder}.`,
  ],
  EISDIR: ['file.isFolder', (name) => t`"${name}" is a folder, not a file.`],
  ELOOP: ['file.linkLoop', (name) => t`"${name}" is a link that leads round in a circle.`],
  ENAMETOOLONG: [
    'file.nameTooLong',
    (name) => t`The name "${name.slice(0, 40)}..." is too long. Choose a shorter one.`,
  ],
  ERR_INVALID_ARG_VALUE: [
    'file.badName',
    () => t`That is not a file name: it holds a character that names cannot have.`,
  ],
  EBUSY: ['file.busy', (name) => t`"${name}" is in use by another program. Close it there and try again.`],
  EIO: [
    'disk.error',
    (name, folder) =>
      t`The disk reported an error at "${name}" in ${folder}. Save a copy elsewhere and have the disk looked at.`,
  ],
};

/** Any error met while working on `path`, as a fault with a sentence. */
export function faultOf(error: unknown, path: string): Fault {
  if (error instanceof FaultError) return { code: error.code, message: error.message };
  const code = errorCode(error);
  const known = SENTENCES[code];
  if (known) return { code: known[0], message: known[1](basename(path), dirname(path)) };
  if (!code) throw error;
  return {
    code: 'disk.error',
    message: t`The system answered ${code} for "${basename(path)}" in ${dirname(path)}.`,
  };
}

/** Runs `work`; system errors and `FaultError`s become fault results, bugs go on being thrown. */
export async function settled<T>(path: string, work: () => Promise<T>): Promise<Result<T>> {
  try {
    return { ok: true, value: await work() };
  } catch (error) {
    return { ok: false, error: faultOf(error, path) };
  }
}
