/** Writes what a test run came to, with the reason why each test that was left out was left out. */

import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

const FILE = 'test-results/tests.json';

export default class TallyReporter {
  /**
   * @param {readonly import('vitest/node').TestModule[]} modules
   * @param {readonly unknown[]} errors thrown outside any test
   */
  onTestRunEnd(modules, errors) {
    const tally = { passed: 0, failed: errors.length, skipped: 0, notRun: /** @type {string[]} */ ([]) };
    for (const module of modules) count(module, tally);
    mkdirSync(dirname(FILE), { recursive: true });
    writeFileSync(FILE, JSON.stringify(tally));
  }
}

/**
 * @param {import('vitest/node').TestModule} module
 * @param {{ passed: number, failed: number, skipped: number, notRun: string[] }} tally
 */
function count(module, tally) {
  const failedBefore = tally.failed;
  for (const test of module.children.allTests()) {
    const result = test.result();
    if (result.state === 'passed' || result.state === 'failed') tally[result.state] += 1;
    else {
      tally.skipped += 1;
      tally.notRun.push(
        `${test.fullName}${result.state === 'skipped' && result.note ? `: ${result.note}` : ''}`,
      );
    }
  }
  // Preparations that fail leave their tests out; that is a failure, not a skip.
  if (!module.ok() && tally.failed === failedBefore) tally.failed += 1;
}
