/** One way to name a bar. Common practice, no source. */

import { describe, expect, it } from 'vitest';
import { barLabels, labelRange, labelsWords } from '#model/score/words/bar-labels.ts';
import { stretchOfBars } from '#model/score/words/bar-words.ts';
import { remarkSentence } from '#model/score/words/remark-sentence.ts';

const numbered = (numbers: readonly string[], movements = [0]) => ({
  bars: numbers.map((number) => ({ number, ticks: 8 })),
  movements,
});

describe('a bar is named', () => {
  it('by its number where that stands once', () => {
    const label = barLabels(numbered(['0', '1', 'X1']));
    expect([0, 1, 2].map(label)).toEqual(['0', '1', 'X1']);
  });

  it('with its movement where several have the number, and by its place where one has it twice', () => {
    const music = numbered(['1', '2', '2', '1', '3', ''], [0, 3]);
    expect(music.bars.map((_, bar) => barLabels(music)(bar))).toEqual([
      '1 of movement 1',
      '#2',
      '#3',
      '1 of movement 2',
      '3',
      '#6',
    ]);
  });
});

it('stretches name a common movement and a common pass once', () => {
  expect(labelRange('3 of movement 2', '9 of movement 2')).toBe('3 to 9 of movement 2');
  expect(labelRange('3 of movement 1', '9 of movement 2')).toBe('3 of movement 1 to 9 of movement 2');
  expect([labelsWords('3', '3'), labelsWords('3', '4')]).toEqual(['bar 3', 'bars 3 to 4']);
  const at = (label: string, time: number, of = 2) => ({ label, pass: { time, of } });
  expect(stretchOfBars(at('3', 2), at('4', 2))).toBe('bars 3 to 4, second time');
  expect(stretchOfBars(at('8', 1), at('3', 2))).toBe('bar 8, first time, to bar 3, second time');
  expect(stretchOfBars(at('8', 2), at('9', 1, 1))).toBe('bar 8, second time, to bar 9');
  expect(stretchOfBars(at('29', 1, 1), at('45', 2))).toBe('bar 29 to bar 45, second time');
  expect(stretchOfBars(at('8', 1, 1), { label: '9', pass: null })).toBe('bars 8 to 9');
});

it('remarks name the movement of a bar whose number stands in several', () => {
  const music = numbered(['1', '2', '1', '2'], [0, 2]);
  expect(remarkSentence({ code: 'tempo.words', bar: 3, text: 'Lento' }, music)).toBe(
    'The tempo is read from printed words in bar 2 of movement 2: "Lento".',
  );
  expect(remarkSentence({ code: 'repeat.open', bar: 1 }, numbered(['1', '2']))).toContain(
    'begins in bar 2 does',
  );
});
