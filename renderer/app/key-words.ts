/** Keys as they are printed on the keyboard. */

const KEY_SIGNS: Readonly<Record<string, string>> = {
  Mod: 'Ctrl',
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  Escape: 'Esc',
  Delete: 'Del',
  PageUp: 'Page up',
  PageDown: 'Page down',
};

/** "Mod+Shift+S" as "Ctrl+Shift+S", "ArrowLeft" as "←". */
export function keyWords(keys: string): string {
  return keys.replace(/[A-Za-z]+/g, (name) => KEY_SIGNS[name] ?? name);
}
