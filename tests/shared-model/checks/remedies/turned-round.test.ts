/** Remedies for partners behind one's back and for backs to the house. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FindingCode } from '#model/checks/finding.ts';
import { leastRemedies } from '#model/checks/remedy.ts';
import { asId } from '#model/document/ids.ts';
import {
  aConcert,
  aDocument,
  aLargeInstrument,
  aPlayer,
  aStand,
  recordOf,
  SETUP,
  SIDE,
} from '../../../helpers/build.ts';
import { carried, doesLeast, findingsIn, found, isLeast, isThere, remediesFor, troubles } from './trials.ts';

// Whether the house sees anybody is another matter.
const { limits } = aConcert();
const UNSEEN = aConcert({ limits: { ...limits, houseShare: 0 } });

const page = (id: string, reader: string, x: number, y: number, facing = 180) =>
  aStand({
    id,
    x,
    y,
    lip: 900,
    facing,
    sides: [{ ...SIDE, pagesAcross: 1, reader: asId<'player'>(reader) }],
  });

describe('a partner straight beside somebody', () => {
  const [me, partner] = [
    aPlayer({ x: -800, y: 2500, facing: 0 }),
    aPlayer({ id: 'player-2', x: 800, y: 2500, facing: -60 }),
  ];

  it('who reads nothing turns by what is over 60°, in whole degrees', () => {
    const document = aDocument(UNSEEN, me, partner);
    const finding = found(document, 'facing.turn', 'player-1', 'player-2');
    // He looks at the house, his partner is straight to his left: 90°, of which eyes and head take 60 (NUREG-0700).
    expect(finding.measured).toBeCloseTo(90, 9);
    const [remedy] = remediesFor(document, 'facing.turn', 'player-1', 'player-2');
    expect(remedy).toMatchObject({ kind: 'turn', item: 'player-1', by: 30 });
    expect(remedy?.after).toBeCloseTo(60, 9);
  });

  it('who reads turns with the page, which goes round about the place and not about itself', () => {
    const document = aDocument(UNSEEN, me, partner, page('stand-1', 'player-1', -800, 1900));
    const finding = found(document, 'facing.turn', 'player-1', 'player-2');
    const [remedy] = remediesFor(document, 'facing.turn', 'player-1', 'player-2');
    if (remedy?.kind !== 'turnTogether') throw new Error('not turned');
    expect(remedy.items).toEqual(['player-1', 'stand-1']);
    const after = carried(document, remedy);
    const stand = recordOf(after, 'stand-1', 'stand');
    expect(Math.hypot(stand.x + 800, stand.y - 2500)).toBeCloseTo(600, 2);
    expect(recordOf(after, 'player-1', 'player')).toMatchObject({ x: -800, y: 2500, facing: remedy.by });
    expect(isThere(findingsIn(after), finding)).toBe(false);
    expect(doesLeast(document, finding, remedy)).toBe(true);
  });

  it('a page that two read is not taken from the other', () => {
    const shared = aStand({
      x: -800,
      y: 1900,
      form: 'backToBack',
      sides: [
        { ...SIDE, pagesAcross: 1, reader: asId<'player'>('player-2') },
        { ...SIDE, pagesAcross: 1, reader: asId<'player'>('player-1') },
      ],
    });
    const document = aDocument(UNSEEN, me, partner, shared);
    const turns = findingsIn(document).filter(({ code }) => code === 'facing.turn');
    for (const finding of turns)
      for (const { kind } of leastRemedies(document, SETUP, finding)) expect(kind).not.toMatch(/turn/);
  });

  it('who plays what stands on the floor stays at it', () => {
    const drum = aLargeInstrument({ x: -800, y: 1600, player: asId<'player'>('player-1') });
    const document = aDocument(UNSEEN, me, partner, drum);
    for (const remedy of remediesFor(document, 'facing.turn', 'player-1', 'player-2'))
      expect(remedy).not.toMatchObject({ item: 'player-1' });
  });
});

it('between two partners on either side no turn helps, and none is suggested', () => {
  const document = aDocument(
    UNSEEN,
    aPlayer({ y: 2500 }),
    aPlayer({ id: 'player-2', x: 1500, y: 2500, facing: -60 }),
    aPlayer({ id: 'player-3', x: -1500, y: 2500, facing: 60 }),
  );
  for (const partner of ['player-2', 'player-3'])
    for (const remedy of remediesFor(document, 'facing.turn', 'player-1', partner)) {
      expect(remedy.kind).not.toBe('turn');
      expect(troubles(findingsIn(document), findingsIn(carried(document, remedy)))).toEqual([]);
    }
});

it('nobody is turned with the back to the house to see somebody upstage', () => {
  const document = aDocument(
    UNSEEN,
    aPlayer({ y: 1500, facing: 0 }),
    aPlayer({ id: 'player-2', y: 4000, facing: 0 }),
  );
  expect(remediesFor(document, 'facing.turn', 'player-1', 'player-2').map(({ kind }) => kind)).not.toContain(
    'turn',
  );
});

it('a back to the house is turned to a profile, by no degree more', () => {
  const document = aDocument(UNSEEN, aPlayer({ y: 2500, facing: 131 }));
  expect(remediesFor(document, 'facing.house', 'player-1')).toEqual([
    { kind: 'turn', item: 'player-1', by: -41, after: 90 },
  ]);
});

describe('laws, on random places', () => {
  const spot = fc.record({
    x: fc.integer({ min: -12, max: 12 }).map((step) => step * 100),
    y: fc.integer({ min: 12, max: 40 }).map((step) => step * 100),
    facing: fc.integer({ min: -179, max: 180 }),
    reads: fc.boolean(),
  });

  it.each(['facing.turn', 'facing.house'] as const satisfies readonly FindingCode[])(
    '%s: every remedy clears, is the least, and makes nothing worse',
    (code) => {
      let remedies = 0;
      fc.assert(
        fc.property(spot, spot, (a, b) => {
          const players = [a, b].map(({ x, y, facing }, index) =>
            aPlayer({ id: `player-${index + 1}`, x: x + (index === 0 ? -1500 : 1500), y, facing }),
          );
          const stands = [a, b].flatMap(({ facing, reads }, index) => {
            const player = players[index];
            const turn = (facing * Math.PI) / 180;
            return reads && player
              ? page(
                  `stand-${index + 1}`,
                  player.id,
                  Math.round(player.x + 600 * Math.sin(turn)),
                  Math.round(player.y - 600 * Math.cos(turn)),
                  facing + 180,
                )
              : [];
          });
          const document = aDocument(UNSEEN, ...players, ...stands);
          const before = findingsIn(document);
          for (const finding of before.filter((one) => one.code === code))
            for (const remedy of leastRemedies(document, SETUP, finding)) {
              remedies++;
              const after = findingsIn(carried(document, remedy));
              expect(isThere(after, finding)).toBe(false);
              expect(troubles(before, after).filter((key) => key.startsWith('reading.angle'))).toEqual([]);
              expect(isLeast({ document, setup: SETUP, before, finding, remedy })).toBe(true);
            }
        }),
        { numRuns: 60 },
      );
      // Otherwise nothing was tested.
      expect(remedies).toBeGreaterThan(8);
    },
  );
});
