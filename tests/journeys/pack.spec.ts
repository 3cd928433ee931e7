/** The print pack from the editor: contacts and a view are said, sheets chosen and ordered, and what is shown is what is saved. */

import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { openPdf, pageTexts } from '../electron/services/pdf-reading.ts';
import { axeComplaints } from './axe.ts';
import { expect, test } from './editor.ts';

test('a pack is made, stopped, chosen from and saved as it is shown', async ({ editor, page, program }) => {
  const open = async (words: string): Promise<void> => {
    await page.keyboard.press('Control+k');
    await page.keyboard.type(words);
    await page.keyboard.press('Enter');
  };

  await test.step('contacts are typed with the concert', async () => {
    await open('contacts for the print pack');
    await editor.dialog.getByRole('button', { name: 'Add a contact' }).click();
    const contact = editor.dialog.getByRole('group').last();
    await contact.getByLabel('Name').fill('J. Ashgrove');
    await contact.getByLabel('For what').fill('Front of house');
    await editor.dialog.getByRole('button', { name: 'Done' }).click();
    await expect(editor.dialog).toHaveCount(0);
  });

  await test.step('it can be stopped while it is made, and made again', async () => {
    await open('print pack…');
    await editor.dialog.getByRole('button', { name: 'Stop' }).click();
    await expect(editor.dialog.getByRole('status')).toContainText('Stopped');
    await expect(editor.dialog.getByRole('button', { name: 'Save as PDF…' })).toBeDisabled();
    await editor.dialog.getByRole('button', { name: 'Make it again' }).click();
    await expect(editor.dialog.getByRole('img', { name: /^Sheet 1 of \d+: Cover/ })).toBeVisible({
      timeout: 60_000,
    });
    expect(await axeComplaints(page), 'pack').toEqual([]);
  });

  await test.step('sheets are chosen and put in order', async () => {
    await editor.dialog.getByRole('button', { name: 'None' }).click();
    await expect(editor.dialog.getByText('Choose at least one sheet.')).toBeVisible();
    const [cover, plot, marks] = ['Cover and programme', 'Stage plot', 'Marks'].map((name) =>
      editor.dialog.getByLabel(name, { exact: true }).first(),
    );
    await cover!.check();
    await plot!.check();
    await marks!.check();
    await editor.dialog.getByRole('button', { name: 'Marks: earlier in the pack' }).first().click();
    await editor.dialog.getByLabel('Paper').selectOption('Letter');
    await expect(editor.dialog.getByRole('status')).toContainText(/^[345] sheets, drawings/, {
      timeout: 60_000,
    });
    await editor.dialog.getByRole('button', { name: /^Show Stage plot, sheet/ }).click();
    await expect(editor.dialog.getByRole('img', { name: /^Sheet \d of \d: .*Stage plot$/ })).toBeVisible();
  });

  await test.step('what is saved has them in that order', async () => {
    await editor.dialog.getByRole('button', { name: 'Save as PDF…' }).click();
    await editor.dialog.last().getByLabel('File name').fill('evening pack.pdf');
    await editor.dialog.last().getByRole('button', { name: 'Save here' }).click();
    await expect(editor.dialog).toHaveCount(0, { timeout: 30_000 });
    const pdf = await openPdf(new Uint8Array(readFileSync(join(program.home, 'evening pack.pdf'))));
    const [cover, ...others] = await pdf.getOutline();
    expect(cover?.title).toBe('Cover and programme');
    const under = others.flatMap(({ items }) => items.map(({ title }: { title: string }) => title));
    expect(under).toEqual(['Marks', 'Stage plot']);
    const first = await pdf.getPage(1);
    expect(first.view.slice(2)).toEqual([612, 792]);
    const words = (await pageTexts(first)).map(({ text }) => text);
    expect(words).toContain('J. Ashgrove');
    expect(words).toContain('Front of house');
    expect(words).toContain(`1 of ${pdf.numPages}`);
  });
});

