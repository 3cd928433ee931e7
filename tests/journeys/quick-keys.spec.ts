/** Keys pressed quicker than the window can follow, or than a slow machine can: none acts on what it was not meant for. */

import type { Page } from '@playwright/test';
import { expect, test } from './editor.ts';

/**
 * Presses a key as the browser would, and says what has the focus before anything else can happen: the next key, a frame,
 * a timer. A key pressed by the test itself would come too late to tell.
 */
function focusRightAfter(
  page: Page,
  press: { readonly key: string; readonly ctrlKey?: boolean },
): Promise<string> {
  return page.evaluate(async (init) => {
    const target = document.activeElement ?? document.body;
    target.dispatchEvent(new KeyboardEvent('keydown', { ...init, bubbles: true, cancelable: true }));
    for (let i = 0; i < 20; i++) await Promise.resolve();
    const focused = document.activeElement;
    return focused?.getAttribute('aria-label') ?? focused?.textContent?.trim() ?? '';
  }, press);
}

test('what a key goes to has the focus before the next key', async ({ editor, page }) => {
  await editor.plan.focus();
  expect(await focusRightAfter(page, { key: 'i', ctrlKey: true })).toBe('Search: viola, stand…');
  await editor.plan.focus();
  expect(await focusRightAfter(page, { key: 'l', ctrlKey: true })).toBe('On the platform');

  await page.getByRole('button', { name: 'Store and list' }).click();
  await expect(editor.items).toBeHidden();
  await editor.plan.focus();
  expect(await focusRightAfter(page, { key: 'i', ctrlKey: true })).toBe('Search: viola, stand…');
});

test('a command of the list is carried out before the next key', async ({ editor, page }) => {
  await editor.plan.focus();
  await page.keyboard.press('Control+k');
  await page.keyboard.type('from text');
  await expect(editor.dialog.getByRole('option')).toHaveCount(1);
  expect(await focusRightAfter(page, { key: 'Enter' })).toBe('Ensemble');
  await page.keyboard.press('Escape');
  await expect(editor.dialog).toHaveCount(0);
  await expect(editor.plan).toBeFocused();
});

test('while a dialog is on its way no key and no click gets to the window beneath', async ({
  editor,
  page,
}) => {
  let letCome = (): void => undefined;
  const mayCome = new Promise<void>((resolve) => (letCome = resolve));
  await page.route(/\/EnsembleDialog[^/]*\.js/, async (route) => {
    await mayCome;
    await route.continue();
  });
  await page.reload();
  await editor.open(page.url());
  await editor.select(/^Clarinet/);
  const things = await editor.items.getByRole('treeitem').count();
  const before = await editor.position();

  await editor.items.focus();
  await page.keyboard.press('Control+e');
  const coming = page.getByRole('dialog', { name: 'One moment…' });
  await expect(coming).toBeVisible();
  for (const key of ['Delete', 'Shift+ArrowRight', 's', 'm', 'Enter', 'Control+l', 'c', ' '])
    await page.keyboard.press(key);
  const box = await editor.box();
  await page.mouse.click(box.x + 20, box.y + 20);
  await expect(editor.items.getByRole('treeitem')).toHaveCount(things);
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();
  expect(await editor.position()).toEqual(before);
  await expect(page.getByRole('region', { name: 'Section', exact: true })).toHaveCount(0);

  // Who does not want to wait need not; asked for again, it comes, and gives the focus back to who had it.
  await page.keyboard.press('Escape');
  await expect(coming).toHaveCount(0);
  await expect(editor.items).toBeFocused();
  await page.keyboard.press('Control+e');
  await expect(coming).toBeVisible();
  letCome();
  const dialog = page.getByRole('dialog', { name: 'Write down who plays' });
  await expect(dialog).toBeVisible();
  await expect(coming).toHaveCount(0);
  await expect(dialog.getByRole('textbox', { name: 'Ensemble' })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  await expect(editor.items).toBeFocused();
});

test('while a file is on its way no key and no click gets to the document that it takes the place of', async ({
  editor,
  page,
}) => {
  await editor.saveAs('first');
  let letCome = (): void => undefined;
  const mayCome = new Promise<void>((resolve) => (letCome = resolve));
  await page.route(/files\.read/, async (route) => {
    await mayCome;
    await route.continue();
  });
  await editor.select(/^Clarinet/);
  const before = await editor.position();
  await page.keyboard.press('Control+o');
  await editor.dialog.getByRole('button', { name: 'first.standlines' }).dblclick();
  const coming = page.getByRole('dialog', { name: 'One moment…' });
  await expect(coming).toBeVisible();
  for (const key of ['Delete', 'Shift+ArrowRight', 'Escape', 'Enter', 'Control+l'])
    await page.keyboard.press(key);
  const box = await editor.box();
  await page.mouse.click(box.x + 20, box.y + 20);
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();
  letCome();
  await editor.noDialog();
  await editor.select(/^Clarinet/);
  expect(await editor.position()).toEqual(before);
});
