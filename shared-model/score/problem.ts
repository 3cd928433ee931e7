/** Why a score, a table or something typed over was not read. Data; `words/problem-sentence.ts` makes the sentence. */

export type Problem =
  | { readonly code: 'xml.notWellFormed'; readonly line: number; readonly reason: string }
  | { readonly code: 'xml.entities'; readonly line: number }
  | {
      readonly code:
        'xml.deep' | 'xml.elements' | 'xml.attributes' | 'xml.text' | 'xml.size' | 'xml.prologue';
      readonly most: number;
    }
  | { readonly code: 'score.notMusicXml'; readonly root: string }
  | { readonly code: 'score.opus' }
  | { readonly code: 'score.noParts' | 'score.noBars' }
  | {
      readonly code: 'score.tooLarge';
      readonly what: CountedThing;
      readonly most: number;
    }
  | { readonly code: 'number.range' }
  | ({
      readonly code: 'value.bad';
      readonly what: ScoreValue;
      readonly given: string;
      readonly allowed: string;
    } & Partial<InBar>)
  | { readonly code: 'parts.bars'; readonly first: PartSize; readonly other: PartSize }
  | { readonly code: 'bar.partTwice'; readonly part: string; readonly number: string }
  | { readonly code: 'jumps.endless'; readonly most: number }
  | { readonly code: 'typed.bad'; readonly what: TypedThing; readonly given: string; readonly advice: string }
  | { readonly code: 'table.empty' }
  | { readonly code: 'table.rows'; readonly most: number }
  | { readonly code: 'table.missingColumn'; readonly column: string; readonly found: string }
  | {
      readonly code: 'table.cell';
      readonly row: number;
      readonly column: string;
      readonly given: string;
      readonly advice: string;
    }
  /** A table does not go with that of another player, `other`. */
  | {
      readonly code: 'tables.order';
      readonly row: number;
      readonly bar: number;
      readonly other: { readonly name: string; readonly row: number; readonly bar: number };
    }
  | { readonly code: 'tables.count'; readonly bars: number; readonly other: PartSize }
  | {
      readonly code: 'tables.beats';
      readonly row: number;
      readonly bar: number;
      readonly beats: number;
      readonly other: { readonly name: string; readonly row: number; readonly beats: number };
    }
  | {
      readonly code: 'tables.length';
      readonly seconds: number;
      readonly other: { readonly name: string; readonly seconds: number };
    };

/** What a score can have too many of. */
export type CountedThing = 'parts' | 'bars' | 'jumps' | 'tempo marks' | 'notes between rests';

/** Values in a score that are checked where they are read. */
export type ScoreValue =
  'divisions' | 'duration' | 'offset' | 'tempo' | 'times of a repeat' | 'number of an ending';

/** What is typed over what the score says. */
export type TypedThing = 'bar' | 'first bar of a page' | 'tempo' | 'order' | 'range';

/** Where a value stands, as far as that is known. */
export interface InBar {
  readonly part: string;
  /** The printed number. */
  readonly bar: string;
  readonly line: number;
}

export interface PartSize {
  readonly name: string;
  readonly bars: number;
}

/** Thrown inside the readers and caught at their doors; nobody outside this room sees it. */
export class Refusal extends Error {
  constructor(readonly problem: Problem) {
    super(problem.code);
  }
}

export type Outcome<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

/** Runs a reader: what it refuses becomes a value, bugs go on being thrown. */
export function outcomeOf<T>(read: () => T): Outcome<T> {
  try {
    return { ok: true, value: read() };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, problem: error.problem };
    throw error;
  }
}
