import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BoxGrid, grown, touch } from '#model/checks/room/box-grid.ts';
import type { Bounds } from '#model/geometry/polygon.ts';

const length = (most: number) => fc.double({ min: 0, max: most, noNaN: true });
const boxes = (most: number) =>
  fc
    .record({
      minX: fc.integer({ min: -9000, max: 9000 }),
      minY: fc.integer({ min: -9000, max: 9000 }),
      w: length(most),
      h: length(most),
    })
    .map(({ minX, minY, w, h }): Bounds => ({ minX, minY, maxX: minX + w, maxY: minY + h }));

describe('boxes found by grid', () => {
  test('are those that looking at every box finds, also for boxes over many cells', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(boxes(900), boxes(60_000)), { maxLength: 40 }),
        boxes(30_000),
        (all, asked) => {
          const expected = all.flatMap((box, index) => (touch(box, asked) ? [index] : []));
          expect(new BoxGrid(all).touching(asked)).toEqual(expected);
        },
      ),
    );
  });

  test('a box grows on every side', () => {
    expect(grown({ minX: 1, minY: 2, maxX: 3, maxY: 4 }, 10)).toEqual({
      minX: -9,
      minY: -8,
      maxX: 13,
      maxY: 14,
    });
  });
});
