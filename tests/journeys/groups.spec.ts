/** Groups, locks and what is hidden: by the pointer, by keys, and in another window. */

import { Editor, expect, test } from './editor.ts';

/** Clarinet and stand 1 of the demo's first setup as one. */
async function grouped(editor: Editor): Promise<void> {
  await editor.select(/^Clarinet/);
  await editor.items.getByRole('treeitem', { name: /^stand 1/ }).click({ modifiers: ['Control'] });
  await editor.plan.focus();
  await editor.page.keyboard.press('Control+g');
  await expect(editor.page.getByRole('button', { name: 'Undo group 2 items' })).toBeVisible();
}

test('a click takes hold of the whole group, a double click of one thing in it, Escape of the whole again', async ({
  editor,
  page,
}) => {
  const chosen = editor.items.getByRole('treeitem', { selected: true, name: /in group 1/ });
  await editor.select(/^Clarinet/);
  const clarinet = await editor.middleOfSelection();
  await grouped(editor);
  await page.keyboard.press('Escape');
  await expect(chosen).toHaveCount(0);

  await page.mouse.click(clarinet.x, clarinet.y);
  await expect(chosen).toHaveCount(2);
  await page.mouse.move(clarinet.x, clarinet.y);
  await page.mouse.down();
  await page.mouse.move(clarinet.x + 40, clarinet.y, { steps: 4 });
  await page.mouse.up();
  await expect(page.getByRole('button', { name: 'Undo move 2 items' })).toBeVisible();
  await page.keyboard.press('Control+z');

  await page.mouse.dblclick(clarinet.x, clarinet.y);
  await expect(chosen).toHaveCount(1);
  await expect(page.getByText('Inside group 1')).toBeVisible();
  await page.keyboard.press('ArrowUp');
  await expect(page.getByRole('button', { name: /^Undo move Clarinet/ })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(chosen).toHaveCount(2);
  await expect(page.getByText('Inside group 1')).toBeHidden();
});

test('what is locked is not moved by keys or by hand, which is said, until it is unlocked', async ({
  editor,
  page,
}) => {
  const { keyboard, mouse } = page;
  await editor.select(/^Viola/);
  const middle = await editor.middleOfSelection();
  const before = await editor.position();
  await keyboard.press('l');
  await keyboard.press('ArrowUp');
  await expect(page.getByRole('alert')).toContainText('Viola (player 2) is locked; unlock it first.');
  await page.getByRole('alert').getByRole('button').click();
  await mouse.move(middle.x, middle.y);
  await mouse.down();
  await mouse.move(middle.x + 60, middle.y + 60, { steps: 4 });
  await mouse.up();
  expect(await editor.position()).toEqual(before);
  await expect(page.getByRole('status').filter({ hasText: 'Viola (player 2) is locked' })).toHaveCount(1);
  // A frame round everything leaves it alone.
  await editor.plan.focus();
  await keyboard.press('Control+a');
  await expect(editor.items.getByRole('treeitem', { name: /^Viola/ })).toHaveAttribute(
    'aria-selected',
    'false',
  );
  await editor.select(/^Viola.*locked/);
  await page.getByRole('button', { name: 'Unlock', exact: true }).click();
  await editor.plan.focus();
  await keyboard.press('ArrowUp');
  await expect(page.getByRole('button', { name: /^Undo move Viola/ })).toBeVisible();
});

test('what is hidden counts on, cannot be hit, and the window says how much is hidden', async ({
  editor,
  page,
}) => {
  await editor.showSetup('2b Hedgerow Dances');
  const found = await editor.findings.getByRole('listitem').count();
  await editor.select(/^Viola/);
  const middle = await editor.middleOfSelection();
  await page.keyboard.press('x');
  await expect(page.getByText('1 thing is hidden; checks count it')).toBeVisible();
  await expect(editor.items.getByRole('treeitem', { name: /^Viola.*hidden/ })).toHaveCount(1);
  await expect(editor.findings.getByText('Checking…')).toBeHidden();
  await expect(editor.findings.getByRole('listitem')).toHaveCount(found);
  await page.mouse.click(middle.x, middle.y);
  await expect(editor.items.getByRole('treeitem', { selected: true, name: /^Viola/ })).toHaveCount(0);
  await page.getByRole('button', { name: 'Show all', exact: true }).click();
  await expect(page.getByText('1 thing is hidden')).toHaveCount(0);
  await page.mouse.click(middle.x, middle.y);
  await expect(editor.items.getByRole('treeitem', { selected: true, name: /^Viola/ })).toHaveCount(1);
});

test('a group is pasted as a group in another window', async ({ editor, page, program, context }) => {
  await grouped(editor);
  await page.keyboard.press('Control+c');
  const other = await context.newPage();
  await other.goto(program.address());
  const there = new Editor(other);
  await expect(there.plan).toBeVisible();
  await there.plan.focus();
  await other.keyboard.press('Control+v');
  await expect(other.getByRole('button', { name: /^Undo add/ })).toBeVisible();
  await expect(there.items.getByRole('treeitem', { name: /in group 1/ })).toHaveCount(2);
  await expect(there.items.getByRole('treeitem', { selected: true, name: /in group 1/ })).toHaveCount(2);
});

test('the menu of the keyboard is about what is selected', async ({ editor, page }) => {
  await editor.select(/^Clarinet/);
  await editor.plan.focus();
  await page.keyboard.press('Shift+F10');
  await page.getByRole('menuitem', { name: 'Lock what is selected' }).press('Enter');
  await expect(page.getByRole('button', { name: /^Undo lock Clarinet/ })).toBeVisible();
});
