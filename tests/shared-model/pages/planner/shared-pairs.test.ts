/** Common practice, no source: bare counts that the planner has to find by itself. */

import { describe, expect, it } from 'vitest';
import type { PlanInstance, PlanPlayer } from '#model/pages/planner/instance.ts';
import { judgePlan } from '#model/pages/planner/judge.ts';
import { planNow } from '#model/pages/planner/planner.ts';

const PAGE = 60;

/** Eight pages of equal length; one rest. */
function reader(id: string, rest: readonly [number, number]): PlanPlayer {
  return {
    id,
    pages: 8,
    readings: Array.from({ length: 8 }, (_, index) => ({
      page: index + 1,
      from: index * PAGE,
      to: (index + 1) * PAGE,
    })),
    free: [{ from: rest[0], to: rest[1], hands: ['left', 'right'], silent: true }],
    lookAhead: 3,
  };
}

/** Two pairs side by side, read from both sides; each reader turns only from where he stands. */
const INSTANCE: PlanInstance = {
  players: [reader('one', [2 * PAGE, 2 * PAGE + 8]), reader('two', [5 * PAGE + 20, 5 * PAGE + 28])],
  stations: ['west', 'east'].map((id, order) => ({
    id,
    order,
    sides: [
      { reader: 'one', width: 2, position: order },
      { reader: 'two', width: 2, position: -order },
    ],
    bindings: ['ridge', 'loose'],
    reach: [
      { player: 'one', hand: 'right', side: 0, seconds: 2 },
      { player: 'two', hand: 'right', side: 1, seconds: 2 },
    ],
  })),
};

describe('two readers who face each other over two back-to-back pairs', () => {
  const result = planNow(INSTANCE);
  if (result.status !== 'planned') throw new Error('no plan');
  const { plan, cost, proof } = result;

  it('do with two turns, one by each, and two booklets of four panels', () => {
    expect(judgePlan(INSTANCE, plan).violations).toEqual([]);
    expect(cost).toMatchObject({ turns: 2, stations: 2, width: 4, panels: 8 });
    expect(proof.turns).toEqual({ value: 2, atLeast: 2 });
    expect(proof.jumps.atLeast).toBe(proof.jumps.value);
    expect(plan.stations.map(({ kind, leaves }) => [kind, 2 * (leaves + 1)])).toEqual([
      ['ridge', 4],
      ['ridge', 4],
    ]);
    expect(new Set(plan.turns.map(({ player }) => player)).size).toBe(2);
    expect(plan.turns.every(({ servesPartner }) => servesPartner)).toBe(true);
  });

  it('need two copies of the part: every page is printed twice, once for each', () => {
    for (const side of [0, 1]) {
      const pages = plan.stations.flatMap(({ views }) => (views[side] ?? []).flat());
      expect(pages.toSorted()).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    }
  });

  it('turn first after page two, then during page six', () => {
    const [first, second] = plan.turns;
    expect(first?.readers.map(({ page, during }) => [page, during])).toEqual([
      [2, false],
      // The partner plays on, from the other pair.
      [3, true],
    ]);
    expect(second?.readers.map(({ page, during }) => [page, during])).toEqual([
      [6, true],
      [6, true],
    ]);
  });

  it('begin at the left, and third from the left', () => {
    const rowOf = (side: number, stations: readonly string[]): (number | null)[] =>
      stations.flatMap((id) => plan.stations.find(({ station }) => station === id)?.views[side]?.[0] ?? []);
    expect(rowOf(0, ['west', 'east']).indexOf(1)).toBe(0);
    expect(rowOf(1, ['east', 'west']).indexOf(1)).toBe(2);
  });

  it('have strips that are the reverse of one another: later pages first, and earlier pages first', () => {
    // From the panel fixed on the desk of the first reader to that on the desk of the second.
    const strips = plan.stations.map(({ stackSide, views }) => {
      const [stack, open] = [views[stackSide] ?? [], views[1 - stackSide] ?? []];
      const fromOpen = [open[0], stack[0], open[1], stack[1]].map((view) =>
        Math.min(...(view ?? []).map(Number)),
      );
      return stackSide === 0 ? fromOpen.reverse() : fromOpen;
    });
    const isRising = strips.map(([first = 0, , , last = 0]) => first < last);
    expect(isRising.toSorted()).toEqual([false, true]);
  });
});
