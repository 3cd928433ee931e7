/** Times the window in a real browser; see README.md in this folder. */

import os from 'node:os';
import type { Page } from '@playwright/test';
import { writeDocument } from '#model/file-format/write.ts';
import { heapSizes, openEditor, tasksWhile, type Bench, type Watch } from './editor-page.ts';
import { hallDocument } from './hall-document.ts';
import { W3 } from './hall-scene.ts';

const ROUNDS = 6;
const FRAMES = 120;

const [program = '', browser = ''] = process.argv.slice(2);
const cpus = os.cpus();
console.log(
  `${cpus.length} x ${cpus[0]?.model.trim()}, Node ${process.version}, load ${os.loadavg()[0]?.toFixed(1)}`,
);
/**
 * A stand of the demo is dragged, one move a frame, in turns with the checks answering and with their questions held
 * back. Once as fast as the machine paints, which is the stricter measure, and once at the screen's own pace.
 */
async function dragInTheDemo(): Promise<void> {
  for (const [words, flags] of [
    ['frames as fast as they come', ['--disable-frame-rate-limit', '--disable-gpu-vsync']],
    ['frames at 60 a second', []],
  ] as const) {
    const { page, close } = await openEditor({ program, browser, files: {}, flags });
    await chosen(page, 'stand 1');
    const times = { on: [] as number[], off: [] as number[] };
    for (let round = 0; round < ROUNDS; round++) {
      for (const checks of round % 2 === 0 ? (['on', 'off'] as const) : (['off', 'on'] as const)) {
        times[checks].push(...(await dragged(page, checks === 'off')));
      }
    }
    const [on, off] = [median(times.on), median(times.off)];
    console.log(`\nDragging a stand of the demo, ${words} (${times.on.length} frames each)`);
    console.log(`  with checks    ${on.toFixed(2)} ms a frame`);
    console.log(`  without checks ${off.toFixed(2)} ms a frame: ratio ${(on / off).toFixed(2)}`);
    await close();
  }
}

/** Milliseconds from frame to frame. */
async function dragged(page: Page, held: boolean): Promise<number[]> {
  const middle = await middleOfSelection(page);
  await page.mouse.move(middle.x, middle.y);
  await page.mouse.down();
  await page.mouse.move(middle.x + 8, middle.y + 8);
  const times = await page.evaluate(
    ({ x, y, frames, held }) => {
      const { watch } = globalThis as unknown as { watch: Watch };
      watch.held = held;
      const plan = document.querySelector('[data-plan]');
      return new Promise<number[]>((done) => {
        const seen: number[] = [];
        let last = performance.now();
        const step = (now: number): void => {
          seen.push(now - last);
          last = now;
          const angle = seen.length / 9;
          const spot = { clientX: x + 60 * Math.sin(angle), clientY: y + 40 * Math.cos(angle) };
          const init = { ...spot, bubbles: true, ctrlKey: true, pointerId: 1, buttons: 1 };
          plan?.dispatchEvent(new PointerEvent('pointermove', init));
          if (seen.length < frames) requestAnimationFrame(step);
          else done(seen.slice(10));
        };
        requestAnimationFrame(step);
      });
    },
    { ...middle, frames: FRAMES, held },
  );
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await page.evaluate(() => (globalThis as unknown as { watch: Watch }).watch.release());
  await page.waitForTimeout(400);
  return times;
}

