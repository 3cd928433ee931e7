/** Builds what is missing or older than its sources, into `dist/`. `node electron/bootstrap/build.mjs` builds all. */

import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureDependencies } from './dependencies.mjs';
import { runScript } from './run.mjs';
import { requireNode, root, say } from './surroundings.mjs';

/** @typedef {'node' | 'window'} Part */

/** @type {Record<Part, { sources: string[], configs: string[] }>} */
const PARTS = {
  node: {
    sources: ['electron', 'shared-model'],
    configs: ['.config/vite.node.config.ts', '.config/vite.preload.config.ts'],
  },
  window: {
    sources: ['renderer', 'shared-model', 'electron/contract'],
    configs: ['.config/vite.renderer.config.ts'],
  },
};

/** Ends the program when a build fails.
 * @param {readonly Part[]} parts */
export async function ensureBuilt(parts) {
  for (const part of parts) if (!(await ensurePart(part))) process.exit(2);
}

/** @param {Part} part */
async function ensurePart(part) {
  const { sources, configs } = PARTS[part];
  const stamp = join(root, 'dist', `${part}.stamp`);
  const digest = digestOf([...sources, ...configs, 'package.json', 'package-lock.json']);
  if (contentOf(stamp) === digest) return true;
  say(`Building the ${part === 'node' ? 'program' : 'window'} ...`);
  rmSync(stamp, { force: true });
  for (const config of configs) if (!(await build(config))) return false;
  mkdirSync(join(root, 'dist'), { recursive: true });
  writeFileSync(stamp, digest);
  return true;
}

/** @param {string} config */
async function build(config) {
  const code = await runScript('node_modules/vite/bin/vite.js', [
    'build',
    '-c',
    config,
    '--logLevel',
    'warn',
  ]);
  if (code !== 0) say(`The build with ${config} failed; see above.`);
  return code === 0;
}

/**
 * Names and contents of files and of everything in folders.
 * @param {readonly string[]} paths below the repository
 */
function digestOf(paths) {
  const hash = createHash('sha256');
  for (const path of paths.flatMap(filesIn))
    hash
      .update(path)
      .update('\0')
      .update(readFileSync(join(root, path)));
  return hash.digest('hex');
}

/** @param {string} path @returns {string[]} */
function filesIn(path) {
  const entries = listed(path);
  if (entries === null) return [path];
  return entries
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => (entry.isDirectory() ? filesIn(`${path}/${entry.name}`) : [`${path}/${entry.name}`]));
}

/** @param {string} path */
function listed(path) {
  try {
    return readdirSync(join(root, path), { withFileTypes: true });
  } catch {
    return null;
  }
}

/** @param {string} file */
function contentOf(file) {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return null;
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  requireNode();
  await ensureDependencies();
  await ensureBuilt(['node', 'window']);
}
