/** The window's side of the turns worker: each planning has a worker of its own, so that it can be stopped at any time. */

import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { AnyRecord } from '#model/document/records.ts';
import type { PlanProgress } from '#model/pages/planner/planner.ts';
import type { TurnsAnswer } from './turn-planning.ts';
import { language } from '#model/words/catalogue.ts';

export interface TurnsAsked {
  readonly records: readonly AnyRecord[];
  readonly setup: Id<'setup'>;
}

export type TurnsTold =
  | { readonly kind: 'progress'; readonly progress: PlanProgress }
  | { readonly kind: 'done'; readonly answer: TurnsAnswer }
  /** A bug in the planner. */
  | { readonly kind: 'failed'; readonly message: string };

/** As much of `Worker` as is used, so that tests can stand one in. */
export interface TurnsWorker {
  postMessage(message: TurnsAsked): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<TurnsTold>) => void): void;
  addEventListener(type: 'error', listener: (event: ErrorEvent) => void): void;
  terminate(): void;
}

export class TurnsClient {
  readonly #start: () => TurnsWorker;
  #worker: TurnsWorker | null = null;

  constructor(start: () => TurnsWorker) {
    this.#start = start;
  }

  /** Stops what was planned before; `told` hears nothing any more once it has ended or was stopped. */
  plan(document: Document, setup: Id<'setup'>, told: (message: TurnsTold) => void): void {
    this.stop();
    const worker = this.#start();
    this.#worker = worker;
    const hear = (message: TurnsTold): void => {
      if (this.#worker !== worker) return;
      if (message.kind !== 'progress') this.stop();
      told(message);
    };
    worker.addEventListener('message', ({ data }) => hear(data));
    worker.addEventListener('error', ({ message }) => hear({ kind: 'failed', message }));
    worker.postMessage({ records: [...document.records.values()], setup });
  }

  stop(): void {
    this.#worker?.terminate();
    this.#worker = null;
  }
}

export function startTurnsWorker(): TurnsWorker {
  return new Worker(new URL('./turns.worker.ts', import.meta.url), { type: 'module', name: language() });
}
