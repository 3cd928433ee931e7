/**
 * The layer of the underlays. It lies over the ground, whose floor would hide it, and lets it through: on light paper what
 * is white in it counts as nothing, on dark paper it is shown as a negative. Slow ones are moved as a picture meanwhile.
 */

import Konva from 'konva/lib/Core.js';
import type { Layer } from 'konva/lib/Layer.js';
import type { Underlay } from '#model/document/records.ts';
import { canStretch, stretch, type Look } from './stretching.ts';
import { paintUnderlays } from './underlay-painting.ts';

/** More than this, and a step of the camera would miss a frame. */
const QUICK_MS = 8;
const REST_MS = 120;

export class UnderlayLayer {
  readonly layer: Layer;
  #underlays: readonly Underlay[] = [];
  #look: Look | null = null;
  #painted: Look | null = null;
  #cost = 0;
  #frame = 0;
  #rest: ReturnType<typeof setTimeout> | null = null;

  constructor() {
    this.layer = new Konva.Layer({ listening: false });
    this.layer.add(new Konva.Shape({ sceneFunc: (context) => this.#put(context._context) }));
  }

  /** Those that are shown, the lowest first. */
  show(underlays: readonly Underlay[], theme: 'light' | 'dark'): void {
    const { style } = this.layer.getNativeCanvasElement();
    style.mixBlendMode = theme === 'light' ? 'multiply' : 'screen';
    style.filter = theme === 'light' ? '' : 'invert(1)';
    const isSame =
      underlays.length === this.#underlays.length &&
      underlays.every((each, at) => each === this.#underlays[at]);
    if (isSame) return;
    this.#underlays = underlays;
    this.#paintSoon();
  }

  look(look: Look): void {
    this.#look = look;
    if (this.#underlays.length === 0) return;
    if (this.#cost <= QUICK_MS || !this.#painted || !canStretch(this.#painted, look))
      return this.#paintSoon();
    stretch(this.layer.getNativeCanvasElement(), this.#painted, look);
    if (this.#rest !== null) clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.#paintSoon(), REST_MS);
  }

  /** Drops what was to be painted later. */
  stop(): void {
    cancelAnimationFrame(this.#frame);
    if (this.#rest !== null) clearTimeout(this.#rest);
  }

  #paintSoon(): void {
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(() => this.#paint());
  }

  #paint(): void {
    if (!this.#look) return;
    const begun = performance.now();
    this.layer.draw();
    this.layer.getNativeCanvasElement().style.transform = '';
    this.#painted = this.#look;
    this.#cost = performance.now() - begun;
  }

  #put(pen: CanvasRenderingContext2D): void {
    if (this.#look) paintUnderlays(pen, this.#underlays, this.#look, () => this.#paintSoon());
  }
}
