/** No work is lost: crashes, foreign changes, and leaving with something unsaved. */

import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Editor, expect, test } from './editor.ts';

/** Everything that is kept on the side: not what is still on its way to the disk, which a crash would cost. */
function keptTexts(home: string): string {
  const folder = join(home, 'state', 'recovery');
  const files = existsSync(folder) ? readdirSync(folder).filter((file) => file.endsWith('.json')) : [];
  return files.map((file) => readFileSync(join(folder, file), 'utf8')).join('\n');
}

test('what was not saved is offered after the program was killed', async ({ editor, page, program }) => {
  await editor.select(/^Viola/);
  await editor.field('From the centre line').fill('1234 SL');
  await page.keyboard.press('Enter');
  await expect.poll(() => keptTexts(program.home)).toContain('1234');
  await program.stop('SIGKILL');
  await expect(page.getByText('The program behind this window does not answer.')).toBeVisible();

  await editor.open(await program.startAgain());
  await editor.dialog.getByRole('button', { name: 'Open it' }).click();
  await expect(editor.dialog).toBeHidden();
  await expect(page.getByText('not saved yet')).toBeVisible();
  await editor.select(/^Viola/);
  await expect(editor.field('From the centre line')).toHaveValue('1234 SL');
});

test('a file is saved by somebody who types faster than the folder is read', async ({
  editor,
  page,
  program,
}) => {
  let release = (): void => undefined;
  const typed = new Promise<void>((resolve) => (release = resolve));
  await page.route('**/files.list', async (route) => {
    await typed;
    await route.continue();
  });
  await page.keyboard.press('Control+Shift+S');
  await editor.dialog.getByLabel('File name').fill('quick');
  await page.keyboard.press('Enter');
  release();
  await expect(editor.dialog).toBeHidden();
  await expect(editor.title).toContainText(/Saved \d.* to quick\.standlines/);
  expect(existsSync(join(program.home, 'quick.standlines'))).toBe(true);
});

