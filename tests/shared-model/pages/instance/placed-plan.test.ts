/** What the house sees with the stands of a plan and no others. */

import { describe, expect, it } from 'vitest';
import { sightReport } from '#model/checks/sightlines/sight-report.ts';
import type { Document } from '#model/document/document.ts';
import { planSight, planSights, withPlanPlaced } from '#model/pages/instance/placed-plan.ts';
import type { Plan, StationPlan } from '#model/pages/planner/plan.ts';
import { aDocument, aPlayer, aSeatBlock, aStand, recordOf, SETUP, SIDE } from '../../../helpers/build.ts';

const oboe = aPlayer({ name: 'Oboe' });
const guest = aPlayer({ id: 'player-2', x: 1500 });
/** Between the oboe and the house, high and upright, so that it hides a good part of him. */
const high = aStand({
  y: 1400,
  lip: 1000,
  tilt: 85,
  sides: [{ ...SIDE, reader: oboe.id, pagesAcross: 1 }],
});
const other = aStand({ id: 'stand-2', x: -700, y: 1700, sides: [{ ...SIDE, reader: oboe.id }] });
const theirs = aStand({ id: 'stand-3', x: 1500, y: 1400, sides: [{ ...SIDE, reader: guest.id }] });
const nobodys = aStand({ id: 'stand-4', x: 3000 });
const DOCUMENT = aDocument(oboe, guest, high, other, theirs, nobodys);
const INSTANCE = { players: [{ id: oboe.id, pages: 2, readings: [], free: [] }], stations: [] };

const paper = (station: string, across: number): StationPlan => ({
  station,
  kind: 'loose',
  leaves: 0,
  pagesAcross: [across],
  stackSide: 0,
  views: [[[1, 2, null].slice(0, across)]],
});
const plan = (...stations: StationPlan[]): Plan => ({ stations, turns: [] });
const placed = (...stations: StationPlan[]): Document =>
  withPlanPlaced(DOCUMENT, SETUP, INSTANCE, plan(...stations));

describe('a plan on the platform', () => {
  it('has the stands that it uses, and those that are nothing to it', () => {
    const there = placed(paper('stand-2', 3));
    expect([...there.records.values()].flatMap(({ id, kind }) => (kind === 'stand' ? [id] : []))).toEqual([
      'stand-2',
      'stand-3',
      'stand-4',
    ]);
    expect(recordOf(there, 'stand-2', 'stand').sides[0].pagesAcross).toBe(3);
    expect(recordOf(DOCUMENT, 'stand-2', 'stand').sides[0].pagesAcross).toBe(2);
  });

  it('leaves everything of other setups alone', () => {
    const elsewhere = { ...other, setup: null };
    const document = aDocument(oboe, guest, elsewhere);
    expect(withPlanPlaced(document, SETUP, INSTANCE, plan()).records.has('stand-2')).toBe(false);
    const records = new Map(document.records).set('stand-2', { ...other, setup: 'setup-2' as typeof SETUP });
    expect(withPlanPlaced({ records }, SETUP, INSTANCE, plan()).records.has('stand-2')).toBe(true);
  });

  it('is seen as the sight check says of that document: a stand that is away hides nobody', () => {
    const [withHigh, without] = planSights(DOCUMENT, SETUP, INSTANCE as never, [
      plan(paper('stand-1', 1)),
      plan(paper('stand-2', 2)),
    ]);
    const shares = (document: Document) => sightReport(document, SETUP).figures;
    const least = (document: Document) => Math.min(...shares(document).map(({ worst }) => worst.share));
    expect(withHigh?.worst.share).toBe(least(placed(paper('stand-1', 1))));
    expect(without?.worst.share).toBe(least(placed(paper('stand-2', 2))));
    const wellSeen = Math.min(...shares(placed(paper('stand-1', 1))).map(({ seenWell }) => seenWell));
    expect(withHigh?.seenWell).toBe(wellSeen);
    expect(without!.seenWell + without!.worst.share).toBeGreaterThan(
      withHigh!.seenWell + withHigh!.worst.share,
    );
  });

  it('has no figures in a house without places', () => {
    const empty = aDocument(oboe, high, aSeatBlock({ seatsPerRow: 0 }));
    const seats = sightReport(empty, SETUP).scene.seats.length;
    expect([seats, planSight(empty, SETUP)]).toEqual([0, null]);
  });
});
