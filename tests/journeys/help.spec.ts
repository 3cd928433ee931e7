/** The help: a page for what is in front of somebody, read and searched by keyboard alone. */

import { axeComplaints } from './axe.ts';
import { expect, test } from './editor.ts';

test('a finding leads to the page about its check, with F1 too, and back to where it was', async ({
  editor,
  page,
}) => {
  await editor.showSetup('2b Hedgerow Dances');
  const finding = editor.findings.getByRole('button').first();
  await finding.click();
  await editor.findings.getByRole('button', { name: 'How this is judged' }).click();
  const heading = editor.dialog.getByRole('heading', { level: 3 });
  await expect(heading).toBeFocused();
  const title = await heading.innerText();
  await page.keyboard.press('Escape');
  await expect(editor.dialog).toBeHidden();

  await finding.focus();
  await page.keyboard.press('F1');
  await expect(heading).toHaveText(title);
  await expect(heading).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(finding).toBeFocused();
  // Elsewhere it opens the help at its beginning.
  await editor.plan.focus();
  await page.keyboard.press('F1');
  await expect(editor.dialog.getByRole('searchbox')).toBeVisible();
  await expect(heading).toHaveText('What the house sees');
});

test('the help is searched, walked through and left without a mouse', async ({ editor, page }) => {
  const { keyboard } = page;
  await keyboard.press('Control+k');
  await keyboard.type('help open edges');
  await keyboard.press('Enter');
  const heading = editor.dialog.getByRole('heading', { level: 3 });
  await expect(heading).toHaveText('Open edges');
  await expect(editor.dialog).toContainText('Local codes, the venue and licensed practice decide.');
  await expect(editor.dialog.getByRole('listitem').filter({ hasText: 'now 600 mm' })).toHaveCount(1);

  await editor.dialog.getByRole('searchbox').focus();
  await keyboard.type('mola');
  const pages = editor.dialog.getByRole('navigation', { name: 'Pages' }).getByRole('button');
  await expect(pages).toHaveCount(1);
  await keyboard.press('Enter');
  await expect(heading).toHaveText(/^Reading/);
  await editor.dialog.getByRole('searchbox').fill('');
  await keyboard.press('ArrowDown');
  await expect(pages.first()).toBeFocused();
  await keyboard.press('End');
  await keyboard.press('Enter');
  await expect(heading).toHaveText('How sources are marked');
  await expect(heading).toBeFocused();
  await editor.dialog.getByRole('button', { name: 'Changes that were tried' }).last().press('Enter');
  await expect(heading).toHaveText('Changes that were tried');
  await editor.dialog.getByRole('button', { name: 'Back' }).press('Enter');
  await expect(heading).toHaveText('How sources are marked');
});

test('limits are changed from the page, and it tells the new one', async ({ editor, page }) => {
  await editor.house.getByRole('button', { name: 'How this is judged' }).click();
  await editor.dialog.getByRole('button', { name: /Concert and limits/ }).click();
  const field = page.getByLabel('Places that shall see him well');
  await field.fill('60');
  await field.press('Enter');
  await page.getByRole('button', { name: 'Done' }).click();
  await expect(editor.dialog).toContainText('now 60 %');
});

test('the first things to try are called back from the list of commands', async ({ editor, page }) => {
  const steps = page.getByRole('complementary', { name: 'First steps' });
  await expect(steps).toBeHidden();
  await editor.plan.focus();
  await page.keyboard.press('Control+k');
  await page.keyboard.type('first things');
  await page.keyboard.press('Enter');
  await expect(steps).toBeVisible();
});

test('each of the first things to try is ringed, and shown on demand', async ({ editor, page }) => {
  await page.keyboard.press('Control+k');
  await page.keyboard.type('first things');
  await page.keyboard.press('Enter');
  const steps = page.getByRole('complementary', { name: 'First steps' });
  const ringed = page.locator('[data-hinted]');
  const show = steps.getByRole('button', { name: 'Show me' });
  const next = steps.getByRole('button', { name: 'Next' });

  await expect(ringed).toHaveAccessibleName('What the house sees');
  await show.click();
  await expect(editor.house.getByRole('button', { pressed: true })).toContainText('Viola');
  await next.click();
  await expect(ringed).toHaveAccessibleName('Findings');
  await show.click();
  await expect(editor.findings.getByRole('button').first()).toBeVisible();
  await next.click();
  await show.click();
  await expect(editor.plan).toBeFocused();
  await expect(editor.items.getByRole('treeitem', { selected: true })).toContainText('stand 1');
  await next.click();
  await show.click();
  await expect(editor.field('From the centre line')).toBeFocused();
  await next.click();
  await expect(ringed).toHaveText('Print');
  await show.click();
  await expect(editor.dialog).toBeVisible();
  await page.keyboard.press('Escape');
  await steps.getByRole('button', { name: 'Skip these' }).click();
  await expect(ringed).toHaveCount(0);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe-core finds nothing in the help, ${colorScheme}`, async ({ editor, page }) => {
    await page.emulateMedia({ colorScheme });
    await editor.house.getByRole('button', { name: 'How this is judged' }).click();
    for (const title of ['Open edges', 'What the house sees', 'How sources are marked']) {
      await editor.dialog.getByRole('navigation').getByRole('button', { name: title }).click();
      expect(await axeComplaints(page), title).toEqual([]);
    }
  });
}
