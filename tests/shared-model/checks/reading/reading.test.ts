import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eyesOf } from '#model/checks/reading/eyes.ts';
import { readingFindings } from '#model/checks/reading/findings.ts';
import { readingResults, type ReadingResult } from '#model/checks/reading/reading.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord, Player, Stand } from '#model/document/records.ts';
import { aDocument, aPlayer, aRiser, aSetup, aStand, PERSON, SETUP, SIDE } from '../../../helpers/build.ts';
import { inMirror, moved, scenes, shiftedBy, turnedBy } from './scenes.ts';

const side = { ...SIDE, reader: asId<'player'>('player-1') };
const results = (...records: AnyRecord[]) => readingResults(aDocument(...records), SETUP);
const find = (...records: AnyRecord[]) => readingFindings(aDocument(...records), SETUP);

const only = (found: readonly ReadingResult[]): ReadingResult => {
  const [result] = found;
  if (!result || found.length > 1) throw new Error(`${found.length} results`);
  return result;
};

/** A player at (0, 2000) whose eyes are at this height and who looks at the house. */
const withEyesAt = (eyeHeight: number, fields: Partial<Player> = {}): Player =>
  aPlayer({ ...fields, id: 'player-1', person: { ...PERSON, measured: { ...PERSON.measured, eyeHeight } } });

/** Upright pages over (0, 1300), 700 mm before that player, their middle at a height of 1148.5 mm. */
const upright = (fields: Partial<Stand> = {}): Stand =>
  aStand({ y: 1300, lip: 1000, tilt: 90, sides: [{ ...side, pagesAcross: 1 }], ...fields, id: 'stand-1' });
const MIDDLE = 1000 + 297 / 2;

describe('a page before a reader', () => {
  // Worked by hand: 700 mm square before the middle; lines within 85.95 mm to each side and 129.45 mm up and down.
  it('is as far, as steep and as wide as the drawing says', () => {
    const result = only(results(withEyesAt(MIDDLE), upright()));
    expect(result).toMatchObject({ player: 'player-1', stand: 'stand-1', side: 0, turn: 'glance' });
    expect(result.nearest).toBeCloseTo(700, 9);
    expect(result.farthest).toBeCloseTo(Math.hypot(700, 85.95, 129.45), 9);
    expect(result.angle).toBeCloseTo(0, 5);
    expect(result.aside).toBeCloseTo((Math.atan(85.95 / 700) * 180) / Math.PI, 9);
    expect(result.sweep).toBeCloseTo(2 * result.aside, 9);
    expect(result.spaceMinutes).toBeNull();
  });

  // Worked by hand: three pages of 210 mm end their lines 315 - 19.05 mm from the middle: 22.9° at 700 mm.
  it('in a row of three turns the eyes', () => {
    const row = upright({ sides: [{ ...side, pagesAcross: 3 }] });
    const result = only(results(withEyesAt(MIDDLE), row));
    expect(result.pages).toHaveLength(3);
    expect(result.turn).toBe('eyes');
    expect(result.aside).toBeCloseTo((Math.atan((315 - 19.05) / 700) * 180) / Math.PI, 9);
  });

  // Staff 7.0 mm at 700 mm: its space of 1.75 mm appears under 8.59 minutes of arc.
  it('shows a staff space under the published angle', () => {
    const printed = upright({ sides: [{ ...side, pagesAcross: 1, staffSize: 7 }] });
    const { spaceMinutes } = only(results(withEyesAt(MIDDLE), printed));
    expect(spaceMinutes?.middle).toBeCloseTo(8.594, 3);
    expect(spaceMinutes?.least).toBeLessThan(8.594);
    expect(spaceMinutes?.least).toBeGreaterThan(8);
  });

  // 16 minutes of arc at 700 mm are 3.258 mm; here the farthest line is a little farther.
  it('names the height that lettering needs', () => {
    const { lettering, farthest } = only(results(withEyesAt(MIDDLE), upright()));
    expect(lettering).toBeCloseTo((3.258 * farthest) / 700, 2);
  });

  it('stands higher with its stand on a riser, and so do the eyes of who is on it', () => {
    const riser = aRiser({ y: 1650, depth: 2000, height: 300 });
    const [low, high] = [
      only(results(withEyesAt(MIDDLE), upright())),
      only(results(withEyesAt(MIDDLE), upright(), riser)),
    ];
    expect(high.eye.z - low.eye.z).toBeCloseTo(300, 9);
    expect(high.nearest).toBeCloseTo(low.nearest, 9);
  });
});

