/** Whether a press of a key is what is written of it (`Mod+Shift+S`), and whether it counts where the focus is. */

export interface Pressed {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
  readonly getModifierState?: (key: 'AltGraph') => boolean;
}

/**
 * Whether a press is what an action's key says. Signs that need Shift on some keyboards ("{", "+") count with and
 * without it; letters and arrows do not.
 */
export function isPressed(keys: string, press: Pressed): boolean {
  const { key, mod, alt, shift } = partsOf(keys);
  const isSign = key.length === 1 && key.toLowerCase() === key.toUpperCase();
  // German keyboards make brackets with AltGr, which some systems tell of as Ctrl and Alt.
  const isMadeSo = isSign && press.getModifierState?.('AltGraph') === true;
  const [modHeld, altHeld] = isMadeSo ? [false, false] : [press.ctrlKey || press.metaKey, press.altKey];
  if (mod !== modHeld || alt !== altHeld) return false;
  if (!isSign && shift !== press.shiftKey) return false;
  return press.key.toLowerCase() === key.toLowerCase();
}

/**
 * What has the focus: the plan (or nothing), a field with text that has not been taken over yet, a field without, an
 * open menu, or any other control.
 */
export type Focus = 'plan' | 'typing' | 'field' | 'menu' | 'control';

/** Keys that a field needs for its own text while there is some that is not taken over yet. */
const FOR_TYPING: readonly string[] = ['Mod+Z', 'Mod+Shift+Z', 'Mod+Y', 'Mod+D'];

/** Whether a field would use this press for its own text. */
export function isForTyping(press: Pressed): boolean {
  return FOR_TYPING.some((keys) => isPressed(keys, press));
}

/**
 * Whether an action's key counts where the focus is. Single letters and signs keep clear of fields and of menus, which
 * jump to what begins with a letter; Escape keeps clear of them, too; all other keys of the plan belong to whatever
 * control has the focus.
 */
export function countsAt(focus: Focus, keys: string, onPlan: boolean): boolean {
  if (focus === 'plan') return true;
  if (isSingle(keys) || keys === 'Escape') return focus === 'control';
  if (onPlan) return false;
  if (focus === 'field') return keys !== 'Mod+D';
  return focus !== 'typing' || !FOR_TYPING.includes(keys);
}

/** One letter or sign, with Shift or without: what somebody may press, or say to the computer, without meaning it. */
export function isSingle(keys: string): boolean {
  return keys.replace(/^Shift\+(?=.)/, '').length === 1;
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
