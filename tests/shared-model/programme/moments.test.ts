import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { Point } from '#model/document/records.ts';
import { changeover, type Changeover, type Step } from '#model/programme/changeover.ts';
import { partsOf } from '#model/programme/programme.ts';
import { unitsOf, type Unit } from '#model/programme/units.ts';
import '../../helpers/seed.ts';
import { aPiano, aRiser, aSeat, aStand, aTable, SETUP } from '../../helpers/build.ts';
import { demoConcert } from '../checks/remedies/demo.ts';
import { SECOND, twoSetups } from './programme-scenes.ts';

/*
 * Every carrying way is held against what stands at its time, worked out here from the times of the steps alone and with
 * measures of its own: a way is walked in steps of 20 mm, and from each spot the distance to every outline is taken.
 */

/** Half of what the ways promise: the concert's width (915) where it is clear, 500 where it is tight. */
const HALF = { clear: 915 / 2, tight: 500 / 2 };
/** So near the thing's own spots a squeeze will do. */
const NEAR = 600;
const SPACING = 20;

function standingDuring(document: Document, change: Changeover, step: Step): Unit[] {
  const { from, steps, stays } = change;
  const stayed = new Set(stays.map((pair) => pair.from.id));
  const before = from ? unitsOf(document, from).filter(({ id }) => stayed.has(id)) : [];
  const others = steps.filter((other) => other !== step);
  const notYetTaken = others.flatMap((other) =>
    other.begins > step.begins && other.from ? [other.from] : [],
  );
  const alreadySet = others.flatMap((other) => (other.ends <= step.begins && other.to ? [other.to] : []));
  return [...before, ...notYetTaken, ...alreadySet].filter(({ thing }) => thing.item !== 'riser');
}

function spotsAlong({ points }: Step['way']): Point[] {
  return points.flatMap((b, index) => {
    const a = points[index - 1];
    if (!a) return [];
    const count = Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / SPACING));
    return Array.from({ length: count + 1 }, (_, at) => ({
      x: a.x + (at / count) * (b.x - a.x),
      y: a.y + (at / count) * (b.y - a.y),
    }));
  });
}

function distanceTo(outline: Unit['outline'], { x, y }: Point): number {
  let [least, isInside] = [Infinity, false];
  outline.forEach((a, index) => {
    const b = outline[(index + 1) % outline.length] ?? a;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const share = Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy || 1)));
    least = Math.min(least, Math.hypot(a.x + share * dx - x, a.y + share * dy - y));
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / dy) * dx) isInside = !isInside;
  });
  return isInside ? 0 : least;
}

/** In words; a way of which it is said that there is none is not asked. */
function crossings(document: Document, change: Changeover): string[] {
  return change.steps.flatMap((step) => {
    const { way, from, to, number, work } = step;
    if (way.ease === 'none' || work === 'turn' || work === 'adjust') return [];
    const ends = [from, to].flatMap((end) => end?.spot ?? []);
    const room = HALF[way.ease];
    return standingDuring(document, change, step).flatMap((unit) => {
      const isOver = ends.some((end) => distanceTo(unit.outline, end) === 0);
      const hit = spotsAlong(way).find((spot) => {
        const gap = distanceTo(unit.outline, spot);
        const isNear = ends.some((end) => Math.hypot(end.x - spot.x, end.y - spot.y) <= NEAR + SPACING);
        return isNear ? gap === 0 && !isOver : gap < room - 1;
      });
      return hit
        ? [`${number} (${way.ease}) meets ${unit.id} at ${Math.round(hit.x)}, ${Math.round(hit.y)}`]
        : [];
    });
  });
}

