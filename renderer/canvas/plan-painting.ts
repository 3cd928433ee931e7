/**
 * Leads the painting of the plan. A usual concert is drawn in the window between two frames; a large one in workers, and
 * whatever they have painted last is moved with the camera until the next comes.
 */

import type { Report } from '#model/checks/report.ts';
import type { Drawings } from '../state/drawings.ts';
import { latestWins } from '../workers/latest-wins.ts';
import type { PaintedPlan, PlanPart } from '../workers/painted-plan.ts';
import type { Extent } from './camera.ts';
import { isLarge } from './large-plan.ts';
import type { Look } from './painted-layer.ts';
import type { Picture, PictureParts, PictureRequest } from './picture.ts';
import type { PlanStage } from './plan-stage.ts';

export interface PaintingRequest extends PictureRequest {
  readonly report: Report | null;
}

export interface PaintingParts {
  readonly stage: Pick<PlanStage, 'draw' | 'show' | 'clear' | 'look'>;
  readonly picture: Picture;
  readonly drawings: Pick<Drawings, 'plan'>;
  /** Called when all of the drawing is on the sheet, again and again. */
  readonly seen: () => void;
  readonly failed: (error: unknown) => void;
  /** Told where a part of the plan has words, in mm of the stage; not while a gesture lasts. */
  readonly wrote: (part: PlanPart, words: readonly Extent[]) => void;
}

/** Whole drawings of a large concert wait until the hand and the camera rest for so long. */
export const REST_MS = 150;

interface Wanted {
  readonly request: PaintingRequest;
  readonly look: Look;
}

export class PlanPainting {
  readonly #parts: PaintingParts;
  readonly #ask: Readonly<Record<PlanPart, (wanted: Wanted) => Promise<PaintedPlan | null>>>;
  #request: PaintingRequest | null = null;
  #look: Look | null = null;
  #rest: ReturnType<typeof setTimeout> | null = null;
  #toldGround: PictureParts['ground'] | null = null;
  /** Counts the documents opened: what was asked of another one comes too late. */
  #openings = 0;
  /** What a worker has painted of the document. */
  readonly #shown = new Set<PlanPart>();

  constructor(parts: PaintingParts) {
    this.#parts = parts;
    this.#ask = { ground: this.#asking('ground'), items: this.#asking('items') };
  }

  /** Whether all of it can be drawn anew within a frame. */
  get isQuick(): boolean {
    return !this.#isLarge && this.#parts.picture.isQuick;
  }

  /** To be called in a frame. */
  draw(request: PaintingRequest, look: Look): void {
    this.#request = request;
    this.#look = look;
    if (!this.#isLarge) return this.#drawHere(request, look);
    this.#paintBeside({ request: { ...request, hurried: true }, look });
    this.#whenAtRest();
  }

  #drawHere(request: PaintingRequest, look: Look): void {
    const { picture, stage, seen, wrote } = this.#parts;
    const { ground, items, paperScale } = picture.draw(request);
    stage.draw({ ground, items, paperScale }, look);
    if (look.view.width > 0) seen();
    if (request.hurried) return;
    if (ground !== this.#toldGround) wrote('ground', picture.writtenIn(ground, paperScale));
    this.#toldGround = ground;
    wrote('items', picture.writtenIn(items, paperScale));
  }

  look(look: Look): void {
    this.#look = look;
    this.#parts.stage.look(look);
    if (this.#isLarge) this.#whenAtRest();
  }

  /** Another document was opened: nothing of the one before may show. */
  forget(): void {
    this.#openings += 1;
    this.#request = null;
    this.#shown.clear();
    this.stop();
    this.#parts.stage.clear();
  }

  stop(): void {
    if (this.#rest !== null) clearTimeout(this.#rest);
  }

  get #isLarge(): boolean {
    return this.#request !== null && isLarge(this.#request.document, this.#request.setup);
  }

  #whenAtRest(): void {
    this.stop();
    this.#rest = setTimeout(() => {
      const [request, look] = [this.#request, this.#look];
      if (request && look) this.#paintBeside({ request, look });
    }, REST_MS);
  }

  #paintBeside(wanted: Wanted): void {
    const openings = this.#openings;
    for (const part of ['ground', 'items'] as const) {
      const ask = this.#ask[part];
      ask(wanted)
        .then((painted) => {
          if (!painted) return;
          if (openings !== this.#openings || !this.#isLarge) return painted.bitmap.close();
          this.#toldGround = null;
          this.#show(part, painted);
          this.#parts.wrote(part, painted.written);
        })
        .catch(this.#parts.failed);
    }
  }

  #show(part: PlanPart, painted: PaintedPlan): void {
    this.#parts.stage.show(part, painted);
    this.#shown.add(part);
    if (this.#shown.size === 2) this.#parts.seen();
  }

  #asking(part: PlanPart): (wanted: Wanted) => Promise<PaintedPlan | null> {
    return latestWins(({ request, look }: Wanted) => {
      const { document, ...asked } = request;
      return this.#parts.drawings.plan(document, part, { ...asked, look, density: devicePixelRatio });
    });
  }
}
