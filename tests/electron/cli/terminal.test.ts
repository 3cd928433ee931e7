/** Names that a terminal would obey. */

import { expect, it } from 'vitest';
import { onOneLine, withoutDirections } from '../../../electron/cli/terminal.ts';

it.each([
  ['line ends', 'a\r\nb\u2028c\u0085d', 'a b c d'],
  ['orders to a terminal', 'a\u001b[31mb\u009b1mc\u0007', 'a [31mb 1mc '],
  ['a writing direction that is left open', 'a\u202eb\u2066c', 'abc'],
  ['letters of every script', 'Ž 日本 שלום\u200f 👩‍🎤', 'Ž 日本 שלום\u200f 👩‍🎤'],
])('on one line: %s', (_what, text, safe) => {
  expect(onOneLine(text)).toBe(safe);
});

it('lines and marks of single letters stay in a text of several lines', () => {
  expect(withoutDirections('a\u202e\nb\u200f\u2069')).toBe('a\nb\u200f');
});
