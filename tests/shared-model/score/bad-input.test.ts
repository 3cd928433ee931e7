/** Scores that are refused: each for its own reason, in one line, at once. */

import { describe, expect, it } from 'vitest';
import {
  DIVISIONS,
  END,
  ending,
  filled,
  note,
  part,
  refusal,
  scoreXml,
  sound,
  words,
} from './write-score.ts';

const inBar = (content: string) => scoreXml(part([`${DIVISIONS}${note(4)}`, content]));

describe('refused', () => {
  it.each([
    [
      'a tempo of 0',
      inBar(sound('tempo="0"')),
      'In part "Viola", bar 2, line 1, the tempo is "0"; it has to be 1 to 2000',
    ],
    ['a tempo below 0', inBar(sound('tempo="-60"')), 'the tempo is "-60"'],
    ['a tempo in words', inBar(sound('tempo="fast"')), 'the tempo is "fast"'],
    ['a tempo without end', inBar(sound('tempo="Infinity"')), 'the tempo is "Infinity"'],
    [
      'a metronome at 0',
      inBar(
        '<direction><direction-type><metronome><beat-unit>half</beat-unit><per-minute>0</per-minute></metronome></direction-type></direction>',
      ),
      'the tempo is "0"',
    ],
    ['a duration below 0', inBar(note(-1)), 'the duration is "-4"; it has to be a number, not below 0'],
    ['a duration in words', inBar('<note><rest/><duration>long</duration></note>'), 'the duration is "long"'],
    [
      'a duration without end',
      inBar('<note><rest/><duration>1e999</duration></note>'),
      'the duration is "1e999"',
    ],
    ['a backup below 0', inBar('<backup><duration>-1</duration></backup>'), 'the duration is "-1"'],
    ['divisions of 0', inBar('<attributes><divisions>0</divisions></attributes>'), 'the divisions is "0"'],
    [
      'divisions below 0',
      inBar('<attributes><divisions>-1</divisions></attributes>'),
      'the divisions is "-1"',
    ],
    ['a bar beyond all measure', inBar('<note><rest/><duration>999999999999</duration></note>'), 'too long'],
    [
      'a repeat made 0 times',
      inBar('<barline location="right"><repeat direction="backward" times="0"/></barline>'),
      'the times of a repeat is "0"',
    ],
    [
      'a repeat made far too often',
      inBar('<barline location="right"><repeat direction="backward" times="1000000000"/></barline>'),
      'the times of a repeat',
    ],
    [
      'an ending of a pass that never comes',
      inBar('<barline location="left"><ending number="999999" type="start"/></barline>'),
      'the number of an ending',
    ],
    ['no part', scoreXml(''), 'It holds no part'],
    ['no bar', scoreXml('<part id="P1"/>'), 'holds no bar'],
    ['another kind of XML', '<html><body/></html>', 'begins with <html>'],
    ['nothing', '', 'damaged at line 1'],
    ['text', 'do re mi', 'damaged at line 1'],
    ['a cut', inBar('').slice(0, 200), 'damaged at line 1'],
    ['two roots', `${inBar('')}<score-partwise/>`, 'damaged'],
    ['crossed tags', inBar('<note></rest></note>'), 'damaged at line 1'],
    ['an unknown entity', inBar('&beam;'), 'undefined entity'],
    ['a character that XML has not', inBar('\u0000'), 'disallowed character'],
  ])('%s', (_, xml, reason) => {
    const line = refusal(xml);
    expect(line).toContain(reason);
    expect(line).not.toContain('\n');
  });

  it('parts of different length, both named', () => {
    const list =
      '<score-part id="P1"><part-name>Oboe</part-name></score-part><score-part id="P2"><part-name>Horn</part-name></score-part>';
    const parts = `${part([`${DIVISIONS}${note(4)}`, note(4)])}${part([`${DIVISIONS}${note(4)}`], undefined, 'P2')}`;
    expect(refusal(scoreXml(parts, list))).toBe(
      'Part "Horn" has 1 bar, part "Oboe" 2 bars; all parts of a score have the same, so export it again from the music program.',
    );
    const byBars =
      '<score-timewise><part-list/><measure number="1"><part id="a"/><part id="b"/></measure><measure number="2"><part id="a"/></measure></score-timewise>';
    expect(refusal(byBars)).toContain('Part "b" has 1 bar');
  });

  it('entities of every kind, while the usual document type is tolerated', () => {
    const declared = (subset: string) =>
      filled(['']).replace('?>', `?><!DOCTYPE score-partwise [${subset}]>`);
    const bomb = '<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;">';
    for (const subset of [
      bomb,
      '<!ENTITY x SYSTEM "file:///etc/passwd">',
      '<!ENTITY % p SYSTEM "http://localhost/x"> %p;',
      '<!entity y "z">',
    ])
      expect(refusal(declared(subset))).toContain('declares entities');
    expect(refusal(declared('<!ELEMENT note ANY>'))).toBeNull();
    const usual =
      '<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 3.1 Partwise//EN" "http://www.musicxml.org/dtds/partwise.dtd">';
    expect(refusal(filled(['']).replace('?>', `?>${usual}`))).toBeNull();
  });

  it.each([
    [
      'too deep',
      (xml: string) => xml.replace('<note>', '<x>'.repeat(300) + '</x>'.repeat(300) + '<note>'),
      'more than 200 deep',
    ],
    [
      'too many attributes',
      (xml: string) =>
        xml.replace('<note>', `<x ${Array.from({ length: 300 }, (_, i) => `a${i}=""`).join(' ')}/><note>`),
      'more than 256 attributes',
    ],
    ['a text too long', (xml: string) => xml.replace('Viola', 'V'.repeat(70_000)), 'longer than 65,536'],
    [
      'an attribute too long',
      (xml: string) => xml.replace('<note>', `<note color="${'x'.repeat(70_000)}">`),
      'longer than 65,536',
    ],
    [
      'too many bars',
      (xml: string) => xml.replace('</part>', `${'<measure number="1"/>'.repeat(50_001)}</part>`),
      'more than 50,000 bars',
    ],
    [
      'too many parts',
      (xml: string) => xml.replace('<part-list>', `<part-list>${'<score-part id="x"/>'.repeat(501)}`),
      'more than 500 parts',
    ],
  ])('%s', (_, spoil, reason) => {
    const begin = performance.now();
    expect(refusal(spoil(filled([''])))).toContain(reason);
    expect(performance.now() - begin).toBeLessThan(2000);
  });
});

