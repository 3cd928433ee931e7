import { describe, expect, it } from 'vitest';
import { isPressed, type Pressed } from '../../../renderer/app/key-press.ts';
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
  });
});

describe('keyWords', () => {
  it('writes keys as they are printed on the keyboard', () => {
    expect(keyWords('Mod+Shift+S')).toBe('Ctrl+Shift+S');
    expect(keyWords('ArrowLeft')).toBe('←');
    expect(keyWords('Mod++')).toBe('Ctrl++');
  });
});
