import { describe, expect, it } from 'vitest';
import { flattened } from '#model/drawing/dxf/flatten.ts';
import { circle, polygon, polyline } from '#model/drawing/outline.ts';

describe('flattened', () => {
  it('keeps straight outlines as they are, and says which are closed', () => {
    const corners = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 5 },
    ];
    expect(flattened([...polygon(corners), ...polyline(corners)], 1)).toEqual([
      { points: corners, closed: true },
      { points: corners, closed: false },
    ]);
  });

  it('stays within the tolerance of a circle, and drops the doubled end', () => {
    const [chain] = flattened(circle({ x: 100, y: -50 }, 300), 0.1);
    const middles = chain?.points.map((point, index, all) => {
      const next = all[(index + 1) % all.length] ?? point;
      return Math.hypot((point.x + next.x) / 2 - 100, (point.y + next.y) / 2 + 50);
    });
    expect(chain?.closed).toBe(true);
    // The four cubics themselves are off a true circle by up to 0.03 %.
    for (const radius of middles ?? []) expect(Math.abs(radius - 300)).toBeLessThan(0.1 + 300 * 3e-4);
    expect(chain?.points.length).toBeLessThan(200);
  });
});
