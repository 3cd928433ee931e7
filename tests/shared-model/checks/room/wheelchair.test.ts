/**
 * Sources of the limits: ADA/ABA 403.5.1 (clear width 915 mm, 815 mm over at most 610 mm), 304.3.1 (circle of 1525 mm),
 * ADA Standards 1991 figure A3 (the wheelchair: 660 mm wide, 1065 + 150 mm long, seat at 485 mm) and figure 7(c) (a rise
 * of 6.5 mm). Millimetres as printed.
 */

import { describe, expect, test } from 'vitest';
import { WHEELCHAIR } from '#model/catalogue/seats.ts';
import { chairOutline } from '#model/catalogue/outlines.ts';
import { overlapFindings } from '#model/checks/room/overlap.ts';
import { cableFindings, routeFindings } from '#model/checks/room/route-findings.ts';
import { routeResults } from '#model/checks/room/routes.ts';
import { bendsOf } from '#model/checks/room/turning.ts';
import { wheelchairFindings } from '#model/checks/room/wheelchair-findings.ts';
import type { AnyRecord, Player, Point, Shape } from '#model/document/records.ts';
import { boundsOf } from '#model/geometry/polygon.ts';
import { gapBetweenSegments } from '#model/geometry/segments.ts';
import {
  aBox,
  aConcert,
  aDocument,
  aDoor,
  aLamp,
  aPlayer,
  aRiser,
  aSeat,
  aStand,
  aTable,
  SETUP,
} from '../../../helpers/build.ts';

const wheeled = (fields: Partial<Player> = {}): Player =>
  aPlayer({ y: 1500, chair: { model: 'wheelchair', height: 485 }, mobility: 'wheelchair', ...fields });

const DOOR = aDoor({ offset: 3000, width: 2000 });

const barrier = (gap: number, deep = 100): Shape[] => [
  aBox('shape-1', [-4000, -gap / 2], [3000, 3000 + deep]),
  aBox('shape-2', [gap / 2, 4000], [3000, 3000 + deep]),
];

const found = (...records: AnyRecord[]) => wheelchairFindings(aDocument(...records), SETUP);
const codes = (...records: AnyRecord[]) => found(...records).map(({ code }) => code);
const way = (...records: AnyRecord[]) => {
  const [first] = routeResults(aDocument(...records), SETUP);
  if (!first) throw new Error('nobody');
  return first;
};

describe('the wheelchair', () => {
  test('is as large as figure A3 says, its user looking along -y', () => {
    const outline = chairOutline(wheeled({ x: 0, y: 0 })) ?? [];
    const { minX, maxX, minY, maxY } = boundsOf(outline);
    expect([maxX - minX, maxY - minY]).toEqual([660, 1065 + 150]);
    expect(WHEELCHAIR.height.usual).toBe(485);
    // Toes before him, wheels behind.
    expect(-minY).toBeGreaterThan(maxY);
    const toes = outline.filter(({ y }) => y === minY).map(({ x }) => x);
    expect(Math.max(...toes) - Math.min(...toes)).toBe(455);
  });

  test('takes up room: what stands at his feet runs into it', () => {
    const at = (y: number) =>
      overlapFindings(aDocument(wheeled(), aTable({ y: 1500 - 815 - 200 + y })), SETUP);
    expect(at(5)).toMatchObject([{ code: 'room.overlap', measured: expect.closeTo(-5, 0) }]);
    expect(at(-1)).toEqual([]);
  });

  test('is in the way of others', () => {
    const lane = [aBox('shape-1', [-4000, -500], [2000, 4000]), aBox('shape-2', [500, 4000], [2000, 4000])];
    const other = aPlayer({ id: 'player-2', y: 1000 });
    const width = (player: Player) =>
      routeResults(aDocument(DOOR, other, player, ...lane), SETUP)[1]?.width ?? NaN;
    expect(width(aPlayer({ y: 3000, x: -3000 }))).toBeCloseTo(1000, 0);
    // From the wheel, 330 from its axis, to the wall beyond.
    expect(Math.abs(width(wheeled({ y: 3000, x: -200 })) - (500 + 200 - 330))).toBeLessThan(1);
  });
});

