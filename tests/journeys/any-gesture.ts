/** Gestures of any kind in any order, drawn from a seed and made with the mouse and the keys of a real window. */

import fc from 'fast-check';
import type { Editor } from './editor.ts';

/** What somebody does; numbers from 0 to 1 are shares of what there is: of the items, of the plan, of the choices. */
export type AnyGesture =
  | { readonly what: 'click'; readonly item: number; readonly add: boolean }
  | {
      readonly what: 'drag';
      readonly item: number;
      readonly by: readonly [number, number];
      readonly held: Held;
    }
  | { readonly what: 'marquee'; readonly from: Share2; readonly to: Share2; readonly add: boolean }
  | { readonly what: 'turn'; readonly item: number; readonly to: Share2 }
  | { readonly what: 'place'; readonly thing: number; readonly at: Share2 }
  | { readonly what: 'press'; readonly keys: string }
  | { readonly what: 'button'; readonly name: string }
  | { readonly what: 'type'; readonly field: string; readonly words: string }
  | { readonly what: 'setup'; readonly which: number }
  | { readonly what: 'back'; readonly steps: number; readonly forth: number };

type Share2 = readonly [number, number];
type Held = 'nothing' | 'Alt' | 'Control' | 'Escape';

const NUDGES = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'].flatMap((key) => [key, `Shift+${key}`]);
const TURNS = ['[', ']', '{', '}', 'h', 'm'];
const CLIPBOARD = ['Control+c', 'Control+x', 'Control+v', 'Control+v', 'Control+d', 'Delete'];
const MARKS = ['Control+g', 'Control+Shift+g', 'l', 'x', 'Shift+X', 'Enter', 'Escape', 'n', 'Shift+N'];
const BUTTONS = [
  'Line up across',
  'Line up in depth',
  'Spread across',
  'Spread in depth',
  'Duplicate',
  'Lock',
  'Unlock',
];
const TYPED: Readonly<Record<string, readonly string[]>> = {
  'From the centre line': ['2.4 m + 30 cm', '1\' 6" SR', '3 × 20 cm', '0', 'on centre', 'nonsense'],
  'From the front edge': ['7\' 6"', '1.2 m - 15 cm', '40 cm DS', '900'],
  Faces: ['20 SR', 'house', 'upstage', '-35', '33.3'],
  Name: ['Erste Stimme', '“x” <b>', ''],
  'Lip above the floor': ['0.9 m + 2 cm', '40"', '9 m'],
};
/** Beyond so many things on the platform a gesture that would add more takes away instead. */
const MOST_ITEMS = 18;

// Whole numbers without a bias to the ends: everything on the plan is to be met.
const share = fc.noBias(fc.integer({ min: 0, max: 999 })).map((thousandths) => thousandths / 1000);
const spot = fc.tuple(share, share);
const pixels = fc.noBias(fc.integer({ min: -160, max: 160 }));

const press = (keys: readonly string[]) =>
  fc.record({ what: fc.constant('press'), keys: fc.constantFrom(...keys) });

const typing = fc
  .constantFrom(...Object.entries(TYPED).flatMap(([field, all]) => all.map((words) => ({ field, words }))))
  .map((typed) => ({ what: 'type', ...typed }));

const gesture = fc.oneof(
  { weight: 12, arbitrary: fc.record({ what: fc.constant('click'), item: share, add: fc.boolean() }) },
  {
    weight: 12,
    arbitrary: fc.record({
      what: fc.constant('drag'),
      item: share,
      by: fc.tuple(pixels, pixels),
      held: fc.constantFrom('nothing', 'nothing', 'Alt', 'Control', 'Escape'),
    }),
  },
  {
    weight: 5,
    arbitrary: fc.record({ what: fc.constant('marquee'), from: spot, to: spot, add: fc.boolean() }),
  },
  { weight: 3, arbitrary: fc.record({ what: fc.constant('turn'), item: share, to: spot }) },
  { weight: 4, arbitrary: fc.record({ what: fc.constant('place'), thing: share, at: spot }) },
  { weight: 10, arbitrary: press(NUDGES) },
  { weight: 6, arbitrary: press(TURNS) },
  { weight: 10, arbitrary: press(CLIPBOARD) },
  { weight: 9, arbitrary: press(MARKS) },
  { weight: 1, arbitrary: press(['Control+a']) },
  { weight: 5, arbitrary: fc.record({ what: fc.constant('button'), name: fc.constantFrom(...BUTTONS) }) },
  { weight: 7, arbitrary: typing },
  { weight: 3, arbitrary: fc.record({ what: fc.constant('setup'), which: share }) },
  {
    weight: 6,
    arbitrary: fc.record({
      what: fc.constant('back'),
      steps: fc.integer({ min: 1, max: 4 }),
      forth: fc.integer({ min: 0, max: 3 }),
    }),
  },
) as fc.Arbitrary<AnyGesture>;

