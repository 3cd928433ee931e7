/** A piece of the page, made by hand: what makes the window's pieces is not there yet. */

export function element(
  name: 'div' | 'p' | 'span' | 'ul' | 'li' | 'i' | 'b',
  className: string,
  children: readonly (HTMLElement | string)[] = [],
): HTMLElement {
  const made = document.createElement(name);
  made.className = className;
  made.append(...children);
  return made;
}
