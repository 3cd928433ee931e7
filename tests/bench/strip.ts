/** Times the time strip in a real browser: an hour of dense turns, played and pushed along; see README.md in this folder. */

import os from 'node:os';
import type { Page } from '@playwright/test';
import { writeDocument } from '#model/file-format/write.ts';
import { openEditor } from './editor-page.ts';
import { HOUR, longRun } from './long-run.ts';

const [program = '', browser = ''] = process.argv.slice(2);
const cpus = os.cpus();
console.log(
  `${cpus.length} x ${cpus[0]?.model.trim()}, Node ${process.version}, load ${os.loadavg()[0]?.toFixed(1)}`,
);

const SECONDS = 4;

type Way = readonly [
  words: string,
  begin: (page: Page) => Promise<unknown>,
  end?: (page: Page) => Promise<unknown>,
];

const slider = (page: Page) => page.getByRole('slider', { name: /time/i }).first();

async function keys(page: Page, ...pressed: readonly string[]): Promise<void> {
  await slider(page).focus();
  for (const key of pressed) await page.keyboard.press(key);
}

/** Times `zooms` in, each by 1.6. */
const zoomedIn = (zooms: number) => ['0', 'Home', ...Array.from({ length: zooms }, () => '+')];

const WAYS: readonly Way[] = [
  ['still', async (page) => keys(page, '0', 'Home')],
  ['playing, the hour in view', async (page) => keys(page, '0', 'Home', ' '), stop],
  ['playing, 8 minutes in view', async (page) => playedFrom(page, 4), stop],
  ['playing, 33 seconds in view', async (page) => playedFrom(page, 10), stop],
  ['pushed, 8 minutes in view', async (page) => pushed(page, 4), settle],
  ['pushed, 33 seconds in view', async (page) => pushed(page, 10), settle],
];

/** From far enough on that what is shown moves along. */
async function playedFrom(page: Page, zooms: number): Promise<void> {
  await keys(page, ...zoomedIn(zooms), 'PageDown', ...Array.from({ length: 300 }, () => 'ArrowRight'), ' ');
}

async function stop(page: Page): Promise<void> {
  await keys(page, ' ');
}

/** By the wheel, once a frame. */
async function pushed(page: Page, zooms: number): Promise<void> {
  await keys(page, ...zoomedIn(zooms), 'End', 'Home');
  await page.evaluate(() => {
    const strip = document.querySelector('.strip');
    const state = globalThis as unknown as { pushing: boolean };
    state.pushing = true;
    const step = (): void => {
      strip?.dispatchEvent(new WheelEvent('wheel', { deltaX: 6, bubbles: true, cancelable: true }));
      if (state.pushing) requestAnimationFrame(step);
    };
    requestAnimationFrame(step);
  });
}

async function settle(page: Page): Promise<void> {
  await page.evaluate(() => ((globalThis as unknown as { pushing: boolean }).pushing = false));
}

/** Milliseconds from frame to frame. */
function frames(page: Page): Promise<number[]> {
  return page.evaluate(
    (seconds) =>
      new Promise<number[]>((done) => {
        const seen: number[] = [];
        const begin = performance.now();
        let last = begin;
        const step = (now: number): void => {
          seen.push(now - last);
          last = now;
          if (now - begin < seconds * 1000) requestAnimationFrame(step);
          else done(seen.slice(5));
        };
        requestAnimationFrame(step);
      }),
    SECONDS,
  );
}

const { page, close } = await openEditor({
  program,
  browser,
  files: { 'hour.standlines': writeDocument(longRun(HOUR)) },
  flags: [],
});
// What is shown moves along with the music only for those who have not asked for less motion.
await page.emulateMedia({ reducedMotion: 'no-preference' });
await page.keyboard.press('Control+o');
await page.getByRole('button', { name: 'hour.standlines' }).dblclick();
await page.getByText('An hour of turns').first().waitFor();
await page.waitForTimeout(3000);
await page.getByRole('button', { name: 'Time strip', exact: true }).click();
await slider(page).waitFor({ timeout: 60_000 });
await page.waitForTimeout(1000);
console.log(
  `\nThe strip of an hour, ${HOUR.players} players, ${SECONDS} s each at the screen's pace of 60 frames a second`,
);
for (const [words, begin, end] of WAYS) {
  await begin(page);
  await page.waitForTimeout(300);
  const seen = (await frames(page)).sort((a, b) => a - b);
  await end?.(page);
  const at = (share: number): string => (seen[Math.floor(share * (seen.length - 1))] ?? NaN).toFixed(1);
  const rate = (1000 * seen.length) / seen.reduce((sum, time) => sum + time, 0);
  console.log(
    `  ${words.padEnd(30)}${rate.toFixed(0)} a second; median ${at(0.5)} ms, 95 of 100 within ${at(0.95)} ms, longest ${at(1)} ms`,
  );
}
await close();
