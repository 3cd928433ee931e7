/** The file operations that the services use, so that tests can hand in a disk that fails at any step. */

import type { Stats } from 'node:fs';
import * as promises from 'node:fs/promises';

export interface OpenFile {
  writeFile(bytes: Uint8Array): Promise<void>;
  readFile(): Promise<Uint8Array>;
  stat(): Promise<Stats>;
  chmod(mode: number): Promise<void>;
  sync(): Promise<void>;
  close(): Promise<void>;
}

export interface Fs {
  realpath(path: string): Promise<string>;
  stat(path: string): Promise<Stats>;
  access(path: string, mode: number): Promise<void>;
  open(path: string, flags: string | number, mode?: number): Promise<OpenFile>;
  link(from: string, to: string): Promise<void>;
  copyFile(from: string, to: string): Promise<void>;
  rename(from: string, to: string): Promise<void>;
  unlink(path: string): Promise<void>;
  mkdir(path: string, options: { recursive: true; mode: number }): Promise<unknown>;
  readdir(path: string): Promise<string[]>;
}

export const nodeFs: Fs = promises;

/** The `code` of a system error, or the empty string. */
export function errorCode(error: unknown): string {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : '';
}
