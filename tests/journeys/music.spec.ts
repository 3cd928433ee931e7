/** From a score to planned page turns: opened, given to players, paged, planned, and taken back. */

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { musicXml } from '../helpers/written-score.ts';
import { axeComplaints } from './axe.ts';
import { expect, test, type Editor } from './editor.ts';

/** 60 bars of 2.5 s, so 2:30; our own. */
const FURROWS = musicXml({
  title: 'Furrows',
  bars: 60,
  quartersPerMinute: 96,
  parts: [
    {
      name: 'Reed',
      rests: [
        [14, 16],
        [29, 31],
        [44, 46],
      ],
    },
    {
      name: 'Viola',
      rests: [
        [19, 21],
        [38, 41],
      ],
    },
    { name: 'Mallets', rests: [[24, 27]] },
  ],
});

const PAGES = { Reed: '1, 16, 30, 46, 52', Viola: '1, 11, 20, 40, 50', Mallets: '1, 25, 41' };

const part = (editor: Editor, name: string) => editor.dialog.getByRole('region', { name, exact: true });

async function typeInto(page: Page, field: ReturnType<Page['getByLabel']>, words: string): Promise<void> {
  await field.fill(words);
  await page.keyboard.press('Enter');
}

async function openScore(editor: Editor, name: string): Promise<void> {
  await editor.dialog.getByRole('button', { name: /^(Open a|Another) score/ }).click();
  await editor.dialog.last().getByRole('button', { name }).dblclick();
  await expect(editor.dialog).toHaveCount(1);
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(`a score becomes planned page turns, ${colorScheme}`, async ({ editor, page, program }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    writeFileSync(join(program.home, 'furrows.musicxml'), FURROWS);
    writeFileSync(join(program.home, 'letter.xml'), '<letter>Dear Viola</letter>');
    await editor.showSetup('2b Hedgerow Dances');

    // Without music the turns say what is missing, and lead to where it is given.
    await page.getByRole('button', { name: 'Page turns', exact: true }).click();
    const turns = page.getByRole('region', { name: 'Page turns', exact: true });
    await expect(turns).toContainText('This setup has no music yet');
    await turns.getByRole('button', { name: 'Music of this setup…' }).click();
    await expect(editor.dialog).toContainText('most notation programs export it');
    expect(await axeComplaints(page), 'no music yet').toEqual([]);

    // What is no score is refused in words, and the concert stays as it was.
    await openScore(editor, 'letter.xml');
    await expect(editor.dialog.getByRole('alert')).toContainText('no MusicXML score');
    await expect(page.getByRole('button', { name: 'Nothing to undo', includeHidden: true })).toHaveCount(1);

    await openScore(editor, 'furrows.musicxml');
    await expect(editor.dialog.getByRole('button', { name: 'Another score…' })).toBeFocused();
    await expect(editor.dialog.getByRole('alert')).toHaveCount(0);
    await expect(editor.dialog).toContainText('2:30.0');
    await expect(part(editor, 'Viola').getByLabel('Played by')).toHaveValue('player-4');
    await expect(part(editor, 'Reed').getByLabel('Played by')).toHaveValue('');
    await expect(part(editor, 'Reed')).toContainText('7.5\u00a0s at 1:10.0, bars 29 to 31');

    // Refused by the field, each in its own words; then taken.
    const pagesOf = (name: string) => part(editor, name).getByLabel('Pages begin with bars');
    await typeInto(page, pagesOf('Reed'), '1, 99');
    await expect(part(editor, 'Reed').getByRole('alert')).toContainText('"99" cannot be used');
    // Closing would lose what was typed: the window stays, and the field is gone to.
    await editor.dialog.getByRole('button', { name: 'Done' }).click();
    await expect(pagesOf('Reed')).toBeFocused();
    await expect(pagesOf('Reed')).toHaveValue('1, 99');
    await expect(editor.dialog.getByRole('alert').last()).toContainText('would be lost');
    await typeInto(page, editor.dialog.getByLabel('Order of the performance'), '9-3');
    await expect(editor.dialog.getByRole('alert').first()).toContainText('"9-3" cannot be used');
    await page.keyboard.press('Escape');
    // A tempo that was refused is let go with its field emptied.
    const tempo = editor.dialog.getByLabel('Other tempo');
    await tempo.fill('0');
    await tempo.press('Enter');
    await expect(tempo).toHaveAttribute('aria-invalid', 'true');
    await tempo.fill('');
    await expect(tempo).toHaveAttribute('aria-invalid', 'false');
    await expect(editor.dialog.getByText('would be lost')).toHaveCount(0);
    await tempo.fill('48');
    await editor.dialog.getByLabel('From bar').fill('31');
    await editor.dialog.getByRole('button', { name: 'Set the tempo' }).click();
    // 30 bars of 2.5 s and 30 of 5 s.
    await expect(editor.dialog).toContainText('3:45.0');
    await part(editor, 'Reed').getByLabel('Played by').selectOption('player-3');
    await part(editor, 'Mallets').getByLabel('Played by').selectOption('player-5');
    for (const [name, bars] of Object.entries(PAGES)) await typeInto(page, pagesOf(name), bars);
    await expect(part(editor, 'Mallets').getByRole('alert')).toHaveCount(0);
    expect(await axeComplaints(page), 'music').toEqual([]);
    await editor.dialog.getByRole('button', { name: 'Done' }).click();

    // Nothing is missing any more, so the turns are planned by themselves.
    const list = turns.getByRole('list', { name: 'Turns' });
    await expect(list.getByRole('button')).not.toHaveCount(0);
    await expect(turns).toContainText(/\d+ turns\s*fewest possible/);
    // The viola's row holds two of five pages: somebody turns, in one of its two rests.
    const own = list.getByRole('button', { name: /Viola \(player 2\), (left|right) hand/ });
    await expect(own.first()).toContainText(/bar (19|20|21|38|39|40|41)\b/);
    await own.first().click();
    await expect(own.first()).toHaveAttribute('aria-pressed', 'true');
    for (const name of [/^Viola/, /^stand 2/])
      await expect(editor.items.getByRole('treeitem', { name })).toHaveAttribute('aria-selected', 'true');
    await expect(turns.getByRole('table')).not.toHaveCount(0);
    expect(await axeComplaints(page), 'turns').toEqual([]);

    // The form says that the part gives the rest.
    await editor.select(/^stand 2/);
    await expect(page.getByText(/From the part: the shortest rest there is/)).toBeVisible();

    // One step back: the pages that were typed last are gone, and the plan says that it is old.
    await editor.plan.focus();
    await page.keyboard.press('Control+z');
    await expect(turns).toContainText('The concert has changed since this was planned.');
    await turns.getByRole('button', { name: 'Plan again' }).click();
    await expect(turns).toContainText('The pages of "Mallets"');
    await page.keyboard.press('Control+Shift+z');
    await expect(list.getByRole('button')).not.toHaveCount(0);

    await page.getByRole('button', { name: 'Music', exact: true }).click();
    await editor.dialog.getByRole('button', { name: 'Remove the music' }).click();
    await expect(editor.dialog.getByRole('button', { name: 'Open a score…' })).toBeFocused();
    await page.keyboard.press('Escape');
    await expect(page.getByRole('button', { name: 'Music', exact: true })).toBeFocused();

    // There is room for one thing under the plan.
    await editor.plan.focus();
    await page.keyboard.press('s');
    await expect(page.getByRole('region', { name: 'Section', exact: true })).toBeVisible();
    await expect(turns).toBeHidden();
  });
}

