/** What holds of every model of the catalogue, and paper against its standards. */

import { describe, expect, it } from 'vitest';
import { instrumentStandModel, INSTRUMENT_STAND_MODELS } from '#model/catalogue/instrument-stands.ts';
import { instrumentModel, INSTRUMENT_MODELS } from '#model/catalogue/instruments.ts';
import { BODY_DEPTH } from '#model/catalogue/outlines.ts';
import { circle } from '#model/catalogue/shapes.ts';
import { LARGE_INSTRUMENT_MODELS } from '#model/catalogue/large-instruments.ts';
import { paperModel, PAPER_MODELS } from '#model/catalogue/paper.ts';
import { lidQuads, PIANO_MODELS } from '#model/catalogue/pianos.ts';
import { SEAT_MODELS } from '#model/catalogue/seats.ts';
import { STAND_MODELS } from '#model/catalogue/stands.ts';
import { TABLE_MODELS } from '#model/catalogue/tables.ts';
import { VENUE_MODELS } from '#model/catalogue/venues.ts';
import { boundsOf, polygonArea } from '#model/geometry/polygon.ts';
import { polygonsOverlap } from '#model/geometry/polygon-pairs.ts';
import { isSimplePolygon } from '#model/geometry/simple-polygon.ts';
import { isWellFormedId } from '#model/document/ids.ts';
import type { Model } from '#model/catalogue/sources.ts';

const LISTS: Readonly<Record<string, readonly Model[]>> = {
  instruments: INSTRUMENT_MODELS,
  'large instruments': LARGE_INSTRUMENT_MODELS,
  pianos: PIANO_MODELS,
  stands: STAND_MODELS,
  seats: SEAT_MODELS,
  tables: TABLE_MODELS,
  'instrument stands': INSTRUMENT_STAND_MODELS,
  paper: PAPER_MODELS,
  venues: VENUE_MODELS,
};

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

describe.each(Object.entries(LISTS))('%s', (_, models) => {
  it('have ids that are unique and well formed', () => {
    expect(new Set(models.map(({ id }) => id)).size).toBe(models.length);
    for (const { id } of models) expect(isWellFormedId(id), id).toBe(true);
  });

  it('have names that are unique', () => {
    expect(new Set(models.map(({ name }) => name)).size).toBe(models.length);
  });

  it('name a source, and only finite numbers', () => {
    for (const model of models) {
      expect(model.source.length, model.id).toBeGreaterThan(4);
      for (const source of Object.values(model.sourceOf ?? {})) expect(source.length).toBeGreaterThan(4);
      for (const number of numbersIn(model)) expect(Number.isFinite(number), model.id).toBe(true);
    }
  });
});

describe('what others count on', () => {
  it('has the models that documents in the tests name', () => {
    const ids = Object.values(LISTS).flatMap((models) => models.map(({ id }) => id));
    const wanted = [
      'clarinet',
      'orchestral',
      'clarinet-peg',
      'percussion-table',
      'orchestra-chair',
      'grand-210',
    ];
    expect(ids).toEqual(expect.arrayContaining([...wanted, 'marimba']));
  });

  it('has at least 25 carried instruments', () => {
    expect(INSTRUMENT_MODELS.length).toBeGreaterThanOrEqual(25);
  });

  it('finds a model by its id, and none by another', () => {
    for (const model of INSTRUMENT_MODELS) expect(instrumentModel(model.id)).toBe(model);
    expect(instrumentModel('no-such-thing')).toBeUndefined();
    expect(instrumentStandModel('constructor')).toBeUndefined();
  });

  it('makes instrument stands for instruments that exist', () => {
    for (const { id, holds } of INSTRUMENT_STAND_MODELS)
      for (const held of holds) expect(instrumentModel(held), `${held} on ${id}`).toBeDefined();
  });

  it('orders every range', () => {
    const ranges = [
      ...STAND_MODELS.flatMap(({ lip, tilt }) => [lip, tilt]),
      ...SEAT_MODELS.map(({ height }) => height),
    ];
    for (const { least, usual, most } of ranges) {
      expect(least).toBeLessThanOrEqual(usual);
      expect(usual).toBeLessThanOrEqual(most);
    }
  });
});

