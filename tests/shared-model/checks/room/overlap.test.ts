import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { overlapFindings } from '#model/checks/room/overlap.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord, Stand } from '#model/document/records.ts';
import {
  aDocument,
  aLamp,
  aLargeInstrument,
  aPiano,
  aPlatform,
  aPlayer,
  aRiser,
  aSeat,
  aShape,
  aStand,
  aTable,
  PERSON,
  SETUP,
  SIDE,
} from '../../../helpers/build.ts';
import { mirrored } from './mirrored.ts';

const findings = (...records: AnyRecord[]) => overlapFindings(aDocument(...records), SETUP);
const depths = (...records: AnyRecord[]) => findings(...records).map(({ measured }) => measured);

describe('two footprints', () => {
  const boxes = (apart: number) => [aTable(), aTable({ id: 'table-2', x: apart })];

  test('that overlap are a finding with the shift that would part them', () => {
    expect(findings(...boxes(570))).toEqual([
      {
        code: 'room.overlap',
        severity: 'fail',
        subjects: ['table-1', 'table-2'],
        measured: expect.closeTo(-30, 6),
        required: 0,
        unit: 'mm',
        where: { x: expect.any(Number), y: expect.any(Number) },
        detail: { part: 'floor' },
      },
    ]);
  });

  test('may touch, and a millimetre is not noticed', () => {
    expect(findings(...boxes(600))).toEqual([]);
    expect(findings(...boxes(599.1))).toEqual([]);
    expect(findings(...boxes(598.9))).toHaveLength(1);
  });

  test('of different heights do not meet: a flat desk over the front of a chair, but not over a high stool', () => {
    const flat = aStand({ lip: 800, tilt: 20 });
    expect(findings(flat, aSeat({ y: 2400, height: 450 }))).toEqual([]);
    expect(depths(flat, aSeat({ y: 2400, height: 950 }))).toEqual([expect.closeTo(-19.75, 1)]);
  });

  test('of a concave outline: a square in the bay of a grand piano is free', () => {
    const piano = aPiano({ x: 0, y: 2500, facing: 90 });
    const box = (x: number, y: number) =>
      aShape({ id: 'shape-9', x, y, fixed: false, height: 1000, outline: aShape().outline });
    // With the keyboard towards stage right the tail lies towards stage left and the bay downstage of it.
    expect(findings(piano, box(800, 2500 - 610))).toEqual([]);
    expect(findings(piano, box(800, 2500 + 610))).toHaveLength(1);
  });
});

