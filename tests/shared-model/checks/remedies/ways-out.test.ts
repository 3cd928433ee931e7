/** Remedies for ways out: too narrow, over a high step, off a level on wheels, over a cable. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Finding, FindingCode } from '#model/checks/finding.ts';
import { leastRemedies } from '#model/checks/remedy.ts';
import { roomFindings } from '#model/checks/room/room-findings.ts';
import { routeResults } from '#model/checks/room/routes.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import {
  aBox,
  aDocument,
  aDoor,
  aLamp,
  aPlayer,
  aRiser,
  aStand,
  aTable,
  recordOf,
  SETUP,
  SIDE,
} from '../../../helpers/build.ts';
import { carried, findingsIn, troubles, weaker } from './trials.ts';

const DOOR = aDoor({ offset: 3000, width: 2000 });
/** Out of the way of what is moved upstage. */
const SIDE_DOOR = aDoor({ offset: 200, width: 1000 });
const WHEELS = { chair: { model: 'wheelchair', height: 485 }, mobility: 'wheelchair' } as const;
/** A barrier of the building across the platform, open from -1000 to 1400. */
const BARRIER = [aBox('shape-1', [-4000, -1000], [3000, 3100]), aBox('shape-2', [1400, 4000], [3000, 3100])];

/** Everything of the room, ways included. */
const room = (document: Document): Finding[] => roomFindings(document, SETUP, routeResults(document, SETUP));

/** With everything else, and of ways only who goes them: what they are narrow between may be others. */
const all = (document: Document): Finding[] => [
  ...findingsIn(document),
  ...room(document).map((finding) => ({ ...finding, subjects: finding.subjects.slice(0, 1) })),
];

function foundIn(document: Document, code: FindingCode, subject: string): Finding {
  const finding = room(document).find((one) => one.code === code && one.subjects[0] === subject);
  if (!finding) throw new Error(`no ${code}`);
  return finding;
}

/** Tried again from nothing: the remedy clears, and one step less of it does not or breaks something else. */
function expectRemedy(document: Document, code: FindingCode, subject: string) {
  const finding = foundIn(document, code, subject);
  const [remedy] = leastRemedies(document, SETUP, finding);
  if (!remedy) throw new Error('no remedy');
  const before = all(document);
  const isStillThere = (after: readonly Finding[]): boolean =>
    after.some((one) => one.code === code && one.subjects[0] === subject);
  const after = all(carried(document, remedy));
  expect(isStillThere(after)).toBe(false);
  expect(troubles(before, after)).toEqual([]);
  for (const less of weaker(remedy)) {
    const then = all(carried(document, less));
    expect(isStillThere(then) || troubles(before, then).length > 0).toBe(true);
  }
  return remedy;
}

