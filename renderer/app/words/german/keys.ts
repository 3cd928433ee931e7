/** Keys as they are printed on a German keyboard. */

import type { keysWords as english } from '../keys.ts';
import type { Widened } from '../widened.ts';

export const keysWords: Widened<typeof english> = {
  keys: {
    Mod: 'Strg',
    Shift: 'Umschalt',
    Enter: 'Eingabe',
    Backspace: 'Rücktaste',
    Delete: 'Entf',
    PageUp: 'Bild auf',
    PageDown: 'Bild ab',
  },
};
