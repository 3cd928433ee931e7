/** The plan of a large concert, painted in a worker. The window gets the finished picture and only has to show it. */

import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { Units } from '#model/document/measures.ts';
import { seatPoints } from '#model/checks/scene/house.ts';
import type { PlanLayers, PlanReport } from '#model/drawing/plan.ts';
import type { Box, Primitive } from '#model/drawing/primitives.ts';
import { frameOnPaper, toScreen, visibleExtent } from '#model/drawing/screen/framing.ts';
import type { Extent } from '../canvas/camera.ts';
import type { Look } from '../canvas/painted-layer.ts';
import { canvasMeasure, paint } from '../canvas/painter.ts';
import { Picture, type PictureRequest } from '../canvas/picture.ts';
import { drawingFaces } from './drawing-faces.ts';

export type PlanPart = 'ground' | 'items';

export interface PlanQuestion {
  readonly part: PlanPart;
  readonly setup: Id<'setup'>;
  /** Without the places of the house, which the worker knows from its document. */
  readonly report: ToldReport | null;
  readonly paperScale: number;
  readonly theme: 'light' | 'dark';
  readonly units: Units;
  readonly layers: PlanLayers;
  readonly hurried: boolean;
  readonly look: Look;
  /** Pixels of the device for each of the window's. */
  readonly density: number;
}

export interface ToldReport extends Omit<PlanReport, 'sight'> {
  /** Null: the same as in the question before. */
  readonly visible: Float64Array | null;
  /** Ids of the players, in the order of the shares. */
  readonly targets: readonly string[];
}

/** A part of the plan as it is seen with `look`. */
export interface PaintedPlan {
  readonly bitmap: ImageBitmap;
  readonly look: Look;
  /** Where something is written in it, in mm of the stage. */
  readonly written: readonly Extent[];
}

export class PlanPainter {
  readonly #canvas = new OffscreenCanvas(1, 1);
  #picture: Promise<Picture> | null = null;
  #visible: Float64Array = new Float64Array();
  #shown: { readonly primitives: readonly Primitive[]; readonly question: PlanQuestion } | null = null;

  /** Null: it looks as it did when it was asked for last. */
  async paint(document: Document, question: PlanQuestion): Promise<PaintedPlan | null> {
    const picture = await (this.#picture ??= this.#makePicture());
    this.#visible = question.report?.visible ?? this.#visible;
    const request = requestOf(document, question, this.#visible);
    const primitives = question.part === 'ground' ? picture.drawGround(request) : picture.drawItems(request);
    const before = this.#shown;
    if (before?.primitives === primitives && isSameLook(before.question, question)) return null;
    this.#shown = { primitives, question };
    const written = picture.writtenIn(primitives, question.paperScale);
    return { bitmap: this.#painted(primitives, question), look: question.look, written };
  }

  async #makePicture(): Promise<Picture> {
    await drawingFaces();
    return new Picture(canvasMeasure(this.#pen));
  }

  get #pen(): OffscreenCanvasRenderingContext2D {
    const pen = this.#canvas.getContext('2d');
    if (!pen) throw new Error('this browser has no canvas');
    return pen;
  }

  #painted(primitives: readonly Primitive[], { look, density, paperScale }: PlanQuestion): ImageBitmap {
    const { camera, view } = look;
    this.#canvas.width = Math.max(1, Math.round(view.width * density));
    this.#canvas.height = Math.max(1, Math.round(view.height * density));
    const pen = this.#pen;
    const origin = toScreen(camera, view, { x: 0, y: 0 });
    const enlarged = camera.scale * paperScale * density;
    pen.setTransform(enlarged, 0, 0, enlarged, origin.x * density, origin.y * density);
    paint(pen, primitives);
    return this.#canvas.transferToImageBitmap();
  }
}

/** What stands on the platform keeps clear of the words of the ground, not of the seats: it need not draw them. */
function requestOf(document: Document, question: PlanQuestion, visible: Float64Array): PictureRequest {
  const { part, report: told, layers, look, paperScale } = question;
  const report = told && {
    reach: told.reach,
    routes: told.routes,
    sight: {
      scene: { seats: seatPoints(document), targets: told.targets.map((id) => ({ id })) },
      visible,
    },
  };
  if (part === 'ground')
    return {
      ...question,
      document,
      report,
      frame: frameOnPaper(visibleExtent(look.camera, look.view), paperScale),
    };
  return { ...question, document, report, layers: { ...layers, sightBands: null }, frame: NOWHERE };
}

const NOWHERE: Box = { x: Infinity, y: Infinity, width: 0, height: 0 };

function isSameLook(a: PlanQuestion, b: PlanQuestion): boolean {
  return (
    a.density === b.density &&
    a.paperScale === b.paperScale &&
    a.look.camera.scale === b.look.camera.scale &&
    a.look.camera.centre.x === b.look.camera.centre.x &&
    a.look.camera.centre.y === b.look.camera.centre.y &&
    a.look.view.width === b.look.view.width &&
    a.look.view.height === b.look.view.height
  );
}
