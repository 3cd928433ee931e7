/**
 * Leads the checks: asks the workers about the newest document and tells what they answered. What the house sees comes
 * first and for every frame; everything else follows at once when it is quick, and otherwise when the hand rests.
 * Suggestions come from a worker of their own, which is stopped as soon as the document changes.
 */

import type { Finding, Remedy, RemedyChange } from '#model/checks/finding.ts';
import { MOST_TOGETHER } from '#model/checks/remedies/mend-most.ts';
import type { HouseFigure, Report } from '#model/checks/report.ts';
import type { SeatPoint } from '#model/checks/scene.ts';
import { bySufferer, type Sufferer } from '#model/checks/sufferer.ts';
import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import { latestWins } from '../workers/latest-wins.ts';
import type { Answers, Judgement, QuestionKind, Questions, SightAnswer } from '../workers/protocol.ts';

export interface Subject {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  /** A gesture is under way. */
  readonly drafting: boolean;
  /** Counts the documents opened in the window: figures of another one are nothing to compare with. */
  readonly openings: number;
}

/** As much of the checks client as is used. */
export interface Asked {
  ask<K extends QuestionKind>(document: Document, kind: K, question: Questions[K]): Promise<Answers[K]>;
  stop(): void;
}

export interface ExaminerNews {
  /** Figures are of the document looked at last; `before` are those of the document before the last change. */
  report(report: Report, before: readonly HouseFigure[]): void;
  /** The findings of the report are about this document. */
  judged(subject: Subject): void;
  remedies(remedies: ReadonlyMap<string, readonly Remedy[]>): void;
  /** What clears most of what somebody suffers from, by whom. */
  mendings(mendings: ReadonlyMap<Sufferer, Mending>): void;
  failed(error: unknown): void;
}

/** One change against several findings. */
export interface Mending {
  readonly change: RemedyChange;
  readonly mends: readonly Finding[];
  readonly leaves: readonly Finding[];
}

export interface ExaminerParts {
  readonly live: Asked;
  readonly patient: Asked;
  readonly news: ExaminerNews;
  readonly now: () => number;
}

export const STILL_AFTER_MS = 350;

/** Checks that take longer than this wait until the hand rests. */
const QUICK_MS = 60;

const NOTHING: Judgement = {
  findings: [],
  reach: [],
  routes: [],
  reading: [],
  facing: { pairs: [], toHouse: [] },
};

interface Task {
  readonly subject: Subject;
  /** However long it takes. */
  readonly whole: boolean;
}

export class Examiner {
  readonly #parts: ExaminerParts;
  readonly #ask = latestWins((task: Task) => this.#examine(task));
  #newest: Subject | null = null;
  #report: Report | null = null;
  #seats: readonly SeatPoint[] = [];
  #judgement: Judgement & { readonly of?: Subject } = NOTHING;
  #judgingTook = 0;
  /** Figures of the last document that was not a draft, and of the one before it. */
  #settled: { readonly subject: Subject; readonly figures: readonly HouseFigure[] } | null = null;
  #before: readonly HouseFigure[] = [];
  #rest: ReturnType<typeof setTimeout> | null = null;

  constructor(parts: ExaminerParts) {
    this.#parts = parts;
  }

  /** Call with every document shown. */
  look(subject: Subject): void {
    this.#newest = subject;
    this.#stopResting();
    this.#parts.patient.stop();
    this.#parts.news.remedies(new Map());
    this.#parts.news.mendings(new Map());
    this.#begin({ subject, whole: !subject.drafting });
  }

