import { describe, expect, it } from 'vitest';
import { add, addRecords } from '#model/commands/add.ts';
import { freshId, freshIds } from '#model/commands/fresh-id.ts';
import { setLocked } from '#model/commands/groups.ts';
import { remove } from '#model/commands/remove.ts';
import { asId } from '#model/document/ids.ts';
import { documentOf } from '#model/document/document.ts';
import { isLocked } from '#model/document/groups.ts';
import {
  aDocument,
  aPlayer,
  aStand,
  anInstrument,
  anInstrumentStand,
  aPiano,
  aTable,
  recordOf,
  SIDE,
} from '../../helpers/build.ts';
import { documentOfEveryKind } from '../document/every-kind.ts';
import { frozen } from '../document/freeze.ts';
import { carriedOut, checkLaws, refusal } from './check-laws.ts';

const withoutId = <R extends { readonly id: unknown }>({ id: _, ...fields }: R): Omit<R, 'id'> => fields;

describe('fresh ids', () => {
  it('goes on from the highest number, so that a removed id is not given again while it can be undone', () => {
    const document = aDocument(aStand(), aStand({ id: asId('stand-7') }));
    expect(freshId(document, 'stand')).toBe('stand-8');
    expect(freshId(document, 'table')).toBe('table-1');
  });

  it('gives each id once and none that is taken or reserved', () => {
    const next = freshIds(aDocument(aTable({ id: asId('stand-1') })), ['stand-3']);
    expect([next('stand'), next('stand'), next('table')]).toEqual(['stand-2', 'stand-4', 'table-1']);
  });

  it('does not count on from a number that was typed by hand', () => {
    expect(freshId(aDocument(aStand({ id: asId('stand-999999999999') })), 'stand')).toBe('stand-1');
    const brink = aDocument(aStand({ id: asId('stand-1000000') }), aStand({ id: asId('stand-1000001') }));
    expect(freshId(brink, 'stand')).toBe('stand-1000002');
  });
});

describe('add', () => {
  it('adds one record under a fresh id and selects it', () => {
    const document = frozen(aDocument(aStand()));
    const outcome = add(document, withoutId(aStand({ x: 700 })));
    const after = carriedOut(document, outcome);
    expect(recordOf(after, 'stand-2', 'stand').x).toBe(700);
    expect(outcome).toMatchObject({ label: 'add stand', select: ['stand-2'] });
  });

  it.each([...documentOfEveryKind().records.values()])('adds a $kind or says why not', (record) => {
    const document = frozen(documentOfEveryKind());
    const outcome = add(document, withoutId(record) as Parameters<typeof add>[1]);
    checkLaws(document, outcome);
    const isOnlyOne = record.kind === 'concert' || record.kind === 'platform';
    const namesItsOwnPlayers = record.kind === 'setup' && record.needNotSee.length > 0;
    const hasOneAlready = record.kind === 'score' || record.kind === 'pagePlan';
    // All that is in one is in a group already.
    const isGroup = record.kind === 'group';
    expect(outcome.ok).toBe(!isOnlyOne && !namesItsOwnPlayers && !hasOneAlready && !isGroup);
  });

  it('refuses what a file could not hold, and names the field', () => {
    const document = aDocument();
    expect(refusal(document, add(document, withoutId(aStand({ lip: -20 }))))).toBe(
      'stand, lip above the floor: -20 mm is not allowed; give a length from 100 mm to 2500 mm.',
    );
    expect(
      refusal(document, add(document, withoutId(aStand({ sides: [{ ...SIDE, reader: asId('player-9') }] })))),
    ).toMatch(
      /^stand 1, reader: "player-9" is not allowed; there is no record of that id; name one of kind player/,
    );
  });

  it('adds several that name each other in one step', () => {
    const document = frozen(aDocument());
    const outcome = addRecords(document, { records: [anInstrument(), aPlayer()] });
    expect(carriedOut(document, outcome).records.size).toBe(document.records.size + 2);
    expect(outcome).toMatchObject({ label: 'add 2 items', select: ['instrument-1', 'player-1'] });
  });

  it('refuses an id that is taken', () => {
    const document = aDocument(aStand());
    expect(refusal(document, addRecords(document, { records: [aStand()] }))).toBe(
      'The id "stand-1" is taken.',
    );
  });
});

describe('remove', () => {
  const ensemble = () =>
    frozen(
      aDocument(
        aPlayer(),
        aPlayer({ id: asId('player-2') }),
        aStand({
          form: 'backToBack',
          sides: [
            { ...SIDE, reader: asId('player-1') },
            { ...SIDE, reader: asId('player-2') },
          ],
        }),
        anInstrumentStand(),
        anInstrument({ support: asId('instrumentStand-1') }),
        aPiano({ player: asId('player-1') }),
      ),
    );

  it('takes a player’s instruments along and frees the desks and pianos he used', () => {
    const document = ensemble();
    const outcome = remove(document, { ids: ['player-1'] });
    const after = carriedOut(document, outcome);
    expect(after.records.has('player-1')).toBe(false);
    expect(after.records.has('instrument-1')).toBe(false);
    expect(recordOf(after, 'stand-1', 'stand').sides.map(({ reader }) => reader)).toEqual([null, 'player-2']);
    expect(recordOf(after, 'piano-1', 'piano').player).toBeNull();
    expect(outcome).toMatchObject({ label: 'remove player 1', select: [] });
  });

  it('leaves what waited on a removed stand in its player’s hands', () => {
    const document = ensemble();
    const after = carriedOut(document, remove(document, { ids: ['instrumentStand-1'] }));
    expect(recordOf(after, 'instrument-1', 'instrument')).toMatchObject({
      support: null,
      player: 'player-1',
    });
  });

  it('removes each of all records, or says why not', () => {
    const document = frozen(documentOfEveryKind());
    for (const { id, kind } of document.records.values()) {
      const outcome = remove(document, { ids: [id] });
      checkLaws(document, outcome);
      expect(outcome.ok, id).toBe(kind !== 'concert' && kind !== 'platform' && !isLocked(document, id));
    }
  });

  it('removes all there is but what a concert needs', () => {
    const whole = documentOfEveryKind();
    const document = frozen(carriedOut(whole, setLocked(whole, { ids: ['shape-1'], locked: false })));
    const ids = [...document.records.values()]
      .filter(({ kind }) => !['concert', 'platform', 'setup'].includes(kind))
      .map(({ id }) => id);
    const outcome = remove(document, { ids });
    expect(carriedOut(document, outcome).records.size).toBe(4);
    expect(outcome).toMatchObject({ label: `remove ${ids.length} items` });
  });

  it('keeps the last setup', () => {
    const document = documentOf([...aDocument(aStand()).records.values()]);
    expect(refusal(document, remove(document, { ids: ['setup-1'] }))).toMatch(/There is no setup/);
  });

  it('refuses what is not there and an empty selection', () => {
    const document = aDocument();
    expect(refusal(document, remove(document, { ids: ['stand-1'] }))).toBe('There is no "stand-1" any more.');
    expect(refusal(document, remove(document, { ids: [] }))).toBe('Select something first.');
  });
});
