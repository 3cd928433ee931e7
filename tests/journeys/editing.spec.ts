/** What hands do: placing, turning, corners, seats, remedies, setups, units, copies. */

import { Editor, expect, test } from './editor.ts';

test('a thing of the store is set down with a click, and Escape puts it back', async ({ editor, page }) => {
  const { keyboard, mouse } = page;
  const count = await editor.items.getByRole('treeitem').count();
  await page.getByRole('searchbox').fill('trap table');
  await page.getByRole('button', { name: 'Trap table, padded' }).click();
  await expect(page.getByText('Click on the plan to set down')).toBeVisible();
  await editor.plan.focus();
  await keyboard.press('1');
  await editor.settled();
  const box = await editor.box();
  await mouse.move(box.x + box.width * 0.62, box.y + box.height * 0.35);
  // It is judged before it is placed, so it is in the list already.
  await expect(editor.items.getByRole('treeitem')).toHaveCount(count + 1);
  await keyboard.press('Escape');
  await expect(editor.items.getByRole('treeitem')).toHaveCount(count);
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();

  await page.getByRole('button', { name: 'Trap table, padded' }).click();
  await mouse.click(box.x + box.width * 0.62, box.y + box.height * 0.35);
  await expect(editor.items.getByRole('treeitem')).toHaveCount(count + 1);
  await expect(page.getByRole('button', { name: /^Undo add/ })).toBeVisible();
});

test('a player is turned by the handle, and one undo turns him back', async ({ editor, page }) => {
  await editor.select(/^Clarinet/);
  const before = await editor.facing();
  const middle = await editor.middleOfSelection();
  // The handle stands 26 pixels before the player, on the side he faces: it is looked for along that line.
  const facing = (before * Math.PI) / 180;
  const ahead = { x: Math.sin(facing), y: Math.cos(facing) };
  let found = false;
  for (let reach = 20; reach < 260 && !found; reach += 4) {
    await page.mouse.move(middle.x + ahead.x * reach, middle.y + ahead.y * reach);
    found = (await editor.plan.evaluate((plan) => plan.style.cursor)) === 'grab';
  }
  expect(found).toBe(true);
  await page.mouse.down();
  await page.mouse.move(middle.x + 5, middle.y + 200, { steps: 6 });
  await page.mouse.up();
  await expect(editor.field('Faces')).toHaveValue('straight at the house');
  await page.keyboard.press('Control+z');
  await expect.poll(() => editor.facing()).toBe(before);
});

test('a suggested change that is tried clears what it was suggested for', async ({ editor, page }) => {
  await editor.showSetup('2b Hedgerow Dances');
  const failing = editor.findings.getByRole('button', { name: /places do not see/ });
  await failing.first().click();
  const complaint = await failing.first().innerText();
  const tries = editor.findings.getByRole('button', { name: 'Try it' });
  await expect(tries.first()).toBeVisible({ timeout: 30_000 });
  await tries.first().click();
  await expect(editor.findings.getByRole('button', { name: complaint, exact: true })).toHaveCount(0);
  await expect(page.getByRole('button', { name: /^Undo (move|lower|turn)/ })).toBeVisible();
});

test('a seat says what it sees and what is in the way', async ({ editor, page }) => {
  await editor.showSetup('2b Hedgerow Dances');
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
  expect(over).toBe(true);
  await page.mouse.down();
  await page.mouse.up();
  const card = page.getByRole('region', { name: /^From place [A-J] \d+/ });
  await expect(card.getByRole('listitem')).toHaveCount(3);
  await expect(card).toContainText(/hides \d+\s%|nothing in the way/);

  // What it sees, as a picture; large, by the keyboard alone; and drawn as the figures count.
  await expect(card.getByRole('img', { name: /^View from [A-J] \d+\. From left to right: / })).toBeVisible();
  await card.getByRole('button', { name: 'Enlarge the picture' }).press('Enter');
  const seen = page.getByRole('dialog', { name: /^What place [A-J] \d+ sees/ });
  const picture = seen.getByRole('img', { name: /^View from/ });
  await expect(picture).toBeVisible();
  const asFigures = await picture.screenshot();
  await seen.getByLabel('Only what the percentages count').check();
  await expect(async () => expect((await picture.screenshot()).equals(asFigures)).toBe(false)).toPass();
  await page.keyboard.press('Escape');
  await expect(seen).toBeHidden();
  await editor.plan.focus();
  await page.keyboard.press('Escape');
  await expect(card).toBeHidden();
});

