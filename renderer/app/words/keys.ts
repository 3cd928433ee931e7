/** Keys as they are printed on the keyboard. */

export const keysWords = {
  keys: {
    Mod: 'Ctrl',
    Shift: 'Shift',
    Enter: 'Enter',
    Backspace: 'Backspace',
    Delete: 'Del',
    PageUp: 'Page up',
    PageDown: 'Page down',
  },
} as const;
