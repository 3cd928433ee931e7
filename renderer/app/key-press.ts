/** Whether a press of a key is what is written of it: `Mod+Shift+S`. */

export interface Pressed {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
}

/**
 * Whether a press is what an action's key says. Signs that need Shift on some keyboards ("{", "+") count with and
 * without it; letters and arrows do not.
 */
export function isPressed(keys: string, press: Pressed): boolean {
  const { key, mod, alt, shift } = partsOf(keys);
  if (mod !== (press.ctrlKey || press.metaKey) || alt !== press.altKey) return false;
  const isSign = key.length === 1 && key.toLowerCase() === key.toUpperCase();
  if (!isSign && shift !== press.shiftKey) return false;
  return press.key.toLowerCase() === key.toLowerCase();
}

function partsOf(keys: string): { key: string; mod: boolean; alt: boolean; shift: boolean } {
  const parts = keys.endsWith('++')
    ? [...keys.slice(0, -2).split('+'), '+']
    : keys === '+'
      ? ['+']
      : keys.split('+');
  return {
    key: parts.at(-1) ?? '',
    mod: parts.includes('Mod'),
    alt: parts.includes('Alt'),
    shift: parts.includes('Shift'),
  };
}
