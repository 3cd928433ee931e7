/** Taking hold of several things, copies by dragging, straight ways: with the keys that hands expect on each system. */

import type { Editor } from './editor.ts';
import { expect, test } from './editor.ts';

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Where spots of the stage are in the window, from what the plan says of two places under the pointer. */
async function screenOf(editor: Editor): Promise<(spot: Spot) => Spot> {
  const { page } = editor;
  await editor.plan.focus();
  await page.keyboard.press('1');
  await editor.settled();
  const box = await editor.box();
  const told = async (at: Spot): Promise<Spot> => {
    await page.mouse.move(at.x, at.y);
    await editor.settled();
    const words = await page.locator('[data-pointer]').innerText();
    const [across = '', depth = ''] = words.split(',');
    const figure = (text: string): number =>
      Number(/\d+/.exec(text)?.[0] ?? 0) * (/SR|DS/.test(text) ? -1 : 1);
    return { x: figure(across), y: figure(depth) };
  };
  const pixels = { x: box.x + 200, y: box.y + 120 };
  const a = await told(pixels);
  const b = await told({ x: pixels.x + 300, y: pixels.y + 200 });
  const [perX, perY] = [(b.x - a.x) / 300, (b.y - a.y) / 200];
  return ({ x, y }) => ({ x: pixels.x + (x - a.x) / perX, y: pixels.y + (y - a.y) / perY });
}

/** As the list says where things are. */
async function spotOf(editor: Editor, name: RegExp): Promise<Spot> {
  await editor.select(name);
  return editor.position();
}

for (const key of ['Shift', 'Control'] as const) {
  test(`a click with ${key} adds to what is selected and takes out of it, and so does a frame`, async ({
    editor,
    page,
  }) => {
    const { mouse, keyboard } = page;
    const viola = await spotOf(editor, /^Viola/);
    const clarinet = await spotOf(editor, /^Clarinet/);
    const onScreen = await screenOf(editor);
    const chosen = editor.items.getByRole('treeitem', { selected: true });
    const click = (spot: Spot) => mouse.click(onScreen(spot).x, onScreen(spot).y);
    await click(viola);
    await expect(chosen).toHaveCount(1);
    await keyboard.down(key);
    await click(clarinet);
    await expect(chosen).toHaveCount(2);
    await click(clarinet);
    await expect(chosen).toHaveCount(1);
    await expect(chosen).toHaveAccessibleName(/^Viola/);
    const { x, y } = onScreen(clarinet);
    await mouse.move(x - 60, y - 60);
    await mouse.down();
    await mouse.move(x + 60, y + 60, { steps: 4 });
    await mouse.up();
    await keyboard.up(key);
    await expect(chosen.filter({ hasText: 'Viola' })).toHaveCount(1);
    await expect(chosen.filter({ hasText: 'Clarinet' })).toHaveCount(1);
  });
}

test('Ctrl held before the press makes a copy, held later it only keeps from snapping, and Shift keeps the way straight', async ({
  editor,
  page,
}) => {
  const { mouse, keyboard } = page;
  const violas = editor.items.getByRole('treeitem', { name: /^Viola/ });
  await editor.select(/^Viola/);
  const before = await editor.position();
  const { x, y } = await editor.middleOfSelection();
  const drag = async (held: 'before' | 'later', key: 'Control' | 'Shift'): Promise<void> => {
    if (held === 'before') await keyboard.down(key);
    await mouse.move(x, y);
    await mouse.down();
    if (held === 'later') await keyboard.down(key);
    await mouse.move(x + 91, y + 33, { steps: 5 });
    await mouse.up();
    await keyboard.up(key);
  };
  await drag('before', 'Control');
  await expect(violas).toHaveCount(2);
  await expect(page.getByRole('button', { name: /^Undo duplicate Viola/ })).toBeVisible();
  await keyboard.press('Control+z');
  await expect(violas).toHaveCount(1);

  await drag('later', 'Control');
  await expect(page.getByRole('button', { name: /^Undo move Viola/ })).toBeVisible();
  await expect(violas).toHaveCount(1);
  await keyboard.press('Control+z');
  await expect.poll(() => editor.position()).toEqual(before);

  await drag('later', 'Shift');
  await expect(page.getByRole('button', { name: /^Undo move Viola/ })).toBeVisible();
  const after = await editor.position();
  expect(after.y).toBe(before.y);
  expect(after.x).not.toBe(before.x);
});

test('two fingers look closer, and what the first had begun is put back', async ({ editor, page }) => {
  await editor.select(/^Viola/);
  const before = await editor.position();
  const { x, y } = await editor.middleOfSelection();
  const ratio = await editor.ratio();
  const devtools = await page.context().newCDPSession(page);
  const touch = async (type: 'touchStart' | 'touchMove' | 'touchEnd', ...points: Spot[]): Promise<void> => {
    const touchPoints = points.map((point, id) => ({ ...point, id }));
    await devtools.send('Input.dispatchTouchEvent', { type, touchPoints });
  };
  await touch('touchStart', { x, y });
  await touch('touchMove', { x: x + 20, y });
  await touch('touchStart', { x: x + 20, y }, { x: x + 120, y });
  await touch('touchMove', { x: x - 40, y }, { x: x + 180, y });
  await touch('touchEnd');
  await expect.poll(() => editor.ratio()).toBeLessThan(ratio * 0.6);
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();
  expect(await editor.position()).toEqual(before);
});
