/** A table for one part of music that is there already. Times worked out by hand. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Bar, Music, Part } from '#model/document/music.ts';
import { timeLineOf } from '#model/score/music/readings.ts';
import { gridFrom, PART_COLUMNS, textOfGrid } from '#model/score/table/grid.ts';
import { partFromTable, tableOfPart } from '#model/score/table/part-of-music.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';
import { MUSIC } from '../../helpers/build.ts';
import '../../helpers/seed.ts';

/** 4 bars of 4 s, a repeat of bars 1 and 2: 24 s. */
const REPEATED: Music = {
  ...MUSIC,
  order: [
    [0, 1],
    [0, 3],
  ],
};
/** Two movements, both with bars 1 and 2, and a bar without a number between. */
const MOVEMENTS: Music = {
  ...MUSIC,
  bars: ['1', '2', '', '1', '2', '2-b'].map((number) => ({ number, ticks: 8 })),
  movements: [0, 3],
  order: [[0, 5]],
};

function partOf(music: Music, text: string, before: Part | null = null): Part {
  const outcome = partFromTable(music, text, before);
  if (!outcome.ok) throw new Error(problemSentence(outcome.problem));
  return { id: 'typed', name: 'Harp', instruments: [], transpositions: [], ...outcome.value };
}

function refused(music: Music, text: string): string {
  const outcome = partFromTable(music, text, null);
  if (outcome.ok) throw new Error('was not refused');
  return problemSentence(outcome.problem);
}

const HEAD = 'page,first,last,free\n';

describe('a table of a part beside a score', () => {
  it('goes by the bars, the repeats and the tempo of the score', () => {
    const part = partOf(REPEATED, `${HEAD}4,1,2,2\n5,3,4,all`);
    expect(part.pages).toEqual([
      { page: 4, bar: 0 },
      { page: 5, bar: 2 },
    ]);
    // Bar 2 lasts from 4 to 8 s and, after the repeat, from 12 to 16 s, where the free bars 3 and 4 follow.
    expect(timeLineOf(REPEATED, part)).toEqual({
      seconds: 24,
      readings: [
        { page: 4, from: 0, to: 8 },
        { page: 4, from: 8, to: 16 },
        { page: 5, from: 16, to: 24 },
      ],
      silences: [
        { from: 4, to: 8 },
        { from: 12, to: 24 },
      ],
    });
  });

  it('names bars of several movements as they come, or by their place in the file', () => {
    const { pages, silences } = partOf(MOVEMENTS, `${HEAD}1,1,1,\n2,2,#3,\n3,1,#6,1-2`);
    expect(pages.map(({ bar }) => bar)).toEqual([0, 1, 3]);
    expect(silences.map(([bar]) => bar)).toEqual([3, 4]);
  });

  it('says in which row and column it does not go with the score', () => {
    expect(refused(MUSIC, `${HEAD}1,1,2,\n2,4,4,`)).toBe(
      'Row 3, column "first bar": "4" cannot be used; the row before ends with bar 2, so this one begins with bar 3.',
    );
    expect(refused(MUSIC, `${HEAD}1,2,4,`)).toMatch(/the music begins with bar 1\.$/);
    expect(refused(MUSIC, `${HEAD}1,1,3,`)).toMatch(/^Row 2, column "last bar": "3".*goes on to bar 4;/);
    expect(refused(MUSIC, `${HEAD}1,1,9,`)).toMatch(/write a bar from bar 1 to bar 4\.$/);
    expect(refused(MUSIC, `${HEAD}1,1,4,\n2,5,6,`)).toMatch(/ends with the last bar of the music/);
    expect(refused(MUSIC, `${HEAD}0,1,4,`)).toMatch(/^Row 2, column "page": "0"/);
    expect(refused(MUSIC, `${HEAD}1,1,2,3\n1,3,4,`)).toMatch(/^Row 2, column "free hands": "3"/);
    expect(refused(MUSIC, `${HEAD}1,1,4,3-2`)).toMatch(/write bars from bar 1 to bar 4 in their order/);
    expect(refused(MUSIC, 'page,first,last,tempo\n1,1,4,90')).toMatch(
      /^Row 2, column "tempo": "90" cannot be used; the music says it already/,
    );
    expect(refused(MUSIC, '')).toMatch(/The table holds no rows/);
  });

  it('leaves rests as they are, to the tick, of which it says nothing new', () => {
    const part: Part = {
      ...MUSIC.parts[0]!,
      silences: [
        [0, 0, 8],
        [1, 0, 8],
        [2, 0, 4],
      ],
    };
    const changed = partOf(MUSIC, `${HEAD}1,1,4,"2, 4"`, part);
    expect(changed.silences).toEqual([
      [1, 0, 8],
      [2, 0, 4],
      [3, 0, 8],
    ]);
  });

  it('is read back as it was', () => {
    const bar: fc.Arbitrary<Bar> = fc.record({
      number: fc.constantFrom('', '1', '2', '3', '4', '12a', '5-6', 'all', '#2'),
      ticks: fc.constant(8),
    });
    const run = fc.array(bar, { minLength: 1, maxLength: 12 }).chain((bars) =>
      fc.record({
        bars: fc.constant(bars),
        silent: fc.subarray(bars.map((_, index) => index)),
        begins: fc.subarray(bars.map((_, index) => index).slice(1)),
      }),
    );
    fc.assert(
      fc.property(run, ({ bars, silent, begins }) => {
        const music = { ...MUSIC, bars };
        const part: Part = {
          ...MUSIC.parts[0]!,
          silences: silent.map((index) => [index, 0, 8] as const),
          pages: [0, ...begins].map((first, index) => ({ page: index + 1, bar: first })),
        };
        const { pages, silences } = partOf(music, tableOfPart(music, part));
        expect({ pages, silences }).toEqual({ pages: part.pages, silences: part.silences });
      }),
    );
  });

  it('has no columns for what the score says', () => {
    const rowsOf = (text: string) => {
      const grid = gridFrom(text, PART_COLUMNS);
      return grid.ok ? grid.value : problemSentence(grid.problem);
    };
    expect(rowsOf('1\t1\t20\t9-12')).toEqual([['1', '1', '20', '9-12']]);
    expect(rowsOf('last,first,page,beats\n4,1,1,')).toEqual([['1', '1', '4', '']]);
    expect(rowsOf('page,first,last,seconds\n1,1,4,40')).toMatch(/^Row 2, column "tempo": "40 s"/);
    expect(rowsOf('1,1,4,90,9-12')).toMatch(/^Row 1, column "tempo": "90"/);
    expect(textOfGrid([['1', '1', '4', '']], PART_COLUMNS)).toBe(
      'page\tfirst bar\tlast bar\tfree hands\n1\t1\t4\t',
    );
  });
});
