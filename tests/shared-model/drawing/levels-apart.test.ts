import { describe, expect, it } from 'vitest';
import { smallConcertHall } from '#model/catalogue/houses/small-concert-hall.ts';
import { documentOf } from '#model/document/document.ts';
import { housePlaces } from '#model/document/seating.ts';
import { levelsApart } from '#model/drawing/plan.ts';
import { aConcert, aDocument, aSeatBlock, aSetup } from '../../helpers/build.ts';

const hall = documentOf([aConcert(), aSetup(), ...smallConcertHall.records()]);

describe('levelsApart', () => {
  it('draws a balcony behind the stalls it lies over, with every seat still there', () => {
    const drawn = housePlaces(levelsApart(hall));
    expect(drawn.map(({ id }) => id)).toEqual(housePlaces(hall).map(({ id }) => id));
    const rows = (record: string) => drawn.filter((place) => place.record === record).map(({ y }) => y);
    expect(Math.max(...rows('balcony'))).toBeLessThan(Math.min(...rows('stalls')) - 1000);
    expect(levelsApart(hall).records.get('balcony')?.name).toContain('above');
  });

  it('leaves the stalls and the platform alone', () => {
    for (const id of ['stalls', 'platform-1', 'place-1']) {
      expect(levelsApart(hall).records.get(id)).toBe(hall.records.get(id));
    }
  });

  it('leaves a house alone in which nothing lies over anything', () => {
    const flat = aDocument();
    expect(levelsApart(flat)).toBe(flat);
    const far = aDocument(aSeatBlock({ id: 'gallery', floor: 4000, y: -20_000 }));
    expect(levelsApart(far)).toBe(far);
  });

  it('sets several balconies behind each other', () => {
    const tiers = aDocument(
      aSeatBlock({ id: 'first', floor: 3500, y: -4000 }),
      aSeatBlock({ id: 'second', floor: 7000, y: -4500 }),
    );
    const drawn = housePlaces(levelsApart(tiers));
    const span = (record: string) => {
      const ys = drawn.filter((place) => place.record === record).map(({ y }) => y);
      return { front: Math.max(...ys), back: Math.min(...ys) };
    };
    expect(span('first').front).toBeLessThan(span('stalls').back);
    expect(span('second').front).toBeLessThan(span('first').back);
  });
});
