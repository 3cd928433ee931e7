/** Pictures of what somebody sees, painted in a worker, which remembers them to say what is at a spot. */

import type { Document } from '#model/document/document.ts';
import { subjectAt } from '#model/drawing/view/view-drawing.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { canvasMeasure, paint } from '../canvas/painter.ts';
import { drawingFaces } from './drawing-faces.ts';
import { descriptionsIn, drawnView, type DrawnView } from './drawn-view.ts';
import type { Picture, PictureQuestion } from './protocol.ts';

/** A small picture on a panel and a large one over it are the most that show at a time. */
const REMEMBERED = 2;

export class ViewPainter {
  readonly #canvas = new OffscreenCanvas(1, 1);
  readonly #drawn = new Map<number, DrawnView>();
  #numbers = 0;

  async paint(document: Document, question: PictureQuestion): Promise<Picture | null> {
    await drawingFaces();
    const drawn = drawnView(document, question, canvasMeasure(this.#pen));
    if (!drawn) return null;
    const number = ++this.#numbers;
    this.#drawn.set(number, drawn);
    this.#drawn.delete(number - REMEMBERED);
    const { label, width, height, description } = drawn;
    return { number, label, width, height, description, bitmap: this.#painted(drawn, question.pixels) };
  }

  /** `at` in millimetres of the drawing's paper. */
  pointed(number: number, at: Vec2): string | null {
    const drawing = this.#drawn.get(number)?.drawing ?? [];
    const subject = subjectAt(drawing, at);
    return subject === null ? null : (descriptionsIn(drawing).get(subject) ?? null);
  }

  get #pen(): OffscreenCanvasRenderingContext2D {
    const pen = this.#canvas.getContext('2d');
    if (!pen) throw new Error('this browser has no canvas');
    return pen;
  }

  #painted({ drawing, width, height }: DrawnView, pixels: number): ImageBitmap {
    this.#canvas.width = Math.max(1, Math.round(width * pixels));
    this.#canvas.height = Math.max(1, Math.round(height * pixels));
    const pen = this.#pen;
    pen.setTransform(pixels, 0, 0, pixels, 0, 0);
    paint(pen, drawing);
    return this.#canvas.transferToImageBitmap();
  }
}
