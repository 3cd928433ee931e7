import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gathered, PIN, type Pin } from '../../../renderer/canvas/pins.ts';

const pin = (number: number, x: number, severity: Pin['severity'] = 'caution'): Pin => ({
  number,
  where: { x, y: 0 },
  severity,
});

describe('pins of findings', () => {
  it('are gathered under the first, which is the gravest, where their heads would touch', () => {
    const [near, far] = [pin(2, 100), pin(3, 5000)];
    expect(gathered([pin(1, 0, 'fail'), near, far], 0.08)).toEqual([
      { ...pin(1, 0, 'fail'), more: 1, chosen: false },
      { ...far, more: 0, chosen: false },
    ]);
  });

  it('come apart when the plan is looked at more closely', () => {
    const pins = [pin(1, 0), pin(2, 100)];
    expect(gathered(pins, 0.05)).toHaveLength(1);
    expect(gathered(pins, 1)).toHaveLength(2);
  });

  it('are all counted, and no two heads touch', () => {
    const spots = fc.array(fc.integer({ min: -6000, max: 6000 }), { maxLength: 40 });
    fc.assert(
      fc.property(spots, fc.double({ min: 0.005, max: 2, noNaN: true }), (xs, scale) => {
        const heads = gathered(
          xs.map((x, index) => pin(index + 1, x)),
          scale,
        );
        expect(heads.reduce((sum, { more }) => sum + 1 + more, 0)).toBe(xs.length);
        for (const [index, { where }] of heads.entries())
          for (const other of heads.slice(index + 1))
            expect(Math.abs(where.x - other.where.x) * scale).toBeGreaterThanOrEqual(2 * PIN.small);
      }),
    );
  });
});
