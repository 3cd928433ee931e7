import { describe, expect, it } from 'vitest';
import { VENUE_MODELS, type VenueModel } from '#model/catalogue/venues.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import { doorway, edgeOf } from '#model/document/openings.ts';
import { platformOf, allOf } from '#model/document/document.ts';
import { housePlaces } from '#model/document/seating.ts';
import { isWellFormedId } from '#model/document/ids.ts';
import { facingVector } from '#model/geometry/frame.ts';
import { distancePointToSegment } from '#model/geometry/segments.ts';
import { pointInPolygon, polygonArea, signedArea } from '#model/geometry/polygon.ts';
import { isSimplePolygon } from '#model/geometry/simple-polygon.ts';
import { aConcert, aSetup } from '../../helpers/build.ts';

const houseOf = (venue: VenueModel): Document => documentOf([aConcert(), aSetup(), ...venue.records()]);

describe('venues', () => {
  it('are at least six', () => expect(VENUE_MODELS.length).toBeGreaterThanOrEqual(6));

  // Source: US Army DG 1110-3-120 (UFC 4-740-08AN) ch. 3: recital platform 400-600 ft², 24-30 in high.
  it('has a recital room by the published guide', () => {
    const venue = VENUE_MODELS.find(({ id }) => id === 'recital-room');
    const platform = platformOf(houseOf(venue ?? fail('no recital room')));
    const squareFeet = polygonArea(platform.outline) / 304.8 ** 2;
    expect(squareFeet).toBeGreaterThanOrEqual(400);
    expect(squareFeet).toBeLessThanOrEqual(600);
    expect(platform.height / 25.4).toBeGreaterThanOrEqual(24);
    expect(platform.height / 25.4).toBeLessThanOrEqual(30);
    expect(venue?.seats).toBe(180);
  });
});

describe.each(VENUE_MODELS.map((venue) => [venue.id, venue] as const))('%s', (_, venue) => {
  const house = houseOf(venue);
  const platform = platformOf(house);
  const places = housePlaces(house);

  it('has one platform, an exit, and ids of their own', () => {
    const records = venue.records();
    expect(records.filter(({ kind }) => kind === 'platform')).toHaveLength(1);
    expect(new Set(records.map(({ id }) => id)).size).toBe(records.length);
    for (const { id } of records) expect(isWellFormedId(id)).toBe(true);
    expect(allOf(house, 'door').some((door) => door.exit)).toBe(true);
  });

  it('has a simple platform, anticlockwise, with its front edge on the line of origin', () => {
    expect(isSimplePolygon(platform.outline)).toBe(true);
    expect(signedArea(platform.outline)).toBeGreaterThan(0);
    const front = edgeOf(platform, 0);
    expect([front.a.y, front.b.y]).toEqual([0, 0]);
    for (const edge of platform.openEdges) expect(edge).toBeLessThan(platform.outline.length);
  });

  it('has doors inside their edges', () => {
    for (const door of allOf(house, 'door')) {
      const { a, b } = edgeOf(platform, door.edge);
      expect(door.offset).toBeGreaterThanOrEqual(0);
      expect(door.offset + door.width).toBeLessThanOrEqual(Math.hypot(b.x - a.x, b.y - a.y));
      const way = doorway(platform, door);
      expect(distancePointToSegment(way.a, a, b)).toBeLessThan(1e-6);
    }
  });

  it('seats as many as it says', () => {
    const blocks = new Set<string>(allOf(house, 'seatBlock').map(({ id }) => id));
    expect(places.filter(({ record }) => blocks.has(record))).toHaveLength(venue.seats);
    expect(venue.summary).toContain(String(venue.seats));
  });

  it('has every place off the platform, looking at it, and nobody in another’s lap', () => {
    for (const place of places) {
      expect(pointInPolygon(place, platform.outline), place.label).toBe(false);
      const look = facingVector(place.facing);
      const middle = { x: 0 - place.x, y: 2000 - place.y };
      expect(look.x * middle.x + look.y * middle.y, place.label).toBeGreaterThan(0);
    }
    for (const [index, place] of places.entries()) {
      const close = places
        .slice(index + 1)
        .filter((other) => Math.hypot(other.x - place.x, other.y - place.y) < 440);
      expect(
        close.filter((other) => Math.abs(other.floorZ - place.floorZ) < 1500),
        place.label,
      ).toEqual([]);
    }
  });

  it('has nobody inside a column', () => {
    for (const shape of allOf(house, 'shape')) {
      const ring = shape.outline.map(({ x, y }) => ({ x: x + shape.x, y: y + shape.y }));
      for (const place of places) expect(pointInPolygon(place, ring)).toBe(false);
    }
  });
});

function fail(message: string): never {
  throw new Error(message);
}