describe('who reads', () => {
  it('is one result a side with pages and a reader who is there', () => {
    const other = aSetup({ id: 'setup-2', order: 2 });
    const elsewhere = aPlayer({ id: 'player-9', setup: asId<'setup'>('setup-2') });
    const sides = {
      nobody: { ...SIDE, reader: null },
      noPages: { ...side, pagesAcross: 0 },
      elsewhere: { ...SIDE, reader: asId<'player'>('player-9') },
    };
    for (const unread of Object.values(sides)) {
      expect(results(aPlayer(), other, elsewhere, aStand({ sides: [unread] }))).toEqual([]);
    }
    const pair = aStand({
      form: 'backToBack',
      sides: [side, { ...SIDE, reader: asId<'player'>('player-2') }],
    });
    const found = results(aPlayer({ y: 2900 }), aPlayer({ id: 'player-2', y: 1100 }), pair);
    expect(found.map((result) => [result.player, result.side])).toEqual([
      ['player-1', 0],
      ['player-2', 1],
    ]);
  });

  it('is the end who sees worse when anyone may play', () => {
    const anyone = aPlayer({ person: { ...PERSON, size: { by: 'anyone' } } });
    const eyes = eyesOf(aDocument(anyone), SETUP, anyone);
    expect(eyes.map(({ end }) => end)).toEqual(['small', 'tall']);
    // Pages below the eyes of both are farther from the tall one, pages above from the small one.
    expect(only(results(anyone, upright({ lip: 650 }))).end).toBe('tall');
    expect(only(results(anyone, upright({ lip: 1700 }))).end).toBe('small');
    for (const lip of [650, 1000, 1350, 1700]) {
      const worse = only(results(anyone, upright({ lip })));
      for (const { z } of eyes) {
        const one = only(results(withEyesAt(z), upright({ lip })));
        expect(worse.pages[0]?.scale.least).toBeLessThanOrEqual((one.pages[0]?.scale.least ?? NaN) + 1e-12);
      }
    }
  });
});

describe('reading.angle', () => {
  const steep = (angle: number) => withEyesAt(MIDDLE + 700 * Math.tan((angle * Math.PI) / 180));

  // Source of the limit: NUREG-0700 rev 3, 11.3.1, citing MIL-STD-1472G: never less than 45° to the line of sight.
  it('flags a page whose middle is over 45° off square', () => {
    expect(only(results(steep(44.9), upright())).angle).toBeCloseTo(44.9, 9);
    const [found] = find(steep(45.1), upright());
    expect(found).toMatchObject({
      code: 'reading.angle',
      severity: 'caution',
      required: 45,
      unit: 'degrees',
    });
    expect(found?.measured).toBeCloseTo(45.1, 9);
    expect(found?.subjects).toEqual(['player-1', 'stand-1']);
  });

  it('only notes outer lines that are', () => {
    expect(find(steep(44.9), upright())).toMatchObject([{ code: 'reading.angle', severity: 'note' }]);
    expect(find(steep(30), upright())).toEqual([]);
  });

  it('names a tilt that clears the outer lines too', () => {
    const [found] = find(steep(44.9), upright());
    expect(found?.detail).toMatchObject({ change: 'tilt' });
    const tilted = only(results(steep(44.9), upright({ tilt: Number(found?.detail['to']) })));
    expect(tilted.greatestAngle).toBeCloseTo(Number(found?.detail['after']), 9);
    expect(tilted.greatestAngle).toBeLessThanOrEqual(45);
  });

  it('fails a page seen from behind', () => {
    const behind = upright({ facing: 0 });
    expect(find(withEyesAt(MIDDLE), behind)).toMatchObject([{ code: 'reading.angle', severity: 'fail' }]);
  });

  it('names the nearest tilt that clears it, and it does', () => {
    const [found] = find(steep(60), upright());
    expect(found?.detail).toMatchObject({ change: 'tilt' });
    const tilt = Number(found?.detail['to']);
    const angleAt = (trial: number) => only(results(steep(60), upright({ tilt: trial }))).angle;
    expect(angleAt(tilt)).toBeCloseTo(Number(found?.detail['after']), 9);
    expect(angleAt(tilt)).toBeLessThanOrEqual(45);
    expect(angleAt(tilt + 1)).toBeGreaterThan(45);
  });

  it('names a facing when no tilt clears it, and it does', () => {
    const [found] = find(withEyesAt(MIDDLE), upright({ facing: 0 }));
    expect(found?.detail).toMatchObject({ change: 'facing' });
    const turned = upright({ facing: Number(found?.detail['to']) });
    expect(only(results(withEyesAt(MIDDLE), turned)).angle).toBeLessThanOrEqual(45 + 1e-9);
  });

  it('names nothing when nothing clears it', () => {
    const [found] = find(withEyesAt(2500, { y: 1310 }), upright({ lip: 300, model: 'table-top' }));
    expect(found).toMatchObject({ code: 'reading.angle', severity: 'caution' });
    expect(found?.detail).not.toHaveProperty('to');
  });
});

