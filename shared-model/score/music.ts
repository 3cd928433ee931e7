/**
 * A piece as it is performed: small, plain JSON, and enough to derive every time in it by pure functions. Bars are
 * named by their index, from 0 in the order of the score. Lengths and places within a bar are whole ticks.
 */

import type { Remark } from './remark.ts';
import type { InstrumentChange, TempoSource, Transposition } from './score.ts';

/** Until the first tempo mark. Common practice of player programs, no source. */
export const ASSUMED_TEMPO = 120;

export interface Music {
  readonly title: string;
  readonly ticksPerQuarter: number;
  readonly bars: readonly Bar[];
  /** By place; one for each place at most. `ASSUMED_TEMPO` holds before the first. */
  readonly tempos: readonly Tempo[];
  /** First bars of movements; the first of all is 0. */
  readonly movements: readonly number[];
  /** What is played, in its order: ranges of bars, both ends included. */
  readonly order: readonly BarRange[];
  /** A jump leads somewhere that nothing in the score tells: the order is a guess there. */
  readonly ambiguous: boolean;
  readonly parts: readonly Part[];
  readonly remarks: readonly Remark[];
}

export interface Bar {
  /** As printed. */
  readonly number: string;
  readonly ticks: number;
}

export interface Tempo {
  readonly bar: number;
  /** Ticks from the beginning of the bar. */
  readonly at: number;
  readonly quartersPerMinute: number;
  readonly source: TempoSource | 'typed';
}

export type BarRange = readonly [first: number, last: number];

export interface Part {
  readonly id: string;
  readonly name: string;
  /**
   * When the player is silent: bar and, within it, from and to. By bar and place. Silences on both sides of a bar line
   * are one when those bars follow one another in the performance; one without length, at the edge of a bar, keeps apart
   * what a grace note there divides.
   */
  readonly silences: readonly BarSilence[];
  /** In the order of the bars; the first begins with bar 0. */
  readonly pages: readonly PageStart[];
  /** Where the player takes up another instrument. */
  readonly instruments: readonly InstrumentChange[];
  /** From which bar on what is written sounds how. */
  readonly transpositions: readonly Transposition[];
}

export type BarSilence = readonly [bar: number, from: number, to: number];

export interface PageStart {
  /** From 1. */
  readonly page: number;
  readonly bar: number;
}
