/** A part typed as a table. Times worked out by hand. */

import { describe, expect, it } from 'vitest';
import { timeLineOf } from '#model/score/music/readings.ts';
import { musicFromTable } from '#model/score/table/part-table.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';

function timeLine(text: string) {
  const outcome = musicFromTable(text, 'Horn');
  if (!outcome.ok) throw new Error(problemSentence(outcome.problem));
  const [part] = outcome.value.parts;
  if (!part) throw new Error('there is no part');
  return timeLineOf(outcome.value, part);
}

function refused(text: string): string {
  const outcome = musicFromTable(text, 'Horn');
  if (outcome.ok) throw new Error('was not refused');
  return problemSentence(outcome.problem);
}

/** Two pages: 10 bars of 4 at 120, and 5 bars of 4 in 40 seconds; bars 9-11 and 15 are free. */
const EXPECTED = {
  seconds: 60,
  readings: [
    { page: 1, from: 0, to: 20 },
    { page: 2, from: 20, to: 60 },
  ],
  silences: [
    { from: 16, to: 28 },
    { from: 52, to: 60 },
  ],
};

describe('a table', () => {
  it.each([
    ['commas', 'page,first bar,last bar,tempo,seconds,free hands\n1,1,10,120,,9-10\n2,11,15,,40,"11, 15"\n'],
    [
      'semicolons and decimal commas',
      'Page;First bar;Last bar;Tempo;Seconds;Free hands\r\n1;1;10;120,0;;9-10\r\n2;11;15;;40,00;11,15',
    ],
    [
      'tabs, as a spreadsheet copies',
      'page\tfirst\tlast\ttempo\tfree\n1\t1\t10\t120\t9-10\n2\t11\t15\t40 s\t11, 15\n',
    ],
    [
      'a byte order mark, quotes and empty rows',
      '\ufeff"page","from","to","tempo","free"\n\n"1","1","10","120","9-10"\n , , , ,\n"2","11","15","0:40","11,15"',
    ],
    ['other columns first', 'free,tempo,last,first,page\n9-10,120,10,1,1\n"11,15",40s,15,11,2'],
    ['no names at all', '1;1;10;120;9-10\n2;11;15;0:40;11,15'],
  ])('is read with %s', (_, text) => {
    expect(timeLine(text)).toEqual(EXPECTED);
  });

  it('brings a page back when it is read again', () => {
    const text = 'page,first,last,seconds\n1,1,10,30\n2,11,20,30\n1,5,10,18\n3,21,30,30';
    expect(timeLine(text).readings.map(({ page, to }) => [page, to])).toEqual([
      [1, 30],
      [2, 60],
      [1, 78],
      [3, 108],
    ]);
  });

  it('holds a bar that is played again once, while it is as long, as fast and as silent there', () => {
    const musicOf = (text: string) => {
      const outcome = musicFromTable(text, 'Horn');
      if (!outcome.ok) throw new Error(problemSentence(outcome.problem));
      return outcome.value;
    };
    const again = musicOf(
      'page,first,last,tempo,free\n1,1,20,120,5-6\n2,21,30,60\n1,1,20,120,5-6\n3,31,40,60',
    );
    expect(again.bars).toHaveLength(40);
    expect(again.order).toEqual([
      [0, 29],
      [0, 19],
      [30, 39],
    ]);
    expect(again.tempos.map(({ bar, quartersPerMinute }) => [bar, quartersPerMinute])).toEqual([
      [0, 120],
      [20, 60],
    ]);
    // 20 bars of 2 s, 10 of 4 s, 20 of 2 s, 10 of 4 s.
    expect(timeLineOf(again, again.parts[0]!)).toEqual({
      seconds: 160,
      readings: [
        { page: 1, from: 0, to: 40 },
        { page: 2, from: 40, to: 80 },
        { page: 1, from: 80, to: 120 },
        { page: 3, from: 120, to: 160 },
      ],
      silences: [
        { from: 8, to: 12 },
        { from: 88, to: 92 },
      ],
    });
    // Slower, or with a rest, the second time: two bars.
    for (const row of ['1,1,20,60,5-6', '1,1,20,120,5-7', '4,1,20,120,5-6'])
      expect(
        musicOf(`page,first,last,tempo,free\n1,1,20,120,5-6\n2,21,30,60\n${row}`).bars.length,
      ).toBeGreaterThan(30);
  });

  it('takes the tempo of the row before, and other beats', () => {
    // 4 bars of 3 at 90: 8 s; 2 bars of 4.5 at 90: 6 s.
    expect(timeLine('page;first;last;beats;tempo\n1;1;4;3;90\n2;5;6;4,5;').seconds).toBeCloseTo(14, 12);
  });

  it('says when no tempo is given', () => {
    const outcome = musicFromTable('1,1,10', 'Horn');
    expect(outcome).toMatchObject({ ok: true, value: { remarks: [{ code: 'tempo.assumed' }] } });
  });

  it('knows pages on which the player only waits', () => {
    expect(timeLine('1,1,2,60,all\n2,3,4,60').silences).toEqual([{ from: 0, to: 8 }]);
  });
});

