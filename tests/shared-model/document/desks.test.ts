import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deskDepth, desksOf, lipOffset, type Rectangle3 } from '#model/document/desks.ts';
import { facingVector, type Vec3 } from '#model/geometry/frame.ts';
import { aStand, SIDE } from '../../helpers/build.ts';

const between = (a: Vec3, b: Vec3): number => Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);

const middle = (a: Vec3, b: Vec3): Vec3 => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, z: (a.z + b.z) / 2 });

const anyStand = fc
  .record({
    x: fc.integer({ min: -5000, max: 5000 }),
    y: fc.integer({ min: 0, max: 5000 }),
    facing: fc.integer({ min: -360, max: 360 }),
    tilt: fc.integer({ min: 0, max: 90 }),
    deskWidth: fc.integer({ min: 300, max: 900 }),
    deskHeight: fc.integer({ min: 200, max: 600 }),
    form: fc.constantFrom('single' as const, 'backToBack' as const),
  })
  .map((fields) => aStand({ ...fields, sides: fields.form === 'single' ? [SIDE] : [SIDE, SIDE] }));

describe('desks', () => {
  it('by hand: facing the house, 65 degrees, the lip nearer to the house than the upper edge', () => {
    const stand = aStand({ x: 0, y: 2000, facing: 0, tilt: 65, deskHeight: 340, deskWidth: 510, lip: 800 });
    const [desk] = desksOf(stand, 200);
    // 340 cos 65 = 143.69, 340 sin 65 = 308.14; the reader looks upstage, his left is stage right.
    expect(desk?.board).toEqual([
      { x: -255, y: expect.closeTo(2000 - 71.845, 2), z: 1000 },
      { x: 255, y: expect.closeTo(2000 - 71.845, 2), z: 1000 },
      { x: 255, y: expect.closeTo(2000 + 71.845, 2), z: expect.closeTo(1308.145, 2) },
      { x: -255, y: expect.closeTo(2000 + 71.845, 2), z: expect.closeTo(1308.145, 2) },
    ]);
  });

  it('are rectangles of their size, lip at its height, seen from the reader left to right', () => {
    fc.assert(
      fc.property(anyStand, (stand) => {
        for (const { board, towardsReader } of desksOf(stand)) {
          const [lipLeft, lipRight, topRight, topLeft] = board;
          expect(between(lipLeft, lipRight)).toBeCloseTo(stand.deskWidth, 6);
          expect(between(lipRight, topRight)).toBeCloseTo(stand.deskHeight, 6);
          expect(between(lipLeft, topRight)).toBeCloseTo(between(lipRight, topLeft), 6);
          expect(lipLeft.z).toBe(stand.lip);
          // Left to right, crossed with up, points at the reader.
          const right = { x: lipRight.x - lipLeft.x, y: lipRight.y - lipLeft.y };
          expect(right.x * towardsReader.y - right.y * towardsReader.x).toBeLessThan(0);
        }
      }),
    );
  });

  it('meet in a ridge over the spot when they are back to back, and lie about it when single', () => {
    fc.assert(
      fc.property(anyStand, (stand) => {
        const desks = desksOf(stand);
        expect(desks).toHaveLength(stand.sides.length);
        for (const { board, sideIndex } of desks) {
          const [lipLeft, lipRight, topRight, topLeft] = board;
          const [lip, top] = [middle(lipLeft, lipRight), middle(topLeft, topRight)];
          const over = stand.form === 'single' ? middle(lip, top) : top;
          expect(over.x).toBeCloseTo(stand.x, 6);
          expect(over.y).toBeCloseTo(stand.y, 6);
          const out = facingVector(stand.facing + 180 * sideIndex);
          expect((lip.x - stand.x) * out.x + (lip.y - stand.y) * out.y).toBeCloseTo(lipOffset(stand), 6);
        }
        expect(lipOffset(stand)).toBeCloseTo(deskDepth(stand) / (stand.form === 'single' ? 2 : 1), 9);
      }),
    );
  });

  it('carry their paper on the lip, as wide as its pages; none when there are no pages', () => {
    const [desk] = desksOf(aStand({ sides: [{ ...SIDE, pagesAcross: 3, pageWidth: 230, pageHeight: 310 }] }));
    const paper = desk?.paper as Rectangle3;
    expect(between(paper[0], paper[1])).toBeCloseTo(690, 6);
    expect(between(paper[1], paper[2])).toBeCloseTo(310, 6);
    expect(paper[0].z).toBe(800);
    expect(desksOf(aStand({ sides: [{ ...SIDE, pagesAcross: 0 }] }))[0]?.paper).toBeNull();
  });
});
