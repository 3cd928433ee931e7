import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MeasureText } from '#model/drawing/primitives.ts';
import { fitted, oneLine, wrapped } from '#model/drawing/text.ts';

/** Every character half as wide as the letters are high. */
const measure: MeasureText = (text, size) => Array.from(text).length * size * 0.5;
const TYPE = { size: 2, weight: 'regular' } as const;
const width = (text: string) => measure(text, TYPE.size, TYPE.weight);

describe('oneLine', () => {
  it('turns line breaks and tabs into spaces', () => {
    expect(oneLine('a\r\nb\tc\u2028d')).toBe('a b c d');
  });

  it('drops what turns the writing direction and what cannot be seen', () => {
    expect(oneLine('safe\u202Egnp.exe\u200B\u0007\u2066x\u2069')).toBe('safegnp.exex');
  });

  it('drops lone surrogates and keeps letters of any script', () => {
    expect(oneLine('Dvořák \ud800 ♭ Ωμέγα Чайка דוד')).toBe('Dvořák ♭ Ωμέγα Чайка דוד');
  });

  it('keeps a pile of accents from growing', () => {
    expect(oneLine(`e${'\u0301'.repeat(50)}`)).toBe(`e${'\u0301'.repeat(3)}`);
  });
});

describe('fitted', () => {
  it('leaves alone what fits and ends with an ellipsis what does not', () => {
    expect(fitted('Viola', 5, TYPE, measure)).toBe('Viola');
    expect(fitted('Marimba', 5, TYPE, measure)).toBe('Mari…');
    expect(fitted('Marimba', 0.5, TYPE, measure)).toBe('');
  });

  it('is never wider than asked, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', maxLength: 600 }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        (text, room) => {
          expect(width(fitted(text, room, TYPE, measure))).toBeLessThanOrEqual(room);
        },
      ),
    );
  });

  it('takes ten thousand characters in its stride', () => {
    expect(width(fitted('x'.repeat(10_000), 30, TYPE, measure))).toBeLessThanOrEqual(30);
  });
});

describe('wrapped', () => {
  it('never tears a figure from its fraction, unit or side as long as a line holds it', () => {
    const text = `chair 1'-6 1/4" SL, 820 mm US off 2'-9 1/2"`;
    for (const room of [15, 18, 24]) {
      const lines = wrapped(text, room, TYPE, measure);
      for (const figure of [`1'-6 1/4"`, `2'-9 1/2"`, '820 mm'])
        expect(lines.some((line) => line.includes(figure))).toBe(true);
    }
    expect(wrapped(`1'-6 1/4"`, 6, TYPE, measure)).toEqual([`1'-6`, `1/4"`]);
  });

  it('breaks at spaces and keeps paragraphs', () => {
    expect(wrapped('one two three\nfour', 9, TYPE, measure)).toEqual(['one two', 'three', 'four']);
  });

  it('loses no letter and makes no line too wide', () => {
    const words = fc.array(fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 40 }), {
      maxLength: 60,
    });
    fc.assert(
      fc.property(words, fc.integer({ min: 2, max: 40 }), (list, room) => {
        const text = list.join(' ');
        const lines = wrapped(text, room, TYPE, measure);
        for (const line of lines) expect(width(line)).toBeLessThanOrEqual(room);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
      }),
    );
  });
});
