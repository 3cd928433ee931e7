/** Record ids. A brand keeps a player's id from being used where a stand's is wanted. */

import type { Kind } from './records.ts';

declare const brand: unique symbol;

/** The id of a record of kind `K`: 1 to 64 letters, digits, `-` or `_`, starting with a letter. */
export type Id<K extends Kind = Kind> = string & { readonly [brand]: K };

export const ID_PATTERN = /^[A-Za-z][A-Za-z0-9_-]{0,63}$/;

export function isWellFormedId(text: string): boolean {
  return ID_PATTERN.test(text);
}

/** Marks a text as an id. Callers have checked it (the file reader) or made it (a command). */
export function asId<K extends Kind>(text: string): Id<K> {
  return text as Id<K>;
}

/**
 * Natural order: `stand-2` before `stand-10`. Marks are numbered in this order, so the number of an item
 * on the plot does not depend on the order in which records were made or undone.
 */
export function compareIds(a: string, b: string): number {
  const [headA, tailA] = splitTrailingNumber(a);
  const [headB, tailB] = splitTrailingNumber(b);
  if (headA !== headB) return headA < headB ? -1 : 1;
  return tailA - tailB || (a < b ? -1 : a > b ? 1 : 0);
}

function splitTrailingNumber(id: string): [string, number] {
  const match = /\d{1,15}$/.exec(id);
  return match ? [id.slice(0, match.index), Number(match[0])] : [id, -1];
}
