/** A journey's own program: a loopback shell with an empty home, and the editor opened on it. */

import { test as base, expect, type Page } from '@playwright/test';
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const PROGRAM = fileURLToPath(new URL('../../dist/node/loopback.js', import.meta.url));

export interface Program {
  /** Where its dialogs begin. */
  readonly home: string;
  /** Where the editor is now. */
  readonly address: () => string;
  readonly stop: (signal?: NodeJS.Signals) => Promise<void>;
  /** Once more with the same home, as after a crash or a new day. */
  readonly startAgain: () => Promise<string>;
}

interface Fixtures {
  readonly program: Program;
  /** The editor on the demo concert, its first steps put away. */
  readonly editor: Editor;
}

/** How many times slower than this machine the window is to be, so that what only a quick one gets away with shows. */
const SLOWNESS = Number(process.env['SLOW'] ?? 1);

/** Milliseconds by which every answer of the program is to come late. */
const LATENESS = Number(process.env['LATE'] ?? 0);

export const test = base.extend<Fixtures>({
  context: async ({ context }, use) => {
    if (SLOWNESS > 1) context.on('page', (page) => void slowDown(page));
    if (LATENESS > 0)
      await context.route(/\/call\//, (route) => setTimeout(() => void route.fallback(), LATENESS));
    await use(context);
  },
  program: async ({}, use) => {
    const home = mkdtempSync(join(tmpdir(), 'standlines-journey-'));
    mkdirSync(join(home, 'state'));
    let running = await start(home);
    await use({
      home,
      address: () => running.address,
      stop: (signal = 'SIGTERM') => stopped(running.child, signal),
      startAgain: async () => (running = await start(home)).address,
    });
    await stopped(running.child, 'SIGKILL');
    rmSync(home, { recursive: true, force: true });
  },
  editor: async ({ page, program }, use) => {
    const complaints = listenForComplaints(page);
    // The view goes where it is sent at once, so that no step has to wait for it.
    await page.emulateMedia({ reducedMotion: 'reduce' });
    const editor = new Editor(page);
    await editor.open(program.address());
    await editor.putHintsAway();
    await use(editor);
    expect(complaints, 'errors and policy violations in the page').toEqual([]);
  },
});

export { expect };

async function slowDown(page: Page): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWNESS });
}

interface Running {
  readonly child: ChildProcess;
  readonly address: string;
}

function start(home: string): Promise<Running> {
  const env = { ...process.env, HOME: home, STANDLINES_STATE_DIR: join(home, 'state') };
  const child = spawn(process.execPath, [PROGRAM], { env, stdio: ['ignore', 'pipe', 'pipe'] });
  return new Promise((resolve, reject) => {
    child.once('exit', (code) =>
      reject(new Error(`the program ended with ${code} before it served anything`)),
    );
    child.stdout.on('data', (piece: Buffer) => {
      const address = /http:\/\/\S+/.exec(piece.toString())?.[0];
      if (address) resolve({ child, address });
    });
  });
}

function stopped(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.once('exit', () => resolve());
    child.kill(signal);
  });
}

/** Everything that the page complains of; a lost connection is not the page's fault. */
export function listenForComplaints(page: Page): string[] {
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(String(error.stack)));
  page.on('console', (message) => {
    if (message.type() !== 'error' || /ERR_CONNECTION|ERR_INCOMPLETE|Failed to fetch/.test(message.text()))
      return;
    complaints.push(message.text());
  });
  void page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(`policy: ${event.violatedDirective} ${event.blockedURI} ${event.sourceFile}`);
    });
  });
  return complaints;
}

/** The editor in a person's words. */
export class Editor {
  constructor(readonly page: Page) {}

  async open(address: string): Promise<void> {
    await this.page.goto(address);
    await expect(this.plan).toBeVisible();
    await expect(this.house.getByRole('button', { name: /^Worst seen/ })).toBeVisible();
    await this.settled();
  }

  async putHintsAway(): Promise<void> {
    const away = this.page.getByRole('button', { name: 'Skip these' });
    if (!(await away.isVisible())) return;
    await away.click();
    // The plan has their room now, and shows the platform anew.
    await expect(away).toBeHidden();
    await this.settled();
  }

  get plan() {
    return this.page.getByRole('application', { name: 'Plan of the platform and the house' });
  }

  get house() {
    return this.page.getByRole('region', { name: 'What the house sees' });
  }

  get findings() {
    return this.page.getByRole('region', { name: 'Findings' });
  }

  get items() {
    return this.page.getByRole('tree', { name: 'On the platform' });
  }

  /** The concert's name, its file, and whether that is up to date. */
  get title() {
    return this.page.getByRole('heading', { level: 1 }).first();
  }

  /** One that is there; where another's script is still on its way, that is no dialog yet. */
  get dialog() {
    return this.page.getByRole('dialog').and(this.page.locator(':not([aria-busy])'));
  }

