/**
 * `npm test`: every gate, one after the other, and a last line with the sum. What could not run is named and counted
 * as skipped, never passed over. Exit code 0 only when nothing failed.
 */

import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureDependencies } from './dependencies.mjs';
import { runScript } from './run.mjs';
import { requireNode, root } from './surroundings.mjs';
import { canInstall, findBrowser, findProgram, installPackages } from './tools.mjs';

/**
 * `again`: passed, but only when it was tried once more.
 * @typedef {{ passed: number, failed: number, skipped: number, notRun: string[], again?: string[] }} Tally
 */

const sum = {
  passed: 0,
  failed: 0,
  skipped: 0,
  /** @type {string[]} */ notRun: [],
  /** @type {string[]} */ again: [],
};

/** @param {Partial<Tally>} tally */
function add({ passed = 0, failed = 0, skipped = 0, notRun = [], again = [] }) {
  sum.passed += passed;
  sum.failed += failed;
  sum.skipped += skipped;
  sum.notRun.push(...notRun);
  sum.again.push(...again);
}

/**
 * A check with one outcome.
 * @param {string} name
 * @param {string} script
 * @param {readonly string[]} args
 */
async function gate(name, script, args) {
  console.log(`\n== ${name}`);
  const code = await runScript(script, args, { inherit: true });
  add(code === 0 ? { passed: 1 } : { failed: 1 });
  if (code !== 0) console.log(`== ${name}: FAILED`);
}

/**
 * A test runner, counted by the report that it writes; a report that is missing is a failure.
 * @param {string} name
 * @param {{ script: string, args: readonly string[], report: string, count: (report: any) => Tally }} runner
 */
async function suite(name, { script, args, report, count }) {
  console.log(`\n== ${name}`);
  const file = join(root, 'test-results', report);
  rmSync(file, { force: true });
  const code = await runScript(script, args, { inherit: true });
  if (!existsSync(file)) return add({ failed: 1 });
  const tally = count(JSON.parse(readFileSync(file, 'utf8')));
  add(tally);
  if (code !== 0 && tally.failed === 0) add({ failed: 1 });
}

/** @param {any} report @returns {Tally} */
function countJourneys({ stats, suites, errors }) {
  return {
    passed: stats.expected + stats.flaky,
    failed: stats.unexpected + (stats.unexpected === 0 ? errors.length : 0),
    skipped: stats.skipped,
    notRun: journeysThat('skipped', suites),
    again: journeysThat('flaky', suites),
  };
}

/** @param {'skipped' | 'flaky'} status @param {any[]} suites @returns {string[]} */
function journeysThat(status, suites) {
  return suites.flatMap(({ suites: inner = [], specs = [] }) => [
    ...specs
      .filter((/** @type {any} */ { tests }) =>
        tests.some((/** @type {any} */ test) => test.status === status),
      )
      .map((/** @type {any} */ { file, title }) => `journey: ${file}: ${title}`),
    ...journeysThat(status, inner),
  ]);
}

/** Chromium for the journeys and poppler to look into the printed plots. */
async function ensureTools() {
  const wanted = [];
  if (!findBrowser()) wanted.push('chromium');
  if (!findProgram('pdftotext')) wanted.push('poppler-utils');
  if (wanted.length > 0 && canInstall()) await installPackages(wanted);
}

requireNode();
await ensureDependencies();
await ensureTools();

await gate('build', 'electron/bootstrap/build.mjs', []);
const tsc = 'node_modules/typescript/bin/tsc';
await gate('types: model', tsc, ['-p', 'shared-model']);
await gate('types: shells', tsc, ['-p', 'electron']);
await gate('types: bootstrap', tsc, ['-p', 'electron/bootstrap']);
await gate('types: tests', tsc, ['-p', 'tests']);
await gate('types: window', 'node_modules/svelte-check/bin/svelte-check', ['--workspace', 'renderer']);
await gate('lint', 'node_modules/eslint/bin/eslint.js', ['-c', '.config/eslint.config.js', '.']);
const format = ['--config', '.config/prettier.json', '--log-level', 'warn', '--check', '.'];
await gate('format', 'node_modules/prettier/bin/prettier.cjs', format);
await gate('unused code', 'node_modules/knip/bin/knip.js', ['-c', '.config/knip.json']);
await suite('tests', {
  script: 'node_modules/vitest/vitest.mjs',
  args: [
    'run',
    '-c',
    '.config/vitest.config.ts',
    '--reporter=default',
    '--reporter=./.config/tally-reporter.mjs',
  ],
  report: 'tests.json',
  count: (tally) => tally,
});
if (findBrowser()) {
  await suite('journeys', {
    script: 'node_modules/@playwright/test/cli.js',
    args: ['test', '-c', '.config/playwright.config.ts'],
    report: 'journeys.json',
    count: countJourneys,
  });
} else {
  add({
    skipped: 1,
    notRun: ['journeys: no Chromium, Chrome or Edge was found, and none could be installed'],
  });
}

/** @param {string} title @param {readonly string[]} lines */
function list(title, lines) {
  if (lines.length > 0) console.log(`\n${title}:\n${lines.map((line) => `  - ${line}`).join('\n')}`);
}

list('Not run', sum.notRun);
list('Passed only when tried again, so that somebody has to look why', sum.again);
console.log(`\n${sum.passed} passed, ${sum.failed} failed, ${sum.skipped} skipped`);
process.exitCode = sum.failed === 0 && sum.passed > 0 ? 0 : 1;
