/** The installed Chromium, for tests that want a real browser. */

import { chromium, type Browser } from '@playwright/test';
import { onTestFinished, type TestContext } from 'vitest';
import { findBrowser } from '../../electron/bootstrap/tools.mjs';

/** Skips the test, saying so, where there is no browser. Closed when the test ends. */
export async function openBrowser(context: TestContext, ...switches: string[]): Promise<Browser> {
  const executablePath = findBrowser();
  if (executablePath === null)
    return context.skip('no Chromium, Chrome or Edge was found: not tried in a browser');
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', ...switches] });
  onTestFinished(() => browser.close());
  return browser;
}