test('a part that the score lacks is typed beside it', async ({ editor, page, program }) => {
  writeFileSync(join(program.home, 'furrows.musicxml'), FURROWS);
  await editor.showSetup('2b Hedgerow Dances');
  await page.getByRole('button', { name: 'Music', exact: true }).click();
  await openScore(editor, 'furrows.musicxml');

  // For the player who has no part, with one row for all bars.
  await editor.dialog.getByRole('button', { name: 'Add a part by a table…' }).click();
  const top = page.getByRole('dialog', { name: /^(A part that the score lacks|Table of Viola)$/ });
  const cell = (name: string) => top.getByLabel(name);
  const told = top.getByRole('status');
  await expect(top.getByLabel('Played by')).toHaveValue('player-3');
  await expect(cell('Last bar, row 2')).toHaveValue('60');
  await expect(cell('Tempo or seconds, row 2')).toHaveCount(0);
  await cell('Last bar, row 2').fill('24');
  await expect(told).toContainText('the music goes on to bar 60');
  await expect(top.getByRole('button', { name: 'Take over' })).toBeDisabled();
  for (const [name, words] of [
    ['Page, row 3', '2'],
    ['First bar, row 3', '25'],
    ['Last bar, row 3', '60'],
    ['Free hands, row 3', '25-27'],
  ] as const)
    await cell(name).fill(words);
  await expect(told).toHaveText('2 pages. The table goes with the score.');
  await top.getByLabel('Part').fill('Bell');
  await top.getByLabel('Part').press('Tab');
  expect(await axeComplaints(page), 'table of a part').toEqual([]);
  await top.getByRole('button', { name: 'Take over' }).click();
  await expect(part(editor, 'Bell').getByLabel('Played by')).toHaveValue('player-3');
  await expect(part(editor, 'Bell')).toContainText('7.5\u00a0s at 1:00.0, bars 25 to 27');

  // A table in the place of a part of the score changes that part alone.
  await editor.dialog.getByRole('button', { name: 'Table of Viola…' }).click();
  await expect(cell('Free hands, row 2')).toHaveValue('19-21, 38-41');
  await cell('Free hands, row 2').fill('19-21');
  await top.getByRole('button', { name: 'Take over' }).click();
  await expect(part(editor, 'Viola')).not.toContainText('bars 38 to 41');
  await expect(part(editor, 'Reed')).toContainText('bars 29 to 31');

  // The score once more: what was typed beside it stays. Then it goes by its button, and its place is kept.
  await openScore(editor, 'furrows.musicxml');
  await expect(part(editor, 'Bell').getByLabel('Pages begin with bars')).toHaveValue('1, 25');
  await editor.dialog.getByRole('button', { name: 'Remove this part: Bell' }).click();
  await expect(part(editor, 'Bell')).toHaveCount(0);
  await expect(editor.dialog.getByRole('button', { name: 'Add a part by a table…' })).toBeFocused();
});
