/** Takes things out; with a player goes what only he needs, and that is said. */

import { removeWithBelongings } from '#model/commands/belongings.ts';
import { labelOf } from '#model/document/labels.ts';
import type { AnyRecord } from '#model/document/records.ts';
import type { Editor } from '../state/editor.svelte.ts';
import { text } from './text.ts';

export function removeFrom(editor: Editor, ids: readonly string[]): void {
  const { document, setup } = editor.session;
  const outcome = removeWithBelongings(editor.session.settled, { ids });
  const named = (records: readonly AnyRecord[]): string =>
    text.list(records.map(({ id }) => labelOf(document, setup, id)));
  const asked = ids.flatMap((id) => document.records.get(id) ?? []);
  if (!editor.carryOut(outcome) || !outcome.ok || outcome.along.length === 0) return;
  editor.tell(text.removedAlong(named(asked), named(outcome.along)));
}
