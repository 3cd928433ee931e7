import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BODY_DEPTH, chairOutline, outlineOf } from '#model/catalogue/outlines.ts';
import { boundsOf, pointInPolygon, polygonArea } from '#model/geometry/polygon.ts';
import { isSimplePolygon } from '#model/geometry/simple-polygon.ts';
import type { PlacedRecord, Point } from '#model/document/records.ts';
import {
  aLamp,
  aLargeInstrument,
  anInstrumentStand,
  aPiano,
  aPlayer,
  aRiser,
  aSeat,
  aShape,
  aStand,
  aTable,
  SIDE,
} from '../../helpers/build.ts';

const RECORDS: readonly PlacedRecord[] = [
  aPlayer(),
  aStand(),
  aStand({ form: 'backToBack', sides: [SIDE, SIDE] }),
  anInstrumentStand(),
  aTable(),
  aSeat(),
  aSeat({ model: 'drum-throne' }),
  aPiano(),
  aPiano({ model: 'upright' }),
  aLargeInstrument(),
  aLargeInstrument({ model: 'timpani' }),
  aLamp(),
  aRiser(),
  aShape(),
];

const moved = (record: PlacedRecord, x: number, y: number, facing: number): PlacedRecord => ({
  ...record,
  x,
  y,
  facing,
});

const sizeOf = (outline: readonly Point[]): [number, number] => {
  const { minX, maxX, minY, maxY } = boundsOf(outline);
  return [maxX - minX, maxY - minY];
};

describe('outlineOf', () => {
  it.each(RECORDS.map((record) => [record.kind, record] as const))(
    '%s: a simple ring round its spot',
    (_, record) => {
      const outline = outlineOf(record);
      expect(isSimplePolygon(outline)).toBe(true);
      expect(polygonArea(outline)).toBeGreaterThan(1000);
      expect(pointInPolygon(record, outline)).toBe(true);
    },
  );

  it('keeps its area when the record is moved and turned', () => {
    const number = fc.double({ min: -9000, max: 9000, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...RECORDS), number, number, number, (record, x, y, facing) => {
        const outline = outlineOf(moved(record, x, y, facing));
        expect(polygonArea(outline) / polygonArea(outlineOf(record))).toBeCloseTo(1, 6);
        expect(pointInPolygon({ x, y }, outline)).toBe(true);
      }),
    );
  });

  it('lays a player’s shoulders across his facing', () => {
    const [width, depth] = sizeOf(outlineOf(aPlayer()));
    expect(depth).toBeCloseTo(BODY_DEPTH, 6);
    expect(width).toBeGreaterThan(400);
    const [turnedWidth, turnedDepth] = sizeOf(outlineOf(aPlayer({ facing: 90 })));
    expect([turnedWidth, turnedDepth]).toEqual([expect.closeTo(depth, 6), expect.closeTo(width, 6)]);
  });

  it('gives a chair to who sits, and none to who stands', () => {
    expect(chairOutline(aPlayer())).toBeNull();
    const chair = chairOutline(aPlayer({ chair: { model: 'orchestra-chair', height: 450 } }));
    expect(sizeOf(chair ?? [])).toEqual([expect.closeTo(460, 6), expect.closeTo(520, 6)]);
  });

  // Worked by hand: 510 x 340 at 65°; the foot's circle of 250 reaches further than the desk's depth of 143.69.
  it('joins the foot and the desk of a stand', () => {
    const [width, depth] = sizeOf(outlineOf(aStand({ x: 0, y: 0, facing: 0 })));
    expect(width).toBeCloseTo(510, 6);
    expect(depth).toBeCloseTo(500, 6);
  });

  // Two feet under desks whose middles lie 143.69 apart: 500 + 143.69.
  it('sets two feet under a back-to-back pair', () => {
    const pair = aStand({ x: 0, y: 0, facing: 0, form: 'backToBack', sides: [SIDE, SIDE] });
    expect(sizeOf(outlineOf(pair))[1]).toBeCloseTo(500 + 340 * Math.cos((65 * Math.PI) / 180), 6);
  });

  it('puts the bass end of a grand on its pianist’s left', () => {
    // Facing stage left, his left is upstage: the straight spine is the upstage side.
    const outline = outlineOf(aPiano({ x: 0, y: 0, facing: 90 }));
    const { maxX, maxY, minY } = boundsOf(outline);
    const tail = outline.filter((corner) => corner.x > maxX - 300);
    expect(Math.max(...tail.map(({ y }) => y))).toBeGreaterThan(maxY - 30);
    expect(Math.min(...tail.map(({ y }) => y))).toBeGreaterThan(minY + 400);
  });

  it('takes the usual size for a model it does not know', () => {
    for (const record of RECORDS) {
      if (!('model' in record)) continue;
      const outline = outlineOf({ ...record, model: 'not-in-the-catalogue' });
      expect(isSimplePolygon(outline), record.kind).toBe(true);
    }
  });
});
