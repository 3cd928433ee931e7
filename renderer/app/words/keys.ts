/** Keys as they are printed on the keyboard. */

export const keysWords = {
  keys: {
    Mod: 'Ctrl',
    Shift: 'Shift',
    Alt: 'Alt',
    ArrowLeft: '←',
    ArrowRight: '→',
    ArrowUp: '↑',
    ArrowDown: '↓',
    Enter: 'Enter',
    Escape: 'Esc',
    Backspace: 'Backspace',
    Delete: 'Del',
    PageUp: 'Page up',
    PageDown: 'Page down',
  },
} as const;
