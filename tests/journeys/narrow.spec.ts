/** A narrow window, as a wide one is at 200 % and at 400 %: WCAG 2.2, 1.4.4 and 1.4.10. */

import type { Page } from '@playwright/test';
import { axeComplaints } from './axe.ts';
import { expect, test } from './editor.ts';

/** How far the page, and what scrolls in the open dialog, can be pushed sideways; tables keep their two directions. */
function sideways(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const scrollers = [
      document.documentElement,
      ...document.querySelectorAll('dialog, dialog .body, aside .content, nav'),
    ];
    return scrollers
      .filter((element) => element.checkVisibility() && element.querySelector('table') === null)
      .concat(document.documentElement)
      .filter((element) => element.scrollWidth > element.clientWidth + 1)
      .map(
        (element) =>
          `${element.tagName}.${element.className} ${element.scrollWidth} > ${element.clientWidth}`,
      );
  });
}

for (const [zoom, width, height] of [
  ['200 % of 1440 by 900', 720, 450],
  ['400 % of 1280 by 1024', 320, 256],
] as const) {
  test(`at ${zoom} the page scrolls one way only, and nothing of it is lost`, async ({ editor, page }) => {
    await page.setViewportSize({ width, height });
    await page.reload();
    await expect(editor.plan).toBeVisible();
    await expect(editor.house.getByRole('button', { name: /^Worst seen/ })).toBeVisible();
    const box = await editor.box();
    expect(box.width).toBeGreaterThan(width * 0.9);
    expect(box.height).toBeGreaterThanOrEqual(220);
    expect(await sideways(page)).toEqual([]);

    // The column of things is put away at first, and comes with its button or its key.
    await page.keyboard.press('Control+l');
    await expect(editor.items).toBeFocused();
    await editor.items.getByRole('treeitem', { name: /^Viola/ }).click();
    await expect(editor.field('From the centre line')).toBeVisible();
    expect(await sideways(page)).toEqual([]);
    for (const panel of ['Page turns', 'Time strip', 'Evening']) {
      const button = page.getByRole('navigation').getByRole('button', { name: panel, exact: true });
      await button.click();
      await expect(button).toHaveAttribute('aria-pressed', 'true');
      await expect(
        page.getByRole('heading', { name: panel === 'Evening' ? /./ : panel }).first(),
      ).toBeVisible();
      expect(await sideways(page)).toEqual([]);
    }
    await page.getByRole('navigation').getByRole('button', { name: 'Evening', exact: true }).click();
    for (const [keys, title] of [
      ['Control+k', 'Find a command'],
      ['Control+p', 'Print the plot'],
      ['Control+Shift+P', 'Print pack'],
      ['Control+e', 'Write down who plays'],
      ['F1', 'How it is judged'],
      ['Control+Alt+n', 'A new concert'],
    ] as const) {
      await editor.plan.focus();
      await page.keyboard.press(keys);
      const dialog = page.getByRole('dialog', { name: title });
      await expect(dialog.getByRole('heading', { name: title })).toBeVisible();
      expect([title, await sideways(page)]).toEqual([title, []]);
      await page.keyboard.press('Escape');
      await expect(dialog).toHaveCount(0);
    }
    expect(await axeComplaints(page)).toEqual([]);
  });
}
