/** What is seen while the window is still on its way: its plan, where it will be, and never another one. */

import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { PALETTES } from '#model/drawing/palette.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { aConcert, aDocument, aPlatform, aPlayer, aSeatBlock } from '../helpers/build.ts';
import { axeComplaints } from './axe.ts';
import { expect, listenForComplaints, test } from './editor.ts';

/** The window's own script waits until it is let go. */
async function windowHeld(page: Page): Promise<() => void> {
  let letGo = (): void => undefined;
  const gone = new Promise<void>((resolve) => (letGo = resolve));
  await page.route(/\/assets\/editor-[^/]*\.js$/, async (route) => {
    await gone;
    await route.continue();
  });
  return () => letGo();
}

interface Spot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where in the window the platform is painted, by its colour; the canvases that match lie over each other. */
async function platformOn(page: Page, canvases: string, colour: string): Promise<Spot> {
  return page.evaluate(
    ({ canvases, colour }) => {
      const found = [...document.querySelectorAll<HTMLCanvasElement>(canvases)];
      const [first] = found;
      if (!first) throw new Error(`no ${canvases}`);
      const all = new OffscreenCanvas(first.width, first.height).getContext('2d');
      if (!all) throw new Error('no canvas');
      for (const canvas of found) all.drawImage(canvas, 0, 0);
      const { data } = all.getImageData(0, 0, first.width, first.height);
      const wanted = Number.parseInt(colour.slice(1), 16);
      const box = first.getBoundingClientRect();
      // Edges of letters may have the colour by chance, here and there.
      const [across, down] = [
        new Array<number>(first.width).fill(0),
        new Array<number>(first.height).fill(0),
      ];
      for (let at = 0; at < data.length; at += 4) {
        const seen = ((data[at] ?? 0) << 16) | ((data[at + 1] ?? 0) << 8) | (data[at + 2] ?? 0);
        if (seen !== wanted) continue;
        const [x, y] = [(at / 4) % first.width, Math.floor(at / 4 / first.width)];
        across[x] = (across[x] ?? 0) + 1;
        down[y] = (down[y] ?? 0) + 1;
      }
      const isFull = (count: number): boolean => count > 30;
      return {
        left: box.x + across.findIndex(isFull),
        right: box.x + across.findLastIndex(isFull),
        top: box.y + down.findIndex(isFull),
        bottom: box.y + down.findLastIndex(isFull),
      };
    },
    { canvases, colour },
  );
}

const PICTURE = '.start.seen canvas';
const PLAN = '[data-plan] canvas';

function expectWithin(spot: Spot, other: Spot, pixels: number): void {
  for (const side of ['left', 'right', 'top', 'bottom'] as const)
    expect(Math.abs(spot[side] - other[side]), side).toBeLessThanOrEqual(pixels);
}

async function figuresCame(page: Page): Promise<void> {
  await expect(page.locator('[data-hint="house"] button').nth(2)).toBeVisible();
}

for (const [words, view, theme, locale] of [
  ['large and light', { width: 1440, height: 900 }, 'light', 'en-GB'],
  ['small and dark', { width: 1100, height: 700 }, 'dark', 'en-US'],
  ['in German', { width: 1100, height: 700 }, 'light', 'de-DE'],
] as const) {
  test.describe(words, () => {
    test.use({ locale, viewport: view, colorScheme: theme });

    test('the plan is seen before the window is there, and stays where it is', async ({ page, program }) => {
      const complaints = listenForComplaints(page);
      const letGo = await windowHeld(page);
      await page.goto(program.address());
      await expect(page.locator(PICTURE)).toBeVisible();
      const colour = PALETTES[theme].platform;
      const first = await platformOn(page, PICTURE, colour);
      expect(first.right - first.left).toBeGreaterThan(200);
      // Heard once: that something opens, and nothing of the picture.
      await expect(page.getByRole('status')).toHaveText(locale === 'de-DE' ? 'Wird geöffnet…' : 'Opening…');
      expect(await page.locator('body').ariaSnapshot()).toMatch(/^- status: [^\n]*$/);
      const complaintsOfAxe = await axeComplaints(page);
      expect(complaintsOfAxe.filter((each) => !/^(landmark|page-has-heading|region)/.test(each))).toEqual([]);

      letGo();
      await expect(page.getByRole('application')).toBeVisible();
      await expect(page.locator('.start, .start-word')).toHaveCount(0);
      await figuresCame(page);
      expectWithin(first, await platformOn(page, PLAN, colour), 2);
      expect(complaints).toEqual([]);
    });
  });
}

