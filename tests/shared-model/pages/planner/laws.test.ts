import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Pin, PlanInstance, PlanStation } from '#model/pages/planner/instance.ts';
import { judgePlan } from '#model/pages/planner/judge.ts';
import { COST_ORDER, type Plan, type PlanCost } from '#model/pages/planner/plan.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import { tiny, tinyDesks } from '../../../oracles/plan-instances.ts';

const seeds = fc.integer({ min: 0, max: 1_000_000 });
const RUNS = { numRuns: 150 };

function costOrNone(instance: PlanInstance): PlanCost | null {
  const result = planNow(instance);
  expect(result.status).not.toBe('faulty');
  return result.status === 'planned' ? result.cost : null;
}

function law(check: (instance: PlanInstance) => void, make = tiny): void {
  fc.assert(
    fc.property(seeds, (seed) => {
      check(make(seed));
    }),
    RUNS,
  );
}

describe('laws of the planner', () => {
  it('keeps every rule, says what its plan costs, and claims no bound above that', () => {
    law((instance) => {
      const result = planNow(instance);
      if (result.status !== 'planned') return;
      expect(judgePlan(instance, result.plan)).toEqual({ violations: [], cost: result.cost });
      for (const figure of COST_ORDER)
        expect(result.proof[figure].atLeast).toBeLessThanOrEqual(result.cost[figure]);
    });
  });

  it('every plan of the front keeps every rule, and none beats another', () => {
    law((instance) => {
      const result = planNow(instance);
      if (result.status !== 'planned') return;
      expect(result.front[0]?.cost.turns).toBe(result.cost.turns);
      for (const [index, { plan, cost }] of result.front.entries()) {
        expect(judgePlan(instance, plan)).toEqual({ violations: [], cost });
        for (const [other, { cost: its }] of result.front.entries())
          if (other !== index)
            expect(cost.turns < its.turns || cost.stations < its.stations || cost.panels < its.panels).toBe(
              true,
            );
      }
    });
  });

  it('plans the same twice', () => {
    law((instance) => {
      expect(planNow(instance)).toEqual(planNow(instance));
    });
  });

  it('does not mind the time scale', () => {
    law((instance) => {
      expect(costOrNone(scaled(instance, 2.5))).toEqual(costOrNone(instance));
    });
  });

  it('does not mind from which side a station is looked at', () => {
    law((instance) => {
      expect(costOrNone(mirrored(instance))).toEqual(costOrNone(instance));
    });
  });

  it('does not mind in which order players are named', () => {
    law((instance) => {
      const reversed = { ...instance, players: instance.players.toReversed() };
      expect(costOrNone(reversed)).toEqual(costOrNone(instance));
    });
  });

  it('never takes more turns when one more station may be set', () => {
    law((instance) => {
      const before = costOrNone(instance);
      const [first] = instance.stations;
      if (!before || !first) return;
      const more = { ...instance, stations: [...instance.stations, { ...first, id: 'more', order: 99 }] };
      expect(costOrNone(more)?.turns ?? Infinity).toBeLessThanOrEqual(before.turns);
    });
  });

  it('keeps what is pinned, and a plan that it made itself is still the best with all of it pinned', () => {
    law((instance) => {
      const result = planNow(instance);
      if (result.status !== 'planned') return;
      const [turn] = result.plan.turns;
      if (!turn) return;
      const pin = {
        kind: 'turn',
        station: turn.station,
        player: turn.player,
        from: turn.at,
        to: turn.at + turn.seconds,
      } as const;
      const again = planNow({ ...instance, pins: [pin] });
      expect(again.status).toBe('planned');
      if (again.status !== 'planned') return;
      expect(judgePlan({ ...instance, pins: [pin] }, again.plan).violations).toEqual([]);
      expect(again.cost.turns).toBe(result.cost.turns);
    });
  });

  it('finds a plan on wide desks again with every page and turn of it pinned, and judges it the same', () => {
    law((instance) => {
      const result = planNow(instance);
      if (result.status !== 'planned') return;
      const pinned = { ...instance, pins: pinsOf(result.plan) };
      const again = planNow(pinned);
      if (again.status !== 'planned') expect.fail(`${again.status}`);
      expect(judgePlan(pinned, again.plan)).toEqual({ violations: [], cost: result.cost });
    }, tinyDesks);
  });
});

function pinsOf({ stations, turns }: Plan): Pin[] {
  const pages = stations.flatMap(({ station, views }) =>
    views.flatMap((states, side) =>
      states.flatMap((view, state) =>
        view.flatMap((page, slot): Pin[] =>
          page === null ? [] : [{ kind: 'page', station, side: side as 0 | 1, state, slot, page }],
        ),
      ),
    ),
  );
  const moves = turns.slice(0, 8).map(({ station, player, at, seconds }): Pin => ({
    kind: 'turn',
    station,
    player,
    from: at,
    to: at + seconds,
  }));
  return [...pages, ...moves];
}

function scaled(instance: PlanInstance, by: number): PlanInstance {
  const stretch = <T extends { readonly from: number; readonly to: number }>(span: T): T => ({
    ...span,
    from: span.from * by,
    to: span.to * by,
  });
  return {
    ...instance,
    players: instance.players.map((player) => ({
      ...player,
      readings: player.readings.map(stretch),
      free: player.free.map(stretch),
      lookAhead: (player.lookAhead ?? 0) * by,
    })),
    stations: instance.stations.map((station) => ({
      ...station,
      reach: station.reach.map((reach) => ({ ...reach, seconds: reach.seconds * by })),
    })),
  };
}

/** The other side of every pair is its first. */
function mirrored(instance: PlanInstance): PlanInstance {
  const flip = (station: PlanStation): PlanStation => {
    const [first, second] = station.sides;
    if (!first) return station;
    if (!second) return { ...station, sides: [first] };
    const reach = station.reach.map((one) => ({ ...one, side: one.side === 0 ? 1 : 0 }) as const);
    return { ...station, sides: [second, first], reach };
  };
  return { ...instance, stations: instance.stations.map(flip) };
}
