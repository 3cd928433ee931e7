import { describe, expect, it } from 'vitest';
import { gripsOf } from '#model/checks/reach/grips.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord, StandSide } from '#model/document/records.ts';
import {
  aDocument,
  anInstrument,
  anInstrumentStand,
  aPlayer,
  aRiser,
  aSetup,
  aStand,
  aTable,
  SETUP,
  SIDE,
} from '../../../helpers/build.ts';

const PLAYER = asId<'player'>('player-1');
const turned: StandSide = { ...SIDE, reader: PLAYER, turned: true };
const grips = (...records: AnyRecord[]) => gripsOf(aDocument(...records), SETUP);

const TILT = (65 * Math.PI) / 180;
/** Of a desk 340 high at 65°, from the lip to the middle in plan. */
const HALF_DEPTH = (340 * Math.cos(TILT)) / 2;

describe('pages', () => {
  // Worked by hand: the stand faces upstage, its reader stands upstage of it and looks at the house, so his right
  // hand is stage right: two A4 pages reach 210 to each side, the lip is half the desk's depth upstage of the stand.
  it('are turned at the lower outer corner on the reader’s right', () => {
    const [corner, ...others] = grips(aPlayer(), aStand({ x: 100, y: 1500, facing: 180, sides: [turned] }));
    expect(others).toEqual([]);
    expect(corner).toMatchObject({ player: 'player-1', item: 'stand-1', purpose: 'turnCorner' });
    expect(corner?.x).toBeCloseTo(100 - 210, 6);
    expect(corner?.y).toBeCloseTo(1500 + HALF_DEPTH, 6);
    expect(corner?.z).toBe(800);
  });

  // Worked by hand: lip 340 cos 65° before the ridge; the page's upper edge 297 up the slope from it.
  it('go over the ridge of a back-to-back pair', () => {
    const pair = aStand({
      x: 0,
      y: 2000,
      facing: 0,
      form: 'backToBack',
      sides: [{ ...turned, pagesAcross: 1 }, SIDE],
    });
    const [corner, ridge] = grips(aPlayer({ y: 1400, facing: 180 }), pair);
    // He looks upstage, so his right hand is stage left.
    expect(corner).toMatchObject({ purpose: 'turnCorner', x: expect.closeTo(105, 6) });
    expect(corner?.y).toBeCloseTo(2000 - 340 * Math.cos(TILT), 6);
    expect(ridge).toMatchObject({ purpose: 'turnRidge', x: expect.closeTo(0, 6) });
    expect(ridge?.y).toBeCloseTo(2000 - (340 - 297) * Math.cos(TILT), 6);
    expect(ridge?.z).toBeCloseTo(800 + 297 * Math.sin(TILT), 6);
  });

  it('of the second side are turned from the other side', () => {
    const pair = aStand({ x: 0, y: 2000, facing: 0, form: 'backToBack', sides: [SIDE, turned] });
    const [corner] = grips(aPlayer(), pair);
    expect(corner?.y).toBeGreaterThan(2000);
    expect(corner?.x).toBeCloseTo(-210, 6);
  });

  it.each([
    ['not turned', { ...turned, turned: false }],
    ['nobody reads', { ...turned, reader: null }],
    ['not there', { ...turned, pagesAcross: 0 }],
    ['read by somebody who is not there', { ...turned, reader: asId<'player'>('player-9') }],
  ])('that are %s need no hand', (_, side) => {
    expect(grips(aPlayer(), aStand({ sides: [side] }))).toEqual([]);
  });

  it('of another setup need no hand', () => {
    const other = aSetup({ id: 'setup-2', order: 2 });
    const player = aPlayer({ setup: asId<'setup'>('setup-2') });
    expect(grips(other, player, aStand({ sides: [turned] }))).toEqual([]);
  });

  it('stand higher on a riser', () => {
    const [corner] = grips(aPlayer(), aRiser({ height: 200 }), aStand({ sides: [turned] }));
    expect(corner?.z).toBe(1000);
  });
});

describe('instruments', () => {
  const onTable = (id: string) => anInstrument({ id, support: asId<'table'>('table-1'), model: 'shaker' });

  it('wait at the height of their stand', () => {
    const peg = anInstrumentStand({ x: 700, y: 1800, height: 450 });
    const clarinet = anInstrument({ support: asId<'instrumentStand'>('instrumentStand-1') });
    expect(grips(aPlayer(), peg, clarinet)).toEqual([
      {
        id: 'instrument-1/pickUp',
        player: 'player-1',
        item: 'instrument-1',
        purpose: 'pickUp',
        x: 700,
        y: 1800,
        z: 450,
      },
    ]);
  });

  it('wait higher on a riser', () => {
    const [peg, riser] = [anInstrumentStand({ height: 450 }), aRiser({ height: 200 })];
    const [grip] = grips(aPlayer(), riser, peg, anInstrument({ support: peg.id }));
    expect(grip?.z).toBe(650);
  });

  // Worked by hand: three on a table of 600: 200 apart, the middle one in the middle.
  it('lie side by side on a table in the order of their ids', () => {
    const found = grips(
      aPlayer(),
      aTable({ x: 0, y: 2500 }),
      onTable('shaker-10'),
      onTable('shaker-2'),
      onTable('shaker-1'),
    );
    expect(found.map(({ item }) => item)).toEqual(['shaker-1', 'shaker-2', 'shaker-10']);
    expect(found.map(({ x }) => x)).toEqual([
      expect.closeTo(-200, 6),
      expect.closeTo(0, 6),
      expect.closeTo(200, 6),
    ]);
    for (const { y, z } of found) expect([y, z]).toEqual([expect.closeTo(2500, 6), 850]);
  });

  it('lie along the table when it is turned', () => {
    const found = grips(
      aPlayer(),
      aTable({ x: 0, y: 2500, facing: 90 }),
      onTable('shaker-1'),
      onTable('shaker-2'),
    );
    expect(found.map(({ y }) => y)).toEqual([expect.closeTo(2350, 6), expect.closeTo(2650, 6)]);
  });

  it('in somebody’s hands need no grip', () => expect(grips(aPlayer(), anInstrument())).toEqual([]));
});
