/** Page turns that are played: a score in, a plan, and the time strip gone through by keyboard, by pointer and at tempo. */

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { musicXml } from '../helpers/written-score.ts';
import { axeComplaints } from './axe.ts';
import { expect, test, type Editor } from './editor.ts';

/** 40 bars of 2.5 s, so 1:40; our own. The viola's third page begins in the last bar of her rest. */
const STUBBLE = musicXml({
  title: 'Stubble',
  bars: 40,
  quartersPerMinute: 96,
  parts: [
    { name: 'Clarinet', rests: [[5, 6]] },
    { name: 'Viola', rests: [[18, 21]] },
  ],
});

const PAGES = { Clarinet: '1, 16, 30', Viola: '1, 11, 21, 31' };

async function giveScore(editor: Editor, page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Music', exact: true }).click();
  await editor.dialog.getByRole('button', { name: 'Open a score…' }).click();
  await editor.dialog.last().getByRole('button', { name: 'stubble.musicxml' }).dblclick();
  await expect(editor.dialog).toHaveCount(1);
  for (const [name, bars] of Object.entries(PAGES)) {
    const field = editor.dialog
      .getByRole('region', { name, exact: true })
      .getByLabel('Pages begin with bars');
    await field.fill(bars);
    await page.keyboard.press('Enter');
  }
  await editor.dialog.getByRole('button', { name: 'Done' }).click();
}

/** What is painted above the plan, as one long text. */
function overlayOf(page: Page): Promise<string> {
  return page
    .locator('[data-plan] canvas')
    .last()
    .evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL());
}

/** "1:02, bar 25" as seconds. */
function secondsIn(words: string | null): number {
  const [, minutes, seconds] = /(\d+):(\d\d)/.exec(words ?? '') ?? [];
  return Number(minutes) * 60 + Number(seconds);
}

