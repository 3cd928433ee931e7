/** Keys as they are printed on the keyboard. */

import { text } from './text.ts';

/** "Mod+Shift+S" as "Ctrl+Shift+S", "ArrowLeft" as "←". */
export function keyWords(keys: string): string {
  const signs: Readonly<Record<string, string>> = text.keys;
  return keys.replace(/[A-Za-z]+/g, (name) => signs[name] ?? name);
}
