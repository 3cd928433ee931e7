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
    // Blanks alone, numbers behind, ordinals, plurals, other signs between.
    ['2 vl va vc', ['Violin 1', 'Violin 2', 'Viola', 'Cello']],
    ['vl1, vl2, va, vc', ['Violin 1', 'Violin 2', 'Viola', 'Cello']],
    ['vl 1 vl 2 va vc', ['Violin 1', 'Violin 2', 'Viola', 'Cello']],
    ['2x vl, 2 x va', ['Violin 1', 'Violin 2', 'Viola 1', 'Viola 2']],
    ['vln/vla/vcl/db', ['Violin', 'Viola', 'Cello', 'Double bass']],
    ['fl ob cl hn bsn', ['Flute', 'Oboe', 'Clarinet', 'Horn', 'Bassoon']],
    ['violin viola cello', ['Violin', 'Viola', 'Cello']],
    ['1st violin, second violin', ['Violin 1', 'Violin 2']],
    [
      '2 cors anglais, 3 double basses',
      ['Cor anglais 1', 'Cor anglais 2', 'Double bass 1', 'Double bass 2', 'Double bass 3'],
    ],
    // Named ensembles: common practice, no source.
    ['string quartet', ['Violin 1', 'Violin 2', 'Viola', 'Cello']],
    ['Streichquartett', ['Violin 1', 'Violin 2', 'Viola', 'Cello']],
    ['string quartet + cl', ['Violin 1', 'Violin 2', 'Viola', 'Cello', 'Clarinet']],
    ['string quartet with clarinet', ['Violin 1', 'Violin 2', 'Viola', 'Cello', 'Clarinet']],
    ['string quartet cl', ['Violin 1', 'Violin 2', 'Viola', 'Cello', 'Clarinet']],
    ['wind quintet', ['Flute', 'Oboe', 'Clarinet', 'Horn', 'Bassoon']],
    ['Bläserquintett', ['Flute', 'Oboe', 'Clarinet', 'Horn', 'Bassoon']],
    ['piano trio', ['Violin', 'Cello', 'Piano']],
    ['brass quintet', ['Trumpet 1', 'Trumpet 2', 'Horn', 'Trombone', 'Tuba']],
    ['2 string trios', ['Violin 1', 'Viola 1', 'Cello 1', 'Violin 2', 'Viola 2', 'Cello 2']],
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
      '“vxylo” is no instrument of the catalogue: do you mean “xylophone”?',
      '“0 va”: give at least one.',
      '“marymba” is no instrument of the catalogue: do you mean “marimba”?',
    ]);
  });

  it.each([
    ['quietly', /write its name, or an abbreviation such as/],
    ['zzz', /write its name/],
    ['claranet', /do you mean “clarinet”/],
    ['obeo', /do you mean “oboe”/],
    ['strign quartet', /do you mean “string quartet”/],
    // A word of another language is answered in English.
    ['Klarinete', /do you mean “clarinet”/],
    ['Fagot', /do you mean “bassoon”/],
    ['2 vl vla celo', /^“celo” .* do you mean “cello”/],
    // A name of two words is not taken for two players.
    ['tenor horn', /put a comma after each who plays/],
    ['alto clarinet', /do you mean “clarinet alto”|do you mean|put a comma/],
    ['bass guitar', /do you mean|put a comma/],
    ['piano accordion', /put a comma/],
    ['vl 2 va', /put a comma/],
    ['flute quartet', /made up in several ways: write who plays/],
    ['41 string quartets', /more than 40 players/],
    ['11 string quartets', /more than 40 players/],
  ])('%s is nobody', (typed, problem) => {
    expect(names(typed)).toEqual([]);
    expect(problems(typed)).toEqual([expect.stringMatching(problem)]);
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
