import { describe, expect, it } from 'vitest';
import {
  BOTH_HANDS,
  lookAheadAt,
  playerOf,
  type PlanInstance,
  type PlanPlayer,
  type PlanStation,
} from '#model/pages/planner/instance.ts';
import { isJump } from '#model/pages/planner/costs.ts';
import { judgePlan, type Violation } from '#model/pages/planner/judge.ts';
import { needsOf } from '#model/pages/planner/needs.ts';
import type { Plan, Turn } from '#model/pages/planner/plan.ts';
import { planJson } from '#model/pages/planner/plan-json.ts';
import { planning, planNow, type PlanResult } from '#model/pages/planner/planner.ts';
import { remediesFor, type Remedy } from '#model/pages/planner/remedies.ts';
import { wordsOf } from '#model/pages/planner/words.ts';
import { orchestraLike } from '../../../oracles/plan-instances.ts';

/** A cellist with a part of three pages of 30 s, who rests from 58 to 66 s, at a desk with a book. */
const CELLO: PlanPlayer = {
  id: 'cello',
  pages: 3,
  readings: [1, 2, 3].map((page) => ({ page, from: 30 * (page - 1), to: 30 * page })),
  free: [{ from: 58, to: 66, hands: BOTH_HANDS, silent: true }],
  bars: Array.from({ length: 45 }, (_, index) => ({ label: String(index + 1), from: 2 * index })),
};
const DESK: PlanStation = {
  id: 'desk',
  order: 0,
  sides: [{ reader: 'cello', width: 2, position: 0 }],
  bindings: ['book', 'loose'],
  reach: [{ player: 'cello', hand: 'left', side: 0, seconds: 1.5 }],
};
const INSTANCE: PlanInstance = { players: [CELLO], stations: [DESK] };

function planned(instance: PlanInstance): Extract<PlanResult, { status: 'planned' }> {
  const result = planNow(instance);
  if (result.status !== 'planned') throw new Error(`no plan: ${JSON.stringify(result)}`);
  return result;
}

