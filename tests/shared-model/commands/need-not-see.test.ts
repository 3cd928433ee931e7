import { describe, expect, it } from 'vitest';
import { setEyeContact } from '#model/commands/need-not-see.ts';
import { asId, type Id } from '#model/document/ids.ts';
import { aDocument, aPlayer, aSetup, recordOf, SETUP } from '../../helpers/build.ts';
import { frozen } from '../document/freeze.ts';
import { carriedOut, refusal } from './check-laws.ts';

const [A, B, ELSEWHERE] = ['player-1', 'player-2', 'player-3'].map((id) => asId<'player'>(id)) as [
  Id<'player'>,
  Id<'player'>,
  Id<'player'>,
];
const other = aSetup({ id: 'setup-2', order: 2 });
const document = frozen(
  aDocument(
    aPlayer({ id: A }),
    aPlayer({ id: B, x: 900 }),
    other,
    aPlayer({ id: ELSEWHERE, setup: other.id }),
  ),
);

describe('eye contact of two players', () => {
  it('is let go of for this setup only, once, and asked for again in either order', () => {
    const without = carriedOut(
      document,
      setEyeContact(document, { setup: SETUP, pair: [A, B], needed: false }),
    );
    expect(recordOf(without, SETUP, 'setup').needNotSee).toEqual([[A, B]]);
    expect(recordOf(without, other.id, 'setup').needNotSee).toEqual([]);
    const twice = setEyeContact(without, { setup: SETUP, pair: [B, A], needed: false });
    expect(recordOf(carriedOut(without, twice), SETUP, 'setup').needNotSee).toHaveLength(1);
    const again = setEyeContact(without, { setup: SETUP, pair: [B, A], needed: true });
    expect(recordOf(carriedOut(without, again), SETUP, 'setup').needNotSee).toEqual([]);
  });

  it('is between two different players who both play there', () => {
    for (const pair of [
      [A, A],
      [A, ELSEWHERE],
    ] as const) {
      expect(refusal(document, setEyeContact(document, { setup: SETUP, pair, needed: false }))).toContain(
        'two different players',
      );
    }
  });
});
