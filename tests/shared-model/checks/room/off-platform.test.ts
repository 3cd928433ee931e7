import { describe, expect, test } from 'vitest';
import { offPlatformFindings, overhang } from '#model/checks/room/off-platform.ts';
import type { AnyRecord } from '#model/document/records.ts';
import {
  aDocument,
  aPlatform,
  aPlayer,
  aRiser,
  aShape,
  aStand,
  aTable,
  SETUP,
} from '../../../helpers/build.ts';

const findings = (...records: AnyRecord[]) => offPlatformFindings(aDocument(...records), SETUP);
const measured = (...records: AnyRecord[]) => findings(...records).map((finding) => finding.measured);

describe('over the platform’s outline', () => {
  test('a table that stands out by 40 mm is a finding; one that stands flush is not', () => {
    expect(findings(aTable({ y: 160 }))).toEqual([
      {
        code: 'room.offPlatform',
        severity: 'fail',
        subjects: ['table-1'],
        measured: expect.closeTo(-40, 6),
        required: 0,
        unit: 'mm',
        where: { x: expect.any(Number), y: expect.closeTo(-40, 6) },
        detail: {},
      },
    ]);
    expect(findings(aTable({ y: 200 }))).toEqual([]);
    expect(findings(aTable({ y: 199.5 }))).toEqual([]);
  });

  test('at a corner the nearest point of the platform counts', () => {
    expect(measured(aTable({ x: 4000, y: 5000 }))[0]).toBeCloseTo(-Math.hypot(300, 200));
  });

  test('a chair is looked at as well as its player, a stand by its foot and not by its desk', () => {
    const chair = { model: 'orchestra-chair', height: 450 };
    expect(measured(aPlayer({ y: 4850, facing: 0 }))).toEqual([]);
    expect(measured(aPlayer({ y: 4850, facing: 0, chair }))).toEqual([expect.closeTo(-110)]);
    // Flat desk: it reaches 320 over the front edge, the foot 250.
    expect(measured(aStand({ y: 255, tilt: 0, deskHeight: 640 }))).toEqual([]);
    expect(measured(aStand({ y: 240 }))).toEqual([expect.closeTo(-10)]);
  });

  test('parts of the building may stand anywhere', () => {
    expect(findings(aShape({ y: 5000, fixed: true }))).toEqual([]);
    expect(findings(aShape({ y: 5000, fixed: false }))).toHaveLength(1);
  });

  test('an inward corner of the platform that cuts into an outline counts', () => {
    const outline = [
      { x: -4000, y: 0 },
      { x: 0, y: 200 },
      { x: 4000, y: 0 },
      { x: 4000, y: 5000 },
      { x: -4000, y: 5000 },
    ];
    const wide = aTable({ width: 3000, depth: 400, y: 350 });
    expect(measured(aPlatform({ outline }), wide)[0]).toBeCloseTo(-50, 0);
    expect(measured(aPlatform({ outline }), { ...wide, y: 405 })).toEqual([]);
  });
});

describe('over the edge of a level', () => {
  const level = aRiser({ y: 3000, width: 2000, depth: 1000 });

  test('what stands on it and reaches out is a finding with the level', () => {
    expect(findings(level, aTable({ x: 720, y: 3000 }))).toMatchObject([
      { subjects: ['table-1', 'riser-1'], measured: expect.closeTo(-20, 6) },
    ]);
    expect(findings(level, aTable({ x: 700, y: 3000 }))).toEqual([]);
  });

  test('two levels of one height side by side carry together; a lower one does not', () => {
    const beside = (height: number) => aRiser({ id: 'riser-2', x: 2000, y: 3000, height });
    expect(findings(level, beside(200), aTable({ x: 950, y: 3000 }))).toEqual([]);
    expect(findings(level, beside(100), aTable({ x: 950, y: 3000 }))).toHaveLength(1);
  });
});

test('an outline within the ground has no overhang', () => {
  const ground = aPlatform().outline;
  expect(
    overhang(
      [
        { x: 0, y: 1 },
        { x: 5, y: 1 },
        { x: 0, y: 9 },
      ],
      ground,
    ),
  ).toBeNull();
});
