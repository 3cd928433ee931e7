/** Everything that the parts say about the whole score, gathered as it is met. */

import type { Fraction } from '../fraction.ts';
import type { Remark } from '../remark.ts';
import type { BackwardRepeat, EndingMark, JumpMark, RepeatMark, TempoMark, WordsMark } from '../score.ts';

export interface Marks {
  readonly tempos: TempoMark[];
  readonly forward: RepeatMark[];
  readonly backward: BackwardRepeat[];
  readonly endings: EndingMark[];
  readonly jumps: JumpMark[];
  readonly words: WordsMark[];
  /** Bars with a fermata, or a change of tempo in words. */
  readonly freeBars: Set<number>;
  readonly modulations: Set<number>;
  readonly remarks: Remark[];
}

export function noMarks(): Marks {
  return {
    tempos: [],
    forward: [],
    backward: [],
    endings: [],
    jumps: [],
    words: [],
    freeBars: new Set(),
    modulations: new Set(),
    remarks: [],
  };
}

/** Where a mark stands. */
export interface Spot {
  readonly part: number;
  readonly bar: number;
  readonly at: Fraction;
}
