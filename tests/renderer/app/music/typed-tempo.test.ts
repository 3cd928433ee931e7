/** MUSIC has four bars of four quarters at 60: one quarter is a second. */

import { describe, expect, it } from 'vitest';
import { performanceOf } from '#model/score/music/performance.ts';
import { problemSentence } from '#model/score/words/problem-sentence.ts';
import { tempoComplaint, withTypedTempo } from '../../../../renderer/app/music/typed-tempo.ts';
import { MUSIC } from '../../../helpers/build.ts';

function seconds(tempo: string, from: string): number {
  const outcome = withTypedTempo(MUSIC, tempo, from);
  if (!outcome.ok) throw new Error(problemSentence(outcome.problem));
  return performanceOf(outcome.value).seconds;
}

function refusal(tempo: string, from: string): string {
  const outcome = withTypedTempo(MUSIC, tempo, from);
  return outcome.ok ? 'taken' : problemSentence(outcome.problem);
}

describe('a typed tempo', () => {
  it('holds for the whole piece when no bar is given', () => expect(seconds('120', ' ')).toBeCloseTo(8, 9));

  it('holds from a bar on, which is named as printed or by its place', () => {
    expect(seconds('120', '3')).toBeCloseTo(12, 9);
    expect(seconds('120', '#3')).toBeCloseTo(12, 9);
  });

  it('may have a decimal comma', () => expect(seconds('37,5', '')).toBeCloseTo(25.6, 9));

  it('is refused in the words in which it was typed', () => {
    expect(refusal('quick', '')).toBe('The tempo "quick" cannot be used: write a number, for instance 96.');
    expect(refusal('9000', '3')).toMatch(/^The tempo "9000" cannot be used: give 1 to/);
    expect(refusal('0', '')).toMatch(/^The tempo "0" cannot be used/);
    expect(refusal('96', '77')).toMatch(/^The bar "77" cannot be used: no bar has that number/);
  });
});

describe('the complaint about a typed tempo', () => {
  it('stays while it is wrong, and tells of what stands there now', () => {
    expect(tempoComplaint(MUSIC, '0', '')).toMatch(/^The tempo "0" cannot be used/);
    expect(tempoComplaint(MUSIC, '96', '77')).toMatch(/^The bar "77" cannot be used/);
  });

  it('is taken back by a tempo that can be used, and by an empty field', () => {
    expect(tempoComplaint(MUSIC, '60', '')).toBeNull();
    expect(tempoComplaint(MUSIC, ' ', '')).toBeNull();
    expect(tempoComplaint(MUSIC, '', '77')).toBeNull();
  });
});
