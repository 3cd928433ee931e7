/** Bars as they are shown can be typed back. */

import { describe, expect, it } from 'vitest';
import type { Music } from '#model/document/music.ts';
import { restsOf } from '#model/score/music/rests.ts';
import { performanceOf } from '#model/score/music/performance.ts';
import { musicFromTable } from '#model/score/table/part-table.ts';
import { withOrder, withPages } from '#model/score/music/typed-over.ts';
import { tenthsWords } from '#model/score/words/clock-words.ts';
import {
  barNames,
  barsInWords,
  orderWords,
  pageWords,
  restBars,
} from '../../../../renderer/app/music/bar-words.ts';
import { MUSIC } from '../../../helpers/build.ts';

/** Numbers that stand twice, that are none, and that look like a range. */
const odd: Music = {
  ...MUSIC,
  bars: ['0', '1', '2', '2', '', '3-4', 'X1'].map((number) => ({ number, ticks: 8 })),
  order: [
    [0, 3],
    [1, 1],
    [4, 6],
  ],
};

describe('bars in words', () => {
  it('go by the printed number where it is plain and stands once, else by the place in the file', () => {
    const name = barNames(odd);
    expect(odd.bars.map((_, bar) => name(bar))).toEqual(['0', '1', '#3', '#4', '#5', '#6', 'X1']);
  });

  it('go by the movement where each begins to count anew', () => {
    const two: Music = {
      ...MUSIC,
      bars: ['0', '1', '2', '1', '2', '2', '7'].map((number) => ({ number, ticks: 8 })),
      movements: [0, 3],
    };
    const bars = barsInWords(two);
    expect([bars(0), bars(1, 2), bars(3), bars(3, 6), bars(6)]).toEqual([
      'bar 0',
      'bars 1 to 2 of movement 1',
      'bar 1 of movement 2',
      'bars 1 of movement 2 to 7',
      'bar 7',
    ]);
    expect(bars(4, 5)).toBe('bars #5 to #6');
    expect(bars(2, 3)).toBe('bars 2 of movement 1 to 1 of movement 2');
  });

  it('the order as it is shown, typed, is the same order', () => {
    expect(orderWords(odd)).toBe('0-#4, 1, #5-X1');
    const typed = withOrder(odd, orderWords(odd));
    expect(typed).toMatchObject({ ok: true, value: { order: odd.order } });
  });

  it('pages as they are shown, typed, are the same pages', () => {
    const part = MUSIC.parts[0]!;
    expect(pageWords(MUSIC, part)).toBe('1, 3');
    const typed = withPages(MUSIC, 0, pageWords(MUSIC, part));
    expect(typed).toMatchObject({ ok: true, value: { parts: [{ pages: part.pages, ownPages: true }] } });
  });

  it('pages from which no player reads are not shown', () => {
    expect(pageWords(MUSIC, { ...MUSIC.parts[0]!, ownPages: false })).toBe('');
  });
});

describe('where a rest lies', () => {
  /** Bars 1 2 1 2 3 4 of 4 s; the part rests in the last half of bar 2, and in bar 4. */
  const music: Music = {
    ...MUSIC,
    order: [
      [0, 1],
      [0, 3],
    ],
    parts: [
      {
        ...MUSIC.parts[0]!,
        silences: [
          [1, 4, 8],
          [3, 0, 8],
        ],
      },
    ],
  };

  it('says which time, of bars that are played more than once', () => {
    const performance = performanceOf(music);
    const rests = restsOf(music, music.parts[0]!, performance);
    expect(rests.map((rest) => restBars(music, performance, rest))).toEqual([
      'bar 2, first time',
      'bar 2, second time',
      'bar 4',
    ]);
    expect(restBars(music, performance, { from: 8, to: 16 })).toBe('bars 1 to 2, second time');
    expect(restBars(music, performance, { from: 4, to: 12 })).toBe(
      'bar 2, first time, to bar 1, second time',
    );
  });
});

describe('of typed tables', () => {
  const typed = (...rows: string[]): Music => {
    const outcome = musicFromTable(['page,first,last', ...rows].join('\n'), 'Horn');
    if (!outcome.ok) throw new Error(outcome.problem.code);
    return outcome.value;
  };

  it('pages that come back are told once, and the order comes back to their bars', () => {
    const music = typed('1,1,20', '2,21,40', '1,1,20', '2,21,40', '3,41,60', '4,61,80');
    expect(pageWords(music, music.parts[0]!)).toBe('1, 21, 41, 61');
    expect(orderWords(music)).toBe('1-40, 1-80');
  });

  it('the order shows that bars stand on two pages', () => {
    const music = typed('1,1,20', '2,15,30', '3,31,40');
    expect(orderWords(music)).toBe('1-#20, #21-40');
    expect(performanceOf(music).played).toHaveLength(46);
    expect(performanceOf(withOrderOf(music)).played).toEqual(performanceOf(music).played);
  });

  function withOrderOf(music: Music): Music {
    const outcome = withOrder(music, orderWords(music));
    if (!outcome.ok) throw new Error(outcome.problem.code);
    return outcome.value;
  }
});

describe('times in words', () => {
  it.each([
    [0, '0:00.0'],
    [7.46, '0:07.5'],
    [59.96, '1:00.0'],
    [137.6, '2:17.6'],
    [3723, '62:03.0'],
  ])('%d s is %s', (seconds, words) => expect(tenthsWords(seconds)).toBe(words));
});