async function pressTimes(page: Page, keys: string, count: number): Promise<void> {
  for (let time = 0; time < count; time += 1) await page.keyboard.press(keys);
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(`planned page turns are played along the music, ${colorScheme}`, async ({ editor, page, program }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    writeFileSync(join(program.home, 'stubble.musicxml'), STUBBLE);
    await editor.showSetup('2b Hedgerow Dances');
    const strip = page.getByRole('region', { name: 'Time strip', exact: true });
    const slider = strip.getByRole('slider', { name: 'Time' });
    const viola = strip.getByRole('row', { name: /^Viola/ });

    // Without music there is nothing to play, and that is said.
    await editor.plan.focus();
    await page.keyboard.press('t');
    await expect(strip).toContainText('There is no plan of the page turns of this setup yet.');
    await strip.getByRole('button', { name: 'Plan the page turns' }).click();
    await expect(strip).toContainText('This setup has no music yet');
    expect(await axeComplaints(page), 'no music').toEqual([]);

    await giveScore(editor, page);
    const turns = page.getByRole('region', { name: 'Page turns', exact: true });
    await page.getByRole('button', { name: 'Page turns', exact: true }).click();
    const plan = turns.getByRole('table', { name: /^stand 2/ });
    await expect(plan).toBeVisible();
    // What the viola sees at first, and when a leaf is turned.
    const views = await plan
      .locator('tbody tr')
      .evaluateAll((rows) =>
        rows.map((row) => [...row.querySelectorAll('.page')].map((cell) => cell.textContent?.trim() ?? '')),
      );
    const stateWith = (number: string): number => views.findIndex((view) => view.includes(number));
    expect(stateWith('2')).toBeLessThan(stateWith('3'));

    // There is room for one thing under the plan.
    await page.getByRole('button', { name: 'Time strip', exact: true }).click();
    await expect(turns).toBeHidden();
    await expect(slider).toBeFocused();
    await expect(slider).toHaveAttribute('aria-valuetext', '0:00, bar 1');
    const placed = (number: string): string =>
      views[stateWith(number)]?.indexOf(number) === 0 ? 'on the left' : 'on the right';
    await expect(viola).toContainText(/^\s*Viola\s*1/);
    await expect(viola).toContainText(placed('1'));
    const atFirst = await overlayOf(page);

    // To the middle of her second page, bar by bar.
    await pressTimes(page, 'Shift+ArrowRight', 13);
    await expect(slider).toHaveAttribute('aria-valuetext', '0:32, bar 14');
    await expect(viola).toContainText(/^\s*Viola\s*2/);
    await expect(viola).toContainText(placed('2'));
    await expect(viola).toContainText('plays');
    await expect.poll(() => overlayOf(page)).not.toBe(atFirst);
    await page.keyboard.press('Home');
    await expect.poll(() => overlayOf(page)).toBe(atFirst);
    expect(await axeComplaints(page), 'time strip').toEqual([]);

    // To the turn: in her rest, bars 18 to 21, with the player and the stand selected.
    await page.keyboard.press('PageDown');
    await expect(viola).toContainText(/turns at stand 2, (left|right) hand/);
    await expect(viola).toContainText('not in view');
    const turnAt = secondsIn(await slider.getAttribute('aria-valuetext'));
    expect(turnAt).toBeGreaterThanOrEqual(42);
    expect(turnAt).toBeLessThan(52);
    for (const name of [/^Viola/, /^stand 2/])
      await expect(editor.items.getByRole('treeitem', { name })).toHaveAttribute('aria-selected', 'true');

    // After it the third page stands where the plan has it.
    await slider.focus();
    await pressTimes(page, 'ArrowRight', 60 - turnAt);
    await expect(slider).toHaveAttribute('aria-valuetext', /^(0:59|1:00), bar 24|^1:00, bar 25/);
    await expect(viola).toContainText(/^\s*Viola\s*3/);
    await expect(viola).toContainText(placed('3'));

    // Played eight times as fast: a second of the clock goes on by eight, and a pause holds it.
    await page.keyboard.press('Home');
    await strip.getByLabel('Speed').selectOption('8×');
    await slider.focus();
    await page.keyboard.press('Space');
    await expect(strip.getByRole('button', { name: 'Pause' })).toBeVisible();
    // The slider says what is shown while it goes on, too.
    await expect
      .poll(async () => secondsIn(await slider.getAttribute('aria-valuetext')))
      .toBeGreaterThanOrEqual(10);
    await page.keyboard.press('Space');
    await expect(strip.getByRole('button', { name: 'Play', exact: true })).toBeVisible();
    const paused = await slider.getAttribute('aria-valuetext');
    expect(secondsIn(paused)).toBeGreaterThanOrEqual(10);
    await expect(strip).toContainText(paused ?? '');
    await page.waitForTimeout(400);
    await expect(slider).toHaveAttribute('aria-valuetext', paused ?? '');

    // With the pointer, in the middle of the ruler.
    const box = await slider.boundingBox();
    if (!box) throw new Error('the ruler is not there');
    await page.mouse.click(box.x + box.width / 2, box.y + 10);
    expect(Math.abs(secondsIn(await slider.getAttribute('aria-valuetext')) - 50)).toBeLessThanOrEqual(1);

    // Enlarged, the moment stays in view; and shown whole again.
    await slider.focus();
    await pressTimes(page, '+', 4);
    await expect(strip.getByRole('button', { name: 'Show all of it' })).toHaveAttribute(
      'aria-disabled',
      'false',
    );
    await page.keyboard.press('End');
    await expect(slider).toHaveAttribute('aria-valuetext', '1:40, at the end');
    await page.keyboard.press('0');
    await expect(strip.getByRole('button', { name: 'Show all of it' })).toHaveAttribute(
      'aria-disabled',
      'true',
    );

    // The concert goes on changing; the strip says so, and plans again.
    await editor.select(/^stand 3/);
    await editor.plan.focus();
    await page.keyboard.press('ArrowRight');
    await expect(strip).toContainText('The concert has changed since this was planned.');
    await strip.getByRole('button', { name: 'Plan again' }).click();
    await expect(strip).not.toContainText('The concert has changed');
    await expect(slider).toBeVisible();

    await strip.getByRole('button', { name: 'Close the time strip' }).click();
    await expect(strip).toBeHidden();
  });
}
