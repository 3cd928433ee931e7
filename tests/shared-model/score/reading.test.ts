/** What stands in bars: lengths, tempo, sound. Figures worked out by hand from MusicXML 4.0's definitions. */

import { describe, expect, it } from 'vitest';
import { fractionText } from '#model/score/fraction.ts';
import { inScoreOrder, momentAt, performanceOf } from '#model/score/music/performance.ts';
import { readScore } from '#model/score/reading/score-reader.ts';
import { tempoInWords } from '#model/score/reading/tempo-words.ts';
import {
  backup,
  codesOf,
  cue,
  DIVISIONS,
  END,
  forward,
  grace,
  musicOf,
  newPage,
  note,
  part,
  rest,
  scoreOf,
  scoreXml,
  sound,
  time,
  words,
} from './write-score.ts';

const onePart = (bars: readonly string[], numbers?: readonly string[]) =>
  scoreXml(part([`${DIVISIONS}${bars[0] ?? ''}`, ...bars.slice(1)], numbers));
const lengths = (bars: readonly string[]) =>
  scoreOf(onePart(bars)).bars.map(({ quarters }) => fractionText(quarters));
const seconds = (bars: readonly string[]) => inScoreOrder(musicOf(onePart(bars))).seconds;

describe('the length of a bar', () => {
  it('is what stands in it, not what the time signature says', () => {
    // A pick-up of one quarter, a full bar, a bar cut in two, an overfull one.
    expect(lengths([`${time('4', 4)}${note(1)}`, note(4), note(2.5), note(1.5), note(5)])).toEqual([
      '1',
      '4',
      '5/2',
      '3/2',
      '5',
    ]);
  });

  it('is the furthest that any voice or part goes', () => {
    expect(lengths([`${note(2)}${backup(2)}${note(1)}${forward(2)}`])).toEqual(['3']);
    const two = scoreXml(
      `${part([`${DIVISIONS}${note(2)}`])}${part([`${DIVISIONS}${note(3)}`], undefined, 'P2')}`,
      '<score-part id="P1"><part-name>A</part-name></score-part><score-part id="P2"><part-name>B</part-name></score-part>',
    );
    expect(scoreOf(two).bars[0]?.quarters).toEqual({ n: 3, d: 1 });
    expect(scoreOf(two).remarks).toContainEqual({ code: 'part.barShort', bar: 0, part: 'A', count: 1 });
  });

  it('counts chords once and grace notes not at all', () => {
    expect(lengths([`${note(1)}${note(1, '<chord/>')}${note(1, '<chord/>')}${grace}${note(1)}`])).toEqual([
      '2',
    ]);
  });

  it('of an empty bar is that of its time signature', () => {
    expect(lengths(['', time('6', 8), '', time('3+2', 8)])).toEqual(['4', '3', '3', '5/2']);
  });

  it('without measure is what stands in it; of an empty one nothing is known', () => {
    const free = '<attributes><time><senza-misura/></time></attributes>';
    expect(lengths([`${free}${note(7)}`])).toEqual(['7']);
    expect(codesOf(musicOf(onePart([free])))).toContain('bar.lengthUnknown');
  });

  it('follows divisions as they change, and decimal durations', () => {
    const triplets = '<attributes><divisions>3</divisions></attributes>';
    const third = '<note><pitch><step>C</step><octave>4</octave></pitch><duration>1</duration></note>';
    expect(lengths([`${note(1)}${triplets}${third}`, third])).toEqual(['4/3', '1/3']);
    const half = '<note><rest/><duration>2.5</duration></note>';
    expect(lengths([half])).toEqual(['5/8']);
  });
});

