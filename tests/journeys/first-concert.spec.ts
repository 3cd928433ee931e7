/** The main job from end to end, as a newcomer does it. */

import { readDocument } from '#model/file-format/read.ts';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from './editor.ts';

const OPENED_OUT = '2 Hedgerow Dances, opened out';

test('a stand dragged into a sightline is seen, undone, and what is kept can be printed', async ({
  editor,
  page,
  program,
}) => {
  await editor.showSetup(OPENED_OUT);
  const hidden = editor.findings.getByRole('button', { name: /places do not see Clarinet/ });
  const good = await editor.figureOf('Clarinet');
  expect(good).toBeGreaterThan(90);
  await expect(hidden).toHaveCount(0);

  await test.step('drag stand 1 before the clarinet: the figure falls while the button is still down', async () => {
    await editor.select(/^stand 1/);
    await editor.dragTo({ x: -1500, y: 1050 });
    await expect.poll(() => editor.figureOf('Clarinet')).toBeLessThan(75);
    await expect(editor.house.getByRole('button', { name: /^Clarinet/ })).toContainText(
      'points fewer than before',
    );
    await page.mouse.up();
  });

  await test.step('the finding is in the list and leads there', async () => {
    await expect(hidden.first()).toBeVisible();
    await hidden.first().click();
    await expect(hidden.first()).toHaveAttribute('aria-expanded', 'true');
  });

  await test.step('one undo takes the whole drag back', async () => {
    await page.getByRole('button', { name: /^Undo move stand 1/ }).click();
    await expect.poll(() => editor.figureOf('Clarinet')).toBe(good);
    await expect(hidden).toHaveCount(0);
    await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();
  });

  await test.step('turn the violist by the handle', async () => {
    await editor.select(/^Viola/);
    const before = await editor.facing();
    await editor.plan.focus();
    await page.keyboard.press(']');
    await page.keyboard.press(']');
    await expect.poll(() => editor.facing()).toBe(before - 10);
  });

  await test.step('save, and find the same document again after a fresh start', async () => {
    await editor.saveAs('evening');
    const file = join(program.home, 'evening.standlines');
    const kept = readFileSync(file, 'utf8');
    const facing = await editor.field('Faces').inputValue();
    await program.stop();
    await editor.open(await program.startAgain());
    await expect(editor.title).toContainText('evening.standlines', { timeout: 20_000 });
    await editor.showSetup(OPENED_OUT);
    await editor.select(/^Viola/);
    await expect(editor.field('Faces')).toHaveValue(facing);
    await editor.saveAs('again');
    const again = readFileSync(join(program.home, 'again.standlines'), 'utf8');
    expect(again).toBe(kept);
    expect(readDocument(again).ok).toBe(true);
  });

  await test.step('print the plot', async () => {
    await page.getByRole('button', { name: 'Print' }).click();
    await editor.field('Paper').selectOption('A3');
    await expect(editor.dialog.getByText(/Printed at 100 % this is exactly 1:\d+/)).toBeVisible();
    const sheets = editor.dialog.getByRole('group', { name: 'Sheets' });
    const whole = Number(/^\d+/.exec(await sheets.getByRole('status').innerText())?.[0]);
    await sheets.getByRole('checkbox', { name: /^Seat map: sheet \d$/ }).uncheck();
    await expect(sheets.getByRole('status')).toHaveText(`${whole - 1} sheets`);
    await expect(sheets.getByRole('checkbox', { name: 'Seat map', exact: true })).not.toBeChecked();
    await editor.dialog.getByRole('button', { name: 'Save as PDF…' }).click();
    await editor.dialog.last().getByLabel('File name').fill('plot.pdf');
    await editor.dialog.last().getByRole('button', { name: 'Save here' }).click();
    await expect(editor.dialog).toHaveCount(0, { timeout: 30_000 });
    const pdf = readFileSync(join(program.home, 'plot.pdf'));
    expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-');
    // A3 in points of 1/72 inch (ISO 216: 297 x 420 mm).
    const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf.toString('latin1')) ?? [];
    const [short = 0, long = 0] = box
      .slice(1)
      .map(Number)
      .sort((a, b) => a - b);
    expect(short).toBeCloseTo((297 / 25.4) * 72, 1);
    expect(long).toBeCloseTo((420 / 25.4) * 72, 1);
  });
});
