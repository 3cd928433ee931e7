import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import { needsOf } from '#model/pages/planner/needs.ts';
import type { Plan, Turn } from '#model/pages/planner/plan.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import { isSameMoment, momentAt, type RunMoment } from '#model/pages/running/moment.ts';
import { runOf } from '#model/pages/running/run.ts';
import { isThin, warningSentence, warningsOf } from '#model/pages/running/warnings.ts';
import { tiny } from '../../../oracles/plan-instances.ts';

function planned(instance: PlanInstance): Plan | null {
  const result = planNow(instance);
  return result.status === 'planned' ? result.plan : null;
}

/** For every planned instance of a run of seeds; and that there were some. */
function law(check: (instance: PlanInstance, plan: Plan) => void): void {
  let checked = 0;
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1_000_000 }), (seed) => {
      const instance = tiny(seed);
      const plan = planned(instance);
      if (!plan) return;
      checked += plan.turns.length > 0 ? 1 : 0;
      check(instance, plan);
    }),
    { numRuns: 200 },
  );
  expect(checked).toBeGreaterThan(20);
}

/** A little before, at and after everything that happens, and between. */
function timesOf({ players }: PlanInstance, { turns }: Plan): number[] {
  const edges = [
    ...players.flatMap(({ readings, free }) => [...readings, ...free].flatMap(({ from, to }) => [from, to])),
    ...turns.flatMap(({ at, seconds }) => [at, at + seconds]),
  ];
  return edges.flatMap((edge) => [edge - 1e-3, edge, edge + 1e-3, edge + 0.4]).sort((a, b) => a - b);
}

/** Turn by turn from the beginning: the state of a station, and what is in motion there. */
function replayed({ turns }: Plan, station: string, time: number): { state: number; turn: Turn | null } {
  let state = 0;
  for (const turn of turns.toSorted((a, b) => a.at - b.at)) {
    if (turn.station !== station || turn.at > time) continue;
    if (time < turn.at + turn.seconds) return { state, turn };
    state += turn.direction === 'forward' ? 1 : -1;
  }
  return { state, turn: null };
}

/** All that a player sees, from the moment alone. */
function inSightOf(player: string, { stations }: RunMoment): (number | null)[] {
  return stations
    .filter(({ turn }) => turn === null)
    .flatMap(({ sides }) => sides.filter(({ reader }) => reader === player).flatMap(({ view }) => [...view]));
}

describe('a plan as it runs', () => {
  it('has every page that is read in sight of its reader, where the lane says', () => {
    law((instance, plan) => {
      const run = runOf(instance, plan);
      for (const { player: index, page, from, to } of needsOf(instance)) {
        const player = instance.players[index]?.id ?? '';
        for (const time of [from, (from + to) / 2, to - 1e-3]) {
          const moment = momentAt(run, time);
          const now = moment.players.find((one) => one.player === player);
          expect(inSightOf(player, moment)).toContain(page);
          expect(now).toMatchObject({ page, lost: false });
          const side = moment.stations.find(({ station }) => station === now?.place?.station)?.sides[
            now?.place?.side ?? -1
          ];
          expect(side?.view[now?.place?.slot ?? -1]).toBe(page);
        }
      }
    });
  });

  it('is at every moment what a replay turn by turn gives', () => {
    law((instance, plan) => {
      const run = runOf(instance, plan);
      for (const time of timesOf(instance, plan)) {
        const moment = momentAt(run, time);
        for (const { station, state, turn, sides } of moment.stations) {
          expect({ state, turn }).toEqual(replayed(plan, station, time));
          const bound = plan.stations.find((one) => one.station === station);
          expect(sides.map(({ view }) => view)).toEqual(bound?.views.map((states) => states[state]));
        }
        for (const { player, page, place } of moment.players) {
          if (!place) continue;
          // Where a page is said to lie it lies still, before its reader.
          const { turn, sides } = moment.stations.find(({ station }) => station === place.station) ?? {};
          const side = sides?.[place.side];
          expect([turn, side?.reader, side?.view[place.slot]]).toEqual([null, player, page]);
        }
        const making = plan.turns.filter(({ at, seconds }) => at <= time && time < at + seconds);
        expect(new Set(moment.turns)).toEqual(new Set(making));
      }
    });
  });

  it('changes its states only by turns, and leaves no gaps', () => {
    law((instance, plan) => {
      for (const { spans, station } of runOf(instance, plan).stations) {
        expect([spans[0]?.from, spans.at(-1)?.to]).toEqual([-Infinity, Infinity]);
        expect(spans.filter(({ turn }) => turn)).toHaveLength(
          plan.turns.filter((turn) => turn.station === station).length,
        );
        for (const [index, { state, from, turn }] of spans.entries()) {
          const before = spans[index - 1];
          if (!before) continue;
          expect(from).toBe(before.to);
          if (state !== before.state) expect(before.turn?.toState).toBe(state);
          expect(turn === null || turn.fromState === state).toBe(true);
        }
      }
    });
  });

  it('covers every reading with spans of its page, and rests as the player is silent', () => {
    law((instance, plan) => {
      const run = runOf(instance, plan);
      for (const [index, { readings, free }] of instance.players.entries()) {
        const { spans = [], rests = [] } = run.players[index] ?? {};
        for (const { page, from, to } of readings) {
          const own = spans.filter((span) => span.from >= from - 1e-6 && span.to <= to + 1e-6);
          expect(own.every((span) => span.page === page)).toBe(true);
          expect(own.reduce((sum, span) => sum + span.to - span.from, 0)).toBeCloseTo(to - from, 5);
        }
        const silent = free.filter((window) => window.silent);
        const length = (spans: readonly { from: number; to: number }[]) =>
          spans.reduce((sum, { from, to }) => sum + to - from, 0);
        expect(length(rests)).toBeCloseTo(length(silent), 6);
      }
    });
  });
});

