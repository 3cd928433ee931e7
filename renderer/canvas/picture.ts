/**
 * The drawing of the plan for the screen: the very primitives that go on paper, at a scale near the one on the
 * screen, so that lines and letters keep their paper size. The ground is drawn anew only when something of it changed.
 */

import type { Report } from '#model/checks/report.ts';
import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { Units } from '#model/document/measures.ts';
import {
  drawAnnotations,
  drawGround,
  drawItems,
  drawOverlays,
  planContext,
  type PlanContext,
  type PlanLayers,
} from '#model/drawing/plan.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { GroupPrimitive, MeasureText, Primitive } from '#model/drawing/primitives.ts';
import { PIXELS_PER_MILLIMETRE } from './camera.ts';

export interface PictureRequest {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly report: Report | null;
  readonly paperScale: number;
  readonly theme: 'light' | 'dark';
  readonly units: Units;
  readonly layers: PlanLayers;
}

const GROUND_KINDS: readonly string[] = ['platform', 'door', 'seatBlock', 'place'];

export class Picture {
  readonly #measure: MeasureText;
  #ground: readonly GroupPrimitive[] = [];
  #groundKey: readonly unknown[] = [];

  constructor(measure: MeasureText) {
    this.#measure = measure;
  }

  draw(request: PictureRequest): Primitive[] {
    const context = planContext({
      ...request,
      scale: request.paperScale,
      origin: { x: 0, y: 0 },
      palette: PALETTES[request.theme],
      measure: this.#measure,
      area: null,
    });
    const ground = this.#groundOf(context, request);
    const items = drawItems(context);
    const { below, above } = drawAnnotations(context, [...ground, ...items]);
    return [...ground, ...drawOverlays(context), ...below, ...items, ...above];
  }

  #groundOf(context: PlanContext, request: PictureRequest): readonly GroupPrimitive[] {
    const key = groundKey(request);
    const same =
      key.length === this.#groundKey.length && key.every((part, index) => part === this.#groundKey[index]);
    if (!same) {
      this.#ground = drawGround(context);
      this.#groundKey = key;
    }
    return this.#ground;
  }
}

/** Everything that the ground depends on; records are immutable, so sameness is identity. */
function groundKey({ document, report, paperScale, theme, units, layers }: PictureRequest): unknown[] {
  const records = [...document.records.values()].filter(({ kind }) => GROUND_KINDS.includes(kind));
  const { seats, sightBands, grid } = layers;
  const shares = sightBands ? report?.sight.visible : null;
  return [paperScale, theme, units, seats, grid, sightBands?.player, shares, ...records];
}

/** Steps of the drawing's scale: letters are between these and a fifth larger or smaller than on paper. */
const STEP = 1.25;

/** Letters on a screen are read from farther away than on a sheet in the hand. */
const ENLARGED = 1.12;

/** The scale to draw at, for a camera that shows `scale` pixels a millimetre. */
export function paperScaleFor(scale: number): number {
  const exact = (PIXELS_PER_MILLIMETRE * ENLARGED) / scale;
  return STEP ** Math.round(Math.log(exact) / Math.log(STEP));
}
