/** Pieces put elsewhere in the programme, by dragging and by keys. */

import { reorderSetup } from '#model/commands/setups.ts';
import { find, programmeOf } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { setupTitle } from '../setup-actions.ts';
import { text } from '../text.ts';

/** `place` from 1; beyond the ends it stays where it is. */
export function movePiece(editor: Editor, setup: Id<'setup'>, place: number): void {
  const { session } = editor;
  const pieces = programmeOf(session.settled);
  if (place < 1 || place > pieces.length) return;
  if (pieces[place - 1]?.id === setup) return;
  if (!editor.carryOut(reorderSetup(session.settled, { setup, to: place }))) return;
  const moved = find(session.settled, setup);
  if (moved) editor.announce(text.programme.moved(setupTitle(session.settled, moved), place));
}
