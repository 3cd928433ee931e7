import { describe, expect, it } from 'vitest';
import { nearestOf } from '#model/underlay/nearest.ts';
import { settleTrace, type TraceRequest } from '#model/underlay/tracing.ts';
import { anUnderlay } from '../../helpers/build.ts';

/** A room of 10 x 6 m drawn in centimetres, its lower left corner at (-5000, 0). */
const room = anUnderlay({
  x: -5000,
  y: 0,
  scale: 10,
  turn: 0,
  content: { type: 'lines', width: 1000, height: 600, lines: [[0, 0, 1000, 0, 1000, 600, 0, 600, 0, 0]] },
});

const near: TraceRequest['near'] = (spot) => nearestOf(room, spot, 100);

const settled = (request: Partial<TraceRequest>) =>
  settleTrace({
    wanted: { x: 0, y: 0 },
    corners: [],
    near: () => null,
    within: 100,
    roundTo: 50,
    ...request,
  });

describe('nearestOf', () => {
  it('finds the corner before the line, the line at its nearest point, and nothing farther off', () => {
    expect(near({ x: 4930, y: 10 })).toEqual({ what: 'corner', at: { x: 5000, y: 0 } });
    expect(near({ x: 1234, y: 60 })).toEqual({ what: 'line', at: { x: 1234, y: 0 } });
    expect(near({ x: 1234, y: 160 })).toBeNull();
  });

  it('goes by where the underlay lies and how it is turned; what is hidden catches nothing', () => {
    const turned = { ...room, turn: 90 };
    expect(nearestOf(turned, { x: -5010, y: 9990 }, 100)?.at).toEqual({
      x: expect.closeTo(-5000, 6),
      y: expect.closeTo(10_000, 6),
    });
    expect(nearestOf({ ...room, shown: false }, { x: 5000, y: 0 }, 100)).toBeNull();
  });

  it('is found within a tenth of a second in a drawing of 50 000 lines', () => {
    const lines = Array.from({ length: 50_000 }, (_, at) => [
      at % 1000,
      at / 1000,
      (at % 1000) + 1,
      at / 1000 + 1,
    ]);
    const large = anUnderlay({ content: { type: 'lines', width: 1001, height: 51, lines } });
    nearestOf(large, { x: 0, y: 0 }, 10);
    const begun = performance.now();
    for (let at = 0; at < 20; at++) nearestOf(large, { x: at, y: 5 }, 10);
    expect((performance.now() - begun) / 20).toBeLessThan(100);
  });
});

describe('settleTrace', () => {
  it('catches the corner of the underlay exactly', () => {
    expect(settled({ wanted: { x: -4950, y: 40 }, near })).toEqual({ x: -5000, y: 0, reason: 'corner' });
  });

  it('goes on square to the edge before, where the line of the underlay crosses', () => {
    const corners = [
      { x: -3000, y: 1000 },
      { x: 2000, y: 1000 },
    ];
    expect(settled({ wanted: { x: 2040, y: 5950 }, corners, near })).toEqual({
      x: 2000,
      y: 6000,
      reason: 'square',
    });
  });

  it('is square to an edge that runs askew, at a round length', () => {
    const corners = [
      { x: 0, y: 0 },
      { x: 3000, y: 4000 },
    ];
    const spot = settled({ wanted: { x: 3000 - 0.8 * 1020 + 10, y: 4000 + 0.6 * 1020 }, corners });
    expect(spot.reason).toBe('square');
    expect(Math.hypot(spot.x - 3000, spot.y - 4000)).toBeCloseTo(1000, 6);
    expect((spot.x - 3000) * 3000 + (spot.y - 4000) * 4000).toBeCloseTo(0, 3);
  });

  it('goes along the stage’s axes from the first corner on', () => {
    expect(settled({ wanted: { x: 2033, y: 60 }, corners: [{ x: 0, y: 0 }] })).toEqual({
      x: 2050,
      y: 0,
      reason: 'square',
    });
  });

  it('lies on a line of the underlay, or at a round length, else', () => {
    const corners = [{ x: 0, y: 3000 }];
    expect(settled({ wanted: { x: 1234, y: 5950 }, corners, near })).toEqual({
      x: expect.closeTo(1234, 6),
      y: expect.closeTo(6000, 6),
      reason: 'line',
    });
    const free = settled({ wanted: { x: 1234, y: 4321 }, corners });
    expect(free.reason).toBe('free');
    expect(Math.hypot(free.x, free.y - 3000) % 50).toBeCloseTo(0, 6);
  });

  it('closes on the first corner once there are three', () => {
    const corners = [
      { x: 0, y: 0 },
      { x: 4000, y: 0 },
      { x: 4000, y: 3000 },
    ];
    expect(settled({ wanted: { x: 50, y: -50 }, corners })).toEqual({ x: 0, y: 0, reason: 'close' });
    expect(settled({ wanted: { x: 50, y: -50 }, corners: corners.slice(0, 2) }).reason).not.toBe('close');
  });
});
