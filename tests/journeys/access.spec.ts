/** Everything for everybody: axe-core on the main states, the points it cannot see, and a concert without a mouse. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { axeComplaints } from './axe.ts';
import { expect, test } from './editor.ts';

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe-core finds nothing in the main states, ${colorScheme}`, async ({ editor, page }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await editor.showSetup('2b Hedgerow Dances');
    expect(await axeComplaints(page), 'nothing selected').toEqual([]);
    for (const item of [/^Clarinet/, /^stand 1/]) {
      await editor.select(item);
      expect(await axeComplaints(page), String(item)).toEqual([]);
    }
    await editor.select(/^Viola/);
    await page.getByRole('button', { name: 'Enlarge the picture' }).click();
    await expect(editor.dialog.getByRole('img')).toBeVisible();
    expect(await axeComplaints(page), 'what a player sees').toEqual([]);
    await page.keyboard.press('Escape');
    await editor.findings.getByRole('button').first().click();
    expect(await axeComplaints(page), 'a finding').toEqual([]);
    await editor.plan.focus();
    await page.keyboard.press('s');
    await expect(page.getByRole('region', { name: 'Section', exact: true })).toBeVisible();
    expect(await axeComplaints(page), 'the section').toEqual([]);
    for (const keys of ['Control+p', 'Control+k', 'Control+Shift+s', 'Control+Alt+n']) {
      await page.keyboard.press(keys);
      await expect(editor.dialog).toBeVisible();
      expect(await axeComplaints(page), keys).toEqual([]);
      await page.keyboard.press('Escape');
      await expect(editor.dialog).toBeHidden();
    }
  });
}

test('targets are at least 24 pixels in both directions', async ({ editor, page }) => {
  await editor.showSetup('2b Hedgerow Dances');
  await editor.select(/^Clarinet/);
  await editor.plan.focus();
  await page.keyboard.press('s');
  // WCAG 2.2, success criterion 2.5.8. Fields in a line of their own label count with the label's line.
  const small = await page.evaluate(() =>
    [
      ...document.querySelectorAll(
        'button, a, select, input:not([type="checkbox"]), [role="option"], [role="treeitem"], [role="tab"]',
      ),
    ]
      .filter((element) => element.checkVisibility())
      .map((element) => ({ element, box: element.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.width < 24 || box.height < 24))
      .map(({ element, box }) => `${element.outerHTML.slice(0, 80)} ${box.width} x ${box.height}`),
  );
  expect(small).toEqual([]);
});

test('the plan has a name, a summary and the keyboard', async ({ editor, page }) => {
  await editor.plan.focus();
  await expect(editor.plan).toHaveAccessibleDescription(/Lock Gates: \d+ items on the platform, 183 places/);
  await page.keyboard.press('n');
  const first = await editor.position();
  await page.keyboard.press('ArrowRight');
  expect(await editor.position()).toEqual({ x: first.x + 10, y: first.y });
  await page.keyboard.press('Shift+ArrowUp');
  expect(await editor.position()).toEqual({ x: first.x + 10, y: first.y + 100 });
  await expect(page.getByRole('status').last()).toContainText(/SR|SL/);
});

test('single letters do nothing while something is typed', async ({ editor, page }) => {
  await page.getByRole('searchbox').fill('');
  await page.getByRole('searchbox').press('g');
  await expect(page.getByRole('searchbox')).toHaveValue('g');
  await expect(editor.plan).toBeVisible();
});

test('single letters as keys can be switched off, and stay off', async ({ editor, page, program }) => {
  const section = page.getByRole('region', { name: 'Section', exact: true });
  await page.keyboard.press('Control+k');
  await page.keyboard.type('single letters');
  await page.keyboard.press('Enter');
  await expect(editor.dialog).toBeHidden();
  for (const keys of ['s', 'n', '0', '+', '[']) {
    await editor.plan.focus();
    const before = await editor.ratio();
    await page.keyboard.press(keys);
    await editor.settled();
    expect([keys, await editor.ratio()]).toEqual([keys, before]);
  }
  await expect(section).toBeHidden();
  await expect(editor.items.getByRole('treeitem', { selected: true })).toHaveCount(0);
  // Everything is in the list of commands, without the keys that do nothing now.
  await page.keyboard.press('Control+k');
  await page.keyboard.type('section through');
  await expect(editor.dialog.getByRole('option').first()).toHaveText(
    /^Show or hide: Section through the house\s*$/,
  );
  await page.keyboard.press('Enter');
  await expect(section).toBeVisible();

  await page.reload();
  await editor.open(program.address());
  await expect(section).toBeHidden();
  await editor.plan.focus();
  await page.keyboard.press('s');
  await editor.settled();
  await expect(section).toBeHidden();
  await page.keyboard.press('Control+k');
  await page.keyboard.type('single letters');
  await page.keyboard.press('Enter');
  await expect(editor.dialog).toBeHidden();
  await editor.plan.focus();
  await page.keyboard.press('s');
  await expect(section).toBeVisible();
});

test('places of the house are looked into one after the other without a mouse', async ({ editor, page }) => {
  const { keyboard } = page;
  await editor.plan.focus();
  await keyboard.press('.');
  const card = page.getByRole('region', { name: /^From place A 1$/ });
  await expect(card).toBeVisible();
  await keyboard.press('.');
  await expect(page.getByRole('region', { name: /^From place A 2$/ })).toBeVisible();
  await keyboard.press(',');
  await expect(card).toBeVisible();
  await keyboard.press('Control+k');
  await keyboard.type('picture of what');
  await keyboard.press('Enter');
  await expect(editor.dialog).toContainText('What place A 1 sees');
});

test('a duo is set up and printed without a mouse', async ({ editor, page, program }) => {
  const { keyboard } = page;
  await keyboard.press('Control+Alt+n');
  await expect(page.getByRole('dialog', { name: 'A new concert' })).toBeVisible();
  await keyboard.press('Enter');
  await expect(editor.dialog).toHaveCount(0);
  for (const what of ['cello', 'viola']) {
    await keyboard.press('Control+i');
    await keyboard.type(what);
    await keyboard.press('Enter');
    await expect(editor.items.getByRole('treeitem', { name: new RegExp(what, 'i') })).toBeVisible();
    await keyboard.press('Escape');
    await keyboard.press('F6');
    for (let i = 0; i < 8; i++)
      await keyboard.press(what === 'cello' ? 'Shift+ArrowRight' : 'Shift+ArrowLeft');
  }
  await expect(editor.items.getByRole('treeitem')).toHaveCount(5);
  await keyboard.press('Control+s');
  await expect(editor.dialog.last().getByLabel('File name')).toBeFocused();
  await keyboard.press('Control+a');
  await keyboard.type('duo');
  await keyboard.press('Enter');
  await expect(editor.title).toContainText(/Saved \d.*duo/);
  await keyboard.press('Control+p');
  await expect(editor.dialog.getByText(/exactly 1:\d+/)).toBeVisible();
  await page.getByRole('button', { name: 'Save as PDF…' }).focus();
  await keyboard.press('Enter');
  await expect(editor.dialog.last().getByLabel('File name')).toBeFocused();
  await keyboard.press('Enter');
  await expect(editor.dialog).toHaveCount(0, { timeout: 30_000 });
  const pdf = readFileSync(join(program.home, 'duo.pdf'));
  expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-');
});
