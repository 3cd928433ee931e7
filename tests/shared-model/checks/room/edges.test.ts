import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edgeFindings, GUARD_DROP, guardTrigger, isAudienceSide } from '#model/checks/room/edges.ts';
import type { AnyRecord, Riser } from '#model/document/records.ts';
import {
  aDocument,
  aPlatform,
  aPlayer,
  aRiser,
  aSeat,
  aStand,
  aTable,
  SETUP,
} from '../../../helpers/build.ts';
import { mirrored } from './mirrored.ts';

const findings = (...records: AnyRecord[]) => edgeFindings(aDocument(...records), SETUP);

/** Feet of 250 mm radius, so 850 mm from the edge leaves the 600 mm asked for. */
describe('a stand near the open front edge', () => {
  test('is a caution with the distance of its foot', () => {
    expect(findings(aStand({ x: 300, y: 700 }))).toEqual([
      {
        code: 'room.edge',
        severity: 'caution',
        subjects: ['stand-1'],
        measured: expect.closeTo(450, 6),
        required: 600,
        unit: 'mm',
        where: { x: expect.closeTo(300), y: 0 },
        detail: { drop: 600, guard: 'none' },
      },
    ]);
  });

  test.each([
    [849, 1],
    [851, 0],
  ])('at %i mm: %i', (y, count) => {
    expect(findings(aStand({ y }))).toHaveLength(count);
  });

  test('over it is reported as standing out, not here', () => {
    expect(findings(aStand({ y: 200 }))).toEqual([]);
  });
});

describe('who and what', () => {
  test('players, chairs and stands; not tables', () => {
    expect(
      findings(aPlayer({ y: 500 }), aSeat({ x: 1500, y: 500 }), aTable({ x: 3000, y: 500 })),
    ).toMatchObject([{ subjects: ['player-1'] }, { subjects: ['seat-1'] }]);
  });

  test('of a player on a chair the chair, where it is nearer', () => {
    const chair = { model: 'orchestra-chair', height: 450 };
    const [seated] = findings(aPlayer({ y: 700, facing: 180, chair }));
    expect(seated?.measured).toBeCloseTo(700 - 260);
  });

  test('edges that are not open and platforms without a drop do not count', () => {
    expect(findings(aPlatform({ openEdges: [1] }), aStand({ y: 700 }))).toEqual([]);
    expect(findings(aPlatform({ openEdges: [1] }), aStand({ x: 3500 }))).toHaveLength(1);
    expect(findings(aPlatform({ height: 0 }), aStand({ y: 700 }))).toEqual([]);
  });

  test('in a mirror nothing changes', () => {
    fc.assert(
      fc.property(fc.integer({ min: -3500, max: 3500 }), fc.integer({ min: 300, max: 4500 }), (x, y) => {
        const things = [aStand({ x, y }), aPlayer({ x: x / 2, y: y + 200, facing: 37 })];
        const [here, there] = [findings(...things), findings(...things.map(mirrored))];
        expect(there.map(({ subjects }) => subjects)).toEqual(here.map(({ subjects }) => subjects));
        there.forEach(({ measured }, index) => expect(measured).toBeCloseTo(here[index]?.measured ?? NaN, 6));
      }),
    );
  });
});