describe('the way of a wheelchair', () => {
  test.each([
    [915, []],
    [914, ['room.wheelchairRoute']],
    [815, ['room.wheelchairRoute']],
  ])('through a gap of %i mm', (gap, expected) => {
    expect(codes(DOOR, wheeled(), ...barrier(gap))).toEqual(expected);
  });

  test('asks for 915 mm although the director asks for less of those who walk, and for more with him', () => {
    const asked = (routeWidth: number) =>
      aConcert({ limits: { seesWell: 0.9, houseShare: 0.75, edgeDistance: 600, routeWidth } });
    expect(found(asked(700), DOOR, wheeled(), ...barrier(850))).toMatchObject([{ required: 915 }]);
    expect(routeFindings(aDocument(asked(700), DOOR, aPlayer(), ...barrier(850)), SETUP)).toEqual([]);
    expect(found(asked(1100), DOOR, wheeled(), ...barrier(1000))).toMatchObject([
      { measured: expect.closeTo(1000, 0), required: 1100 },
    ]);
  });

  test('is told where it pinches, between what, and whether it is as short as a pinch point may be', () => {
    const [short] = found(DOOR, wheeled(), ...barrier(850));
    expect(short).toMatchObject({
      subjects: ['player-1', expect.stringMatching(/^shape-[12]$/), expect.stringMatching(/^shape-[12]$/)],
      measured: expect.closeTo(850, 0),
      where: { x: expect.closeTo(0, 0), y: expect.closeTo(3050, -2.5) },
      detail: { pinch: 'pinch' },
    });
    const [long] = found(DOOR, wheeled(), ...barrier(850, 700));
    expect(long?.detail).toMatchObject({ pinch: 'narrow' });
    // Of a level and of the platform's own boundary as well.
    const level = aRiser({ x: -350, y: 3000, width: 7300, depth: 600, height: 400 });
    expect(found(DOOR, wheeled(), level)).toMatchObject([
      {
        subjects: expect.arrayContaining(['player-1', 'riser-1', 'platform-1']),
        measured: expect.closeTo(700, 3),
      },
    ]);
  });

  test('goes to an exit without steps, though another is nearer', () => {
    const steps = aDoor({ id: 'door-2', edge: 1, offset: 1000, stepFree: false });
    expect(way(DOOR, steps, wheeled({ x: 3000 })).exit).toBe('door-1');
    expect(way(DOOR, steps, aPlayer({ x: 3000, y: 1500 })).exit).toBe('door-2');
  });

  test('is none where every exit has steps, which is said once for all', () => {
    const steps = { ...DOOR, stepFree: false };
    const others = [
      wheeled({ id: 'player-2' as Player['id'], x: 2000 }),
      aPlayer({ id: 'player-3', x: -2000 }),
    ];
    expect(found(steps, wheeled(), ...others)).toMatchObject([
      { code: 'room.noStepFreeExit', subjects: ['player-1', 'player-2'], severity: 'caution' },
    ]);
    expect(found(steps, aPlayer())).toEqual([]);
  });

  test('goes round a level that others step on, unless it is no higher than 6.5 mm', () => {
    const across = (height: number) => aRiser({ y: 3000, width: 6000, depth: 800, height });
    const isStraight = (height: number) =>
      way(DOOR, wheeled(), across(height)).path.every(({ x }) => Math.abs(x) < 1100);
    expect(isStraight(6)).toBe(true);
    expect(isStraight(7)).toBe(false);
    expect(way(DOOR, aPlayer({ y: 1500 }), across(200)).path.every(({ x }) => Math.abs(x) < 1100)).toBe(true);
  });

  test('does not lead off a level, nor on to one that stands all before the door', () => {
    const level = aRiser({ y: 1500, width: 3000, depth: 2000, height: 150 });
    expect(found(DOOR, wheeled(), level)).toMatchObject([
      { code: 'room.wheelchairLevel', subjects: ['player-1', 'riser-1'], measured: 150, required: 6.5 },
    ]);
    const before = aRiser({ y: 4400, width: 8000, depth: 1200, height: 150 });
    expect(found(DOOR, wheeled(), before)).toMatchObject([{ code: 'room.wheelchairRoute', measured: 0 }]);
  });

  test('leads from one level to another of the same height', () => {
    const levels = [
      aRiser({ x: -1000, y: 1500, width: 2000, depth: 3000, height: 150 }),
      aRiser({ id: 'riser-2', x: 1000, y: 1500, width: 2000, depth: 3000, height: 150 }),
    ];
    // The circle over his place reaches over the seam.
    const { turning } = way(DOOR, wheeled({ x: 0 }), ...levels);
    expect(turning[0]?.diameter).toBeGreaterThan(2900);
  });

  test('of a wheelchair set for somebody who does not play is judged as well', () => {
    const chair = aSeat({ y: 1500, model: 'wheelchair', height: 485 });
    expect(found(DOOR, chair, ...barrier(850))).toMatchObject([
      { code: 'room.wheelchairRoute', subjects: ['seat-1', expect.anything(), expect.anything()] },
    ]);
    expect(found(DOOR, aSeat({ y: 1500 }), ...barrier(850))).toEqual([]);
  });

  test('of a player who moved over to a bench is judged from there', () => {
    const moved = wheeled({ chair: { model: 'piano-bench', height: 490 } });
    expect(codes(DOOR, moved, ...barrier(850))).toEqual(['room.wheelchairRoute']);
  });

  test('is a real one: every leg keeps its width from everything', () => {
    const things = [...barrier(1000), aTable({ x: 600, y: 2200 }), aStand({ x: -900, y: 2300 })];
    const { path, width } = way(DOOR, wheeled(), ...things);
    const legs = path.slice(1).map((b, index): readonly [Point, Point] => [path[index] ?? b, b]);
    const corner = (x: number): readonly [Point, Point] => [
      { x, y: 3000 },
      { x, y: 3100 },
    ];
    for (const [a, b] of legs) {
      for (const [p, q] of [corner(-500), corner(500)]) {
        expect(2 * gapBetweenSegments(a, b, p, q).distance).toBeGreaterThanOrEqual(width - 0.01);
      }
    }
  });
});

