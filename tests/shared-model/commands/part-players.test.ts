import { describe, expect, it } from 'vitest';
import { setScore } from '#model/commands/score.ts';
import { scoreOf } from '#model/document/parts.ts';
import { asId } from '#model/document/ids.ts';
import { aDocument, anInstrument, aPlayer, aScore, MUSIC, SETUP } from '../../helpers/build.ts';
import { carriedOut } from './check-laws.ts';

const musicOf = (names: readonly string[]) => ({
  ...MUSIC,
  parts: names.map((name, index) => ({ ...MUSIC.parts[0]!, id: `P${index + 1}`, name })),
});

const seated = (names: readonly string[]) =>
  names.map((name, index) => aPlayer({ id: `player-${index + 1}`, name, x: index * 900 }));

/** The number of the player of each part; 0: nobody. */
const given = (parts: readonly string[], players: readonly string[]) => {
  const document = aDocument(...seated(players));
  const after = carriedOut(document, setScore(document, { setup: SETUP, music: musicOf(parts), source: '' }));
  return scoreOf(after, SETUP)?.players.map((id) => Number(id?.slice('player-'.length) ?? 0));
};

describe('new parts', () => {
  it.each([
    ['Violoncello|Bb Clarinet', 'Clarinet in B flat|Cello', [2, 1]],
    ['Violin 1|Violin 2', 'Violin|Violin', [1, 2]],
    ['Violin II|Violin I', 'Violin|Violin', [2, 1]],
    ['Violin II|Violin I', 'Violin 2|Violin 1', [1, 2]],
    ['Violin II', 'Violin|Violin', [2]],
    ['Clarinet in A|Klarinette in B', 'Clarinet in B flat|Clarinet in A', [2, 1]],
    ['Horn 3 in F', 'Horn|Horn|Horn|Horn', [3]],
    ['Fl\u00F6te|Oboi', 'Oboe|Flute', [2, 1]],
  ] as const)('%s go to %s', (parts, players, wanted) => {
    expect(given(parts.split('|'), players.split('|'))).toEqual(wanted);
  });

  it.each([
    ['Violin I|Violin II', 'Violin'],
    ['Violin I|Violin II', 'Violin|Violin|Violin|Violin'],
    ['Violin I', 'Violin 2'],
    ['Violoncello', 'Cello|Cello'],
    ['Violoncello|Violoncello', 'Cello'],
    ['Horns 1 and 2', 'Horn'],
    ['Viola', 'Cello'],
  ] as const)('%s go to nobody of %s', (parts, players) => {
    const names = parts.split('|');
    expect(given(names, players.split('|'))).toEqual(names.map(() => 0));
  });

  it('go by what a player carries when his name is his own', () => {
    const anna = aPlayer({ name: 'Anna' });
    const cello = anInstrument({ model: 'cello', player: anna.id });
    const document = aDocument(anna, cello);
    const music = musicOf(['Violoncello']);
    const after = carriedOut(document, setScore(document, { setup: SETUP, music, source: '' }));
    expect(scoreOf(after, SETUP)?.players).toEqual(['player-1']);
  });

  it.each([
    ['Bass', 'Double Bass|Bass Clarinet|Bass Trombone'],
    ['Alto', 'Alto Flute|Alto Saxophone|Viola'],
    ['Double Bass|Bass Clarinet', 'Bass'],
    ['Alto Flute|Alto Saxophone|Viola', 'Alto'],
  ])('named as voices and as instruments are two: %s, %s', (parts, players) => {
    const names = parts.split('|');
    expect(given(names, players.split('|'))).toEqual(names.map(() => 0));
  });

  const named = (
    name: string,
    part: string,
    ...models: readonly ('double-bass' | 'saxophone-alto' | 'viola')[]
  ) => {
    const player = aPlayer({ name });
    const held = models.map((model) => anInstrument({ model, player: player.id }));
    const document = aDocument(player, ...held);
    const after = carriedOut(
      document,
      setScore(document, { setup: SETUP, music: musicOf([part]), source: '' }),
    );
    return scoreOf(after, SETUP)?.players;
  };

  it('of a voice go to a namesake who sings, and to none who has an instrument: that would be a guess', () => {
    expect(named('Bass', 'Bass')).toEqual(['player-1']);
    expect(named('Bass', 'Bass', 'double-bass')).toEqual([null]);
    expect(named('Alto', 'Alto', 'saxophone-alto')).toEqual([null]);
    expect(named('Alto', 'Alto', 'viola')).toEqual([null]);
  });

  it('of an instrument go to him who has it, whatever he is called', () => {
    expect(named('Bass', 'Double Bass', 'double-bass')).toEqual(['player-1']);
    expect(named('Bass', 'Bass Clarinet', 'double-bass')).toEqual([null]);
    expect(named('Alto', 'Alto Saxophone', 'saxophone-alto')).toEqual(['player-1']);
    expect(named('Alto', 'Alto Flute', 'viola')).toEqual([null]);
  });

  it('leave players alone who have a part, and parts that had nobody', () => {
    const known = aScore({ music: musicOf(['Violin I', 'Oboe']), players: [asId('player-2'), null] });
    const document = aDocument(...seated(['Violin', 'Violin', 'Hautbois']), known);
    const music = musicOf(['Violin I', 'Oboe', 'Violin 2']);
    const after = carriedOut(document, setScore(document, { setup: SETUP, music, source: '' }));
    expect(scoreOf(after, SETUP)?.players).toEqual(['player-2', null, 'player-1']);
  });
});
