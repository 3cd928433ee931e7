/** Takes so many points, on corners and lines of the underlays where they are near. */

import type { Vec2 } from '#model/geometry/frame.ts';
import { text } from '../../app/text.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import type { PointerAt } from './gesture.ts';
import { nearUnderlays } from './near-underlays.ts';
import type { PlanTool, ToolMarks } from './tool.ts';

/** Lines catch within this many pixels. */
export const CATCH_PIXELS = 9;

export interface Picking {
  /** For each point, what to do. */
  readonly words: readonly [string, ...string[]];
  /** The points; null: the user changed his mind. */
  readonly done: (points: readonly Vec2[] | null) => void;
}

export class PickPoints implements PlanTool {
  readonly #editor: Editor;
  readonly #picking: Picking;
  #points: readonly Vec2[] = $state.raw([]);
  #next: { readonly spot: Vec2; readonly caption: string } | null = $state.raw(null);

  constructor(editor: Editor, picking: Picking) {
    this.#editor = editor;
    this.#picking = picking;
  }

  readonly words = $derived.by(() => this.#picking.words[this.#points.length] ?? '');

  readonly marks: ToolMarks = $derived.by(() => ({
    points: this.#points,
    next: this.#next?.spot ?? null,
    joined: true,
    caption: this.#next?.caption ?? '',
  }));

  hover(at: PointerAt): void {
    this.#next = this.#settled(at);
  }

  click(at: PointerAt): void {
    const { spot } = this.#settled(at);
    const last = this.#points.at(-1);
    if (last && last.x === spot.x && last.y === spot.y) return;
    this.#points = [...this.#points, spot];
    if (this.#points.length === this.#picking.words.length) this.#end(this.#points);
  }

  double(): void {
    // The second click of the two set its point already.
  }

  key(key: string): boolean {
    if (key !== 'Backspace') return false;
    this.#points = this.#points.slice(0, -1);
    return true;
  }

  leave(): void {
    this.#next = null;
  }

  cancel(): void {
    this.#end(null);
  }

  #settled({ spot, free }: PointerAt) {
    const { session, view } = this.#editor;
    const near = free ? null : nearUnderlays(session.document, spot, CATCH_PIXELS / view.camera.scale);
    return { spot: near?.at ?? spot, caption: near ? text.underlay.caught[near.what] : '' };
  }

  #end(points: readonly Vec2[] | null): void {
    this.#editor.view.tool = null;
    this.#picking.done(points);
  }
}
