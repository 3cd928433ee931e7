/** Against HiGHS (https://highs.dev), a general solver for mixed-integer programmes. */

import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import { orchestraLike, tiny } from '../../../oracles/plan-instances.ts';
import { programmesOf } from '../../../oracles/plan-milp.ts';

const highs = await loadHighs();
const SECONDS = 20;

/** null: no plan; `late`: not done in time. */
function fewestTurns(instance: PlanInstance): number | null | 'late' {
  let fewest: number | null = null;
  for (const programme of programmesOf(instance)) {
    const { Status, ObjectiveValue } = highs.solve(programme, { time_limit: SECONDS });
    if (Status === 'Infeasible') continue;
    if (Status !== 'Optimal') return 'late';
    fewest = Math.min(fewest ?? Infinity, Math.round(ObjectiveValue));
  }
  return fewest;
}

describe('the fewest turns are those of a general solver', () => {
  it('on 150 small instances', () => {
    let finished = 0;
    for (let seed = 1000; seed < 1150; seed++) {
      const instance = tiny(seed);
      const expected = fewestTurns(instance);
      if (expected === 'late') continue;
      finished++;
      const result = planNow(instance);
      expect(result.status === 'planned' ? result.cost.turns : null, `seed ${seed}`).toBe(expected);
    }
    expect(finished).toBeGreaterThan(140);
  });

  it('on parts of eight pages that two players read from two pairs of desks', () => {
    for (let seed = 1; seed <= 3; seed++) {
      const instance = orchestraLike(seed, { pages: 8, players: 2, stations: 2 });
      const expected = fewestTurns(instance);
      const result = planNow(instance);
      expect(expected, `seed ${seed}`).not.toBe('late');
      expect(result.status === 'planned' ? result.cost.turns : null, `seed ${seed}`).toBe(expected);
    }
  });
});
