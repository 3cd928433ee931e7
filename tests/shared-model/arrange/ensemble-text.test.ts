import { describe, expect, it } from 'vitest';
import { MOST_MEMBERS, readEnsemble } from '#model/arrange/ensemble-text.ts';
import { memberOf, wordsKnown } from '#model/arrange/instrument-words.ts';
import { kindNamed } from '#model/score/parts/names-of-instruments.ts';

const names = (text: string): string[] => readEnsemble(text).members.map(({ name }) => name);
const problems = (text: string): (string | null)[] =>
  readEnsemble(text).entries.map(({ problem }) => problem);

// What the abbreviations mean: common practice, no source.
describe('an ensemble as text', () => {
  it.each([
    ['2 vl, va, vc', ['Violin 1', 'Violin 2', 'Viola', 'Cello']],
    ['cl, va, perc', ['Clarinet', 'Viola', 'Percussion']],
    ['ob;bn + pf', ['Oboe', 'Bassoon', 'Piano']],
    ['Flöte, Fagott und Klavier', ['Flute', 'Bassoon', 'Piano']],
    ['two violins and cello', ['Violin 1', 'Violin 2', 'Cello']],
    ['3x horn\n2×tpt.', ['Horn 1', 'Horn 2', 'Horn 3', 'Trumpet 1', 'Trumpet 2']],
    ['vl. I, vl. II, vc 1, vc 2', ['Violin 1', 'Violin 2', 'Cello 1', 'Cello 2']],
    ['Sop, mezzo, A, T, B', ['Soprano', 'Mezzo-soprano', 'Alto', 'Tenor', 'Bass voice']],
    ['b.cl., asax, db', ['Bass clarinet', 'Alto saxophone', 'Double bass']],
    ['  , ,, ', []],
  ])('%j', (text, expected) => {
    expect(names(text)).toEqual(expected);
    expect(problems(text).every((problem) => problem === null)).toBe(true);
  });

  it('says what it does not understand, where, and what would do', () => {
    const { entries, members } = readEnsemble('2 vl, vxylo, 0 va, marymba');
    expect(members).toHaveLength(2);
    expect(entries.map(({ text, at }) => [text, at])).toEqual([
      ['2 vl', 0],
      ['vxylo', 6],
      ['0 va', 13],
      ['marymba', 19],
    ]);
    expect(entries.map(({ problem }) => problem)).toEqual([
      null,
      expect.stringMatching(/^“vxylo” is no instrument of the catalogue: write its name, or an abbreviation/),
      '“0 va”: give at least one.',
      '“marymba” is no instrument of the catalogue: do you mean “marimba”?',
    ]);
  });

  it('stops at as many as a line of text is good for', () => {
    expect(names(`${MOST_MEMBERS} vl`)).toHaveLength(MOST_MEMBERS);
    const over = readEnsemble(`${MOST_MEMBERS} vl, va`);
    expect(over.members).toHaveLength(MOST_MEMBERS);
    expect(over.entries[1]?.problem).toMatch(/more than 40 players/);
    expect(readEnsemble('999 vl').members).toEqual([]);
  });

  it('knows no word that stands for nothing, and none that the names of parts know otherwise', () => {
    for (const word of wordsKnown()) {
      const member = memberOf(word);
      expect(member, word).not.toBeNull();
      const kind = kindNamed(word);
      if (kind !== undefined && member?.kind === 'carried' && member.model.family !== 'voice')
        expect(member.model.id, word).toBe(kind.replaceAll(' ', '-'));
    }
  });
});
