/** Remedies for `reach.far` and `reach.late`. */

import { describe, expect, it } from 'vitest';
import { bodies } from '#model/catalogue/people.ts';
import { desksOf } from '#model/document/desks.ts';
import { asId } from '#model/document/ids.ts';
import {
  aConcert,
  aDocument,
  anInstrument,
  anInstrumentStand,
  aPlayer,
  aSetup,
  aShape,
  aStand,
  PERSON,
  SIDE,
} from '../../../helpers/build.ts';
import { carried, doesLeast, findingsIn, found, isThere, remediesFor, troubles } from './trials.ts';

/** 2.6 m wide and 5 m deep. */
const LOW_BOX = [
  { x: -1300, y: -2500 },
  { x: 1300, y: -2500 },
  { x: 1300, y: 2500 },
  { x: -1300, y: 2500 },
];

const READER = asId<'player'>('player-1');

describe('a page that is turned, straight before its reader and too far away', () => {
  const stand = aStand({ y: 600, lip: 1000, sides: [{ ...SIDE, reader: READER, turned: true }] });
  // Whether the house sees him is another matter.
  const { limits } = aConcert();
  const document = aDocument(aConcert({ limits: { ...limits, houseShare: 0 } }), aPlayer({ y: 2000 }), stand);

  it('comes to him by what he lacks, rounded up to 10 mm', () => {
    const { measured, required } = found(document, 'reach.far', 'stand-1');
    // Worked by hand: he looks downstage, so the page's lower right corner is on stage right, before his right shoulder.
    const corner = desksOf(stand)[0]?.paper?.[1];
    const shoulder = -bodies(PERSON, null).small.biacromialBreadth / 2;
    if (!corner) throw new Error('no page');
    const [aside, ahead] = [corner.x - shoulder, 2000 - corner.y];
    const up2 = measured ** 2 - aside ** 2 - ahead ** 2;
    const reachedAhead = Math.sqrt(required ** 2 - up2 - aside ** 2);
    const way = Math.ceil((ahead - reachedAhead) / 10) * 10;
    const [remedy] = remediesFor(document, 'reach.far', 'stand-1');
    expect(remedy).toMatchObject({ kind: 'move', item: 'stand-1', dx: 0, dy: way });
    expect(remedy?.after).toBeCloseTo(Math.sqrt(aside ** 2 + (ahead - way) ** 2 + up2), 6);
  });

  it('not so near that the house loses sight of him', () => {
    const strict = aDocument(aPlayer({ y: 2000 }), stand);
    const before = findingsIn(strict);
    for (const remedy of remediesFor(strict, 'reach.far', 'stand-1'))
      expect(troubles(before, findingsIn(carried(strict, remedy)))).toEqual([]);
  });
});

describe('an instrument that waits too far away for the rest', () => {
  const peg = anInstrumentStand({ x: 2200, y: 2000, height: 1000 });
  const waiting = (freeTime: number) =>
    anInstrument({ id: 'instrument-2', model: 'clarinet-a', support: peg.id, freeTime });

  it('its stand is moved, not the instrument; then he is in time, and 10 mm less he is not', () => {
    const document = aDocument(aPlayer(), anInstrument(), waiting(3), peg);
    const late = found(document, 'reach.late', 'instrument-2');
    const [remedy] = remediesFor(document, 'reach.late', 'instrument-2');
    if (!remedy) throw new Error('nothing found');
    expect(remedy).toMatchObject({ kind: 'move', item: 'instrumentStand-1' });
    expect(remedy.after).toBeLessThanOrEqual(3);
    expect(isThere(findingsIn(carried(document, remedy)), late)).toBe(false);
    expect(doesLeast(document, late, remedy)).toBe(true);
  });

  it('he moves when it cannot: it stays for the whole concert, and another setup has something there', () => {
    const other = aSetup({ id: 'setup-2', order: 2 });
    const low = aShape({ setup: other.id, x: 700, height: 100, fixed: true, outline: LOW_BOX });
    const stays = { ...peg, setup: null };
    const free = aDocument(aPlayer(), anInstrument(), waiting(10.5), stays);
    expect(remediesFor(free, 'reach.late', 'instrument-2')).toMatchObject([{ item: 'instrumentStand-1' }]);
    const taken = aDocument(aPlayer(), anInstrument(), waiting(10.5), stays, other, low);
    const [remedy] = remediesFor(taken, 'reach.late', 'instrument-2');
    if (!remedy) throw new Error('nothing found');
    expect(remedy).toMatchObject({ kind: 'move', item: 'player-1' });
    expect(isThere(findingsIn(carried(taken, remedy)), found(taken, 'reach.late', 'instrument-2'))).toBe(
      false,
    );
  });

  it('a rest that is too short even for what is at hand cannot be helped', () => {
    const document = aDocument(aPlayer(), anInstrument(), waiting(0.05), peg);
    expect(remediesFor(document, 'reach.late', 'instrument-2')).toEqual([]);
  });

  it('a peg at a height that nobody gets to is useless wherever it stands', () => {
    const high = anInstrumentStand({ x: 2200, y: 2000, height: 3000 });
    const document = aDocument(aPlayer(), waiting(3), high);
    expect(remediesFor(document, 'reach.far', 'instrument-2')).toEqual([]);
  });
});

it('no hand free: no move gives him a third one', () => {
  const holds = [anInstrument({ model: 'violin' }), anInstrument({ id: 'instrument-2', model: 'clarinet' })];
  const stand = aStand({ y: 1200, sides: [{ ...SIDE, reader: READER, turned: true }] });
  expect(remediesFor(aDocument(aPlayer(), ...holds, stand), 'reach.noHand', 'stand-1')).toEqual([]);
});
