/** Several players without a score, a table each. Times worked out by hand. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { performanceOf } from '#model/score/music/performance.ts';
import { timeLineOf } from '#model/score/music/readings.ts';
import { gridFrom, textOfGrid } from '#model/score/table/grid.ts';
import { isTyped, musicFromTables, type NamedTable } from '#model/score/table/part-table.ts';
import { tableOf } from '#model/score/table/table-text.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';
import { MUSIC } from '../../helpers/build.ts';
import '../../helpers/seed.ts';

const musicOf = (...tables: readonly NamedTable[]) => {
  const outcome = musicFromTables(tables, 'Weirs');
  if (!outcome.ok) throw new Error(problemSentence(outcome.problem));
  return outcome.value;
};
const refused = (...tables: readonly NamedTable[]) => {
  const outcome = musicFromTables(tables, 'Weirs');
  if (outcome.ok) throw new Error('was not refused');
  return { table: outcome.table, line: problemSentence(outcome.problem) };
};

/** 12 bars of 3 at 90: 24 s. Bars 1 to 4 are played twice. */
const HORN = { name: 'Horn', text: 'page,first,last,tempo,beats,free\n1,1,4,90,3,\n1,1,4,,3,\n2,5,8,,3,7-8' };
const HARP = { name: 'Harp', text: 'page\tfirst\tlast\tfree\n1\t1\t4\t\n2\t1\t4\t2\n2\t5\t8\t' };

describe('tables of several players', () => {
  it('make one piece with a part each', () => {
    const music = musicOf(HORN, HARP);
    expect(isTyped(music)).toBe(true);
    expect(isTyped(MUSIC)).toBe(false);
    expect(music.parts.map(({ id, name }) => [id, name])).toEqual([
      ['typed', 'Horn'],
      ['typed-2', 'Harp'],
    ]);
    expect(performanceOf(music).seconds).toBe(24);
    expect(timeLineOf(music, music.parts[1]!)).toEqual({
      seconds: 24,
      // The harp has 2 s bars, too, though its table does not say how long they are.
      readings: [
        { page: 1, from: 0, to: 8 },
        { page: 2, from: 8, to: 24 },
      ],
      silences: [{ from: 10, to: 12 }],
    });
  });

  it('take beats and tempo from whichever says them first', () => {
    const music = musicOf(HARP, HORN);
    expect(performanceOf(music).seconds).toBe(24);
    expect(music.remarks).toEqual([]);
    expect(musicOf(HARP).remarks).toEqual([{ code: 'tempo.assumed', bar: null }]);
  });

  it('may differ by a stopwatch, not by more', () => {
    const timed = (seconds: number) => ({
      name: 'Tuba',
      text: `page,first,last,seconds\n1,1,4,8\n2,1,4,8\n3,5,8,${seconds}`,
    });
    expect(performanceOf(musicOf(HORN, timed(8.4))).seconds).toBe(24);
    expect(refused(HORN, timed(9))).toEqual({
      table: 1,
      line: 'It lasts 0:25.0, and "Horn" 0:24.0; leave its tempo out to go by the other.',
    });
  });

  it.each([
    [
      'page,first,last\n1,1,4\n1,1,3\n2,5,8',
      'Row 4 plays bar 5 where "Horn" (row 3) plays bar 4; both have to go through the same bars in the same order.',
    ],
    [
      'page,first,last\n1,1,4\n1,1,4',
      'It plays 8 bars, and "Horn" 12 bars; both have to go through the same bars.',
    ],
    [
      'page,first,last,beats\n1,1,4,\n1,1,4,4\n2,5,8,',
      'Row 3 gives bar 1 4 beats, and "Horn" (row 3) 3; a bar is as long for everybody.',
    ],
    [
      'page,first,last\n1,1,x',
      'Row 2, column "last bar": "x" cannot be used; write a whole number from 0 to 99999.',
    ],
    ['', 'The table holds no rows; give page, first bar, last bar, and tempo or seconds.'],
  ])('that do not fit together are refused: %j', (text, line) => {
    expect(refused(HORN, { name: 'Harp', text })).toEqual({ table: 1, line });
  });

  it('refuse seconds that no tempo makes, and more bars than music has', () => {
    expect(refused({ name: '', text: 'page,first,last,seconds\n1,1,1,0.01' }).line).toContain(
      '4 quarters in that time make 24000 a minute',
    );
    expect(refused({ name: '', text: '1,1,60000' }).line).toContain('more than 50,000 bars');
  });
});

