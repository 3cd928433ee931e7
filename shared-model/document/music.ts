/**
 * A piece as it is performed: small, plain JSON, and enough to derive every time in it by pure functions (those are in
 * score/). Bars are named by their index, from 0 in the order of the score. Lengths and places within a bar are whole
 * ticks.
 */

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
  /** Null: nothing is repeated after a jump either way, or the order was typed. */
  readonly afterJump: AfterJump | null;
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

/** Repeats that are passed once more after D.C. or D.S.: players leave them out as a rule, and may make them. */
export interface AfterJump {
  /** Whether `order` makes them. */
  readonly repeats: boolean;
  /** The order the other way. */
  readonly otherwise: readonly BarRange[];
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
  /** The player reads from paper with these pages; false: they are those of a score of several parts. */
  readonly ownPages: boolean;
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

export type TempoSource = 'sound' | 'metronome' | 'words';

/** The player takes up another instrument. */
export interface InstrumentChange {
  readonly bar: number;
  readonly name: string;
}

export interface Transposition {
  readonly bar: number;
  /** Semitones and steps from what is written to what sounds, and octaves besides. */
  readonly chromatic: number;
  readonly diatonic: number;
  readonly octaves: number;
}

/** What the reader of a score could not know, or took in one way of several. */
export type RemarkCode =
  /** No tempo before bar `bar`, or none at all (`bar` null): 120 quarters a minute are assumed. */
  | 'tempo.assumed'
  /** The tempo comes from printed words, `text`. */
  | 'tempo.words'
  /** Two parts give different tempos at one place; the later part's holds. */
  | 'tempo.disagree'
  /** An equation of two notes is not followed. */
  | 'tempo.modulation'
  /** `count` fermatas and changes of tempo in words, such as rit., add no time. */
  | 'tempo.free'
  /** A part by itself, without tempo or jumps: those may stand in the score. */
  | 'part.alone'
  | 'part.unlisted'
  | 'part.noId'
  | 'part.noDivisions'
  /** A part holds less than the fullest part in `count` bars; the first is `bar`. */
  | 'part.barShort'
  | 'bar.backup'
  /** A bar holds nothing, and no time signature says how long it is. */
  | 'bar.lengthUnknown'
  | 'repeat.open'
  | 'repeat.inside'
  | 'repeat.nested'
  /** The file itself wants repeats after a jump. */
  | 'repeat.afterJump'
  | 'ending.open'
  | 'ending.noNumber'
  | 'ending.contradictory'
  /** `text` is taken for a jump. */
  | 'jump.words'
  /** A jump without Fine or To Coda: how it ends is not said. */
  | 'jump.ambiguous'
  /** After the jump it stops before the bar marked Trio. */
  | 'jump.stopsBeforeTrio'
  | 'jump.noTarget'
  /** With repeats after jumps it would be `count` bars longer. */
  | 'jump.repeatsLeftOut'
  /** Page breaks of a score with several players: no player reads from those pages. */
  | 'pages.ofScore'
  /** Other scores in the same file, `text`. */
  | 'file.otherRoots'
  /** The edges of notes are rounded: the divisions of the parts have no common measure within bounds. */
  | 'time.rounded';

export interface Remark {
  readonly code: RemarkCode;
  /** Index of the bar it is about; null: the whole score. */
  readonly bar: number | null;
  readonly part?: string;
  readonly text?: string;
  readonly count?: number;
}