test('the platform stays readable beside the section, also in a small window', async ({ editor, page }) => {
  for (const [width, height, most] of [
    [1440, 900, 80],
    [1100, 700, 130],
    [900, 1100, 130],
  ] as const) {
    await page.setViewportSize({ width, height });
    await editor.plan.focus();
    await page.keyboard.press('s');
    await expect(page.getByRole('region', { name: 'Section', exact: true })).toBeVisible();
    await editor.plan.focus();
    await page.keyboard.press('1');
    await expect.poll(() => editor.ratio(), `${width} by ${height}`).toBeLessThanOrEqual(most);
    await page.keyboard.press('s');
    await expect(page.getByRole('region', { name: 'Section', exact: true })).toBeHidden();
  }
});

test('Escape closes the chosen finding from the list, and lets go from the tabs', async ({
  editor,
  page,
}) => {
  await editor.showSetup('2b Hedgerow Dances');
  const first = editor.findings.getByRole('button', { expanded: false }).first();
  await first.click();
  await expect(editor.findings.getByRole('button', { expanded: true })).toHaveCount(1);
  await page.keyboard.press('Escape');
  await expect(editor.findings.getByRole('button', { expanded: true })).toHaveCount(0);
  await first.click();
  await page.getByRole('tab', { name: '2b Hedgerow Dances', exact: true }).focus();
  await page.keyboard.press('Escape');
  await expect(editor.findings.getByRole('button', { expanded: true })).toHaveCount(0);
});

test('what a player sees follows what is done', async ({ editor, page }) => {
  await editor.items.getByRole('treeitem', { name: /^Viola/ }).click();
  const picture = page.getByRole('img', { name: /^View from Viola\./ });
  await expect(picture).toHaveAttribute('aria-label', /Clarinet \(player 1\)/);
  await editor.items.getByRole('treeitem', { name: /^Clarinet/ }).click();
  await editor.plan.focus();
  await page.keyboard.press('Delete');
  await editor.items.getByRole('treeitem', { name: /^Viola/ }).click();
  await expect(picture).toHaveAttribute('aria-label', 'View from Viola.');
});

test('the house is coloured by the player chosen under the plan', async ({ editor }) => {
  const viola = editor.house.getByRole('button', { name: /^Viola/ });
  const worst = editor.house.getByRole('button', { name: /^Worst seen/ });
  await expect(worst).toHaveAttribute('aria-pressed', 'true');
  await viola.click();
  await expect(viola).toHaveAttribute('aria-pressed', 'true');
  await expect(worst).toHaveAttribute('aria-pressed', 'false');
});

test('numbers are typed in any unit, refusals stand by the field, and Escape brings the old one back', async ({
  editor,
  page,
}) => {
  await editor.select(/^stand 1/);
  const lip = editor.field('Lip above the floor');
  const before = await lip.inputValue();
  await lip.fill('0.9 m + 2 cm');
  await lip.press('Enter');
  await expect(lip).toHaveValue('920 mm');
  await lip.fill('9 km');
  await lip.press('Enter');
  await expect(page.getByRole('alert')).toContainText('Not a length');
  await expect(lip).toHaveAttribute('aria-invalid', 'true');
  await lip.press('Escape');
  await expect(lip).toHaveValue('920 mm');
  await lip.fill('9 m');
  await lip.press('Enter');
  await expect(page.getByRole('alert')).toContainText(/lip/i);
  await lip.press('Escape');
  await editor.plan.focus();
  await page.keyboard.press('Control+z');
  await expect(lip).toHaveValue(before);
});

