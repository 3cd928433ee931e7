/** The words of the window in the language of its page; null: English. */

import type { Catalogue } from '../text.ts';

let other: Catalogue | null = null;

/** Before anything reads `text`. */
export function choose(catalogue: Catalogue): void {
  other = catalogue;
}

export function chosen(): Catalogue | null {
  return other;
}
