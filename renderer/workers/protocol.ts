/** What the window asks the checks worker, and what it answers. Plain values that can be cloned. */

import type { Finding, Remedy } from '#model/checks/finding.ts';
import type { HouseFigure, ReachResult, RouteResult } from '#model/checks/report.ts';
import type { Occluder, SeatPoint, Target } from '#model/checks/scene.ts';
import type { Id } from '#model/document/ids.ts';
import type { RecordChanges } from './mirror.ts';

export interface Questions {
  /** What the house sees: quick, for every frame of a drag. */
  sight: { readonly setup: Id<'setup'> };
  /** Everything else that the checks say of the setup. */
  judge: { readonly setup: Id<'setup'> };
  /** Changes that were tried and help against the finding, the best first. */
  remedies: { readonly setup: Id<'setup'>; readonly finding: Finding };
  /** What one place of the house sees. */
  seat: { readonly setup: Id<'setup'>; readonly seat: string };
}

export interface Answers {
  sight: SightAnswer;
  judge: Judgement;
  remedies: readonly Remedy[];
  seat: SeatView | null;
}

export type QuestionKind = keyof Questions;

/** A sight report without what has not changed since the last one. */
export interface SightAnswer {
  readonly figures: readonly HouseFigure[];
  readonly visible: Float64Array;
  readonly targets: readonly Target[];
  readonly occluders: readonly Occluder[];
  /** Null: the same places as in the answer before. */
  readonly seats: readonly SeatPoint[] | null;
}

export interface Judgement {
  readonly findings: readonly Finding[];
  readonly reach: readonly ReachResult[];
  readonly routes: readonly RouteResult[];
}

export interface SeatView {
  readonly seat: SeatPoint;
  readonly players: readonly SeenPlayer[];
}

export interface SeenPlayer {
  readonly player: string;
  readonly share: number;
  /** Records that cover part of him by themselves, the worst first, with the share each takes. */
  readonly coveredBy: readonly { readonly record: string; readonly share: number }[];
}

export interface Asked<K extends QuestionKind = QuestionKind> {
  readonly ticket: number;
  readonly kind: K;
  readonly changes: RecordChanges;
  readonly question: Questions[K];
}

export interface Told<K extends QuestionKind = QuestionKind> {
  readonly ticket: number;
  readonly answer: Answers[K] | null;
  /** A bug in the checks; the window says so instead of showing old figures as new. */
  readonly failure: string | null;
}
