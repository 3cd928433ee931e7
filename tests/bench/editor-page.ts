/** The editor in a real Chromium, as the benchmarks of the window use it: a page, its tasks and its memory. */

import { chromium, type Page } from '@playwright/test';
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ENGINE_FLAGS } from '../../electron/services/engine-flags.ts';
import { watchMemory, type MostMemory } from './process-memory.ts';

export interface Bench {
  readonly page: Page;
  /** Most memory that the page's process has held until now; it runs the workers too. Null: not to be had here. */
  readonly mostMemory: () => MostMemory | null;
  readonly close: () => Promise<void>;
}

interface Start {
  /** The loopback shell, built. */
  readonly program: string;
  readonly browser: string;
  /** By name, into the folder where the editor's dialogs begin. */
  readonly files: Readonly<Record<string, string>>;
  readonly flags: readonly string[];
}

export interface Served {
  readonly address: string;
  readonly close: () => void;
}

/** The loopback shell with an empty home, but for the files named. */
export async function serveEditor(program: string, files: Start['files'] = {}): Promise<Served> {
  const home = mkdtempSync(join(tmpdir(), 'standlines-bench-home-'));
  mkdirSync(join(home, 'state'));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(home, name), text);
  const shell = spawn(process.execPath, [program], {
    env: { ...process.env, HOME: home, STANDLINES_STATE_DIR: join(home, 'state') },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const address = await addressOf(shell);
  const close = (): void => {
    shell.kill();
    rmSync(home, { recursive: true, force: true });
  };
  return { address, close };
}

/** A window of 1440 by 900 on the demo concert. */
export async function openEditor({ program, browser, files, flags }: Start): Promise<Bench> {
  const served = await serveEditor(program, files);
  const chrome = await chromium.launch({
    executablePath: browser,
    args: ['--no-sandbox', '--enable-precise-memory-info', `--js-flags=${ENGINE_FLAGS}`, ...flags],
  });
  const page = await chrome.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
  await page.addInitScript(holdTheQuestions);
  await page.goto(served.address);
  await page.getByRole('application').waitFor();
  await page.getByRole('region', { name: 'What the house sees' }).getByRole('button').first().waitFor();
  const away = page.getByRole('button', { name: 'Skip these' });
  if (await away.isVisible()) await away.click();
  const memory = await watchMemory(chrome);
  return {
    page,
    mostMemory: memory.most,
    close: async () => {
      memory.end();
      await chrome.close();
      served.close();
    },
  };
}

function addressOf(shell: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    shell.once('exit', () => reject(new Error('the shell ended before it served anything')));
    shell.stdout?.on('data', (piece: Buffer) => {
      const address = /http:\/\/\S+/.exec(piece.toString())?.[0];
      if (address) resolve(address);
    });
  });
}

/** What the page notes by itself, for `page.evaluate`. */
export interface Watch {
  /** While true, questions to workers wait: the checks are switched off. */
  held: boolean;
  release: () => void;
}

/** Runs in the page before anything of the editor. */
function holdTheQuestions(): void {
  const waiting: (() => void)[] = [];
  const watch: Watch = {
    held: false,
    release: () => {
      watch.held = false;
      for (const send of waiting.splice(0)) send();
    },
  };
  (globalThis as unknown as { watch: Watch }).watch = watch;
  const send = Worker.prototype.postMessage as (this: Worker, message: unknown) => void;
  Worker.prototype.postMessage = function (this: Worker, message: unknown) {
    if (watch.held) waiting.push(() => send.call(this, message));
    else send.call(this, message);
  };
}

export interface Task {
  /** By the clock, ms. */
  readonly took: number;
  /** Of the processor, ms: what it takes where nothing else runs. */
  readonly worked: number;
}

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** Carries out and waits until nothing stirs any more; the tasks of the page's main thread meanwhile. */
export async function tasksWhile(page: Page, work: () => Promise<unknown>): Promise<Task[]> {
  const browser = page.context().browser();
  await browser?.startTracing(page, { categories: ['disabled-by-default-devtools.timeline', '__metadata'] });
  await work();
  await page.waitForTimeout(SETTLED_MS);
  const trace = JSON.parse(String(await browser?.stopTracing())) as { traceEvents: TraceEvent[] };
  const threads = trace.traceEvents.filter(
    ({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain',
  );
  const main = new Set(threads.map(({ pid, tid }) => `${pid} ${tid}`));
  return trace.traceEvents
    .filter(({ name, pid, tid }) => name === 'RunTask' && main.has(`${pid} ${tid}`))
    .map(({ dur = 0, tdur = NaN }) => ({ took: dur / 1000, worked: tdur / 1000 }));
}

const SETTLED_MS = 1500;

interface HeapSize {
  readonly name: string;
  /** What is in use, and with the rubbish and the spare room that the engine keeps; MB. */
  readonly used: number;
  readonly kept: number;
}

interface HeapUsage {
  readonly usedSize: number;
  readonly totalSize: number;
  readonly backingStorageSize?: number;
}

function heapSize(name: string, { usedSize, totalSize, backingStorageSize = 0 }: HeapUsage): HeapSize {
  const [used, kept] = [usedSize, totalSize].map((size) => (size + backingStorageSize) / 1e6);
  return { name, used: used ?? NaN, kept: kept ?? NaN };
}

/** What the scripts of the page and of each of its workers hold now. */
export async function heapSizes(page: Page): Promise<HeapSize[]> {
  const session = await page.context().newCDPSession(page);
  const workers: { readonly session: string; readonly name: string }[] = [];
  session.on('Target.attachedToTarget', ({ sessionId, targetInfo }) => {
    workers.push({ session: sessionId, name: /(\w+)\.worker/.exec(targetInfo.url)?.[1] ?? 'worker' });
  });
  const waiting = new Map<number, (usage: HeapUsage) => void>();
  session.on('Target.receivedMessageFromTarget', ({ message }) => {
    const { id, result } = JSON.parse(message) as { id?: number; result?: HeapUsage };
    if (id !== undefined && result) waiting.get(id)?.(result);
  });
  await session.send('Target.setAutoAttach', {
    autoAttach: true,
    waitForDebuggerOnStart: false,
    flatten: false,
  });
  const sizes = [heapSize('page', (await session.send('Runtime.getHeapUsage')) as HeapUsage)];
  for (const [id, { session: sessionId, name }] of workers.entries()) {
    const usage = new Promise<HeapUsage>((told) => waiting.set(id, told));
    const message = JSON.stringify({ id, method: 'Runtime.getHeapUsage' });
    await session.send('Target.sendMessageToTarget', { sessionId, message });
    sizes.push(heapSize(name, await usage));
  }
  await session.detach();
  return sizes;
}