async function middleOfSelection(page: Page): Promise<{ x: number; y: number }> {
  const plan = page.getByRole('application');
  await plan.focus();
  await page.keyboard.press('2');
  await page.waitForTimeout(400);
  const box = await plan.boundingBox();
  if (!box) throw new Error('the plan is not shown');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

type Step = readonly [words: string, work: (page: Page) => Promise<unknown>];

const STEPS: readonly Step[] = [
  ['opening', openHall],
  ['all of the house', (page) => pressed(page, '0')],
  ['the platform', (page) => pressed(page, '1')],
  [
    'selecting players',
    async (page) => {
      for (const name of ['Player 7', 'Player 21', 'Player 33']) {
        await chosen(page, name);
        await page.waitForTimeout(300);
      }
    },
  ],
  [
    'a stand: nudging',
    async (page) => {
      await chosen(page, 'stand 12');
      for (let i = 0; i < 6; i++) await pressed(page, 'ArrowLeft', 250);
    },
  ],
  ['a stand: dragging', (page) => dragged(page, false)],
  [
    'the same, whole house',
    async (page) => {
      await pressed(page, '0');
      await dragged(page, false);
    },
  ],
  [
    'a seat looked into',
    async (page) => {
      await pressed(page, '0');
      const box = await page.getByRole('application').boundingBox();
      if (box) await page.mouse.click(box.x + box.width / 2, box.y + box.height * 0.7);
    },
  ],
  ['undo', (page) => pressed(page, 'Control+z')],
];

async function openLargeHall(): Promise<Bench> {
  const files = { 'hall.standlines': writeDocument(hallDocument(W3)) };
  const bench = await openEditor({ program, browser, files, flags: [] });
  await bench.page.waitForTimeout(1000);
  return bench;
}

async function tasksOfLargeHall(): Promise<void> {
  const { page, close } = await openLargeHall();
  console.log(`\n${W3.name} in the window, longest tasks of the main thread: processor time (by the clock)`);
  for (const [words, work] of STEPS) {
    const tasks = (await tasksWhile(page, () => work(page))).sort((a, b) => b.worked - a.worked);
    const longest = tasks.slice(0, 4).map(({ worked, took }) => `${worked.toFixed(0)} (${took.toFixed(0)})`);
    const over = tasks.filter(({ worked }) => worked > 50).length;
    console.log(`  ${words.padEnd(22)}${longest.join(', ')} ms; over 50 ms: ${over}`);
  }
  await close();
}

/** The same again, for what notes the tasks takes memory of its own. */
async function memoryOfLargeHall(): Promise<void> {
  const { page, mostMemory, close } = await openLargeHall();
  for (const [, work] of STEPS) {
    await work(page);
    await page.waitForTimeout(1500);
  }
  const [heaps, most] = [await heapSizes(page), mostMemory()];
  const [used, kept] = [sum(heaps.map((heap) => heap.used)), sum(heaps.map((heap) => heap.kept))];
  const list = heaps.map((heap) => `${heap.name} ${heap.used.toFixed(0)}`).join(', ');
  console.log(`  memory of scripts ${used.toFixed(0)} MB (${list}); with rubbish ${kept.toFixed(0)} MB`);
  console.log(
    most === null
      ? "  the page's process: not to be had here"
      : `  the page's process held at most ${most.own.toFixed(0)} MB of its own, ${most.resident.toFixed(0)} MB with what is shared`,
  );
  await close();
}

async function chosen(page: Page, name: string): Promise<void> {
  const list = page.getByRole('tree', { name: 'On the platform' });
  await list.getByRole('treeitem', { name: new RegExp(`^${name}\\b`) }).click();
}

async function pressed(page: Page, keys: string, rest = 600): Promise<void> {
  await page.getByRole('application').focus();
  await page.keyboard.press(keys);
  await page.waitForTimeout(rest);
}

async function openHall(page: Page): Promise<void> {
  await page.keyboard.press('Control+o');
  await page.getByRole('button', { name: 'hall.standlines' }).dblclick();
  // By a plain look now and then: what the test tool does to find words takes the page's own time.
  const isThere = (players: number): boolean => {
    const strip = document.querySelector('[aria-label="What the house sees"]');
    const cells = strip?.querySelectorAll('button').length ?? 0;
    return cells > players && !document.body.textContent.includes('Checking…');
  };
  await page.waitForFunction(isThere, W3.players, { polling: 500, timeout: 240_000 });
}

function sum(values: readonly number[]): number {
  return values.reduce((whole, value) => whole + value, 0);
}

function median(values: number[]): number {
  return values.sort((a, b) => a - b)[values.length >> 1] ?? NaN;
}

await dragInTheDemo();
await tasksOfLargeHall();
await memoryOfLargeHall();
