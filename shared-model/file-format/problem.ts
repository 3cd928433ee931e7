/** Why a file was not read. */

import { missing, notAllowed } from './complaint.ts';

export interface Problem {
  /** What is wrong, where, and what to do. One line. */
  readonly message: string;
  /** `records[12].lip`; empty when it is about the file as a whole. */
  readonly path: string;
}

export interface Failure {
  readonly ok: false;
  readonly problem: Problem;
}

export function failure(message: string, path = ''): Failure {
  return { ok: false, problem: { message, path } };
}

/** The message, and behind it where in the text of the file to look. */
export function messageWithPath({ message, path }: Problem): string {
  return path === '' ? message : `${message.replace(/\.$/, '')} (${path}).`;
}

/** About a field of the file itself: "version is missing; give 1." */
export function badField(name: string, value: unknown, advice: string): Failure {
  const { text } = value === undefined ? missing(name, advice) : notAllowed(name, value, advice);
  return failure(`${name}${text}.`, name);
}
