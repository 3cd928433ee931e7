/** No work is lost: crashes, foreign changes, and leaving with something unsaved. */

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Editor, expect, test } from './editor.ts';

test('what was not saved is offered after the program was killed', async ({ editor, page, program }) => {
  await editor.select(/^Viola/);
  await editor.field('From the centre line').fill('1234 SL');
  await page.keyboard.press('Enter');
  // A crash may cost two seconds of work at most.
  await page.waitForTimeout(2000);
  await program.stop('SIGKILL');
  await expect(page.getByText('The program behind this window does not answer.')).toBeVisible();

  await editor.open(await program.startAgain());
  await editor.dialog.getByRole('button', { name: 'Open it' }).click();
  await expect(editor.dialog).toBeHidden();
  await editor.select(/^Viola/);
  await expect(editor.field('From the centre line')).toHaveValue('1234 SL');
  await expect(page.getByText('not saved yet')).toBeVisible();
});

test('a file changed by another program is not overwritten without a word', async ({
  editor,
  page,
  program,
}) => {
  await editor.saveAs('shared');
  const file = join(program.home, 'shared.standlines');
  const theirs = readFileSync(file, 'utf8').replace('Lock Gates', 'Theirs');
  writeFileSync(file, theirs);

  await editor.select(/^Viola/);
  await editor.plan.focus();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Control+s');
  await expect(editor.dialog).toContainText('The file has changed on disk');
  await editor.dialog.getByRole('button', { name: 'Save mine as a copy…' }).click();
  await editor.dialog.getByLabel('File name').fill('mine');
  await editor.dialog.getByRole('button', { name: 'Save here' }).click();
  await expect(editor.title).toContainText(/mine.*saved/);
  expect(readFileSync(file, 'utf8')).toBe(theirs);
  expect(readFileSync(join(program.home, 'mine.standlines'), 'utf8')).toContain('Lock Gates');
});

test('leaving with unsaved changes asks first, and Escape stays', async ({ editor, page }) => {
  await editor.select(/^Viola/);
  await editor.plan.focus();
  await page.keyboard.press('ArrowRight');
  await page.getByRole('button', { name: 'File' }).click();
  await page.getByRole('menuitem', { name: 'Open the demo concert' }).click();
  await expect(editor.dialog).toContainText('Save the changes to');
  await page.keyboard.press('Escape');
  await expect(editor.dialog).toBeHidden();
  await expect(page.getByText('not saved yet')).toBeVisible();

  const asked = page.waitForEvent('dialog');
  const leaving = page.close({ runBeforeUnload: true });
  const dialog = await asked;
  expect(dialog.type()).toBe('beforeunload');
  await dialog.accept();
  await leaving;
});

test('a drag that is let go with Escape leaves no trace', async ({ editor, page }) => {
  await editor.select(/^stand 1/);
  const before = await editor.position();
  await editor.dragTo({ x: before.x + 500, y: before.y - 300 });
  await page.keyboard.press('Escape');
  await page.mouse.up();
  expect(await editor.position()).toEqual(before);
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();
});

test('the window keeps working while the program is away, and a copy can be saved', async ({
  page,
  program,
}) => {
  const editor = new Editor(page);
  await editor.open(program.address());
  await program.stop('SIGKILL');
  await expect(page.getByText('Your work is safe here')).toBeVisible();
  await editor.putHintsAway();
  await editor.select(/^Viola/);
  await editor.field('From the centre line').fill('999 SL');
  await page.keyboard.press('Enter');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save a copy with the browser' }).click(),
  ]);
  expect(readFileSync(await download.path(), 'utf8')).toContain('999');
});