/** A step of up to 200 mm is none to fall from: common practice, no source. Feet of 250 mm radius, 600 mm asked for. */
describe('a level that something stands on', () => {
  const level = (height: number, more: Partial<Riser> = {}) =>
    aRiser({ y: 2500, width: 3000, depth: 2000, height, ...more });

  test('is told of with the distance to its edge and how far it drops', () => {
    expect(findings(level(1200), aStand({ x: 1100, y: 2500 }))).toEqual([
      {
        code: 'room.edge',
        severity: 'caution',
        subjects: ['stand-1', 'riser-1'],
        measured: expect.closeTo(150, 6),
        required: 600,
        unit: 'mm',
        where: { x: 1500, y: expect.closeTo(2500) },
        detail: { drop: 1200, guard: 'guard' },
      },
    ]);
  });

  test.each([
    [200, 0],
    [201, 1],
  ])('of %i mm: %i', (height, count) => {
    expect(findings(level(height), aStand({ x: 1100, y: 2500 }))).toHaveLength(count);
  });

  test('is more than a step for a wheelchair from 6.5 mm on (ADA Standards 1991, figure 7(c))', () => {
    const user = aPlayer({ x: 700, y: 2500, mobility: 'wheelchair' });
    const seat = aSeat({ x: 700, y: 2500, model: 'wheelchair', height: 485 });
    for (const one of [user, seat]) {
      expect(findings(level(6), one)).toEqual([]);
      expect(findings(level(100), one)).toMatchObject([{ subjects: [one.id, 'riser-1'] }]);
    }
    expect(findings(level(100), { ...user, mobility: 'walks' })).toEqual([]);
  });

  test('drops only as far as the next level, and not at all where that is as high', () => {
    const beside = (height: number, gap: number) =>
      aRiser({ id: 'riser-2', x: 2000 + gap, y: 2500, width: 1000, depth: 2000, height });
    const stand = aStand({ x: 1100, y: 2500 });
    expect(findings(level(600), beside(600, 0), stand)).toEqual([]);
    expect(findings(level(600), beside(450, 0), stand)).toEqual([]);
    expect(findings(level(600), beside(300, 0), stand)).toMatchObject([{ detail: { drop: 300 } }]);
    // Nobody falls through a gap of 90 mm; through one of 300 mm to the floor.
    expect(findings(level(600), beside(600, 90), stand)).toEqual([]);
    expect(findings(level(600), beside(600, 300), stand)).toMatchObject([{ detail: { drop: 600 } }]);
  });

  test('drops nowhere at a wall', () => {
    const atWall = (gap: number) =>
      findings(level(900, { x: 2500 - gap }), aStand({ x: 3500 - gap, y: 2500 }));
    expect(atWall(0)).toEqual([]);
    expect(atWall(90)).toEqual([]);
    expect(atWall(300)).toMatchObject([{ subjects: ['stand-1', 'riser-1'] }]);
  });

  test('at the open edge of the platform drops as far as both', () => {
    const atFront = level(400, { y: 1000 });
    expect(findings(atFront, aStand({ y: 700 }))).toMatchObject([
      {
        subjects: ['stand-1'],
        measured: expect.closeTo(450, 6),
        detail: { drop: 1000, guard: 'audienceSide' },
      },
    ]);
    expect(findings(aPlatform({ height: 0 }), atFront, aStand({ y: 700 }))).toMatchObject([
      { subjects: ['stand-1'], detail: { drop: 400, guard: 'none' } },
    ]);
  });

  test('is not told of to who stands beside it, nor twice to what stands out over it', () => {
    expect(findings(level(900), aStand({ x: 1800, y: 2500 }))).toEqual([]);
    expect(findings(level(900), aStand({ x: 1400, y: 2500 }))).toEqual([]);
  });

  test('counts from the upper of two levels on one another', () => {
    const upper = aRiser({ id: 'riser-2', y: 2500, width: 2000, depth: 1500, height: 700 });
    expect(findings(level(400), upper, aStand({ x: 600, y: 2500 }))).toMatchObject([
      { subjects: ['stand-1', 'riser-2'], measured: expect.closeTo(150, 6), detail: { drop: 300 } },
    ]);
  });
});

/**
 * International Building Code 1015.2 (as printed in the California Building Code): guards where the drop is more than
 * 30 in (762 mm); exceptions 2 to 4: not on the audience side of stages and raised platforms.
 */
describe('what IBC 1015.2 asks of guards', () => {
  const platform = (height: number) => aPlatform({ height, openEdges: [0, 1, 2, 3] });

  test('nothing at a drop of 700 mm', () => {
    expect([0, 1, 2, 3].map((edge) => guardTrigger(platform(700), edge))).toEqual(Array(4).fill('none'));
  });

  test('guards at 800 mm but for the audience side', () => {
    expect([0, 1, 2, 3].map((edge) => guardTrigger(platform(800), edge))).toEqual([
      'audienceSide',
      'guard',
      'guard',
      'guard',
    ]);
  });

  test('the drop is 30 in', () => {
    expect(GUARD_DROP).toBe(30 * 25.4);
    expect(guardTrigger(platform(GUARD_DROP), 1)).toBe('none');
    expect(guardTrigger(platform(GUARD_DROP + 1), 1)).toBe('guard');
  });

  test('whichever way the corners of the outline run', () => {
    const clockwise = { ...platform(800), outline: [...platform(800).outline].reverse() };
    // Reversed, edge 2 is the front edge.
    expect([0, 1, 2, 3].map((edge) => isAudienceSide(clockwise, edge))).toEqual([false, false, true, false]);
  });
});
