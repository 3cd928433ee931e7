import { describe, expect, it } from 'vitest';
import { countsAt, isPressed, type Pressed } from '../../../renderer/app/key-press.ts';
import { keyWords } from '../../../renderer/app/key-words.ts';

const press = (key: string, held: Partial<Pressed> = {}): Pressed => ({
  key,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  ...held,
});

describe('isPressed', () => {
  it('takes Ctrl and Cmd alike, and nothing more than was asked for', () => {
    expect(isPressed('Mod+Z', press('z', { ctrlKey: true }))).toBe(true);
    expect(isPressed('Mod+Z', press('z', { metaKey: true }))).toBe(true);
    expect(isPressed('Mod+Z', press('Z', { ctrlKey: true, shiftKey: true }))).toBe(false);
    expect(isPressed('Mod+Shift+Z', press('Z', { ctrlKey: true, shiftKey: true }))).toBe(true);
    expect(isPressed('Mod+Z', press('z'))).toBe(false);
    expect(isPressed('Mod+Z', press('z', { ctrlKey: true, altKey: true }))).toBe(false);
  });

  it('tells arrows with and without Shift apart', () => {
    expect(isPressed('ArrowLeft', press('ArrowLeft'))).toBe(true);
    expect(isPressed('ArrowLeft', press('ArrowLeft', { shiftKey: true }))).toBe(false);
    expect(isPressed('Shift+ArrowLeft', press('ArrowLeft', { shiftKey: true }))).toBe(true);
  });

  it('takes signs however the keyboard makes them', () => {
    expect(isPressed('{', press('{', { shiftKey: true }))).toBe(true);
    expect(isPressed('[', press('[', { altKey: false }))).toBe(true);
    expect(isPressed('+', press('+', { shiftKey: true }))).toBe(true);
    expect(isPressed('Mod++', press('+', { ctrlKey: true }))).toBe(true);
    expect(isPressed('Mod+-', press('-', { ctrlKey: true }))).toBe(true);
    const withAltGr = { ctrlKey: true, altKey: true, getModifierState: () => true };
    expect(isPressed('[', press('[', withAltGr))).toBe(true);
    expect(isPressed('[', press('[', { ...withAltGr, getModifierState: () => false }))).toBe(false);
    expect(isPressed('N', press('n', withAltGr))).toBe(false);
  });
});

describe('where a key counts', () => {
  it('single letters and signs everywhere but in fields and menus', () => {
    for (const keys of ['S', '0', '1', '+', '[', 'Shift+N']) {
      expect([keys, countsAt('plan', keys, true), countsAt('control', keys, true)]).toEqual([
        keys,
        true,
        true,
      ]);
      for (const focus of ['typing', 'field', 'menu'] as const) {
        expect([keys, focus, countsAt(focus, keys, false)]).toEqual([keys, focus, false]);
      }
    }
  });

  it('Escape lets go from every control, but not from fields and menus, which have their own', () => {
    expect((['plan', 'control'] as const).map((focus) => countsAt(focus, 'Escape', true))).toEqual([
      true,
      true,
    ]);
    for (const focus of ['typing', 'field', 'menu'] as const)
      expect(countsAt(focus, 'Escape', true)).toBe(false);
  });

  it('arrows and Delete of the plan only on the plan', () => {
    for (const keys of ['ArrowUp', 'Shift+ArrowLeft', 'Delete', 'Mod+A']) {
      expect(countsAt('plan', keys, true)).toBe(true);
      for (const focus of ['typing', 'field', 'menu', 'control'] as const) {
        expect([keys, focus, countsAt(focus, keys, true)]).toEqual([keys, focus, false]);
      }
    }
  });

  it('undo and redo are a field’s own only while it holds text of its own', () => {
    for (const keys of ['Mod+Z', 'Mod+Shift+Z', 'Mod+Y']) {
      expect(countsAt('typing', keys, false)).toBe(false);
      expect(countsAt('field', keys, false)).toBe(true);
      expect(countsAt('control', keys, false)).toBe(true);
    }
    expect(countsAt('typing', 'Mod+S', false)).toBe(true);
    expect(countsAt('field', 'Mod+D', false)).toBe(false);
  });
});

describe('keyWords', () => {
  it('writes keys as they are printed on the keyboard', () => {
    expect(keyWords('Mod+Shift+S')).toBe('Ctrl+Shift+S');
    expect(keyWords('ArrowLeft')).toBe('←');
    expect(keyWords('Mod++')).toBe('Ctrl++');
  });
});
