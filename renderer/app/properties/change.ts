/** Carries commands out for fields: a refusal comes back as words that are shown under the field. */

import type { Outcome } from '#model/commands/command.ts';
import { setFields, type FieldsOf } from '#model/commands/set-fields.ts';
import { asId, type Id } from '#model/document/ids.ts';
import type { Kind, RecordOf } from '#model/document/records.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { refusalWords } from '#model/commands/refusal-words.ts';

/** Null when it was done. */
export function done(editor: Editor, outcome: Outcome): string | null {
  const refusal = editor.session.carryOut(outcome);
  return refusal && refusalWords(refusal, editor.units);
}

export function set<K extends Kind>(editor: Editor, record: RecordOf<K>, fields: FieldsOf<K>): string | null {
  const ids: readonly Id<K>[] = [asId<K>(record.id)];
  return done(editor, setFields<K>(editor.session.settled, { ids, fields }));
}
