/** What the reader of a score could not know. Data; `words/remark-sentence.ts` makes the sentence. */

export type { Remark, RemarkCode } from '../document/music.ts';
