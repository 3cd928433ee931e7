/**
 * What the checks say of the document on the screen, drafts included. A worker computes it; while one answer is being
 * computed only the newest document waits. Suggestions come from a second worker, and only when the hands are still.
 */

import type { Finding, Remedy } from '#model/checks/finding.ts';
import type { HouseFigure, Report } from '#model/checks/report.ts';
import type { SeatPoint } from '#model/checks/scene.ts';
import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import { ChecksClient, startChecksWorker } from '../workers/checks-client.ts';
import { latestWins } from '../workers/latest-wins.ts';
import type { Judgement, SeatView } from '../workers/protocol.ts';

export interface Subject {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  /** A gesture is under way. */
  readonly drafting: boolean;
}

const STILL_AFTER_MS = 350;

export class Checks {
  report: Report | null = $state.raw(null);
  /** The document that `report` is about. */
  judged: Subject | null = $state.raw(null);
  /** House figures before the last change, to set beside the new ones. */
  before: readonly HouseFigure[] = $state.raw([]);
  remedies: ReadonlyMap<string, Remedy | null> = $state.raw(new Map());
  failure: string | null = $state(null);
  milliseconds = $state(0);

  readonly #live = new ChecksClient(startChecksWorker);
  readonly #patient = new ChecksClient(startChecksWorker);
  readonly #ask = latestWins((subject: Subject) => this.#judge(subject));
  #seats: readonly SeatPoint[] = [];
  /** Figures of the last document that was not a draft. */
  #settled: readonly HouseFigure[] = [];
  #settledSetup: Id<'setup'> | null = null;
  #stillness: ReturnType<typeof setTimeout> | null = null;
  #round = 0;

  /** Call with every document shown. */
  look(subject: Subject): void {
    this.#interruptSuggestions();
    void this.#ask(subject).catch((error: unknown) => {
      this.failure = error instanceof Error ? error.message : String(error);
    });
  }

  seat({ document, setup }: Subject, seat: string): Promise<SeatView | null> {
    return this.#live.ask(document, 'seat', { setup, seat });
  }

  async #judge(subject: Subject): Promise<true> {
    const judgement = await this.#live.ask(subject.document, 'judge', { setup: subject.setup });
    this.#show(subject, judgement);
    return true;
  }

  #show(subject: Subject, judgement: Judgement): void {
    const { findings, figures, visible, targets, occluders, seats, reach, routes } = judgement;
    if (seats) this.#seats = seats;
    const scene = { seats: this.#seats, targets, occluders };
    this.#compare(subject, figures);
    this.report = { setup: subject.setup, findings, sight: { scene, visible, figures }, reach, routes };
    this.judged = subject;
    this.failure = null;
    this.milliseconds = judgement.milliseconds;
    if (!subject.drafting) this.#suggestWhenStill(subject, findings);
  }

  /** During a gesture "before" is where it began; after it, where the last change began. */
  #compare({ setup, drafting }: Subject, figures: readonly HouseFigure[]): void {
    const sameSetup = this.#settledSetup === setup;
    this.before = sameSetup ? this.#settled : [];
    if (drafting) return;
    this.#settled = figures;
    this.#settledSetup = setup;
  }

  #suggestWhenStill(subject: Subject, findings: readonly Finding[]): void {
    const round = this.#round;
    this.#stillness = setTimeout(() => void this.#suggest(subject, findings, round), STILL_AFTER_MS);
  }

  async #suggest(subject: Subject, findings: readonly Finding[], round: number): Promise<void> {
    for (const finding of findings) {
      if (round !== this.#round) return;
      const question = { setup: subject.setup, finding };
      const remedy = await this.#patient.ask(subject.document, 'remedy', question).catch(() => undefined);
      if (round !== this.#round || remedy === undefined) return;
      this.remedies = new Map(this.remedies).set(keyOf(finding), remedy);
    }
  }

  #interruptSuggestions(): void {
    if (this.#stillness !== null) clearTimeout(this.#stillness);
    this.#round += 1;
    if (this.remedies.size > 0) this.remedies = new Map();
    this.#patient.stop();
  }
}

/** Names a finding across recomputations: the same complaint about the same things. */
export function keyOf({ code, subjects }: Finding): string {
  return `${code} ${subjects.join(' ')}`;
}
