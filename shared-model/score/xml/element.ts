/** A grammar of the elements that somebody wants. Whatever it does not name is passed over, with all that is inside. */

export type Attributes = Readonly<Record<string, string>>;

export interface Element {
  readonly open?: (attributes: Attributes) => void;
  /** Gets the text that stood in the element since its last child. */
  readonly close?: (text: string) => void;
  readonly children?: ReadonlyMap<string, Element>;
}

/** Children by name; a map, so that no name in a file means something to JavaScript. */
export function children(elements: Readonly<Record<string, Element>>): ReadonlyMap<string, Element> {
  return new Map(Object.entries(elements));
}

/** An element whose text alone is wanted. */
export function textOf(take: (text: string) => void): Element {
  return { close: take };
}

/** An element whose being there is what counts. */
export function mark(take: (attributes: Attributes) => void): Element {
  return { open: take };
}
