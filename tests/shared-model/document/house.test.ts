import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { floorHeightAt } from '#model/document/levels.ts';
import { doorway, edgeOf, openEdgesOf } from '#model/document/openings.ts';
import { housePlaces, rowName, seatsInRow, type HousePlace } from '#model/document/seating.ts';
import { aDocument, aDoor, aPlace, aPlatform, aRiser, aSeatBlock, SETUP } from '../../helpers/build.ts';

const placesOf = (fields: Parameters<typeof aSeatBlock>[0]): HousePlace[] =>
  housePlaces(aDocument(aSeatBlock({ id: 'stalls', ...fields })));

const distance = (a: HousePlace, b: HousePlace): number => Math.hypot(a.x - b.x, a.y - b.y);

describe('straight rows', () => {
  it('lie about the middle of the front row, the first seat on the sitter’s left', () => {
    const places = placesOf({ rows: 2, seatsPerRow: 3, seatPitch: 500, rowDepth: 900, x: 100, y: -3000 });
    // He looks upstage, so his left is stage right: -x.
    expect(places.map(({ label, x, y }) => `${label}: ${x.toFixed(6)} ${y.toFixed(6)}`)).toEqual([
      'A 1: -400.000000 -3000.000000',
      'A 2: 100.000000 -3000.000000',
      'A 3: 600.000000 -3000.000000',
      'B 1: -400.000000 -3900.000000',
      'B 2: 100.000000 -3900.000000',
      'B 3: 600.000000 -3900.000000',
    ]);
  });

  it('rise by their riser above the house floor, eyes above that', () => {
    const places = placesOf({ rows: 3, seatsPerRow: 1, riser: 150, floor: 2000, eyeHeight: 1180 });
    expect(places.map(({ floorZ }) => floorZ)).toEqual([1400, 1550, 1700]);
    expect(places.map(({ eyeZ }) => eyeZ)).toEqual([2580, 2730, 2880]);
  });

  it('part at an aisle and stay centred', () => {
    const places = placesOf({
      rows: 1,
      seatsPerRow: 4,
      seatPitch: 500,
      aisles: [{ afterSeat: 2, width: 1000 }],
    });
    expect(places.map(({ x }) => x)).toEqual([-1250, -750, 750, 1250].map((x) => expect.closeTo(x, 9)));
  });

  it('shift every second row by half a seat when staggered', () => {
    const places = placesOf({ rows: 3, seatsPerRow: 1, seatPitch: 500, staggered: true });
    expect(places.map(({ x }) => x)).toEqual([0, 250, 0].map((x) => expect.closeTo(x, 9)));
  });

  it('may differ in number, down to none', () => {
    const block = aSeatBlock({ rows: 3, seatsPerRow: [2, 0, 1] });
    expect([0, 1, 2, 3].map((row) => seatsInRow(block, row))).toEqual([2, 0, 1, 0]);
    expect(placesOf(block).map(({ id }) => id)).toEqual(['stalls/A-1', 'stalls/A-2', 'stalls/C-1']);
  });
});

describe('curved rows', () => {
  const curved = { rows: 3, seatsPerRow: 9, seatPitch: 520, rowDepth: 900, curveRadius: 8000 };
  // The centre of the circle lies before the middle of the front row, 8 m towards the platform.
  const centre = { x: 0, y: -2500 + 8000 };

  it('are at their radius, look at the centre, and are a seat apart along the arc', () => {
    const places = placesOf(curved);
    for (const { x, y, row, facing } of places) {
      const radius = 8000 + row * 900;
      expect(Math.hypot(x - centre.x, y - centre.y)).toBeCloseTo(radius, 6);
      expect(Math.atan2(centre.x - x, y - centre.y)).toBeCloseTo(
        (facing * Math.PI) / 180 - (facing > 180 ? 2 * Math.PI : 0),
        9,
      );
    }
    for (const [index, place] of places.slice(1).entries()) {
      const before = places[index];
      if (!before || before.row !== place.row) continue;
      const radius = 8000 + place.row * 900;
      expect(distance(before, place)).toBeCloseTo(2 * radius * Math.sin(520 / radius / 2), 6);
    }
  });

  it('come to straight ones as the radius grows', () => {
    const [straight, nearly] = [
      placesOf({ ...curved, curveRadius: 0 }),
      placesOf({ ...curved, curveRadius: 1e6 }),
    ];
    for (const [index, place] of straight.entries()) {
      const other = nearly[index];
      expect(other && distance(place, other)).toBeLessThan(5);
      expect(other?.id).toBe(place.id);
    }
  });
});