describe('room to turn', () => {
  /** A yard of so much by so much about the player, open towards the door. */
  const yard = (width: number) => [
    aBox('shape-1', [-width / 2 - 100, -width / 2], [200, 3500]),
    aBox('shape-2', [width / 2, width / 2 + 100], [200, 3500]),
  ];

  test.each([
    [1525, []],
    [1523, [{ code: 'room.turning', subjects: ['player-1'], detail: { at: 'place' }, required: 1525 }]],
  ])('in a lane of %i mm', (width, expected) => {
    const findings = found(aDoor({ offset: 3000, width: 2000 }), wheeled(), ...yard(width));
    expect(findings).toMatchObject(expected);
    for (const { measured } of findings) expect(Math.abs(measured - width)).toBeLessThan(1);
  });

  test('may lie before, beside or behind the place, as long as it is over it', () => {
    const desk = (y: number) => aBox('shape-3', [-2000, 2000], [y, y + 100]);
    expect(codes(DOOR, wheeled(), desk(600))).toEqual([]);
    // Hemmed in before and behind, with the room for a circle at neither side.
    const hemmed = [...yard(1600), desk(500), aBox('shape-4', [-800, 300], [1950, 2050])];
    expect(found(DOOR, wheeled(), ...hemmed)).toEqual(
      expect.arrayContaining([expect.objectContaining({ code: 'room.turning', detail: { at: 'place' } })]),
    );
  });

  test('his own wheelchair and body are not in his way, his stand is', () => {
    const { turning } = way(DOOR, wheeled());
    expect(turning[0]).toMatchObject({ at: 'place', near: { x: 0, y: 1500 } });
    expect(turning[0]?.diameter).toBeGreaterThan(2500);
    const hemmed = [...yard(1600), aBox('shape-3', [-2000, 2000], [500, 600])];
    const behind = aStand({ y: 2050 });
    expect(way(DOOR, wheeled(), ...hemmed).turning[0]?.diameter).toBeGreaterThan(1525);
    expect(way(DOOR, wheeled(), ...hemmed, behind).turning[0]?.diameter).toBeLessThan(1525);
  });

  test('is asked for where the way turns back round a thin wall, and not in a turn of 90 degrees', () => {
    const corner = (degrees: number): Point[] => {
      const angle = (degrees * Math.PI) / 180;
      return [
        { x: 0, y: -2000 },
        { x: 0, y: 0 },
        { x: -2000 * Math.sin(angle), y: 2000 * Math.cos(angle) },
      ];
    };
    expect(bendsOf(corner(90))).toEqual([]);
    expect(bendsOf(corner(95))).toEqual([{ x: 0, y: 0 }]);
    // In two bends farther apart than 1220 mm he drives round something wide.
    const around = (wide: number) => [
      { x: 0, y: -2000 },
      { x: 0, y: 0 },
      { x: wide, y: 0 },
      { x: wide, y: -2000 },
    ];
    expect(bendsOf(around(1220))).toHaveLength(1);
    expect(bendsOf(around(1221))).toHaveLength(0);
    expect(bendsOf([])).toEqual([]);
  });

  test.each([
    [1530, []],
    [1000, [{ code: 'room.turning', subjects: ['player-1', 'door-1'], detail: { at: 'exit' } }]],
  ])(
    'before the exit counts the %i mm of the platform there, and nothing beyond the door',
    (deep, expected) => {
      // A wide door, and a long object in front of it that leaves a strip along the wall.
      const door = aDoor({ offset: 1000, width: 3000 });
      const strip = aBox('shape-1', [-2300, 4000], [3000, 5000 - deep]);
      const user = wheeled({ x: -3200, y: 2000 });
      const findings = found(door, user, strip).filter(({ detail }) => detail['at'] === 'exit');
      expect(findings).toMatchObject(expected);
      for (const { measured } of findings) expect(Math.abs(measured - deep)).toBeLessThan(1);
      for (const { x, y, diameter } of way(door, user, strip).turning) {
        expect(y + diameter / 2).toBeLessThanOrEqual(5000.001);
        expect(Math.abs(x) + diameter / 2).toBeLessThanOrEqual(4000.001);
      }
    },
  );

  test('before the exit is over the spot where the wheelchair comes to a stand, 610 mm from it', () => {
    const end = way(DOOR, wheeled()).turning.find(({ at }) => at === 'exit');
    expect(end?.near.y).toBeCloseTo(5000 - 610, 0);
    expect(end?.diameter).toBeGreaterThan(2600);
  });

  test('is measured where he turns back', () => {
    // A thin wall from the door downstage: he comes down on one side of it and leaves on the other.
    const thin = aBox('shape-1', [-50, 50], [1500, 5000]);
    const before = aBox('shape-2', [-4000, 4000], [200, 300]);
    const beside = aBox('shape-3', [1000, 1100], [200, 5000]);
    const door = aDoor({ offset: 5200, width: 1500 });
    const user = wheeled({ x: 520, y: 4000 });
    const bends = (...walls: Shape[]) =>
      found(door, user, thin, ...walls).filter(({ detail }) => detail['at'] === 'bend');
    expect(way(door, user, thin, beside, before).turning.map(({ at }) => at)).toEqual([
      'place',
      'bend',
      'exit',
    ]);
    expect(bends(beside, before)).toMatchObject([{ code: 'room.turning', required: 1525 }]);
    expect(bends(beside)).toEqual([]);
  });
});

