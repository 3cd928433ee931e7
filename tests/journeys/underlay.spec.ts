/** A drawing under the plan: refused when it is none, set right by two points, traced, undone; and the plan as DXF. */

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { dxfLine, writtenDxf } from '../helpers/written-dxf.ts';
import { axeComplaints } from './axe.ts';
import { expect, test, type Editor } from './editor.ts';

/** A room of 10 x 6 m in millimetres, its front edge on the stage's. Our own. */
const ROOM = [
  [-5000, 0],
  [5000, 0],
  [5000, 6000],
  [-5000, 6000],
] as const;

const roomDxf = writtenDxf({
  insUnits: 4,
  entities: ROOM.map(([x, y], index) => {
    const [u, v] = ROOM[(index + 1) % ROOM.length] ?? [0, 0];
    return dxfLine(x, y, u, v);
  }),
});

async function command(page: Page, words: string): Promise<void> {
  await page.keyboard.press('Control+k');
  await page.keyboard.type(words);
  await page.keyboard.press('Enter');
}

async function choose(editor: Editor, name: string): Promise<void> {
  await command(editor.page, 'drawing under the plan');
  await editor.dialog.getByRole('button', { name: 'Choose a file…' }).click();
  await editor.page.getByRole('button', { name }).dblclick();
}

/** From millimetres of the stage to the window, as the pointer's own figures beside the scale say. */
async function pixels(editor: Editor): Promise<(x: number, y: number) => { x: number; y: number }> {
  const { page } = editor;
  const box = await editor.box();
  const [a, b] = [
    { x: box.x + box.width * 0.3, y: box.y + box.height * 0.3 },
    { x: box.x + box.width * 0.7, y: box.y + box.height * 0.7 },
  ];
  const [first, second] = [await spotAt(page, a), await spotAt(page, b)];
  const [kx, ky] = [(b.x - a.x) / (second.x - first.x), (b.y - a.y) / (second.y - first.y)];
  return (x, y) => ({ x: a.x + (x - first.x) * kx, y: a.y + (y - first.y) * ky });
}

async function spotAt(page: Page, at: { x: number; y: number }): Promise<{ x: number; y: number }> {
  await page.mouse.move(at.x, at.y);
  const shown = page.locator('[data-pointer]');
  await expect(shown).toHaveText(/(SL|SR|on centre), /);
  const [across = '', depth = ''] = (await shown.innerText()).split(', ');
  const figure = (words: string) => Number(/\d+/.exec(words)?.[0] ?? 0);
  return {
    x: figure(across) * (across.includes('SR') ? -1 : 1),
    y: figure(depth) * (depth.includes('DS') ? -1 : 1),
  };
}

