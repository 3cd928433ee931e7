import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allOf,
  belongsTo,
  concertOf,
  documentOf,
  find,
  inSetup,
  platformOf,
  programmeOf,
  setupsOf,
} from '#model/document/document.ts';
import { asId, compareIds, isWellFormedId } from '#model/document/ids.ts';
import { labelOf, markOf, numberOf } from '#model/document/labels.ts';
import { aDocument, aPlayer, aSetup, aStand, anInstrument, SETUP } from '../../helpers/build.ts';

const anyId = fc.oneof(
  fc.stringMatching(/^[A-Za-z][A-Za-z0-9_-]{0,20}$/),
  fc
    .tuple(fc.constantFrom('stand-', 'stand', 's'), fc.nat({ max: 120 }))
    .map(([head, tail]) => head + String(tail)),
  fc.constantFrom('stand-01', 'stand-1', 'stand-001', 'stand-99999999999999999999', 'stand-'),
);

describe('ids', () => {
  it('are letters, digits, dashes and underscores, a letter first, at most 64', () => {
    for (const id of ['a', 'stand-3', 'A_b-9', 'x'.repeat(64)]) expect(isWellFormedId(id), id).toBe(true);
    for (const id of ['', '3', '-a', 'a b', 'ä', 'a\n', 'a.b', 'x'.repeat(65)])
      expect(isWellFormedId(id), id).toBe(false);
  });

  it('come in the order of the numbers they end with', () => {
    expect(['stand-10', 'stand-2', 'stand', 'seat-3', 'stand-1'].sort(compareIds)).toEqual([
      'seat-3',
      'stand',
      'stand-1',
      'stand-2',
      'stand-10',
    ]);
  });

  it('have one order only: of any two unequal ones one is first, and the order carries over', () => {
    fc.assert(
      fc.property(anyId, anyId, anyId, (a, b, c) => {
        expect(Math.sign(compareIds(a, b))).toBe(0 - Math.sign(compareIds(b, a)));
        expect(compareIds(a, b) === 0).toBe(a === b);
        if (compareIds(a, b) <= 0 && compareIds(b, c) <= 0) expect(compareIds(a, c)).toBeLessThanOrEqual(0);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('a document', () => {
  const second = asId<'setup'>('setup-2');
  const document = aDocument(
    aSetup({ order: 2, name: 'Late' }),
    aSetup({ id: 'setup-2', order: 1, name: 'Early' }),
    aPlayer({ id: 'player-10' }),
    aPlayer({ id: 'player-9', name: 'Viola', setup: second }),
    aPlayer({ id: 'player-2', setup: null }),
    anInstrument({ setup: second, player: asId('player-9') }),
  );

  it('finds by id, by kind in order, and by setup with what stays', () => {
    expect(find(document, asId<'player'>('player-9'))?.name).toBe('Viola');
    expect(find(document, null)).toBeUndefined();
    expect(allOf(document, 'player').map(({ id }) => id)).toEqual(['player-2', 'player-9', 'player-10']);
    expect(inSetup(document, SETUP, 'player').map(({ id }) => id)).toEqual(['player-2', 'player-10']);
    expect(inSetup(document, SETUP, 'instrument')).toEqual([]);
    expect(inSetup(document, second, 'instrument')).toHaveLength(1);
    expect(belongsTo(platformOf(document), SETUP)).toBe(true);
  });

  it('has its setups in programme order', () => {
    expect(setupsOf(document).map(({ name }) => name)).toEqual(['Early', 'Late']);
  });

  it('leaves variants out of the programme', () => {
    const variant = aSetup({ id: asId('setup-2'), name: 'Closer', order: 2, variantOf: SETUP });
    const document = aDocument(aSetup({ name: 'Trio' }), variant);
    expect(setupsOf(document).map(({ name }) => name)).toEqual(['Trio', 'Closer']);
    expect(programmeOf(document).map(({ name }) => name)).toEqual(['Trio']);
  });

  it('is a bug without a concert or a platform', () => {
    expect(() => concertOf(documentOf([]))).toThrow();
    expect(() => platformOf(documentOf([]))).toThrow();
  });

  it('numbers things within their setup, whatever the order they were made in', () => {
    const stands = [
      aStand({ id: 'stand-12' }),
      aStand({ id: 'stand-4' }),
      aStand({ id: 'stand-7', setup: second }),
    ];
    for (const records of [stands, [...stands].reverse()]) {
      const made = aDocument(aSetup({ id: 'setup-2', order: 2 }), ...records);
      expect(stands.map((stand) => numberOf(made, SETUP, stand))).toEqual([2, 1, 0]);
      expect(stands.map((stand) => numberOf(made, second, stand))).toEqual([0, 0, 1]);
    }
  });

  it('names things by their name and mark', () => {
    const label = (id: string): string => labelOf(document, second, id);
    expect(label('player-9')).toBe('Viola (player 2)');
    expect(label('player-2')).toBe('player 1');
    expect(label('instrument-1')).toBe('clarinet');
    expect(label('gone-3')).toBe('gone-3');
    expect(label('stalls')).toBe('Stalls');
    const early = find(document, second);
    expect(early && markOf(document, second, early)).toBe('setup 1');
  });

  it('numbers setups as they are played, a variant as what it is a variant of', () => {
    const setups = [
      aSetup({ id: 'setup-1', order: 1 }),
      aSetup({ id: 'setup-2', order: 2, variantOf: SETUP }),
      aSetup({ id: 'setup-3', order: 3 }),
    ];
    const made = aDocument(...setups);
    expect(setups.map((setup) => markOf(made, SETUP, setup))).toEqual(['setup 1', 'setup 1', 'setup 2']);
  });
});