describe('what may share its room', () => {
  test('things on a level and the level', () => {
    expect(findings(aRiser(), aTable(), aPlayer({ y: 2350 }))).toEqual([]);
  });

  test('a thing beside a level may not stand into it', () => {
    // The level is 2000 wide about x = 0, the table 600: its side is at 1000 + 290.
    expect(depths(aRiser(), aTable({ x: 1290 }))).toEqual([expect.closeTo(-10)]);
    expect(findings(aRiser(), aTable({ x: 1305 }))).toEqual([]);
  });

  test('the shoulders of one who stands beside a level', () => {
    // The level's downstage side is at y = 1500, the player's back reaches 150 mm behind his axis.
    expect(findings(aRiser(), aPlayer({ y: 1400 }))).toEqual([]);
    const chair = { model: 'orchestra-chair', height: 450 };
    expect(findings(aRiser(), aPlayer({ y: 1400, chair }))).toHaveLength(1);
  });

  test('a case that stands on a level, but not a column that goes through it', () => {
    expect(findings(aRiser(), aShape({ fixed: false }))).toEqual([]);
    expect(findings(aRiser(), aShape({ fixed: true }))).toHaveLength(1);
  });

  test('a level on a larger one, but not two that cross', () => {
    expect(findings(aRiser(), aRiser({ id: 'riser-2', width: 800, depth: 600, height: 400 }))).toEqual([]);
    expect(depths(aRiser(), aRiser({ id: 'riser-2', x: 1950 }))).toEqual([expect.closeTo(-50)]);
  });

  test('a player and his own chair, a player and what he plays', () => {
    const player = aPlayer({ chair: { model: 'orchestra-chair', height: 450 } });
    expect(findings(player)).toEqual([]);
    const marimba = (of: string | null) =>
      aLargeInstrument({ y: 1500, player: of === null ? null : asId('player-1') });
    expect(findings(player, marimba('player-1'))).toEqual([]);
    expect(findings(player, marimba(null))).toHaveLength(1);
  });

  test('a lamp and the stand that it is clipped to', () => {
    expect(findings(aLamp(), aStand())).toEqual([]);
    expect(findings(aLamp(), aSeat())).toHaveLength(1);
  });

  test('no lamp on the floor and a table, piano or marimba', () => {
    for (const thing of [aTable(), aPiano({ y: 2000 }), aLargeInstrument({ y: 2000, player: null })])
      expect(findings(aLamp(), thing)).toMatchObject([
        { code: 'room.overlap', subjects: expect.arrayContaining(['lamp-1', thing.id]) },
      ]);
    // The table is 600 wide about x = 0, the lamp's foot has a radius of 150.
    expect(depths(aLamp({ x: 440 }), aTable())).toEqual([expect.closeTo(-10, 0)]);
    expect(findings(aLamp({ x: 460 }), aTable())).toEqual([]);
  });

  test('spread legs between other legs, up to the pole', () => {
    // Feet of 250 mm radius: legs interleave, a pole with half that radius does not.
    expect(findings(aStand(), aStand({ id: 'stand-2', y: 2280, lip: 1200 }))).toEqual([]);
    expect(findings(aStand(), aStand({ id: 'stand-2', y: 2240, lip: 1200 }))).toHaveLength(1);
    // A low plinth from x = 200 is solid: the foot does not go into it.
    expect(depths(aStand(), aShape({ x: 350, height: 100 }))).toEqual([expect.closeTo(-50, 0)]);
  });
});

/**
 * Source: a woodworker's article on a quartet's stands (woodtools.nov.ru): the lower edges of four desks form a 750 mm
 * square, parts are 450 x 295 mm open, a desk 430 x 300, its lower edge 700 above the floor, tilted about 65 degrees.
 * Exact arithmetic: the pages' top edges form a square of 750 - 2 * 295 * cos(tilt).
 */
describe('four desks of a quartet', () => {
  const quartet = (tilt: number): Stand[] =>
    [0, 90, 180, 270].map((facing, index) => {
      const out = 375 - (300 * Math.cos((tilt * Math.PI) / 180)) / 2;
      const angle = (facing * Math.PI) / 180;
      return aStand({
        id: `stand-${index + 1}`,
        model: 'quartet',
        x: out * Math.sin(angle),
        y: 2500 - out * Math.cos(angle),
        facing,
        deskWidth: 430,
        deskHeight: 300,
        lip: 700,
        tilt,
        sides: [{ ...SIDE, pagesAcross: 2, pageWidth: 225, pageHeight: 295 }],
      });
    });

  test.each([65, 60])('at %i degrees the rows of pages are clear of each other', (tilt) => {
    expect(findings(...quartet(tilt))).toEqual([]);
  });

  test('at 55 degrees the square is 411.6 mm and the 450 mm rows run into each other at all four corners', () => {
    const found = findings(...quartet(55));
    expect(found.map(({ subjects }) => subjects.join(' '))).toEqual([
      'stand-1 stand-2',
      'stand-1 stand-4',
      'stand-2 stand-3',
      'stand-3 stand-4',
    ]);
    for (const { measured, detail } of found) {
      expect(measured).toBeCloseTo((411.6 - 450) / 2, 1);
      expect(detail).toEqual({ part: 'desk' });
    }
  });
});

