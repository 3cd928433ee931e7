/** What a screen reader is told, and where the keyboard is after a button has done away with itself. */

import { expect, test } from './editor.ts';

test('each change that can be tried says by its name what it is', async ({ editor, page }) => {
  await editor.showSetup('2b Hedgerow Dances');
  await editor.findings
    .getByRole('button', { name: /places do not see/ })
    .first()
    .click();
  const tries = editor.findings.getByRole('button', { name: /^Try it: \w/ });
  await expect(tries.first()).toBeVisible({ timeout: 30_000 });
  const names = await tries.evaluateAll((all) => all.map((button) => button.ariaLabel));
  expect(new Set(names).size).toBe(names.length);
  // It is gone when it has done its work; the keyboard is on the plan then.
  await tries.first().focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: /^Undo (move|lower|turn)/ })).toBeVisible();
  await expect(editor.plan).toBeFocused();
});

test('what a button takes away with itself leaves the keyboard on the plan', async ({ editor, page }) => {
  const { keyboard } = page;
  await editor.select(/^Pilaster/);
  await page.getByRole('button', { name: 'Hide', exact: true }).focus();
  await keyboard.press('Enter');
  await page.getByRole('button', { name: 'Show all' }).focus();
  await keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Show all' })).toBeHidden();
  await expect(editor.plan).toBeFocused();
  await editor.select(/^Pilaster/);
  await page.getByRole('button', { name: 'Remove', exact: true }).focus();
  await keyboard.press('Enter');
  await expect(editor.items.getByRole('treeitem', { name: /^Pilaster/ })).toHaveCount(0);
  await expect(editor.plan).toBeFocused();
  // So do whole columns.
  await page.getByRole('searchbox').focus();
  await keyboard.press('F8');
  await expect(editor.items).toBeHidden();
  await expect(editor.plan).toBeFocused();
});

test('the same words twice are said twice', async ({ editor, page }) => {
  const said = page.locator('.unseen[role="status"]').last();
  const heard = async (): Promise<string> => (await said.textContent()) ?? '';
  await editor.select(/^Viola/);
  await editor.plan.focus();
  await page.keyboard.press('Control+c');
  await expect(said).toHaveText('Copied 1 thing');
  const first = await heard();
  await page.keyboard.press('Control+c');
  await expect.poll(heard).not.toBe(first);
  expect((await heard()).trim()).toBe(first.trim());
});

test('what was done and what the house sees of it are both told, in places of their own', async ({
  editor,
  page,
}) => {
  await editor.select(/^Viola/);
  await editor.plan.focus();
  await page.keyboard.press('m');
  await expect(editor.house.getByRole('status')).toContainText(/points (more|fewer)/);
  await expect(page.locator('.unseen[role="status"]').last()).toHaveText('Done: mirror Viola (player 2)');
});

test('a search says how much it found, and leads to what can be done before what can be read', async ({
  editor,
  page,
}) => {
  await page.getByRole('searchbox').fill('clarinet');
  await expect(page.getByRole('status').filter({ hasText: /^\d+ things$/ })).toBeAttached();
  await page.getByRole('searchbox').fill('');
  for (const [typed, first] of [
    ['page turns', /^(?!Help)/],
    ['section', /^Show or hide: Section/],
  ] as const) {
    await page.keyboard.press('Control+k');
    await editor.dialog.getByRole('combobox').fill(typed);
    await expect(editor.dialog.getByRole('option').first()).toHaveText(first);
    await expect(editor.dialog.getByRole('status')).toHaveText(/^\d+ commands?$/);
    await page.keyboard.press('Escape');
    await expect(editor.dialog).toHaveCount(0);
  }
});

test('the plan is described once, and the tabs say which part of the window is theirs', async ({
  editor,
  page,
}) => {
  await expect(editor.plan).toHaveAccessibleDescription(/183 places/);
  const said = await page.locator('main').ariaSnapshot();
  expect(said.split('183 places').length - 1).toBeLessThanOrEqual(1);
  const tab = page.getByRole('tab', { selected: true });
  await expect(page.getByRole('tabpanel', { name: /Lock Gates/ })).toHaveAttribute(
    'id',
    (await tab.getAttribute('aria-controls')) ?? '',
  );
});

test('with colours of the system only, what is chosen, pressed and focused has a frame', async ({
  editor,
  page,
}) => {
  await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
  await editor.select(/^Viola/);
  const edge = (name: RegExp) =>
    editor.items.getByRole('treeitem', { name }).evaluate((row) => {
      const { outlineStyle, borderTopStyle, borderTopWidth } = getComputedStyle(row);
      return outlineStyle !== 'none' || (borderTopStyle !== 'none' && borderTopWidth !== '0px');
    });
  expect([await edge(/^Viola/), await edge(/^Clarinet/)]).toEqual([true, false]);
  await page.getByRole('button', { name: 'File', exact: true }).focus();
  await page.keyboard.press('Enter');
  const lit = page.locator('[data-highlighted]');
  await expect(lit).toHaveCount(1);
  const isFramed = await lit.evaluate((entry) => getComputedStyle(entry).outlineStyle !== 'none');
  expect(isFramed).toBe(true);
});

test('with less motion nothing glides', async ({ editor, page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await editor.plan.focus();
  await page.keyboard.press('0');
  await editor.settled();
  const there = await editor.ratio();
  await page.waitForTimeout(400);
  expect(await editor.ratio()).toBe(there);
  const moving = await page.evaluate(() =>
    [...document.querySelectorAll('*')]
      .filter((element) => {
        const { transitionDuration, animationName, animationDuration } = getComputedStyle(element);
        const lasts = (durations: string): boolean =>
          durations.split(',').some((one) => parseFloat(one) > 0.01);
        return lasts(transitionDuration) || (animationName !== 'none' && lasts(animationDuration));
      })
      .map((element) => element.outerHTML.slice(0, 80)),
  );
  expect(moving).toEqual([]);
});
