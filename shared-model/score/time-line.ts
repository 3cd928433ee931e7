/** One player's music on the clock, as pages, bindings and turns need it. Times run from the first bar played, repeats and jumps unfolded. */

export type Seconds = number;

export interface Interval {
  readonly from: Seconds;
  readonly to: Seconds;
}

/** A page that is read without a break. A repeat or a jump brings a page back: then it is listed again, in the order of the performance. */
export interface PageReading extends Interval {
  /** 1-based. */
  readonly page: number;
}

/** The player does not play: both hands may be free. Cue notes count as silence. Disjoint, in order. */
export type Silence = Interval;

export interface TimeLine {
  /** Length of the whole performance. */
  readonly seconds: Seconds;
  /** They cover 0 to `seconds` without gaps. */
  readonly readings: readonly PageReading[];
  readonly silences: readonly Silence[];
}
