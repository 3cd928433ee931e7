import { describe, expect, it } from 'vitest';
import { belongingsOf, removeWithBelongings } from '#model/commands/belongings.ts';
import { asId } from '#model/document/ids.ts';
import {
  aDocument,
  anInstrument,
  anInstrumentStand,
  aPlayer,
  aStand,
  aTable,
  SIDE,
} from '../../helpers/build.ts';
import { frozen } from '../document/freeze.ts';
import { carriedOut, refusal } from './check-laws.ts';

const VIOLA = asId<'player'>('player-1');
const CELLO = asId<'player'>('player-2');
const viola = aPlayer({ id: VIOLA, name: 'Viola' });
const cello = aPlayer({ id: CELLO, name: 'Cello' });
const readBy = (...readers: (typeof VIOLA | null)[]) => {
  const [first, second] = readers.map((reader) => ({ ...SIDE, reader }));
  if (!first) throw new Error('a stand has a side');
  return second
    ? { form: 'backToBack' as const, sides: [first, second] as const }
    : { sides: [first] as const };
};
const holder = anInstrumentStand();
const waiting = anInstrument({ player: VIOLA, support: holder.id });

describe('what belongs only to a player', () => {
  it('is the stand where he alone reads, and what only his instruments wait on', () => {
    const document = aDocument(viola, cello, aStand(readBy(VIOLA)), holder, waiting);
    expect(belongingsOf(document, [VIOLA]).map(({ id }) => id)).toEqual(['stand-1', holder.id]);
    expect(belongingsOf(document, [CELLO])).toEqual([]);
  });

  it('is not what another one uses too, unless he goes as well', () => {
    const shared = aDocument(viola, cello, aStand(readBy(VIOLA, CELLO)), holder, waiting, {
      ...waiting,
      id: asId<'instrument'>('instrument-2'),
      player: CELLO,
    });
    expect(belongingsOf(shared, [VIOLA])).toEqual([]);
    expect(belongingsOf(shared, [VIOLA, CELLO])).toHaveLength(2);
  });

  it('is no table, no stand of nobody, and nothing that stays longer than he does', () => {
    const table = aTable();
    const document = aDocument(
      viola,
      aStand(readBy(null)),
      aStand({ id: 'stand-2', setup: null, ...readBy(VIOLA) }),
      table,
      { ...waiting, support: table.id },
    );
    expect(belongingsOf(document, [VIOLA])).toEqual([]);
    const forAll = aDocument({ ...viola, setup: null }, aStand({ setup: null, ...readBy(VIOLA) }));
    expect(belongingsOf(forAll, [VIOLA])).toHaveLength(1);
  });
});

describe('removing a player', () => {
  it('takes what belongs only to him along, in one step, and tells what', () => {
    const document = frozen(aDocument(viola, cello, aStand(readBy(VIOLA)), holder, waiting));
    const outcome = removeWithBelongings(document, { ids: [VIOLA] });
    const after = carriedOut(document, outcome);
    for (const id of [VIOLA, 'stand-1', holder.id, waiting.id]) expect(after.records.has(id), id).toBe(false);
    expect(after.records.has(CELLO)).toBe(true);
    expect(outcome).toMatchObject({
      label: 'remove Viola (player 1) and what came along',
      along: [{ id: 'stand-1' }, { id: holder.id }],
    });
  });

  it('is plain removing when nothing comes along, or all of it was asked for', () => {
    const document = frozen(aDocument(viola, aStand(readBy(VIOLA))));
    expect(removeWithBelongings(document, { ids: ['stand-1'] })).toMatchObject({ along: [] });
    expect(removeWithBelongings(document, { ids: [VIOLA, 'stand-1'] })).toMatchObject({
      label: 'remove 2 items',
      along: [],
    });
    expect(refusal(document, removeWithBelongings(document, { ids: ['gone'] }))).toContain('gone');
  });
});
