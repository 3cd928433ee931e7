/** What is drawn beside the window, each kind by a worker of its own, so that none waits for another. */

import type { Report } from '#model/checks/report.ts';
import type { Document } from '#model/document/document.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import type { PaintedPlan, PlanPart, PlanQuestion, ToldReport } from '../workers/painted-plan.ts';
import type { Picture, PictureQuestion } from '../workers/protocol.ts';
import { startDrawingWorker, WorkerClient } from '../workers/worker-client.ts';

export class Drawings {
  readonly #plans = { ground: new PlanClient(), items: new PlanClient() };
  readonly #pictures = new WorkerClient(startDrawingWorker);

  plan(document: Document, part: PlanPart, ask: PlanAsked): Promise<PaintedPlan | null> {
    return this.#plans[part].ask(document, part, ask);
  }

  picture(document: Document, question: PictureQuestion): Promise<Picture | null> {
    return this.#pictures.ask(document, 'picture', question);
  }

  /** What is at a spot of a picture, in words; `document` as in the question for the picture. */
  pointed(document: Document, picture: number, at: Vec2): Promise<string | null> {
    return this.#pictures.ask(document, 'pointed', { picture, at });
  }
}

export interface PlanAsked extends Omit<PlanQuestion, 'part' | 'report'> {
  readonly report: Report | null;
}

/** Hands the shares over only when they are others than before: in a large house they are millions of bytes. */
class PlanClient {
  readonly #client = new WorkerClient(startDrawingWorker);
  #told: Float64Array | null = null;

  ask(document: Document, part: PlanPart, asked: PlanAsked): Promise<PaintedPlan | null> {
    return this.#client.ask(document, 'plan', { ...asked, part, report: this.#toldOf(asked, part) });
  }

  #toldOf({ report, layers }: PlanAsked, part: PlanPart): ToldReport | null {
    if (!report) return null;
    const { visible, scene } = report.sight;
    const isNeeded = part === 'ground' && layers.sightBands !== null && visible !== this.#told;
    if (isNeeded) this.#told = visible;
    return {
      visible: isNeeded ? visible : null,
      targets: scene.targets.map(({ id }) => id),
      reach: layers.reach ? report.reach : [],
      routes: layers.routes ? report.routes : [],
    };
  }
}
