/** The keyboard's focus is not lost with what had it. */

import type { Attachment } from 'svelte/attachments';

interface Fallbacks {
  /** Takes the focus of something inside that is gone. */
  readonly inside: () => HTMLElement | null;
  /** The whole is put away with the focus in it. */
  readonly outside: () => void;
}

/** For a part of the window whose controls come and go: a browser leaves the focus of what is taken out nowhere at all. */
export function keepsFocus({ inside, outside }: Fallbacks): Attachment<HTMLElement> {
  return (part) => {
    let last: Element | null = null;
    part.dataset['keepsFocus'] = '';
    // Of parts within each other the innermost sees to it.
    const came = ({ target }: FocusEvent): void => {
      const focused = target as Element;
      last = focused.closest('[data-keeps-focus]') === part ? focused : null;
    };
    const went = ({ relatedTarget }: FocusEvent): void => {
      if (relatedTarget !== null && !part.contains(relatedTarget as Node)) last = null;
    };
    const changes = new MutationObserver((records) => {
      const isGone = (gone: Node): boolean => gone.contains(last);
      if (!last || !isNowhere() || !records.some(({ removedNodes }) => [...removedNodes].some(isGone)))
        return;
      // What was only moved to another place is still there.
      const back = part.contains(last) ? (last as HTMLElement) : inside();
      back?.focus();
    });
    part.addEventListener('focusin', came);
    part.addEventListener('focusout', went);
    changes.observe(part, { childList: true, subtree: true });
    return () => {
      changes.disconnect();
      part.removeEventListener('focusin', came);
      part.removeEventListener('focusout', went);
      if (last && isNowhere()) outside();
    };
  };
}

const isNowhere = (): boolean => document.activeElement === null || document.activeElement === document.body;
