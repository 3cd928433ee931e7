/**
 * What a control is for, in words of its own: shown by `WhyLayer` when the pointer rests on it or the Tab key gets to it,
 * and always there for a screen reader. Beside `title` it can be reached by keyboard, pointed at, and put away (WCAG 2.2,
 * 1.4.13).
 */

import type { Attachment } from 'svelte/attachments';

const WHY = 'data-why';
const KEYS = 'data-why-keys';

/** `keys`: how it is done without the mouse, beside the words. */
export interface Why {
  readonly words: string;
  readonly keys: string | null;
}

/** For a control, or for the label of one. */
export function why(words: string | null | undefined): Attachment<HTMLElement> {
  return (element) => {
    if (!words) return;
    element.setAttribute(WHY, words);
    const described = describedBy(element);
    described.setAttribute('aria-description', words);
    return () => {
      element.removeAttribute(WHY);
      described.removeAttribute('aria-description');
    };
  };
}

/** For a control whose name is nowhere to be seen: the words are its name, which a screen reader has already. */
export function named(words: string, keys: string | null): Attachment<HTMLElement> {
  return (element) => {
    element.setAttribute(WHY, words);
    if (keys !== null) element.setAttribute(KEYS, keys);
    return () => {
      element.removeAttribute(WHY);
      element.removeAttribute(KEYS);
    };
  };
}

export function whyOf(element: Element): Why | null {
  const words = element.getAttribute(WHY);
  return words === null ? null : { words, keys: element.getAttribute(KEYS) };
}

/** What speaks of a node: itself, what it lies in, or the label of the field that it is. */
export function explainedAt(node: EventTarget | null): Element | null {
  if (!(node instanceof Element)) return null;
  const labels = node instanceof HTMLInputElement || node instanceof HTMLSelectElement ? node.labels : null;
  const label = [...(labels ?? [])].find((each) => each.hasAttribute(WHY));
  return label ?? node.closest(`[${WHY}]`);
}

function describedBy(element: HTMLElement): HTMLElement {
  return element instanceof HTMLLabelElement ? (element.control ?? element) : element;
}
