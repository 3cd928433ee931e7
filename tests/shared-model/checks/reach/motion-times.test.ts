import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  motionTime,
  reachTime,
  reachUnits,
  stepTime,
  sumOf,
  turnTime,
  walkingSeconds,
  walkTime,
} from '#model/checks/reach/motion-times.ts';
import { REACH_TABLE, TMU, TURN_BODY, type ReachCase } from '#model/checks/reach/published.ts';

const CASES: readonly ReachCase[] = ['A', 'B', 'C'];
const inches = (count: number) => count * 25.4;

describe('the published tables', () => {
  // Source: MTM-1 data card (MTM Association e.V., 2019): 1 TMU = 0.036 s, TBC1 18.6, TBC2 37.2 TMU.
  it('counts TMU in seconds', () => {
    expect(27.8 * TMU).toBeCloseTo(1.0008, 4);
    expect(TURN_BODY.leading * TMU).toBeCloseTo(0.6696, 4);
    expect(TURN_BODY.both * TMU).toBeCloseTo(1.3392, 4);
  });

  // Source: MTM-1 Reach table, two independent copies that agree.
  it.each([
    ['A', 20, 13.1],
    ['B', 20, 18.6],
    ['C', 20, 19.8],
    ['A', 36, 19.9],
    ['B', 36, 30.0],
    ['A', 4, 6.1],
    ['B', 12, 12.9],
    ['C', 30, 26.7],
  ] as const)('R-%s over %d in takes %d TMU', (reachCase, length, units) => {
    expect(reachUnits(reachCase, inches(length))).toBeCloseTo(units, 6);
  });

  it('takes 0.6696 s for R20B', () => {
    expect(reachTime('B', inches(20)).usual).toBeCloseTo(0.6696, 4);
  });

  // Source: MTM-1 Reach table, as above.
  it('grows with the way, and A is never slower than B nor B than C', () => {
    for (const row of REACH_TABLE)
      expect([row.A, row.B, row.C]).toEqual([row.A, row.B, row.C].sort((a, b) => a - b));
    const way = fc.double({ min: 0, max: 2000, noNaN: true });
    fc.assert(
      fc.property(way, way, (a, b) => {
        const [near, far] = [Math.min(a, b), Math.max(a, b)];
        for (const name of CASES)
          expect(reachUnits(name, far)).toBeGreaterThanOrEqual(reachUnits(name, near));
        expect(reachUnits('A', a)).toBeLessThanOrEqual(reachUnits('B', a));
        expect(reachUnits('B', a)).toBeLessThanOrEqual(reachUnits('C', a));
      }),
    );
  });

  // Sources: 3.5 ft/s TxDOT Roadway Design Manual; 1.31 m/s Murtagh et al. 2020; 0.94 m/s Bohannon & Andrews 2011.
  it.each([
    [1.0668, 4.687],
    [1.31, 3.817],
    [0.94, 5.319],
  ])('walks 5 m at %d m/s in %d s', (speed, seconds) => {
    expect(walkingSeconds(5000, speed)).toBeCloseTo(seconds, 3);
  });

  // MTM-1 walking from memory: 5.3 TMU a foot, 15 TMU a pace of 34 in. Our briskest speed is below both.
  it('stays below the brisk pace of work study', () => {
    const perFoot = 0.3048 / (5.3 * TMU);
    const perPace = (34 * 0.0254) / (15 * TMU);
    expect(perFoot).toBeCloseTo(1.5975, 4);
    expect(perPace).toBeCloseTo(1.5993, 4);
    const fastest = 10 / (walkTime(10_000).least - walkTime(0).least);
    expect(fastest).toBeCloseTo(1.31, 9);
    expect(fastest).toBeLessThan(perFoot);
  });
});

describe('spans', () => {
  // Source: MTM-1 data card: SS-C1 17.0 TMU for 30 cm and 0.2 for every cm more; SS-C2 34.1 and 0.4.
  it('times a sidestep', () => {
    expect(stepTime(300).least).toBeCloseTo(17 * 0.036, 9);
    expect(stepTime(300).usual).toBeCloseTo(34.1 * 0.036, 9);
    expect(stepTime(450).usual).toBeCloseTo((34.1 + 15 * 0.4) * 0.036, 9);
    expect(stepTime(100)).toEqual(stepTime(300));
  });

  it('turns the body only from 45 degrees, and twice from 135', () => {
    expect(turnTime(45).usual).toBe(0);
    expect(turnTime(-46).usual).toBeCloseTo(37.2 * 0.036, 9);
    expect(turnTime(180)).toEqual(sumOf(turnTime(90), turnTime(90)));
  });

  it('keeps the usual time between the least and the most', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 9000, noNaN: true }), (size) => {
        const spans = [walkTime(size), stepTime(size), turnTime(size / 50), motionTime(size / 100)];
        for (const name of CASES) spans.push(reachTime(name, size));
        for (const { least, usual, most } of [...spans, sumOf(...spans)]) {
          expect(least).toBeLessThanOrEqual(usual);
          expect(usual).toBeLessThanOrEqual(most);
        }
      }),
    );
  });
});