describe('refused, with row and column:', () => {
  const head = 'page,first bar,last bar,tempo,seconds,free hands';
  it.each([
    ['nothing', '', 'The table holds no rows'],
    ['only names', head, 'The table holds no rows'],
    ['a page that is none', `${head}\nx,1,2`, 'Row 2, column "page": "x"'],
    ['page 0', `${head}\n0,1,2`, 'Row 2, column "page": "0"'],
    ['half a bar', `${head}\n1,1.5,2`, 'Row 2, column "first bar": "1.5"'],
    ['a cell left out', `${head}\n1,1,2,60\n2,3`, 'Row 3, column "last bar": ""'],
    [
      'bars backwards',
      `${head}\n1,5,2,60`,
      'Row 2, column "last bar": "2" cannot be used; the first bar is 5',
    ],
    ['a tempo of 0', `${head}\n1,1,2,0`, 'Row 2, column "tempo": "0"'],
    [
      'tempo and seconds',
      `${head}\n1,1,2,60,8`,
      'Row 2, column "seconds": "8" cannot be used; the row gives a tempo, too',
    ],
    ['no time', `${head}\n1,1,2,,0`, 'Row 2, column "seconds": "0"'],
    ['time that is none', `${head}\n1,1,2,,1:75`, 'Row 2, column "seconds": "1:75"'],
    ['free bars elsewhere', `${head}\n\n1,1,2,60,,3-4`, 'Row 3, column "free hands": "3-4"'],
    ['a decimal comma between commas', `${head}\n1,1,2,60,,,5`, 'Row 2, column "no. 7": "5"'],
    ['a column that is none', 'page,first bar,last bar,colour\n1,1,2,red', 'Row 1, column "colour"'],
    [
      'a column twice',
      'page,page,first bar,last bar\n1,1,1,2',
      'Row 1, column "page": "page" cannot be used; it is there twice',
    ],
    ['a column missing', 'page,first bar,tempo\n1,1,60', 'no column "last bar"'],
    ['a formula', `${head}\n=1+1,1,2`, 'Row 2, column "page"'],
    ['too many rows', `${head}${'\n1,1,2,60'.repeat(2001)}`, 'more than 2,000 rows'],
    ['too many bars', `${head}\n1,1,99999,60`, 'more than 50,000 bars'],
  ])('%s', (_, text, reason) => {
    expect(refused(text)).toContain(reason);
  });

  it('a hostile text within a moment', () => {
    const begin = performance.now();
    refused(`"${'"",'.repeat(100_000)}`);
    refused(`${head}\n1,1,2,60,,${'9'.repeat(100_000)}`);
    expect(performance.now() - begin).toBeLessThan(2000);
  });
});
