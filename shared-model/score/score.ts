/**
 * A score as it is written: bars, and the marks in them, nothing decided yet. Bars are named by their index, which
 * counts from 0 in file order; lengths and places are exact fractions of a quarter note.
 */

import type { Fraction } from './fraction.ts';
import type { InstrumentChange, Remark, TempoSource, Transposition } from '../document/music.ts';

export interface Score {
  readonly title: string;
  /** As the file's `version` says; null: it does not. */
  readonly version: string | null;
  readonly bars: readonly ScoreBar[];
  readonly parts: readonly ScorePart[];
  /** In the order of parts and bars: where two share a place, the later one holds. */
  readonly tempos: readonly TempoMark[];
  readonly barlines: Barlines;
  readonly jumpMarks: readonly JumpMark[];
  readonly words: readonly WordsMark[];
  readonly remarks: readonly Remark[];
}

export interface ScoreBar {
  /** As printed, such as "12" or "X1". */
  readonly number: string;
  /** What the fullest part holds, whatever the time signature says. */
  readonly quarters: Fraction;
}

export interface ScorePart {
  readonly id: string;
  readonly name: string;
  /** For each bar when the player sounds, in order and disjoint. A grace note is a moment: both ends are one. */
  readonly sounding: readonly (readonly Span[])[];
  /** Bars that begin a page, as the part or the score was laid out. */
  readonly pageBreaks: readonly number[];
  readonly instruments: readonly InstrumentChange[];
  readonly transpositions: readonly Transposition[];
  readonly counts: PartCounts;
}

export interface Span {
  readonly from: Fraction;
  readonly to: Fraction;
}

export interface PartCounts {
  /** Attacks: chords count each of their notes, cue notes are left out. */
  readonly notes: number;
  readonly cueNotes: number;
}

export interface TempoMark {
  readonly part: number;
  readonly bar: number;
  /** From the beginning of the bar. */
  readonly at: Fraction;
  readonly quartersPerMinute: number;
  readonly source: TempoSource;
}

export interface Barlines {
  readonly forward: readonly RepeatMark[];
  readonly backward: readonly BackwardRepeat[];
  readonly endings: readonly EndingMark[];
}

export interface RepeatMark {
  readonly bar: number;
  /** It stands within the bar; it is taken as standing at the bar's end, or beginning. */
  readonly inside: boolean;
}

export interface BackwardRepeat extends RepeatMark {
  /** How often the passage is played in all; null: not said, so twice. */
  readonly times: number | null;
  /** The file says that the repeat is made again after a jump. */
  readonly afterJump: boolean;
}

export interface EndingMark {
  readonly bar: number;
  readonly type: 'start' | 'stop' | 'discontinue';
  /** The passes that take this ending; empty: the bracket does not say. */
  readonly numbers: readonly number[];
}

export type JumpKind = 'dacapo' | 'dalsegno' | 'fine' | 'tocoda' | 'segno' | 'coda';

export interface JumpMark {
  readonly kind: JumpKind;
  readonly bar: number;
  /** Joins a jump with its target where there are several. */
  readonly name: string;
  /** `symbol`: printed, without word to a player program. */
  readonly source: 'sound' | 'symbol';
}

/** What a direction says in words. */
export interface WordsMark {
  readonly part: number;
  readonly bar: number;
  readonly at: Fraction;
  readonly text: string;
}