describe('desks and paper', () => {
  const row = (x: number, fields: Partial<Stand> = {}) => aStand({ id: 'stand-2', x, ...fields });

  test('side by side their paper runs into each other before the boards do', () => {
    const three = [{ ...SIDE, pagesAcross: 3, pageWidth: 210 }] as const;
    expect(findings(aStand({ sides: three }), row(600, { sides: three }))).toHaveLength(1);
    expect(findings(aStand({ sides: three }), row(635, { sides: three }))).toEqual([]);
    expect(findings(aStand(), row(600))).toEqual([]);
  });

  test('one desk behind another does not touch it', () => {
    expect(findings(aStand(), row(0, { y: 2300 }))).toEqual([]);
  });

  test('a desk in a column, and one that ends below a beam-high shelf', () => {
    expect(findings(aStand(), aShape({ x: 300, y: 2000 }))).toHaveLength(1);
    expect(findings(aStand(), aShape({ x: 450, y: 2000 }))).toEqual([]);
  });

  test('a desk in somebody’s chest', () => {
    const seated = (y: number) => aPlayer({ y, chair: { model: 'orchestra-chair', height: 450 } });
    expect(findings(aStand({ lip: 700 }), seated(2460))).toEqual([]);
    expect(findings(aStand({ lip: 700 }), seated(2180))).not.toEqual([]);
  });
});

describe('laws', () => {
  const spot = fc.integer({ min: -1500, max: 1500 });
  const facing = fc.integer({ min: -180, max: 180 });
  const placing = fc.record({ x: spot, y: spot.map((y) => y + 2500), facing });
  const scene = fc
    .tuple(placing, placing, placing, placing, placing)
    .map(([a, b, c, d, e]) => [
      aPlayer({ ...a, person: { ...PERSON, size: { by: 'anyone' } } }),
      aStand(b),
      aStand({ ...c, id: 'stand-2', form: 'backToBack', sides: [SIDE, SIDE] }),
      aPiano(d),
      aTable(e),
    ]);

  test('the order of the records changes nothing', () => {
    fc.assert(
      fc.property(scene, (records) => {
        const document = aDocument(...records);
        const reversed: Document = documentOf([...document.records.values()].reverse());
        expect(overlapFindings(reversed, SETUP)).toEqual(overlapFindings(document, SETUP));
      }),
    );
  });

  test('mirroring the platform about its centre line changes no depth', () => {
    fc.assert(
      fc.property(scene, (records) => {
        // The piano is not its own mirror image; leave it out.
        const plain = records.filter(({ kind }) => kind !== 'piano');
        const found = findings(...plain);
        const there = findings(...plain.map(mirrored));
        expect(there.map(({ subjects }) => subjects)).toEqual(found.map(({ subjects }) => subjects));
        there.forEach(({ measured }, index) =>
          expect(measured).toBeCloseTo(found[index]?.measured ?? NaN, 3),
        );
      }),
    );
  });

  test('moving everything together changes no depth', () => {
    fc.assert(
      fc.property(scene, spot, spot, (records, dx, dy) => {
        const moved = records.map((record) => ({ ...record, x: record.x + dx, y: record.y + dy }));
        const [found, there] = [findings(...records), findings(...moved)];
        expect(there.map(({ subjects }) => subjects)).toEqual(found.map(({ subjects }) => subjects));
        there.forEach(({ measured }, index) =>
          expect(measured).toBeCloseTo(found[index]?.measured ?? NaN, 3),
        );
      }),
    );
  });

  test('of a heap each thing is named with a few others only', () => {
    const heap = Array.from({ length: 300 }, (_, index) =>
      aTable({ id: `table-${index + 1}`, x: index * 0.01 }),
    );
    const found = overlapFindings(aDocument(aPlatform(), ...heap), SETUP);
    expect(found.length).toBeGreaterThan(300);
    expect(found.length).toBeLessThanOrEqual(900);
    expect(found.at(-1)?.detail['more']).toBeUndefined();
  });

  test('past a thousand the list ends and says so', () => {
    const heap = Array.from({ length: 1000 }, (_, index) =>
      aTable({ id: `table-${index + 1}`, x: index * 0.01 }),
    );
    const found = overlapFindings(aDocument(aPlatform(), ...heap), SETUP);
    expect(found).toHaveLength(1000);
    expect(found.filter(({ detail }) => detail['more'] === 1)).toHaveLength(1);
    expect(found.at(-1)?.detail['more']).toBe(1);
  });
});
