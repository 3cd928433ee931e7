import { describe, expect, test } from 'vitest';
import { doorFindings } from '#model/checks/room/doors.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { aDocument, aDoor, aRiser, aShape, aTable, SETUP } from '../../../helpers/build.ts';

const findings = (...records: AnyRecord[]) => doorFindings(aDocument(...records), SETUP);

/** The door is in the upstage edge, from x = 2800 to 3800; 915 mm are asked for. */
describe('the ground before a door', () => {
  const table = (x: number, clear: number) => aTable({ x, y: 5000 - clear - 200 });

  test('is taken by what stands there: a caution with the depth that is left', () => {
    expect(findings(table(3300, 500))).toEqual([
      {
        code: 'room.door',
        severity: 'caution',
        subjects: ['door-1', 'table-1'],
        measured: expect.closeTo(500, 6),
        required: 915,
        unit: 'mm',
        where: { x: expect.closeTo(3300), y: expect.closeTo(4500) },
        detail: {},
      },
    ]);
  });

  test.each([
    [914, 1],
    [915, 0],
  ])('with %i mm clear: %i', (clear, count) => {
    expect(findings(table(3300, clear))).toHaveLength(count);
  });

  test('is as wide as the door', () => {
    expect(findings(table(2490, 100))).toEqual([]);
    expect(findings(table(2510, 100))).toHaveLength(1);
  });

  test('counts for every door, exit or not, and names the nearest thing', () => {
    const side = aDoor({ id: 'door-2', edge: 3, offset: 1000, exit: false });
    const found = findings(side, aTable({ x: -3500, y: 3500 }), aTable({ id: 'table-2', x: -3200, y: 3500 }));
    expect(found.map(({ subjects }) => subjects)).toEqual([['door-2', 'table-1']]);
  });

  test('may hold a level or a mark on the floor', () => {
    expect(findings(aRiser({ x: 3300, y: 4500 }), aShape({ x: 3300, y: 4500, height: 0 }))).toEqual([]);
  });

  test('begins at the doorway: what stands beyond it does not count', () => {
    expect(findings(aShape({ x: 3300, y: 5300 }))).toEqual([]);
  });
});
