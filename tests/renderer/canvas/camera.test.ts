import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  atRatio,
  capped,
  extentOf,
  fitted,
  panned,
  ratioOf,
  toScreen,
  toStage,
  visibleExtent,
  zoomedAt,
  type Camera,
} from '../../../renderer/canvas/camera.ts';

const view = { width: 800, height: 600 };
const spots = fc.record({
  x: fc.integer({ min: -20_000, max: 20_000 }),
  y: fc.integer({ min: -20_000, max: 20_000 }),
});
const cameras = fc.record({ centre: spots, scale: fc.double({ min: 0.01, max: 2, noNaN: true }) });

describe('camera', () => {
  it('draws the audience at the bottom and stage left on the right', () => {
    const camera: Camera = { centre: { x: 0, y: 0 }, scale: 0.1 };
    expect(toScreen(camera, view, { x: 1000, y: 0 })).toEqual({ x: 500, y: 300 });
    expect(toScreen(camera, view, { x: 0, y: 1000 })).toEqual({ x: 400, y: 200 });
  });

  it('undoes its own mapping', () => {
    fc.assert(
      fc.property(cameras, spots, (camera, spot) => {
        const back = toStage(camera, view, toScreen(camera, view, spot));
        expect(Math.hypot(back.x - spot.x, back.y - spot.y)).toBeLessThan(1e-6);
      }),
    );
  });

  it('keeps the spot under the pointer when it zooms', () => {
    fc.assert(
      fc.property(cameras, fc.double({ min: 0.2, max: 5, noNaN: true }), (camera, factor) => {
        const pixel = { x: 123, y: 456 };
        const before = toStage(camera, view, pixel);
        const after = toStage(zoomedAt(camera, view, pixel, factor), view, pixel);
        expect(Math.hypot(after.x - before.x, after.y - before.y)).toBeLessThan(1e-5);
      }),
    );
  });

  it('moves the picture with the hand when it pans', () => {
    const camera: Camera = { centre: { x: 50, y: 80 }, scale: 0.25 };
    const spot = { x: 700, y: -300 };
    const before = toScreen(camera, view, spot);
    const after = toScreen(panned(camera, { x: 30, y: -20 }), view, spot);
    expect(after.x - before.x).toBeCloseTo(30, 9);
    expect(after.y - before.y).toBeCloseTo(-20, 9);
  });

  it('fits an extent inside the margin', () => {
    const extent = { x: -4000, y: 0, width: 8000, height: 5000 };
    const camera = fitted(extent, view, { top: 40, bottom: 40, sides: 40 });
    const lowerLeft = toScreen(camera, view, { x: -4000, y: 0 });
    const upperRight = toScreen(camera, view, { x: 4000, y: 5000 });
    expect(lowerLeft.x).toBeCloseTo(40, 6);
    expect(upperRight.x).toBeCloseTo(760, 6);
    expect(upperRight.y).toBeGreaterThanOrEqual(40);
    expect(lowerLeft.y).toBeLessThanOrEqual(560);
  });

  it('leaves more room above than below when asked to', () => {
    const extent = { x: 0, y: 0, width: 100, height: 1000 };
    const camera = fitted(extent, view, { top: 150, bottom: 50, sides: 0 });
    expect(toScreen(camera, view, { x: 0, y: 1000 }).y).toBeCloseTo(150, 6);
    expect(toScreen(camera, view, { x: 0, y: 0 }).y).toBeCloseTo(550, 6);
  });

  it('takes no more than four tenths of a low view and three of a narrow one for margins', () => {
    const margins = { top: 106, bottom: 84, sides: 104 };
    expect(capped(margins, { width: 1000, height: 800 })).toEqual(margins);
    const low = capped(margins, { width: 1000, height: 200 });
    expect(low.top + low.bottom).toBeCloseTo(80, 9);
    expect(low.top / low.bottom).toBeCloseTo(106 / 84, 9);
    expect(low.sides).toBe(104);
    expect(capped(margins, { width: 300, height: 800 })).toEqual({ ...margins, sides: 45 });
  });

  it('shows a metre as 20 mm of screen at 1:50 on a screen of 96 dots to the inch', () => {
    const camera = atRatio({ centre: { x: 0, y: 0 }, scale: 1 }, 50);
    expect(1000 * camera.scale).toBeCloseTo((20 * 96) / 25.4, 9);
    expect(ratioOf(camera)).toBeCloseTo(50, 9);
  });

  it('measures extents, and has none of nothing', () => {
    expect(extentOf([])).toBeNull();
    expect(
      extentOf([
        { x: 1, y: 5 },
        { x: -2, y: 3 },
      ]),
    ).toEqual({ x: -2, y: 3, width: 3, height: 2 });
    expect(visibleExtent({ centre: { x: 0, y: 0 }, scale: 0.1 }, view)).toEqual({
      x: -4000,
      y: -3000,
      width: 8000,
      height: 6000,
    });
  });
});
