/** Bars, remarks and refusals in German, and bars as German readers type them. Common practice, no source. */

import { afterAll, beforeAll, describe, expect, it, test } from 'vitest';
import type { Music } from '#model/document/music.ts';
import { barsCalled } from '#model/score/music/bar-names.ts';
import { withOrder, withTempos } from '#model/score/music/typed-over.ts';
import type { Problem } from '#model/score/problem.ts';
import { gridFrom } from '#model/score/table/grid.ts';
import { musicFromTable } from '#model/score/table/part-table.ts';
import { tableOf } from '#model/score/table/table-text.ts';
import { barLabels, labelRange, labelsWords } from '#model/score/words/bar-labels.ts';
import { barWords, stretchOfBars, withoutTime } from '#model/score/words/bar-words.ts';
import { tenthsWords } from '#model/score/words/clock-words.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';
import { remarkSentence } from '#model/score/words/remark-sentence.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';

const speakGerman = () => speakFrom('de', german);
beforeAll(speakGerman);
afterAll(speakEnglish);

const music = (numbers: readonly string[], movements = [0]): Music => ({
  title: '',
  ticksPerQuarter: 4,
  bars: numbers.map((number) => ({ number, ticks: 16 })),
  tempos: [],
  movements,
  order: [[0, numbers.length - 1]],
  afterJump: null,
  ambiguous: false,
  parts: [],
  remarks: [],
});

const twoMovements = music(['1', '2', '3', '1', '2', '3'], [0, 3]);

describe('a bar', () => {
  const times = (time: number) => ({ time, of: 2 });

  it('is named with its movement and its time', () => {
    const label = barLabels(twoMovements);
    expect([label(1), labelRange(label(3), label(5)), labelsWords(label(1), label(4))]).toEqual([
      '2 im 1. Satz',
      '1 bis 3 im 2. Satz',
      'Takte 2 im 1. Satz bis 2 im 2. Satz',
    ]);
    expect([barWords('48', null), barWords('48', times(2)), barWords('48', { time: 7, of: 9 })]).toEqual([
      'Takt 48',
      'Takt 48, 2. Mal',
      'Takt 48, 7. Mal',
    ]);
    expect(stretchOfBars({ label: '8', pass: times(1) }, { label: '3', pass: times(2) })).toBe(
      'Takt 8, 1. Mal, bis Takt 3, 2. Mal',
    );
  });

  it.each(['2 im 2. Satz', 'Takt 2 im 2. Satz', 'T. 2, Satz 2', 'takt 2 in Satz 2', '2 of movement 2', '#5'])(
    'typed as "%s" is understood, whichever language is spoken',
    (typed) => {
      const plain = typed.replace(',', '');
      expect(barsCalled(twoMovements, plain)).toEqual([4]);
      speakEnglish();
      expect(barsCalled(twoMovements, plain)).toEqual([4]);
      speakGerman();
    },
  );

  it.each(['Takt 12', 'takt 12', 'T. 12', 'T.12', 'bar 12', '12', 'Takt #12'])(
    'typed as "%s" is the twelfth',
    (typed) => {
      const numbers = Array.from({ length: 20 }, (_, index) => String(index + 1));
      expect(barsCalled(music(numbers), typed)).toEqual([11]);
    },
  );

  it.each([
    ['Takt 48, 2. Mal', 'Takt 48', 2],
    ['48 zum zweiten Mal', '48', 2],
    ['48, erstes mal', '48', 1],
    ['T. 48, 12. Mal', 'T. 48', 12],
    ['bar 48, second time', 'bar 48', 2],
    ['Takt 48', 'Takt 48', null],
  ])('typed as "%s" says which time', (typed, bar, time) => {
    expect(withoutTime(typed)).toEqual({ bar, time });
  });

  it('is read back from every label, and so is an order', () => {
    const label = barLabels(twoMovements);
    for (const [bar] of twoMovements.bars.entries())
      expect(barsCalled(twoMovements, labelsWords(label(bar), label(bar)))).toEqual([bar]);
    const typed = withOrder(twoMovements, `1 bis 3 im 2. Satz; Takt 1 im 1. Satz; 2-3 im 1. Satz`);
    expect(typed.ok && typed.value.order).toEqual([
      [3, 5],
      [0, 0],
      [1, 2],
    ]);
  });
});

