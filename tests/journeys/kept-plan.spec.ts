/** A page plan that is kept: changed by keyboard, judged, pinned, planned again, taken back, saved and opened again. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { axeComplaints } from './axe.ts';
import { expect, test } from './editor.ts';

for (const colorScheme of ['light', 'dark'] as const) {
  test(`a page plan is kept and changed by hand, ${colorScheme}`, async ({ editor, page, program }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.getByRole('button', { name: 'Page turns', exact: true }).click();
    const turns = page.getByRole('region', { name: 'Page turns', exact: true });
    const press = (name: string) => turns.getByRole('button', { name, exact: true }).click();
    await expect(turns).toContainText(/2 turns\s*fewest possible/);
    await expect(turns).toContainText(/\d+\s%\sof the places see at least 90\s% of/);

    await press('Keep this plan');
    await expect(turns).toContainText('Every rule is kept.');
    await expect(turns).toContainText('The same figures as the best plan known.');
    expect(await axeComplaints(page), 'kept').toEqual([]);

    // A page is changed by keyboard: a sentence says what is not in view any more, and leads to who needs it.
    const paper = turns.getByRole('region', { name: 'stand 1' });
    const first = paper.getByRole('textbox', {
      name: 'Place 1 from the left, At first, Clarinet (player 1)',
    });
    await expect(first).toHaveValue('1');
    await first.focus();
    await page.keyboard.type('2');
    await page.keyboard.press('Enter');
    const rules = turns.getByRole('list', { name: 'Rules that are broken' });
    const sentence = rules.getByRole('button', {
      name: /^Clarinet \(player 1\) needs page 1 from 0:00\.0 to/,
    });
    await sentence.focus();
    await page.keyboard.press('Enter');
    await expect(editor.items.getByRole('treeitem', { name: /^Clarinet/ })).toHaveAttribute(
      'aria-selected',
      'true',
    );
    expect(await axeComplaints(page), 'rules are broken').toEqual([]);

    // What is no page, or none of the part, is not taken, and says so by its look and in words.
    for (const [typed, said] of [
      ['x', '"x" is no page number'],
      ['0', '"0" is no page number'],
      ['-1', '"-1" is no page number'],
      ['99', 'has no page 99: the part has'],
    ] as const) {
      await first.focus();
      await first.fill(typed);
      await page.keyboard.press('Enter');
      await expect(first).toHaveAttribute('aria-invalid', 'true');
      await expect(paper.getByRole('alert')).toContainText(said);
      await expect(first).toHaveAccessibleDescription(new RegExp(said));
    }
    await page.keyboard.press('Escape');
    await expect(first).toHaveValue('2');
    await expect(paper.getByRole('alert')).toHaveCount(0);

    // Who prints it is told.
    await turns.getByRole('button', { name: 'Print booklets and cards…' }).click();
    await expect(editor.dialog).toContainText(/This plan breaks \d+ rules?: see Page turns\./);
    expect(await axeComplaints(page), 'printing a plan that breaks rules').toEqual([]);
    await page.keyboard.press('Escape');

    // Pinned there, the page stays when it is planned again, or there is no plan and the pin is named.
    await paper
      .getByRole('button', { name: 'Pin: Place 1 from the left, At first, Clarinet (player 1)' })
      .press('Enter');
    await press('Plan again');
    await expect(turns).toContainText(/Plans worth comparing|letting go of the pin on page 2/);
    await expect(
      turns
        .getByRole('table', { name: /stand 1/ })
        .locator('tbody tr')
        .first()
        .locator('.page')
        .first(),
    ).toHaveText('2');
    await turns.getByRole('button', { name: /^Kept: / }).click();
    await expect(first).toHaveValue('2');

    // A turn is moved to a bar in which no hand is free.
    const list = turns.getByRole('list', { name: 'Turns' });
    await list.getByRole('button').first().click();
    const when = list.getByLabel('When', { exact: true });
    await when.fill('bar 3');
    await when.press('Enter');
    await expect(rules.getByRole('button', { name: /has no (left|right) hand free/ })).toBeVisible();
    await when.fill('whenever');
    await when.press('Enter');
    await expect(list.getByRole('alert')).toContainText('There is no "whenever" in this music');
    await when.press('Escape');

    // Saved as it is, it is the same when it is opened again.
    const sentences = await rules.getByRole('button').allTextContents();
    await editor.plan.focus();
    await page.keyboard.press('Control+Shift+S');
    await editor.dialog.getByLabel('File name').fill('kept');
    await editor.dialog.getByRole('button', { name: 'Save here' }).click();
    await expect.poll(() => safeRead(join(program.home, 'kept.standlines'))).toContain('"kind": "pagePlan"');

    // Everything is taken back, down to the concert without a plan.
    const undo = page.getByRole('button', { name: /^Undo/ });
    for (let steps = 0; steps < 10 && (await undo.count()) > 0; steps++) {
      await editor.plan.focus();
      await page.keyboard.press('Control+z');
    }
    await expect(page.getByRole('button', { name: 'Nothing to undo' })).toHaveCount(1);
    await expect(turns.getByRole('button', { name: /^Kept: / })).toHaveCount(0);
    await expect(turns.getByRole('button', { name: 'Start an empty plan' })).toBeVisible();

    await page.keyboard.press('Control+o');
    await editor.dialog.getByRole('button', { name: 'kept.standlines' }).dblclick();
    // What was taken back since it was saved is let go.
    await editor.dialog.getByRole('button', { name: 'Discard them' }).click();
    await expect(editor.dialog).toHaveCount(0);
    await page.getByRole('tab', { name: '1 Lock Gates', exact: true }).click();
    await expect(rules.getByRole('button')).toHaveCount(sentences.length);
    expect(await rules.getByRole('button').allTextContents()).toEqual(sentences);
    await expect(first).toHaveValue('2');
  });
}

function safeRead(path: string): string {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return '';
  }
}

test('in a small window the turns and the pages of a stand are in view at once', async ({ editor, page }) => {
  await page.setViewportSize({ width: 1100, height: 700 });
  const turns = page.getByRole('region', { name: 'Page turns', exact: true });
  await page.getByRole('button', { name: 'Page turns', exact: true }).click();
  await expect(turns.getByRole('list', { name: 'Turns' }).getByRole('button').last()).toBeInViewport({
    ratio: 1,
  });
  await expect(turns.getByRole('table').getByRole('row').last()).toBeInViewport({ ratio: 1 });

  // What it takes is a line that opens.
  const summary = turns.getByText('2 turns, 1 stand, 6 printed panels: the fewest possible');
  await expect(turns.getByRole('heading', { name: 'What it takes' })).toBeHidden();
  await summary.click();
  await expect(turns.getByRole('heading', { name: 'What it takes' })).toBeVisible();
  expect(await axeComplaints(page), 'small window').toEqual([]);

  // Another setup, without a plan, does not speak of turns that it does not show.
  await editor.showSetup('2b Hedgerow Dances');
  await expect(turns).toContainText('Finds which page goes where');
  await expect(turns).not.toContainText('another setup');
});

test('the focus stays in the page turns when what had it goes, and goes to the plan with them', async ({
  editor,
  page,
}) => {
  await page.getByRole('button', { name: 'Page turns', exact: true }).click();
  const turns = page.getByRole('region', { name: 'Page turns', exact: true });
  const heading = turns.getByRole('heading', { name: 'Page turns', exact: true });
  const press = (name: string | RegExp) => turns.getByRole('button', { name }).press('Enter');
  await expect(turns).toContainText(/2 turns\s*fewest possible/);

  await press('Plan again');
  await expect(turns).toContainText(/2 turns\s*fewest possible/);
  await expect(heading).toBeFocused();

  await press('Keep this plan');
  await turns.getByRole('list', { name: 'Turns' }).getByRole('button').first().press('Enter');
  await press('Remove this turn');
  await expect(heading).toBeFocused();

  await press('Take the paper off stand 1');
  await expect(heading).toBeFocused();
  await press('Put paper on stand 1');
  await expect(heading).toBeFocused();

  await press('Close the page turns');
  await expect(turns).toHaveCount(0);
  await expect(editor.plan).toBeFocused();
});
