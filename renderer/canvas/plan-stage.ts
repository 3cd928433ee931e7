/**
 * The Konva stage of the plan: the ground, underlays, what stands on it, and the overlay, each a layer. Pointer events are handled
 * outside, from the items' outlines.
 */

import Konva from 'konva/lib/Core.js';
import type { Layer } from 'konva/lib/Layer.js';
import type { Stage } from 'konva/lib/Stage.js';
import type { ViewSize } from './camera.ts';
import type { PaintedPlan, PlanPart } from '../workers/painted-plan.ts';
import { PaintedLayer, type Look } from './painted-layer.ts';
import type { PictureParts } from './picture.ts';
import { UnderlayLayer } from './underlay-layer.ts';

/** Paints in screen pixels above the drawing. */
export type OverlayPainter = (context: CanvasRenderingContext2D) => void;

export class PlanStage {
  readonly #stage: Stage;
  readonly #layers = { ground: new PaintedLayer(), items: new PaintedLayer() };
  readonly underlays = new UnderlayLayer();
  readonly #overlay: Layer;
  #shownGround: PictureParts['ground'] | null = null;
  #paintOverlay: OverlayPainter = () => undefined;

  constructor(container: HTMLDivElement) {
    this.#stage = new Konva.Stage({ container, width: 1, height: 1, listening: false });
    this.#overlay = new Konva.Layer({ listening: false });
    this.#overlay.add(new Konva.Shape({ sceneFunc: (context) => this.#paintOverlay(context._context) }));
    const { ground, items } = this.#layers;
    this.#stage.add(ground.layer, this.underlays.layer, items.layer, this.#overlay);
  }

  resize({ width, height }: ViewSize): void {
    this.#stage.size({ width, height });
  }

  look(look: Look): void {
    this.#layers.ground.look(look);
    this.#layers.items.look(look);
    this.underlays.look(look);
  }

  draw({ ground, items, paperScale }: PictureParts, look: Look): void {
    if (ground !== this.#shownGround) this.#layers.ground.draw({ primitives: ground, paperScale }, look);
    this.#shownGround = ground;
    this.#layers.items.draw({ primitives: items, paperScale }, look);
  }

  /** Shows a part as a worker has painted it. */
  show(part: PlanPart, { bitmap, look }: PaintedPlan): void {
    this.#shownGround = null;
    this.#layers[part].show(bitmap, look);
  }

  clear(): void {
    this.#shownGround = null;
    this.#layers.ground.clear();
    this.#layers.items.clear();
  }

  drawOverlay(painter: OverlayPainter): void {
    this.#paintOverlay = painter;
    this.#overlay.batchDraw();
  }

  destroy(): void {
    this.#layers.ground.stop();
    this.#layers.items.stop();
    this.underlays.stop();
    this.#stage.destroy();
  }
}
