/** What the checks say, as the components see it: `examiner.ts` made reactive, with real workers. */

import type { WhatIf } from '#model/checks/remedies/what-if.ts';
import type { Remedy } from '#model/checks/finding.ts';
import type { Sufferer } from '#model/checks/sufferer.ts';
import type { HouseFigure, Report } from '#model/checks/report.ts';
import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { Changeover } from '#model/programme/changeover.ts';
import type { Comparison } from '#model/programme/compare.ts';
import type { EnsembleOrder } from '../store/ensemble-records.ts';
import { latestWins } from '../workers/latest-wins.ts';
import type { SeatView } from '../workers/protocol.ts';
import { startChecksWorker, WorkerClient } from '../workers/worker-client.ts';
import { Examiner, type Mending, type Subject } from './examiner.ts';

/** In a large hall a worker holds some 100 MB. */
const IDLE_AFTER_MS = 300;

export interface EnsembleQuestion {
  readonly document: Document;
  readonly words: string;
  readonly order: EnsembleOrder;
}

export class Checks {
  report: Report | null = $state.raw(null);
  /** The document that the findings in `report` are about; its figures may be a few frames newer. */
  judged: Subject | null = $state.raw(null);
  /** House figures before the last change, to set beside the new ones. */
  before: readonly HouseFigure[] = $state.raw([]);
  remedies: ReadonlyMap<string, readonly Remedy[]> = $state.raw(new Map());
  mendings: ReadonlyMap<Sufferer, Mending> = $state.raw(new Map());
  failure: string | null = $state(null);

  readonly #live = new WorkerClient(startChecksWorker);
  /** Trials have a worker of their own, so that they never hold up a figure; every change of the document stops them. */
  readonly #patient = new WorkerClient(startChecksWorker, IDLE_AFTER_MS);
  /** Whole setups are checked one after the other, which in a large hall takes a while. */
  readonly #comparing = new WorkerClient(startChecksWorker, IDLE_AFTER_MS);
  readonly #arranging = new WorkerClient(startChecksWorker, IDLE_AFTER_MS * 20);
  readonly #carrying = new WorkerClient(startChecksWorker, IDLE_AFTER_MS);
  readonly #examiner = new Examiner({
    live: this.#live,
    patient: this.#patient,
    now: () => performance.now(),
    news: {
      report: (report, before) => {
        this.report = report;
        this.before = before;
      },
      judged: (subject) => {
        this.judged = subject;
        this.failure = null;
      },
      remedies: (remedies) => {
        if (remedies.size > 0 || this.remedies.size > 0) this.remedies = remedies;
      },
      mendings: (mendings) => {
        if (mendings.size > 0 || this.mendings.size > 0) this.mendings = mendings;
      },
      failed: (error) => this.failed(error),
    },
  });

  #openings = 0;

  /** Call with every document shown. */
  look(subject: Subject): void {
    if (subject.openings !== this.#openings) this.#forget();
    this.#openings = subject.openings;
    this.#examiner.look(subject);
  }

  /** A bug in what is worked out beside the window: the window says so instead of showing old figures as new. */
  failed(error: unknown): void {
    this.failure = error instanceof Error ? error.message : String(error);
  }

  /** Another document was opened: nothing that was said of the one before holds. */
  #forget(): void {
    this.report = null;
    this.judged = null;
    this.before = [];
  }

  seat({ document, setup }: Pick<Subject, 'document' | 'setup'>, seat: string): Promise<SeatView | null> {
    return this.#live.ask(document, 'seat', { setup, seat });
  }

  /** Fails when the document changes meanwhile. */
  whatIf({ document, setup }: Pick<Subject, 'document' | 'setup'>, record: string): Promise<WhatIf | null> {
    return this.#patient.ask(document, 'whatIf', { setup, record });
  }

  changeover(document: Document, from: Id<'setup'> | null, to: Id<'setup'> | null): Promise<Changeover> {
    return this.#carrying.ask(document, 'changeover', { from, to });
  }

  /** The best fashion for what was asked last; null where something else was asked meanwhile. */
  readonly ensemble = latestWins(async ({ document, words, order }: EnsembleQuestion) => ({
    best: await this.#arranging.ask(document, 'ensemble', { words, order }),
  }));

  /** Fails when another comparison is asked for meanwhile. */
  compared(document: Document, setups: readonly Id<'setup'>[]): Promise<Comparison> {
    this.#comparing.stop();
    return this.#comparing.ask(document, 'compared', { setups });
  }
}
