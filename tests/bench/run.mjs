/**
 * `node tests/bench/run.mjs`: bundles the benchmark as the product is bundled (test runners wrap every import, which
 * costs the kernel a factor of four) and runs it in plain Node.
 */

import { spawnSync } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const here = fileURLToPath(new URL('.', import.meta.url));
const outDir = await mkdtemp(join(tmpdir(), 'standlines-bench-'));
try {
  await build({
    configFile: false,
    root: here,
    logLevel: 'warn',
    ssr: { noExternal: true },
    build: {
      ssr: join(here, 'sightlines.ts'),
      outDir,
      emptyOutDir: true,
      target: 'node20',
      // As the product does: see .config/vite.node.config.ts.
      rolldownOptions: { output: { topLevelVar: false } },
    },
  });
  // A process of its own: the bundler's heap would slow the garbage collector down.
  const { status } = spawnSync(
    process.execPath,
    ['--expose-gc', join(outDir, 'sightlines.js'), join(here, 'sweep.c')],
    {
      stdio: 'inherit',
    },
  );
  process.exitCode = status ?? 1;
} finally {
  await rm(outDir, { recursive: true, force: true });
}