test('a pack is saved in other forms as a ZIP, which asks before it replaces one', async ({
  editor,
  page,
  program,
}) => {
  await page.keyboard.press('Control+k');
  await page.keyboard.type('print pack…');
  await page.keyboard.press('Enter');
  await editor.dialog.getByRole('button', { name: 'None' }).click();
  await editor.dialog.getByLabel('Cautions', { exact: true }).check();
  await editor.dialog.getByLabel('Stage plot', { exact: true }).first().check();

  await test.step('a scale that does not fit is refused with one that does', async () => {
    await expect(editor.dialog.getByRole('status')).toContainText('2 sheets', { timeout: 60_000 });
    await editor.dialog.getByLabel('Scale of stage plots').selectOption('1:10');
    await expect(editor.dialog.getByRole('alert')).toContainText(
      /does not fit on A4 at 1:10\. Choose 1:\d+/,
      {
        timeout: 60_000,
      },
    );
    // What was made before is not to be saved as if it were this.
    await expect(editor.dialog.getByRole('button', { name: 'Save as PDF…' })).toBeDisabled();
    await editor.dialog.getByLabel('Scale of stage plots').selectOption('1:100');
    await expect(editor.dialog.getByRole('status')).toContainText('2 sheets', { timeout: 60_000 });
  });

  await test.step('forms are chosen', async () => {
    await editor.dialog.getByLabel('PDF of all sheets').uncheck();
    await expect(editor.dialog.getByRole('alert')).toContainText('at least one form');
    await expect(editor.dialog.getByRole('button', { name: /^Save as/ })).toBeDisabled();
    for (const form of ['SVG of each sheet', 'PNG of each sheet', 'DXF of each', 'CSV of marks'])
      await editor.dialog.getByLabel(form).check();
    await editor.dialog.getByLabel('Resolution of PNG').selectOption('96 dots per inch');
    expect(await axeComplaints(page), 'forms').toEqual([]);
  });

  const save = async (): Promise<void> => {
    await editor.dialog.getByRole('button', { name: 'Save as ZIP…' }).click();
    await editor.dialog.last().getByLabel('File name').fill('forms.zip');
    await editor.dialog.last().getByRole('button', { name: 'Save here' }).click();
  };
  const path = join(program.home, 'forms.zip');

  await test.step('what is begun can be stopped, and nothing is saved', async () => {
    await save();
    await editor.dialog.getByRole('button', { name: 'Stop', exact: true }).click();
    await expect(editor.dialog.getByText('Stopped. Nothing was saved.')).toBeVisible();
    expect(existsSync(path)).toBe(false);
  });

  await test.step('the ZIP has every file', async () => {
    await save();
    await expect(editor.dialog).toHaveCount(0, { timeout: 60_000 });
    const files = unzipSync(readFileSync(path));
    const names = Object.keys(files);
    for (const name of ['01-plot-1.svg', '01-plot-1.png', '02-cautions.svg', 'plan-1.dxf', 'inventory.csv'])
      expect(names).toContain(name);
    // A4 at 96 dots per inch: 297 mm are 1122.5 dots.
    const png = Buffer.from(files['01-plot-1.png'] ?? []);
    const longer = Math.max(png.readUInt32BE(16), png.readUInt32BE(20));
    expect(Math.abs(longer - 1122.5)).toBeLessThan(1.5);
    expect(Buffer.from(files['01-plot-1.svg'] ?? []).toString()).toContain('SCALE 1:100');
  });

  await test.step('one that is there is asked about', async () => {
    await page.keyboard.press('Control+k');
    await page.keyboard.type('print pack…');
    await page.keyboard.press('Enter');
    await editor.dialog.getByLabel('CSV of marks').check();
    await editor.dialog.getByLabel('PDF of all sheets').uncheck();
    await save();
    await expect(editor.dialog.last().getByRole('alert')).toContainText('already there');
    await editor.dialog.last().getByRole('button', { name: 'Replace it' }).click();
    await expect(editor.dialog).toHaveCount(0, { timeout: 60_000 });
    expect(Object.keys(unzipSync(readFileSync(path))).every((name) => name.endsWith('.csv'))).toBe(true);
  });
});

test('a view that is looked at is printed when it is ticked', async ({ editor, page }) => {
  await editor.plan.focus();
  await page.keyboard.press('0');
  await editor.settled();
  const box = await editor.box();
  // Somewhere in the stalls: the cursor tells when it is over a place.
  let over = false;
  for (let y = 0.55; y < 0.8 && !over; y += 0.005) {
    await page.mouse.move(box.x + box.width * 0.4, box.y + box.height * y);
    over = (await editor.plan.evaluate((plan) => plan.style.cursor)) === 'pointer';
  }
  await page.mouse.down();
  await page.mouse.up();
  const tick = page.getByLabel('Print this view in the pack');
  await expect(tick).toBeVisible();
  const was = await tick.isChecked();
  await tick.setChecked(!was);
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeEnabled();
  await expect(tick).toBeChecked({ checked: !was });
});