test('a direction is typed as it is shown, and nonsense is refused in words', async ({ editor, page }) => {
  await editor.select(/^Viola/);
  const faces = editor.field('Faces');
  for (const [typed, shown] of [
    ['20 SR', '20° towards SR'],
    ['40° towards SL', '40° towards SL'],
    ['upstage', 'upstage'],
    ['house', 'straight at the house'],
    ['-35', '35° towards SR'],
  ] as const) {
    await faces.fill(typed);
    await faces.press('Enter');
    await expect(faces).toHaveValue(shown);
  }
  await faces.fill('400');
  await faces.press('Enter');
  await expect(page.getByRole('alert')).toContainText('from -180 to 180');
  await expect(faces).toHaveValue('400');
  await faces.press('Escape');
  await expect(faces).toHaveValue('35° towards SR');
});

test('a player goes with what only he needs, which is said, and one undo brings all back', async ({
  editor,
  page,
}) => {
  await editor.showSetup('2b Hedgerow Dances');
  const count = await editor.items.getByRole('treeitem').count();
  await editor.select(/^Viola/);
  await editor.plan.focus();
  await page.keyboard.press('Delete');
  const notice = page
    .getByRole('status')
    .filter({ hasText: 'Deleted Viola (player 2), and what came along' });
  await expect(notice).toContainText('stand 2');
  await expect(editor.items.getByRole('treeitem')).toHaveCount(count - 2);
  await page.keyboard.press('Control+z');
  await expect(editor.items.getByRole('treeitem')).toHaveCount(count);
  await expect(notice).toHaveCount(0);
});

test('a house without places says that there is nowhere to judge from', async ({ editor, page }) => {
  const list = page.getByRole('region', { name: 'Platform and house' });
  const rows = list.getByRole('button', { name: /\d+ places?$|^Wheelchair place|^Recording camera/ });
  while ((await rows.count()) > 0) {
    const left = await rows.count();
    await rows.first().click();
    await page.getByRole('button', { name: 'Remove', exact: true }).click();
    await expect(rows).toHaveCount(left - 1);
  }
  await expect(editor.house).toContainText('nowhere to judge from');
  await expect(editor.house).not.toContainText('100');
  await editor.house.getByRole('button', { name: 'Add seats' }).click();
  await expect(editor.house.getByRole('button', { name: /^Clarinet/ })).toContainText('%');
});

test('players may do without seeing each other, and the size of the notes is judged when it is known', async ({
  editor,
  page,
}) => {
  await editor.showSetup('2b Hedgerow Dances');
  await editor.select(/^Clarinet/);
  await page.getByText('Must see and be seen by').click();
  const viola = page.getByRole('checkbox', { name: /^Viola/ });
  await viola.uncheck();
  await expect(
    page.getByRole('button', { name: /^Undo let Clarinet .* do without seeing each other/ }),
  ).toBeVisible();
  await viola.check();
  await editor.select(/^stand 1/);
  const staff = editor.field('Staff height, printed');
  await staff.fill('5');
  await staff.press('Enter');
  const small = editor.findings.getByRole('button', { name: /reads staves of 5 mm/ });
  await expect(small.first()).toBeVisible();
  await staff.fill('');
  await staff.press('Enter');
  await expect(small).toHaveCount(0);
});

test('the section shows the house from the side and follows every change', async ({ editor, page }) => {
  await editor.plan.focus();
  await page.keyboard.press('s');
  const section = page.getByRole('region', { name: 'Section', exact: true });
  const drawn = section.getByRole('application');
  await expect(drawn).toHaveAccessibleName(/line of sight of every row to the edge of the platform/);
  const picture = () => section.locator('canvas').evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL());
  const before = await picture();
  await editor.select(/^stand 1/);
  await editor.field('Lip above the floor').fill('1200');
  await page.keyboard.press('Enter');
  await expect.poll(picture).not.toBe(before);
  const rows = section.getByRole('group', { name: 'C-values row by row' });
  const away = rows.getByRole('row', { name: /^A / }).first().getByRole('cell').first();
  const toEdge = await away.innerText();
  await section.getByLabel('Lines of sight to').selectOption('Viola (player 2)');
  await expect(away).not.toHaveText(toEdge);
  await expect(drawn).toHaveAccessibleName(/to Viola/);
  await section.getByRole('button', { name: 'Close the section' }).click();
  await expect(section).toHaveCount(0);
});

