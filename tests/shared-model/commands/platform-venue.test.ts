import { describe, expect, it } from 'vitest';
import { plainHouse } from '#model/catalogue/houses/plain-house.ts';
import { VENUE_MODELS, venueModel } from '#model/catalogue/venues.ts';
import { insertCorner, moveCorners, removeCorner } from '#model/commands/platform-outline.ts';
import { replaceHouse, replaceVenue } from '#model/commands/replace-venue.ts';
import { allOf, platformOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import { housePlaces } from '#model/document/seating.ts';
import { boundsOf } from '#model/geometry/polygon.ts';
import { doorway } from '#model/document/openings.ts';
import type { Point } from '#model/document/records.ts';
import {
  aDoor,
  aDocument,
  aGroup,
  aPlatform,
  aShape,
  aStand,
  aStorage,
  recordOf,
} from '../../helpers/build.ts';
import { documentOfEveryKind } from '../document/every-kind.ts';
import { frozen } from '../document/freeze.ts';
import { carriedOut, refusal } from './check-laws.ts';

// 8 by 5 m: edge 0 is the front edge and open, the door lies 200 to 1200 mm along edge 2, the back wall.
const plain = (): Document => frozen(aDocument());

const doorAt = (document: Document, id = 'door-1'): readonly [Point, Point] => {
  const { a, b } = doorway(platformOf(document), recordOf(document, id, 'door'));
  return [a, b];
};

describe('moving corners', () => {
  it('moves an edge with its door', () => {
    const document = plain();
    const outcome = moveCorners(document, {
      moves: [
        { corner: 2, x: 4000, y: 6000 },
        { corner: 3, x: -4000, y: 6000 },
      ],
    });
    const after = carriedOut(document, outcome);
    expect(platformOf(after).outline[2]).toEqual({ x: 4000, y: 6000 });
    expect(doorAt(after)).toEqual([
      { x: 3800, y: 6000 },
      { x: 2800, y: 6000 },
    ]);
    expect(outcome).toMatchObject({ label: 'move 2 corners of the platform' });
  });

  it('leaves a door at its spot when the wall grows at the end it is measured from', () => {
    const document = plain();
    const after = carriedOut(document, moveCorners(document, { moves: [{ corner: 2, x: 5000, y: 5000 }] }));
    expect(doorAt(after)).toEqual(doorAt(document));
  });

  it('pushes a door along when its wall shrinks, and refuses when it has no room', () => {
    const document = plain();
    const after = carriedOut(document, moveCorners(document, { moves: [{ corner: 2, x: 3000, y: 5000 }] }));
    expect(doorAt(after)[0]).toEqual({ x: 3000, y: 5000 });
    const tooShort = moveCorners(document, { moves: [{ corner: 2, x: -3500, y: 5000 }] });
    expect(refusal(document, tooShort)).toMatch(/^door 1, width: the door would reach 1000 mm along edge 3/);
  });

  it('refuses an outline that crosses itself, and a corner that is not there', () => {
    const document = plain();
    expect(refusal(document, moveCorners(document, { moves: [{ corner: 2, x: -5000, y: 2000 }] }))).toMatch(
      /outline crosses or touches itself/,
    );
    expect(refusal(document, moveCorners(document, { moves: [{ corner: 4, x: 0, y: 0 }] }))).toBe(
      'The platform has no corner 4.',
    );
  });
});

describe('adding a corner', () => {
  it('divides an open edge into two open ones and renumbers the rest', () => {
    const document = plain();
    const after = carriedOut(document, insertCorner(document, { edge: 0, x: 0, y: -400 }));
    expect(platformOf(after).openEdges).toEqual([0, 1]);
    expect(platformOf(after).outline).toHaveLength(5);
    expect(recordOf(after, 'door-1', 'door').edge).toBe(3);
    expect(doorAt(after)).toEqual(doorAt(document));
  });

  it('leaves the edges behind it as open as they were', () => {
    const document = frozen(aDocument(aPlatform({ openEdges: [3, 1] })));
    const after = carriedOut(document, insertCorner(document, { edge: 2, x: 0, y: 5000 }));
    expect(platformOf(after).openEdges).toEqual([1, 4]);
  });

  it('leaves doors on either side of it where they are', () => {
    const document = frozen(aDocument(aDoor({ id: asId('door-2'), offset: 6000 })));
    const after = carriedOut(document, insertCorner(document, { edge: 2, x: 0, y: 5000 }));
    expect(allOf(after, 'door').map(({ edge }) => edge)).toEqual([2, 3]);
    for (const id of ['door-1', 'door-2']) expect(doorAt(after, id)).toEqual(doorAt(document, id));
  });

  it('can be in the closing edge', () => {
    const document = plain();
    const after = carriedOut(document, insertCorner(document, { edge: 3, x: -4500, y: 2500 }));
    expect(platformOf(after).outline[4]).toEqual({ x: -4500, y: 2500 });
  });

  it('refuses a door in the way and an edge that is not there', () => {
    const document = plain();
    expect(refusal(document, insertCorner(document, { edge: 2, x: 3000, y: 5000 }))).toBe(
      'door 1 is where the new corner would be; move it first.',
    );
    expect(refusal(document, insertCorner(document, { edge: 9, x: 0, y: 0 }))).toBe(
      'The platform has no edge 9.',
    );
  });
});

describe('removing a corner', () => {
  it('undoes the adding of it, whichever edge was divided', () => {
    const document = plain();
    const { outline } = platformOf(document);
    for (const [edge, corner] of outline.entries()) {
      const next = outline[(edge + 1) % 4] ?? corner;
      const middle = { x: (corner.x + next.x) / 2, y: (corner.y + next.y) / 2 };
      const divided = carriedOut(document, insertCorner(document, { edge, ...middle }));
      expect(carriedOut(divided, removeCorner(divided, { corner: edge + 1 })), `edge ${edge}`).toEqual(
        document,
      );
    }
  });

  it('joins the last and the first edge when the first corner goes', () => {
    const document = frozen(
      aDocument(
        aPlatform({
          outline: [
            { x: 0, y: 0 },
            { x: 4000, y: 0 },
            { x: 4000, y: 5000 },
            { x: -4000, y: 5000 },
            { x: -4000, y: 0 },
          ],
        }),
      ),
    );
    const after = carriedOut(document, removeCorner(document, { corner: 0 }));
    expect(platformOf(after).openEdges).toEqual([3]);
    expect(recordOf(after, 'door-1', 'door').edge).toBe(1);
    expect(doorAt(after)).toEqual(doorAt(document));
  });

  it('refuses to go below a triangle', () => {
    const document = frozen(
      aDocument(
        aPlatform({
          outline: [
            { x: -4000, y: 0 },
            { x: 4000, y: 0 },
            { x: 0, y: 5000 },
          ],
        }),
      ),
    );
    expect(refusal(document, removeCorner(document, { corner: 1 }))).toMatch(/at least three corners/);
  });
});

describe('replacing the venue', () => {
  it.each(VENUE_MODELS.map(({ id, name }) => ({ id, name })))(
    'puts the concert into $name',
    ({ id, name }) => {
      const document = frozen(documentOfEveryKind());
      const after = carriedOut(document, replaceVenue(document, { venue: id }));
      expect(allOf(after, 'concert')[0]?.venue).toBe(name);
      expect(allOf(after, 'stand')).toEqual(allOf(document, 'stand'));
      const blocks = venueModel(id)
        ?.records()
        .filter(({ kind }) => kind === 'seatBlock');
      expect(new Set(allOf(after, 'seatBlock'))).toEqual(new Set(blocks));
      const again = carriedOut(after, replaceVenue(after, { venue: id }));
      expect(again).toEqual(after);
    },
  );

  it('takes other ids where its own are taken, and gives none twice', () => {
    const document = frozen(aDocument(aStand({ id: asId('door-2') }), aDoor({ id: asId('door-1') })));
    for (const { id, records } of VENUE_MODELS) {
      const after = carriedOut(document, replaceVenue(document, { venue: id }));
      const doors = records().filter(({ kind }) => kind === 'door');
      expect(allOf(after, 'door')).toHaveLength(doors.length);
      expect(after.records.get('door-2')?.kind).toBe('stand');
    }
  });

  it.each([
    { width: 8000, depth: 5000, height: 600, rows: 8, seatsPerRow: 12 },
    { width: 900, depth: 700, height: 0, rows: 0, seatsPerRow: 0 },
  ])('puts the concert into a house from five numbers: $width by $depth', (numbers) => {
    const document = frozen(aDocument(aStand()));
    const house = plainHouse(numbers);
    const after = carriedOut(document, replaceHouse(document, { house }));
    const { minX, maxX, minY, maxY } = boundsOf(platformOf(after).outline);
    expect([maxX - minX, maxY - minY, platformOf(after).height]).toEqual([
      numbers.width,
      numbers.depth,
      numbers.height,
    ]);
    expect(housePlaces(after)).toHaveLength(numbers.rows * numbers.seatsPerRow);
    expect(allOf(after, 'door').map(({ stepFree }) => stepFree)).toEqual([numbers.height === 0]);
    // Who falls off is hurt: a drop is open until somebody says otherwise.
    expect(platformOf(after).openEdges.length > 0).toBe(numbers.height > 0);
  });

  it('refuses a house that no file could hold', () => {
    const document = aDocument();
    const numbers = { width: 8000, depth: 5000, height: 600, rows: 8, seatsPerRow: 12.5 };
    const house = plainHouse(numbers);
    expect(refusal(document, replaceHouse(document, { house }))).toMatch(/whole number/);
    const flat = plainHouse({ ...numbers, seatsPerRow: 12, depth: 0 });
    expect(refusal(document, replaceHouse(document, { house: flat }))).toMatch(/outline/);
  });

  it('takes what it removes out of its group, and leaves the storage with any door', () => {
    const column = aShape({ setup: null });
    const group = aGroup({ setup: null, members: [column.id], locked: true });
    const document = frozen(aDocument(column, group, aDoor(), aStorage({ door: asId('door-1') })));
    const after = carriedOut(document, replaceVenue(document, { venue: 'studio' }));
    expect(allOf(after, 'group')).toEqual([]);
    expect(recordOf(after, 'storage-1', 'storage').door).toBeNull();
  });

  it('keeps what the setups brought along and removes what belongs to the building', () => {
    const document = frozen(
      aDocument(
        aShape({ id: asId('wall'), setup: null }),
        aShape({ id: asId('case'), setup: null, fixed: false }),
      ),
    );
    const after = carriedOut(document, replaceVenue(document, { venue: 'studio' }));
    expect(after.records.has('wall')).toBe(false);
    expect(after.records.has('case')).toBe(true);
  });

  it('refuses a venue that the catalogue does not have', () => {
    expect(refusal(plain(), replaceVenue(plain(), { venue: 'moon' }))).toBe(
      'The catalogue has no venue "moon".',
    );
  });
});