describe('a way out that is too narrow', () => {
  const narrow = aDocument(DOOR, aPlayer({ y: 1500 }), ...BARRIER, aTable({ x: 200, y: 3050, width: 1200 }));

  it('is widened by moving what stands in it, and it is as wide as was asked then', () => {
    const remedy = expectRemedy(narrow, 'room.route', 'player-1');
    expect(remedy).toMatchObject({ kind: 'move', item: 'table-1' });
    expect(remedy.after).toBeGreaterThanOrEqual(915 - 0.5);
  });

  it('by moving what blocks it, where there is none at all', () => {
    const walls = [aBox('shape-1', [-4000, -300], [3000, 3100]), aBox('shape-2', [700, 4000], [3000, 3100])];
    const table = aTable({ x: 200, y: 3050, width: 700 });
    const blocked = aDocument(SIDE_DOOR, aPlayer({ y: 1500 }), ...walls, table);
    expect(foundIn(blocked, 'room.route', 'player-1').measured).toBe(0);
    expect(expectRemedy(blocked, 'room.route', 'player-1')).toMatchObject({ item: 'table-1' });
  });

  it('not at the price of somebody else’s way', () => {
    const other = aPlayer({ id: 'player-2', x: 300, y: 4300, facing: 90 });
    const document = aDocument(
      DOOR,
      aPlayer({ y: 1500 }),
      other,
      ...BARRIER,
      aTable({ x: 200, y: 3050, width: 1200 }),
    );
    expectRemedy(document, 'room.route', 'player-1');
  });

  it('between walls of the building nothing helps, and nothing is suggested', () => {
    const walls = [aBox('shape-1', [-4000, -400], [3000, 3100]), aBox('shape-2', [400, 4000], [3000, 3100])];
    const document = aDocument(DOOR, aPlayer({ y: 1500 }), ...walls);
    expect(leastRemedies(document, SETUP, foundIn(document, 'room.route', 'player-1'))).toEqual([]);
  });

  it('law: whatever narrows it, the remedy clears and is the least', () => {
    let remedies = 0;
    fc.assert(
      fc.property(fc.integer({ min: -40, max: 60 }), fc.integer({ min: 295, max: 315 }), (x, y) => {
        const table = aTable({ x: x * 20, y: y * 10, width: 1200 });
        const document = aDocument(DOOR, aPlayer({ y: 1500 }), ...BARRIER, table);
        const finding = room(document).find(({ code }) => code === 'room.route');
        if (!finding || leastRemedies(document, SETUP, finding).length === 0) return;
        const turnedRound = documentOf([...document.records.values()].reverse());
        expect(leastRemedies(turnedRound, SETUP, finding)).toEqual(leastRemedies(document, SETUP, finding));
        expectRemedy(document, 'room.route', 'player-1');
        remedies++;
      }),
      { numRuns: 12 },
    );
    expect(remedies).toBeGreaterThan(3);
  });
});

describe('a way out over a high step', () => {
  const level = aRiser({ y: 1500, width: 3000, depth: 2500, height: 400 });
  const block = aRiser({ id: 'riser-2', y: 3000, width: 1600, depth: 500, height: 200 });

  it('goes round over a lower level once what stands on that has moved', () => {
    const document = aDocument(
      SIDE_DOOR,
      aPlayer({ y: 1500 }),
      level,
      block,
      aTable({ y: 3000, width: 1500 }),
    );
    expect(expectRemedy(document, 'room.step', 'player-1')).toMatchObject({ item: 'table-1', after: 0 });
  });

  it('of a level without a lower one beside it nothing moved helps', () => {
    const document = aDocument(DOOR, aPlayer({ y: 1500 }), level, aTable({ x: 2500, y: 4500 }));
    expect(leastRemedies(document, SETUP, foundIn(document, 'room.step', 'player-1'))).toEqual([]);
  });
});

it('somebody in a wheelchair comes down from a level with the stand he reads from', () => {
  const document = aDocument(
    DOOR,
    aPlayer({ x: 0, y: 2600, ...WHEELS }),
    aStand({ y: 1950, lip: 800, sides: [{ ...SIDE, pagesAcross: 1, reader: asId<'player'>('player-1') }] }),
    aRiser({ y: 2300, width: 2600, depth: 2200, height: 150 }),
  );
  const remedy = expectRemedy(document, 'room.wheelchairLevel', 'player-1');
  expect(remedy).toMatchObject({ kind: 'moveTogether', items: ['player-1', 'stand-1'], after: 0 });
});

it('a cable across a way out is covered, and nothing else of it changes', () => {
  const cable = [
    { x: 2000, y: 3000 },
    { x: -2000, y: 3000 },
  ];
  const document = aDocument(DOOR, aPlayer({ y: 1000 }), aLamp({ x: 2000, cable }));
  const remedy = expectRemedy(document, 'room.cable', 'lamp-1');
  expect(remedy).toEqual({ kind: 'cover', item: 'lamp-1', after: 0 });
  expect(recordOf(carried(document, remedy), 'lamp-1', 'lamp')).toMatchObject({ cable, cableCovered: true });
});
