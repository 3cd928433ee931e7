/** What a command sees of the world, so that tests can give it another. */

import type { Fs } from '../services/fs.ts';
import { onOneLine } from './terminal.ts';

export interface Surroundings {
  readonly fs: Fs;
  readonly now: () => Date;
  /** Folder of the window's settings. */
  readonly state: string;
  /** To stdout. */
  readonly print: (text: string) => void;
  /** One line to stderr. */
  readonly complain: (line: string) => void;
}

/** One line each on stderr, so that what is printed stays what it would be without them. */
export function tellNotes(notes: readonly string[], { complain }: Surroundings): void {
  for (const note of notes) complain(`standlines: note: ${onOneLine(note)}`);
}
