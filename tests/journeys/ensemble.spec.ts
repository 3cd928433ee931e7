/** A quartet from a line of text, as somebody who cannot draw sets one up. */

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
  await press('Enter');
  await expect(dialog).toHaveCount(0);
  expect(actions).toBeLessThan(MOST_ACTIONS);

  for (const name of ['Violin 1', 'Violin 2', 'Viola', 'Cello'])
    await expect(editor.house.getByRole('button', { name: new RegExp(`^${name}`) })).toBeVisible();
  // The tool's own limits are kept by what it sets itself.
  await expect(editor.findings.getByText(/edge|room for/)).toHaveCount(0);
  await page.getByRole('button', { name: 'Undo add 4 players' }).click();
  await expect(editor.house.getByRole('button', { name: /^Viola/ })).toHaveCount(0);
});
