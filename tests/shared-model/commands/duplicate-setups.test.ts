import { describe, expect, it } from 'vitest';
import { duplicate } from '#model/commands/duplicate.ts';
import {
  addSetup,
  copySetup,
  removeSetup,
  renameSetup,
  reorderSetup,
  setupAddedBy,
} from '#model/commands/setups.ts';
import { inSetup, setupsOf, type Document } from '#model/document/document.ts';
import { asId, type Id } from '#model/document/ids.ts';
import { PLACED_KINDS } from '#model/document/records.ts';
import {
  aDocument,
  aLamp,
  aPlayer,
  aStand,
  anInstrument,
  recordOf,
  SETUP,
  SIDE,
} from '../../helpers/build.ts';
import { documentOfEveryKind } from '../document/every-kind.ts';
import { frozen } from '../document/freeze.ts';
import { carriedOut, refusal } from './check-laws.ts';

const SECOND: Id<'setup'> = asId('setup-2');

const names = (document: Document): string[] => setupsOf(document).map(({ name }) => name);

describe('duplicate', () => {
  const document = frozen(
    aDocument(
      aPlayer(),
      anInstrument(),
      aStand({ sides: [{ ...SIDE, reader: asId('player-1') }] }),
      aLamp({
        cable: [
          { x: 0, y: 2000 },
          { x: 0, y: 4000 },
        ],
      }),
    ),
  );

  it('copies a player with his instruments, and a stand that the copy reads', () => {
    const outcome = duplicate(document, { ids: ['player-1', 'stand-1'], dx: 900, dy: 0 });
    const after = carriedOut(document, outcome);
    expect(outcome).toMatchObject({ label: 'duplicate 2 items', select: ['player-2', 'stand-2'] });
    expect(recordOf(after, 'player-2', 'player').x).toBe(900);
    expect(recordOf(after, 'instrument-2', 'instrument').player).toBe('player-2');
    expect(recordOf(after, 'stand-2', 'stand').sides[0].reader).toBe('player-2');
    expect(recordOf(after, 'stand-1', 'stand').sides[0].reader).toBe('player-1');
  });

  it('leaves the copy of a stand without a reader when he is not copied', () => {
    const after = carriedOut(document, duplicate(document, { ids: ['stand-1'], dx: 0, dy: 500 }));
    expect(recordOf(after, 'stand-2', 'stand').sides[0].reader).toBeNull();
  });

  it('shifts a cable as a whole', () => {
    const after = carriedOut(document, duplicate(document, { ids: ['lamp-1'], dx: 100, dy: 10 }));
    expect(recordOf(after, 'lamp-2', 'lamp').cable).toEqual([
      { x: 100, y: 2010 },
      { x: 100, y: 4010 },
    ]);
  });

  it('refuses what has no spot', () => {
    expect(refusal(document, duplicate(document, { ids: ['platform-1'], dx: 0, dy: 0 }))).toMatch(
      /cannot be moved/,
    );
  });
});

describe('setups', () => {
  it('adds one at the end', () => {
    const document = frozen(documentOfEveryKind());
    const outcome = addSetup(document, { name: 'Encore' });
    expect(names(carriedOut(document, outcome))).toEqual(['Trio', 'Duo', 'Encore']);
    expect(setupAddedBy(outcome)).toBe('setup-3');
    expect(outcome).toMatchObject({ label: 'add setup Encore' });
  });

  it('copies one with all that stands only there, led to the copies', () => {
    const document = frozen(documentOfEveryKind());
    const outcome = copySetup(document, { setup: SETUP, name: 'Trio, second version' });
    const after = carriedOut(document, outcome);
    // Duo is a variant of Trio, and a variant stands right behind what it is a variant of.
    expect(names(after)).toEqual(['Trio', 'Duo', 'Trio, second version']);
    const copy = setupAddedBy(outcome);
    if (!copy) throw new Error('no setup was added');
    for (const kind of [...PLACED_KINDS, 'instrument'] as const) {
      const originals = inSetup(document, SETUP, kind);
      const copies = inSetup(after, copy, kind);
      expect(copies.length, kind).toBe(originals.length);
      for (const record of copies) expect(document.records.has(record.id)).toBe(record.setup === null);
    }
    const [pair] = inSetup(after, copy, 'stand');
    const readers = pair?.sides.map(({ reader }) => reader);
    expect(readers).toEqual(inSetup(after, copy, 'player').map(({ id }) => id));
    expect(inSetup(after, SETUP, 'stand')).toEqual(inSetup(document, SETUP, 'stand'));
  });

  it('removes one with all that stands only there', () => {
    const document = frozen(documentOfEveryKind());
    const after = carriedOut(document, removeSetup(document, { setup: SETUP }));
    expect(names(after)).toEqual(['Duo']);
    expect(setupsOf(after)[0]?.order).toBe(1);
    const left = [...after.records.values()].filter((record) => 'setup' in record);
    expect(left.map(({ id }) => id).sort()).toEqual(['group-2', 'piano-1', 'player-3', 'shape-1', 'stand-2']);
  });

  it('keeps the last one', () => {
    const document = aDocument();
    expect(refusal(document, removeSetup(document, { setup: SETUP }))).toMatch(/at least one/);
    expect(refusal(document, removeSetup(document, { setup: SECOND }))).toBe(
      'There is no setup "setup-2" any more.',
    );
  });

  it('renames one', () => {
    const document = documentOfEveryKind();
    const after = carriedOut(document, renameSetup(document, { setup: SECOND, name: 'Duo in D' }));
    expect(names(after)).toEqual(['Trio', 'Duo in D']);
  });

  it('puts one elsewhere in the programme', () => {
    const first = documentOfEveryKind();
    const document = carriedOut(first, addSetup(first, { name: 'Encore' }));
    const after = carriedOut(document, reorderSetup(document, { setup: asId('setup-3'), to: 1 }));
    expect(names(after)).toEqual(['Encore', 'Trio', 'Duo']);
    expect(setupsOf(after).map(({ order }) => order)).toEqual([1, 2, 3]);
    expect(reorderSetup(document, { setup: SETUP, to: 1 })).toMatchObject({ diff: new Map() });
    for (const to of [0, 3, 1.5]) {
      expect(refusal(document, reorderSetup(document, { setup: SETUP, to }))).toMatch(/from 1 to 2/);
    }
    expect(refusal(document, reorderSetup(document, { setup: SECOND, to: 1 }))).toMatch(/is a variant/);
  });
});
