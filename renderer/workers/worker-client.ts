/** The window's side of a worker: sends what changed in the document with each question. */

import type { Document } from '#model/document/document.ts';
import { changesBetween } from './mirror.ts';
import type { Answers, Asked, QuestionKind, Questions, Told } from './protocol.ts';
import { language } from '#model/words/catalogue.ts';

/** As much of `Worker` as is used, so that tests can stand one in. */
export interface WorkerLike {
  postMessage(message: Asked): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<Told>) => void): void;
  addEventListener(type: 'error', listener: (event: ErrorEvent) => void): void;
  terminate(): void;
}

interface Waiting {
  readonly done: (answer: never) => void;
  readonly failed: (error: Error) => void;
}

export class WorkerClient {
  readonly #start: () => WorkerLike;
  readonly #idleAfter: number;
  #idle: ReturnType<typeof setTimeout> | undefined;
  #worker: WorkerLike | null = null;
  #sent: Document['records'] = new Map();
  #tickets = 0;
  readonly #waiting = new Map<number, Waiting>();

  /** A worker that is asked for nothing for `idleAfter` milliseconds is ended, so that what it holds is given back. */
  constructor(start: () => WorkerLike, idleAfter = Infinity) {
    this.#start = start;
    this.#idleAfter = idleAfter;
  }

  ask<K extends QuestionKind>(document: Document, kind: K, question: Questions[K]): Promise<Answers[K]> {
    clearTimeout(this.#idle);
    const worker = (this.#worker ??= this.#started());
    const changes = changesBetween(this.#sent, document.records);
    this.#sent = document.records;
    const ticket = ++this.#tickets;
    return new Promise<Answers[K]>((done, failed) => {
      this.#waiting.set(ticket, { done: done as Waiting['done'], failed });
      worker.postMessage({ ticket, kind, changes, question });
    });
  }

  /** Ends the worker in the middle of whatever it does; the next question starts another one. */
  stop(): void {
    clearTimeout(this.#idle);
    this.#worker?.terminate();
    this.#worker = null;
    this.#sent = new Map();
    this.#fail('stopped');
  }

  #started(): WorkerLike {
    const worker = this.#start();
    worker.addEventListener('message', ({ data }) => this.#told(data));
    worker.addEventListener('error', (event) => this.#fail(event.message));
    return worker;
  }

  #told({ ticket, answer, failure }: Told): void {
    const waiting = this.#waiting.get(ticket);
    this.#waiting.delete(ticket);
    if (failure !== null) waiting?.failed(new Error(failure));
    else waiting?.done(answer as never);
    if (this.#waiting.size === 0 && this.#idleAfter < Infinity)
      this.#idle = setTimeout(() => this.stop(), this.#idleAfter);
  }

  #fail(message: string): void {
    const waiting = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const { failed } of waiting) failed(new Error(message));
  }
}

export function startChecksWorker(): WorkerLike {
  return new Worker(new URL('./checks.worker.ts', import.meta.url), { type: 'module', name: language() });
}

export function startDrawingWorker(): WorkerLike {
  return new Worker(new URL('./drawing.worker.ts', import.meta.url), { type: 'module', name: language() });
}
