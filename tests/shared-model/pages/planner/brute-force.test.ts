import { expect, it } from 'vitest';
import { judgePlan } from '#model/pages/planner/judge.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import { bruteForce } from '../../../oracles/plan-brute-force.ts';
import { tiny } from '../../../oracles/plan-instances.ts';

const INSTANCES = 300;
/** Beyond this, trying everything takes too long; the planner must then find no fewer. */
const MOST_TURNS = 3;

it(`finds what trying everything finds, on ${INSTANCES} small instances`, () => {
  const tally = { planned: 0, none: 0, many: 0 };
  for (let seed = 0; seed < INSTANCES; seed++) {
    const instance = tiny(seed);
    const result = planNow(instance);
    const expected = bruteForce(instance, MOST_TURNS);
    expect(result.status, `seed ${seed}`).not.toBe('faulty');
    if (result.status !== 'planned') {
      expect([result, expected], `seed ${seed}`).toEqual([{ status: 'none', proved: true }, null]);
      tally.none++;
      continue;
    }
    const { turns, stations, width, panels } = result.cost;
    expect(judgePlan(instance, result.plan), `seed ${seed}`).toEqual({ violations: [], cost: result.cost });
    if (expected === null) {
      expect(turns, `seed ${seed}`).toBeGreaterThan(MOST_TURNS);
      tally.many++;
      continue;
    }
    expect({ turns, stations, width, panels }, `seed ${seed}`).toEqual(expected);
    for (const figure of ['turns', 'stations', 'width', 'panels', 'jumps'] as const)
      expect(result.proof[figure].atLeast, `seed ${seed}, ${figure}`).toBe(result.cost[figure]);
    tally.planned++;
  }
  // Instances of every kind came up.
  expect(tally.planned).toBeGreaterThan(100);
  expect(tally.none).toBeGreaterThan(10);
});
