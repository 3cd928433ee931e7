/** Rests and page readings, worked out by hand at one quarter a second. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { performanceOf } from '#model/score/music/performance.ts';
import { restsOf } from '#model/score/music/rests.ts';
import { timeLineOf } from '#model/score/music/readings.ts';
import { withOrder, withPages, withTempos } from '#model/score/music/typed-over.ts';
import type { Music } from '#model/score/music.ts';
import {
  backup,
  BEGIN,
  cue,
  DIVISIONS,
  END,
  filled,
  forward,
  grace,
  musicOf,
  newPage,
  note,
  part,
  rest,
  scoreXml,
  sound,
} from './write-score.ts';

const atOneASecond = (bars: readonly string[]) =>
  musicOf(scoreXml(part([`${DIVISIONS}${sound('tempo="60"')}${bars[0] ?? ''}`, ...bars.slice(1)])));

function rests(bars: readonly string[]): (readonly [number, number, number, number])[] {
  const music = atOneASecond(bars);
  const [player] = music.parts;
  if (!player) throw new Error('there is no part');
  return restsOf(music, player, performanceOf(music)).map(({ from, to, fromBar, toBar }) => [
    from,
    to,
    fromBar,
    toBar,
  ]);
}

const range = (first: number, last: number): number[] =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);

describe('rests', () => {
  it('go over bar lines, and lie at both ends', () => {
    expect(rests([`${rest(1)}${note(1)}${rest(2)}`, rest(4), `${rest(1)}${note(1)}${rest(2)}`])).toEqual([
      [0, 1, 0, 0],
      [2, 9, 0, 2],
      [10, 12, 2, 2],
    ]);
  });

  it('go over repeats: the end of the passage and its beginning are one rest', () => {
    expect(rests([`${BEGIN}${rest(1)}${note(2)}`, `${note(2)}${rest(1)}${END}`, note(1)])).toEqual([
      [0, 1, 0, 0],
      [5, 7, 1, 0],
      [11, 12, 1, 1],
    ]);
  });

  it('are where no voice and no staff sounds', () => {
    expect(rests([`${note(2)}${rest(2)}${backup(4)}${rest(1)}${note(2)}${rest(1)}`])).toEqual([[3, 4, 0, 0]]);
  });

  it('hold cue notes and leaps forward', () => {
    expect(rests([`${note(1)}${cue(2)}${forward(1)}`, note(4)])).toEqual([[1, 4, 0, 0]]);
  });

  it('are ended by a grace note, which takes no time', () => {
    expect(rests([`${rest(2)}${grace}${rest(2)}`])).toEqual([
      [0, 2, 0, 0],
      [2, 4, 0, 0],
    ]);
    // At the edges of bars as well.
    expect(rests([rest(2), `${grace}${rest(2)}`])).toEqual([
      [0, 2, 0, 0],
      [2, 4, 1, 1],
    ]);
    expect(rests([`${rest(2)}${grace}`, rest(2)])).toEqual([
      [0, 2, 0, 0],
      [2, 4, 1, 1],
    ]);
  });

  it('of several bars written as one sign count bar by bar', () => {
    const sign = '<attributes><measure-style><multiple-rest>3</multiple-rest></measure-style></attributes>';
    expect(rests([note(4), `${sign}${rest(4)}`, rest(4), rest(4), note(4)])).toEqual([[4, 16, 1, 3]]);
  });

  it('with sound add up to the whole, whatever is written', () => {
    const piece = fc.constantFrom(
      note(1),
      note(0.75),
      rest(1),
      rest(1.5),
      cue(0.5),
      grace,
      forward(0.25),
      `${backup(1)}${note(0.5)}`,
    );
    const bar = fc.array(piece, { maxLength: 8 }).map((pieces) => `${note(1)}${pieces.join('')}`);
    fc.assert(
      fc.property(fc.array(bar, { minLength: 1, maxLength: 6 }), (bars) => {
        const music = atOneASecond(bars);
        const [player] = music.parts;
        const { seconds, silences } = timeLineOf(music, player ?? fail());
        let before = 0;
        for (const { from, to } of silences) {
          expect(from).toBeGreaterThanOrEqual(before);
          expect(to).toBeGreaterThan(from);
          before = to;
        }
        expect(before).toBeLessThanOrEqual(seconds);
      }),
    );
  });
});

function fail(): never {
  throw new Error('there is no part');
}

describe('pages', () => {
  const music = atOneASecond([`${BEGIN}${note(4)}`, `${newPage}${note(4)}${END}`, `${newPage}${note(4)}`]);

  it('are read again at every jump back', () => {
    expect(timeLineOf(music, music.parts[0] ?? fail()).readings).toEqual([
      { page: 1, from: 0, to: 4 },
      { page: 2, from: 4, to: 8 },
      { page: 1, from: 8, to: 12 },
      { page: 2, from: 12, to: 16 },
      { page: 3, from: 16, to: 20 },
    ]);
  });

  it('begin with the first bar, whether or not the file breaks there', () => {
    const { parts } = atOneASecond([`${newPage}${note(4)}`, `${newPage}${note(4)}`]);
    expect(parts[0]?.pages).toEqual([
      { page: 1, bar: 0 },
      { page: 2, bar: 1 },
    ]);
  });
});

describe('what is typed over', () => {
  const music = musicOf(filled(['', END, '', ''], ['1', '2', '3', '3']));
  const value = (outcome: ReturnType<typeof withOrder>): Music => {
    if (!outcome.ok) throw new Error(outcome.problem.code);
    return outcome.value;
  };

  it('the tempo of all, or from a bar on', () => {
    expect(performanceOf(music).seconds).toBe(12);
    const slow = value(withTempos(music, [{ bar: 0, quartersPerMinute: 60 }]));
    expect(performanceOf(slow).seconds).toBe(24);
    expect(slow.remarks.map(({ code }) => code)).not.toContain('tempo.assumed');
    const later = value(withTempos(music, [{ bar: 2, quartersPerMinute: 60 }]));
    expect(performanceOf(later).seconds).toBe(16);
    expect(withTempos(music, [{ bar: 0, quartersPerMinute: 0 }])).toMatchObject({ ok: false });
    expect(withTempos(music, [{ bar: 4, quartersPerMinute: 60 }])).toMatchObject({ ok: false });
    // Bars are told by what is printed, and the whole piece by no bar at all.
    const refusedAs = (bar: number) => withTempos(music, [{ bar, quartersPerMinute: 0 }]);
    expect(refusedAs(0)).toMatchObject({ problem: { given: '0' } });
    expect(refusedAs(1)).toMatchObject({ problem: { given: '0 from bar 2' } });
  });

  it('the order, by printed numbers or places in the file', () => {
    expect(value(withOrder(music, '1-2, #4; 1')).order).toEqual([
      [0, 1],
      [3, 3],
      [0, 0],
    ]);
    expect(withOrder(music, '1-3')).toMatchObject({
      problem: { advice: '2 bars have that number; write which: #3, #4' },
    });
    expect(withOrder(music, '2-1')).toMatchObject({ ok: false });
    expect(withOrder(music, '9')).toMatchObject({ ok: false });
    expect(withOrder(music, '#5')).toMatchObject({ ok: false });
    expect(withOrder(music, ' , ')).toMatchObject({ ok: false });
  });

  it('the pages', () => {
    expect(value(withPages(music, 0, '1, #3')).parts[0]?.pages).toEqual([
      { page: 1, bar: 0 },
      { page: 2, bar: 2 },
    ]);
    expect(withPages(music, 0, '2, 1')).toMatchObject({
      problem: {
        given: '1',
        advice:
          'pages go on from bar to bar, and that bar comes no later than the page before it, with bar 2',
      },
    });
  });

  it('the pages of several movements, by the numbers that are printed', () => {
    // 0 to 40, then 1 to 60, in which 5 stands twice, then 1 to 10.
    const numbers = [range(0, 40), range(1, 5), range(5, 60), range(1, 10)].flat().map(String);
    const long = {
      ...music,
      bars: numbers.map((number) => ({ number, ticks: 8 })),
      movements: [0, 41, 102],
    };
    const pages = (typed: string) => {
      const outcome = withPages(long, 0, typed);
      if (!outcome.ok) return outcome.problem;
      return outcome.value.parts[0]?.pages.map(({ bar }) => bar);
    };
    expect(pages('0, 38, 1')).toEqual([0, 38, 41]);
    expect(pages('0, 38, 1, 31, 1')).toEqual([0, 38, 41, 72, 102]);
    expect(pages('0, 50, 4')).toEqual([0, 91, 105]);
    expect(pages('0, 38, 5')).toMatchObject({ advice: '2 bars have that number; write which: #46, #47' });
    expect(pages('0, 38, #47')).toEqual([0, 38, 46]);
    expect(pages('0, 60, 40')).toMatchObject({ given: '40' });
    // As the program itself names them.
    expect(pages('0, bar 38, 5 of movement 2')).toMatchObject({ advice: expect.stringContaining('2 bars') });
    expect(pages('0, 6 of movement 2, bar 4 of movement 3')).toEqual([0, 47, 105]);
    expect(value(withOrder(long, '0 to 3 of movement 1, 7 to 9 of movement 2, #47')).order).toEqual([
      [0, 3],
      [48, 50],
      [46, 46],
    ]);
    expect(withOrder(long, '7 of movement 4')).toMatchObject({ problem: { given: '7 of movement 4' } });
    // The second 5 is the only one between #46 and the next.
    expect(pages('0, #46, 5, 6')).toEqual([0, 45, 46, 47]);
  });

  it('changes nothing in the music it is given, which is plain JSON', () => {
    expect(JSON.parse(JSON.stringify(music))).toEqual(music);
  });
});
