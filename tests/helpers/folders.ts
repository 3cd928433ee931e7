/** Folders of a test's own. */

import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A new empty folder that is removed when the test ends. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'standlines-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

export function temporariesIn(folder: string): string[] {
  return readdirSync(folder).filter((name) => name.endsWith('.standlines-tmp'));
}
