/**
 * What the checks say of the document on the screen, drafts included. A worker computes it; while one answer is being
 * computed only the newest document waits. What the house sees comes first and for every frame; everything else
 * follows at once when it is quick, and otherwise when the hand rests. Suggestions come from a second worker.
 */

import type { Finding, Remedy } from '#model/checks/finding.ts';
import type { HouseFigure, Report } from '#model/checks/report.ts';
import type { SeatPoint } from '#model/checks/scene.ts';
import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import { ChecksClient, startChecksWorker } from '../workers/checks-client.ts';
import { latestWins } from '../workers/latest-wins.ts';
import type { Judgement, SeatView, SightAnswer } from '../workers/protocol.ts';

export interface Subject {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  /** A gesture is under way. */
  readonly drafting: boolean;
}

const STILL_AFTER_MS = 350;

/** Checks that take longer than this wait until the hand rests. */
const QUICK_MS = 60;

const NOTHING: Judgement = { findings: [], reach: [], routes: [] };

export class Checks {
  report: Report | null = $state.raw(null);
  /** The document that the findings in `report` are about; its figures may be a few frames newer. */
  judged: Subject | null = $state.raw(null);
  /** House figures before the last change, to set beside the new ones. */
  before: readonly HouseFigure[] = $state.raw([]);
  remedies: ReadonlyMap<string, readonly Remedy[]> = $state.raw(new Map());
  failure: string | null = $state(null);

  readonly #live = new ChecksClient(startChecksWorker);
  readonly #patient = new ChecksClient(startChecksWorker);
  readonly #ask = latestWins((subject: Subject) => this.#examine(subject));
  #newest: Subject | null = null;
  #seats: readonly SeatPoint[] = [];
  #judgement: Judgement = NOTHING;
  #judgingTook = 0;
  /** Figures of the last document that was not a draft. */
  #settled: { readonly setup: Id<'setup'>; readonly figures: readonly HouseFigure[] } | null = null;
  #rest: ReturnType<typeof setTimeout> | null = null;
  #round = 0;

  /** Call with every document shown. */
  look(subject: Subject): void {
    this.#newest = subject;
    this.#interruptSuggestions();
    void this.#ask(subject).catch((error: unknown) => {
      this.failure = error instanceof Error ? error.message : String(error);
    });
  }

  seat({ document, setup }: Subject, seat: string): Promise<SeatView | null> {
    return this.#live.ask(document, 'seat', { setup, seat });
  }

  async #examine(subject: Subject): Promise<true> {
    const { document, setup } = subject;
    this.#showSight(subject, await this.#live.ask(document, 'sight', { setup }));
    if (subject.drafting && this.#judgingTook > QUICK_MS) {
      this.#whenAtRest(subject, () => this.#ask({ ...subject, drafting: false }));
      return true;
    }
    const begun = performance.now();
    const judgement = await this.#live.ask(document, 'judge', { setup });
    this.#judgingTook = performance.now() - begun;
    this.#showJudgement(subject, judgement);
    return true;
  }

  #showSight(subject: Subject, sight: SightAnswer): void {
    const { figures, visible, targets, occluders } = sight;
    if (sight.seats) this.#seats = sight.seats;
    if (this.judged?.setup !== subject.setup) this.#judgement = NOTHING;
    this.#compare(subject, figures);
    const scene = { seats: this.#seats, targets, occluders };
    this.report = { setup: subject.setup, sight: { scene, visible, figures }, ...this.#judgement };
  }

  #showJudgement(subject: Subject, judgement: Judgement): void {
    this.#judgement = judgement;
    if (this.report) this.report = { ...this.report, ...judgement };
    this.judged = subject;
    this.failure = null;
    this.#whenAtRest(subject, () => this.#suggest(subject, judgement.findings, this.#round));
  }

  /** During a gesture "before" is where it began; after it, where the last change began. */
  #compare({ setup, drafting }: Subject, figures: readonly HouseFigure[]): void {
    this.before = this.#settled?.setup === setup ? this.#settled.figures : [];
    if (!drafting) this.#settled = { setup, figures };
  }

  #whenAtRest(subject: Subject, work: () => Promise<unknown>): void {
    if (this.#rest !== null) clearTimeout(this.#rest);
    this.#rest = setTimeout(() => {
      if (this.#newest === subject) void work().catch(() => undefined);
    }, STILL_AFTER_MS);
  }

  async #suggest(
    { document, setup, drafting }: Subject,
    findings: readonly Finding[],
    round: number,
  ): Promise<void> {
    if (drafting) return;
    for (const finding of findings) {
      const remedies = await this.#patient.ask(document, 'remedies', { setup, finding });
      if (round !== this.#round) return;
      this.remedies = new Map(this.remedies).set(keyOf(finding), remedies);
    }
  }

  #interruptSuggestions(): void {
    if (this.#rest !== null) clearTimeout(this.#rest);
    this.#round += 1;
    if (this.remedies.size > 0) this.remedies = new Map();
    this.#patient.stop();
  }
}

/** Names a finding across recomputations: the same complaint about the same things. */
export function keyOf({ code, subjects }: Finding): string {
  return `${code} ${subjects.join(' ')}`;
}
