import fc from 'fast-check';
import { Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { pageViews, type PageView } from '#model/checks/reading/page-view.ts';
import { MARGIN } from '#model/checks/reading/published.ts';
import { desksOf, type Rectangle3 } from '#model/document/desks.ts';
import { radians, type Vec3 } from '#model/geometry/frame.ts';
import { aStand, SIDE } from '../../../helpers/build.ts';

/** An A4 page about the origin, tilted by so much from square to an eye that looks along +y at its middle. */
function tiltedPage(tilt: number): Rectangle3 {
  const [y, z] = [(297 / 2) * Math.sin(radians(tilt)), (297 / 2) * Math.cos(radians(tilt))];
  return [
    { x: -105, y: -y, z: -z },
    { x: 105, y: -y, z: -z },
    { x: 105, y, z },
    { x: -105, y, z },
  ];
}

const only = (views: readonly PageView[]): PageView => {
  const [view] = views;
  if (!view) throw new Error('no page');
  return view;
};

describe('a page seen by an eye 700 mm before its middle', () => {
  const eye = { x: 0, y: -700, z: 0 };

  // Worked by hand: lines fill 210 - 2 x 19.05 by 297 - 2 x 19.05 mm about the foot of the eye's height.
  it('has its nearest line in the middle and its farthest in a corner', () => {
    const view = only(pageViews(tiltedPage(0), 1, eye));
    expect(view.nearest).toBeCloseTo(700, 9);
    expect(view.farthest).toBeCloseTo(Math.hypot(700, 85.95, 129.45), 9);
    expect(view.angle).toBeCloseTo(0, 5);
    expect(view.greatestAngle).toBeCloseTo((Math.acos(700 / view.farthest) * 180) / Math.PI, 9);
  });

  // Foreshortening by the cosine is plane geometry; the limit of 45 degrees is tested in reading.test.ts.
  it.each([0, 15, 30, 45, 60, 75])('looks cos %d° as tall when it is tilted by that', (tilt) => {
    const square = only(pageViews(tiltedPage(0), 1, eye)).scale.middle;
    const view = only(pageViews(tiltedPage(tilt), 1, eye));
    expect(view.angle).toBeCloseTo(tilt, 5);
    expect(view.scale.middle / square).toBeCloseTo(Math.cos(radians(tilt)), 12);
  });

  it('looks exactly half as tall at 60°', () => {
    const [square, steep] = [0, 60].map((tilt) => only(pageViews(tiltedPage(tilt), 1, eye)).scale.middle);
    expect((steep ?? NaN) / (square ?? NaN)).toBeCloseTo(0.5, 12);
  });

  it('cannot be read from behind', () => {
    const view = only(pageViews(tiltedPage(120), 1, eye));
    expect(view.angle).toBeCloseTo(120, 5);
    // Worked by hand: the eye is 700 cos 60° behind the plane, 700 sin 60° along it from the middle; the nearest line is
    // 129.45 mm from the middle, and from behind the nearest is the one seen most from behind.
    const nearest = Math.hypot(350, 700 * Math.sin(radians(60)) - 129.45);
    expect(view.nearest).toBeCloseTo(nearest, 9);
    expect(view.greatestAngle).toBeCloseTo((Math.acos(-350 / nearest) * 180) / Math.PI, 9);
    expect(view.scale).toEqual({ middle: 0, least: 0 });
  });

  it('is edge on when the eye lies in its plane', () => {
    expect(only(pageViews(tiltedPage(90), 1, eye)).angle).toBeCloseTo(90, 9);
  });
});

describe('any row of pages from anywhere', () => {
  const pages = fc.integer({ min: 1, max: 3 });
  const tilt = fc.double({ min: 0, max: 90, noNaN: true });
  const eyes = fc.record({
    x: fc.double({ min: -900, max: 900, noNaN: true }),
    y: fc.double({ min: -300, max: 1200, noNaN: true }),
    z: fc.double({ min: 700, max: 2000, noNaN: true }),
  });

  const vector = ({ x, y, z }: Vec3): Vector3 => new Vector3(x, y, z);

  /** Samples of what is printed on one page, as distances, angles and apparent heights that three.js gives. */
  function sampled(row: Rectangle3, count: number, page: number, eye: Vec3) {
    const [corner, right, , top] = row.map(vector) as [Vector3, Vector3, Vector3, Vector3];
    const [across, up] = [right.clone().sub(corner), top.clone().sub(corner)];
    const normal = across.clone().cross(up).normalize();
    const [width, height] = [across.length() / count, up.length()];
    const samples: { distance: number; angle: number; minutes: number }[] = [];
    const steps = 24;
    for (let i = 0; i <= steps; i++) {
      for (let j = 0; j <= steps; j++) {
        const a = page * width + MARGIN + ((width - 2 * MARGIN) * i) / steps;
        const b = MARGIN + ((height - 2 * MARGIN) * j) / steps;
        const at = corner
          .clone()
          .addScaledVector(across.clone().normalize(), a)
          .addScaledVector(up.clone().normalize(), b);
        const sight = vector(eye).sub(at);
        // A staff space of 2 mm up the page, as an angle between the two lines of sight to its ends.
        const half = up.clone().normalize();
        const minutes = sight.clone().add(half).angleTo(sight.clone().sub(half)) * ((180 * 60) / Math.PI);
        samples.push({ distance: sight.length(), angle: (sight.angleTo(normal) * 180) / Math.PI, minutes });
      }
    }
    return samples;
  }

  it('agrees with three.js on a grid of points of every page', () => {
    let seen = 0;
    fc.assert(
      fc.property(pages, tilt, eyes, (pagesAcross, stood, eye) => {
        const stand = aStand({
          x: 0,
          y: 0,
          facing: 180,
          lip: 800,
          tilt: stood,
          sides: [{ ...SIDE, pagesAcross }],
        });
        const [desk] = desksOf(stand);
        if (!desk?.paper) throw new Error('no paper');
        const row = desk.paper;
        pageViews(row, pagesAcross, eye).forEach((view, page) => {
          const samples = sampled(row, pagesAcross, page, eye);
          const [distances, angles] = [samples.map((s) => s.distance), samples.map((s) => s.angle)];
          // Corners are on the grid, the nearest point need not be: a step is at most 11 mm, half of it 6.
          expect(view.farthest).toBeCloseTo(Math.max(...distances), 6);
          expect(view.nearest).toBeLessThanOrEqual(Math.min(...distances) + 1e-6);
          expect(view.nearest).toBeGreaterThan(Math.min(...distances) - 9);
          expect(view.angle).toBeCloseTo(angles[(samples.length - 1) / 2] ?? NaN, 4);
          if (view.greatestAngle > 89) return;
          expect(view.greatestAngle).toBeCloseTo(Math.max(...angles), 4);
          const minutes = samples.map((s) => s.minutes);
          const least = 2 * view.scale.least * ((180 * 60) / Math.PI);
          expect(least).toBeLessThanOrEqual(Math.min(...minutes) * 1.0001);
          if (view.nearest < 100) return;
          expect(least / Math.min(...minutes)).toBeGreaterThan(0.97);
          const middle = 2 * view.scale.middle * ((180 * 60) / Math.PI);
          expect(middle / (minutes[(samples.length - 1) / 2] ?? NaN)).toBeCloseTo(1, 3);
          seen++;
        });
      }),
      { numRuns: 300 },
    );
    expect(seen).toBeGreaterThan(100);
  });
});
