import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileNameFor } from '../../../renderer/files/file-names.ts';

describe('fileNameFor', () => {
  it.each([
    ['Hedge and Harbour: an evening for three', 'Hedge and Harbour an evening for three'],
    ['a/b\\c', 'a b c'],
    ['..hidden.', 'hidden'],
    ['Dvořák, 弦楽', 'Dvořák, 弦楽'],
    [' : ', ''],
  ])('makes "%s" into "%s"', (title, name) => {
    expect(fileNameFor(title)).toBe(name);
  });

  // Characters that Windows does not allow in a file name (Microsoft, "Naming Files, Paths, and Namespaces").
  it('never leaves a character that a system refuses, nor a name that is too long', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300, unit: 'grapheme' }), (title) => {
        const name = fileNameFor(title);
        expect(name).not.toMatch(/[\\/:*?"<>|\u0000-\u001f]|^\.|[ .]$/);
        expect(Array.from(name).length).toBeLessThanOrEqual(80);
      }),
    );
  });
});