  /** None is there, and none is on its way. */
  async noDialog(): Promise<void> {
    await expect(this.page.getByRole('dialog')).toHaveCount(0);
  }

  field(label: string) {
    return this.page.getByLabel(label, { exact: true });
  }

  async showSetup(name: string): Promise<void> {
    await this.page.getByRole('tab', { name, exact: true }).click();
    await expect(this.findings.getByText('Checking…')).toBeHidden();
  }

  async select(item: RegExp): Promise<void> {
    await this.items.getByRole('treeitem', { name: item }).click();
  }

  /** Letters all at once, so that on the slowest machine, too, they make one word for whoever waits for the next one. */
  async typeAtOnce(word: string): Promise<void> {
    await Promise.all([...word].map((letter) => this.page.keyboard.press(letter)));
  }

  /** Share of the places that see a player well, in per cent, as the strip says it. */
  async figureOf(player: string): Promise<number> {
    const cell = this.house.getByRole('button', { name: new RegExp(`^${player}`) });
    const words = await cell.innerText();
    const percent = /(\d+)\s%/.exec(words)?.[1];
    if (percent === undefined) throw new Error(`no figure in "${words}"`);
    return Number(percent);
  }

  /** Millimetres from the centre line and the front edge, as the properties say it. */
  async position(): Promise<{ x: number; y: number }> {
    const [across, depth] = await Promise.all([
      this.field('From the centre line').inputValue(),
      this.field('From the front edge').inputValue(),
    ]);
    return { x: signed(across, 'SR'), y: signed(depth, 'DS') };
  }

  /** Where the plan is in the window. */
  async box(): Promise<{ x: number; y: number; width: number; height: number }> {
    const box = await this.plan.boundingBox();
    if (!box) throw new Error('the plan is not shown');
    return box;
  }

  /** Where a selected item is in the window: it is brought to the middle of the plan first. */
  async middleOfSelection(): Promise<{ x: number; y: number }> {
    await this.plan.focus();
    await this.page.keyboard.press('2');
    await this.settled();
    const box = await this.box();
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  }

  /** Waits until what was done is on the screen. */
  async settled(): Promise<void> {
    await this.page.evaluate(
      () => new Promise((shown) => requestAnimationFrame(() => requestAnimationFrame(shown))),
    );
  }

  /** Degrees from straight at the house, as the properties say it: "20° towards SR" is -20. */
  async facing(): Promise<number> {
    const words = await this.field('Faces').inputValue();
    if (words === 'straight at the house') return 0;
    return words === 'upstage' ? 180 : signed(words, 'SR');
  }

  /** The scale that the screen shows: 50 for 1:50. */
  async ratio(): Promise<number> {
    const words = await this.page.locator('[aria-description="Scale on this screen, about"]').innerText();
    return Number(words.replace('1:', ''));
  }

  /** Chooses a file in the dialog for opening one. */
  async openFile(name: string): Promise<void> {
    await this.page.keyboard.press('Control+o');
    await this.dialog.getByRole('button', { name: `${name}.standlines` }).dblclick();
    await this.noDialog();
  }

  /**
   * Drags the selected item with the mouse until it stands at a spot (within `within` mm), leaving the button down.
   * Ctrl is held, so that nothing is snapped to. How far a pixel reaches is seen from the item's own figures.
   */
  async dragTo(spot: { x: number; y: number }, within = 40): Promise<void> {
    const { mouse, keyboard } = this.page;
    const start = await this.middleOfSelection();
    const before = await this.position();
    await mouse.move(start.x, start.y);
    await mouse.down();
    await keyboard.down('Control');
    await mouse.move(start.x + 60, start.y, { steps: 4 });
    await expect.poll(async () => (await this.position()).x).not.toBe(before.x);
    const pixel = ((await this.position()).x - before.x) / 60;
    const end = { x: start.x + (spot.x - before.x) / pixel, y: start.y - (spot.y - before.y) / pixel };
    await mouse.move(end.x, end.y, { steps: 8 });
    await expect
      .poll(async () => {
        const { x, y } = await this.position();
        return Math.hypot(x - spot.x, y - spot.y);
      })
      .toBeLessThan(within);
    await keyboard.up('Control');
  }

  async saveAs(name: string): Promise<void> {
    await this.page.keyboard.press('Control+Shift+S');
    await this.dialog.getByLabel('File name').fill(name);
    await this.dialog.getByRole('button', { name: 'Save here' }).click();
    await expect(this.title).toContainText(new RegExp(`Saved \\d.* to ${name}\\.standlines`), {
      timeout: 20_000,
    });
  }
}

function signed(words: string, negative: string): number {
  const figure = /\d+/.exec(words)?.[0];
  return figure === undefined ? 0 : Number(figure) * (words.includes(negative) ? -1 : 1);
}
