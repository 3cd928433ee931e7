/** Journeys through the real editor in an installed Chromium, each against a loopback shell of its own. */

import { defineConfig } from '@playwright/test';
import { findBrowser } from '../electron/bootstrap/tools.mjs';

const executablePath = findBrowser();
if (!executablePath) throw new Error('no Chromium, Chrome or Edge was found for the journeys');

/** As in `tests/journeys/editor.ts`. */
const slowness = Number(process.env['SLOW'] ?? 1);

export default defineConfig({
  testDir: '../tests/journeys',
  outputDir: '../test-results',
  snapshotPathTemplate: '{testDir}/looks/{arg}{ext}',
  workers: 2,
  // Only ends what never ends: every wait in a journey has a limit of its own.
  timeout: 300_000 * slowness,
  // A slow disk or a busy machine is not a fault of the editor: what is waited for comes within a few seconds.
  expect: { timeout: 20_000 },
  forbidOnly: true,
  // On a busy machine a browser may die under a journey. `npm test` names whatever passed only then.
  retries: 1,
  reporter: [['list'], ['json', { outputFile: '../test-results/journeys.json' }]],
  use: {
    viewport: { width: 1440, height: 900 },
    // Decides on the language, the units and the paper that a new user meets.
    locale: 'en-GB',
    deviceScaleFactor: 1,
    launchOptions: { executablePath, args: ['--no-sandbox'] },
    // Recording every step takes as long as many of them: only when it is asked for.
    trace: process.env['TRACE'] ? 'retain-on-failure' : 'off',
  },
});
