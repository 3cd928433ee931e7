/** Builds a TypeScript program for a child process, since Node 20 runs only JavaScript. */

import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

export interface Bundle {
  readonly script: string;
  remove(): void;
}

/** `entry` is relative to the tests folder. Every user of the machine may read the result. */
export async function bundle(entry: string): Promise<Bundle> {
  const folder = mkdtempSync(join(tmpdir(), 'standlines-child-'));
  chmodSync(folder, 0o755);
  await build({
    root: fileURLToPath(new URL('..', import.meta.url)),
    configFile: false,
    logLevel: 'error',
    build: {
      ssr: true,
      target: 'node20',
      outDir: folder,
      emptyOutDir: false,
      rolldownOptions: {
        input: fileURLToPath(new URL(`../${entry}`, import.meta.url)),
        output: { entryFileNames: 'child.mjs' },
      },
    },
    ssr: { noExternal: true },
  });
  return {
    script: join(folder, 'child.mjs'),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
