/** From a key press to the action it stands for. */

import type { Editor } from '../state/editor.svelte.ts';
import { ACTIONS, type Action } from './actions.ts';
import { isPressed } from './key-press.ts';

/** The action for a press, if it counts where the focus is and may be done now. */
export function actionFor(event: KeyboardEvent, editor: Editor): Action | null {
  if (editor.questions.open.length > 0 || event.defaultPrevented) return null;
  const focused = event.target instanceof Element ? event.target : null;
  const onPlan = focused === document.body || focused?.closest('[data-plan]') !== null;
  const isTyping = focused?.matches('input:not([type="checkbox"]), select, textarea') ?? false;
  const found = ACTIONS.find(
    (action) =>
      !action.byBrowser && action.keys.some((keys) => counts(keys, action, onPlan) && isPressed(keys, event)),
  );
  if (!found || (isTyping && keepsForTyping(event))) return null;
  return found.may(editor) ? found : null;
}

/** Single letters and signs count only on the plan, so that they never get in the way of typing or of a reader. */
function counts(keys: string, action: Action, onPlan: boolean): boolean {
  const isPlain = !keys.startsWith('Mod+') && !/^F\d+$/.test(keys) && !keys.startsWith('Alt+');
  return onPlan || (!action.onPlan && !isPlain);
}

/** In a field, undo and copy belong to the field. */
function keepsForTyping({ key, ctrlKey, metaKey }: KeyboardEvent): boolean {
  return (ctrlKey || metaKey) && ['z', 'y', 'a', 'd'].includes(key.toLowerCase());
}
