/** From a key press to the action it stands for. */

import type { Editor } from '../state/editor.svelte.ts';
import { ACTIONS, type Action } from './actions.ts';

export interface Pressed {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
}

/**
 * Whether a press is what an action's key says. Signs that need Shift on some keyboards ("{", "+") count with and
 * without it; letters and arrows do not.
 */
export function isPressed(keys: string, press: Pressed): boolean {
  const { key, mod, alt, shift } = partsOf(keys);
  if (mod !== (press.ctrlKey || press.metaKey) || alt !== press.altKey) return false;
  const isSign = key.length === 1 && key.toLowerCase() === key.toUpperCase();
  if (!isSign && shift !== press.shiftKey) return false;
  return press.key.toLowerCase() === key.toLowerCase();
}

function partsOf(keys: string): { key: string; mod: boolean; alt: boolean; shift: boolean } {
  const parts = keys.endsWith('++')
    ? [...keys.slice(0, -2).split('+'), '+']
    : keys === '+'
      ? ['+']
      : keys.split('+');
  return {
    key: parts.at(-1) ?? '',
    mod: parts.includes('Mod'),
    alt: parts.includes('Alt'),
    shift: parts.includes('Shift'),
  };
}

/** The action for a press, if it counts where the focus is and may be done now. */
export function actionFor(event: KeyboardEvent, editor: Editor): Action | null {
  if (editor.questions.open.length > 0 || event.defaultPrevented) return null;
  const focused = event.target instanceof Element ? event.target : null;
  const onPlan = focused === document.body || focused?.closest('[data-plan]') !== null;
  const isTyping = focused?.matches('input:not([type="checkbox"]), select, textarea') ?? false;
  const found = ACTIONS.find((action) =>
    action.keys.some((keys) => counts(keys, action, onPlan) && isPressed(keys, event)),
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