/** The same gestures for the same seed. */
export function anyGestures(seed: number, count: number): AnyGesture[] {
  return fc.sample(gesture, { seed, numRuns: count });
}

interface Pixel {
  readonly x: number;
  readonly y: number;
}

/** Makes gestures in the window of an editor, and knows where on the screen things stand. */
export class AnyHand {
  readonly #editor: Editor;
  /** Pixels of the window from millimetres of the stage; null: the plan has another size since. */
  #scale: { readonly of: string; readonly at: Pixel; readonly perMm: number } | null = null;

  constructor(editor: Editor) {
    this.#editor = editor;
  }

  async make(gesture: AnyGesture): Promise<void> {
    const { page, plan } = this.#editor;
    const { mouse, keyboard } = page;
    switch (gesture.what) {
      case 'click':
        return this.#click(await this.#item(gesture.item), gesture.add);
      case 'drag':
        return this.#drag(await this.#item(gesture.item), gesture);
      case 'marquee':
        return this.#marquee(gesture);
      case 'turn':
        return this.#turn(gesture);
      case 'place':
        return this.#place(gesture);
      case 'press':
        await plan.focus();
        return keyboard.press(await this.#unlessFull(gesture.keys));
      case 'button': {
        const button = page.getByRole('button', { name: gesture.name, exact: true });
        if ((await button.count()) === 1 && (await button.isEnabled()) && !(await this.#isFull()))
          await button.click();
        return;
      }
      case 'type':
        return this.#type(gesture);
      case 'setup': {
        const tabs = page.getByRole('tab');
        return tabs.nth(Math.floor(gesture.which * (await tabs.count()))).click();
      }
      case 'back':
        await plan.focus();
        for (let i = 0; i < gesture.steps; i++) await keyboard.press('Control+z');
        for (let i = 0; i < gesture.forth; i++) await keyboard.press('Control+Shift+z');
        return mouse.up();
    }
  }

  async #click(at: Pixel | null, add: boolean): Promise<void> {
    const { mouse, keyboard } = this.#editor.page;
    if (!at) return;
    if (add) await keyboard.down('Shift');
    await mouse.click(at.x, at.y);
    if (add) await keyboard.up('Shift');
  }

  async #drag(from: Pixel | null, { by: [dx, dy], held }: AnyGesture & { what: 'drag' }): Promise<void> {
    if (!from) return;
    const { mouse, keyboard } = this.#editor.page;
    const key =
      held === 'nothing' || held === 'Escape' || (held === 'Alt' && (await this.#isFull())) ? null : held;
    await mouse.move(from.x, from.y);
    await mouse.down();
    if (key) await keyboard.down(key);
    await mouse.move(from.x + dx, from.y + dy, { steps: 2 });
    if (held === 'Escape') await keyboard.press('Escape');
    await mouse.up();
    if (key) await keyboard.up(key);
  }

  async #marquee({ from, to, add }: AnyGesture & { what: 'marquee' }): Promise<void> {
    const { mouse, keyboard } = this.#editor.page;
    const [start, end] = [await this.#inPlan(from), await this.#inPlan(to)];
    if (add) await keyboard.down('Shift');
    await mouse.move(start.x, start.y);
    await mouse.down();
    await mouse.move(end.x, end.y, { steps: 2 });
    await mouse.up();
    if (add) await keyboard.up('Shift');
  }

  /** By F and a click: towards whatever is there. */
  async #turn({ item, to }: AnyGesture & { what: 'turn' }): Promise<void> {
    const { page, plan } = this.#editor;
    const end = await this.#inPlan(to);
    await this.#click(await this.#item(item), false);
    await plan.focus();
    await page.keyboard.press('f');
    await page.mouse.move(end.x, end.y);
    await page.mouse.click(end.x, end.y);
    await page.keyboard.press('Escape');
  }

  async #place({ thing, at }: AnyGesture & { what: 'place' }): Promise<void> {
    if (await this.#isFull()) return;
    const { page, plan } = this.#editor;
    const things = page.locator('button.thing');
    const end = await this.#inPlan(at);
    await things.nth(Math.floor(thing * (await things.count()))).click();
    await page.mouse.move(end.x, end.y);
    await page.mouse.click(end.x, end.y);
    await plan.focus();
    if (await page.getByText('Click on the plan to set down').isVisible())
      await page.keyboard.press('Escape');
  }

  async #type({ field, words }: AnyGesture & { what: 'type' }): Promise<void> {
    const { page } = this.#editor;
    const input = this.#editor.field(field);
    if ((await input.count()) !== 1) return;
    await input.fill(words);
    await page.keyboard.press('Enter');
    if ((await input.count()) === 1) await input.press('Escape');
  }

  async #unlessFull(keys: string): Promise<string> {
    return ['Control+v', 'Control+d'].includes(keys) && (await this.#isFull()) ? 'Delete' : keys;
  }

  async #isFull(): Promise<boolean> {
    return (await this.#positions()).length > MOST_ITEMS;
  }

  /** Where things stand, as the list beside the plan says it. */
  #positions(): Promise<{ x: number; y: number }[]> {
    return this.#editor.page.evaluate(() =>
      [...document.querySelectorAll('[data-outline] [aria-label]')].flatMap((row) => {
        const found = /(?:(\d+) (SL|SR)|on centre), (?:(\d+) (US|DS)|at edge)/.exec(row.ariaLabel ?? '');
        if (!found) return [];
        const [, x = '0', across, y = '0', depth] = found;
        return [{ x: across === 'SR' ? -Number(x) : Number(x), y: depth === 'DS' ? -Number(y) : Number(y) }];
      }),
    );
  }

  async #item(which: number): Promise<Pixel | null> {
    const all = await this.#positions();
    const found = all[Math.floor(which * all.length)];
    if (!found) return null;
    const box = await this.#editor.box();
    const scale = await this.#calibrated(box);
    if (!scale) return null;
    const { at, perMm } = scale;
    const pixel = { x: at.x + found.x * perMm, y: at.y - found.y * perMm };
    const within =
      pixel.x > box.x && pixel.x < box.x + box.width && pixel.y > box.y && pixel.y < box.y + box.height;
    return within ? pixel : null;
  }

  async #inPlan([x, y]: Share2): Promise<Pixel> {
    const box = await this.#editor.box();
    // Clear of the tools of the view, which lie over the plan's upper edge, and of the cards at its lower one.
    return { x: box.x + box.width * (0.04 + 0.9 * x), y: box.y + 70 + (box.height - 140) * y };
  }

  /** From what the plan says of the pointer at two of its spots. */
  async #calibrated(box: { x: number; y: number; width: number; height: number }) {
    const of = JSON.stringify(box);
    if (this.#scale?.of === of) return this.#scale;
    await this.#editor.plan.focus();
    await this.#editor.page.keyboard.press('1');
    const [a, b] = [await this.#stageAt(box, 0.35), await this.#stageAt(box, 0.65)];
    if (!a || !b) return null;
    const perMm = (b.pixel.x - a.pixel.x) / (b.spot.x - a.spot.x);
    const at = { x: a.pixel.x - a.spot.x * perMm, y: a.pixel.y + a.spot.y * perMm };
    this.#scale = { of, at, perMm };
    return this.#scale;
  }

  async #stageAt(box: { x: number; y: number; width: number; height: number }, share: number) {
    const { page } = this.#editor;
    const pixel = { x: box.x + box.width * share, y: box.y + box.height * 0.45 };
    await page.mouse.move(pixel.x, pixel.y);
    await this.#editor.settled();
    const words = await page.locator('[data-pointer]').innerText();
    const found = /(?:(\d+) (SL|SR)|on centre), (?:(\d+) (US|DS)|at edge)/.exec(words);
    // A card lies over the plan there.
    if (!found) return null;
    const [, x = '0', across, y = '0', depth] = found;
    return {
      pixel,
      spot: { x: across === 'SR' ? -Number(x) : Number(x), y: depth === 'DS' ? -Number(y) : Number(y) },
    };
  }
}
