/** What the grammar of a bar works on: the part being read, and the marks of the whole score. */

import type { InBar } from '../problem.ts';
import type { Marks } from './marks.ts';
import type { PartReader } from './part-reader.ts';

export interface Context {
  /** Changes from part to part. */
  readonly part: PartReader;
  readonly marks: Marks;
  /** For messages. */
  readonly where: () => InBar;
  /** The player takes up the instrument of that id. The one that the part's first note is for, `mayBegin`, is no change. */
  readonly takeUp: (id: string, mayBegin: boolean) => void;
}
