import { describe, expect, it } from 'vitest';
import { findingsOf, reachFindings } from '#model/checks/reach/findings.ts';
import { reachResults } from '#model/checks/reach/reach.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord, StandSide } from '#model/document/records.ts';
import {
  aDocument,
  anInstrument,
  anInstrumentStand,
  aPlayer,
  aStand,
  SETUP,
  SIDE,
} from '../../../helpers/build.ts';

const side: StandSide = { ...SIDE, reader: asId<'player'>('player-1'), turned: true };
const page = (y: number, freeTime: number | null = null) =>
  aStand({ x: 0, y, facing: 180, lip: 900, sides: [{ ...side, freeTime }] });
const find = (...records: AnyRecord[]) => reachFindings(aDocument(...records), SETUP);

/** Something to pick up, so many mm before the player, who stands at y = 2000 and faces the house. */
function thing(distance: number, freeTime: number | null = null): AnyRecord[] {
  const peg = anInstrumentStand({ x: 0, y: 2000 - distance, height: 1000 });
  return [peg, anInstrument({ model: 'shaker', support: peg.id, freeTime })];
}

describe('reach.far', () => {
  it('is silent for a page in reach', () => expect(find(aPlayer(), page(1500))).toEqual([]));

  it('fails a page that asks for a walk', () => {
    const [found, ...others] = find(aPlayer(), page(100));
    expect(others).toEqual([]);
    expect(found).toMatchObject({
      code: 'reach.far',
      severity: 'fail',
      subjects: ['player-1', 'stand-1'],
      unit: 'mm',
    });
    expect(found?.detail).toMatchObject({ manner: 'walk', purpose: 'turnCorner' });
    expect(found?.measured).toBeGreaterThan(found?.required ?? NaN);
  });

  it('cautions about a page that asks for a step', () => {
    expect(find(aPlayer(), page(800))).toMatchObject([{ code: 'reach.far', severity: 'caution' }]);
  });

  it('clears when the page comes as much nearer as it says', () => {
    const [found] = find(aPlayer(), page(800));
    const nearer = (found?.measured ?? NaN) - (found?.required ?? NaN);
    expect(find(aPlayer(), page(800 + nearer + 200))).toEqual([]);
  });

  it('only notes a walk to an instrument that fits the rest', () => {
    expect(find(aPlayer(), ...thing(2500, 60))).toMatchObject([{ code: 'reach.far', severity: 'note' }]);
    expect(find(aPlayer(), ...thing(2500))).toMatchObject([{ code: 'reach.far', severity: 'caution' }]);
    expect(find(aPlayer(), ...thing(1000))).toEqual([]);
  });

  it('tells only the worse of corner and ridge', () => {
    const pair = aStand({ x: 0, y: 300, facing: 180, form: 'backToBack', lip: 900, sides: [side, SIDE] });
    expect(reachResults(aDocument(aPlayer(), pair), SETUP)).toHaveLength(2);
    expect(find(aPlayer(), pair)).toMatchObject([{ code: 'reach.far', detail: { purpose: 'turnRidge' } }]);
  });

  it('fails what hangs out of reach', () => {
    const peg = anInstrumentStand({ height: 3000 });
    const shaker = anInstrument({ model: 'shaker', support: peg.id, freeTime: 60 });
    expect(find(aPlayer(), peg, shaker)).toMatchObject([{ code: 'reach.far', severity: 'fail' }]);
  });
});

describe('reach.late', () => {
  it('fails what takes longer than the rest', () => {
    const found = find(aPlayer(), ...thing(2500, 1)).find(({ code }) => code === 'reach.late');
    expect(found).toMatchObject({ severity: 'fail', required: 1, unit: 's' });
    expect(found?.measured).toBeGreaterThan(3);
  });

  it('cautions when only the slow end of the range is late', () => {
    const [result] = reachResults(aDocument(aPlayer(), page(1500, 9)), SETUP);
    const rest = ((result?.seconds ?? NaN) + (result?.secondsRange[1] ?? NaN)) / 2;
    const [found] = find(aPlayer(), page(1500, rest));
    expect(found).toMatchObject({ code: 'reach.late', severity: 'caution', required: rest });
    expect(found?.measured).toBe(result?.secondsRange[1]);
  });

  it('is silent when there is time, and when nobody said how much', () => {
    expect(find(aPlayer(), page(1500, 9))).toEqual([]);
    expect(find(aPlayer(), page(1500, null))).toEqual([]);
  });
});

describe('reach.noHand', () => {
  it('fails a turn with both hands kept', () => {
    const cymbals = anInstrument({ model: 'hand-cymbals' });
    expect(find(aPlayer(), cymbals, page(1500))).toMatchObject([
      { code: 'reach.noHand', severity: 'fail', measured: 0, required: 1, unit: 'count' },
    ]);
  });
});

it('has plain finite figures in every detail', () => {
  const records = [aPlayer(), page(100, 1), ...thing(2500, 1)];
  const found = reachResults(aDocument(...records), SETUP).flatMap(findingsOf);
  expect(found.length).toBeGreaterThan(2);
  for (const { detail, where } of found) {
    for (const value of Object.values(detail))
      expect(typeof value === 'string' || Number.isFinite(value)).toBe(true);
    expect(where).not.toBeNull();
  }
});
