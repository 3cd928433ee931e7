/** From a key press to the action it stands for. */

import type { Editor } from '../state/editor.svelte.ts';
import { ACTIONS, actionNamed, keysOf, type Action } from './actions.ts';
import { countsAt, isPressed, type Focus } from './key-press.ts';

/** The action for a press, if it counts where the focus is; whether it may be done now is another matter. */
export function actionFor(event: KeyboardEvent, editor: Editor): Action | null {
  if (editor.questions.open.length > 0 || event.defaultPrevented) return null;
  const focus = focusOf(event.target);
  // A field that has something to take back has kept this key to itself.
  if (focus === 'field' && isPressed('Escape', event)) return actionNamed('go.plan');
  return (
    ACTIONS.find(
      (action) =>
        !action.byBrowser &&
        keysOf(action, editor).some((keys) => isPressed(keys, event) && countsAt(focus, keys, action.onPlan)),
    ) ?? null
  );
}

function focusOf(target: EventTarget | null): Focus {
  if (!(target instanceof Element) || target === document.body) return 'plan';
  if (target.matches('input:not([type="checkbox"]), select, textarea'))
    return holdsTyping(target) ? 'typing' : 'field';
  if (target.closest('[role="menu"]')) return 'menu';
  return target.closest('[data-plan]') ? 'plan' : 'control';
}

/** Fields of the forms say by `data-settled` that what they show is the document's; others hold what is in them. */
function holdsTyping(field: Element): boolean {
  if (field instanceof HTMLSelectElement || field.hasAttribute('data-settled')) return false;
  return field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement
    ? field.value !== ''
    : false;
}
