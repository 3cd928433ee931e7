/** Words for a terminal, which obeys what it is sent: names in files, and names of files, may hold anything. */

/** Embeddings, overrides and isolates of the writing direction: left open, they turn round what follows. */
const DIRECTIONS = /[\u202a-\u202e\u2066-\u2069]/g;

/** The text as it is, but for what would make the words after a name run the other way. */
export function withoutDirections(text: string): string {
  return text.replace(DIRECTIONS, '');
}

/** On one line, without anything that a terminal would take for an order. */
export function onOneLine(text: string): string {
  return withoutDirections(text).replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ');
}
