/** Builds what is missing or older than its sources, into `dist/`. `node electron/bootstrap/build.mjs` builds all. */

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureDependencies } from './dependencies.mjs';
import { oneAtATime } from './one-at-a-time.mjs';
import { runScript } from './run.mjs';
import { requireNode, root, say } from './surroundings.mjs';

/** @typedef {'node' | 'window'} Part */

/**
 * What each part is built from, and its builds: a folder below `dist/` and the bundler's configuration for it.
 * @type {Record<Part, { sources: string[], builds: Record<string, string> }>}
 */
const PARTS = {
  node: {
    sources: ['electron', 'shared-model'],
    builds: { node: '.config/vite.node.config.ts', preload: '.config/vite.preload.config.ts' },
  },
  window: {
    sources: ['renderer', 'shared-model', 'electron/contract', '.config/first-scripts.ts'],
    builds: { renderer: '.config/vite.renderer.config.ts' },
  },
};

/** Ends the program when a build fails.
 * @param {readonly Part[]} parts */
export async function ensureBuilt(parts) {
  const stale = parts.filter((part) => !isFresh(part));
  if (stale.length === 0) return;
  const built = await oneAtATime(join(root, 'dist', 'building.lock'), () => buildParts(stale));
  if (!built) process.exit(2);
}

/** @param {readonly Part[]} parts */
async function buildParts(parts) {
  for (const part of parts) if (!isFresh(part) && !(await buildPart(part))) return false;
  return true;
}

/** @param {Part} part */
function isFresh(part) {
  return contentOf(stampOf(part)) === digestOfPart(part);
}

/** @param {Part} part */
function stampOf(part) {
  return join(root, 'dist', `${part}.stamp`);
}

/** @param {Part} part */
function digestOfPart(part) {
  const { sources, builds } = PARTS[part];
  return digestOf([...sources, ...Object.values(builds), 'package.json', 'package-lock.json']);
}

/** The digest is taken first, so that a source changed meanwhile makes the build stale.
 * @param {Part} part */
async function buildPart(part) {
  say(`Building the ${part === 'node' ? 'program' : 'window'} ...`);
  const digest = digestOfPart(part);
  rmSync(stampOf(part), { force: true });
  for (const [folder, config] of Object.entries(PARTS[part].builds)) {
    if (!(await build(join(root, 'dist', folder), config))) return false;
  }
  writeFileSync(stampOf(part), digest);
  return true;
}

/**
 * Beside the old files, which go on serving a program that runs until the new ones are whole.
 * @param {string} folder
 * @param {string} config
 */
async function build(folder, config) {
  const fresh = `${folder}.new`;
  const options = ['-c', config, '--outDir', fresh, '--emptyOutDir', '--logLevel', 'warn'];
  if ((await runScript('node_modules/vite/bin/vite.js', ['build', ...options])) !== 0) {
    say(`The build with ${config} failed; see above.`);
    return false;
  }
  rmSync(folder, { recursive: true, force: true });
  renameSync(fresh, folder);
  return true;
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
