/** Menus on the plan and in the list beside it, with the mouse and with the keyboard. */

import { expect, test } from './editor.ts';

test('the list beside the plan has the same menu as the plan, with the mouse and with the menu key', async ({
  editor,
  page,
}) => {
  const { keyboard } = page;
  const menu = page.getByRole('menu', { name: 'What can be done with it' });
  const chosen = editor.items.getByRole('treeitem', { selected: true });
  await editor.items.getByRole('treeitem', { name: /^Clarinet/ }).click({ button: 'right' });
  await expect(menu).toBeVisible();
  await expect(chosen).toHaveAccessibleName(/^Clarinet/);
  await menu.getByRole('menuitem', { name: /^Mirror the selection/ }).click();
  const undo = page.getByRole('button', { name: /^Undo mirror Clarinet/ });
  await expect(undo).toBeVisible();
  await expect(editor.items).toBeFocused();

  // What was done last is named there, too.
  await keyboard.press('Shift+F10');
  await expect(menu).toBeVisible();
  await menu.getByRole('menuitem', { name: /^Undo mirror Clarinet/ }).press('Enter');
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();
  await expect(editor.items).toBeFocused();

  // Everything: as on the plan.
  await keyboard.press('Control+a');
  await expect.poll(() => chosen.count()).toBeGreaterThan(2);
  const inList = await chosen.count();
  await editor.plan.focus();
  await keyboard.press('Escape');
  await expect(chosen).toHaveCount(0);
  await keyboard.press('Control+a');
  await expect(chosen).toHaveCount(inList);
});

test('what is pasted from the menu comes to where the menu was opened', async ({ editor, page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await editor.select(/^Viola/);
  const { x, y } = await editor.middleOfSelection();
  await page.keyboard.press('Control+c');
  await expect(page.getByRole('status').filter({ hasText: 'Copied 1 thing' })).toBeAttached();
  await page.mouse.move(x + 220, y - 120);
  const where = page.locator('[data-pointer]');
  await expect(where).toHaveText(/\d+ S[LR], \d+ US/);
  const there = await where.innerText();
  await page.mouse.click(x + 220, y - 120, { button: 'right' });
  await page.getByRole('menuitem', { name: /^Paste what was copied/ }).click();
  await expect(page.getByRole('button', { name: /^Undo add/ })).toBeVisible();
  const [across = 0, depth = 0] = (there.match(/\d+/g) ?? []).map(Number);
  await expect.poll(async () => Math.abs((await editor.position()).x - across)).toBeLessThanOrEqual(10);
  expect(Math.abs((await editor.position()).y - depth)).toBeLessThanOrEqual(10);
});

test('sides are put in line from the menu, from the form and from the list of commands', async ({
  editor,
  page,
}) => {
  const { keyboard } = page;
  await editor.select(/^stand 1/);
  await editor.items.getByRole('treeitem', { name: /^instrument stand 1/ }).click({ modifiers: ['Shift'] });
  const undo = page.getByRole('button', { name: 'Undo align 2 items' });
  await editor.plan.focus();
  await keyboard.press('Shift+F10');
  await page.getByRole('menuitem', { name: 'Line up and spread' }).press('ArrowRight');
  await page.getByRole('menuitem', { name: 'Line up the stage-left sides of the selection' }).press('Enter');
  await expect(undo).toBeVisible();
  await keyboard.press('Control+z');
  await expect(undo).toBeHidden();

  await page.getByLabel('Line up sides').selectOption('Downstage');
  await expect(undo).toBeVisible();
  await editor.plan.focus();
  await keyboard.press('Control+z');
  await expect(undo).toBeHidden();

  await keyboard.press('Control+k');
  await editor.dialog.getByRole('combobox').fill('upstage sides');
  await keyboard.press('Enter');
  await expect(undo).toBeVisible();
});

test('help is a button in the bar, and F1 anywhere', async ({ editor, page }) => {
  const dialog = page.getByRole('dialog', { name: 'How it is judged' });
  await page.getByRole('button', { name: 'Help: how it is judged' }).click();
  await expect(dialog).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  for (const place of [editor.plan, editor.items, page.getByRole('searchbox')]) {
    await place.focus();
    await page.keyboard.press('F1');
    await expect(dialog).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(dialog).toBeHidden();
    await expect(place).toBeFocused();
  }
});
