/** Everything the checks say of one setup. Derived from the document; never stored in it. */

import type { Point } from '../document/records.ts';
import type { FacingResults } from './facing/facing.ts';
import type { Finding } from './finding.ts';
import type { ReadingResult } from './reading/reading.ts';
import type { Scene } from './scene.ts';

/** Bands of the published auditorium study: under 25 %, 25-50, 50-75, 75-90, over 90 % of the window visible. */
export type SightBand = 0 | 1 | 2 | 3 | 4;

export interface HouseFigure {
  readonly player: string;
  /** Share of places that see at least `seesWell` of the window (0..1). */
  readonly seenWell: number;
  readonly median: number;
  readonly worst: { readonly seat: string; readonly share: number };
  /** Number of places in each band. */
  readonly bands: readonly [number, number, number, number, number];
  /** Records that cover the player, most lost area first: mean share of the window lost over the house. */
  readonly coveredBy: readonly { readonly record: string; readonly loss: number }[];
}

export interface SightReport {
  readonly scene: Scene;
  /** Visible shares, row-major: seat s and target t at `s * targets + t`. */
  readonly visible: Float64Array;
  readonly figures: readonly HouseFigure[];
}

export type Manner = 'reach' | 'lean' | 'step' | 'walk' | 'none';
export type Hand = 'left' | 'right';

/** A point a hand must get to. z is above the platform's floor. */
export interface Grip {
  readonly id: string;
  readonly player: string;
  readonly item: string;
  readonly purpose: 'turnCorner' | 'turnRidge' | 'pickUp';
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export interface FreeTime {
  readonly seconds: number;
  readonly source: 'part' | 'typed';
  /** Of a part: where its shortest rest for this lies. */
  readonly at: MusicMoment | null;
}

export interface MusicMoment {
  /** As printed. */
  readonly bar: string;
  /** Since the beginning of the performance. */
  readonly seconds: number;
}

export interface ReachResult {
  readonly grip: Grip;
  readonly hand: Hand | null;
  /** From the nearer free shoulder, in 3D; from both shoulders' nearer one when no hand is free. */
  readonly distance: number;
  /** What the arm alone reaches; when anyone may play, the arm of the end who gets there worse. */
  readonly armReach: number;
  readonly manner: Manner;
  /** He stoops or squats for it. */
  readonly stoops: boolean;
  /** Time there (and back for a walk), seconds, with its published or stated range. */
  readonly seconds: number;
  readonly secondsRange: readonly [number, number];
  /** The rest he has, if it is known. */
  readonly freeTime: number | null;
  /** Who says so: the rests of his part, or somebody who typed it. */
  readonly freeTimeSource: FreeTime['source'] | null;
  readonly freeTimeAt: MusicMoment | null;
}

/** A circle in which a wheelchair can turn: the widest free one over the spot where turning is asked for. */
export interface TurningCircle extends Point {
  readonly diameter: number;
  /** His own place, a bend in which his way turns back, or its end. */
  readonly at: 'place' | 'bend' | 'exit';
  readonly near: Point;
}

export interface RouteResult {
  /** Of the player, or of a wheelchair set for somebody else. */
  readonly player: string;
  readonly exit: string | null;
  /** Corner points of the path found; empty when there is none. */
  readonly path: readonly Point[];
  /** Narrowest place on the path. */
  readonly width: number;
  /** Room to turn for who uses a wheelchair, his place first; empty for who walks. */
  readonly turning: readonly TurningCircle[];
}

export interface Report {
  readonly setup: string;
  readonly findings: readonly Finding[];
  readonly sight: SightReport;
  readonly reach: readonly ReachResult[];
  readonly routes: readonly RouteResult[];
  readonly reading: readonly ReadingResult[];
  readonly facing: FacingResults;
}