function remedies(instance: PlanInstance): Remedy[] {
  const steps = remediesFor(instance);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

describe('what is needed when', () => {
  it('from the look-ahead of a bar before it is read, and not in a rest that is long enough for a turn', () => {
    expect(needsOf(INSTANCE)).toEqual([
      { player: 0, page: 1, start: -2, from: 0, to: 30 },
      { player: 0, page: 2, start: 28, from: 30, to: 58 },
      { player: 0, page: 3, start: 64, from: 66, to: 90 },
    ]);
  });

  it('through a rest that is too short for anything', () => {
    const short = { ...CELLO, free: [{ from: 40, to: 43, hands: BOTH_HANDS, silent: true }] };
    expect(needsOf({ ...INSTANCE, players: [short] }).map(({ from, to }) => [from, to])).toEqual([
      [0, 30],
      [30, 60],
      [60, 90],
    ]);
  });

  it('looks ahead 2 s where bars are not known', () => {
    expect(lookAheadAt(playerOf('oboe', { seconds: 9, readings: [], silences: [] }), 5)).toBe(2);
  });
});

describe('the eye', () => {
  const onTwo = { across: 2, isSamePage: false };

  it('goes on to the right, and from the left end of the row, without a jump', () => {
    expect(isJump(0, { place: 1, ...onTwo })).toBe(false);
    expect(isJump(3, { place: 0, ...onTwo })).toBe(false);
    expect(isJump(2, { place: 2, across: 2, isSamePage: true })).toBe(false);
    expect(isJump(2, { place: 2, across: 1, isSamePage: false })).toBe(false);
  });

  it('jumps to the left, over a page, and to a new page where the old one was', () => {
    expect(isJump(2, { place: 1, ...onTwo })).toBe(true);
    expect(isJump(0, { place: 2, ...onTwo })).toBe(true);
    expect(isJump(1, { place: 1, ...onTwo })).toBe(true);
  });

  it('finds the pages of every planned view from left to right', () => {
    // A rest of 12 s in every second page, four pages on a desk for two.
    const readings = [1, 2, 3, 4].map((page) => ({ page, from: page * 30 - 30, to: page * 30 }));
    const free = [{ from: 48, to: 60, hands: BOTH_HANDS, silent: true }];
    const { plan } = planned({ ...INSTANCE, players: [{ ...CELLO, pages: 4, readings, free }] });
    expect(plan.stations.flatMap(({ views }) => views.flat())).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });
});

describe('a plan', () => {
  const { plan, cost, proof } = planned(INSTANCE);

  it('turns once, in the rest, with bar, page, window and margin', () => {
    expect(cost).toEqual({ turns: 1, stations: 1, width: 2, panels: 3, jumps: 0 });
    expect(Object.values(proof).every(({ value, atLeast }) => value === atLeast)).toBe(true);
    expect(plan.turns).toEqual([
      {
        station: 'desk',
        player: 'cello',
        hand: 'left',
        at: 58,
        seconds: 1.5,
        direction: 'forward',
        fromState: 0,
        toState: 1,
        liftedFrom: 0,
        bar: '30',
        pass: null,
        readers: [{ player: 'cello', page: 2, during: false, bar: '30' }],
        window: { from: 58, to: 64 },
        margin: 4.5,
        servesPartner: false,
      },
    ]);
  });

  it('says so when the steps allowed are used up', () => {
    const big = orchestraLike(5, { pages: 20, players: 2, stations: 3 });
    const result = planNow({ ...big, limits: { maxStates: 1 } });
    expect(result.status).toBe('none');
    if (result.status === 'none') expect(result.proved).toBe(false);
    expect(wordsOf(big, result)).toEqual(['no plan was found in the steps allowed']);
  });

  it('says how far it got when only the last proof is missing', () => {
    const big = orchestraLike(5, { pages: 20, players: 2, stations: 3 });
    const { cost: its, proof: shown } = planned({ ...big, limits: { maxStates: 20_000 } });
    expect(shown.turns).toEqual({ value: its.turns, atLeast: its.turns });
    expect(shown.jumps.atLeast).toBeLessThan(its.jumps);
  });

  it('proves all five figures of forty pages for four players at six stations', () => {
    const { cost: its, proof: shown } = planned(orchestraLike(1, { pages: 40, players: 4, stations: 6 }));
    for (const [figure, { value, atLeast }] of Object.entries(shown)) expect(atLeast, figure).toBe(value);
    // Each of two pairs of players has 17 turns: 40 pages a reader, six of them open at first, two more with each turn.
    expect(its).toMatchObject({ turns: 2 * Math.ceil((40 - 6) / 2), stations: 6, width: 6, panels: 80 });
  });

  it('comes step by step, with progress, and may be left', () => {
    const steps = planning(orchestraLike(1, { pages: 12, players: 2, stations: 2 }));
    const first = steps.next();
    expect(first.done).toBe(false);
    expect(first.value).toMatchObject({ stage: 'turns' });
    expect(steps.return({ status: 'none', proved: false }).done).toBe(true);
  });

  it('refuses what makes no sense, in words', () => {
    const odd = { ...INSTANCE, stations: [{ ...DESK, reach: [{ ...DESK.reach[0]!, player: 'nobody' }] }] };
    expect(planNow(odd)).toEqual({
      status: 'faulty',
      faults: ['nobody turns at station desk but does not play'],
    });
  });
});

describe('a plan made by hand is judged by the same rules', () => {
  const { plan } = planned(INSTANCE);
  const [turn] = plan.turns as [Turn];
  const codes = (changed: Plan, instance = INSTANCE): Violation['code'][] => [
    ...new Set(judgePlan(instance, changed).violations.map(({ code }) => code)),
  ];
  const turned = (change: Partial<Turn>): Plan => ({ ...plan, turns: [{ ...turn, ...change }] });
  const bound = (change: Partial<Plan['stations'][number]>): Plan => ({
    ...plan,
    stations: plan.stations.map((station) => ({ ...station, ...change })),
  });

  it.each<[string, Plan, Violation['code'][]]>([
    ['as it is', plan, []],
    ['a turn left out', { ...plan, turns: [] }, ['page-not-in-view']],
    ['a turn while playing', turned({ at: 45 }), ['hand-not-free', 'page-not-in-view']],
    ['the other hand', turned({ hand: 'right' }), ['out-of-reach']],
    ['too quick', turned({ seconds: 1 }), ['turn-too-short']],
    ['into the look-ahead', turned({ at: 63 }), ['page-not-in-view']],
    ['from nowhere', turned({ fromState: 1, toState: 2 }), ['wrong-state', 'page-not-in-view']],
    ['from the other side', turned({ liftedFrom: 1 }), ['wrong-side']],
    ['two at once', { ...plan, turns: [turn, { ...turn, at: 59 }] }, ['two-turns-at-once', 'wrong-state']],
    ['a binding that is not allowed', bound({ kind: 'concertina' }), ['binding-not-allowed']],
    [
      'three pages on a desk for two',
      bound({ pagesAcross: [3] }),
      ['binding-not-allowed', 'too-wide', 'views-do-not-fit'],
    ],
    [
      'a page that is not there',
      bound({
        views: [
          [
            [1, 2],
            [3, 9],
          ],
        ],
      }),
      ['no-such-page'],
    ],
    ['a station twice', { ...plan, stations: [...plan.stations, ...plan.stations] }, ['station-twice']],
    ['a station that is not there', bound({ station: 'attic' }), ['unknown-station', 'page-not-in-view']],
  ])('%s', (_, changed, expected) => {
    expect(codes(changed).toSorted()).toEqual(expected.toSorted());
  });

  it('a concertina whose pages do not hang together', () => {
    const wide: PlanInstance = {
      ...INSTANCE,
      stations: [{ ...DESK, sides: [{ ...DESK.sides[0], width: 3 }], bindings: ['concertina'] }],
    };
    const own = planned(wide).plan;
    const torn = (views: Plan['stations'][number]['views']): Plan => ({
      ...own,
      stations: own.stations.map((station) => ({
        ...station,
        kind: 'concertina' as const,
        pagesAcross: [3],
        leaves: 1,
        views,
      })),
    });
    const whole = torn([
      [
        [null, 1, 2],
        [2, 3, null],
      ],
    ]);
    expect(codes(whole, wide)).not.toContain('views-do-not-fit');
    expect(judgePlan(wide, whole).cost.panels).toBe(3);
    const other = torn([
      [
        [null, 1, 2],
        [1, 3, null],
      ],
    ]);
    expect(codes(other, wide)).toContain('views-do-not-fit');
  });

  it('more stations than allowed, and a pin lost', () => {
    const strict: PlanInstance = {
      ...INSTANCE,
      limits: { maxStations: 0 },
      pins: [{ kind: 'page', station: 'desk', side: 0, state: 1, slot: 0, page: 1 }],
    };
    expect(codes(plan, strict)).toEqual(['too-many-stations', 'pin-lost']);
  });
});

describe('pins', () => {
  it('keep a page where it was put', () => {
    const pin = { kind: 'page', station: 'desk', side: 0, state: 1, slot: 1, page: 3 } as const;
    const { plan } = planned({ ...INSTANCE, pins: [pin] });
    expect(plan.stations[0]?.views[0]?.[1]).toEqual([null, 3]);
  });

  it('that cannot be kept are named', () => {
    const pin = { kind: 'turn', station: 'desk', player: 'cello', from: 10, to: 14 } as const;
    expect(planNow({ ...INSTANCE, pins: [pin] })).toEqual({ status: 'none', proved: true });
    expect(remedies({ ...INSTANCE, pins: [pin] })).toContainEqual({ kind: 'pin', index: 0 });
  });
});

describe('where there is no plan', () => {
  const busy: PlanInstance = { ...INSTANCE, players: [{ ...CELLO, free: [] }] };

  it('names the rest, the room and the station that would make one, each tried', () => {
    expect(planNow(busy)).toEqual({ status: 'none', proved: true });
    expect(remedies(busy)).toEqual([
      { kind: 'rest', player: 'cello', at: 30, seconds: 3.5, afterPage: 1, bar: '16' },
      { kind: 'wider', station: 'desk', pages: 3 },
      { kind: 'station', like: 'desk' },
    ]);
  });

  it('says it in words', () => {
    expect(wordsOf(busy, { status: 'none', proved: true }, { remedies: remedies(busy) })).toEqual([
      'there is no plan',
      '  would make one: a rest of 3.5 s for cello after page 1, at 0:30 (bar 16)',
      '  would make one: room for 3 pages at desk',
      '  would make one: one more station like desk',
    ]);
  });
});

describe('text and JSON', () => {
  const result = planned(INSTANCE);

  it('says the plan in lines', () => {
    expect(wordsOf(INSTANCE, result)).toEqual([
      '1 turn (fewest possible)',
      '1 station (fewest possible)',
      '2 pages before a reader (fewest possible)',
      '3 printed panels (fewest possible)',
      '0 jumps of the eye (fewest possible)',
      'desk: book with 1 leaf',
      '  cello sees pages 1 2, then page 3 -',
      '0:58 bar 30, cello turns desk with the left hand, after page 2; 4.5 s to spare',
      'To spare is what is left after the whole turn, made with care: the hand to the leaf, the leaf over, the hand back.',
    ]);
  });

  it('is plain data that survives being written', () => {
    const json = planJson(INSTANCE, result);
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    expect(json).toMatchObject({
      status: 'planned',
      cost: { turns: 1 },
      proof: { turns: { value: 1, atLeast: 1, proved: true } },
      plan: { turns: [{ at: 58, windowSeconds: 6, margin: 4.5 }] },
      front: [{ cost: { turns: 1, stations: 1, panels: 3 } }],
    });
  });

  it('name things by their labels, and say what the house sees with a plan', () => {
    const worst = { player: 'cello', seat: 's', label: 'B 3', share: 0.5 };
    const sights = [{ player: 'cello', seenWell: 0.75, seesWell: 0.9, worst }];
    const nameOf = (id: string) => id.toUpperCase();
    const lines = wordsOf(INSTANCE, result, { sights, nameOf });
    expect(lines).toContain('DESK: book with 1 leaf');
    expect(lines).toContain(
      'seen from the house: 75 % of the places see at least 90 % of CELLO; worst 50 % of CELLO from B 3',
    );
    expect(planJson(INSTANCE, result, { sights })).toMatchObject({ front: [{ sight: sights[0] }] });
    expect(planJson(INSTANCE, result, { sights: [null] })).toMatchObject({ front: [{ sight: null }] });
  });
});
