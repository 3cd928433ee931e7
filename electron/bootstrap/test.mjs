/**
 * `npm test`: every gate, one after the other, and a last line with the sum. What could not run is named and counted
 * as skipped, never passed over. Exit code 0 only when nothing failed.
 */

import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { canInstall, findBrowser, findProgram, installPackages } from './tools.mjs';
import { ensureBuilt } from './build.mjs';
import { ensureDependencies } from './dependencies.mjs';
import { findElectron } from './electron-runtime.mjs';
import { runScript } from './run.mjs';
import { requireNode, root } from './surroundings.mjs';

/** @typedef {{ passed: number, failed: number, skipped: number }} Count */

/** @type {Count} */
const sum = { passed: 0, failed: 0, skipped: 0 };
/** @type {string[]} */
const notRun = [];

/** @param {Count} count */
function add({ passed, failed, skipped }) {
  sum.passed += passed;
  sum.failed += failed;
  sum.skipped += skipped;
}

/** @param {string} what @param {string} why */
function leaveOut(what, why) {
  add({ passed: 0, failed: 0, skipped: 1 });
  notRun.push(`${what}: ${why}`);
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
  add({ passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1, skipped: 0 });
  if (code !== 0) console.log(`== ${name}: FAILED`);
}

/**
 * A test runner, counted by the report that it writes; a report that is missing is a failure.
 * @param {string} name
 * @param {{ script: string, args: readonly string[], report: string, count: (report: any) => Count }} runner
 */
async function suite(name, { script, args, report, count }) {
  console.log(`\n== ${name}`);
  const file = join(root, 'test-results', report);
  rmSync(file, { force: true });
  const code = await runScript(script, args, { inherit: true });
  const counted = existsSync(file)
    ? count(JSON.parse(readFileSync(file, 'utf8')))
    : { passed: 0, failed: 1, skipped: 0 };
  add(counted);
  if (code !== 0 && counted.failed === 0) add({ passed: 0, failed: 1, skipped: 0 });
}

/** @param {any} report @returns {Count} */
function countVitest(report) {
  const tests = report.testResults.flatMap((/** @type {any} */ file) => file.assertionResults);
  for (const test of tests) {
    if (!['passed', 'failed'].includes(test.status)) notRun.push(`${test.fullName}${reasonOf(test)}`);
  }
  const broken = report.testResults.filter(
    (/** @type {any} */ file) =>
      file.status === 'failed' &&
      !file.assertionResults.some((/** @type {any} */ test) => test.status === 'failed'),
  ).length;
  const failed = report.numFailedTests + broken;
  return {
    passed: report.numPassedTests,
    failed,
    skipped: tests.length - report.numPassedTests - report.numFailedTests,
  };
}

/** @param {any} test */
function reasonOf(test) {
  const note = test.meta?.note ?? test.failureMessages?.[0];
  return note ? `: ${note}` : '';
}

/** @param {any} report @returns {Count} */
function countPlaywright({ stats, errors }) {
  const failed = stats.unexpected + (errors.length > 0 && stats.unexpected === 0 ? 1 : 0);
  if (stats.skipped > 0) notRun.push(`${stats.skipped} journeys were skipped`);
  return { passed: stats.expected + stats.flaky, failed, skipped: stats.skipped };
}

/** @param {string} file */
function reporters(file) {
  return ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
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
await ensureBuilt(['node', 'window']);

const tsc = 'node_modules/typescript/bin/tsc';
await gate('types: model', tsc, ['-p', 'shared-model']);
await gate('types: shells', tsc, ['-p', 'electron']);
await gate('types: bootstrap', tsc, ['-p', 'electron/bootstrap']);
await gate('types: tests', tsc, ['-p', 'tests']);
await gate('types: window', 'node_modules/svelte-check/bin/svelte-check', [
  '--workspace',
  'renderer',
  '--output',
  'human',
]);
await gate('lint', 'node_modules/eslint/bin/eslint.js', ['-c', '.config/eslint.config.js', '.']);
await gate('format', 'node_modules/prettier/bin/prettier.cjs', [
  '--config',
  '.config/prettier.json',
  '--check',
  '--log-level',
  'warn',
  '.',
]);
await gate('unused code', 'node_modules/knip/bin/knip.js', ['-c', '.config/knip.json']);
await suite('tests', {
  script: 'node_modules/vitest/vitest.mjs',
  args: ['run', '-c', '.config/vitest.config.ts', ...reporters('test-results/tests.json')],
  report: 'tests.json',
  count: countVitest,
});
if (findBrowser()) {
  await suite('journeys', {
    script: 'node_modules/@playwright/test/cli.js',
    args: ['test', '-c', '.config/playwright.config.ts'],
    report: 'journeys.json',
    count: countPlaywright,
  });
} else {
  leaveOut('journeys', 'no Chromium, Chrome or Edge was found, and none could be installed');
}
if (!findProgram('pdftotext')) notRun.push('checks of the PDF by poppler: poppler-utils is not installed');
if (!findElectron()) leaveOut('the editor in Electron itself', "Electron's runtime is not on this machine");

if (notRun.length > 0) console.log(`\nNot run:\n${notRun.map((line) => `  - ${line}`).join('\n')}`);
console.log(`\n${sum.passed} passed, ${sum.failed} failed, ${sum.skipped} skipped`);
process.exitCode = sum.failed === 0 && sum.passed > 0 ? 0 : 1;
