/** Concerts as people write them who do not think of paper: long names, none, from the right, and words without a blank. */

import { documentOf, type Document } from '#model/document/document.ts';
import type { AnyRecord } from '#model/document/records.ts';

const NAMES = [
  'Kontrabassklarinette und zweite Ansage mit großen Glocken',
  'כינור ראשון של התזמורת',
  'Donaudampfschifffahrtsgesellschaftskapellmeisterinnen',
  'Nine quiet pieces for a long evening, in the version of 1911, with the repeats and a coda (rev. 1926)',
  'كمان ثان',
  'WWWWWWWWWWWWWWWWWWWW 1/2" SL',
  '"; DROP=1+1',
  'i',
];

const nameFor = (index: number): string => NAMES[index % NAMES.length] ?? '';

/** The same concert with every name of somebody or something made hard to set. */
export function hostile(document: Document): Document {
  return documentOf([...document.records.values()].map((record, index) => renamed(record, index)));
}

function renamed(record: AnyRecord, index: number): AnyRecord {
  if (record.kind === 'concert')
    return {
      ...record,
      name: `${nameFor(3)}, ${nameFor(1)}, ${nameFor(2)}`,
      venue: `${nameFor(2)}, Hall 3 (formerly a gymnasium)`,
      author: nameFor(0),
      revision: 'Third, with amendments',
      contacts: NAMES.map((name, at) => ({ role: nameFor(at + 1), name, reachedAt: nameFor(at + 2) })),
    };
  if (record.kind === 'setup') return { ...record, name: `${nameFor(3)}: ${nameFor(index)}` };
  return 'name' in record ? ({ ...record, name: nameFor(index) } as AnyRecord) : record;
}
