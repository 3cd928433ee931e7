import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edgeFindings, GUARD_DROP, guardTrigger, isAudienceSide } from '#model/checks/room/edges.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { aDocument, aPlatform, aPlayer, aSeat, aStand, aTable, SETUP } from '../../../helpers/build.ts';
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
