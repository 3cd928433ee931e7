/** More of what hands do: facing by pointing, the wheel, menus beside the items, copies by dragging, a house from numbers. */

import { expect, test } from './editor.ts';

test('something is turned towards what is clicked, seen before, and Escape puts it back', async ({
  editor,
  page,
}) => {
  await editor.select(/^Viola/);
  await editor.middleOfSelection();
  await editor.select(/^Clarinet/);
  const before = await editor.field('Faces').inputValue();
  const box = await editor.box();
  await editor.plan.focus();
  await page.keyboard.press('f');
  await expect(page.getByText('Click whom or what it should face')).toBeVisible();
  await page.mouse.move(box.x + 40, box.y + box.height - 40);
  await expect(editor.field('Faces')).not.toHaveValue(before);
  await page.keyboard.press('Escape');
  await expect(editor.field('Faces')).toHaveValue(before);

  await editor.plan.focus();
  await page.keyboard.press('f');
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  await expect(page.getByRole('button', { name: /^Undo turn Clarinet .* towards Viola/ })).toBeVisible();

  // And from the list of commands, by name.
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+k');
  await editor.dialog.getByRole('combobox').fill('turn towards viola');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: /^Undo turn Clarinet .* towards Viola/ })).toBeVisible();
});

test('a notch of the wheel looks closer at what is under the pointer, small steps move the view', async ({
  editor,
  page,
}) => {
  await editor.select(/^Viola/);
  const middle = await editor.middleOfSelection();
  const before = await editor.ratio();
  await page.mouse.move(middle.x, middle.y);
  await page.mouse.wheel(0, 240);
  await expect.poll(() => editor.ratio()).toBeGreaterThan(before);
  await page.mouse.wheel(0, -240);
  await expect.poll(() => editor.ratio()).toBe(before);
  // The viola is still under the pointer.
  await page.keyboard.press('Escape');
  await page.mouse.click(middle.x, middle.y);
  await expect(editor.items.getByRole('treeitem', { selected: true, name: /^Viola/ })).toHaveCount(1);
  await page.mouse.wheel(0, 30);
  await editor.settled();
  expect(await editor.ratio()).toBe(before);
});

test('dragging with Alt leaves the original and moves a copy', async ({ editor, page }) => {
  await editor.select(/^Viola/);
  const before = await editor.position();
  const { x, y } = await editor.middleOfSelection();
  await page.keyboard.down('Alt');
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 90, y + 30, { steps: 5 });
  await page.mouse.up();
  await page.keyboard.up('Alt');
  await expect(editor.items.getByRole('treeitem', { name: /^Viola/ })).toHaveCount(2);
  await expect(page.getByRole('button', { name: /^Undo duplicate Viola/ })).toBeVisible();
  await editor.items
    .getByRole('treeitem', { name: /^Viola/ })
    .first()
    .click();
  expect(await editor.position()).toEqual(before);
});

test('beside the items the menu is about the place or the platform', async ({ editor, page }) => {
  await editor.plan.focus();
  await page.keyboard.press('0');
  await editor.settled();
  const box = await editor.box();
  let seat: { x: number; y: number } | null = null;
  for (let y = 0.5; y < 0.9 && !seat; y += 0.005) {
    const spot = { x: box.x + box.width * 0.4, y: box.y + box.height * y };
    await page.mouse.move(spot.x, spot.y);
    if ((await editor.plan.evaluate((plan) => plan.style.cursor)) === 'pointer') seat = spot;
  }
  if (!seat) throw new Error('no place found');
  await page.mouse.click(seat.x, seat.y, { button: 'right' });
  await page.getByRole('menuitem', { name: 'Picture of what the place or player sees' }).click();
  await expect(page.getByRole('dialog', { name: /^What place .* sees/ })).toBeVisible();
});

test('a house is made of five numbers, drawn while they are typed', async ({ editor, page }) => {
  await page.keyboard.press('Control+k');
  await editor.dialog.getByRole('combobox').fill('another house');
  await page.keyboard.press('Enter');
  await editor.dialog.getByRole('radio', { name: /From five numbers/ }).check();
  const numbers = editor.dialog.getByRole('group', { name: 'From five numbers' });
  for (const [label, typed] of [
    ['Platform, width', '3 × 3 m'],
    ['Platform, depth', '4 m + 50 cm'],
    ['Platform, height', '80 cm'],
    ['Rows of seats', '6'],
    ['Seats in a row', '10'],
  ] as const) {
    await numbers.getByLabel(label, { exact: true }).fill(typed);
    await page.keyboard.press('Enter');
  }
  await expect(editor.dialog).toContainText('60 places in straight rows');
  await numbers.getByLabel('Rows of seats').fill('9999');
  await page.keyboard.press('Enter');
  await expect(editor.dialog.getByRole('alert')).toBeVisible();
  await page.keyboard.press('Escape');
  await editor.dialog.getByRole('button', { name: 'Take this house' }).click();
  await expect(page.getByRole('button', { name: 'Undo change the venue' })).toBeVisible();
  await editor.items.getByRole('treeitem', { name: 'Platform' }).click();
  const corner = page.getByRole('group', { name: 'Corner 3' });
  await expect(corner.getByLabel('From the centre line')).toHaveValue('4500 SL');
  await expect(corner.getByLabel('From the front edge')).toHaveValue('4500 US');
});