  #begin(task: Task): void {
    void this.#ask(task).catch((error: unknown) => this.#parts.news.failed(error));
  }

  async #examine({ subject, whole }: Task): Promise<true> {
    const { document, setup } = subject;
    const { live, now } = this.#parts;
    const sight = await live.ask(document, 'sight', { setup });
    if (!this.#isOpen(subject)) return true;
    this.#seen(subject, sight);
    if (!whole && this.#judgingTook > QUICK_MS) {
      this.#whenAtRest(subject, () => this.#begin({ subject, whole: true }));
      return true;
    }
    const begun = now();
    const judgement = await live.ask(document, 'judge', { setup });
    this.#judgingTook = now() - begun;
    if (!this.#isOpen(subject)) return true;
    this.#judged(subject, judgement);
    return true;
  }

  /** Whether the subject is of the document that is open now; answers about another one come too late. */
  #isOpen({ openings }: Subject): boolean {
    return this.#newest?.openings === openings;
  }

  #seen(subject: Subject, { figures, visible, targets, occluders, seats }: SightAnswer): void {
    if (seats) this.#seats = seats;
    const { of } = this.#judgement;
    if (of && !isAlike(of, subject)) this.#judgement = NOTHING;
    this.#compare(subject, figures);
    const { of: _of, ...judgement } = this.#judgement;
    const scene = { seats: this.#seats, targets, occluders };
    this.#report = { ...judgement, setup: subject.setup, sight: { scene, visible, figures } };
    this.#parts.news.report(this.#report, this.#before);
  }

  #judged(subject: Subject, judgement: Judgement): void {
    this.#judgement = { ...judgement, of: subject };
    if (this.#report) this.#parts.news.report({ ...this.#report, ...judgement }, this.#before);
    this.#parts.news.judged(subject);
    if (!subject.drafting) this.#whenAtRest(subject, () => void this.#suggest(subject, judgement.findings));
  }

  /** During a gesture "before" is where it began; after it, where the last change began. */
  #compare(subject: Subject, figures: readonly HouseFigure[]): void {
    const known = this.#settled;
    if (!known || !isAlike(known.subject, subject)) this.#before = [];
    else if (known.subject.document !== subject.document) this.#before = known.figures;
    if (!subject.drafting) this.#settled = { subject, figures };
  }

  async #suggest({ document, setup }: Subject, findings: readonly Finding[]): Promise<void> {
    const found = new Map<string, readonly Remedy[]>();
    for (const finding of rarestFirst(findings)) {
      // Stopping the worker lets the answer fail, and nobody waits for the rest.
      const remedies = await this.#parts.patient
        .ask(document, 'remedies', { setup, finding })
        .catch(() => null);
      if (remedies === null) return;
      found.set(keyOf(finding), remedies);
      this.#parts.news.remedies(new Map(found));
    }
    await this.#mend({ document, setup }, findings, found);
  }

  /** For whoever suffers from several findings: what of all that was found clears most of them. */
  async #mend(
    { document, setup }: Pick<Subject, 'document' | 'setup'>,
    findings: readonly Finding[],
    remedies: ReadonlyMap<string, readonly Remedy[]>,
  ): Promise<void> {
    const mendings = new Map<Sufferer, Mending>();
    const each = findings.map((finding) => ({ members: [{ finding }] }));
    for (const { sufferer, findings: theirs } of bySufferer(document, each)) {
      const list = theirs
        .flatMap(({ members }) => members.map(({ finding }) => finding))
        .slice(0, MOST_TOGETHER);
      const changes = list.flatMap((finding) => remedies.get(keyOf(finding)) ?? []);
      if (list.length < 2 || changes.length === 0) continue;
      const best = await this.#parts.patient
        .ask(document, 'mendMost', { setup, findings: list, changes })
        .catch(() => undefined);
      if (best === undefined) return;
      if (!best) continue;
      const at = (index: number): Finding[] => list.slice(index, index + 1);
      mendings.set(sufferer, {
        change: best.change,
        mends: best.mends.flatMap(at),
        leaves: best.leaves.flatMap(at),
      });
      this.#parts.news.mendings(new Map(mendings));
    }
  }

  #whenAtRest(subject: Subject, work: () => void): void {
    this.#stopResting();
    this.#rest = setTimeout(() => {
      if (this.#newest === subject) work();
    }, STILL_AFTER_MS);
  }

  #stopResting(): void {
    if (this.#rest !== null) clearTimeout(this.#rest);
    this.#rest = null;
  }
}

/** Whether the figures of two subjects may be compared: the same setup of the same open document. */
function isAlike(a: Subject, b: Subject): boolean {
  return a.setup === b.setup && a.openings === b.openings;
}

/** Names a finding across recomputations: the same complaint about the same things. */
export function keyOf({ code, subjects }: Finding): string {
  return `${code} ${subjects.join(' ')}`;
}

/** So that what comes by the hundred, as in a large orchestra, does not hold up the rest; else as they come. */
export function rarestFirst(findings: readonly Finding[]): Finding[] {
  const counts = new Map<string, number>();
  for (const { code } of findings) counts.set(code, (counts.get(code) ?? 0) + 1);
  const count = ({ code }: Finding): number => counts.get(code) ?? 0;
  return [...findings].sort((a, b) => count(a) - count(b));
}
