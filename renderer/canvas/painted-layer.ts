/**
 * One layer of the plan: primitives, one Konva shape for each thing drawn, or a picture that a worker has painted. While
 * a layer is quick to paint it is painted anew for every step of the camera. A slow one, and a worker's, is moved and
 * stretched as a picture until it is painted anew, so that panning a full house never waits for twenty thousand seats.
 */

import Konva from 'konva/lib/Core.js';
import type { Layer } from 'konva/lib/Layer.js';
import type { Shape } from 'konva/lib/Shape.js';
import type { Primitive } from '#model/drawing/primitives.ts';
import { toScreen } from './camera.ts';
import { paint } from './painter.ts';
import { partsOf } from './parts.ts';
import { canStretch, stretch, type Look } from './stretching.ts';

export type { Look } from './stretching.ts';

export interface Drawn {
  readonly primitives: readonly Primitive[];
  /** The denominator of the scale that they are drawn at, about the stage's origin. */
  readonly paperScale: number;
}

/** More than this, and a step of the camera would miss a frame. */
const QUICK_MS = 10;
const REST_MS = 120;

export class PaintedLayer {
  readonly layer: Layer;
  readonly #pool: Shape[] = [];
  readonly #picture: Shape;
  /** Painted by a worker; null: the primitives are shown. */
  #bitmap: ImageBitmap | null = null;
  #parts: readonly (readonly Primitive[])[] = [];
  #paperScale = 1;
  #look: Look | null = null;
  /** The look that is on the canvas. */
  #painted: Look | null = null;
  #cost = 0;
  #frame = 0;
  #rest: ReturnType<typeof setTimeout> | null = null;

  constructor() {
    this.layer = new Konva.Layer({ listening: false });
    this.#picture = new Konva.Shape({ sceneFunc: (context) => this.#putBitmap(context._context) });
    this.layer.add(this.#picture);
  }

  /** Shows what a worker painted for a look, which may be an older one than the window has by now. */
  show(bitmap: ImageBitmap, painted: Look): void {
    this.#clearBitmap();
    this.#bitmap = bitmap;
    this.#parts = [];
    for (const shape of this.#pool) shape.visible(false);
    this.stop();
    this.layer.scale({ x: 1, y: 1 });
    this.layer.position({ x: 0, y: 0 });
    this.#painted = painted;
    this.layer.draw();
    this.#stretchTo(this.#look ?? painted);
  }

  /** Shows nothing. */
  clear(): void {
    this.#clearBitmap();
    this.#parts = [];
    for (const shape of this.#pool) shape.visible(false);
    this.layer.draw();
  }

  #clearBitmap(): void {
    this.#bitmap?.close();
    this.#bitmap = null;
  }

  #putBitmap(context: CanvasRenderingContext2D): void {
    const view = this.#painted?.view;
    if (this.#bitmap && view) context.drawImage(this.#bitmap, 0, 0, view.width, view.height);
  }

  /** Paints at once; to be called in a frame. */
  draw({ primitives, paperScale }: Drawn, look: Look): void {
    this.#clearBitmap();
    this.#parts = partsOf(primitives);
    this.#paperScale = paperScale;
    while (this.#pool.length < this.#parts.length) this.#addShape();
    this.#pool.forEach((shape, index) => shape.visible(index < this.#parts.length));
    this.#look = look;
    this.stop();
    this.#paint();
  }

  look(look: Look): void {
    this.#look = look;
    if (this.#bitmap) return this.#stretchTo(look);
    if (this.#cost <= QUICK_MS || !canStretch(this.#painted, look)) return this.#paintSoon();
    this.#stretchTo(look);
    if (this.#rest !== null) clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.#paintSoon(), REST_MS);
  }

  /** Drops what was to be painted later. */
  stop(): void {
    cancelAnimationFrame(this.#frame);
    if (this.#rest !== null) clearTimeout(this.#rest);
  }

  #addShape(): void {
    const index = this.#pool.length;
    const shape = new Konva.Shape({
      sceneFunc: (context) => paint(context._context, this.#parts[index] ?? []),
    });
    this.#pool.push(shape);
    this.layer.add(shape);
  }

  #paintSoon(): void {
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(() => this.#paint());
  }

  #paint(): void {
    const look = this.#look;
    if (!look || this.#bitmap) return;
    const begun = performance.now();
    const enlarged = look.camera.scale * this.#paperScale;
    this.layer.scale({ x: enlarged, y: enlarged });
    this.layer.position(toScreen(look.camera, look.view, { x: 0, y: 0 }));
    this.layer.draw();
    this.layer.getNativeCanvasElement().style.transform = '';
    this.#painted = look;
    this.#cost = performance.now() - begun;
  }

  #stretchTo(look: Look): void {
    if (this.#painted) stretch(this.layer.getNativeCanvasElement(), this.#painted, look);
  }
}