const WIDE = writeDocument(
  aDocument(
    aConcert({ name: 'A wide one' }),
    aPlatform({
      outline: [
        { x: -9000, y: 0 },
        { x: 9000, y: 0 },
        { x: 9000, y: 3000 },
        { x: -9000, y: 3000 },
      ],
    }),
    aPlayer({ x: 0, y: 1500 }),
    aSeatBlock(),
  ),
);

test('it is the plan of the last file, and the demo is never seen in its place', async ({
  editor,
  page,
  program,
}) => {
  writeFileSync(join(program.home, 'wide.standlines'), WIDE);
  await editor.openFile('wide');
  await expect(editor.title).toContainText('A wide one');
  const letGo = await windowHeld(page);
  await page.goto(await program.startAgain());
  await expect(page.locator(PICTURE)).toBeVisible();
  const first = await platformOn(page, PICTURE, PALETTES.light.platform);
  const { left, right, top, bottom } = first;
  expect((right - left) / (bottom - top)).toBeGreaterThan(5);

  await page.evaluate(() => {
    const titles = new Set<string>();
    Object.assign(globalThis, { titles });
    const look = (): void => {
      titles.add(document.querySelector('h1')?.textContent ?? '');
      requestAnimationFrame(look);
    };
    look();
  });
  letGo();
  await expect(editor.title).toContainText('A wide one');
  await figuresCame(page);
  await expect(page.locator('.start')).toHaveCount(0);
  expectWithin(first, await platformOn(page, PLAN, PALETTES.light.platform), 2);
  const titles = await page.evaluate(() => [...(globalThis as unknown as { titles: Set<string> }).titles]);
  expect(titles.filter((title) => title !== '' && !title.includes('A wide one'))).toEqual([]);
});

test('of a file that cannot be opened any more there is no picture', async ({ editor, page, program }) => {
  const file = join(program.home, 'wide.standlines');
  writeFileSync(file, WIDE);
  await editor.openFile('wide');
  await expect(editor.title).toContainText('A wide one');
  const address = await program.startAgain();
  writeFileSync(file, WIDE.slice(0, -30));
  const letGo = await windowHeld(page);
  await page.goto(address);
  await expect(page.getByRole('status')).toHaveText('Opening…');
  // By now it would be there: words take its place.
  await expect(page.locator('.start-word:not(.unseen)')).toBeVisible();
  await expect(page.locator('.start canvas')).toHaveCount(0);
  letGo();
  await expect(page.getByRole('alert')).toContainText('wide.standlines');
  await expect(editor.title).toContainText('Hedge and Harbour');
  await expect(page.locator('.start, .start-word')).toHaveCount(0);
});

test('it is gone where the program does not answer', async ({ page, program }) => {
  await page.route('**/call/app.hello', (route) => route.abort());
  await page.goto(program.address());
  await expect(page.getByRole('heading', { name: 'Standlines could not start' })).toBeVisible();
  await expect(page.locator('.start, .start-word')).toHaveCount(0);
  await page.unroute('**/call/app.hello');
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(page.getByRole('application')).toBeVisible();
});

test('it is gone when unsaved work is asked about', async ({ editor, page, program }) => {
  await editor.select(/^Viola/);
  const kept = page.waitForResponse('**/call/recovery.keep');
  await editor.plan.focus();
  await page.keyboard.press('ArrowLeft');
  await (await kept).finished();
  await program.stop('SIGKILL');
  await page.goto(await program.startAgain());
  await expect(editor.dialog.getByRole('button', { name: 'Open it' })).toBeVisible();
  await expect(page.locator('.start, .start-word')).toHaveCount(0);
});

test("the user's own choice of colours counts from the first frame", async ({ page, program }) => {
  const chosen = { language: 'system', theme: 'dark', units: 'document', paper: null, singleKeys: true };
  await program.stop();
  writeFileSync(join(program.home, 'state', 'settings.json'), JSON.stringify(chosen));
  const letGo = await windowHeld(page);
  await page.goto(await program.startAgain());
  await expect(page.locator(PICTURE)).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  const { left, right } = await platformOn(page, PICTURE, PALETTES.dark.platform);
  expect(right - left).toBeGreaterThan(200);
  letGo();
  await expect(page.getByRole('application')).toBeVisible();
});
