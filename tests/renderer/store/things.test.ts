import { add } from '#model/commands/add.ts';
import { applyDiff } from '#model/document/diff.ts';
import { platformOf } from '#model/document/document.ts';
import { isPlaced } from '#model/document/records.ts';
import { readDocument } from '#model/file-format/read.ts';
import { writeDocument } from '#model/file-format/write.ts';
import { describe, expect, it } from 'vitest';
import { found, SHELVES, THINGS, thingOf, type Thing } from '../../../renderer/store/things.ts';
import { newConcert } from '../../../renderer/store/new-concert.ts';
import { newStorage } from '../../../renderer/store/recipes.ts';
import { behindPlatform } from '../../../renderer/canvas/placing.ts';
import { VENUE_MODELS } from '#model/catalogue/venues.ts';
import { aDocument, SETUP } from '../../helpers/build.ts';

const place = (thing: Thing, withStand = true) => {
  const spot = { x: 500, y: 2000, setup: SETUP, facing: 0, units: 'metric' } as const;
  const outcome = thing.place(aDocument(), { spot, withStand });
  if (!outcome.ok) throw new Error(`${thing.id}: ${outcome.reason}`);
  return outcome;
};

describe('the store', () => {
  it('has each thing once, on a shelf that is shown', () => {
    expect(new Set(THINGS.map(({ id }) => id)).size).toBe(THINGS.length);
    for (const { shelf } of THINGS) expect(SHELVES).toContain(shelf);
  });

  it.each(THINGS.map((thing) => [thing.id, thing] as const))(
    'places %s so that the file can be read again',
    (_, thing) => {
      const outcome = place(thing);
      const document = applyDiff(aDocument(), outcome.diff);
      expect(outcome.select).toHaveLength(1);
      const selected = document.records.get(outcome.select?.[0] ?? '');
      expect(selected && (isPlaced(selected) || selected.kind === 'storage')).toBe(true);
      expect(readDocument(writeDocument(document)).ok).toBe(true);
    },
  );

  it('gives a player a stand to read from, or not', () => {
    const viola = thingOf('player-viola');
    if (!viola) throw new Error('no viola');
    const kinds = (withStand: boolean) =>
      [...place(viola, withStand).diff.values()].map(({ after }) => after?.kind);
    expect(kinds(true)).toEqual(['player', 'instrument', 'stand']);
    expect(kinds(false)).toEqual(['player', 'instrument']);
    const stand = [...place(viola).diff.values()]
      .map(({ after }) => after)
      .find((after) => after?.kind === 'stand');
    // The player looks at the house, so the page looks upstage, and stands between him and the house.
    expect(stand).toMatchObject({ x: 500, facing: 180, sides: [{ reader: 'player-1' }] });
    expect(stand && 'y' in stand && stand.y).toBeLessThan(2000);
  });

  it('finds things by several words, in any order', () => {
    expect(found('back viola')).toEqual([]);
    expect(found('STAND back').map(({ id }) => id)).toContain('orchestral-pair');
    expect(found('strings').map(({ id }) => id)).toEqual(
      expect.arrayContaining(['player-viola', 'player-cello']),
    );
    expect(found('').length).toBe(THINGS.length);
  });
});

describe('a storage place', () => {
  const storage = thingOf('storage');

  it('is found by what it is for, and stays for the whole concert', () => {
    expect(found('backstage')).toEqual([storage]);
    if (!storage) throw new Error('no storage place');
    const [added] = [...place(storage).diff.values()];
    expect(added?.after).toMatchObject({ kind: 'storage', x: 500, y: 2000, door: null });
    expect(added?.after && 'setup' in added.after).toBe(false);
  });

  it('goes behind the platform when nobody points, one beside the other', () => {
    let document = aDocument();
    const deepest = Math.max(...platformOf(document).outline.map(({ y }) => y));
    const spots = [1, 2, 3].map(() => {
      const spot = behindPlatform(document);
      const outcome = add(document, newStorage(spot, 'Storage'));
      if (!outcome.ok) throw new Error(outcome.reason);
      document = applyDiff(document, outcome.diff);
      return spot;
    });
    expect(new Set(spots.map(({ x }) => x)).size).toBe(3);
    for (const { y } of spots) expect(y).toBeGreaterThan(deepest);
  });
});

describe('a new concert', () => {
  it.each(VENUE_MODELS.map((venue) => [venue.id, venue] as const))(
    'in %s can be written and read',
    (_, venue) => {
      for (const units of ['metric', 'imperial'] as const) {
        expect(readDocument(writeDocument(newConcert(venue, units)))).toMatchObject({ ok: true });
      }
    },
  );
});
