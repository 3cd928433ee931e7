/** Text spaced as WCAG 2.2, 1.4.12 asks for: lines 1.5, letters 0.12, words 0.16 of the type's size. */

import type { Page } from '@playwright/test';
import { expect, test } from './editor.ts';

const SPACING = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
p { margin-bottom: 2em !important; }`;

/** Words that their box cuts off, without a way to scroll to them or words on hover and focus that have them whole. */
function cutWords(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const hides = (element: Element): boolean => /hidden|clip/.test(getComputedStyle(element).overflow);
    const isCut = (element: Element): boolean =>
      element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1;
    const isToldWhole = (element: Element): boolean =>
      getComputedStyle(element).textOverflow === 'ellipsis' && element.closest('[data-why]') !== null;
    const hasText = (element: Element): boolean =>
      [...element.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim() !== '',
      );
    return [...document.querySelectorAll('body *:not(.unseen)')]
      .filter((element) => element.checkVisibility() && hasText(element))
      .filter((element) => element.clientWidth > 0 && hides(element) && isCut(element))
      .filter((element) => !isToldWhole(element))
      .map((element) => `${element.outerHTML.slice(0, 90)}: ${element.textContent}`);
  });
}

test('nothing is cut when text is spaced wide', async ({ editor, page }) => {
  await editor.showSetup('2b Hedgerow Dances');
  await editor.select(/^Clarinet/);
  await page.evaluate((css) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(css);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  }, SPACING);
  await editor.settled();
  expect(await cutWords(page), 'a player').toEqual([]);
  for (const keys of ['Control+p', 'Control+k', 'Control+Alt+n']) {
    await page.keyboard.press(keys);
    await expect(editor.dialog).toBeVisible();
    expect(await cutWords(page), keys).toEqual([]);
    await page.keyboard.press('Escape');
    await expect(editor.dialog).toBeHidden();
  }
});
