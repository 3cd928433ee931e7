/**
 * `node tests/bench/run.mjs`: bundles the benchmark as the product is bundled (test runners wrap every import, which
 * costs the kernel a factor of four) and runs it in plain Node.
 */

import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'vite';

const here = fileURLToPath(new URL('.', import.meta.url));
const outDir = await mkdtemp(join(tmpdir(), 'standlines-bench-'));
try {
  await build({
    configFile: false,
    root: here,
    logLevel: 'warn',
    ssr: { noExternal: true },
    build: { ssr: join(here, 'sightlines.ts'), outDir, emptyOutDir: true, target: 'node20' },
  });
  await import(pathToFileURL(join(outDir, 'sightlines.js')).href);
} finally {
  await rm(outDir, { recursive: true, force: true });
}
