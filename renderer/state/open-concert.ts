/**
 * The open concert as an immutable value: its document with undo and redo, the selection, the setup in view, and the
 * draft that a gesture previews. Every function hands back the next value; the only way to a changed document is a
 * command's outcome.
 */

import type { Proposal } from '#model/commands/command.ts';
import { applyDiff } from '#model/document/diff.ts';
import { belongsTo, setupsOf, type Document } from '#model/document/document.ts';
import {
  commit,
  redo,
  startHistory,
  undo,
  type Entry,
  type History,
  type Selection,
} from '#model/document/history.ts';
import type { Id } from '#model/document/ids.ts';

export interface Draft {
  readonly proposal: Proposal;
  readonly document: Document;
}

export interface OpenConcert {
  readonly history: History;
  readonly draft: Draft | null;
  readonly setup: Id<'setup'>;
  /** The entry at which the document was last written to its file; null: as it was opened. */
  readonly savedAt: Entry | null;
  /** Whether it has been in a file at all. */
  readonly inFile: boolean;
}

export function opened(document: Document, inFile: boolean): OpenConcert {
  return { history: startHistory(document), draft: null, setup: firstSetup(document), savedAt: null, inFile };
}

/** What is on the screen: the draft while a gesture lasts, otherwise the document. */
export function shownDocument(concert: OpenConcert): Document {
  return concert.draft?.document ?? concert.history.document;
}

/** The selection without what is not in the shown document any more. */
export function shownSelection(concert: OpenConcert): Selection {
  const { records } = shownDocument(concert);
  return concert.history.selection.filter((id) => records.has(id));
}

export function isDirty(concert: OpenConcert): boolean {
  return !concert.inFile || lastEntry(concert) !== concert.savedAt;
}

/** Where the history stands; hand it to `saved` when what was written then has reached the disk. */
export function lastEntry(concert: OpenConcert): Entry | null {
  return concert.history.past.at(-1) ?? null;
}

export function saved(concert: OpenConcert, at: Entry | null): OpenConcert {
  return { ...concert, savedAt: at, inFile: true };
}

export function carriedOut(concert: OpenConcert, proposal: Proposal): OpenConcert {
  const { history } = concert;
  const selection = proposal.select ?? history.selection;
  return settledOn(concert, commit(history, proposal.label, proposal.diff, selection));
}

/** Shows what the proposal would do; `draftKept` carries it out, `draftDropped` forgets it. */
export function drafted(concert: OpenConcert, proposal: Proposal): OpenConcert {
  return { ...concert, draft: { proposal, document: applyDiff(concert.history.document, proposal.diff) } };
}

export function draftKept(concert: OpenConcert): OpenConcert {
  return concert.draft ? carriedOut(concert, concert.draft.proposal) : concert;
}

export function draftDropped(concert: OpenConcert): OpenConcert {
  return concert.draft ? { ...concert, draft: null } : concert;
}

export function undone(concert: OpenConcert): OpenConcert {
  return settledOn(concert, undo(concert.history));
}

export function redone(concert: OpenConcert): OpenConcert {
  return settledOn(concert, redo(concert.history));
}

export function selected(concert: OpenConcert, ids: Selection): OpenConcert {
  return { ...concert, history: { ...concert.history, selection: [...ids] } };
}

/** Shows another setup; what is not part of it is no longer selected. */
export function setupShown(concert: OpenConcert, setup: Id<'setup'>): OpenConcert {
  const { records } = shownDocument(concert);
  const staying = shownSelection(concert).filter((id) => {
    const record = records.get(id);
    return record !== undefined && belongsTo(record, setup);
  });
  return { ...selected(concert, staying), setup };
}

/** A change can remove the setup in view, or undo its making: then the first one is shown. */
function settledOn(concert: OpenConcert, history: History): OpenConcert {
  const stays = history.document.records.has(concert.setup);
  return { ...concert, history, draft: null, setup: stays ? concert.setup : firstSetup(history.document) };
}

function firstSetup(document: Document): Id<'setup'> {
  const first = setupsOf(document)[0];
  if (!first) throw new Error('document without a setup');
  return first.id;
}
