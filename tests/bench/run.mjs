/**
 * `node tests/bench/run.mjs [sightlines] [scores] [booklets] [packs] [editor] [window] [strip]`: bundles the benchmarks as the product is bundled (test runners wrap
 * every import, which costs the kernel a factor of four) and runs each in a plain Node of its own.
 */

import { spawnSync } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { build } from 'vite';
import { ensureBuilt } from '../../electron/bootstrap/build.mjs';
import { findBrowser } from '../../electron/bootstrap/tools.mjs';

const here = fileURLToPath(new URL('.', import.meta.url));
const root = fileURLToPath(new URL('../..', import.meta.url));

/** What each benchmark is started with, or why it cannot be.
 * @type {Record<string, () => Promise<string[] | string>>} */
const BENCHMARKS = {
  sightlines: async () => [join(here, 'sweep.c')],
  scores: async () => [],
  planner: async () => [],
  booklets: async () => [],
  packs: async () => [join(root, 'assets', 'demo-concert.standlines')],
  editor: builtEditor,
  window: builtWindow,
  strip: builtEditor,
};

/** The built loopback shell and a browser for it. */
async function builtEditor() {
  const browser = findBrowser();
  if (!browser) return 'no Chromium, Chrome or Edge was found';
  await ensureBuilt(['node', 'window']);
  return [join(root, 'dist', 'node', 'loopback.js'), browser];
}

/** As above, and a page with the same libraries and nothing else, built as the window is. */
async function builtWindow() {
  const built = await builtEditor();
  if (typeof built === 'string') return built;
  const emptyPage = join(outDir, 'empty-page');
  await build({
    configFile: false,
    root: join(here, 'empty-page'),
    base: './',
    logLevel: 'error',
    plugins: [svelte({ configFile: false })],
    build: {
      outDir: emptyPage,
      emptyOutDir: true,
      target: 'chrome120',
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
    },
  });
  return [...built, emptyPage];
}

const wanted = process.argv.slice(2);
const names = Object.keys(BENCHMARKS).filter((name) => wanted.length === 0 || wanted.includes(name));
// Inside the repository, where the bundles find the packages that they leave out.
const outDir = await mkdtemp(join(root, 'node_modules', '.standlines-bench-'));
try {
  await bundle();
  for (const name of names) await run(name);
} finally {
  await rm(outDir, { recursive: true, force: true });
}

async function bundle() {
  await build({
    configFile: false,
    root: here,
    logLevel: 'warn',
    ssr: { noExternal: true, external: ['@playwright/test', 'highs'] },
    build: {
      ssr: true,
      outDir,
      emptyOutDir: true,
      target: 'node20',
      // As the product does: see .config/vite.node.config.ts.
      rolldownOptions: {
        input: Object.fromEntries(names.map((name) => [name, join(here, `${name}.ts`)])),
        output: { entryFileNames: '[name].js', topLevelVar: false },
      },
    },
  });
}

/** A process of its own: the bundler's heap would slow the garbage collector down.
 * @param {string} name */
async function run(name) {
  const args = (await BENCHMARKS[name]?.()) ?? [];
  if (typeof args === 'string') return console.log(`\n${name}: not run, ${args}`);
  const { status } = spawnSync(process.execPath, ['--expose-gc', join(outDir, `${name}.js`), ...args], {
    stdio: 'inherit',
  });
  if (status !== 0) process.exitCode = status ?? 1;
}
