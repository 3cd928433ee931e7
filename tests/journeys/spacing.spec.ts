/** Text spaced as WCAG 2.2, 1.4.12 asks for: lines 1.5, letters 0.12, words 0.16 of the type's size. */

import { cutWords } from './cut-words.ts';
import { expect, test } from './editor.ts';

const SPACING = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
p { margin-bottom: 2em !important; }`;

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