describe('reading.turn', () => {
  const near = (y: number) =>
    find(withEyesAt(MIDDLE, { y }), upright({ sides: [{ ...side, pagesAcross: 3 }] }));
  const turns = (y: number) => near(y).filter(({ code }) => code === 'reading.turn');

  // Worked by hand: lines end 295.95 mm aside: 35° at 422.7 mm and 60° at 170.9 mm.
  it('notes a row across which the head turns, and cautions when the body does', () => {
    expect(turns(1300 + 424)).toEqual([]);
    expect(turns(1300 + 421)).toMatchObject([{ severity: 'note', required: 35 }]);
    expect(turns(1300 + 172)).toMatchObject([{ severity: 'note', required: 35 }]);
    expect(turns(1300 + 170)).toMatchObject([{ severity: 'caution', required: 60 }]);
  });

  it('names how many pages would do', () => {
    const [found] = turns(1300 + 400);
    expect(found?.detail).toMatchObject({ fewerPages: 2 });
    const two = upright({ sides: [{ ...side, pagesAcross: 2 }] });
    expect(only(results(withEyesAt(MIDDLE, { y: 1700 }), two)).aside).toBeCloseTo(
      Number(found?.detail['after']),
      9,
    );
  });
});

describe('laws', () => {
  const figures = (found: readonly ReadingResult[]) =>
    found.map(({ eye: _, middle: __, pages, ...result }) => ({
      ...result,
      pages: pages.map(({ nearest }) => nearest).sort((a, b) => a - b),
    }));

  const sameButForRounding = (a: unknown, b: unknown): void => {
    if (typeof a === 'number' && typeof b === 'number')
      expect(Math.abs(a - b)).toBeLessThan(1e-6 * Math.max(1, Math.abs(a)));
    else if (typeof a === 'object' && a && typeof b === 'object' && b) {
      expect(Object.keys(a)).toEqual(Object.keys(b));
      for (const key of Object.keys(a)) {
        sameButForRounding((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]);
      }
    } else expect(a).toBe(b);
  };

  it.each([
    ['moving', shiftedBy(-137, 911)],
    ['turning', turnedBy(73)],
    ['mirroring', inMirror],
  ])('%s the whole scene changes nothing', (_, motion) => {
    let read = 0;
    fc.assert(
      fc.property(scenes, (document) => {
        const [before, after] = [document, moved(document, motion)].map((one) => readingResults(one, SETUP));
        sameButForRounding(figures(before ?? []), figures(after ?? []));
        read += before?.length ?? 0;
      }),
    );
    expect(read).toBeGreaterThan(50);
  });

  it('has plain finite figures in every finding', () => {
    let findings = 0;
    fc.assert(
      fc.property(scenes, (document) => {
        for (const { measured, required, detail } of readingFindings(document, SETUP)) {
          findings++;
          for (const value of [measured, required, ...Object.values(detail)])
            expect(typeof value === 'string' || Number.isFinite(value)).toBe(true);
        }
      }),
    );
    expect(findings).toBeGreaterThan(50);
  });
});
