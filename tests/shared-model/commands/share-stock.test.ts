import { describe, expect, it } from 'vitest';
import { share, unshare } from '#model/commands/share.ts';
import { countStock } from '#model/commands/stock.ts';
import { allOf, inSetup, type Document } from '#model/document/document.ts';
import { asId, type Id } from '#model/document/ids.ts';
import {
  aDocument,
  anInstrument,
  aPlayer,
  aSetup,
  aStand,
  aTable,
  recordOf,
  SETUP,
  SIDE,
} from '../../helpers/build.ts';
import { carriedOut, refusal } from './check-laws.ts';

const SECOND: Id<'setup'> = asId('setup-2');
const THIRD: Id<'setup'> = asId('setup-3');

const concert = (): Document =>
  aDocument(
    aSetup({ id: SETUP, order: 1 }),
    aSetup({ id: SECOND, order: 2 }),
    aSetup({ id: THIRD, order: 3 }),
    aPlayer({ id: 'player-1', name: 'Viola' }),
    aTable({ id: 'table-1', x: 800 }),
    anInstrument({ id: 'instrument-1', support: asId('table-1') }),
    aStand({ id: 'stand-1', sides: [{ ...SIDE, reader: asId('player-1') }] }),
  );

describe('sharing', () => {
  it('lets a thing stay for the whole concert', () => {
    const document = concert();
    const after = carriedOut(document, share(document, { ids: ['table-1'] }));
    expect(recordOf(after, 'table-1', 'table').setup).toBeNull();
    expect(inSetup(after, THIRD, 'table')).toHaveLength(1);
  });

  it('takes a player with his instruments, and refuses what would name somebody who goes', () => {
    const document = concert();
    expect(refusal(document, share(document, { ids: ['stand-1'] }))).toMatch(/Viola.*share both/);
    expect(refusal(document, share(document, { ids: ['player-1'] }))).toMatch(/table 1.*share both/);
    const after = carriedOut(document, share(document, { ids: ['player-1', 'stand-1', 'table-1'] }));
    expect(recordOf(after, 'instrument-1', 'instrument').setup).toBeNull();
  });

  it('undone gives every setup its own, and nothing vanishes from any', () => {
    const document = concert();
    const ids = ['player-1', 'stand-1', 'table-1'];
    const shared = carriedOut(document, share(document, { ids }));
    const after = carriedOut(shared, unshare(shared, { ids: ['player-1'], setup: SECOND }));
    // The stand and the instrument name the player, so they come along; the table names nobody.
    for (const setup of [SETUP, SECOND, THIRD]) {
      expect(inSetup(after, setup, 'player')).toHaveLength(1);
      const [player] = inSetup(after, setup, 'player');
      expect(inSetup(after, setup, 'stand').map(({ sides }) => sides[0].reader)).toEqual([player?.id]);
      expect(inSetup(after, setup, 'instrument').map((each) => each.player)).toEqual([player?.id]);
    }
    expect(recordOf(after, 'player-1', 'player').setup).toBe(SECOND);
    expect(recordOf(after, 'table-1', 'table').setup).toBeNull();
    expect(refusal(document, unshare(document, { ids: ['table-1'], setup: SETUP }))).toMatch(/is not shared/);
  });

  it('leads what named the shared thing to the copy of its own setup', () => {
    const document = concert();
    const shared = carriedOut(document, share(document, { ids: ['table-1'] }));
    const after = carriedOut(shared, unshare(shared, { ids: ['table-1'], setup: SECOND }));
    const support = recordOf(after, 'instrument-1', 'instrument').support;
    expect(support).not.toBe('table-1');
    expect(recordOf(after, support ?? '', 'table').setup).toBe(SETUP);
  });
});

describe('counting the stock', () => {
  it('adds a row, and then changes the same one', () => {
    const document = concert();
    const thing = { item: 'stand', model: 'orchestral', name: '' } as const;
    const first = carriedOut(document, countStock(document, { ...thing, owned: 8 }));
    const second = carriedOut(first, countStock(first, { ...thing, borrowed: 2 }));
    expect(allOf(second, 'stock')).toMatchObject([{ owned: 8, borrowed: 2 }]);
    expect(refusal(first, countStock(first, { ...thing, owned: -1 }))).toMatch(/own: -1/);
  });

  it('tells objects apart by their names', () => {
    const document = concert();
    const one = carriedOut(
      document,
      countStock(document, { item: 'shape', model: '', name: 'Lectern', owned: 1 }),
    );
    const two = carriedOut(one, countStock(one, { item: 'shape', model: '', name: 'Screen', owned: 2 }));
    expect(allOf(two, 'stock').map(({ owned }) => owned)).toEqual([1, 2]);
  });
});
