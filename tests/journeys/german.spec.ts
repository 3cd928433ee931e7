/** The window of somebody whose browser prefers German. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { axeComplaints } from './axe.ts';
import { cutWords } from './cut-words.ts';
import { expect, listenForComplaints, test } from './editor.ts';

test.use({ locale: 'de-DE' });

async function openGerman(page: Page, address: string): Promise<void> {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(address);
  await expect(page.getByRole('application', { name: 'Plan von Podium und Saal' })).toBeVisible();
  await expect(page.getByRole('region', { name: 'Was der Saal sieht' }).getByRole('button')).not.toHaveCount(
    0,
  );
}

const list = (page: Page) => page.getByRole('tree', { name: 'Auf dem Podium' });
const findings = (page: Page) => page.getByRole('region', { name: 'Befunde' });

async function showHedgerow(page: Page): Promise<void> {
  await page.getByRole('tab', { name: '2b Hedgerow Dances', exact: true }).click();
  await expect(findings(page).getByRole('button').first()).toBeVisible();
}

/** English words that German ones stand for; names of what is in the concert have none of them. */
const ENGLISH = /\b(the|and|of|with|to|from|is|are|in front|stand|player|seat|page|turn|undo|close|setup)\b/i;

test('a German window is German throughout: list, properties, findings, undo, print', async ({
  page,
  program,
}) => {
  const complaints = listenForComplaints(page);
  await openGerman(page, program.address());
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
  await showHedgerow(page);
  await list(page)
    .getByRole('treeitem', { name: /^Klarinette/ })
    .click();
  const across = page.getByLabel('Von der Mittellinie', { exact: true });
  await expect(across).toHaveValue(/^1150 li$/);

  // Typed as a German would, with a comma, and told back as it is printed.
  await across.fill('1,25 m li');
  await across.press('Enter');
  await expect(across).toHaveValue('1250 li');
  await page.getByRole('button', { name: /^Rückgängig: Klarinette/ }).click();
  await expect(across).toHaveValue('1150 li');

  const words = await page.locator('body').innerText();
  const english = words.split('\n').filter((line) => ENGLISH.test(line) && !/Hedge and Harbour/.test(line));
  expect(english).toEqual([]);
  expect(complaints).toEqual([]);
});

test('a German plot is printed from a German window', async ({ page, program }) => {
  await openGerman(page, program.address());
  await page.keyboard.press('Control+p');
  const dialog = page.getByRole('dialog', { name: 'Bühnenplan drucken' });
  await expect(dialog.getByText(/genau 1:\d+/)).toBeVisible();
  await dialog.getByRole('button', { name: 'Als PDF speichern…' }).click();
  const place = page.getByRole('dialog').last();
  await expect(place.getByLabel('Dateiname')).toBeFocused();
  await place.getByLabel('Dateiname').fill('plan');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('dialog')).toHaveCount(0, { timeout: 30_000 });
  const pdf = readFileSync(join(program.home, 'plan.pdf')).toString('latin1');
  expect(/\/Lang \((\w+)\)/.exec(pdf)?.[1]).toBe('de');
});

for (const [width, height] of [
  [1440, 900],
  [1100, 700],
] as const) {
  test(`no German word is cut, and axe finds nothing, at ${width}x${height}`, async ({ page, program }) => {
    await page.setViewportSize({ width, height });
    await openGerman(page, program.address());
    await showHedgerow(page);
    await list(page)
      .getByRole('treeitem', { name: /^Klarinette/ })
      .click();
    expect(await cutWords(page), 'a player').toEqual([]);
    expect(await axeComplaints(page)).toEqual([]);
    for (const [keys, title] of [
      ['Control+p', 'Bühnenplan drucken'],
      ['Control+k', 'Befehl suchen'],
      ['Control+Alt+n', 'Neues Konzert'],
    ] as const) {
      await page.keyboard.press(keys);
      const dialog = page.getByRole('dialog', { name: title });
      await expect(dialog).toBeVisible();
      expect(await cutWords(page), keys).toEqual([]);
      expect(await axeComplaints(page), keys).toEqual([]);
      await page.keyboard.press('Escape');
      await expect(dialog).toBeHidden();
    }
    await page.keyboard.press('F7');
    await expect(page.getByRole('region', { name: 'Der Abend, Stück für Stück' })).toBeVisible();
    expect(await cutWords(page), 'the evening').toEqual([]);
    expect(await axeComplaints(page), 'the evening').toEqual([]);
  });
}

test('the language is changed in the menu, and stays', async ({ page, program }) => {
  await openGerman(page, program.address());
  await page.getByRole('button', { name: 'Ansicht', exact: true }).click();
  await page.getByRole('menuitem', { name: 'Sprache' }).hover();
  await page.getByRole('menuitemcheckbox', { name: 'English' }).click();
  await expect(page.getByRole('application', { name: 'Plan of the platform and the house' })).toBeVisible();
  await page.reload();
  await expect(page.getByRole('button', { name: 'View', exact: true })).toBeVisible();

  // Unsaved work is not left for it.
  await page
    .getByRole('tree', { name: 'On the platform' })
    .getByRole('treeitem', { name: /^Clarinet/ })
    .click();
  const across = page.getByLabel('From the centre line', { exact: true });
  await across.fill('800 SR');
  await across.press('Enter');
  await page.keyboard.press('Control+k');
  await page.keyboard.type('Deutsch');
  await page.keyboard.press('Enter');
  const asked = page.getByRole('dialog', { name: /^Save the changes/ });
  await asked.getByRole('button', { name: 'Cancel' }).click();
  await expect(across).toHaveValue('800 SR');
  await page.keyboard.press('Control+k');
  await page.keyboard.type('Deutsch');
  await page.keyboard.press('Enter');
  await asked.getByRole('button', { name: 'Discard them' }).click();
  await expect(list(page)).toBeVisible();
});
