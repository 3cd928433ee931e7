/** Ensembles from a line of text, as somebody sets them up who cannot draw, or has no mouse. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from '@playwright/test';
import { openPdf } from '../electron/services/pdf-reading.ts';
import { expect, test } from './editor.ts';

/** Keys pressed and clicks made; typed letters count one each. */
const MOST_ACTIONS = 40;

test('a quartet in an empty house, written down and set in under 40 actions', async ({ editor, page }) => {
  let actions = 0;
  const press = async (key: string): Promise<void> => {
    actions++;
    await page.keyboard.press(key);
  };
  const type = async (words: string): Promise<void> => {
    actions += words.length;
    await page.keyboard.type(words);
  };

  await press('Control+Alt+N');
  const houses = page.getByRole('dialog', { name: 'A new concert' });
  await expect(houses).toBeVisible();
  await press('Enter');
  await expect(houses).toHaveCount(0);

  await press('Control+E');
  const dialog = page.getByRole('dialog', { name: 'Write down who plays' });
  await expect(dialog).toBeVisible();

  await test.step('what is not understood is said, and nothing can be set', async () => {
    await page.keyboard.type('2 vl, marymba');
    await expect(dialog.getByText(/“marymba” is no instrument.*“marimba”/)).toBeVisible();
    await expect(dialog.getByRole('button', { name: /^Set/ })).toBeDisabled();
    await dialog.getByRole('textbox', { name: 'Ensemble' }).fill('');
  });

  await type('2 vl, va, vc');
  await expect(dialog.getByRole('list', { name: 'Understood as' })).toHaveText(/2 × Violin\s*Viola\s*Cello/);
  await test.step('what the checks will find is told before anything is set', async () => {
    await expect(dialog.getByText(/^Nothing fails|^The checks find nothing/)).toBeVisible({
      timeout: 30_000,
    });
  });
  await press('Enter');
  await expect(dialog).toHaveCount(0);
  expect(actions).toBeLessThan(MOST_ACTIONS);

  for (const name of ['Violin 1', 'Violin 2', 'Viola', 'Cello'])
    await expect(editor.house.getByRole('button', { name: new RegExp(`^${name}`) })).toBeVisible();
  // The tool's own limits are kept by what it sets itself.
  await expect(editor.findings.getByText(/edge|room for/)).toHaveCount(0);
  // No fault remains: the whole check says so, once it has looked at the new setup.
  await expect(editor.findings.getByText(/^0 failing/)).toBeVisible();
  await expect(editor.findings.getByText(/places do not see/)).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo add 4 players' }).click();
  await expect(editor.house.getByRole('button', { name: /^Viola/ })).toHaveCount(0);
});

/** Goes on with Tab until something has the focus, as one does who has no mouse. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  for (let times = 0; times < 60; times++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('Tab did not lead there');
}

test('two facing pairs with shared stands, from a line of text', async ({ editor, page }) => {
  await page.keyboard.press('Control+Alt+N');
  await expect(page.getByRole('dialog', { name: 'A new concert' })).toBeVisible();
  await page.keyboard.press('Enter');
  await expect(editor.dialog).toHaveCount(0);
  await page.getByRole('button', { name: 'Set an ensemble from text…' }).click();
  const dialog = page.getByRole('dialog', { name: 'Write down who plays' });
  await dialog.getByRole('textbox', { name: 'Ensemble' }).fill('fl, ob, cl, bn');
  await dialog.getByRole('radio', { name: 'Facing pairs' }).check();
  await dialog.getByLabel('Two who face each other share one, back to back').check();
  await dialog.getByRole('button', { name: 'Set 4 players' }).click();
  await expect(dialog).toHaveCount(0);

  // Two stands for four, each read by two who look at each other across it.
  const stands = editor.items.getByRole('treeitem', { name: /^stand \d/ });
  await expect(stands).toHaveCount(2);
  const facings: number[] = [];
  for (const name of [/^Flute/, /^Oboe/, /^Clarinet/, /^Bassoon/]) {
    await editor.select(name);
    facings.push(await editor.facing());
  }
  const opposite = (a: number, b: number): boolean => (a - b + 720) % 360 === 180;
  for (const facing of facings)
    expect(facings.filter((other) => opposite(facing, other)).length).toBeGreaterThan(0);
  await stands.first().click();
  const readers = page.getByLabel('Reader', { exact: true });
  await expect(readers).toHaveCount(2);
  expect(
    new Set(await readers.evaluateAll((all) => all.map((one) => (one as HTMLSelectElement).value))).size,
  ).toBe(2);
  await expect(editor.findings.getByText(/edge|room for/)).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo add 4 players' }).click();
  await expect(stands).toHaveCount(0);
});

test('from an empty concert to the printed plot with nothing but the keyboard', async ({
  editor,
  page,
  program,
}) => {
  const { keyboard } = page;
  await keyboard.press('Control+Alt+N');
  await expect(page.getByRole('dialog', { name: 'A new concert' })).toBeVisible();
  await keyboard.press('Enter');
  await expect(editor.dialog).toHaveCount(0);
  await keyboard.press('Control+E');
  const line = page.getByRole('dialog', { name: 'Write down who plays' });
  await expect(line.getByRole('textbox', { name: 'Ensemble' })).toBeFocused();
  await keyboard.type('vl, va, vc');
  await expect(line.getByRole('button', { name: 'Set 3 players' })).toBeEnabled();
  await keyboard.press('Enter');
  await expect(editor.dialog).toHaveCount(0);

  // The cello a step upstage: found in the tree by its letters, moved on the plan, and said.
  await keyboard.press('Control+L');
  await editor.typeAtOnce('cel');
  const cello = editor.items.getByRole('treeitem', { name: /^Cello/ });
  await expect(cello).toHaveAttribute('aria-selected', 'true');
  const before = await editor.position();
  await keyboard.press('F6');
  await keyboard.press('Shift+ArrowUp');
  expect((await editor.position()).y).toBe(before.y + 100);
  // Where it is, and soon what that did to what the house sees.
  await expect(page.getByRole('status').last()).toContainText(/^Cello( .*US|: \d+\s% of places)/);
  await expect(page.getByRole('button', { name: /^Undo move Cello/ })).toBeVisible();

  await keyboard.press('Control+S');
  await expect(editor.dialog.last().getByLabel('File name')).toBeFocused();
  await keyboard.press('Control+A');
  await keyboard.type('trio');
  await keyboard.press('Enter');
  await expect(editor.title).toContainText(/Saved \d.*trio/);
  await keyboard.press('Control+P');
  await expect(editor.dialog.getByText(/exactly 1:\d+/)).toBeVisible();
  await tabTo(page, page.getByRole('button', { name: 'Save as PDF…' }));
  await keyboard.press('Enter');
  await expect(editor.dialog.last().getByLabel('File name')).toBeFocused();
  await keyboard.press('Enter');
  await expect(editor.dialog).toHaveCount(0, { timeout: 30_000 });

  const plot = await openPdf(new Uint8Array(readFileSync(join(program.home, 'trio.pdf'))));
  const { items } = await (await plot.getPage(1)).getTextContent();
  const words = items.map((item) => ('str' in item ? item.str : '')).join(' ');
  for (const name of ['Violin', 'Viola', 'Cello']) expect(words).toContain(name);
});