describe('a table', () => {
  const text = [
    'Seite\tErster Takt\tLetzter Takt\tTempo\tViertel\tFreie Hände',
    '1\t1\t4\t92,5\t4,5\t2-3',
    '2\t5\t6\t12 Sek.\t\talle',
  ].join('\n');

  it('may name its columns in German, and goes back with a decimal comma', () => {
    const read = musicFromTable(text, 'Oboe');
    if (!read.ok) throw new Error(problemSentence(read.problem));
    expect(read.value.parts[0]?.silences.map(([bar]) => bar)).toEqual([1, 2, 4, 5]);
    const [part] = read.value.parts;
    expect(part && gridFrom(tableOf(read.value, part))).toMatchObject({
      ok: true,
      value: [['1', '1', '4', '92,5', '4,5', '2-3'], expect.anything()],
    });
  });

  it('says in German which cell is wrong', () => {
    const read = musicFromTable(text.replace('\t5\t6', '\t5\t4'), 'Oboe');
    expect(!read.ok && problemSentence(read.problem)).toBe(
      'Zeile 3, Spalte „letzter Takt“: „4“ geht nicht; der erste Takt ist 5, also mindestens 5.',
    );
    const odd = musicFromTable('Seite\tTakt\n1\t1', 'Oboe');
    expect(!odd.ok && problemSentence(odd.problem)).toBe(
      'Zeile 1, Spalte „Takt“: „Takt“ geht nicht; Spalten sind Seite, erster Takt, letzter Takt, Tempo, Sekunden, Viertel, freie Hände.',
    );
  });
});

test('refusals have German words, numbers and grammar', () => {
  const said: readonly (readonly [Problem, string])[] = [
    [
      {
        code: 'value.bad',
        what: 'duration',
        given: 'x',
        allowed: 'eine Zahl',
        part: 'Oboe',
        bar: '3',
        line: 9,
      },
      'In Stimme „Oboe“, Takt 3, Zeile 9: die Dauer ist „x“; verlangt: eine Zahl.',
    ],
    [
      { code: 'tables.count', bars: 1, other: { name: 'Oboe', bars: 1200 } },
      'Hier gespielt: 1 Takt, bei „Oboe“: 1.200 Takte; beide müssen dieselben Takte durchlaufen.',
    ],
    [
      { code: 'xml.notWellFormed', line: 4, reason: 'unclosed tag: note' },
      'Das XML bricht bei Zeile 4 ab oder ist dort beschädigt (Element nicht geschlossen: note); aus dem Notenprogramm neu exportieren.',
    ],
    [
      { code: 'xml.notWellFormed', line: 4, reason: 'weird empty close tag' },
      'Das XML bricht bei Zeile 4 ab oder ist dort beschädigt (nicht wohlgeformt); aus dem Notenprogramm neu exportieren.',
    ],
  ];
  for (const [problem, sentence] of said) expect(problemSentence(problem)).toBe(sentence);
  const typed = withTempos(twoMovements, [{ bar: 4, quartersPerMinute: 0.5 }]);
  expect(!typed.ok && problemSentence(typed.problem)).toBe(
    'Das Tempo „0,5 ab Takt 2 im 2. Satz“ geht nicht: 1 bis 2000 Viertel je Minute angeben.',
  );
});

test('remarks name the bar first, and times have a comma', () => {
  expect(remarkSentence({ code: 'tempo.free', bar: null, count: 1 }, twoMovements)).toMatch(
    /^1 Takt mit einer/,
  );
  expect(remarkSentence({ code: 'tempo.free', bar: null, count: 3 }, twoMovements)).toMatch(
    /^3 Takte mit einer/,
  );
  expect(remarkSentence({ code: 'repeat.open', bar: 4 }, twoMovements)).toBe(
    'Takt 2 im 2. Satz: Die Wiederholung, die hier beginnt, endet nicht; sie wird weggelassen.',
  );
  expect(tenthsWords(137.64)).toBe('2:17,6');
});
