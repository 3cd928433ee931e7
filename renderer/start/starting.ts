/** What the window gets from what was on the page before it. */

import type { Handle } from '#contract/contract.ts';
import type { FirstAnswers } from '../files/first-questions.ts';
import type { Connection } from '../host.ts';

export interface Starting {
  readonly connection: Connection;
  /** Asked while the window's scripts were on their way. */
  readonly answers: Promise<FirstAnswers>;
  /** The file that the window worked on before it was loaded anew; null: on none; undefined: it is a new window. */
  readonly before: Handle | null | undefined;
  /** Takes away what stands in the window's place; to be called when the window shows the same, or something else. */
  readonly leave: () => void;
}
