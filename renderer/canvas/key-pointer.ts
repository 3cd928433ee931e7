/** A pointer that the arrow keys lead, for tools that take points: whatever can be clicked can be given without a mouse. */

import { formatPosition } from '#model/document/measures.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { STEPS } from '../app/steps.ts';
import type { Editor } from '../state/editor.svelte.ts';
import { holds, toScreen, visibleExtent } from './camera.ts';
import type { PointerAt } from './gestures/gesture.ts';

const WAYS: Readonly<Record<string, Vec2>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};

/** With Shift one press goes so many coarse steps. */
const FAR = 10;

export type KeyPress = Pick<KeyboardEvent, 'key' | 'shiftKey' | 'ctrlKey' | 'metaKey' | 'altKey' | 'repeat'>;

export class KeyPointer {
  readonly #editor: Editor;
  /** Null: the mouse leads, or nothing has yet. */
  #spot: Vec2 | null = null;

  constructor(editor: Editor) {
    this.#editor = editor;
  }

  /** Whether the key was for it: an arrow leads the tool in hand on, the space bar clicks there. */
  press(press: KeyPress): boolean {
    const { tool } = this.#editor.view;
    if (!tool || press.altKey) return false;
    const way = WAYS[press.key];
    if (way) this.#lead(way, press);
    // Where the mouse leads, the space bar moves the view.
    else if (press.key === ' ' && this.#spot) this.#click(press);
    else return false;
    return true;
  }

  /** The mouse has moved, or the tool has gone. */
  forget(): void {
    this.#spot = null;
  }

  #lead(way: Vec2, press: KeyPress): void {
    const { view, units } = this.#editor;
    const { fine, coarse } = STEPS[units];
    const step = press.ctrlKey || press.metaKey ? fine : press.shiftKey ? FAR * coarse : coarse;
    const from = this.#spot ?? view.pointer ?? view.camera.centre;
    const spot =
      way.x === 0
        ? { x: from.x, y: stepped(from.y, way.y * step) }
        : { x: stepped(from.x, way.x * step), y: from.y };
    this.#spot = spot;
    if (!holds(visibleExtent(view.camera, view.size), spot)) view.camera = { ...view.camera, centre: spot };
    view.tool?.hover(this.#at(spot, press));
    const caption = view.tool?.marks.caption ?? '';
    const where = formatPosition(view.tool?.marks.next ?? spot, units);
    this.#editor.announce([where, caption].filter(Boolean).join(', '));
  }

  #click(press: KeyPress): void {
    const { view } = this.#editor;
    if (this.#spot && !press.repeat) view.tool?.click(this.#at(this.#spot, press));
    if (!view.tool) this.forget();
  }

  #at(spot: Vec2, { ctrlKey, metaKey }: KeyPress): PointerAt {
    const { camera, size } = this.#editor.view;
    const pixel = toScreen(camera, size, spot);
    return { pixel, spot, add: false, free: ctrlKey || metaKey, copy: false, control: ctrlKey };
  }
}

/** To round figures from the first step on, wherever it began; across its way it keeps its place. */
function stepped(from: number, by: number): number {
  const step = Math.abs(by);
  return Math.round((from + by) / step) * step || 0;
}
