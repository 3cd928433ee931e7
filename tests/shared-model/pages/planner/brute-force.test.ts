import { expect, it } from 'vitest';
import type { Binding } from '#model/pages/bindings/binding.ts';
import { bindingFault } from '#model/pages/bindings/fault.ts';
import { judgePlan } from '#model/pages/planner/judge.ts';
import type { StationPlan } from '#model/pages/planner/plan.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import { bruteForce } from '../../../oracles/plan-brute-force.ts';
import { tiny, tinyDesks } from '../../../oracles/plan-instances.ts';

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

it(`finds it too for concertinas of two to four pages, on ${INSTANCES} small instances`, () => {
  const tally = { planned: 0, wide: 0, back: 0 };
  for (let seed = 0; seed < INSTANCES; seed++) {
    const instance = tinyDesks(seed);
    const result = planNow(instance);
    const expected = bruteForce(instance, MOST_TURNS);
    if (result.status !== 'planned') {
      expect([result.status, expected], `seed ${seed}`).toEqual(['none', null]);
      continue;
    }
    const { turns, stations, width, panels } = result.cost;
    expect(judgePlan(instance, result.plan), `seed ${seed}`).toEqual({ violations: [], cost: result.cost });
    if (expected === null) {
      expect(turns, `seed ${seed}`).toBeGreaterThan(MOST_TURNS);
      continue;
    }
    expect({ turns, stations, width, panels }, `seed ${seed}`).toEqual(expected);
    for (const figure of ['turns', 'stations', 'width', 'panels', 'jumps'] as const)
      expect(result.proof[figure].atLeast, `seed ${seed}, ${figure}`).toBe(result.cost[figure]);
    tally.planned++;
    const wide = result.plan.stations.filter(isWideConcertina);
    // The paper can be taped together like that.
    for (const station of wide) expect(bindingFault(bindingOf(station)), `seed ${seed}`).toBeNull();
    if (wide.length > 0 && turns > 0) tally.wide++;
    if (wide.length > 0 && result.plan.turns.some(({ direction }) => direction === 'back')) tally.back++;
  }
  // Instances of every kind came up.
  expect(tally.planned).toBeGreaterThan(200);
  expect(tally.wide).toBeGreaterThan(30);
  expect(tally.back).toBeGreaterThan(0);
});

function isWideConcertina({ kind, pagesAcross: [across = 0], leaves }: StationPlan): boolean {
  return kind === 'concertina' && across > 2 && leaves > 0;
}

function bindingOf({ kind, leaves, pagesAcross: [across = 0], views }: StationPlan): Binding {
  const refs = views.map((states) =>
    states.map((view) => view.map((page) => (page === null ? null : { part: 'p0', page }))),
  );
  return { kind, leaves, pagesPerPanel: across, stackSide: 0, views: refs };
}
