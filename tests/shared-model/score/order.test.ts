/**
 * Play orders worked out by hand. Meaning of repeats, endings and jumps: MusicXML 4.0 (elements repeat, ending, sound);
 * after a jump repeats are left out and the last ending is taken: common practice, no source.
 */

import { describe, expect, it } from 'vitest';
import { rangeText } from '#model/score/music/ranges.ts';
import {
  BEGIN,
  codesOf,
  END,
  ending,
  endingStops,
  endTimes,
  filled,
  musicOf,
  refusal,
  sound,
  words,
} from './write-score.ts';

function order(bars: readonly string[], numbers?: readonly string[]): string {
  return musicOf(filled(bars, numbers)).order.map(rangeText).join(' ');
}

describe('repeats', () => {
  it('go back to the beginning, or behind the repeat before', () => {
    // 0 1 | 0 1 2 3 | 2 3 4
    expect(order(['', END, '', END, ''])).toBe('0-1 0-3 2-4');
  });

  it('go back to the sign that begins them', () => {
    expect(order(['', BEGIN, END, ''])).toBe('0-2 1-3');
  });

  it('are made as often as they say', () => {
    expect(order(['', `${BEGIN}${endTimes(3)}`, ''])).toBe('0-1 1 1-2');
    expect(order([endTimes(1), ''])).toBe('0-1');
  });

  it('may begin by an unprinted sign', () => {
    expect(order(['', sound('forward-repeat="yes"'), END])).toBe('0-2 1-2');
  });

  it('lie within one another, with a remark', () => {
    // A B B C, and all of it again: 0 1 1 2 0 1 1 2.
    const bars = [BEGIN, `${BEGIN}${END}`, END, ''];
    expect(order(bars)).toBe('0-1 1-2 0-1 1-3');
    expect(codesOf(musicOf(filled(bars)))).toContain('repeat.nested');
  });

  it('that never end are left out, with a remark', () => {
    const bars = ['', BEGIN, ''];
    expect(order(bars)).toBe('0-2');
    expect(codesOf(musicOf(filled(bars)))).toContain('repeat.open');
  });

  it('do not reach over the beginning of a movement', () => {
    expect(order([BEGIN, '', '', END], ['1', '2', '1', '2'])).toBe('0-3 2-3');
  });

  it('in the middle of a bar count as at its end, with a remark', () => {
    const bars = ['', '<barline location="middle"><repeat direction="backward"/></barline>', ''];
    expect(order(bars)).toBe('0-1 0-2');
    expect(codesOf(musicOf(filled(bars)))).toContain('repeat.inside');
  });

  it('without any end in sight are refused', () => {
    // 1000 times 1000 times 1000 bars.
    const bars = [BEGIN, BEGIN, `${BEGIN}${endTimes(1000)}`, endTimes(1000), endTimes(1000)];
    expect(refusal(filled(bars))).toMatch(/^Repeats and jumps come to more than 100,000 bars/);
  });
});

describe('endings', () => {
  const first = `${ending('1')}${endingStops('1', 'repeat')}`;
  const second = `${ending('2')}${endingStops('2', 'goes on')}`;

  it('take turns', () => {
    expect(order([BEGIN, first, second, ''])).toBe('0-1 0 2-3');
  });

  it('follow lists of numbers', () => {
    // Passes 1 and 2 take bar 1, pass 3 takes bar 2.
    const lists = [
      BEGIN,
      `${ending('1, 2')}${endingStops('1, 2', 'repeat')}`,
      `${ending('3')}${endingStops('3', 'goes on')}`,
    ];
    expect(order([...lists, ''])).toBe('0-1 0-1 0 2-3');
    const ranges = [
      BEGIN,
      `${ending('1.-3.')}${endingStops('1.-3.', 'repeat')}`,
      `${ending('4')}${endingStops('4', 'goes on')}`,
    ];
    expect(order(ranges)).toBe('0-1 0-1 0-1 0 2');
  });

  it('may come in any order and several times', () => {
    // Passes 1, 4 and 5 take bar 1; pass 2 bar 2; pass 3 bar 3.
    const bars = [
      BEGIN,
      `${ending('1, 4, 5')}${endingStops('1, 4, 5', 'repeat')}`,
      `${ending('2')}${endingStops('2', 'repeat')}`,
      `${ending('3')}${endingStops('3', 'repeat')}`,
      '',
    ];
    expect(order(bars)).toBe('0-1 0 2 0 3 0-1 0-1 4');
  });

  it('end their repeat: the next one begins behind them', () => {
    expect(order([BEGIN, first, second, '', END, ''])).toBe('0-1 0 2-4 3-5');
  });

  it('of one bracket alone are passed over the second time', () => {
    expect(order([BEGIN, first, '', ''])).toBe('0-1 0 2-3');
  });

  it('may span several bars', () => {
    const bars = [
      BEGIN,
      ending('1'),
      endingStops('1', 'repeat'),
      ending('2'),
      endingStops('2', 'goes on'),
      '',
    ];
    expect(order(bars)).toBe('0-2 0 3-5');
  });

  it('without end or number are read as far as can be, with a remark', () => {
    const bars = [BEGIN, `${ending('')}${END}`, ending('2'), ''];
    expect(order(bars)).toBe('0-1 0 2-3');
    expect(codesOf(musicOf(filled(bars)))).toEqual(
      expect.arrayContaining(['ending.open', 'ending.noNumber']),
    );
  });

  it('that contradict each other are remarked', () => {
    const bars = [
      '',
      `${ending('1')}${endingStops('1', 'goes on')}`,
      `${ending('2')}${endingStops('2', 'goes on')}`,
    ];
    expect(codesOf(musicOf(filled(bars)))).toContain('ending.contradictory');
  });
});

