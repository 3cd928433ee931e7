/** What the window asks its workers, and what they answer. Plain values that can be cloned or handed over. */

import type { Finding, Remedy, RemedyChange } from '#model/checks/finding.ts';
import type { FacingResults } from '#model/checks/facing/facing.ts';
import type { ReadingResult } from '#model/checks/reading/reading.ts';
import type { MendMost } from '#model/checks/remedies/mend-most.ts';
import type { WhatIf } from '#model/checks/remedies/what-if.ts';
import type { HouseFigure, ReachResult, RouteResult } from '#model/checks/report.ts';
import type { Occluder, SeatPoint, Target } from '#model/checks/scene.ts';
import type { Id } from '#model/document/ids.ts';
import type { Units } from '#model/document/measures.ts';
import type { PaletteName } from '#model/drawing/palette.ts';
import type { ViewRequest } from '#model/drawing/view/view-drawing.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import type { Changeover } from '#model/programme/changeover.ts';
import type { Comparison } from '#model/programme/compare.ts';
import type { EnsembleOrder } from '../store/ensemble-records.ts';
import type { BestFashion } from '../store/ensemble-search.ts';
import type { RecordChanges } from './mirror.ts';
import type { PaintedPlan, PlanQuestion } from './painted-plan.ts';

/** What the drawing worker is asked. */
export interface DrawingQuestions {
  /** A part of the plan of a large concert. */
  plan: PlanQuestion;
  /** What a place or a player sees, as a picture. */
  picture: PictureQuestion;
  /** What is at a spot of a picture, in words. */
  pointed: { readonly picture: number; readonly at: Vec2 };
}

export interface DrawingAnswers {
  /** Null: it looks as it did. */
  plan: PaintedPlan | null;
  picture: Picture | null;
  pointed: string | null;
}

/** What the checks worker is asked. */
export interface CheckQuestions {
  /** What the house sees: quick, for every frame of a drag. */
  sight: { readonly setup: Id<'setup'> };
  /** Everything else that the checks say of the setup. */
  judge: { readonly setup: Id<'setup'> };
  /** Changes that were tried and help against the finding, the best first. */
  remedies: { readonly setup: Id<'setup'>; readonly finding: Finding };
  /** Of changes that help against some of these findings the one that clears most of them. */
  mendMost: {
    readonly setup: Id<'setup'>;
    readonly findings: readonly Finding[];
    readonly changes: readonly RemedyChange[];
  };
  /** What one place of the house sees. */
  seat: { readonly setup: Id<'setup'>; readonly seat: string };
  /** What the house would see without a thing, with it lower, or turned. */
  whatIf: { readonly setup: Id<'setup'>; readonly record: string };
  /** Variants of a setup side by side. */
  compared: { readonly setups: readonly Id<'setup'>[] };
  /** In which fashion an ensemble that is written down is set best. */
  ensemble: { readonly words: string; readonly order: EnsembleOrder };
  /** From one setup to the next. */
  changeover: { readonly from: Id<'setup'> | null; readonly to: Id<'setup'> | null };
}

/** Whose eyes a picture is seen with. */
export type Onlooker =
  { readonly kind: 'seat'; readonly seat: string } | { readonly kind: 'player'; readonly player: string };

export interface PictureQuestion {
  readonly setup: Id<'setup'>;
  readonly from: Onlooker;
  /** Millimetres of the drawing's paper. */
  readonly width: number;
  /** Null: as the view asks for. */
  readonly height: number | null;
  readonly palette: PaletteName;
  readonly units: Units;
  readonly show: ViewRequest['show'];
  /** Pixels of the device for a millimetre of the drawing's paper. */
  readonly pixels: number;
}

export interface Picture {
  /** To ask what is at a spot of it. */
  readonly number: number;
  /** "C 12", or the player's name. */
  readonly label: string;
  readonly width: number;
  readonly height: number;
  readonly bitmap: ImageBitmap;
  /** The whole in words. */
  readonly description: string;
}

export interface CheckAnswers {
  sight: SightAnswer;
  judge: Judgement;
  remedies: readonly Remedy[];
  /** Null: none clears two of them. */
  mendMost: MendMost | null;
  seat: SeatView | null;
  /** Null: the thing hides nobody. */
  whatIf: WhatIf | null;
  compared: Comparison;
  /** Null: it does not go on the platform in this shape. */
  ensemble: BestFashion | null;
  changeover: Changeover;
}

export type Questions = CheckQuestions & DrawingQuestions;
export type Answers = CheckAnswers & DrawingAnswers;

export type CheckKind = keyof CheckQuestions;
export type DrawingKind = keyof DrawingQuestions;
export type QuestionKind = CheckKind | DrawingKind;

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
  readonly reading: readonly ReadingResult[];
  readonly facing: FacingResults;
}

export interface SeatView {
  readonly seat: SeatPoint;
  readonly players: readonly SeenPlayer[];
}

export interface SeenPlayer {
  readonly player: string;
  readonly share: number;
  /** Share of the face window: from the chin up. */
  readonly face: number;
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
