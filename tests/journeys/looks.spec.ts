/**
 * The main states as they look, light and dark, in two sizes, against pictures that somebody has looked at
 * (`tests/journeys/looks/`). With another browser, or on another system, nothing is compared, and the tests say so.
 *
 * After a change that is meant: `npx playwright test -c .config/playwright.config.ts looks --update-snapshots`, and look.
 */

import { platform } from 'node:process';
import { expect, test, type Editor } from './editor.ts';

/** Whose drawing of letters and lines the pictures show: another version may draw them otherwise without anybody's fault. */
const MADE_WITH = 'Chromium 156';

/** Of all picture elements, those that may differ: letters a little, a line a pixel away. A panel that moves is far more. */
const TOLERANCE = 0.01;

const SIZES = [
  { width: 1440, height: 900 },
  { width: 1100, height: 700 },
] as const;

const STATES: Readonly<Record<string, (editor: Editor) => Promise<void>>> = {
  opening: async () => {},
  finding: async (editor) => {
    await editor.showSetup('2b Hedgerow Dances');
    await editor.findings.getByRole('button').first().click();
    // Remedies come a little later, and make the finding longer.
    await expect(editor.findings.getByRole('button', { name: /^Try/ })).not.toHaveCount(0);
    await expect(editor.findings.getByText('Looking for a remedy')).toHaveCount(0);
    await editor.settled();
  },
  evening: async ({ page, plan }) => {
    await page.keyboard.press('F7');
    await expect(plan).toBeHidden();
    await expect(page.getByRole('table').first()).toBeVisible();
  },
  print: async ({ page, dialog }) => {
    await page.keyboard.press('Control+p');
    await expect(dialog.getByRole('img').first()).toBeVisible();
  },
};

for (const colorScheme of ['light', 'dark'] as const) {
  for (const size of SIZES) {
    const where = `${size.width}x${size.height}, ${colorScheme}`;
    for (const [state, goThere] of Object.entries(STATES)) {
      test(`${state} looks as it did, ${where}`, async ({ editor, page, browser }, info) => {
        const here = `Chromium ${browser.version().split('.', 1)[0]}`;
        info.skip(
          platform !== 'linux' || here !== MADE_WITH,
          `the pictures are of ${MADE_WITH} on Linux, this is ${here} on ${platform}: looks were not compared`,
        );
        await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
        await page.setViewportSize(size);
        await editor.settled();
        await goThere(editor);
        const name = `${state}-${size.width}-${colorScheme}.png`;
        await expect(page).toHaveScreenshot(name, { maxDiffPixelRatio: TOLERANCE });
      });
    }
  }
}
