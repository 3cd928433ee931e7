/** Actions on groups: taking hold of them, going inside, locking, hiding. */

import { group, setHidden, setLocked, ungroup } from '#model/commands/groups.ts';
import type { Document } from '#model/document/document.ts';
import { groupOf, hiddenIn, isHidden, isLocked, withTheirGroups } from '#model/document/groups.ts';
import { isPlaced, type Group } from '#model/document/records.ts';
import type { Editor } from '../state/editor.svelte.ts';

/** What is taken hold of with a thing: its whole group, unless that is the one that was gone into. */
export function heldWith({ session, view }: Editor, ids: readonly string[]): string[] {
  const { document } = session;
  const held = ids.flatMap((id) =>
    groupOf(document, id)?.id === view.entered ? [id] : withTheirGroups(document, [id]),
  );
  return [...new Set(held)];
}

/** Without what is hidden or locked: what a frame or "everything" takes hold of. */
export function freeOf(document: Document, ids: readonly string[]): string[] {
  return ids.filter((id) => !isHidden(document, id) && !isLocked(document, id));
}

/** The group of several things of which nothing is selected but all that is in it. */
export function groupSelected({ session: { document, selection } }: Editor): Group | null {
  const found = groupOf(document, selection[0] ?? '');
  if (!found || found.members.length < 2 || found.members.length !== selection.length) return null;
  return found.members.every((id) => selection.includes(id)) ? found : null;
}

/** Goes inside the group of a thing and selects it alone; false where it is in none or inside already. */
export function enterGroup({ session, view }: Editor, id: string): boolean {
  const found = groupOf(session.document, id);
  if (!found || found.members.length < 2 || found.id === view.entered) return false;
  view.entered = found.id;
  session.select([id]);
  return true;
}

/** Out of the group again, which is selected as a whole then. */
export function leaveGroup({ session, view }: Editor): void {
  const left = session.document.records.get(view.entered ?? '');
  view.entered = null;
  session.select(left?.kind === 'group' ? left.members : []);
}

export const mayGroup = (editor: Editor): boolean =>
  placed(editor).length > 1 && groupSelected(editor) === null;

export function groupSelection(editor: Editor): void {
  editor.view.entered = null;
  editor.carryOut(group(editor.session.settled, { ids: placed(editor) }));
}

export const mayUngroup = (editor: Editor): boolean =>
  placed(editor).some((id) => (groupOf(editor.session.document, id)?.members.length ?? 0) > 1);

export function ungroupSelection(editor: Editor): void {
  editor.view.entered = null;
  editor.carryOut(ungroup(editor.session.settled, { ids: placed(editor) }));
}

export const mayEnter = (editor: Editor): boolean => editor.view.entered === null && mayUngroup(editor);

export const isSelectionLocked = ({ session: { document, selection } }: Editor): boolean =>
  selection.length > 0 && selection.every((id) => isLocked(document, id));

export const isSelectionHidden = ({ session: { document, selection } }: Editor): boolean =>
  selection.length > 0 && selection.every((id) => isHidden(document, id));

export const mayMark = (editor: Editor): boolean => placed(editor).length > 0;

export function toggleLock(editor: Editor): void {
  const locked = !isSelectionLocked(editor);
  editor.carryOut(setLocked(editor.session.settled, { ids: placed(editor), locked }));
}

export function toggleHidden(editor: Editor): void {
  const hidden = !isSelectionHidden(editor);
  editor.carryOut(setHidden(editor.session.settled, { ids: placed(editor), hidden }));
}

export const hiddenCount = ({ session }: Editor): number => hiddenIn(session.document, session.setup).size;

export function showHidden(editor: Editor): void {
  const { session } = editor;
  const ids = [...hiddenIn(session.settled, session.setup)];
  editor.carryOut(setHidden(session.settled, { ids, hidden: false }));
}

function placed({ session: { document, selection } }: Editor): string[] {
  return selection.filter((id) => {
    const record = document.records.get(id);
    return record && isPlaced(record);
  });
}
