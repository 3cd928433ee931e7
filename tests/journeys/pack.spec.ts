/** The print pack from the editor: contacts and a view are said, sheets chosen and ordered, and what is shown is what is saved. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
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
