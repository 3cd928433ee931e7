import fc from 'fast-check';
import clipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import type { PlacedRecord } from '#model/document/records.ts';
import { changeover, type Changeover, type Step } from '#model/programme/changeover.ts';
import { schedule, type Job } from '#model/programme/schedule.ts';
import { unitsOf, type Unit } from '#model/programme/units.ts';
import '../../helpers/seed.ts';
import { aLamp, aPiano, aPlayer, aRiser, aSeat, aStand, aTable, SETUP } from '../../helpers/build.ts';
import { SECOND, twoSetups } from './programme-scenes.ts';
import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';

/*
 * The list is played through by a stage of its own, which knows nothing of how the list was made: what stands on the
 * floor, who is busy until when, and (polygon-clipping) whether two outlines share ground.
 */

const AREA = 100;

function shareGround(a: Unit, b: Unit): boolean {
  const ring = ({ outline }: Unit) => [outline.map(({ x, y }): [number, number] => [x, y])];
  return clipping.intersection(ring(a), ring(b)).some(([outer]) => Math.abs(areaOf(outer ?? [])) > AREA);
}

function areaOf(ring: readonly (readonly [number, number])[]): number {
  return ring.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = ring[(index + 1) % ring.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

/** Everything wrong with the list, in words. */
function faultsOf(document: Document, change: Changeover): string[] {
  const { from, to, steps, stays } = change;
  const faults: string[] = [];
  const standing = new Set<Unit>(from ? unitsOf(document, from) : []);
  const byName = (units: Iterable<Unit>, unit: Unit) => [...units].find(({ id }) => id === unit.id);
  const inPlace = new Set<Unit>(stays.flatMap((pair) => byName(standing, pair.from) ?? []));
  const take = (step: Step): void => {
    const unit = step.from && byName(standing, step.from);
    if (!unit) return void faults.push(`${step.number}: takes what does not stand there`);
    const rider = [...standing].find(
      (other) =>
        other !== unit &&
        unit.thing.item === 'riser' &&
        !inPlace.has(other) &&
        other.spot.level > 0 &&
        shareGround(other, unit),
    );
    // What stands over two levels may rest on the other one; then its middle does.
    if (rider && isOn(rider, unit)) faults.push(`${step.number}: takes a level from under ${rider.id}`);
    standing.delete(unit);
  };
  const put = (step: Step, unit: Unit): void => {
    const blocker = [...standing].find((other) => !inPlace.has(other) && shareGround(other, unit));
    if (blocker) faults.push(`${step.number}: sets ${unit.id} where ${blocker.id} still stands`);
    if (
      unit.spot.level > 0 &&
      ![...standing].some((other) => other.thing.item === 'riser' && isOn(unit, other))
    )
      faults.push(`${step.number}: sets ${unit.id} on a level that is not there`);
    standing.add(unit);
    inPlace.add(unit);
  };
  const events = steps.flatMap((step) => [
    { at: step.begins, order: 1, run: () => (step.from ? take(step) : undefined) },
    { at: step.ends, order: 0, run: () => (step.to ? put(step, step.to) : undefined) },
  ]);
  for (const { run } of events.sort((a, b) => a.at - b.at || a.order - b.order)) run();
  const spots = (units: Iterable<Unit>) =>
    [...units].map(({ key, spot: { x, y } }) => `${key} ${Math.round(x)} ${Math.round(y)}`).sort();
  const wanted = to ? unitsOf(document, to) : [];
  const stayed = new Map(stays.map((pair) => [pair.from.id, pair.to]));
  const left = [...standing].map((unit) => (wanted.includes(unit) ? unit : (stayed.get(unit.id) ?? unit)));
  if (JSON.stringify(spots(left)) !== JSON.stringify(spots(wanted))) faults.push('ends as another setup');
  return [...faults, ...twoPlacesAtOnce(steps)];
}

function isOn(unit: Unit, riser: Unit): boolean {
  const { x, y } = unit.spot;
  const xs = riser.outline.map((corner) => corner.x);
  const ys = riser.outline.map((corner) => corner.y);
  return x >= Math.min(...xs) && x <= Math.max(...xs) && y >= Math.min(...ys) && y <= Math.max(...ys);
}

function twoPlacesAtOnce(steps: readonly Step[]): string[] {
  return (['A', 'B'] as const).flatMap((who) => {
    const own = steps
      .filter(({ hands }) => hands === who || hands === 'both')
      .sort((a, b) => a.begins - b.begins);
    return own.flatMap((step, index) => {
      const before = own[index - 1];
      return before && before.ends > step.begins + 1e-9 ? [`${who} is in two places at ${step.begins}`] : [];
    });
  });
}

const spot = { x: fc.integer({ min: -2500, max: 2500 }), y: fc.integer({ min: 900, max: 3900 }) };
const facing = fc.constantFrom(0, 45, 90, 180, -90);
const kind = fc.constantFrom('stand', 'pair', 'seat', 'player', 'table', 'piano', 'riser', 'lamp');
const thing = fc.record({ kind, ...spot, facing });
type Drawn = typeof thing extends fc.Arbitrary<infer T> ? T : never;

/** Levels lie square, so that this stage can tell by itself what stands on them. */
function recordOfThing(
  { kind: what, facing: turned, ...at }: Drawn,
  setup: Id<'setup'>,
  index: number,
): PlacedRecord {
  const fields = { ...at, setup, facing: turned };
  const id = `${setup}-${what}-${index}`;
  switch (what) {
    case 'stand':
      return aStand({ ...fields, id });
    case 'pair':
      return aStand({ ...fields, id, form: 'backToBack', sides: [aStand().sides[0], aStand().sides[0]] });
    case 'seat':
      return aSeat({ ...fields, id });
    case 'player':
      return aPlayer({ ...fields, id, chair: { model: 'orchestra-chair', height: 460 } });
    case 'table':
      return aTable({ ...fields, id });
    case 'piano':
      return aPiano({ ...fields, id });
    case 'lamp':
      return aLamp({ ...fields, id });
    default:
      return aRiser({ ...fields, id, facing: 0, width: 1500, depth: 1000, height: 200 });
  }
}

const things = fc.array(thing, { maxLength: 9 });

describe('an order for two', () => {
  it('can be played through: nothing is set where something stands, and all ends where it should', () => {
    fc.assert(
      fc.property(things, things, fc.constantFrom('both', 'first', 'last'), (first, second, which) => {
        const document = twoSetups(
          ...first.map((each, index) => recordOfThing(each, SETUP, index)),
          ...second.map((each, index) => recordOfThing(each, SECOND, index)),
        );
        const [from, to] = [which === 'first' ? null : SETUP, which === 'last' ? null : SECOND];
        expect(faultsOf(document, changeover(document, from, to))).toEqual([]);
      }),
      { numRuns: 80 },
    );
  });

  it('parts an exchange of places that has no other beginning', () => {
    const document = twoSetups(
      aStand({ id: 'stand-1', x: -500 }),
      aTable({ id: 'table-1', x: 500 }),
      aStand({ id: 'stand-2', setup: SECOND, x: 500 }),
      aTable({ id: 'table-2', setup: SECOND, x: -500 }),
    );
    const change = changeover(document, SETUP, SECOND);
    expect(change.steps.map(({ work }) => work).sort()).toEqual(['aside', 'bring', 'move']);
    expect(faultsOf(document, change)).toEqual([]);
  });

  it('sets a lamp where a stand stood only once that is gone', () => {
    const document = twoSetups(
      aStand({ id: 'stand-1', x: -1000 }),
      aLamp({ id: 'lamp-1', x: 2000, y: 4000 }),
      aStand({ id: 'stand-2', setup: SECOND, x: 2500 }),
      aLamp({ id: 'lamp-2', setup: SECOND, x: -1000 }),
    );
    const change = changeover(document, SETUP, SECOND);
    const [stand, lamp] = change.steps;
    expect([stand?.to?.id, lamp?.to?.id]).toEqual(['stand-2', 'lamp-2']);
    expect(lamp?.begins).toBeGreaterThanOrEqual(stand?.ends ?? Infinity);
    expect(faultsOf(document, change)).toEqual([]);
  });

  it('sets a table-top stand where a table stood only once that is gone', () => {
    const document = twoSetups(
      aTable({ id: 'table-1', x: -1000 }),
      aTable({ id: 'table-2', setup: SECOND, x: 2500 }),
      aStand({ id: 'stand-1', x: 2000, y: 4000, model: 'table-top' }),
      aStand({ id: 'stand-2', setup: SECOND, x: -1000, model: 'table-top' }),
    );
    expect(faultsOf(document, changeover(document, SETUP, SECOND))).toEqual([]);
  });

  it('parts a ring in which a lamp takes the place of a stand', () => {
    const [a, b, c] = [{ x: -1000 }, { x: 1000 }, { x: 0, y: 4000 }];
    const document = twoSetups(
      aStand({ id: 'stand-1', ...a }),
      aSeat({ id: 'seat-1', ...b }),
      aLamp({ id: 'lamp-1', ...c }),
      aStand({ id: 'stand-2', setup: SECOND, ...b }),
      aSeat({ id: 'seat-2', setup: SECOND, ...c }),
      aLamp({ id: 'lamp-2', setup: SECOND, ...a }),
    );
    const change = changeover(document, SETUP, SECOND);
    expect(change.steps.filter(({ work }) => work === 'aside')).toHaveLength(1);
    expect(faultsOf(document, change)).toEqual([]);
  });

  it('moves a lamp with the stand that it is clipped to, lamp off first and on last', () => {
    const document = twoSetups(
      aStand({ id: 'stand-1', x: -1000 }),
      aLamp({ id: 'lamp-1', x: -1000 }),
      aStand({ id: 'stand-2', setup: SECOND, x: 2500 }),
      aLamp({ id: 'lamp-2', setup: SECOND, x: 2500 }),
    );
    const change = changeover(document, SETUP, SECOND);
    expect(change.steps.map(({ work, from, to }) => [work, (from ?? to)?.thing.item])).toEqual([
      ['aside', 'lamp'],
      ['move', 'stand'],
      ['bring', 'lamp'],
    ]);
    expect(faultsOf(document, change)).toEqual([]);
  });

  it('lifts off what stands on a level before the level goes, and sets the level first', () => {
    const riser = { width: 2000, depth: 1200, height: 200 };
    const document = twoSetups(
      aRiser({ id: 'riser-1', x: -1500, ...riser }),
      aSeat({ id: 'seat-1', x: -1500 }),
      aRiser({ id: 'riser-2', setup: SECOND, x: 1500, ...riser }),
      aSeat({ id: 'seat-2', setup: SECOND, x: 1500 }),
    );
    const change = changeover(document, SETUP, SECOND);
    expect(change.steps.map(({ work, hands }) => [work, hands === 'both'])).toEqual([
      ['aside', false],
      ['move', true],
      ['bring', false],
    ]);
    expect(faultsOf(document, change)).toEqual([]);
  });

  it('has this judge find what is wrong with a list in a wrong order', () => {
    const document = twoSetups(
      aStand({ id: 'stand-1', x: 0 }),
      aTable({ id: 'table-2', setup: SECOND, x: 0 }),
    );
    const change = changeover(document, SETUP, SECOND);
    expect(faultsOf(document, change)).toEqual([]);
    const [strike, set] = change.steps;
    if (!strike || !set) throw new Error('two steps were expected');
    const early = {
      ...change,
      steps: [
        { ...set, begins: 0, ends: 1 },
        { ...strike, begins: 2, ends: 3 },
      ],
    };
    expect(faultsOf(document, early).join()).toMatch(/still stands/);
    expect(faultsOf(document, { ...change, steps: [strike] }).join()).toMatch(/ends as another/);
  });

  it('takes heavy things by both', () => {
    const document = twoSetups(aPiano({ x: -1000 }), aPiano({ id: 'piano-2', setup: SECOND, x: 1000 }));
    expect(changeover(document, SETUP, SECOND).steps).toMatchObject([{ work: 'move', hands: 'both' }]);
  });
});

describe('sharing the work', () => {
  const span = (usual: number) => ({ usual, least: usual / 2, most: 2 * usual });
  const still = () => span(0);
  const job = (usual: number, waitsFor: readonly number[] = [], crew: 1 | 2 = 1): Job => ({
    crew,
    start: 0,
    end: 0,
    time: span(usual),
    waitsFor,
  });
  const times = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 25 });

  it('lets both be through about together, and never later than a list schedule can be', () => {
    fc.assert(
      fc.property(times, (list) => {
        const { through, time } = schedule(
          list.map((each) => job(each)),
          still,
        );
        const [sum, longest] = [list.reduce((a, b) => a + b, 0), Math.max(...list)];
        expect(Math.abs(through.A - through.B)).toBeLessThanOrEqual(longest);
        // R. L. Graham, "Bounds on multiprocessing timing anomalies", SIAM J. Appl. Math. 17 (1969) 416-429: for two, 2 - 1/2.
        expect(time.usual).toBeLessThanOrEqual(1.5 * Math.max(sum / 2, longest) + 1e-9);
        expect(time.usual).toBeGreaterThanOrEqual(Math.max(sum / 2, longest) - 1e-9);
      }),
    );
  });

  it('keeps what waits waiting, at the least and the most of every time too', () => {
    fc.assert(
      fc.property(times, fc.array(fc.nat(), { minLength: 25, maxLength: 25 }), (list, links) => {
        const jobs = list.map((each, index) =>
          job(each, index === 0 ? [] : [(links[index] ?? 0) % index], each > 45 ? 2 : 1),
        );
        const { turns, time } = schedule(jobs, still);
        const ends = new Map(turns.map((turn) => [turn.job, turn.ends]));
        for (const turn of turns)
          for (const other of jobs[turn.job]?.waitsFor ?? [])
            expect(turn.begins).toBeGreaterThanOrEqual((ends.get(other) ?? Infinity) - 1e-9);
        // Without walking every time is halved or doubled, so the whole is.
        expect([time.least, time.most]).toEqual([time.usual / 2, 2 * time.usual]);
      }),
    );
  });
});
