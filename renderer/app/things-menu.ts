/** What the menu under the right mouse button offers, on the plan and in the list beside it: by what is selected. */

import { turnTowards } from '#model/commands/turn.ts';
import { inSetup } from '#model/document/document.ts';
import { labelOf } from '#model/document/labels.ts';
import type { Point } from '#model/document/records.ts';
import type { Editor } from '../state/editor.svelte.ts';
import { actionNamed, keysOf, SIDES } from './actions.ts';
import { pasteByHand } from './clipboard.ts';
import type { MenuEntry } from './parts/menu-entry.ts';
import { text } from './text.ts';

const RULE: MenuEntry = { type: 'rule' };

/** An action as an entry of a menu, under the name and with the first key that it has now. */
export function menuItem(editor: Editor, id: string): MenuEntry {
  const action = actionNamed(id);
  const [keys] = keysOf(action, editor);
  return {
    type: 'item',
    words: action.words(editor),
    disabled: !action.may(editor),
    run: () => action.run(editor),
    ...(keys === undefined ? {} : { keys }),
  };
}

/** `spot`: where on the stage the menu was opened, for what is pasted; null: by the keyboard or in the list. */
export function thingsMenu(editor: Editor, spot: Point | null): readonly MenuEntry[] {
  const back = [...items(editor, ['edit.undo', 'edit.redo']), RULE];
  return isOfTheHouse(editor)
    ? [...aboutThePlace(editor), ...back, ...aboutThePlan(editor, spot)]
    : [...aboutThings(editor, spot), RULE, ...items(editor, ['edit.undo', 'edit.redo'])];
}

const items = (editor: Editor, ids: readonly string[]): MenuEntry[] => ids.map((id) => menuItem(editor, id));

/** Without those that make no sense now. */
const possible = (editor: Editor, ids: readonly string[]): MenuEntry[] =>
  items(
    editor,
    ids.filter((id) => actionNamed(id).may(editor)),
  );

function paste(editor: Editor, spot: Point | null): MenuEntry {
  return { ...menuItem(editor, 'edit.paste'), run: () => void pasteByHand(editor, spot) } as MenuEntry;
}

/** Nothing that stands anywhere is selected. */
function isOfTheHouse({ session }: Editor): boolean {
  return session.selection.every((id) => {
    const record = session.document.records.get(id);
    return !record || !('x' in record) || record.kind === 'underlay';
  });
}

/** Of the place looked into, the platform or the underlay. */
function aboutThePlace(editor: Editor): MenuEntry[] {
  const { session, view } = editor;
  const kind = session.document.records.get(session.selection[0] ?? '')?.kind;
  if (view.seat !== null)
    return [...items(editor, ['view.seen', 'view.nextPlace', 'view.placeBefore']), RULE];
  if (kind === 'platform')
    return [...items(editor, ['platform.trace', 'house.other', 'view.selection']), RULE];
  return kind === 'underlay' ? [...items(editor, ['view.selection', 'edit.remove']), RULE] : [];
}

function aboutThePlan(editor: Editor, spot: Point | null): MenuEntry[] {
  return [
    paste(editor, spot),
    ...items(editor, ['edit.selectAll', 'edit.showHidden']),
    RULE,
    ...items(editor, ['view.fit', 'view.stage', 'help.commands']),
  ];
}

function aboutThings(editor: Editor, spot: Point | null): MenuEntry[] {
  return [
    towards(editor),
    ...items(editor, ['edit.copy', 'edit.cut']),
    paste(editor, spot),
    ...items(editor, ['edit.duplicate', 'edit.mirror']),
    ...linedUp(editor),
    RULE,
    ...possible(editor, ['edit.group', 'edit.ungroup', 'edit.enter']),
    ...items(editor, ['edit.lock', 'edit.hide']),
    ...possible(editor, ['edit.share', 'edit.unshare']),
    RULE,
    ...items(editor, ['view.selection', 'edit.remove']),
  ];
}

function towards(editor: Editor): MenuEntry {
  const { session } = editor;
  const others = inSetup(session.document, session.setup, 'player').filter(
    ({ id }) => !session.selection.includes(id),
  );
  const face = (id: string): MenuEntry => ({
    type: 'item',
    words: labelOf(session.document, session.setup, id),
    run: () => editor.carryOut(turnTowards(session.settled, { ids: session.selection, towards: { id } })),
  });
  return {
    type: 'list',
    words: text.properties.turnTowards,
    entries: [...items(editor, ['edit.faceHouse', 'edit.faceThere']), ...others.map(({ id }) => face(id))],
  };
}

function linedUp(editor: Editor): MenuEntry[] {
  if (!actionNamed('edit.align.x').may(editor)) return [];
  const entries = [
    ...items(editor, ['edit.align.y', 'edit.align.x']),
    RULE,
    ...items(
      editor,
      SIDES.map(({ side }) => `edit.align.${side}`),
    ),
    RULE,
    ...items(editor, ['edit.distribute.x', 'edit.distribute.y']),
  ];
  return [{ type: 'list', words: text.hands.lineUp, entries }];
}
