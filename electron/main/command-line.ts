/** The document named on a command line. */

import { statSync } from 'node:fs';
import { resolve } from 'node:path';

/** The first word that names an existing document, taken as data and never as an option; null: none. */
export function fileAmong(argv: readonly string[], folder: string): string | null {
  const named = argv.slice(1).filter((word) => !word.startsWith('-') && word.endsWith('.standlines'));
  const paths = named.map((word) => resolve(folder, word));
  return paths.find((path) => statSync(path, { throwIfNoEntry: false })?.isFile()) ?? null;
}
