/**
 * Which file this window works on, kept by the browser for as long as the window lives: so a reload finds it again,
 * whatever else was opened in other windows meanwhile. Handles are no paths and mean nothing outside the program.
 */

import type { Handle } from '#contract/contract.ts';

const KEY = 'standlines.file';

type Memory = Pick<Storage, 'getItem' | 'setItem'>;

/** Null: what the window works on lies in no file. */
export function rememberFile(handle: Handle | null, memory: Memory = sessionStorage): void {
  memory.setItem(KEY, handle ?? '');
}

/** Undefined: this window has worked on nothing yet. */
export function rememberedFile(memory: Memory = sessionStorage): Handle | null | undefined {
  const known = memory.getItem(KEY);
  return known === null ? undefined : known || null;
}
