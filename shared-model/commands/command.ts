/**
 * Commands are the only door by which a document changes. A command looks at the document and answers with a diff
 * or with a refusal; it never changes anything itself, so asking is also the way to find out whether it would work.
 */

import type { Diff } from '../document/diff.ts';
import type { Document } from '../document/document.ts';
import type { Units } from '../document/measures.ts';

export interface Refusal {
  readonly ok: false;
  /** What is wrong, where, and what to do: one sentence for people, its lengths in millimetres. */
  readonly reason: string;
  /** The same in feet and inches, where it tells a length. */
  readonly imperial?: string;
}

export interface Proposal {
  readonly ok: true;
  readonly diff: Diff;
  /** What it does, as it reads after "Undo": "move stand 3". */
  readonly label: string;
  /** What should be selected afterwards; left out: keep the selection. */
  readonly select?: readonly string[];
}

export type Outcome = Proposal | Refusal;

export type Command<Arguments> = (document: Document, args: Arguments) => Outcome;

export function refuse(reason: string): Refusal {
  return { ok: false, reason };
}

/** Of a sentence that tells a length. */
export function refuseInUnits(inUnits: (units: Units) => string): Refusal {
  return { ok: false, reason: inUnits('metric'), imperial: inUnits('imperial') };
}
