/**
 * What the window costs beside nothing at all: its first frame, many things on the plan, and what a long day of edits
 * leaves behind; see README.md in this folder.
 */

import { chromium, type Browser, type Page } from '@playwright/test';
import { createReadStream } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import os from 'node:os';
import { extname, join } from 'node:path';
import { writeDocument } from '#model/file-format/write.ts';
import { heapSizes, openEditor, serveEditor } from './editor-page.ts';
import { manyItems } from './many-items.ts';

const [program = '', browser = '', emptyPage = ''] = process.argv.slice(2);
const cpus = os.cpus();
console.log(
  `${cpus.length} x ${cpus[0]?.model.trim()}, Node ${process.version}, load ${os.loadavg()[0]?.toFixed(1)}`,
);

const OPENINGS = 9;
const FRAMES = 240;
const ITEMS = 2000;
const EDITS = 1000;

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.ttf': 'font/ttf',
};

function serveFolder(folder: string): Promise<Server> {
  const server = createServer(({ url = '/' }, response) => {
    const path = new URL(url, 'http://localhost').pathname;
    const file = join(folder, path === '/' ? 'index.html' : path);
    response.setHeader('content-type', TYPES[extname(file)] ?? 'application/octet-stream');
    createReadStream(file)
      .on('error', () => response.writeHead(404).end())
      .pipe(response);
  });
  return new Promise((done) => server.listen(0, '127.0.0.1', () => done(server)));
}

/** The demo's plan with its people, and an empty stage, each in a browser that has never seen either. */
async function firstFrames(): Promise<void> {
  const server = await serveFolder(emptyPage);
  const empty = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  const editor = await serveEditor(program);
  const chrome = await chromium.launch({ executablePath: browser, args: ['--no-sandbox'] });
  const times = { empty: [] as number[], seen: [] as number[], answering: [] as number[] };
  for (let round = 0; round < OPENINGS; round++) {
    times.empty.push((await opened(chrome, empty)).seen);
    const { seen, answering, alike } = await opened(chrome, editor.address);
    if (alike < LEAST_ALIKE) throw new Error(`what was seen first is not the plan: ${alike} of it`);
    times.seen.push(seen);
    times.answering.push(answering);
  }
  const nothing = median(times.empty);
  const beside = (time: number): string => `${time.toFixed(0)} ms: ratio ${(time / nothing).toFixed(2)}`;
  console.log(`\nOpening, ${OPENINGS} times each, nothing kept from before`);
  console.log(`  a page with the same libraries and an empty stage         ${nothing.toFixed(0)} ms`);
  console.log(`  first useful frame: the concert's plan is seen            ${beside(median(times.seen))}`);
  console.log(
    `  the plan answers to the hand                              ${beside(median(times.answering))}`,
  );
  await chrome.close();
  await editor.close();
  server.close();
}

/** Of the platform and all that stands on it, what the first frame must show as the plan in use does. */
const LEAST_ALIKE = 0.99;

/** When what was seen, in ms from asking for the page. */
interface Noted {
  readonly seen: number;
  readonly answering: number;
  /** Share of the platform's dots that had in the first frame, nearly, the colour which they have in the plan in use. */
  readonly alike: number;
}

async function opened(chrome: Browser, address: string): Promise<Noted> {
  const context = await chrome.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.addInitScript(noteFrames);
  await page.goto(address);
  const noted = await page.waitForFunction(() => (globalThis as unknown as { noted?: Noted }).noted);
  const times = (await noted.jsonValue()) as Noted;
  await context.close();
  return times;
}

/**
 * Runs in the page before anything else. A frame counts from the one after it was painted. The empty page's stage counts
 * when it has its size; of the editor, any large canvas with a drawing on it does, and what it shows is kept, to be compared
 * with the plan in use. That answers as soon as it says where the pointer is that moves over it.
 */
