import { describe, expect, it } from 'vitest';
import { mirror } from '#model/commands/arrange-items.ts';
import { removeWithBelongings } from '#model/commands/belongings.ts';
import { duplicate } from '#model/commands/duplicate.ts';
import { group, setHidden, setLocked, ungroup } from '#model/commands/groups.ts';
import { move, placeAt } from '#model/commands/move.ts';
import { remove } from '#model/commands/remove.ts';
import { copySetup, removeSetup } from '#model/commands/setups.ts';
import { share, unshare } from '#model/commands/share.ts';
import { turnBy } from '#model/commands/turn.ts';
import { checkSetup } from '#model/checks/check-setup.ts';
import { allOf, type Document } from '#model/document/document.ts';
import { groupOf, hiddenIn, isLocked, withTheirGroups } from '#model/document/groups.ts';
import { asId } from '#model/document/ids.ts';
import { readDocument } from '#model/file-format/read.ts';
import {
  aDocument,
  aGroup,
  anInstrument,
  aPlayer,
  aSetup,
  aStand,
  aTable,
  SETUP,
  SIDE,
} from '../../helpers/build.ts';
import { frozen } from '../document/freeze.ts';
import { carriedOut, refusal } from './check-laws.ts';

const quartet = (...more: Parameters<typeof aDocument>): Document =>
  frozen(
    aDocument(
      aPlayer({ name: 'Oboe', x: -1000 }),
      aPlayer({ id: 'player-2', name: 'Horn', x: 1000 }),
      anInstrument({ model: 'oboe' }),
      aStand({ x: -1000, y: 1400, sides: [{ ...SIDE, reader: asId('player-1') }] }),
      aStand({ id: 'stand-2', x: 1000, y: 1400 }),
      aTable({ setup: null }),
      ...more,
    ),
  );

const membersOf = (document: Document): string[][] =>
  allOf(document, 'group').map(({ members }) => [...members]);

const PAIR = ['player-1', 'stand-1'];

describe('a group', () => {
  it('is made of at least two things of one setup, and they leave the groups they were in', () => {
    const document = quartet();
    const once = carriedOut(document, group(document, { ids: PAIR }));
    expect(membersOf(once)).toEqual([PAIR]);
    const ids = ['stand-1', 'player-2', 'stand-2'];
    // A single one that was left over would be no group.
    expect(membersOf(carriedOut(once, group(once, { ids })))).toEqual([ids]);
    expect(carriedOut(once, group(once, { ids: [...PAIR].reverse() }))).toEqual(once);
    expect(refusal(document, group(document, { ids: ['player-1'] }))).toMatch(/at least two/);
    expect(refusal(document, group(document, { ids: ['player-1', 'table-1'] }))).toBe(
      'table 1 stays for the whole concert and Oboe (player 1) does not: they cannot be grouped.',
    );
    expect(refusal(document, group(document, { ids: ['player-1', 'stalls'] }))).toMatch(
      /^Stalls cannot be grouped/,
    );
  });

  it('is taken apart, and what it kept locked or hidden stays so one by one', () => {
    const free = quartet(aGroup({ members: PAIR.map((id) => asId(id)) }));
    expect(membersOf(carriedOut(free, ungroup(free, { ids: ['stand-1'] })))).toEqual([]);
    const locked = quartet(aGroup({ members: PAIR.map((id) => asId(id)), locked: true }));
    const apart = carriedOut(locked, ungroup(locked, { ids: ['stand-1'] }));
    expect(membersOf(apart)).toEqual(PAIR.map((id) => [id]));
    expect(PAIR.every((id) => isLocked(apart, id))).toBe(true);
    expect(refusal(free, ungroup(free, { ids: ['stand-2'] }))).toMatch(/in a group/);
  });

  it('is copied as one with all that is in it, free and shown; with a part of it is not', () => {
    const document = quartet(aGroup({ members: PAIR.map((id) => asId(id)), locked: true, hidden: true }));
    const copied = carriedOut(document, duplicate(document, { ids: PAIR, dx: 500, dy: 0 }));
    expect(membersOf(copied)).toEqual([PAIR, ['player-3', 'stand-3']]);
    expect(groupOf(copied, 'stand-3')).toMatchObject({ locked: false, hidden: false, setup: SETUP });
    const part = carriedOut(document, duplicate(document, { ids: ['stand-1'], dx: 500, dy: 0 }));
    expect(membersOf(part)).toEqual([PAIR]);
  });

  it('goes along with its setup: copied whole, removed whole', () => {
    const document = quartet(
      aGroup({ members: PAIR.map((id) => asId(id)), hidden: true }),
      aSetup(),
      aSetup({ id: 'setup-2', order: 2 }),
    );
    const copied = carriedOut(document, copySetup(document, { setup: SETUP, name: 'Again' }));
    const [, copy] = allOf(copied, 'group');
    expect(copy).toMatchObject({ setup: 'setup-3', hidden: true, members: ['player-3', 'stand-3'] });
    expect(membersOf(carriedOut(copied, removeSetup(copied, { setup: SETUP })))).toEqual([
      ['player-3', 'stand-3'],
    ]);
  });

  it('loses what is removed, and is no more when a single free thing is left', () => {
    const ids = [...PAIR, 'stand-2'];
    const document = quartet(aGroup({ members: ids.map((id) => asId(id)) }));
    const without = carriedOut(document, remove(document, { ids: ['stand-2'] }));
    expect(membersOf(without)).toEqual([PAIR]);
    expect(membersOf(carriedOut(without, remove(without, { ids: ['stand-1'] })))).toEqual([]);
  });

  it('stays with what stays for the whole concert, and each setup gets its own again', () => {
    const document = quartet(
      aGroup({ members: PAIR.map((id) => asId(id)) }),
      aSetup(),
      aSetup({ id: 'setup-2', order: 2 }),
    );
    const shared = carriedOut(document, share(document, { ids: PAIR }));
    expect(groupOf(shared, 'player-1')?.setup).toBeNull();
    const apart = carriedOut(shared, unshare(shared, { ids: ['stand-1'], setup: SETUP }));
    expect(allOf(apart, 'group').map(({ setup, members }) => [setup, members.length])).toEqual([
      [SETUP, 2],
      ['setup-2', 2],
    ]);
    // Half of it cannot be in a group with the other half.
    const half = carriedOut(document, share(document, { ids: ['player-1'] }));
    expect(membersOf(half)).toEqual([]);
  });

  it('is what is taken hold of with any of its members', () => {
    const document = quartet(aGroup({ members: PAIR.map((id) => asId(id)) }));
    expect(withTheirGroups(document, ['stand-2', 'stand-1', 'player-1'])).toEqual(['stand-2', ...PAIR]);
  });
});

