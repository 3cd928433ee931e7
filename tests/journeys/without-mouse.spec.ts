/** What hands point at, by the keyboard alone. */

import { expect, test } from './editor.ts';

test('a point to face is led to with the arrow keys and told on the way', async ({ editor, page }) => {
  const { keyboard } = page;
  await editor.select(/^Viola/);
  await editor.plan.focus();
  await keyboard.press('f');
  await expect(page.getByText('Without a mouse: arrow keys')).toBeVisible();
  const said = page.locator('.unseen[role="status"]').last();
  // Upstage of everything, where nothing is hit.
  for (let step = 0; step < 3; step++) await keyboard.press('Shift+ArrowUp');
  await expect(said).toContainText(/[345]\d{3} US/);
  const first = await said.innerText();
  await keyboard.press('ArrowLeft');
  await expect(said).not.toHaveText(first);
  await keyboard.press(' ');
  await expect(
    page.getByRole('button', { name: 'Undo turn Viola (player 2) towards a point' }),
  ).toBeVisible();
  await expect(page.getByText('Without a mouse: arrow keys')).toBeHidden();
  await expect(editor.plan).toBeFocused();
});

test('a platform is traced with the keyboard alone, corner by corner', async ({ editor, page }) => {
  const { keyboard } = page;
  await keyboard.press('Control+k');
  await editor.dialog.getByRole('combobox').fill('trace the platform');
  await keyboard.press('Enter');
  await expect(editor.plan).toBeFocused();
  await expect(page.getByText('Click the corners of the platform')).toBeVisible();
  const said = page.locator('.unseen[role="status"]').last();
  const corners = ['ArrowLeft', 'Shift+ArrowRight', 'Shift+ArrowUp', 'Shift+ArrowLeft'] as const;
  for (const [index, key] of corners.entries()) {
    for (let times = 0; times < 4; times++) await keyboard.press(key);
    await keyboard.press(' ');
    await expect(said).toContainText(`Corner ${index + 1}`);
  }
  await expect(said).toContainText('4000 mm');
  await keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Undo trace the platform' })).toBeVisible();
  await editor.items.getByRole('treeitem', { name: 'Platform' }).click();
  await expect(page.getByRole('group', { name: /^Corner \d$/ })).toHaveCount(4);
});

test('a plain object is as wide and deep as is typed', async ({ editor, page }) => {
  await editor.select(/^Pilaster/);
  const width = page.getByRole('textbox', { name: 'Width', exact: true });
  const depth = page.getByRole('textbox', { name: 'Depth', exact: true });
  const before = await depth.inputValue();
  await width.fill('60 cm');
  await page.keyboard.press('Enter');
  await expect(width).toHaveValue('600 mm');
  await expect(depth).toHaveValue(before);
  await width.fill('0');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('alert')).toBeVisible();
});
