/** The browser's own modal dialogs, and who has the focus when they are gone. */

import type { Attachment } from 'svelte/attachments';

/** Had the focus before a dialog that has gone just now, and has not got it back yet. */
let owed: Element | null = null;

/** Shows it over the window. One that comes in the place of another gives the focus back to whom that one owed it. */
export const modal: Attachment<HTMLDialogElement> = (dialog) => {
  const before = isLost() ? (owed ?? document.activeElement) : document.activeElement;
  dialog.showModal();
  return () => {
    owed = before;
    // A moment later: the key that closed the dialog would press the button that opened it otherwise.
    setTimeout(() => owed === before && giveFocusBack());
  };
};

/** A dialog that is taken away does not give the focus back by itself. */
export function giveFocusBack(): void {
  if (isLost() && owed instanceof HTMLElement && owed.isConnected) owed.focus();
  owed = null;
}

const isLost = (): boolean => document.activeElement === null || document.activeElement === document.body;