const rows = fc.array(
  fc.record({
    page: fc.integer({ min: 1, max: 9 }),
    first: fc.integer({ min: 0, max: 40 }),
    count: fc.integer({ min: 1, max: 12 }),
    tempo: fc.integer({ min: 20, max: 240 }),
    beats: fc.constantFrom('2', '3', '4', '4.5'),
    free: fc.boolean(),
  }),
  { minLength: 1, maxLength: 12 },
);

it('a table comes back from its music as one that gives the same music', () => {
  fc.assert(
    fc.property(rows, (given) => {
      const text = given.map(({ page, first, count, tempo, beats, free }) =>
        [page, first, first + count - 1, tempo, beats, free ? first : ''].join('\t'),
      );
      const music = musicOf({
        name: 'Horn',
        text: ['page\tfirst\tlast\ttempo\tbeats\tfree', ...text].join('\n'),
      });
      const again = musicOf({ name: 'Horn', text: tableOf(music, music.parts[0]!) });
      expect(again).toEqual(music);
    }),
  );
});

it('tables of several players come back with the tempo in one of them', () => {
  const timed = { ...HORN, text: 'page,first,last,seconds,beats\n1,1,4,8,3\n2,1,4,9,3\n3,5,8,8,3' };
  const music = musicOf(HARP, timed);
  const [harp, horn] = music.parts.map((part) => tableOf(music, part));
  expect(harp?.split('\n')).toHaveLength(3);
  expect(harp).toContain('2\t1\t8\t\t3\t2');
  const again = musicOf({ ...HARP, text: harp ?? '' }, { ...HORN, text: horn ?? '' });
  expect({ ...again, tempos: [] }).toEqual({ ...music, tempos: [] });
  expect(performanceOf(again).seconds).toBeCloseTo(25, 3);
});

it('no text makes it throw', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ maxLength: 60 }), { maxLength: 3 }), (texts) => {
      musicFromTables(
        texts.map((text) => ({ name: 'Horn', text })),
        '',
      );
    }),
  );
});

describe('a grid', () => {
  it('takes a table with any columns, and seconds as the tempo', () => {
    const outcome = gridFrom('Seconds,Last bar,Page,First bar,Free hands\n75,8,1,1,"3-4, 6"\n1:20,12,2,9,\n');
    expect(outcome).toEqual({
      ok: true,
      value: [
        ['1', '1', '8', '75 s', '', '3-4, 6'],
        ['2', '9', '12', '1:20', '', ''],
      ],
    });
    const text = textOfGrid(outcome.ok ? outcome.value : []);
    expect(performanceOf(musicOf({ name: 'Horn', text })).seconds).toBeCloseTo(155, 9);
  });

  it('takes rows without names as they stand in it, or without the beats', () => {
    expect(gridFrom('1,1,30,,3,"9-12, 30"\n2,31,60')).toEqual({
      ok: true,
      value: [
        ['1', '1', '30', '', '3', '9-12, 30'],
        ['2', '31', '60', '', '', ''],
      ],
    });
    expect(gridFrom('1,1,30,96,9-12')).toEqual({ ok: true, value: [['1', '1', '30', '96', '', '9-12']] });
    expect(gridFrom('1,1,30,96,4,9,10')).toMatchObject({ ok: false, problem: { column: 'no. 7' } });
    expect(gridFrom('page,first,last\n1,1,30,96')).toMatchObject({ ok: false, problem: { row: 2 } });
  });

  it('counts its own rows from 2, below the names of the columns, empty ones too', () => {
    const text = textOfGrid([
      ['1', '1', '8', '', '', ''],
      ['', '', '', '', '', ''],
      ['2', '9', '4', '', '', ''],
    ]);
    expect(refused({ name: 'Horn', text }).line).toMatch(/^Row 4, column "last bar"/);
    expect(gridFrom('page,colour\n1,2')).toMatchObject({ ok: false, problem: { column: 'colour' } });
  });
});