describe('a cable', () => {
  const across = (y: number) => [
    { x: 2000, y },
    { x: -2000, y },
  ];
  const cables = (...records: AnyRecord[]) => cableFindings(aDocument(DOOR, ...records), SETUP);

  test('across the way of a wheelchair is a caution as for anybody', () => {
    expect(cables(wheeled(), aLamp({ x: 2000, cable: across(3000) }))).toMatchObject([
      { code: 'room.cable', severity: 'caution', subjects: ['lamp-1', 'player-1'], measured: 1 },
    ]);
  });

  test('that is covered is a note for wheels alone', () => {
    const covered = aLamp({ x: 2000, cable: across(3000), cableCovered: true });
    const both = [wheeled(), aPlayer({ id: 'player-2', x: 1000, y: 1500 })];
    expect(cables(...both, covered)).toMatchObject([
      { code: 'room.cableRamp', severity: 'note', subjects: ['lamp-1', 'player-1'], measured: 1 },
    ]);
    expect(cables(aPlayer(), covered)).toEqual([]);
    expect(cables(wheeled(), { ...covered, cable: [] })).toEqual([]);
  });

  test('at his own place counts for wheels, which do not step over it', () => {
    const atPlace = aLamp({ x: 2000, cable: across(1620) });
    expect(cables(wheeled(), atPlace)).toHaveLength(1);
    expect(cables(aPlayer({ y: 1500 }), atPlace)).toEqual([]);
  });
});
