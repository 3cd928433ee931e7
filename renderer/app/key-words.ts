/** Keys as they are printed on the keyboard. */

import { text } from './text.ts';

/** The same on every keyboard. */
const KEY_SIGNS: Readonly<Record<string, string>> = {
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  Escape: 'Esc',
};

/** "Mod+Shift+S" as "Ctrl+Shift+S", "ArrowLeft" as "←". */
export function keyWords(keys: string): string {
  const signs: Readonly<Record<string, string>> = { ...KEY_SIGNS, ...text.keys };
  return keys.replace(/[A-Za-z]+/g, (name) => signs[name] ?? name);
}
