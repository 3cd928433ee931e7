/**
 * Traces an outline corner after corner. Each settles on what is drawn underneath, square to the edge before, or at a
 * round length; Ctrl or Cmd sets it where the pointer is.
 */

import { formatLength } from '#model/document/measures.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { settleTrace, type TracedSpot } from '#model/underlay/tracing.ts';
import { text } from '../../app/text.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { roundFigureFor } from '../snapping.ts';
import type { PointerAt } from './gesture.ts';
import { nearUnderlays } from './near-underlays.ts';
import { CATCH_PIXELS } from './pick-points.svelte.ts';
import type { PlanTool, ToolMarks } from './tool.ts';

/** What is wrong with the outline, in words; null: it is taken, and the tool ends. */
export type TakeOutline = (corners: readonly Vec2[]) => string | null;

export class TraceOutline implements PlanTool {
  readonly #editor: Editor;
  readonly #take: TakeOutline;
  #corners: readonly Vec2[] = $state.raw([]);
  #next: TracedSpot | null = $state.raw(null);
  #problem: string | null = $state(null);

  constructor(editor: Editor, take: TakeOutline) {
    this.#editor = editor;
    this.#take = take;
  }

  readonly words = $derived.by(() => this.#problem ?? text.underlay.tracing(this.#corners.length));

  readonly marks: ToolMarks = $derived.by(() => ({
    points: this.#corners,
    next: this.#next,
    joined: true,
    caption: this.#next ? this.#captionOf(this.#next) : '',
  }));

  hover(at: PointerAt): void {
    this.#next = this.#settled(at);
  }

  click(at: PointerAt): void {
    const spot = this.#settled(at);
    this.#problem = null;
    const last = this.#corners.at(-1);
    if (spot.reason === 'close') return this.#finish();
    // The second click of a double one falls on the corner that the first has set.
    if (last && Math.hypot(last.x - spot.x, last.y - spot.y) < this.#within / 2) return;
    const told = [text.platform.corner(this.#corners.length), this.#captionOf(spot)];
    this.#corners = [...this.#corners, { x: spot.x, y: spot.y }];
    this.#editor.announce(told.filter(Boolean).join(': '));
  }

  double(): void {
    this.#finish();
  }

  key(key: string): boolean {
    if (key === 'Enter') this.#finish();
    else if (key === 'Backspace') this.#takeBack();
    else return false;
    return true;
  }

  leave(): void {
    this.#next = null;
  }

  cancel(): void {
    this.#editor.view.tool = null;
  }

  #takeBack(): void {
    this.#problem = null;
    this.#corners = this.#corners.slice(0, -1);
  }

  #finish(): void {
    if (this.#corners.length < 3) return void (this.#problem = text.underlay.tooFewCorners);
    this.#problem = this.#take(this.#corners);
    if (this.#problem === null) this.#editor.view.tool = null;
  }

  #settled({ spot, free }: PointerAt): TracedSpot {
    const within = this.#within;
    const document = this.#editor.session.document;
    if (free) return { ...spot, reason: 'free' };
    return settleTrace({
      wanted: spot,
      corners: this.#corners,
      near: (at) => nearUnderlays(document, at, within),
      within,
      roundTo: roundFigureFor(this.#editor.view.camera.scale, this.#editor.units),
    });
  }

  get #within(): number {
    return CATCH_PIXELS / this.#editor.view.camera.scale;
  }

  /** "4200 mm, square". */
  #captionOf(spot: TracedSpot): string {
    const last = this.#corners.at(-1);
    const length = last && formatLength(Math.hypot(spot.x - last.x, spot.y - last.y), this.#editor.units);
    return [length, text.underlay.caught[spot.reason]].filter(Boolean).join(', ');
  }
}
