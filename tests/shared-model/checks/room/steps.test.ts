/** Ways out over the edges of levels. A step of up to 200 mm is one like any other: common practice, no source. */

import { describe, expect, test } from 'vitest';
import { routeFindings } from '#model/checks/room/route-findings.ts';
import { routeResults } from '#model/checks/room/routes.ts';
import type { AnyRecord } from '#model/document/records.ts';
import { aDocument, aDoor, aPlayer, aRiser, aShape, SETUP } from '../../../helpers/build.ts';

const DOOR = aDoor({ offset: 3000, width: 2000 });

const found = (...records: AnyRecord[]) => routeFindings(aDocument(...records), SETUP);
const way = (...records: AnyRecord[]) => {
  const [first] = routeResults(aDocument(...records), SETUP);
  if (!first) throw new Error('nobody');
  return first;
};

const across = (height: number, width = 6000) => aRiser({ y: 3000, width, depth: 800, height });
const PLAYER = aPlayer({ y: 1500 });

describe('a level across the way', () => {
  test.each([
    [200, true],
    [201, false],
  ])('of %i mm is walked over: %s', (height, isStraight) => {
    const { path } = way(DOOR, PLAYER, across(height));
    expect(path.every(({ x }) => Math.abs(x) < 1100)).toBe(isStraight);
    if (!isStraight) expect(Math.max(...path.map(({ x }) => Math.abs(x)))).toBeGreaterThan(3000);
    expect(found(DOOR, PLAYER, across(height))).toEqual([]);
  });

  test('that leaves no way round is told of with the height of its step', () => {
    expect(found(DOOR, PLAYER, across(1500, 8000))).toEqual([
      {
        code: 'room.step',
        severity: 'caution',
        subjects: ['player-1', 'riser-1'],
        measured: 1500,
        required: 200,
        unit: 'mm',
        where: { x: expect.closeTo(0, 0), y: expect.closeTo(2600) },
        detail: { exit: 'door-1' },
      },
    ]);
    expect(found(DOOR, PLAYER, across(200, 8000))).toEqual([]);
  });

  test('is gone round through a narrow place rather than over', () => {
    // 600 mm are left between the level and the wall.
    const level = aRiser({ x: -300, y: 3000, width: 7400, depth: 800, height: 900 });
    expect(found(DOOR, PLAYER, level)).toMatchObject([
      {
        code: 'room.route',
        subjects: expect.arrayContaining(['player-1', 'riser-1', 'platform-1']),
        measured: expect.closeTo(600, 6),
      },
    ]);
  });

  test('is told of besides how narrow the way over it is', () => {
    const posts = [-1, 1].map((side) =>
      aShape({
        id: side < 0 ? 'shape-1' : 'shape-2',
        y: 3000,
        outline: [
          { x: side * 350, y: -100 },
          { x: side * 4000, y: -100 },
          { x: side * 4000, y: 100 },
          { x: side * 350, y: 100 },
        ],
      }),
    );
    const codes = found(DOOR, PLAYER, across(500, 8000), ...posts).map(({ code }) => code);
    expect(codes).toEqual(['room.route', 'room.step']);
  });
});

describe('a player on a level', () => {
  const under = (height: number) => aRiser({ y: 1500, width: 3000, depth: 2500, height });

  test('steps down one of 200 mm, and is told of a higher one', () => {
    expect(found(DOOR, PLAYER, under(200))).toEqual([]);
    expect(found(DOOR, PLAYER, under(400))).toMatchObject([{ code: 'room.step', measured: 400 }]);
  });

  test('comes down by lower levels set as steps', () => {
    const steps = aRiser({ id: 'riser-2', y: 3250, width: 3000, depth: 1000, height: 200 });
    expect(found(DOOR, PLAYER, under(400), steps)).toEqual([]);
  });
});

test('a level that ends at the door has its step in the door, and another door is taken instead', () => {
  const before = aRiser({ y: 4000, width: 8000, depth: 2000, height: 700 });
  const onIt = aPlayer({ y: 3800 });
  expect(found(DOOR, onIt, before)).toMatchObject([
    { code: 'room.step', measured: 700, subjects: ['player-1', 'riser-1'] },
  ]);
  // To the floor in front of it another door leads without a step.
  const side = aDoor({ id: 'door-2', edge: 1, offset: 500, width: 1200 });
  expect(way(DOOR, side, PLAYER, before).exit).toBe('door-2');
  expect(found(DOOR, side, PLAYER, before)).toEqual([]);
});
