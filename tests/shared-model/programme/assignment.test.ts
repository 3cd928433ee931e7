import fc from 'fast-check';
import highs from 'highs';
import { describe, expect, it } from 'vitest';
import { asId } from '#model/document/ids.ts';
import type { Point, Stock } from '#model/document/records.ts';
import { carriedPairs, costOf, stayingPairs, type Costs, type Pair } from '#model/programme/assignment.ts';
import { changeover } from '#model/programme/changeover.ts';
import { unitsOf, type Unit } from '#model/programme/units.ts';
import '../../helpers/seed.ts';
import { SETUP } from '../../helpers/build.ts';
import { CROSSINGS, SECOND, standsAt, twoSetups } from './programme-scenes.ts';
import { aDoor, aSeat, aStand, aStock, aStorage, aTable } from '../../helpers/build.ts';

/*
 * Two outside judges: every assignment there is, tried one by one (up to 8 things), and HiGHS, a solver of linear
 * programmes, whose optimum of an assignment is one of whole numbers (Birkhoff; H. W. Kuhn, Nav. Res. Log. Q. 2 (1955) 83).
 */

/** Cost of every cell; rows are what stood, columns what will stand, and beyond either lies storage. */
type Matrix = readonly (readonly number[])[];

function bruteForce(matrix: Matrix): number {
  const size = matrix.length;
  const used = new Array<boolean>(size).fill(false);
  const best = (row: number): number => {
    if (row === size) return 0;
    let least = Infinity;
    for (let column = 0; column < size; column++) {
      if (used[column]) continue;
      used[column] = true;
      least = Math.min(least, (matrix[row]?.[column] ?? 0) + best(row + 1));
      used[column] = false;
    }
    return least;
  };
  return best(0);
}

const solver = await highs({});

function byHighs(matrix: Matrix): number {
  const name = (row: number, column: number) => `x${row}_${column}`;
  const indices = matrix.map((_, index) => index);
  const cells = indices.flatMap((row) => indices.map((column) => ({ row, column })));
  const objective = cells.map(({ row, column }) => `${matrix[row]?.[column] ?? 0} ${name(row, column)}`);
  const rows = indices.map((row) => `r${row}: ${indices.map((column) => name(row, column)).join(' + ')} = 1`);
  const columns = indices.map(
    (column) => `c${column}: ${indices.map((row) => name(row, column)).join(' + ')} = 1`,
  );
  const model = `Minimize\n obj: ${objective.join(' + ')}\nSubject To\n ${[...rows, ...columns].join('\n ')}\nEnd`;
  const result = solver.solve(model);
  if (result.Status !== 'Optimal') throw new Error(result.Status);
  return result.ObjectiveValue;
}

const flat = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);
const toDoor = (from: Point) => Math.min(...CROSSINGS.map((crossing) => flat(from, crossing)));

/** On a bare platform every way is straight, so these costs need nothing of the program's ways. */
function matrixOf(first: readonly Point[], second: readonly Point[]): Matrix {
  const size = Math.max(first.length, second.length);
  return Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (__, column) => {
      const [a, b] = [first[row], second[column]];
      if (a && b) return flat(a, b);
      const alone = a ?? b;
      return alone ? toDoor(alone) : 0;
    }),
  );
}

const FLAT: Costs = {
  move: (from, to) => flat(from.spot, to.spot),
  strike: (from) => toDoor(from.spot),
  set: (to) => toDoor(to.spot),
};

/** Far enough from the edges that the way to the door is wide and straight. */
const spot = fc.record({
  x: fc.integer({ min: -60, max: 60 }).map((step) => 50 * step),
  y: fc.integer({ min: 700, max: 4000 }),
});
const spots = (least: number, most: number) => fc.array(spot, { minLength: least, maxLength: most });
/** Between the spots of the first setup, so that nothing stays and everything is carried past nothing. */
const between = (least: number, most: number) =>
  spots(least, most).map((list) => list.map(({ x, y }) => ({ x: x + 25, y })));