describe('tempo', () => {
  it('is 120 quarters a minute where none is said, with a remark', () => {
    expect(seconds([note(4)])).toBe(2);
    expect(codesOf(musicOf(onePart([note(4)])))).toEqual(
      expect.arrayContaining(['tempo.assumed', 'part.alone']),
    );
    // Until the first mark: 4 quarters at 120, 4 at 60.
    expect(seconds([note(4), `${sound('tempo="60"')}${note(4)}`])).toBe(6);
  });

  it('changes where the mark stands', () => {
    // 1 quarter at 60, then 3 at 180.
    expect(seconds([`${sound('tempo="60"')}${note(1)}${sound('tempo="180"')}${note(3)}`])).toBeCloseTo(2, 12);
  });

  it('is moved by an offset only when the offset says that it sounds', () => {
    const offset = (attribute: string) =>
      `<direction><direction-type/><offset${attribute}>8</offset><sound tempo="60"/></direction>${note(4)}`;
    // 4 quarters at 60; or 2 quarters at 120 before 2 at 60.
    expect(seconds([offset('')])).toBe(4);
    expect(seconds([offset(' sound="yes"')])).toBe(3);
  });

  it('belongs to the place: going back brings it back', () => {
    const music = musicOf(
      onePart([`${sound('tempo="60"')}${note(1)}`, `${sound('tempo="120"')}${note(1)}${END}`]),
    );
    expect(performanceOf(music).seconds).toBeCloseTo(3, 12);
  });

  it('is read from metronome marks, dots and words beside the figure included', () => {
    const metronome = (unit: string, dots: number, figure: string, more = '') =>
      `<direction><direction-type><metronome><beat-unit>${unit}</beat-unit>${'<beat-unit-dot/>'.repeat(dots)}<per-minute>${figure}</per-minute></metronome></direction-type>${more}</direction>${note(6)}`;
    const tempo = (text: string) => musicOf(onePart([text])).tempos[0]?.quartersPerMinute;
    expect(tempo(metronome('half', 0, '60'))).toBe(120);
    expect(tempo(metronome('quarter', 1, '80'))).toBe(120);
    expect(tempo(metronome('eighth', 0, 'ca. 96'))).toBe(48);
    expect(tempo(metronome('quarter', 2, '40'))).toBe(70);
    expect(tempo(metronome('quarter', 0, '80', '<sound tempo="66"/>'))).toBe(66);
  });

  it('does not follow equations of notes, and says so', () => {
    const equation =
      '<direction><direction-type><metronome><beat-unit>quarter</beat-unit><beat-unit>half</beat-unit></metronome></direction-type></direction>';
    const music = musicOf(onePart([`${equation}${note(4)}`]));
    expect(music.tempos).toEqual([]);
    expect(codesOf(music)).toContain('tempo.modulation');
  });

  it('of two marks at one place is the later', () => {
    expect(seconds([`${sound('tempo="60"')}${sound('tempo="240"')}${note(4)}`])).toBe(1);
  });

  it('is taken from words as the last resort', () => {
    const music = musicOf(onePart([`${words('Allegro (\u2669. = 60)')}${note(3)}`]));
    expect(music.tempos[0]).toMatchObject({ quartersPerMinute: 90, source: 'words' });
    expect(codesOf(music)).toContain('tempo.words');
    const both = musicOf(onePart([`${words('\u2669 = 60')}${note(4)}`, `${sound('tempo="90"')}${note(4)}`]));
    expect(both.tempos.map(({ source }) => source)).toEqual(['sound']);
  });

  it.each([
    ['\u2669 = 96', 96],
    ['Vivace \u266A = ca. 120', 60],
    ['quarter = 72', 72],
    ['(q. = 60)', 90],
    ['M.M. = 100', 100],
    ['Allegro', null],
    ['x = 3', null],
    ['=', null],
  ])('finds in "%s": %s', (text, expected) => {
    expect(tempoInWords(text)).toBe(expected);
  });

  it('says how many fermatas and ritardandi it does not count', () => {
    const fermata = note(4, '').replace('</note>', '<notations><fermata/></notations></note>');
    const music = musicOf(onePart([`${sound('tempo="60"')}${fermata}`, `${words('poco rit.')}${note(4)}`]));
    expect(music.remarks.find(({ code }) => code === 'tempo.free')).toMatchObject({ count: 2 });
  });
});

