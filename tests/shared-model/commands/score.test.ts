import { describe, expect, it } from 'vitest';
import { assignPart, setScore } from '#model/commands/score.ts';
import { scoreOf } from '#model/document/parts.ts';
import { asId } from '#model/document/ids.ts';
import { aDocument, aPlayer, aScore, aSetup, MUSIC, recordOf, SETUP } from '../../helpers/build.ts';
import { carriedOut, refusal } from './check-laws.ts';
import { frozen } from '../document/freeze.ts';

const duo = {
  ...MUSIC,
  parts: ['Oboe', 'Harp'].map((name, index) => ({ ...MUSIC.parts[0]!, id: `P${index + 1}`, name })),
};
const oboe = aPlayer({ name: 'oboe ' });
const harp = aPlayer({ id: 'player-2', name: 'Somebody', x: 900 });

describe('the music of a setup', () => {
  it('is given to the players whose names the parts have, and to nobody else', () => {
    const document = frozen(aDocument(oboe, harp));
    const after = carriedOut(document, setScore(document, { setup: SETUP, music: duo, source: 'duo.mxl' }));
    expect(scoreOf(after, SETUP)).toMatchObject({ source: 'duo.mxl', players: ['player-1', null] });
  });

  it('takes the place of the music before, and who played a part of that name still does', () => {
    const document = frozen(aDocument(oboe, harp, aScore({ music: duo, players: [null, asId('player-2')] })));
    const music = { ...duo, parts: duo.parts.toReversed() };
    const after = carriedOut(document, setScore(document, { setup: SETUP, music, source: 'again.mxl' }));
    expect(scoreOf(after, SETUP)).toMatchObject({ id: 'score-1', players: ['player-2', 'player-1'] });
  });

  it('is told who plays which part: each player one', () => {
    const document = frozen(aDocument(oboe, harp, aScore({ music: duo, players: [asId('player-1'), null] })));
    const order = { score: asId<'score'>('score-1'), part: 1, player: asId<'player'>('player-1') };
    const after = carriedOut(document, assignPart(document, order));
    expect(recordOf(after, 'score-1', 'score').players).toEqual([null, 'player-1']);
    expect(refusal(document, assignPart(document, { ...order, part: 2 }))).toBe('Give one of the 2 parts.');
    expect(refusal(document, assignPart(document, { ...order, player: asId('player-9') }))).toMatch(
      /there is no record of that id/,
    );
  });

  it('of another setup needs players of that setup', () => {
    const document = frozen(aDocument(oboe, aSetup({ id: 'setup-2' })));
    const outcome = setScore(document, { setup: asId('setup-2'), music: duo, source: '' });
    expect(scoreOf(carriedOut(document, outcome), asId('setup-2'))?.players).toEqual([null, null]);
  });
});
