/** Undo and redo without limit: a stack of reversed diffs, each with the selection before and after it. */

import { applyDiff, invertDiff, type Diff } from './diff.ts';
import type { Document } from './document.ts';

export type Selection = readonly string[];

export interface Entry {
  /** Says what the entry did, for "Undo move stand 3". */
  readonly label: string;
  readonly diff: Diff;
  readonly selectionBefore: Selection;
  readonly selectionAfter: Selection;
}

export interface History {
  readonly document: Document;
  readonly selection: Selection;
  readonly past: readonly Entry[];
  readonly future: readonly Entry[];
}

export function startHistory(document: Document): History {
  return { document, selection: [], past: [], future: [] };
}

/** Commits one gesture. An empty diff changes nothing and is not remembered. */
export function commit(history: History, label: string, diff: Diff, selection: Selection): History {
  if (diff.size === 0) return { ...history, selection };
  const entry: Entry = { label, diff, selectionBefore: history.selection, selectionAfter: selection };
  return {
    document: applyDiff(history.document, diff),
    selection,
    past: [...history.past, entry],
    future: [],
  };
}

export function undo(history: History): History {
  const entry = history.past.at(-1);
  if (!entry) return history;
  return {
    document: applyDiff(history.document, invertDiff(entry.diff)),
    selection: entry.selectionBefore,
    past: history.past.slice(0, -1),
    future: [entry, ...history.future],
  };
}

export function redo(history: History): History {
  const entry = history.future[0];
  if (!entry) return history;
  return {
    document: applyDiff(history.document, entry.diff),
    selection: entry.selectionAfter,
    past: [...history.past, entry],
    future: history.future.slice(1),
  };
}