test('a drawing goes under the plan, is scaled by two points and traced', async ({
  editor,
  page,
  program,
}) => {
  writeFileSync(join(program.home, 'room.dxf'), roomDxf);
  writeFileSync(join(program.home, 'broken.dxf'), '0\nSECTION\n2\nENTITIES\n0\nLINE\nrubbish\n');

  // That what reads it comes late is not the file's fault: it is not said to take too long.
  await page.route(
    /\/underlay\.worker[^/]*\.js/,
    async (route) => {
      await new Promise((resolve) => setTimeout(resolve, 3000));
      await route.continue();
    },
    { times: 1 },
  );
  await choose(editor, 'broken.dxf');
  await expect(editor.dialog.getByRole('alert')).toHaveText(/“broken\.dxf” is damaged/);
  await page.keyboard.press('Escape');
  await expect(editor.title).not.toContainText('not saved');

  await choose(editor, 'room.dxf');
  await expect(editor.field('Strength')).toHaveValue('60');
  await expect(editor.field('Width')).toHaveValue('10000 mm');
  await expect(editor.field('Lower left corner across')).toHaveValue('5000 SR');
  await expect(editor.items.getByRole('treeitem', { name: /^room/ })).toHaveAttribute(
    'aria-selected',
    'true',
  );
  expect(await axeComplaints(page)).toEqual([]);

  // It lies fast: what is drawn over it is a marquee, or nothing.
  await editor.plan.focus();
  await page.keyboard.press('2');
  await editor.settled();
  const at = await pixels(editor);
  const [from, to] = [at(-4500, 5500), at(-4400, 5200)];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 3 });
  await page.mouse.up();
  await editor.select(/^room/);
  await expect(editor.field('Lower left corner across')).toHaveValue('5000 SR');

  await page.getByRole('button', { name: 'Trace the platform…' }).click();
  for (const [x, y] of ROOM) {
    // A little beside the corner: the drawing's own corner is what counts.
    const { x: px, y: py } = at(x, y);
    await page.mouse.click(px + 3, py - 3);
  }
  await page.keyboard.press('Backspace');
  await expect(page.getByRole('status').filter({ hasText: '3 corners' })).toBeVisible();
  const last = at(-5000, 6000);
  await page.mouse.click(last.x - 3, last.y + 3);
  await page.keyboard.press('Enter');
  await expect(page.getByText(/^The platform is traced\. Open edges: /)).toBeVisible();
  const corner = page.getByRole('group', { name: 'Corner 3' });
  await expect(corner.getByLabel('From the centre line')).toHaveValue('5000 SL');
  await expect(corner.getByLabel('From the front edge')).toHaveValue('6000 US');
  await page.keyboard.press('Control+z');
  await expect(page.getByText(/^The platform is traced/)).toBeHidden();

  await editor.select(/^room/);
  await page.getByRole('button', { name: 'Set its scale…' }).click();
  for (const [x, y] of ROOM.slice(0, 2)) {
    const { x: px, y: py } = at(x, y);
    await page.mouse.click(px - 2, py + 2);
  }
  await editor.dialog.getByLabel('Distance').fill('0.0001 mm');
  await page.keyboard.press('Enter');
  await expect(editor.dialog.getByRole('alert')).toContainText('check the unit');
  await editor.dialog.getByLabel('Distance').fill('12 m');
  await page.keyboard.press('Enter');
  await expect(editor.field('Width')).toHaveValue('12000 mm');
  await expect(editor.field('Depth')).toHaveValue('7200 mm');
  await expect(editor.field('Lower left corner across')).toHaveValue('5000 SR');

  await page.getByRole('button', { name: 'Set its origin…' }).click();
  await page.keyboard.press('Escape');
  await expect(editor.field('Lower left corner across')).toHaveValue('5000 SR');
  await editor.plan.focus();
  await page.keyboard.press('Delete');
  await expect(editor.items.getByRole('treeitem', { name: /^room/ })).toHaveCount(0);
  await page.keyboard.press('Control+z');
  await expect(editor.items.getByRole('treeitem', { name: /^room/ })).toHaveCount(1);
});

test('a drawing with more than lines is shown without the rest, and it is said', async ({
  editor,
  page,
  program,
}) => {
  const words = [
    [0, 'TEXT'],
    [8, '0'],
    [10, 0],
    [20, 0],
    [40, 200],
    [1, 'ROOM'],
  ] as const;
  const entities = [dxfLine(0, 0, 5000, 4000), words, words];
  writeFileSync(join(program.home, 'words.dxf'), writtenDxf({ insUnits: 4, entities }));
  await choose(editor, 'words.dxf');
  await expect(
    page.getByText('Of words.dxf only lines and curves are shown. Left out: TEXT 2.'),
  ).toBeVisible();
  await expect(editor.items.getByRole('treeitem', { name: /^words/ })).toBeVisible();
});

test('the plan is saved as DXF, and nothing is replaced unasked', async ({ editor, page, program }) => {
  const path = join(program.home, 'mine.dxf');
  writeFileSync(path, 'mine');
  await command(page, 'Plan of this setup as DXF');
  await editor.dialog.getByLabel('File name').fill('mine');
  await editor.dialog.getByRole('button', { name: 'Save here' }).click();
  expect(readFileSync(path, 'utf8')).toBe('mine');
  await editor.dialog.getByLabel('File name').fill('plan');
  await editor.dialog.getByRole('button', { name: 'Save here' }).click();
  await expect(page.getByText('Saved plan.dxf').first()).toBeAttached();
  expect(readFileSync(join(program.home, 'plan.dxf'), 'utf8')).toContain('$INSUNITS');
});
