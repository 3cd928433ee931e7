/** Dragging a thing from its shelf to the plan. Until it is let go the plan takes it for what a click would set down. */

import type { Editor } from '../state/editor.svelte.ts';
import type { Thing } from '../store/things.ts';

/** A press that moves less than this is a click. */
const STILL_PIXELS = 5;

/**
 * To be called when the pointer goes down on the thing; `begun` when it has moved so far that no click is meant. A
 * finger scrolls the shelf instead.
 */
export function carry(editor: Editor, thing: Thing, press: PointerEvent, begun: () => void): void {
  if (press.button !== 0 || press.pointerType === 'touch') return;
  const { view } = editor;
  const listening = new AbortController();
  const { signal } = listening;
  let carrying = false;

  const move = ({ clientX, clientY, buttons }: PointerEvent): void => {
    if ((buttons & 1) === 0) return end();
    const isStill = Math.hypot(clientX - press.clientX, clientY - press.clientY) < STILL_PIXELS;
    if (isStill && !carrying) return;
    if (!carrying) begin();
    // Escape has put it back; the button is still down.
    if (view.armed === thing) view.carried = { x: clientX, y: clientY };
  };

  const begin = (): void => {
    carrying = true;
    view.tool?.cancel();
    view.armed = thing;
    begun();
  };

  /** Over the plan it has been set down by now; anywhere else it goes back. */
  const end = (): void => {
    listening.abort();
    if (!carrying) return;
    view.carried = null;
    if (view.armed !== thing) return;
    view.armed = null;
    editor.session.dropDraft();
  };

  release(press);
  window.addEventListener('pointermove', move, { signal });
  window.addEventListener('pointerup', end, { signal });
  window.addEventListener('pointercancel', end, { signal });
  window.addEventListener('blur', end, { signal });
}

/** A pen would otherwise keep telling the button where it is, not the plan. */
function release({ target, pointerId }: PointerEvent): void {
  if (target instanceof Element && target.hasPointerCapture(pointerId))
    target.releasePointerCapture(pointerId);
}
