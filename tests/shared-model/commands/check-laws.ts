/** The laws that hold for whatever a command answers; every test of a command goes through here. */

import { expect } from 'vitest';
import type { Outcome, Proposal } from '#model/commands/command.ts';
import { applyDiff, composeDiffs, invertDiff, sameRecord } from '#model/document/diff.ts';
import type { Document } from '#model/document/document.ts';
import { readDocument } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';

/**
 * A refusal is one sentence. A proposal says what it does; its diff starts from the document as it is, changes every
 * record it names, can be taken back to the very same records, and leads to a document that can be saved and opened.
 */
export function checkLaws(document: Document, outcome: Outcome): void {
  if (outcome.ok) checkProposal(document, outcome);
  else expect(outcome.reason).toMatch(/^[^\n]{10,}\.$/);
}

/** Carries the command out and gives the new document; fails the test when it was refused. */
export function carriedOut(document: Document, outcome: Outcome): Document {
  checkLaws(document, outcome);
  if (!outcome.ok) throw new Error(`refused: ${outcome.reason}`);
  return applyDiff(document, outcome.diff);
}

/** The reason of a refusal; fails the test when there was none. */
export function refusal(document: Document, outcome: Outcome): string {
  checkLaws(document, outcome);
  if (outcome.ok) throw new Error(`not refused: ${outcome.label}`);
  return outcome.reason;
}

function checkProposal(document: Document, { diff, label, select }: Proposal): void {
  expect(label).toMatch(/^[a-z][^\n]*[^.\s]$/);
  for (const [id, { before, after }] of diff) {
    expect(before).toBe(document.records.get(id) ?? null);
    expect(before !== null || after !== null).toBe(true);
    if (after) expect(after.id).toBe(id);
    if (before && after) expect(sameRecord(before, after), `${id} is named but not changed`).toBe(false);
  }
  const after = applyDiff(document, diff);
  for (const id of select ?? []) expect(after.records.has(id)).toBe(true);
  checkUndo(document, after, diff);
  checkFile(after);
}

function checkUndo(document: Document, after: Document, diff: Proposal['diff']): void {
  const back = applyDiff(after, invertDiff(diff));
  expect(back.records.size).toBe(document.records.size);
  for (const [id, record] of document.records) expect(back.records.get(id)).toBe(record);
  const nothing = applyDiff(document, composeDiffs(diff, invertDiff(diff)));
  expect(nothing).toEqual(document);
}

function checkFile(document: Document): void {
  const result = readDocument(writeDocument(document));
  if (!result.ok) throw new Error(result.problem.message);
  expect(result.document).toEqual(document);
}