describe('a seat block', () => {
  const anyBlock = fc.record({
    rows: fc.integer({ min: 1, max: 6 }),
    seatsPerRow: fc.integer({ min: 0, max: 12 }),
    staggered: fc.boolean(),
    curveRadius: fc.constantFrom(0, 6000),
    riser: fc.constantFrom(0, 120),
  });

  it('turns as a whole with its facing', () => {
    fc.assert(
      fc.property(anyBlock, fc.integer({ min: -180, max: 180 }), (fields, turn) => {
        const straight = placesOf({ ...fields, x: 0, y: 0, facing: 180 });
        const turned = placesOf({ ...fields, x: 0, y: 0, facing: 180 + turn });
        const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
        expect(turned).toHaveLength(fields.rows * fields.seatsPerRow);
        for (const [index, { x, y }] of straight.entries()) {
          expect(turned[index]?.x).toBeCloseTo(c * x - s * y, 6);
          expect(turned[index]?.y).toBeCloseTo(s * x + c * y, 6);
        }
      }),
    );
  });

  it('gives every seat an id of its own', () => {
    fc.assert(
      fc.property(anyBlock, (fields) => {
        const ids = placesOf(fields).map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
      }),
    );
  });
});

describe('row names', () => {
  it.each([
    ['A', 0, 'A'],
    ['A', 25, 'Z'],
    ['A', 26, 'AA'],
    ['A', 27, 'AB'],
    ['A', 701, 'ZZ'],
    ['A', 702, 'AAA'],
    ['c', 1, 'D'],
    ['Z', 1, 'AA'],
    ['AA', 1, 'AB'],
    ['1', 9, '10'],
    ['12', 3, '15'],
  ])('%s and %d rows on is %s', (first, row, name) => expect(rowName(first, row)).toBe(name));
});

describe('single places', () => {
  it('stand on the house floor or above it', () => {
    const place = housePlaces(aDocument(aPlace({ name: '', floor: 3000, eyeHeight: 1700 }))).at(-1);
    expect(place).toMatchObject({ id: 'place-1', label: 'place-1', floorZ: 2400, eyeZ: 4100 });
  });
});

describe('edges and doors', () => {
  it('close the ring and lie along their edge', () => {
    const platform = aPlatform({ openEdges: [0, 3] });
    expect(edgeOf(platform, 3)).toEqual({ a: { x: -4000, y: 5000 }, b: { x: -4000, y: 0 } });
    expect(openEdgesOf(platform)).toEqual([edgeOf(platform, 0), edgeOf(platform, 3)]);
    expect(doorway(platform, aDoor({ edge: 3, offset: 1000, width: 900 }))).toEqual({
      a: { x: -4000, y: 4000 },
      b: { x: -4000, y: 3100 },
    });
  });
});

describe('levels', () => {
  it('are those of the highest riser under the point, turned as it is', () => {
    const document = aDocument(
      aRiser({ x: 0, y: 3000, width: 2000, depth: 1000, height: 200 }),
      aRiser({ id: 'riser-2', x: 0, y: 3000, width: 2000, depth: 1000, height: 400, facing: 90 }),
    );
    const at = (x: number, y: number): number => floorHeightAt(document, SETUP, { x, y });
    expect([at(0, 3000), at(900, 3000), at(0, 3900), at(900, 3900), at(1100, 3000)]).toEqual([
      400, 200, 400, 0, 0,
    ]);
  });
});