describe('carrying among what stands at the time', () => {
  it('goes round what is already set and not yet struck in the demo', () => {
    const document = demoConcert();
    for (const { from, to } of partsOf(document)) {
      const change = changeover(document, from?.id ?? null, to?.id ?? null);
      expect(crossings(document, change)).toEqual([]);
      expect(change.steps.map(({ way }) => way.ease)).not.toContain('none');
    }
  });

  it('has this judge see a way through what stands', () => {
    const document = twoSetups(
      aTable({ id: 'table-1', x: 0, y: 2000 }),
      aTable({ id: 'table-2', setup: SECOND, x: 0, y: 2000 }),
      aStand({ id: 'stand-1', x: -2000, y: 2000 }),
      aStand({ id: 'stand-2', setup: SECOND, x: 2000, y: 2000 }),
    );
    const change = changeover(document, SETUP, SECOND);
    expect(crossings(document, change)).toEqual([]);
    const [step] = change.steps;
    if (!step) throw new Error('one step was expected');
    expect(step.way.length).toBeGreaterThan(4100);
    const through = {
      ...step,
      way: { ...step.way, points: [step.from, step.to].flatMap((end) => end?.spot ?? []) },
    };
    expect(crossings(document, { ...change, steps: [through] }).join()).toMatch(/meets table-1/);
  });

  it('goes round what is only turned or adjusted', () => {
    const document = twoSetups(
      aTable({ id: 'table-1', x: 0, y: 2000, facing: 0 }),
      aTable({ id: 'table-2', setup: SECOND, x: 0, y: 2000, facing: 20 }),
      aStand({ id: 'stand-1', x: -2000, y: 2000 }),
      aStand({ id: 'stand-2', setup: SECOND, x: 2000, y: 2000 }),
    );
    const move = changeover(document, SETUP, SECOND).steps.find(({ work }) => work === 'move');
    expect(move?.way.length).toBeGreaterThan(4100);
  });

  it('takes longer for the longer way', () => {
    const stands = [
      aStand({ id: 'stand-1', x: -2000, y: 2000 }),
      aStand({ id: 'stand-2', setup: SECOND, x: 2000, y: 2000 }),
    ];
    const tables = [
      aTable({ id: 'table-1', x: 0, y: 2000 }),
      aTable({ id: 'table-2', setup: SECOND, x: 0, y: 2000 }),
    ];
    const [free, round] = [stands, [...stands, ...tables]].map((each) =>
      changeover(twoSetups(...each), SETUP, SECOND),
    );
    const [short, long] = [free?.steps[0]?.way.length ?? NaN, round?.steps[0]?.way.length ?? NaN];
    // 1.0668 m/s (TxDOT Roadway Design Manual, 3.5 ft/s; check-values section 3).
    expect((round?.time.usual ?? NaN) - (free?.time.usual ?? NaN)).toBeCloseTo((long - short) / 1066.8, 6);
  });

  it('sets what would be shut in before what shuts it in', () => {
    // A row of tables from wall to wall: what stands behind has to be there first, whatever is nearer.
    const row = (setup: Id<'setup'>) =>
      [-3200, -1600, 0, 1600, 3200].map((x, index) =>
        aTable({ id: `table-${index + 1}`, setup, x, y: 2500, width: 1550, depth: 600 }),
      );
    const document = twoSetups(...row(SECOND), aStand({ id: 'stand-1', setup: SECOND, x: 0, y: 1000 }));
    const change = changeover(document, SETUP, SECOND);
    expect(crossings(document, change)).toEqual([]);
    expect(change.steps.map(({ way }) => way.ease)).not.toContain('none');
  });

  it('meets nothing in setups by chance, or says that there is no way', () => {
    const spot = { x: fc.integer({ min: -3000, max: 3000 }), y: fc.integer({ min: 900, max: 4000 }) };
    const facing = fc.constantFrom(0, 45, 90, 180, -90);
    const kind = fc.constantFrom('stand', 'seat', 'table', 'piano', 'riser');
    const things = fc.array(fc.record({ kind, facing, ...spot }), { maxLength: 8 });
    fc.assert(
      fc.property(things, things, (first, second) => {
        const records = [
          ...first.map((each, index) => built(each, SETUP, index)),
          ...second.map((each, index) => built(each, SECOND, index)),
        ];
        const document = twoSetups(...records);
        const change = changeover(document, SETUP, SECOND);
        expect(crossings(document, change)).toEqual([]);
        for (const { way } of change.steps) {
          const walked = way.points.reduce((sum, b, index) => {
            const a = way.points[index - 1];
            return a ? sum + Math.hypot(b.x - a.x, b.y - a.y) : sum;
          }, 0);
          expect(walked).toBeCloseTo(way.length, 6);
        }
      }),
      { numRuns: 40 },
    );
  });
});

interface Thing extends Point {
  readonly kind: string;
  readonly facing: number;
}

function built({ kind, facing, x, y }: Thing, setup: Id<'setup'>, index: number) {
  const fields = { x, y, facing, setup, id: `${setup}-${kind}-${index}` };
  switch (kind) {
    case 'stand':
      return aStand(fields);
    case 'seat':
      return aSeat(fields);
    case 'table':
      return aTable(fields);
    case 'piano':
      return aPiano(fields);
    default:
      return aRiser({ ...fields, facing: 0, width: 1500, depth: 1000, height: 200 });
  }
}
