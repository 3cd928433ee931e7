/** Plans that are kept and told again. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keptOf, planOf } from '#model/pages/kept/plan-of.ts';
import { judgePlan } from '#model/pages/planner/judge.ts';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import type { Plan, Turn } from '#model/pages/planner/plan.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import { performanceOf, type Performance } from '#model/score/music/performance.ts';
import { MUSIC } from '../../../helpers/build.ts';
import '../../../helpers/seed.ts';
import { orchestraLike, tiny } from '../../../oracles/plan-instances.ts';

/** Bars of 4, 2.5 and 5.5 s and so on, long enough for every instance here. */
const BARS: Performance = performanceOf({
  ...MUSIC,
  bars: Array.from({ length: 600 }, (_, index) => ({
    number: `${index}`,
    ticks: [8, 5, 11][index % 3] ?? 8,
  })),
  order: [[0, 599]],
});

function told(instance: PlanInstance, plan: Plan): Plan {
  return planOf(instance, keptOf(plan, BARS), BARS);
}

function expectSame(instance: PlanInstance, plan: Plan): void {
  const again = told(instance, plan);
  expect(again.stations).toEqual(plan.stations);
  expect(again.turns).toHaveLength(plan.turns.length);
  for (const [index, turn] of again.turns.entries()) {
    const { at, seconds, window, margin, ...rest } = plan.turns[index]!;
    expect(turn).toMatchObject(rest);
    expect(turn.at).toBeCloseTo(at, 8);
    expect(turn.seconds).toBeCloseTo(seconds, 8);
    expectWindow(turn, { window, margin });
  }
  expect(judgePlan(instance, again)).toEqual(judgePlan(instance, plan));
}

/** What else is printed elsewhere makes room, so a turn may have more than the planner counted on, and never less. */
function expectWindow(turn: Turn, { window, margin }: Pick<Turn, 'window' | 'margin'>): void {
  expect(turn.window.from).toBeLessThanOrEqual(window.from + 1e-6);
  expect(turn.window.to).toBeGreaterThanOrEqual(window.to - 1e-6);
  expect(turn.margin).toBeGreaterThanOrEqual(margin - 1e-6);
}

describe('a plan that is kept and told again', () => {
  it('is the plan that it was: readers, bars, sides and judgement', () => {
    let turns = 0;
    let sameWindows = 0;
    const count = (instance: PlanInstance): void => {
      const result = planNow(instance);
      if (result.status !== 'planned') return;
      for (const { plan } of result.front) {
        expectSame(instance, plan);
        for (const [index, turn] of told(instance, plan).turns.entries()) {
          turns += 1;
          const { window } = plan.turns[index]!;
          if (Math.abs(window.from - turn.window.from) + Math.abs(window.to - turn.window.to) < 1e-6)
            sameWindows += 1;
        }
      }
    };
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1_000_000 }), (seed) => count(tiny(seed))),
      {
        numRuns: 150,
      },
    );
    for (const seed of [1, 2, 3]) count(orchestraLike(seed, { pages: 8, players: 2, stations: 2 }));
    expect(turns).toBeGreaterThan(50);
    expect(sameWindows / turns).toBeGreaterThan(0.8);
  });
});