describe('jumps', () => {
  it('D.C. al Fine goes to the beginning, leaves out repeats, and ends', () => {
    // Bars 0-1 twice, 2-3 twice, then 0-1 once.
    const bars = [BEGIN, `${sound('fine="yes"')}${END}`, BEGIN, `${sound('dacapo="yes"')}${END}`];
    expect(order(bars)).toBe('0-1 0-3 2-3 0-1');
    expect(codesOf(musicOf(filled(bars)))).toContain('jump.repeatsLeftOut');
    expect(musicOf(filled(bars), true).order.map(rangeText).join(' ')).toBe('0-1 0-3 2-3 0-1 0-1');
  });

  it('D.C. takes the last ending', () => {
    const bars = [
      BEGIN,
      `${ending('1')}${endingStops('1', 'repeat')}`,
      `${ending('2')}${sound('fine="yes"')}${endingStops('2', 'goes on')}`,
      sound('dacapo="yes"'),
    ];
    expect(order(bars)).toBe('0-1 0 2-3 0 2');
  });

  it('D.S. al Coda goes to the sign, then from To Coda to the coda', () => {
    const bars = ['', sound('segno="a"'), sound('tocoda="b"'), sound('dalsegno="a"'), sound('coda="b"'), ''];
    expect(order(bars)).toBe('0-3 1-2 4-5');
  });

  it('choose the sign by its name', () => {
    const bars = [sound('segno="one"'), sound('segno="two"'), sound('fine="yes"'), sound('dalsegno="one"')];
    expect(order(bars)).toBe('0-3 0-2');
  });

  it('Fine at the end of the coda ends all', () => {
    const bars = ['', sound('tocoda="c"'), sound('dacapo="yes"'), sound('coda="c"'), sound('fine="yes"')];
    expect(order(bars)).toBe('0-2 0-1 3-4');
  });

  it('the words al Coda pass a Fine, the words al Fine a To Coda', () => {
    const coda = [
      '',
      sound('fine="yes"'),
      sound('tocoda="c"'),
      `${words('D.C. al Coda')}${sound('dacapo="yes"')}`,
      sound('coda="c"'),
    ];
    expect(order(coda)).toBe('0-3 0-2 4');
    const fine = [
      '',
      sound('tocoda="c"'),
      sound('fine="yes"'),
      `${words('D.C. al Fine')}${sound('dacapo="yes"')}`,
      sound('coda="c"'),
    ];
    expect(order(fine)).toBe('0-3 0-2 4');
  });

  it('D.C. means the movement, and Fine goes on behind it with repeats as written', () => {
    const bars = ['', sound('fine="yes"'), sound('dacapo="yes"'), '', END];
    expect(order(bars, ['1', '2', '3', '1', '2'])).toBe('0-2 0-1 3-4 3-4');
    const second = ['', '', sound('fine="yes"'), sound('dacapo="yes"')];
    expect(order(second, ['1', '2', '1', '2'])).toBe('0-3 2');
  });

  it('D.C. without Fine stops before the Trio', () => {
    const bars = ['', END, `${words('Trio')}${BEGIN}`, END, sound('dacapo="yes"')];
    expect(order(bars)).toBe('0-1 0-3 2-4 0-1');
    expect(codesOf(musicOf(filled(bars)))).toContain('jump.stopsBeforeTrio');
  });

  it('a jump that says nowhere to end is played on, and ambiguous', () => {
    const music = musicOf(filled(['', sound('dacapo="yes"'), '']));
    expect(music.order.map(rangeText)).toEqual(['0-1', '0-2']);
    expect(music.ambiguous).toBe(true);
    expect(codesOf(music)).toContain('jump.ambiguous');
  });

  it('a jump to nowhere is not made', () => {
    const bars = ['', sound('dalsegno="a"'), ''];
    expect(order(bars)).toBe('0-2');
    expect(codesOf(musicOf(filled(bars)))).toContain('jump.noTarget');
    expect(codesOf(musicOf(filled([sound('tocoda="c"'), sound('dacapo="yes"')])))).toContain('jump.noTarget');
  });

  it('are found in words where the score tells player programs none', () => {
    const segno = '<direction><direction-type><segno/></direction-type></direction>';
    const coda = '<direction><direction-type><coda/></direction-type></direction>';
    const bars = ['', segno, words('To Coda'), words('D.S. al Coda'), coda, ''];
    expect(order(bars)).toBe('0-3 1-2 4-5');
    const music = musicOf(filled(bars));
    expect(
      music.remarks.filter(({ code }) => code === 'jump.words').map(({ bar, text }) => [bar, text]),
    ).toEqual([
      [2, 'To Coda'],
      [3, 'D.S. al Coda'],
    ]);
    expect(order(['', words('Fine'), words('Da Capo al Fine'), ''])).toBe('0-2 0-1 3');
  });

  it('leave alone words that only sound like jumps', () => {
    expect(order(['', words('finest'), words('dolce'), words('Codetta'), words('cresc.')])).toBe('0-4');
  });

  it('repeat after a jump where the score itself says so', () => {
    const again = '<barline location="right"><repeat direction="backward" after-jump="yes"/></barline>';
    const bars = [`${BEGIN}`, again, sound('fine="yes"'), sound('dacapo="yes"')];
    expect(order(bars)).toBe('0-1 0-3 0-1 0-2');
    expect(codesOf(musicOf(filled(bars)))).toContain('repeat.afterJump');
  });
});