/** One reader with three pages over a pair, two of them at first; the turn takes 2 s. */
function trio(rest: readonly [number, number]): PlanInstance {
  return {
    players: [
      {
        id: 'Horn',
        pages: 3,
        readings: [
          { page: 1, from: 0, to: 20 },
          { page: 2, from: 20, to: 40 },
          { page: 3, from: 40, to: 60 },
        ],
        free: [{ from: rest[0], to: rest[1], hands: ['left', 'right'], silent: true }],
        bars: Array.from({ length: 30 }, (_, bar) => ({ label: String(bar + 1), from: 2 * bar })),
      },
    ],
    stations: [
      {
        id: 'stand 1',
        order: 0,
        sides: [{ reader: 'Horn', width: 2, position: 0 }],
        bindings: ['book'],
        reach: [{ player: 'Horn', hand: 'left', side: 0, seconds: 2 }],
      },
    ],
  };
}

describe('a moment', () => {
  it('is the same as another one just when it tells the same', () => {
    const told = ({ bar, players, stations, turns, swaps }: RunMoment): string =>
      JSON.stringify([bar, players, stations, turns, swaps]);
    law((instance, plan) => {
      const run = runOf(instance, plan);
      const moments = timesOf(instance, plan).map((time) => momentAt(run, time));
      for (const [index, moment] of moments.entries()) {
        const before = moments[index - 1];
        if (before) expect(isSameMoment(before, moment)).toBe(told(before) === told(moment));
      }
    });
  });
});

describe('warnings', () => {
  const warned = (instance: PlanInstance, change: (plan: Plan) => Plan = (plan) => plan): string[] => {
    const plan = planned(instance);
    if (!plan) throw new Error('no plan');
    const run = runOf(instance, change(plan));
    return warningsOf(run).map((warning) => warningSentence(warning, run, (id) => id));
  };

  // Common practice, no source: under 1 s, or under half of what is needed.
  it('ask for a look on both sides of each limit', () => {
    expect([isThin(0.99, 1), isThin(1, 1), isThin(1.99, 4), isThin(2, 4)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });

  // A bar of 2 s is looked ahead: of a rest from 34 to 40 s, 4 s are there for a turn of 2 s; of one from 35 s, 3 s; from 35.5 s, 2.5 s.
  it('say who, where in the music, what is needed and what is there', () => {
    expect(warned(trio([34, 40]))).toEqual([]);
    expect(warned(trio([35, 40]))).toEqual([]);
    expect(warned(trio([35.5, 40]))).toEqual([
      '0:35.5, bar 18: Horn turns stand 1; that needs 2.0\u00a0s with care, and 2.5\u00a0s are there.',
    ]);
  });

  it('say when a plan made by hand leaves somebody without his page', () => {
    expect(warned(trio([34, 40]), (plan) => ({ ...plan, turns: [] }))).toEqual([
      '0:40.0, bar 21: Horn has no page 3 for 20.0\u00a0s.',
    ]);
  });
});
