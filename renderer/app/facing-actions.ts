/** Turning towards each player as commands, so that the list of commands finds whom to face. */

import { turnTowards } from '#model/commands/turn.ts';
import { inSetup } from '#model/document/document.ts';
import { labelOf } from '#model/document/labels.ts';
import { isPlaced } from '#model/document/records.ts';
import type { Editor } from '../state/editor.svelte.ts';
import type { Action } from './actions.ts';
import { text } from './text.ts';

/** Towards each player who is not selected and whose name holds all of these lower-case words; of none for no words. */
export function facingActions(editor: Editor, wanted: readonly string[]): Action[] {
  const { settled, setup, selection } = editor.session;
  const ids = selection.filter((id) => {
    const record = settled.records.get(id);
    return record && isPlaced(record);
  });
  if (wanted.length === 0 || ids.length === 0) return [];
  return inSetup(settled, setup, 'player')
    .filter(({ id }) => !ids.includes(id))
    .map(({ id }): Action => ({
      id: `face.${id}`,
      words: () => text.commands.turnTowards(labelOf(settled, setup, id)),
      keys: [],
      byBrowser: false,
      onPlan: false,
      may: () => true,
      run: () => editor.carryOut(turnTowards(editor.session.settled, { ids, towards: { id } })),
    }))
    .filter((action) => wanted.every((word) => action.words(editor).toLowerCase().includes(word)));
}
