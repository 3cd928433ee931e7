/** The last step of every command: turns the records it would like to have into a diff, or into a refusal. */

import { applyDiff, sameRecord, type Change, type Diff } from '../document/diff.ts';
import type { Document } from '../document/document.ts';
import type { AnyRecord } from '../document/records.ts';
import type { Complaint } from '../file-format/complaint.ts';
import { documentRuleBroken } from '../file-format/document-rules.ts';
import { fieldWords } from '../file-format/field-words.ts';
import { readRecord } from '../file-format/record.ts';
import { refuse, refuseInUnits, type Outcome, type Refusal } from './command.ts';
import { nameOf } from './words.ts';

/** Records as they should become, by id; null: gone. */
export type Edits = ReadonlyMap<string, AnyRecord | null>;

export interface Intention {
  readonly label: string;
  /** What should be selected afterwards; left out: keep the selection. */
  readonly select?: readonly string[];
}

/**
 * Refuses what the file reader would refuse, so that no command can make a document that cannot be opened again.
 * Edits that change nothing are left out: a command without effect has an empty diff.
 */
export function propose(document: Document, edits: Edits, intention: Intention): Outcome {
  const diff = new Map<string, Change>();
  for (const [id, wanted] of edits) {
    const before = document.records.get(id) ?? null;
    if (wanted === null) {
      if (before) diff.set(id, { before, after: null });
      continue;
    }
    const result = readRecord(wanted);
    if (!result.ok) return complain(document, wanted, result.complaint);
    if (!before || !sameRecord(before, result.record)) diff.set(id, { before, after: result.record });
  }
  return brokenRule(document, diff) ?? { ok: true, diff, ...intention };
}

/** The edits that replace each of these records. */
export function editsOf(records: Iterable<AnyRecord>): Map<string, AnyRecord> {
  return new Map([...records].map((record) => [record.id, record]));
}

function brokenRule(document: Document, diff: Diff): Refusal | null {
  if (diff.size === 0) return null;
  const after = applyDiff(document, diff);
  const broken = documentRuleBroken(after);
  if (!broken) return null;
  return broken.record ? complain(after, broken.record, broken) : refuse(broken.text);
}

/** "stand 3, lip above the floor: -20 mm is not allowed; give a length from 100 mm to 2500 mm." */
function complain(document: Document, record: AnyRecord, { field, text, told }: Complaint): Refusal {
  const words = fieldWords(record.kind, field);
  const where = words === '' ? '' : `, ${words}`;
  const sentence = (wrong: string): string => `${nameOf(document, record)}${where}${wrong}.`;
  return told ? refuseInUnits((units) => sentence(told[units])) : refuse(sentence(text));
}
