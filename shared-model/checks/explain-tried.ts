/** Findings as a printed list tells them: with the changes that were tried. */

import { concertOf, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { labelOf } from '../document/labels.ts';
import type { Finding } from './finding.ts';
import { triedAdvice } from './remedy-words.ts';
import type { Explained } from './sentence-parts.ts';
import { explain } from './sentences.ts';
import type { Tried } from './tried-list.ts';

/** On paper there is nothing to try a change with; in the units of the concert, for it goes to others. */
export function explainTried(
  document: Document,
  setup: Id<'setup'>,
  tried: Tried,
): (finding: Finding) => Explained {
  const { units } = concertOf(document);
  const nameOf = (id: string): string => labelOf(document, setup, id);
  return (finding) => {
    const told = explain(finding, document, setup, units);
    return { ...told, advice: triedAdvice(told, finding, { remedies: tried(finding), nameOf, units }) };
  };
}
