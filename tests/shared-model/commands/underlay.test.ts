import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add } from '#model/commands/add.ts';
import { remove } from '#model/commands/remove.ts';
import { moveUnderlay, scaleUnderlay, underlayToOrigin } from '#model/commands/underlay.ts';
import { asId } from '#model/document/ids.ts';
import type { Document } from '#model/document/document.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { stageToUnderlay, underlayOutline, underlayToStage } from '#model/underlay/place.ts';
import { aDocument, anUnderlay, recordOf } from '../../helpers/build.ts';
import '../../helpers/seed.ts';
import { carriedOut, refusal } from './check-laws.ts';

const ID = asId<'underlay'>('underlay-1');
const underlayOf = (document: Document) => recordOf(document, ID, 'underlay');

describe('the place of an underlay', () => {
  it('has its lower left corner at (x, y), and turns about it', () => {
    const underlay = anUnderlay({ x: 100, y: 200, turn: 90, scale: 2 });
    const { width, height } = underlay.content;
    const [a, b, c] = underlayOutline(underlay);
    expect(a).toEqual({ x: 100, y: 200 });
    // A quarter turn anticlockwise takes +x to +y.
    expect(b).toEqual({ x: expect.closeTo(100, 9), y: expect.closeTo(200 + 2 * width, 9) });
    expect(c).toEqual({ x: expect.closeTo(100 - 2 * height, 9), y: expect.closeTo(200 + 2 * width, 9) });
  });

  it('leads there and back', () => {
    const number = fc.double({ min: -1e4, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(
        number,
        number,
        fc.integer({ min: -180, max: 180 }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (x, y, turn, scale) => {
          const underlay = anUnderlay({ x, y, turn, scale });
          const back = stageToUnderlay(underlay, underlayToStage(underlay, { x: 12, y: 34 }));
          expect(back).toEqual({ x: expect.closeTo(12, 5), y: expect.closeTo(34, 5) });
        },
      ),
    );
  });
});

describe('scaleUnderlay', () => {
  it('brings two points to the typed distance, the first one staying, level when asked for', () => {
    const spot = fc.record({
      x: fc.integer({ min: -5000, max: 5000 }),
      y: fc.integer({ min: -5000, max: 5000 }),
    });
    fc.assert(
      fc.property(
        spot,
        spot,
        fc.integer({ min: 100, max: 30_000 }),
        fc.boolean(),
        fc.integer({ min: -179, max: 180 }),
        (a, b, distance, level, turn) => {
          fc.pre(Math.hypot(b.x - a.x, b.y - a.y) > 10);
          const document = aDocument(anUnderlay({ x: 300, y: -400, turn, scale: 1.7 }));
          const before = underlayOf(document);
          const own = [a, b].map((point) => stageToUnderlay(before, point));
          const after = underlayOf(
            carriedOut(document, scaleUnderlay(document, { id: ID, a, b, distance, level })),
          );
          const [p, q] = own.map((point) => underlayToStage(after, point)) as [Vec2, Vec2];
          // Corners and turns are kept to the thousandth.
          const slack =
            0.01 + 2e-5 * (distance + Math.hypot(before.x - a.x, before.y - a.y) * (distance / 10));
          expect(Math.hypot(p.x - a.x, p.y - a.y)).toBeLessThan(slack);
          expect(Math.abs(Math.hypot(q.x - p.x, q.y - p.y) - distance)).toBeLessThan(slack);
          if (level) expect(Math.abs(q.y - p.y)).toBeLessThan(slack);
          else expect(after.turn).toBe(before.turn);
        },
      ),
    );
  });

  it('turns no farther than it must: it never stands on its head', () => {
    const document = aDocument(anUnderlay());
    const order = { id: ID, a: { x: 1000, y: 0 }, b: { x: 0, y: 10 }, distance: 5000, level: true };
    expect(Math.abs(underlayOf(carriedOut(document, scaleUnderlay(document, order))).turn)).toBeLessThan(1);
  });

  it('refuses points that are the same, and distances that are none', () => {
    const document = aDocument(anUnderlay());
    const a = { x: 1, y: 1 };
    expect(
      refusal(document, scaleUnderlay(document, { id: ID, a, b: a, distance: 5, level: false })),
    ).toMatch(/same/);
    expect(
      refusal(document, scaleUnderlay(document, { id: ID, a, b: { x: 2, y: 2 }, distance: 0, level: false })),
    ).toMatch(/distance/);
    expect(
      refusal(document, scaleUnderlay(document, { id: asId('x'), a, b: a, distance: 1, level: false })),
    ).toMatch(/no underlay/);
  });

  it('refuses a distance with which no file could hold it, in words about the distance', () => {
    const document = aDocument(anUnderlay());
    const points = { id: ID, a: { x: 1, y: 1 }, b: { x: 3000, y: 1 }, level: false };
    for (const distance of [1e-4, 1e11])
      expect(refusal(document, scaleUnderlay(document, { ...points, distance }))).toMatch(/check the unit/);
  });
});

describe('moving, adding and removing an underlay', () => {
  it('brings a clicked point to where the centre line meets the front edge', () => {
    const document = aDocument(anUnderlay({ x: 300, y: -400, turn: 30 }));
    const point = { x: 1234.5, y: 678 };
    const own = stageToUnderlay(underlayOf(document), point);
    const after = underlayOf(carriedOut(document, underlayToOrigin(document, { id: ID, point })));
    expect(underlayToStage(after, own)).toEqual({ x: expect.closeTo(0, 2), y: expect.closeTo(0, 2) });
    const moved = underlayOf(carriedOut(document, moveUnderlay(document, { id: ID, dx: 10, dy: -5 })));
    expect([moved.x, moved.y]).toEqual([310, -405]);
  });

  it('is a record like any other', () => {
    const document = aDocument();
    const { id: _, ...fields } = anUnderlay({ name: 'House plan' });
    const after = carriedOut(document, add(document, fields));
    carriedOut(after, remove(after, { ids: [ID] }));
  });
});
