import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findTextFault, lineAndColumn } from '#model/file-format/json-text.ts';
import { fixtureNames, fixtureText } from './fixtures.ts';

/** The engine's own parser, as the reference for what is JSON (RFC 8259). */
const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

/** Faults that the engine's parser lets pass and this one means to find. */
const BEYOND_JSON =
  /stands twice|is not allowed; remove it|too many fields|nested deeper|than a Standlines file/;

const agrees = (text: string): boolean => {
  const fault = findTextFault(text);
  return fault === null ? isJson(text) : BEYOND_JSON.test(fault.message) || !isJson(text);
};

describe('finding where a text stops being JSON', () => {
  it('agrees with the engine’s parser on arbitrary JSON and on what is left of it after a change', () => {
    const change = fc.record({
      at: fc.nat(),
      remove: fc.nat({ max: 3 }),
      put: fc.constantFrom(
        '',
        '"',
        '\\',
        '{',
        '}',
        '[',
        ']',
        ',',
        ':',
        '0',
        '-',
        '.',
        'e',
        'u',
        ' ',
        '\n',
        '\t',
        'null',
        'é',
      ),
    });
    fc.assert(
      fc.property(fc.json({ maxDepth: 4 }), change, (json, { at, remove, put }) => {
        const cut = at % (json.length + 1);
        expect(agrees(json)).toBe(true);
        expect(agrees(json.slice(0, cut) + put + json.slice(cut + remove))).toBe(true);
      }),
      { numRuns: 5000 },
    );
  });

  it('agrees with it on short texts of the characters that matter', () => {
    const piece = fc.constantFrom(
      ...'{}[]":,\\ue+-.019 \n\t\u0001\u2028\u00a0',
      'true',
      'null',
      '"a"',
      '\\u00e9',
      '\ufeff',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 8 }), (pieces) => {
        expect(agrees(pieces.join(''))).toBe(true);
      }),
      { numRuns: 10_000 },
    );
  });

  it('agrees with it on the fixtures', () => {
    for (const folder of ['good', 'bad'] as const) {
      for (const name of fixtureNames(folder)) expect(agrees(fixtureText(folder, name)), name).toBe(true);
    }
  });

  it.each([
    ['{"a": 1 "b": 2}', 8],
    ['[1, 2', 5],
    ['["a\nb"]', 3],
    ['["\\x"]', 2],
    ['{"a": tru}', 6],
    ['{"a" 1}', 5],
    ['[01]', 2],
    ['{}}', 2],
  ])('finds the place in %j', (text, at) => {
    expect(findTextFault(text)?.at).toBe(at);
  });

  it('counts lines and columns from 1', () => {
    const text = '{\n  "a": 1,\n  "b" 2\n}';
    expect(lineAndColumn(text, 0)).toEqual({ line: 1, column: 1 });
    expect(lineAndColumn(text, text.indexOf('"b"'))).toEqual({ line: 3, column: 3 });
    expect(lineAndColumn(text, text.length)).toEqual({ line: 4, column: 2 });
    expect(lineAndColumn(text, text.indexOf('\n'))).toEqual({ line: 1, column: 2 });
  });
});
