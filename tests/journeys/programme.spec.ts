/** The evening as a whole: pieces in their order, what is carried between them, variants, stock and storage. */

import { axeComplaints } from './axe.ts';
import { expect, test, type Editor } from './editor.ts';

const evening = (editor: Editor) => editor.page.getByRole('region', { name: 'The evening, piece by piece' });
const piece = (editor: Editor, name: RegExp) => evening(editor).locator('.card').filter({ hasText: name });

test.beforeEach(async ({ editor, page }) => {
  await page.keyboard.press('F7');
  await expect(evening(editor)).toBeVisible();
  await expect(editor.plan).toBeHidden();
  await expect(evening(editor).getByText('Working out who carries what…')).toHaveCount(0);
});

test('changeovers are told step by step, and held against the time there is', async ({ editor, page }) => {
  const view = evening(editor);
  await expect(
    view.getByRole('heading', { name: 'Lock Gates to Hedgerow Dances, opened out' }),
  ).toBeVisible();
  const rows = view.getByRole('table').getByRole('row');
  await expect(rows).toHaveCount(9);
  await expect(rows.nth(1)).toContainText('A and B');
  await expect(view.getByText('Local codes, the venue')).toBeVisible();

  const time = page.getByLabel('Time there is before it');
  await time.fill('1:00');
  await time.press('Enter');
  await expect(view.getByText(/There are 1:00: 1:0\d too little/)).toBeVisible();
  await time.fill('soon');
  await time.press('Enter');
  await expect(view.getByRole('alert')).toContainText('minutes and seconds');
  await page.keyboard.press('Escape');
  expect(await axeComplaints(page)).toEqual([]);
});

test('pieces are put elsewhere by keys and by dragging, and undone', async ({ editor, page }) => {
  const names = () => evening(editor).locator('.card .title').allInnerTexts();
  await piece(editor, /Low Water/).focus();
  await page.keyboard.press('Alt+ArrowUp');
  await expect.poll(names).toEqual(['Lock Gates', 'Low Water', 'Hedgerow Dances, opened out']);
  await expect(piece(editor, /Low Water/)).toBeFocused();
  await page.getByRole('button', { name: 'Lock Gates: later' }).click();
  await expect.poll(names).toEqual(['Low Water', 'Lock Gates', 'Hedgerow Dances, opened out']);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect.poll(names).toEqual(['Lock Gates', 'Hedgerow Dances, opened out', 'Low Water']);
  await evening(editor)
    .getByRole('group', { name: 'Low Water', exact: true })
    .dragTo(evening(editor).getByRole('group', { name: 'Lock Gates', exact: true }));
  await expect.poll(names).toEqual(['Low Water', 'Lock Gates', 'Hedgerow Dances, opened out']);
});

test('variants stand side by side with what each is better at, and one is chosen', async ({
  editor,
  page,
}) => {
  const view = evening(editor);
  await piece(editor, /Hedgerow/).click();
  await expect(view.getByRole('img')).toHaveCount(2);
  const missed = view.getByRole('row', { name: /^Limits missed/ });
  await expect(missed).toContainText('Hedgerow Dances, opened out, by');
  expect(await axeComplaints(page)).toEqual([]);

  await view.getByRole('button', { name: 'Play this one' }).click();
  await expect(page.getByRole('tab', { name: '2 Hedgerow Dances', exact: true })).toBeVisible();
  await expect(page.getByRole('tab', { name: '2b Hedgerow Dances, opened out', exact: true })).toBeVisible();

  await piece(editor, /Lock Gates/).click();
  await view.getByRole('button', { name: 'Vary' }).click();
  await expect(page.getByRole('tab', { name: '1b Lock Gates, another way' })).toBeVisible();
  await expect(view.getByRole('row', { name: /^Seen well: Clarinet/ })).toContainText('the same');
  await view.getByRole('button', { name: 'Mirror' }).click();
  await page.keyboard.press('F7');
  await page.getByRole('tab', { name: '1 Lock Gates', exact: true }).click();
  await editor.select(/^Clarinet/);
  expect((await editor.position()).x).toBe(735);
});

test('the stock says what is missing, and things wait in a storage place that is drawn', async ({
  editor,
  page,
}) => {
  const view = evening(editor);
  await view.getByRole('button', { name: 'Stock', exact: true }).click();
  await expect(view.getByText('there is enough for every setup')).toBeVisible();
  const owned = page.getByLabel('Owned: Orchestral stand');
  await owned.fill('2');
  await owned.press('Enter');
  await expect(view.getByText('Orchestral stand: 1 too few for Low Water, which needs 3.')).toBeVisible();
  await expect(view.getByRole('button', { name: /^Stock/ })).toContainText('too few');
  expect(await axeComplaints(page)).toEqual([]);

  await view.getByRole('button', { name: 'Add a storage place' }).click();
  await page.getByLabel('Waits in: Percussion table').selectOption('Storage');
  await view.getByRole('button', { name: 'Storage: show on the plan' }).click();
  await expect(editor.plan).toBeVisible();
  const middle = await editor.middleOfSelection();
  const before = await editor.position();
  await page.mouse.move(middle.x, middle.y);
  await page.mouse.down();
  await page.mouse.move(middle.x + 60, middle.y, { steps: 4 });
  await page.mouse.up();
  await expect.poll(async () => (await editor.position()).x).toBeGreaterThan(before.x);
});

test('a thing stays for the whole concert from the menu over it, and then it is not carried', async ({
  editor,
  page,
}) => {
  const moved = () => evening(editor).getByRole('row').filter({ hasText: 'Marimba' });
  await expect(moved()).toHaveCount(1);
  await page.keyboard.press('F7');
  await editor.showSetup('2 Hedgerow Dances, opened out');
  await editor.select(/table 1|Shaker table/);
  const at = await editor.middleOfSelection();
  await page.mouse.click(at.x, at.y, { button: 'right' });
  await page.getByRole('menuitem', { name: 'Stay for the whole concert' }).click();
  await expect(page.getByRole('button', { name: /^Undo share/ })).toBeVisible();
  await page.keyboard.press('F7');
  await expect(evening(editor).getByRole('row').filter({ hasText: 'Shaker table' })).toHaveCount(0);
});

test('shows where a piece would come while it is dragged', async ({ editor, page }) => {
  const cards = evening(editor).locator('.piece');
  const [from, to] = [await cards.nth(0).boundingBox(), await cards.nth(2).boundingBox()];
  if (!from || !to) throw new Error('three pieces were expected');
  const mark = evening(editor).locator('li.target');
  await expect(mark).toHaveCount(0);
  await page.mouse.move(from.x + 60, from.y + 20);
  await page.mouse.down();
  await page.mouse.move(from.x + 70, from.y + 60, { steps: 4 });
  await page.mouse.move(to.x + 70, to.y + 20, { steps: 8 });
  await page.mouse.move(to.x + 72, to.y + 22, { steps: 6 });
  await expect(mark).toHaveCount(1);
  await expect(mark).toContainText('Low Water');
  await page.mouse.up();
  await expect(mark).toHaveCount(0);
});

test('tabs stand in the order of the programme, a variant behind its piece', async ({ page }) => {
  const numbers = page.getByRole('tab').locator('.number');
  await expect(numbers).toHaveText(['1', '2', '2b', '3']);
});
