/**
 * The Konva stage of the plan: the drawing below, the overlay above. One shape for each thing drawn (a subject, or
 * what lies between two subjects); pointer events are handled outside, from the items' outlines.
 */

import Konva from 'konva/lib/Core.js';
import type { Layer } from 'konva/lib/Layer.js';
import type { Shape } from 'konva/lib/Shape.js';
import type { Stage } from 'konva/lib/Stage.js';
import type { Primitive } from '#model/drawing/primitives.ts';
import { toScreen, type Camera, type ViewSize } from './camera.ts';
import { paint } from './painter.ts';

/** Paints in screen pixels above the drawing. */
export type OverlayPainter = (context: CanvasRenderingContext2D) => void;

export class PlanStage {
  readonly #stage: Stage;
  readonly #drawing: Layer;
  readonly #overlay: Layer;
  readonly #pool: Shape[] = [];
  #parts: readonly (readonly Primitive[])[] = [];
  #paintOverlay: OverlayPainter = () => undefined;

  constructor(container: HTMLDivElement) {
    this.#stage = new Konva.Stage({ container, width: 1, height: 1, listening: false });
    this.#drawing = new Konva.Layer({ listening: false });
    this.#overlay = new Konva.Layer({ listening: false });
    this.#overlay.add(new Konva.Shape({ sceneFunc: (context) => this.#paintOverlay(context._context) }));
    this.#stage.add(this.#drawing, this.#overlay);
  }

  resize({ width, height }: ViewSize): void {
    this.#stage.size({ width, height });
  }

  /** `paperScale` is the denominator of the scale that the primitives are drawn at, about the stage's origin. */
  look(camera: Camera, view: ViewSize, paperScale: number): void {
    const enlarged = camera.scale * paperScale;
    this.#drawing.scale({ x: enlarged, y: enlarged });
    this.#drawing.position(toScreen(camera, view, { x: 0, y: 0 }));
    this.#drawing.batchDraw();
  }

  draw(primitives: readonly Primitive[]): void {
    this.#parts = partsOf(primitives);
    while (this.#pool.length < this.#parts.length) this.#pool.push(this.#newShape(this.#pool.length));
    this.#pool.forEach((shape, index) => shape.visible(index < this.#parts.length));
    this.#drawing.batchDraw();
  }

  drawOverlay(painter: OverlayPainter): void {
    this.#paintOverlay = painter;
    this.#overlay.batchDraw();
  }

  destroy(): void {
    this.#stage.destroy();
  }

  #newShape(index: number): Shape {
    const shape = new Konva.Shape({
      sceneFunc: (context) => paint(context._context, this.#parts[index] ?? []),
    });
    this.#drawing.add(shape);
    return shape;
  }
}

/** Runs of primitives that one shape draws: each subject by itself, and everything between two subjects. */
export function partsOf(primitives: readonly Primitive[]): Primitive[][] {
  const parts: Primitive[][] = [];
  let between: Primitive[] | null = null;
  for (const primitive of primitives) {
    if (primitive.kind === 'group' && primitive.subject !== undefined) {
      parts.push([primitive]);
      between = null;
    } else if (between) between.push(primitive);
    else parts.push((between = [primitive]));
  }
  return parts;
}