describe('the cheapest assignment', () => {
  it('through the changeover of documents, as brute force finds it, up to 8 things', () => {
    fc.assert(
      fc.property(spots(0, 8), between(0, 8), (first, second) => {
        const change = changeover(standsAt(first, second), SETUP, SECOND);
        expect(change.carried).toBeCloseTo(bruteForce(matrixOf(first, second)), 4);
        expect(change.stays).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('through the changeover of documents, as HiGHS finds it, up to 40 things', () => {
    fc.assert(
      fc.property(spots(12, 40), between(12, 40), (first, second) => {
        const change = changeover(standsAt(first, second), SETUP, SECOND);
        expect(change.carried).toBeCloseTo(byHighs(matrixOf(first, second)), 2);
      }),
      { numRuns: 8 },
    );
  });

  it('loses nothing by leaving what stands right where it is', () => {
    fc.assert(
      fc.property(spots(1, 7), spots(0, 7), fc.nat({ max: 7 }), (first, others, kept) => {
        const second = [...first.slice(0, kept), ...others].slice(0, 7);
        const document = standsAt(first, second);
        const [before, after] = [unitsOf(document, SETUP), unitsOf(document, SECOND)];
        const staying = stayingPairs(before, after);
        const isLoose = (unit: Unit) => !staying.some(({ from, to }) => from === unit || to === unit);
        const pairs = carriedPairs(before.filter(isLoose), after.filter(isLoose), { costs: FLAT });
        const total = pairs.reduce((sum, pair) => sum + costOf(pair, FLAT), 0);
        // What stays may stand up to 20 mm off.
        expect(total).toBeLessThanOrEqual(bruteForce(matrixOf(first, second)) + 20 * staying.length + 1e-6);
      }),
    );
  });

  it('of any costs, also ones that are no distances', () => {
    const size = fc.integer({ min: 1, max: 7 });
    fc.assert(
      fc.property(
        size,
        size,
        fc.array(fc.integer({ max: 1000, min: 0 }), { minLength: 64, maxLength: 64 }),
        (n, m, costs) => {
          const at = (index: number): Point => ({ x: index, y: 2000 });
          const document = standsAt(
            Array.from({ length: n }, (_, index) => at(index)),
            Array.from({ length: m }, (_, index) => at(index)),
          );
          const [before, after] = [unitsOf(document, SETUP), unitsOf(document, SECOND)];
          const cost = (row: number, column: number) => costs[8 * row + column] ?? 0;
          const priced: Costs = {
            move: (from, to) => cost(before.indexOf(from), after.indexOf(to)),
            strike: (from) => cost(before.indexOf(from), 7),
            set: (to) => cost(7, after.indexOf(to)),
          };
          const pairs = carriedPairs(before, after, { costs: priced });
          const total = pairs.reduce((sum, pair) => sum + costOf(pair, priced), 0);
          const most = Math.max(n, m);
          const matrix = Array.from({ length: most }, (_, row) =>
            Array.from({ length: most }, (__, column) => cost(row < n ? row : 7, column < m ? column : 7)),
          );
          expect(total).toBe(bruteForce(matrix));
          expect(isComplete(pairs, before, after)).toBe(true);
        },
      ),
    );
  });
});

/** Every partial matching of `n` old and `m` new things, tried one by one: what is left over is struck or brought. */
function leastOfAll(n: number, m: number, price: Price): number {
  const places = new Array<number>(m).fill(-1);
  const best = (row: number, sum: number): number => {
    if (row === n) return sum + broughtFor(places, n, price);
    let least = best(row + 1, sum + price.strike(row));
    for (let column = 0; column < m; column++) {
      if (places[column] !== -1) continue;
      places[column] = row;
      least = Math.min(least, best(row + 1, sum + price.move(row, column)));
      places[column] = -1;
    }
    return least;
  };
  return best(0, 0);
}

interface Price {
  readonly move: (row: number, column: number) => number;
  readonly strike: (row: number) => number;
  readonly set: (column: number) => number;
  readonly placeOf: (column: number) => number;
  /** By place. */
  readonly spare: readonly number[];
}

/** What cannot be moved has to come from somewhere; all beyond that only from where a spare one waits. */
function broughtFor(places: readonly number[], n: number, { set, placeOf, spare }: Price): number {
  const brought = places.flatMap((row, column) => (row === -1 ? [column] : []));
  const beyond = spare.map((count, place) =>
    Math.max(0, brought.filter((column) => placeOf(column) === place).length - count),
  );
  const needed = Math.max(0, places.length - n);
  if (beyond.reduce((sum, count) => sum + count, 0) > needed) return Infinity;
  return brought.reduce((sum, column) => sum + set(column), 0);
}

describe('struck here and brought from there', () => {
  it('is chosen where that is cheaper, as brute force over all partial matchings finds it, with one store and two', () => {
    const size = fc.integer({ min: 0, max: 6 });
    const numbers = (count: number, max: number) =>
      fc.array(fc.integer({ min: 0, max }), { minLength: count, maxLength: count });
    let further = 0;
    fc.assert(
      fc.property(
        size,
        size,
        numbers(64, 1000),
        numbers(8, 1),
        numbers(2, 4),
        fc.integer({ min: 1, max: 2 }),
        (n, m, costs, sides, spare, stores) => {
          const at = (index: number): Point => ({ x: index, y: 2000 });
          const spotsOf = (count: number) => Array.from({ length: count }, (_, index) => at(index));
          const document = standsAt(spotsOf(n), spotsOf(m));
          const [before, after] = [unitsOf(document, SETUP), unitsOf(document, SECOND)];
          const price: Price = {
            move: (row, column) => costs[8 * row + column] ?? 0,
            strike: (row) => (costs[8 * row + 7] ?? 0) / 3,
            set: (column) => (costs[56 + column] ?? 0) / 3,
            placeOf: (column) => (stores === 1 ? 0 : (sides[column] ?? 0)),
            spare: spare.slice(0, stores),
          };
          const priced: Costs = {
            move: (from, to) => price.move(before.indexOf(from), after.indexOf(to)),
            strike: (from) => price.strike(before.indexOf(from)),
            set: (to) => price.set(after.indexOf(to)),
          };
          const spares = (to: Unit) => {
            const place = price.placeOf(after.indexOf(to));
            return { place: `store-${place}`, count: spare[place] ?? 0 };
          };
          const pairs = carriedPairs(before, after, { costs: priced, spares });
          const total = pairs.reduce((sum, pair) => sum + costOf(pair, priced), 0);
          expect(total).toBeCloseTo(leastOfAll(n, m, price), 3);
          expect(isEachOnce(pairs, before, after)).toBe(true);
          if (pairs.some(({ to }) => to === null) && pairs.some(({ from }) => from === null)) further++;
        },
      ),
      { numRuns: 60 },
    );
    expect(further).toBeGreaterThan(0);
  });

  /** Chairs at one side and then at the other, each side with a door and a place behind it. */
  const acrossWith = (...stock: Stock[]) =>
    changeover(
      twoSetups(
        aDoor({ id: 'door-1', edge: 3, offset: 1000, width: 3000 }),
        aDoor({ id: 'door-2', edge: 1, offset: 1000, width: 3000 }),
        aStorage({ id: 'storage-1', x: -5000, y: 2500, door: asId('door-1') }),
        aStorage({ id: 'storage-2', x: 5000, y: 2500, door: asId('door-2') }),
        ...stock,
        ...[1500, 2500, 3500].flatMap((y, index) => [
          aSeat({ id: `seat-1${index}`, x: -3000, y }),
          aSeat({ id: `seat-2${index}`, setup: SECOND, x: 3000, y }),
        ]),
      ),
      SETUP,
      SECOND,
    );
  const chairs = (store: 1 | 2, owned: number) =>
    aStock({
      ...{ id: `stock-${store}`, item: 'seat', model: aSeat().model, owned },
      storage: asId(`storage-${store}`),
    });

  it('leaves the long way across where each side has chairs enough', () => {
    const { steps, carried } = acrossWith(chairs(1, 6), chairs(2, 6));
    expect(steps.map(({ work }) => work).sort()).toEqual(['set', 'set', 'set', 'strike', 'strike', 'strike']);
    // Straight lines: three ways of at least 2 m to either place, and not three of 6 m across.
    expect(carried).toBeGreaterThanOrEqual(12_000);
    expect(carried).toBeLessThan(14_500);
  });

  it('takes no chair that is not sure to wait there', () => {
    const setsWith = (...stock: Stock[]) =>
      acrossWith(...stock).steps.filter(({ work }) => work === 'set').length;
    expect(setsWith(chairs(1, 6), chairs(2, 4))).toBe(1);
    expect(setsWith(chairs(1, 6), chairs(2, 3))).toBe(0);
    expect(setsWith()).toBe(0);
  });
});

/** Every thing once, and none taken away while another of its kind is brought. */
function isComplete(pairs: readonly Pair[], before: readonly Unit[], after: readonly Unit[]): boolean {
  const isIdle = pairs.some(({ to }) => to === null) && pairs.some(({ from }) => from === null);
  return isEachOnce(pairs, before, after) && !isIdle;
}

function isEachOnce(pairs: readonly Pair[], before: readonly Unit[], after: readonly Unit[]): boolean {
  const ends = (side: 'from' | 'to') => pairs.flatMap((pair) => pair[side] ?? []);
  const isOnce = (found: readonly Unit[], wanted: readonly Unit[]) =>
    found.length === wanted.length && wanted.every((unit) => found.includes(unit));
  return isOnce(ends('from'), before) && isOnce(ends('to'), after);
}

describe('what can stand in for what', () => {
  const worksOf = (...records: Parameters<typeof twoSetups>) =>
    changeover(twoSetups(...records), SETUP, SECOND)
      .steps.map(({ work }) => work)
      .sort();

  it('goes by kind, model and fixed size', () => {
    expect(worksOf(aStand(), aStand({ id: 'stand-2', setup: SECOND, x: 900, lip: 950 }))).toEqual(['move']);
    expect(worksOf(aStand(), aStand({ id: 'stand-2', setup: SECOND, x: 900, model: 'folding' }))).toEqual([
      'set',
      'strike',
    ]);
    expect(worksOf(aStand(), aStand({ id: 'stand-2', setup: SECOND, x: 900, deskWidth: 400 }))).toEqual([
      'set',
      'strike',
    ]);
    expect(worksOf(aTable(), aTable({ id: 'table-2', setup: SECOND, x: 900, width: 700 }))).toEqual([
      'set',
      'strike',
    ]);
    expect(worksOf(aSeat(), aSeat({ id: 'seat-2', setup: SECOND, x: 900, height: 480 }))).toEqual(['move']);
  });

  it('leaves what stays for the whole concert alone', () => {
    expect(worksOf(aStand({ setup: null }))).toEqual([]);
  });

  it('tells what is turned or set anew where it stands', () => {
    expect(worksOf(aStand(), aStand({ id: 'stand-2', setup: SECOND, facing: 90 }))).toEqual(['turn']);
    expect(worksOf(aStand(), aStand({ id: 'stand-2', setup: SECOND, lip: 900 }))).toEqual(['adjust']);
    expect(worksOf(aStand(), aStand({ id: 'stand-2', setup: SECOND, lip: 803 }))).toEqual([]);
  });
});
