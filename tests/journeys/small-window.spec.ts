/** A small window, in both languages: nothing cut, nothing covered, nothing out of reach. */

import type { Locator, Page } from '@playwright/test';
import { cutWords } from './cut-words.ts';
import { expect, test } from './editor.ts';

test.use({ viewport: { width: 1100, height: 700 } });

const LANGUAGES = [
  {
    locale: 'en-GB',
    plan: 'Plan of the platform and the house',
    tree: 'On the platform',
    clarinet: /^Clarinet/,
    findings: 'Findings',
    across: 'From the centre line',
    house: 'What the house sees',
    views: 'View',
    section: 'Section through the house',
    turns: 'Page turns',
    strip: 'Time strip',
    firstSteps: 'First steps',
  },
  {
    locale: 'de-DE',
    plan: 'Plan von Podium und Saal',
    tree: 'Auf dem Podium',
    clarinet: /^Klarinette/,
    findings: 'Befunde',
    across: 'Von der Mittellinie',
    house: 'Was der Saal sieht',
    views: 'Ansicht',
    section: 'Schnitt durch den Saal',
    turns: 'Wendestellen',
    strip: 'Zeitleiste',
    firstSteps: 'Erste Schritte',
  },
] as const;

/** Controls that are wholly in view and yet lie under something else. */
function coveredControls(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const isInside = (element: Element, box: DOMRect): boolean => {
      for (let outer = element.parentElement; outer; outer = outer.parentElement) {
        const { overflowX, overflowY } = getComputedStyle(outer);
        if (overflowX === 'visible' && overflowY === 'visible') continue;
        const clip = outer.getBoundingClientRect();
        if (box.left < clip.left || box.right > clip.right || box.top < clip.top || box.bottom > clip.bottom)
          return false;
      }
      return true;
    };
    return [...document.querySelectorAll('button, select, input, summary')].flatMap((control) => {
      const box = control.getBoundingClientRect();
      if (!control.checkVisibility() || box.width < 2 || !isInside(control, box)) return [];
      const hit = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
      const isReached = hit !== null && (control.contains(hit) || hit.contains(control));
      return isReached ? [] : [`${control.outerHTML.slice(0, 90)} under ${hit?.outerHTML.slice(0, 90)}`];
    });
  });
}

/** Labels of fields that take more than one line. */
function brokenLabels(page: Page): Promise<(string | null)[]> {
  return page.locator('aside .row label').evaluateAll((labels) =>
    labels
      .filter((label) => {
        const range = document.createRange();
        range.selectNodeContents(label);
        return new Set([...range.getClientRects()].map(({ top }) => Math.round(top))).size > 1;
      })
      .map(({ textContent }) => textContent),
  );
}

/** Which of two stands above the other, and that they do not overlap. */
async function isAbove(upper: Locator, lower: Locator): Promise<boolean> {
  const [above, below] = [await upper.boundingBox(), await lower.boundingBox()];
  return above !== null && below !== null && above.y + above.height <= below.y + 0.5;
}

for (const words of LANGUAGES) {
  test.describe(words.locale, () => {
    test.use({ locale: words.locale });

    test('all that is written can be read, and nothing lies over anything else', async ({
      page,
      program,
    }) => {
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await page.goto(program.address());
      const house = page.getByRole('region', { name: words.house });
      await expect(house.getByRole('button', { pressed: true })).toBeVisible();
      const legible = async (state: string): Promise<void> => {
        expect(await cutWords(page), state).toEqual([]);
        expect(await coveredControls(page), state).toEqual([]);
      };
      await legible('first steps');
      const steps = page.getByRole('complementary', { name: words.firstSteps });
      // At most three lines and their air.
      expect((await steps.boundingBox())?.height).toBeLessThan(66);

      await page.getByRole('tab', { name: '2b Hedgerow Dances', exact: true }).click();
      await expect(page.getByRole('region', { name: words.findings }).getByRole('button')).not.toHaveCount(0);
      const tab = page.getByRole('tab', { selected: true });
      expect(await tab.locator('.title').evaluate((title) => title.scrollWidth - title.clientWidth)).toBe(0);
      await expect(tab).toBeInViewport({ ratio: 0.95 });
      await legible('a setup with findings');

      const foot = page.getByRole('toolbar', { name: words.views });
      expect(await isAbove(page.getByRole('application', { name: words.plan }), foot)).toBe(true);

      await page
        .getByRole('tree', { name: words.tree })
        .getByRole('treeitem', { name: words.clarinet })
        .click();
      await expect(page.getByLabel(words.across, { exact: true })).toBeVisible();
      expect(await brokenLabels(page)).toEqual([]);
      await legible('a player');

      for (const [name, panel] of [
        [words.turns, words.turns],
        [words.strip, words.strip],
      ] as const) {
        await page.getByRole('button', { name, exact: true }).click();
        await expect(page.getByRole('region', { name: panel, exact: true })).toBeVisible();
        await legible(name);
      }
      await foot.getByRole('button', { name: words.section, exact: true }).click();
      await expect(page.getByRole('table').first()).toBeVisible();
      await legible(words.section);
    });
  });
}