test('the platform stays fitted when the window shrinks, unless the view was moved by hand', async ({
  editor,
  page,
}) => {
  const large = await editor.ratio();
  await page.setViewportSize({ width: 1100, height: 700 });
  await expect.poll(() => editor.ratio()).toBeGreaterThan(large * 1.2);
  await page.setViewportSize({ width: 1440, height: 900 });
  await expect.poll(() => editor.ratio()).toBe(large);
  const box = await editor.box();
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.wheel(0, 40);
  await page.setViewportSize({ width: 1100, height: 700 });
  await expect.poll(async () => (await editor.box()).width).toBeLessThan(box.width);
  await editor.settled();
  expect(await editor.ratio()).toBe(large);
});

test('the platform is edited by its corners and by numbers, and doors follow', async ({ editor, page }) => {
  await editor.items.getByRole('treeitem', { name: 'Platform' }).click();
  const depth = page.getByRole('group', { name: 'Corner 1' }).getByLabel('From the front edge');
  await expect(depth).toHaveValue('at edge');
  await depth.fill('400 US');
  await depth.press('Enter');
  await expect(depth).toHaveValue('400 US');
  // A corner that would let the outline cross itself is refused.
  await depth.fill('20 m');
  await depth.press('Enter');
  await expect(page.getByRole('alert').first()).toBeVisible();
});

test('setups are added, copied, named and removed', async ({ editor, page }) => {
  const tabs = page.getByRole('tab');
  await expect(tabs.first()).toBeVisible();
  const before = await tabs.count();
  await page.getByRole('button', { name: 'Add a setup' }).click();
  await page.getByRole('menuitem', { name: 'Copy of this one' }).click();
  await expect(tabs).toHaveCount(before + 1);
  await expect(page.getByRole('tab', { selected: true })).toContainText('Lock Gates, copy');
  await page.getByRole('button', { name: 'This setup' }).click();
  await page.getByRole('menuitem', { name: 'Rename…' }).click();
  await editor.dialog.getByRole('textbox').fill('Encore');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('tab', { selected: true })).toContainText('Encore');
  await page.getByRole('button', { name: 'This setup' }).click();
  await page.getByRole('menuitem', { name: 'Remove this setup' }).click();
  await expect(tabs).toHaveCount(before);
});