test('a thing is dragged from its shelf onto the plan, and goes back where that is broken off', async ({
  editor,
  page,
}) => {
  const { mouse, keyboard } = page;
  const rows = editor.items.getByRole('treeitem');
  const count = await rows.count();
  await editor.plan.focus();
  await keyboard.press('1');
  await page.getByRole('searchbox').fill('trap table');
  const thing = page.getByRole('button', { name: 'Trap table, padded' });
  const shelf = await thing.boundingBox();
  if (!shelf) throw new Error('the shelf is not shown');
  const box = await editor.box();
  const spot = { x: box.x + box.width * 0.62, y: box.y + box.height * 0.35 };
  const grasp = async (): Promise<void> => {
    await mouse.move(shelf.x + 60, shelf.y + 15);
    await mouse.down();
    await mouse.move(shelf.x + 90, shelf.y + 25, { steps: 3 });
  };
  const carried = page.locator('[data-carried]');

  // Seen under the pointer from the shelf on, and judged over the plan before it is let go.
  await grasp();
  await expect(carried).toHaveText('Trap table, padded');
  await mouse.move(spot.x, spot.y, { steps: 4 });
  await expect(page.getByText('Let go to set down: Trap table, padded')).toBeVisible();
  await expect(carried).toBeHidden();
  await expect(rows).toHaveCount(count + 1);
  await mouse.up();
  await expect(page.getByRole('button', { name: /^Undo add/ })).toBeVisible();
  await expect(rows).toHaveCount(count + 1);
  await expect(editor.plan).toBeFocused();
  await expect(thing).toHaveAttribute('aria-pressed', 'false');
  const there = await editor.position();
  await mouse.move(spot.x, spot.y);
  await keyboard.press('Control+z');
  await expect(rows).toHaveCount(count);
  expect(there.y).toBeGreaterThan(0);

  // Escape, another place than the plan, and back on the shelf: nothing is set down, and nothing waits for a click.
  for (const breakOff of [
    () => keyboard.press('Escape'),
    () => mouse.move(shelf.x + 60, box.y + box.height + 40),
    () => mouse.move(shelf.x + 60, shelf.y + 15),
  ]) {
    await grasp();
    await mouse.move(spot.x, spot.y, { steps: 3 });
    await expect(rows).toHaveCount(count + 1);
    await breakOff();
    await mouse.up();
    await expect(rows).toHaveCount(count);
    await expect(carried).toBeHidden();
    await expect(thing).toHaveAttribute('aria-pressed', 'false');
    await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();
  }
  await thing.click();
  await expect(thing).toHaveAttribute('aria-pressed', 'true');
  await mouse.click(spot.x, spot.y);
  await expect(rows).toHaveCount(count + 1);
});

test('copies of what stands at the front edge stay on the platform', async ({ editor, page }) => {
  await editor.select(/^Viola/);
  await editor.field('From the front edge').fill('150');
  await page.keyboard.press('Enter');
  await editor.plan.focus();
  for (const [copies, again] of [
    [2, () => page.keyboard.press('Control+d')],
    [3, () => page.getByRole('button', { name: 'Duplicate', exact: true }).click()],
  ] as const) {
    await again();
    await expect(editor.items.getByRole('treeitem', { name: /^Viola/ })).toHaveCount(copies);
    expect((await editor.position()).y).toBeGreaterThanOrEqual(150);
  }
});

test('a storage place is on the shelf and in the list of commands', async ({ editor, page }) => {
  const storages = editor.items.getByRole('treeitem', { name: /^Storage/ });
  const count = await storages.count();
  await page.getByRole('searchbox').fill('storage');
  await page.getByRole('button', { name: 'Storage place' }).click();
  const box = await editor.box();
  await page.mouse.click(box.x + box.width * 0.1, box.y + box.height * 0.4);
  await expect(storages).toHaveCount(count + 1);
  await expect(editor.field('Through')).toBeVisible();

  await page.keyboard.press('Control+k');
  await editor.dialog.getByRole('combobox').fill('place storage');
  await page.keyboard.press('Enter');
  await expect(storages).toHaveCount(count + 2);
  // Behind everything that the platform holds.
  expect((await editor.position()).y).toBeGreaterThan(3000);
});
