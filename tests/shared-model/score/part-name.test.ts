/** Names of parts: the trade's names in four languages (common practice, no source). */

import { describe, expect, it } from 'vitest';
import { isVoice, partNameOf } from '#model/score/parts/part-name.ts';

const said = (name: string) => {
  const found = partNameOf(name);
  return found && `${found.kind}/${found.key ?? ''}/${found.number ?? ''}`;
};

describe('the name of a part', () => {
  it.each([
    [['Violoncello', 'Cello', 'Violoncelle', 'VIOLONCELLI'], 'cello//'],
    [
      [
        'Bb Clarinet',
        'Clarinet in B flat',
        'B\u266D Clarinet',
        'Clarinet in Bb',
        'Klarinette in B',
        'Clarinetto in Si b\u00E9mol',
      ],
      'clarinet/b flat/',
    ],
    [['Clarinet 2 in A', 'Clarinet in A 2', 'A Clarinet II', 'Second Clarinet in A'], 'clarinet/a/2'],
    [['Violin 1', 'Violin I', '1st Violin', 'Violino primo', 'Violin1', 'Violons I'], 'violin//1'],
    [['Fl\u00F6te', 'Flute', 'Flauto', 'Fl\u00FBte', 'Flute (Anna)'], 'flute//'],
    [['Horn in F 3', 'Corno III in Fa', 'Horn 3 in F'], 'horn/f/3'],
    [['Flute alto', 'Alto Flute'], 'flute alto//'],
  ])('is the same instrument, key and number: %j', (names, wanted) => {
    for (const name of names) expect(`${name}: ${said(name)}`).toBe(`${name}: ${wanted}`);
  });

  it.each(['', 'Anna', 'Bass', 'Violin solo', 'Horns 1 and 2', 'Flutes a 2', 'Flute 1.2', '1', 'in B'])(
    'is not read where it is not plain, or is for several: "%s"',
    (name) => expect(partNameOf(name)).toBeNull(),
  );
});

describe('a name of voices', () => {
  it.each(['Bass', 'Alto', 'Tenor 2', 'SOPRANO I', 'Basso', 'Mezzo-soprano', 'Baritone (Karl)'])(
    'is no instrument: "%s"',
    (name) => expect([isVoice(name), partNameOf(name)]).toEqual([true, null]),
  );

  it.each([
    ['Double Bass', 'double bass'],
    ['Bass Clarinet', 'clarinet bass'],
    ['Alto Flute', 'flute alto'],
    ['Alto Saxophone', 'saxophone alto'],
    ['Alto Viola', 'viola'],
    ['Tenor Recorder', 'recorder tenor'],
  ])('with an instrument is that instrument: "%s"', (name, kind) => {
    expect([isVoice(name), partNameOf(name)?.kind]).toEqual([false, kind]);
  });
});