describe('within a moment', () => {
  const many = (count: number, bar: (index: number) => string) =>
    scoreXml(part(Array.from({ length: count }, (_, index) => bar(index))));

  it.each([
    [
      'a document type without end',
      `<!DOCTYPE score-partwise [${'<!-- -->'.repeat(200_000)}]><score-partwise/>`,
      'stand before its first element',
    ],
    ['a jump in every bar', many(50_000, () => sound('dacapo="yes"')), 'more than 2,000 jumps'],
    ['a jump in words in every bar', many(50_000, () => words('D.C.')), 'more than 2,000 jumps'],
    ['tempo marks without end', inBar(sound('tempo="60"').repeat(200_001)), 'more than 200,000 tempo marks'],
    [
      'notes between rests without end',
      inBar('<note><duration>1</duration></note><forward><duration>1</duration></forward>'.repeat(300_001)),
      'more than 300,000 notes between rests',
    ],
    [
      'notes between rests in every bar',
      many(49_000, () =>
        '<note><duration>1</duration></note><forward><duration>1</duration></forward>'.repeat(7),
      ),
      'more than 300,000 notes between rests',
    ],
    ['an ending in every bar', many(50_000, () => `${ending('1')}${END}`), null],
    [
      'a movement in every second bar',
      many(50_000, () => '').replaceAll(/number="\d*([02468])"/g, 'number="0"'),
      null,
    ],
  ])('%s', (_, xml, reason) => {
    // Of the processor: by the clock it depends on what else the machine does.
    const begun = process.cpuUsage();
    const line = refusal(xml);
    expect(process.cpuUsage(begun).user / 1000).toBeLessThan(4000);
    if (reason === null) expect(line).toBeNull();
    else expect(line).toContain(reason);
  });
});

describe('read all the same', () => {
  it('long texts that nobody wants, such as pictures', () => {
    expect(
      refusal(filled(['']).replace('<part-list>', `<image>${'A'.repeat(200_000)}</image><part-list>`)),
    ).toBeNull();
  });

  it('a part list that does not fit the parts', () => {
    expect(refusal(scoreXml(part([note(4)]), ''))).toBeNull();
    expect(refusal(scoreXml(part([note(4)]).replace(' id="P1"', '')))).toBeNull();
  });
});
