/** The demo concert that lies in the repository. */

import { readFileSync } from 'node:fs';
import { readDocument } from '#model/file-format/read.ts';
import type { Document } from '#model/document/document.ts';

export function demoConcert(): Document {
  const file = new URL('../../../../assets/demo-concert.standlines', import.meta.url);
  const read = readDocument(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.problem.message);
  return read.document;
}