test('a path typed into the dialog is found folder by folder, and a folder that is not there is named', async ({
  editor,
  page,
  program,
}) => {
  mkdirSync(join(program.home, 'concerts', 'spring'), { recursive: true });
  await page.keyboard.press('Control+Shift+S');
  await editor.dialog.getByLabel('File name').fill(join(program.home, 'concerts', 'autumn', 'duo'));
  await editor.dialog.getByRole('button', { name: 'Save here' }).click();
  await expect(editor.dialog.getByRole('alert')).toContainText('autumn');
  await editor.dialog.getByLabel('File name').fill(join(program.home, 'concerts', 'spring', 'duo'));
  await editor.dialog.getByRole('button', { name: 'Save here' }).click();
  await expect(editor.title).toContainText(/duo\.standlines/);
  await expect.poll(() => existsSync(join(program.home, 'concerts', 'spring', 'duo.standlines'))).toBe(true);
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
  await expect(editor.title).toContainText(/Saved \d.*mine/);
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

test('figures are not compared with those of the document that was open before', async ({ editor, page }) => {
  const clarinet = editor.house.getByRole('button', { name: /^Clarinet/ });
  await editor.showSetup('2 Hedgerow Dances, opened out');
  await editor.saveAs('good');
  await editor.select(/^stand 1/);
  await editor.field('From the centre line').fill('1500 SR');
  await editor.field('From the front edge').fill('1050 US');
  await page.keyboard.press('Enter');
  await expect(clarinet).toContainText(/points? fewer than before/);
  await editor.saveAs('bad');
  await editor.openFile('good');
  await expect(editor.title).toContainText('good.standlines');
  await editor.showSetup('2 Hedgerow Dances, opened out');
  await expect(clarinet).toContainText('of places see well');
  await expect(clarinet).not.toContainText('than before');
});

test('what went wrong names its file, can be put away, and goes when its cause is gone', async ({
  editor,
  page,
  program,
}) => {
  await editor.saveAs('whole');
  writeFileSync(join(program.home, 'torn.standlines'), '{ "format": ');
  const alert = page.getByRole('alert');
  for (let times = 0; times < 2; times++) {
    await editor.openFile('torn');
    await expect(alert).toHaveCount(1);
    await expect(alert).toContainText('torn.standlines');
  }
  await expect(editor.title).toContainText('whole.standlines');
  await alert.getByRole('button', { name: 'Dismiss' }).press('Enter');
  await expect(alert).toHaveCount(0);
  await expect(editor.plan).toBeFocused();

  await editor.openFile('torn');
  await expect(alert).toHaveCount(1);
  await editor.openFile('whole');
  await expect(alert).toHaveCount(0);
});

test('a reload opens the file that the window works on, whatever was opened elsewhere since', async ({
  editor,
  page,
  program,
  context,
}) => {
  await editor.saveAs('mine');
  const other = new Editor(await context.newPage());
  await other.open(program.address());
  await other.saveAs('other');
  await page.reload();
  await expect(editor.title).toContainText('mine.standlines');
  await page.getByRole('button', { name: 'File' }).click();
  await page.getByRole('menuitem', { name: 'Open recent' }).hover();
  await expect(page.getByRole('menuitem', { name: /^other\.standlines/ })).toBeVisible();
});

test('a file that another program has changed can be loaded when the user comes back', async ({
  editor,
  page,
  program,
}) => {
  await editor.saveAs('shared');
  const file = join(program.home, 'shared.standlines');
  writeFileSync(file, readFileSync(file, 'utf8').replace('Lock Gates', 'Theirs'));
  await page.evaluate(() => window.dispatchEvent(new Event('focus')));
  const alert = page.getByRole('alert').filter({ hasText: 'Another program has changed' });
  await expect(alert).toContainText('shared.standlines');
  await alert.getByRole('button', { name: 'Load it as it is now' }).click();
  await expect(page.getByRole('tab', { name: '1 Theirs' })).toBeVisible();
  await expect(alert).toHaveCount(0);
});

test('after a reload the file is open behind the question, and recovered work is saved to it', async ({
  editor,
  page,
  program,
}) => {
  await editor.saveAs('own');
  await editor.select(/^Viola/);
  await editor.field('From the centre line').fill('1234 SL');
  await page.keyboard.press('Enter');
  await expect.poll(() => keptTexts(program.home)).toContain('1234');
  page.on('dialog', (leaving) => void leaving.accept());
  await page.reload();
  await expect(editor.dialog).toContainText('This was not saved before the window closed.');
  await expect(page.locator('h1').first()).toContainText('own.standlines');
  await editor.dialog.getByRole('button', { name: 'Decide later' }).click();
  await expect(editor.title).toContainText('own.standlines');

  // What is opened takes the place of what was offered: after another reload there is one entry, not two.
  await page.reload();
  await editor.dialog.getByRole('button', { name: 'Open it' }).click();
  await expect(page.getByText('not saved yet')).toBeVisible();
  const keptFiles = () => readdirSync(join(program.home, 'state', 'recovery')).join();
  const before = keptFiles();
  await expect.poll(keptFiles).not.toBe(before);
  await expect.poll(() => keptFiles().split(',').length).toBe(1);
  await page.reload();
  await expect(editor.dialog.getByRole('listitem')).toHaveCount(1);
  await editor.dialog.getByRole('button', { name: 'Open it' }).click();
  await editor.select(/^Viola/);
  await expect(editor.field('From the centre line')).toHaveValue('1234 SL');
  await page.keyboard.press('Control+s');
  await expect(editor.title).toContainText(/Saved \d.* to own\.standlines/);
  await expect(editor.dialog).toBeHidden();
  expect(readFileSync(join(program.home, 'own.standlines'), 'utf8')).toContain('1234');
});