function noteFrames(): void {
  const painted = (): HTMLCanvasElement[] =>
    [...document.querySelectorAll('canvas')].filter((canvas) => {
      const { width, height } = canvas;
      // Those of the store's symbols are small.
      if (canvas.clientWidth < innerWidth / 3 || !canvas.checkVisibility({ visibilityProperty: true }))
        return false;
      const row = canvas.getContext('2d')?.getImageData(0, height >> 1, width, 1).data ?? [];
      return row.some((value) => value !== 0);
    });
  const together = (canvases: readonly HTMLCanvasElement[]): Uint8ClampedArray => {
    const all = new OffscreenCanvas(innerWidth, innerHeight).getContext('2d');
    if (!all) throw new Error('no canvas');
    for (const canvas of canvases) {
      const { x, y, width, height } = canvas.getBoundingClientRect();
      all.drawImage(canvas, x, y, width, height);
    }
    return all.getImageData(0, 0, innerWidth, innerHeight).data;
  };
  const colourAt = (dots: Uint8ClampedArray, at: number): number =>
    ((dots[at] ?? 0) << 16) | ((dots[at + 1] ?? 0) << 8) | (dots[at + 2] ?? 0);
  /** Edges are painted in slightly other shades where a thousandth of a millimetre was left out. */
  const isAlike = (before: Uint8ClampedArray, now: Uint8ClampedArray, at: number): boolean =>
    [0, 1, 2].every((part) => Math.abs((before[at + part] ?? 0) - (now[at + part] ?? 0)) <= 24);
  const PLATFORM = 0xf3eee4;
  /** Row by row between the platform's first and last dot: all that stands on it, nothing that is beside it. */
  const alike = (before: Uint8ClampedArray, now: Uint8ClampedArray): number => {
    let [same, dots] = [0, 0];
    for (let row = 0; row < innerHeight; row++) {
      const at = (x: number): number => (row * innerWidth + x) * 4;
      const xs = Array.from({ length: innerWidth }, (_, x) => x).filter(
        (x) => colourAt(now, at(x)) === PLATFORM,
      );
      for (let x = xs[0] ?? 0; x < (xs.at(-1) ?? 0); x++) {
        dots++;
        if (isAlike(before, now, at(x))) same++;
      }
    }
    return dots === 0 ? 0 : same / dots;
  };
  let seen = 0;
  let first: Uint8ClampedArray | null = null;
  const done = (noted: object): unknown => Object.assign(globalThis, { noted });
  const lookAtEmpty = (): boolean => {
    const stage = document.querySelector('[role="application"] canvas');
    if (!(stage instanceof HTMLCanvasElement) || stage.width === 0) return false;
    done({ seen: performance.now(), answering: performance.now(), alike: 1 });
    return true;
  };
  const lookAtEditor = (): boolean => {
    const canvases = painted();
    if (canvases.length > 0 && !first) {
      seen = performance.now();
      first = together(canvases);
    }
    const plan = document.querySelector('[data-plan]');
    const inUse = canvases.filter((canvas) => plan?.contains(canvas));
    if (!first || !plan || inUse.length === 0 || inUse.length < canvases.length) return false;
    if (document.querySelectorAll('.where span').length > 2) {
      const answering = performance.now();
      done({ seen, answering, alike: alike(first, together([...plan.querySelectorAll('canvas')])) });
      return true;
    }
    const { x, y, width, height } = plan.getBoundingClientRect();
    const spot = { clientX: x + width / 2, clientY: y + height / 2 };
    plan.dispatchEvent(new PointerEvent('pointermove', { ...spot, bubbles: true }));
    return false;
  };
  const look = (): void => {
    const isOver = document.title === 'Empty' ? lookAtEmpty() : lookAtEditor();
    if (!isOver) requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}

/** Panned and zoomed by the wheel, once a frame, beside an empty platform. */
async function manyThings(): Promise<void> {
  for (const [words, flags] of [
    ['frames at 60 a second', []],
    ['frames as fast as they come', ['--disable-frame-rate-limit', '--disable-gpu-vsync']],
  ] as const) {
    const files = {
      'many.standlines': writeDocument(manyItems(ITEMS)),
      'none.standlines': writeDocument(manyItems(0)),
    };
    const { page, close } = await openEditor({ program, browser, files, flags });
    const frames = { none: await wheeled(page, 'none'), many: await wheeled(page, 'many') };
    console.log(`\nPanning and zooming, ${words}, median of ${FRAMES} frames`);
    for (const way of ['pan', 'zoom'] as const) {
      const [none, many] = [frames.none[way], frames.many[way]];
      console.log(
        `  ${way.padEnd(5)} ${ITEMS} things ${many.toFixed(2)} ms, an empty platform ${none.toFixed(2)} ms: ratio ${(many / none).toFixed(2)}`,
      );
    }
    await close();
  }
}

interface Wheeled {
  readonly pan: number;
  readonly zoom: number;
}

async function wheeled(page: Page, name: string): Promise<Wheeled> {
  await page.keyboard.press('Control+o');
  await page.getByRole('button', { name: `${name}.standlines` }).dblclick();
  await page
    .getByRole('heading', { level: 1 })
    .getByText(name)
    .or(page.getByText(`${name}.standlines`))
    .first()
    .waitFor();
  await page.waitForFunction(() => !document.body.textContent.includes('Checking…'), null, {
    timeout: 120_000,
  });
  await page.waitForTimeout(3000);
  await page.getByRole('application').focus();
  await page.keyboard.press('1');
  await page.waitForTimeout(1500);
  const pan = median(await wheelFrames(page, false));
  const zoom = median(await wheelFrames(page, true));
  return { pan, zoom };
}

/** To and fro, so that what is in view stays much the same. */
function wheelFrames(page: Page, zooms: boolean): Promise<number[]> {
  return page.evaluate(
    ({ frames, zooms }) => {
      const plan = document.querySelector('[data-plan]');
      const box = plan?.getBoundingClientRect() ?? new DOMRect();
      const spot = { clientX: box.x + box.width / 2, clientY: box.y + box.height / 2 };
      return new Promise<number[]>((done) => {
        const seen: number[] = [];
        let last = performance.now();
        const step = (now: number): void => {
          seen.push(now - last);
          last = now;
          const way = seen.length % 60 < 30 ? 1 : -1;
          const by = zooms ? { deltaY: way * 4, ctrlKey: true } : { deltaX: way * 8, deltaY: way * 5 };
          plan?.dispatchEvent(new WheelEvent('wheel', { ...by, ...spot, bubbles: true, cancelable: true }));
          if (seen.length < frames) requestAnimationFrame(step);
          else done(seen.slice(10));
        };
        requestAnimationFrame(step);
      });
    },
    { frames: FRAMES, zooms },
  );
}

/** A thing of the demo nudged and put back a thousand times. */
async function longDay(): Promise<void> {
  const { page, close } = await openEditor({ program, browser, files: {}, flags: [] });
  await page.getByRole('treeitem', { name: /^stand 1/ }).click();
  await editsAndUndos(page, 50);
  const before = await memoryOf(page);
  await editsAndUndos(page, EDITS);
  const after = await memoryOf(page);
  console.log(`\n${EDITS} edits and as many undos in the demo, memory of all scripts after collecting`);
  console.log(
    `  before ${before.toFixed(1)} MB, after ${after.toFixed(1)} MB: ratio ${(after / before).toFixed(3)}`,
  );
  await close();
}

async function editsAndUndos(page: Page, count: number): Promise<void> {
  await page.getByRole('application').focus();
  for (let done = 0; done < count; done += 50) {
    for (let i = 0; i < 50; i++) await page.keyboard.press(i % 2 === 0 ? 'ArrowLeft' : 'Shift+ArrowRight');
    for (let i = 0; i < 50; i++) await page.keyboard.press('Control+z');
  }
  await page.waitForTimeout(3000);
}

async function memoryOf(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  for (let i = 0; i < 3; i++) await session.send('HeapProfiler.collectGarbage');
  await session.detach();
  return (await heapSizes(page)).reduce((whole, { used }) => whole + used, 0);
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[values.length >> 1] ?? NaN;
}

await firstFrames();
await manyThings();
await longDay();
