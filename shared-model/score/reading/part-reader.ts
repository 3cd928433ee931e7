/** One part as its bars go by: where the cursor is, how far the bar reaches, when the player sounds. */

import { compare, fraction, later, minus, over, plus, ZERO, type Fraction } from '../fraction.ts';
import { LONGEST_BAR, MOST_BARS, MOST_SPANS } from '../limits.ts';
import { Refusal } from '../problem.ts';
import type { InstrumentChange, Transposition } from '../../document/music.ts';
import type { Span } from '../score.ts';

const QUARTERS_OF_COMMON_TIME = fraction(4);

export interface PartBar {
  readonly number: string;
  /** The furthest the cursor came. */
  readonly reach: Fraction;
  /** What the time signature asks for; null: it is without measure. */
  readonly nominal: Fraction | null;
  readonly sounding: readonly Span[];
}

export interface Note {
  /** In divisions. */
  readonly duration: Fraction;
  readonly chord: boolean;
  readonly grace: boolean;
  readonly cue: boolean;
  readonly rest: boolean;
}

export class PartReader {
  readonly bars: PartBar[] = [];
  readonly pageBreaks: number[] = [];
  readonly instruments: InstrumentChange[] = [];
  readonly transpositions: Transposition[] = [];
  notes = 0;
  cueNotes = 0;
  /** In the player's hands; null: not said yet. */
  instrument: string | null = null;
  /** Of a quarter; null: not said yet. */
  divisions: Fraction | null = null;
  nominal: Fraction | null = QUARTERS_OF_COMMON_TIME;
  /** Somewhere the file goes back beyond the beginning of a bar, or counts without having said its divisions. */
  readonly oddBars = new Set<number>();
  countsWithoutDivisions = false;
  number = '';
  private cursor = ZERO;
  private reach = ZERO;
  private onset = ZERO;
  private sounding: Span[] = [];

  constructor(
    readonly index: number,
    readonly id: string,
  ) {}

  /** Index of the bar that is being read. */
  get bar(): number {
    return this.bars.length;
  }

  get at(): Fraction {
    return this.cursor;
  }

  beginBar(number: string): void {
    if (this.bars.length >= MOST_BARS)
      throw new Refusal({ code: 'score.tooLarge', what: 'bars', most: MOST_BARS });
    this.number = number;
    [this.cursor, this.reach, this.onset] = [ZERO, ZERO, ZERO];
    this.sounding = [];
  }

  endBar(): void {
    const { number, reach, nominal } = this;
    if (reach.n > LONGEST_BAR * reach.d) throw new Refusal({ code: 'number.range' });
    this.bars.push({ number, reach, nominal, sounding: united(this.sounding) });
  }

  note({ duration, chord, grace, cue, rest }: Note): void {
    const quarters = grace ? ZERO : this.quarters(duration);
    if (!chord) this.onset = this.cursor;
    if (!rest) this.sound(quarters, cue, grace);
    if (!chord && !grace) this.move(quarters);
  }

  /** Forward when positive. */
  move(quarters: Fraction): void {
    this.cursor = plus(this.cursor, quarters);
    this.reach = later(this.reach, this.cursor);
    if (this.cursor.n < 0) this.oddBars.add(this.bar);
  }

  quarters(duration: Fraction): Fraction {
    if (this.divisions) return over(duration, this.divisions);
    this.countsWithoutDivisions = true;
    return duration;
  }

  private sound(quarters: Fraction, cue: boolean, grace: boolean): void {
    if (cue) {
      this.cueNotes += 1;
      return;
    }
    this.notes += 1;
    if (grace || quarters.n > 0) this.sounds({ from: this.onset, to: plus(this.onset, quarters) });
  }

  /** What goes on without a rest is one at once, so that a bar of any number of notes stays small. */
  private sounds(span: Span): void {
    const last = this.sounding.at(-1);
    if (last && isWhole(last) && isWhole(span) && compare(last.to, span.from) === 0)
      this.sounding[this.sounding.length - 1] = { from: last.from, to: span.to };
    else this.sounding.push(span);
    if (this.sounding.length > MOST_SPANS) throw tooManySpans();
  }
}

/** Not that of a grace note. */
function isWhole({ from, to }: Span): boolean {
  return compare(from, to) < 0;
}

export function tooManySpans(): Refusal {
  return new Refusal({ code: 'score.tooLarge', what: 'notes between rests', most: MOST_SPANS });
}

/** In order and disjoint: what touches is one. */
function united(spans: readonly Span[]): Span[] {
  const inOrder = spans.toSorted((a, b) => compare(a.from, b.from));
  const result: Span[] = [];
  for (const span of inOrder) {
    const last = result.at(-1);
    if (last && compare(span.from, last.to) <= 0)
      result[result.length - 1] = { from: last.from, to: later(last.to, span.to) };
    else result.push(span);
  }
  return result;
}

/** What of the spans lies between 0 and `length`. */
export function within(spans: readonly Span[], length: Fraction): Span[] {
  return spans.flatMap(({ from, to }) => {
    const begin = later(from, ZERO);
    const end = minus(length, to).n < 0 ? length : to;
    return compare(begin, end) <= 0 ? [{ from: begin, to: end }] : [];
  });
}
