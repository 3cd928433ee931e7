import { describe, expect, it } from 'vitest';
import { copySetup, setupAddedBy } from '#model/commands/setups.ts';
import { remove } from '#model/commands/remove.ts';
import { setFields } from '#model/commands/set-fields.ts';
import { applyDiff } from '#model/document/diff.ts';
import { find, inSetup, type Document } from '#model/document/document.ts';
import { asId, type Id } from '#model/document/ids.ts';
import type { PlayerPair } from '#model/document/records.ts';
import type { Outcome } from '#model/commands/command.ts';
import { aDocument, aPlayer, aSetup, recordOf, SETUP } from '../../helpers/build.ts';

const id = (text: string): Id<'player'> => asId<'player'>(text);
const pair = (a: string, b: string): PlayerPair => [id(a), id(b)];

const THREE = aDocument(
  aSetup({ needNotSee: [pair('player-1', 'player-2'), pair('player-2', 'player-3')] }),
  ...['player-1', 'player-2', 'player-3'].map((name) => aPlayer({ id: name })),
  aSetup({ id: 'setup-2', order: 2 }),
  aPlayer({ id: 'player-4', setup: asId<'setup'>('setup-2') }),
  aPlayer({ id: 'player-5', setup: null }),
);

const pairsAfter = (outcome: Outcome, setup: Id<'setup'> = SETUP): readonly PlayerPair[] => {
  if (!outcome.ok) throw new Error(outcome.reason);
  return recordOf(applyDiff(THREE, outcome.diff), setup, 'setup').needNotSee;
};
const give = (...needNotSee: readonly PlayerPair[]): Outcome =>
  setFields(THREE, { ids: [SETUP], fields: { needNotSee } });

describe('pairs of players who need not see each other', () => {
  it('go with either of their players', () => {
    expect(pairsAfter(remove(THREE, { ids: ['player-1'] }))).toEqual([pair('player-2', 'player-3')]);
    expect(pairsAfter(remove(THREE, { ids: ['player-2'] }))).toEqual([]);
    expect(pairsAfter(remove(THREE, { ids: ['player-4'] }))).toHaveLength(2);
  });

  it('of a copied setup name the copied players', () => {
    const outcome = copySetup(THREE, { setup: SETUP, name: 'Again' });
    const copy = setupAddedBy(outcome);
    if (!outcome.ok || !copy) throw new Error('no copy');
    const document: Document = applyDiff(THREE, outcome.diff);
    const copied = new Set(inSetup(document, copy, 'player').map((player) => player.id));
    const pairs = find(document, copy)?.needNotSee ?? [];
    expect(pairs).toHaveLength(2);
    for (const player of pairs.flat()) {
      expect(copied).toContain(player);
      expect(find(THREE, player)).toBeUndefined();
    }
    expect(pairs[0]?.[1]).toBe(pairs[1]?.[0]);
    expect(recordOf(document, SETUP, 'setup').needNotSee).toEqual(recordOf(THREE, SETUP, 'setup').needNotSee);
  });

  it('may hold players who stay for the whole concert', () => {
    expect(pairsAfter(give(pair('player-1', 'player-5')))).toEqual([pair('player-1', 'player-5')]);
  });

  it.each([
    ['the same player twice', [pair('player-1', 'player-1')], 'name two different players'],
    [
      'the same pair twice',
      [pair('player-1', 'player-2'), pair('player-2', 'player-1')],
      'name each pair once',
    ],
    ['somebody of another setup', [pair('player-1', 'player-4')], 'is there only in setup “'],
    ['nobody', [pair('player-1', 'player-9')], 'there is no record of that id'],
    ['something else', [pair('player-1', 'stalls')], 'of kind seatBlock'],
  ])('may not name %s', (_, pairs, words) => {
    expect(give(...pairs)).toMatchObject({ ok: false, reason: expect.stringContaining(words) });
  });
});
