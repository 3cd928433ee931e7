/** What the reader of a score could not know, or took in one way of several. Data; `words/remark-sentence.ts` makes the sentence. */

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