describe('names and marks', () => {
  it('gives titles, parts, instruments and transpositions', () => {
    const list =
      '<score-part id="P1"><part-name>Clarinet\n in A</part-name><score-instrument id="I1"><instrument-name>Clarinet in A</instrument-name></score-instrument><score-instrument id="I2"><instrument-name>Bass clarinet</instrument-name></score-instrument></score-part>';
    const transpose =
      '<attributes><transpose><diatonic>-2</diatonic><chromatic>-3</chromatic><octave-change>-1</octave-change></transpose></attributes>';
    const change = '<sound><instrument-change id="I2"/></sound>';
    const score = scoreOf(
      scoreXml(part([`${DIVISIONS}${note(4)}`, `${change}${transpose}${newPage}${note(4)}`]), list).replace(
        '<part-list>',
        '<work><work-title>Old Stones</work-title></work><part-list>',
      ),
    );
    expect(score.title).toBe('Old Stones');
    expect(score.parts[0]).toMatchObject({
      name: 'Clarinet in A',
      instruments: [{ bar: 1, name: 'Bass clarinet' }],
      transpositions: [{ bar: 1, chromatic: -3, diatonic: -2, octaves: -1 }],
      pageBreaks: [1],
      counts: { notes: 2, cueNotes: 0 },
    });
  });

  it('notices another instrument of single notes', () => {
    const by = (id: string) => note(4, '').replace('</note>', `<instrument id="${id}"/></note>`);
    const { instruments } = scoreOf(onePart([by('I1'), by('I1'), by('I2'), by('I1')])).parts[0] ?? {};
    expect(instruments).toEqual([
      { bar: 2, name: 'I2' },
      { bar: 3, name: 'I1' },
    ]);
  });

  it('ignores names that mean something to JavaScript', () => {
    const odd = '<constructor/><__proto__>1</__proto__><toString/>';
    expect(scoreOf(onePart([`${odd}${note(4)}`])).bars.length).toBe(1);
  });

  it('reads a score by bars as it reads one by parts', () => {
    const [a, b, c] = [
      `${DIVISIONS}${note(2)}${rest(2)}`,
      `${sound('tempo="60"')}${rest(3)}`,
      `${cue(2)}${note(1)}`,
    ];
    const list =
      '<score-part id="P1"><part-name>A</part-name></score-part><score-part id="P2"><part-name>B</part-name></score-part>';
    const byParts = scoreXml(`${part([a, b])}${part([`${DIVISIONS}${c}`, c], undefined, 'P2')}`, list);
    const byBars = byParts
      .replace(
        /<part id.*<\/part>/,
        `<measure number="1"><part id="P1">${a}</part><part id="P2">${DIVISIONS}${c}</part></measure><measure number="2"><part id="P1">${b}</part><part id="P2">${c}</part></measure>`,
      )
      .replaceAll('score-partwise', 'score-timewise');
    expect(musicOf(byBars)).toEqual(musicOf(byParts));
  });

  it('comes out the same in whatever pieces it arrives', () => {
    const xml = onePart(
      Array.from({ length: 3000 }, () => `${note(1)}${rest(3)}<!-- ${'x'.repeat(100)} -->`),
    );
    expect(xml.length).toBeGreaterThan(600_000);
    const outcome = readScore(xml);
    expect(outcome.ok && outcome.value.bars.length).toBe(3000);
  });
});

describe('what is played at a time', () => {
  it('is found by bar and by how often it has come', () => {
    const music = musicOf(onePart([`${sound('tempo="60"')}${note(2)}`, `${note(2)}${END}`]));
    const performance = performanceOf(music);
    expect(momentAt(music, performance, 0)).toMatchObject({ bar: 0, playedBar: 0 });
    expect(momentAt(music, performance, 6.5)).toMatchObject({
      bar: 1,
      playedBar: 3,
      number: '2',
      seconds: 0.5,
    });
    expect(momentAt(music, performance, 8)).toBeNull();
    expect(momentAt(music, performance, -1)).toBeNull();
  });
});
