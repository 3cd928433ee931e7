/** Keys as they are printed on a German keyboard. */

import type { keysWords as english } from '../keys.ts';
import type { Widened } from '../widened.ts';

export const keysWords: Widened<typeof english> = {
  keys: {
    Mod: 'Strg',
    Shift: 'Umschalt',
    Alt: 'Alt',
    ArrowLeft: '←',
    ArrowRight: '→',
    ArrowUp: '↑',
    ArrowDown: '↓',
    Enter: 'Eingabe',
    Escape: 'Esc',
    Backspace: 'Rücktaste',
    Delete: 'Entf',
    PageUp: 'Bild auf',
    PageDown: 'Bild ab',
  },
};
