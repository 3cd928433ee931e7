/** What a control is for: by pointing at it, by the Tab key, and out of the way again (WCAG 2.2, 1.4.13). */

import { expect, test } from './editor.ts';

test('words about a control come when the pointer rests, can be pointed at, and Escape puts them away', async ({
  editor,
  page,
}) => {
  await editor.select(/^stand 1/);
  const tip = page.getByRole('tooltip');
  const label = page.getByText('Lip above the floor', { exact: true });
  await label.hover();
  await expect(tip).toBeVisible();
  const words = await tip.innerText();
  expect(words.length).toBeGreaterThan(10);
  const box = await tip.boundingBox();
  if (!box) throw new Error('no box');
  // In one go: how long the words stay for a pointer on its way is measured in `resting.test.ts`, by a clock of its own.
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.waitForTimeout(700);
  await expect(tip).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(tip).toBeHidden();
  // That was all that Escape did.
  await expect(label).toBeVisible();

  await page.getByRole('textbox', { name: 'Lip above the floor' }).focus();
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Tab');
  await expect(tip).toHaveText(words);
  await page.keyboard.press('1');
  await expect(tip).toBeHidden();
});

test('words describe their control to a screen reader too, and a click takes them away', async ({
  editor,
  page,
}) => {
  await page.keyboard.press('F7');
  await expect(editor.plan).toBeHidden();
  const tip = page.getByRole('tooltip');
  await page.locator('.card').filter({ hasText: 'Hedgerow' }).click();
  const vary = page.getByRole('button', { name: 'Vary' });
  await vary.hover();
  await expect(tip).toHaveText('A copy beside it, to try another way and compare');
  await expect(vary).toHaveAccessibleDescription('A copy beside it, to try another way and compare');
  await vary.click();
  await expect(tip).toBeHidden();
});