describe('paper', () => {
  const size = (id: string): [number, number] => {
    const { width, height } = paperModel(id) ?? { width: NaN, height: NaN };
    return [width, height];
  };

  // Source: ISO 216: A0 is 1 m², sides in the ratio 1 to root 2, each size half the one before, rounded down to mm.
  it.each([
    ['a3', 3],
    ['a4', 4],
    ['a5', 5],
  ])('%s follows from A0', (id, halvings) => {
    const long = 1000 * 2 ** (1 / 4 - halvings / 2);
    const [width, height] = size(id);
    expect(height).toBe(Math.floor(long + 0.2));
    expect(width).toBe(Math.floor(long / Math.SQRT2 + 0.2));
  });

  // Source: ISO 216: B4 is the geometric mean of A3 and A4, 250 x 353 mm.
  it('B4 lies between A3 and A4', () => {
    expect(size('b4')).toEqual([250, 353]);
    expect(Math.abs(Math.sqrt(297 * 210) - 250)).toBeLessThan(1);
  });

  // Source: Metropole Orkest library specification: B4 JIS 257 x 364 mm.
  it('B4 JIS is as printed by an orchestra library', () => expect(size('b4-jis')).toEqual([257, 364]));

  // Source: ANSI/ASME Y14.1 A and B; inches by definition of 25.4 mm.
  it('Letter and Tabloid are whole inches', () => {
    expect(size('letter').map((side) => side / 25.4)).toEqual([8.5, 11]);
    expect(size('tabloid').map((side) => side / 25.4)).toEqual([11, 17]);
  });
});

describe('floor instruments and pianos', () => {
  const models = [...LARGE_INSTRUMENT_MODELS, ...PIANO_MODELS];

  it.each(models.map((model) => [model.id, model] as const))(
    '%s has a simple outline of its size',
    (_, model) => {
      expect(isSimplePolygon(model.outline)).toBe(true);
      const bounds = boundsOf(model.outline);
      expect(bounds.maxX - bounds.minX).toBeCloseTo(model.width, 6);
      expect(bounds.maxY - bounds.minY).toBeCloseTo('depth' in model ? model.depth : model.length, 6);
    },
  );

  it.each(models.map((model) => [model.id, model] as const))('%s hides no more than it is', (_, model) => {
    const bounds = boundsOf(model.outline);
    for (const box of model.boxes) {
      expect(box.top).toBeGreaterThan(box.bottom);
      expect(box.top).toBeLessThanOrEqual(model.height + 1e-9);
      expect(box.x - box.width / 2).toBeGreaterThanOrEqual(bounds.minX - 1e-6);
      expect(box.x + box.width / 2).toBeLessThanOrEqual(bounds.maxX + 1e-6);
      expect(box.y - box.depth / 2).toBeGreaterThanOrEqual(bounds.minY - 1e-6);
      expect(box.y + box.depth / 2).toBeLessThanOrEqual(bounds.maxY + 1e-6);
    }
  });

  it.each(models.map((model) => [model.id, model] as const))(
    '%s leaves its player room on its +y side',
    (_, model) => {
      const body = circle(model.playerAt, BODY_DEPTH / 2);
      expect(polygonsOverlap(body, model.outline)).toBe(false);
      expect(model.playerAt.y).toBeGreaterThan(0);
    },
  );

  it('fills a grand with boxes within 4 % of its case', () => {
    for (const { form, outline, boxes } of PIANO_MODELS) {
      if (form !== 'grand') continue;
      const covered = boxes.reduce((sum, { width, depth }) => sum + width * depth, 0);
      expect(Math.abs(covered / polygonArea(outline) - 1)).toBeLessThan(0.04);
    }
  });

  it('opens a lid to the pianist’s right at the stated angle', () => {
    for (const model of PIANO_MODELS) {
      expect(lidQuads(model, 'closed')).toEqual([]);
      for (const quad of lidQuads(model, 'full')) {
        const [hinge, , , edge] = quad;
        const angle = Math.atan2(edge.z - hinge.z, hinge.x - edge.x) * (180 / Math.PI);
        expect(hinge.x).toBe(model.width / 2);
        expect(angle).toBeCloseTo(model.lidAngle.full, 9);
      }
    }
  });
});
