import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { elbowFindings, elbowsOf } from '#model/checks/room/elbow.ts';
import { bodies } from '#model/catalogue/people.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord, Person } from '#model/document/records.ts';
import {
  aDocument,
  aLargeInstrument,
  anInstrument,
  aPlatform,
  aPlayer,
  aShape,
  aStand,
  aTable,
  PERSON,
  SETUP,
  SIDE,
} from '../../../helpers/build.ts';
import { mirrored } from './mirrored.ts';

const findings = (...records: AnyRecord[]) => elbowFindings(aDocument(...records), SETUP);

const body = bodies(PERSON, null).tall;
const half = Math.max(body.elbowBreadth / 2, body.shoulderBreadth / 2 + 120);

/** Clarinets want 120 mm beyond either shoulder. */
const clarinet = (x: number, number = 1) => [
  aPlayer({ id: `player-${number}`, x }),
  anInstrument({ id: `instrument-${number}`, player: asId(`player-${number}`) }),
];

describe('what a player wants', () => {
  test('is the breadth over both elbows, which for a tall man is 667 mm (ANSUR II, P95, forearm-forearm)', () => {
    const tall: Person = { ...PERSON, population: 'male', size: { by: 'percentile', percentile: 95 } };
    const { left, right } = elbowsOf(bodies(tall, null).tall, []);
    // Predicted from a P95 stature, so nearer to the mean (579.9 mm) than the P95 of elbows is.
    expect(left + right).toBeGreaterThan(579.9);
    expect(left + right).toBeLessThan(667);
    expect(left).toBe(right);
  });

  test('grows by what the instrument asks for on either side', () => {
    const { left, right } = elbowsOf(body, [anInstrument({ model: 'viola' })]);
    expect(right - left).toBeCloseTo(380 - 220);
    expect(left).toBeCloseTo(body.shoulderBreadth / 2 + 220);
  });
});

describe('two players side by side', () => {
  test('want both their rooms between them, and are named once', () => {
    expect(findings(...clarinet(-1), ...clarinet(2 * half, 2))).toEqual([]);
    const [finding, ...others] = findings(...clarinet(0), ...clarinet(2 * half - 100, 2));
    expect(others).toEqual([]);
    expect(finding).toMatchObject({
      code: 'room.elbow',
      severity: 'caution',
      subjects: ['player-1', 'player-2'],
      measured: expect.closeTo(2 * half - 100, 6),
      required: expect.closeTo(2 * half, 6),
      unit: 'mm',
      detail: { side: 'left' },
    });
  });

  test('facing the house, the one at a greater x is at the other’s left', () => {
    expect(findings(...clarinet(-(2 * half - 100), 2), ...clarinet(0))[0]?.detail).toMatchObject({
      side: 'right',
    });
  });

  test('one behind the other are in nobody’s way', () => {
    const behind = aPlayer({ id: 'player-2', y: 2900 });
    expect(findings(...clarinet(0), behind)).toEqual([]);
  });
});

describe('what is in the way', () => {
  test('is what stands there at the height of the arms', () => {
    const box = (height: number) => aShape({ x: half + 100, height });
    expect(findings(...clarinet(0), box(2500))).toMatchObject([{ subjects: ['player-1', 'shape-1'] }]);
    expect(findings(...clarinet(0), box(900))).toEqual([]);
    expect(findings(...clarinet(0), aShape({ x: half + 160 }))).toEqual([]);
  });

  test('is a wall, and not an open edge', () => {
    const atWall = aPlayer({ x: -4000 + half - 50 });
    const [wall] = findings(atWall, anInstrument());
    expect(wall).toMatchObject({
      subjects: ['player-1', 'platform-1'],
      measured: expect.closeTo(2 * half - 50),
    });
    expect(findings(aPlatform({ openEdges: [0, 3] }), atWall, anInstrument())).toEqual([]);
    expect(findings({ ...atWall, x: -4000 + half + 5 }, anInstrument())).toEqual([]);
  });

  test('is somebody else’s desk at that height, and not one’s own', () => {
    const desk = (reader: string | null) =>
      aStand({
        x: 0,
        y: 1800,
        lip: 1150,
        sides: [{ ...SIDE, reader: reader === null ? null : asId(reader) }],
      });
    expect(findings(...clarinet(0), desk(null))).toHaveLength(1);
    expect(findings(...clarinet(0), desk('player-1'))).toEqual([]);
    expect(findings(...clarinet(0), { ...desk(null), lip: 500 })).toEqual([]);
  });

  test('is not what he plays or takes his instruments from', () => {
    const table = aTable({ x: 500, height: 1100 });
    expect(findings(aPlayer(), table)).toHaveLength(1);
    expect(findings(aPlayer(), table, anInstrument({ model: 'shaker', support: table.id }))).toEqual([]);
    const bells = aLargeInstrument({ model: 'tubular-bells', x: 500 });
    expect(findings(aPlayer(), bells)).toHaveLength(1);
    expect(findings(aPlayer(), { ...bells, player: asId('player-1') })).toEqual([]);
  });

  test('over the very axis leaves nothing on that side', () => {
    const [finding] = findings(aPlayer(), aShape({ x: 20, y: 1900 }));
    expect(finding?.detail).toMatchObject({ free: 0 });
  });
});

describe('laws', () => {
  const spot = fc.record({
    x: fc.integer({ min: -1200, max: 1200 }),
    y: fc.integer({ min: 1200, max: 3000 }),
    facing: fc.integer({ min: -180, max: 180 }),
  });

  test('in a mirror, with instruments that want the same on both sides, as much is missing', () => {
    fc.assert(
      fc.property(spot, spot, (a, b) => {
        const instruments = clarinet(0).slice(1);
        const placed = [aPlayer(a), aPlayer({ ...b, id: 'player-2' }), aShape({ x: 300, y: 2000 })];
        const here = findings(...placed, ...instruments);
        const there = findings(...placed.map(mirrored), ...instruments);
        expect(there.map(({ subjects }) => subjects)).toEqual(here.map(({ subjects }) => subjects));
        there.forEach(({ measured }, index) => expect(measured).toBeCloseTo(here[index]?.measured ?? NaN, 6));
      }),
    );
  });

  test('turning everything about a spot changes nothing', () => {
    fc.assert(
      fc.property(spot, spot, fc.integer({ min: -180, max: 180 }), (a, b, turn) => {
        const [sin, cos] = [Math.sin((turn * Math.PI) / 180), Math.cos((turn * Math.PI) / 180)];
        const turned = <R extends { x: number; y: number; facing: number }>(record: R): R => ({
          ...record,
          x: cos * record.x - sin * (record.y - 2500),
          y: 2500 + sin * record.x + cos * (record.y - 2500),
          facing: record.facing + turn,
        });
        const players = [aPlayer(a), aPlayer({ ...b, id: 'player-2' })];
        const [here, there] = [findings(...players), findings(...players.map(turned))];
        expect(there).toHaveLength(here.length);
        there.forEach(({ measured }, index) => expect(measured).toBeCloseTo(here[index]?.measured ?? NaN, 6));
      }),
    );
  });
});