test('feet and inches are shown when they are chosen, and stay chosen', async ({ editor, page, program }) => {
  await page.getByRole('button', { name: 'View', exact: true }).click();
  await page.getByRole('menuitem', { name: 'Units' }).hover();
  await page.getByRole('menuitemcheckbox', { name: 'Feet and inches' }).click();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await editor.select(/^Viola/);
  await expect(editor.field('From the front edge')).toHaveValue(/^\d+'-\d/);
  await editor.open(program.address());
  await editor.select(/^Viola/);
  await expect(editor.field('From the front edge')).toHaveValue(/^\d+'-\d/);
});

test('what is copied is pasted in another window', async ({ editor, page, program, context }) => {
  await editor.select(/^Viola/);
  await editor.plan.focus();
  await page.keyboard.press('Control+c');
  const other = await context.newPage();
  await other.goto(program.address());
  const there = new Editor(other);
  const violas = there.items.getByRole('treeitem', { name: /^Viola/ });
  await expect(violas).toHaveCount(1);
  await there.plan.focus();
  await other.keyboard.press('Control+v');
  await expect(violas).toHaveCount(2);
  await expect(other.getByRole('button', { name: /^Undo add/ })).toBeVisible();
});

test('the right mouse button offers what can be done with the item under it', async ({ editor, page }) => {
  await editor.select(/^Clarinet/);
  const middle = await editor.middleOfSelection();
  await page.mouse.click(middle.x, middle.y, { button: 'right' });
  await page.getByRole('menuitem', { name: 'Duplicate what is selected' }).click();
  await expect(editor.items.getByRole('treeitem', { name: /^Clarinet/ })).toHaveCount(2);
});

test('a marquee selects what lies wholly in it, and dragging moves all of it in one step', async ({
  editor,
  page,
}) => {
  await editor.plan.focus();
  await page.keyboard.press('1');
  await editor.settled();
  const box = await editor.box();
  await page.mouse.move(box.x + 8, box.y + 8);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width - 8, box.y + box.height - 8, { steps: 5 });
  await page.mouse.up();
  const chosen = editor.items.getByRole('treeitem', { selected: true });
  await expect.poll(() => chosen.count()).toBeGreaterThan(3);
  await page.keyboard.press('Shift+ArrowUp');
  await expect(page.getByRole('button', { name: /^Undo move \d+ items/ })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(chosen).toHaveCount(0);
});

test('undo works right after an exact figure was typed, and Escape leads back to the plan', async ({
  editor,
  page,
}) => {
  const { keyboard } = page;
  await editor.select(/^Viola/);
  const across = editor.field('From the centre line');
  const before = await across.inputValue();
  await across.fill('999 SL');
  await keyboard.press('Enter');
  await expect(page.getByRole('button', { name: /^Undo move/ })).toBeVisible();
  await keyboard.press('Control+z');
  await expect(across).toHaveValue(before);
  // With nothing left to undo, the browser must not begin to take back what was typed in the field.
  for (let times = 0; times < 3; times++) await keyboard.press('Control+z');
  await expect(across).toHaveValue(before);
  await keyboard.press('Control+y');
  await expect(across).toHaveValue('999 SL');

  // While something is typed, undo is the field's, and the first Escape takes back what was typed.
  await across.fill('12');
  await keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: /^Undo move/ })).toBeVisible();
  await across.fill('34');
  await keyboard.press('Escape');
  await expect(across).toHaveValue('999 SL');
  await expect(across).toBeFocused();
  await keyboard.press('Escape');
  await expect(editor.plan).toBeFocused();
  await expect(across).toHaveValue('999 SL');
});

test('single keys work after a click on a tab or a button, and not in a field', async ({ editor, page }) => {
  const { keyboard } = page;
  const section = page.getByRole('region', { name: 'Section', exact: true });
  const search = page.getByRole('searchbox');
  await editor.showSetup('2b Hedgerow Dances');
  await editor.settled();
  await keyboard.press('1');
  await editor.settled();
  const close = await editor.ratio();
  await keyboard.press('0');
  await expect.poll(() => editor.ratio()).toBeGreaterThan(close);
  await page.getByRole('button', { name: 'Zoom in' }).click();
  await keyboard.press('s');
  await expect(section).toBeVisible();
  await search.press('s');
  await expect(search).toHaveValue('s');
  await expect(section).toBeVisible();
});

test('a figure far outside the house is refused in words, and what was typed stays', async ({
  editor,
  page,
}) => {
  await editor.select(/^Viola/);
  const across = editor.field('From the centre line');
  const before = await across.inputValue();
  await across.fill('999999');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('alert')).toContainText('more than 50000 mm from the platform');
  await expect(across).toHaveValue('999999');
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(across).toHaveValue(before);
});

test('the list of commands finds what can be set down', async ({ editor, page }) => {
  const count = await editor.items.getByRole('treeitem').count();
  await page.keyboard.press('Control+k');
  await editor.dialog.getByRole('combobox').fill('stand orch');
  await page.keyboard.press('Enter');
  await expect(editor.dialog).toBeHidden();
  await expect(editor.items.getByRole('treeitem')).toHaveCount(count + 1);
  await expect(page.getByRole('button', { name: /^Undo add stand/ })).toBeVisible();
});