describe('a locked thing', () => {
  const document = quartet();
  const locked = carriedOut(document, setLocked(document, { ids: ['stand-1'], locked: true }));

  it('is not moved, turned, mirrored or removed, and that is said', () => {
    const ids = ['player-1', 'stand-1'];
    const words = 'stand 1 is locked; unlock it first.';
    expect(refusal(locked, move(locked, { ids, dx: 10, dy: 0 }))).toBe(words);
    expect(refusal(locked, placeAt(locked, { id: 'stand-1', x: 0, y: 0 }))).toBe(words);
    expect(refusal(locked, turnBy(locked, { ids, by: 5, about: 'own' }))).toBe(words);
    expect(refusal(locked, mirror(locked, { ids }))).toBe(words);
    expect(refusal(locked, remove(locked, { ids }))).toBe(words);
    expect(refusal(locked, group(locked, { ids }))).toBe(words);
  });

  it('stays behind when its player is removed', () => {
    const removed = carriedOut(locked, removeWithBelongings(locked, { ids: ['player-1'] }));
    expect(removed.records.has('stand-1')).toBe(true);
    expect(
      carriedOut(document, removeWithBelongings(document, { ids: ['player-1'] })).records.has('stand-1'),
    ).toBe(false);
  });

  it('is free again when it is unlocked, and nothing is left of the lock', () => {
    expect(carriedOut(locked, setLocked(locked, { ids: ['stand-1'], locked: false }))).toEqual(document);
  });

  it('takes its whole group with it', () => {
    const grouped = carriedOut(document, group(document, { ids: PAIR }));
    const both = carriedOut(grouped, setLocked(grouped, { ids: ['stand-1'], locked: true }));
    expect(isLocked(both, 'player-1')).toBe(true);
    expect(membersOf(both)).toEqual([PAIR]);
  });
});

describe('a hidden thing', () => {
  it('counts in every check as before', () => {
    const document = quartet();
    const hidden = carriedOut(document, setHidden(document, { ids: ['stand-1'], hidden: true }));
    expect([...hiddenIn(hidden, SETUP)]).toEqual(['stand-1']);
    const [before, after] = [document, hidden].map((each) => checkSetup(each, SETUP));
    expect(after?.findings).toEqual(before?.findings);
    expect(after?.findings.length).toBeGreaterThan(0);
    expect(carriedOut(hidden, setHidden(hidden, { ids: ['stand-1'], hidden: false }))).toEqual(document);
  });
});

describe('a file with groups', () => {
  const problemOf = (...groups: Parameters<typeof aDocument>): string => {
    const records = [...quartet(...groups).records.values()];
    const result = readDocument(JSON.stringify({ format: 'standlines', version: 4, records }));
    return result.ok ? 'it was read' : result.problem.message;
  };

  it('is refused when a thing is in two, twice in one, or in one of another setup', () => {
    const first = aGroup({ members: [asId('player-1'), asId('stand-1')] });
    expect(problemOf(first)).toBe('it was read');
    expect(problemOf(first, aGroup({ id: 'group-2', members: [asId('stand-1')] }))).toMatch(
      /thing 1: .*in one group at most/,
    );
    expect(problemOf(aGroup({ members: [asId('stand-1'), asId('stand-1')] }))).toMatch(
      /thing 2: .*in one group at most/,
    );
    expect(problemOf(aGroup({ members: [asId('stand-1'), asId('table-1')] }))).toMatch(
      /thing 2: .*same setup/,
    );
    expect(problemOf(aGroup({ members: [asId('stalls')] }))).toMatch(/seatBlock/);
    expect(problemOf(aGroup({ members: [] }))).toMatch(/give a list with 1 to 2000 entries/);
  });
});
