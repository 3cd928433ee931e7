/** Two violins who do not share a stand, each without a rest to turn in. */

import { describe, expect, it } from 'vitest';
import {
  BOTH_HANDS,
  type PlanInstance,
  type PlanPlayer,
  type PlanStation,
} from '#model/pages/planner/instance.ts';
import { planJson } from '#model/pages/planner/plan-json.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import { remediesFor } from '#model/pages/planner/remedies.ts';
import { waysOutOf } from '#model/pages/planner/ways-out.ts';
import { wordsOf } from '#model/pages/planner/words.ts';

function violin(id: string, pages: number): PlanPlayer {
  return {
    id,
    pages,
    readings: Array.from({ length: pages }, (_, page) => ({
      page: page + 1,
      from: 30 * page,
      to: 30 * page + 30,
    })),
    free: [],
  };
}

function desk(reader: string, order: number, width = 2): PlanStation {
  return {
    id: `desk of ${reader}`,
    order,
    sides: [{ reader, width, position: 0 }],
    bindings: ['book', 'loose'],
    reach: [{ player: reader, hand: 'left', side: 0, seconds: 1.5 }],
  };
}

function finished<T>(steps: Generator<unknown, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

const BOTH: PlanInstance = {
  players: [violin('first', 3), violin('second', 3)],
  stations: [desk('first', 0), desk('second', 1)],
};
const NONE = { status: 'none', proved: true } as const;

const whereItFails = (who: string): string =>
  `it can be planned up to 1:00.0, where ${who} has to play on without page 3: from page 1 on no rest has the 3.5 s ` +
  'that a turn and the look ahead take, and there is room for 2 pages';

describe('two groups without a plan', () => {
  const ways = finished(waysOutOf(BOTH));

  it('have no single change that helps both', () => {
    expect(planNow(BOTH)).toEqual(NONE);
    expect(finished(remediesFor(BOTH))).toEqual([]);
    expect(ways.remedies).toEqual([]);
  });

  it('are told their own, each', () => {
    expect(ways.blocked.map(({ players }) => players)).toEqual([['first'], ['second']]);
    for (const { players, remedies, without } of ways.blocked) {
      const station = `desk of ${players.join('')}`;
      expect(remedies).toContainEqual({ kind: 'wider', station, pages: 3 });
      expect(remedies).toContainEqual({ kind: 'station', like: station });
      expect(remedies[0]).toMatchObject({ kind: 'rest', player: players[0] });
      expect(without).toMatchObject({
        player: players[0],
        page: 3,
        at: 60,
        reason: { kind: 'rest', since: 1 },
      });
    }
  });

  it('have a plan when each gets one of its own', () => {
    const [first, second] = BOTH.stations;
    if (!first || !second) throw new Error('there are two desks');
    const wide = { ...second, sides: [{ ...second.sides[0], width: 3 }] } as const;
    const stations = [first, wide, { ...first, id: 'a further desk', order: 2 }];
    expect(planNow({ ...BOTH, stations }).status).toBe('planned');
  });

  it('are named in words and in data', () => {
    expect(wordsOf(BOTH, NONE, ways)).toEqual([
      'there is no plan',
      '  each of these needs one of its own remedies:',
      `  first: ${whereItFails('first')}; would make one: a rest of 3.5 s for first after page 1, at 0:30; or room for 3 pages at desk of first; or one more station like desk of first`,
      `  and second: ${whereItFails('second')}; would make one: a rest of 3.5 s for second after page 1, at 0:30; or room for 3 pages at desk of second; or one more station like desk of second`,
    ]);
    expect(planJson(BOTH, NONE, ways)).toMatchObject({
      status: 'none',
      remedies: [],
      blocked: [{ players: ['first'] }, { players: ['second'] }],
    });
  });

  it('name the pin by its place among all pins', () => {
    const free = [{ from: 58, to: 66, hands: BOTH_HANDS, silent: true }];
    const players = BOTH.players.map((player) => ({ ...player, free }));
    const pins = ['first', 'second'].map(
      (player) => ({ kind: 'turn', station: `desk of ${player}`, player, from: 10, to: 14 }) as const,
    );
    const { blocked } = finished(waysOutOf({ ...BOTH, players, pins }));
    expect(blocked.map(({ remedies }) => remedies.filter(({ kind }) => kind === 'pin'))).toEqual([
      [{ kind: 'pin', index: 0 }],
      [{ kind: 'pin', index: 1 }],
    ]);
  });
});

describe('where no remedy is found', () => {
  /** One page of nine goes on the desk, and nobody ever rests. */
  const long: PlanInstance = { players: [violin('first', 9)], stations: [desk('first', 0, 1)] };

  const tooWide = { bar: null, pass: null, reason: { kind: 'wide', pages: 2, room: 1 } };

  it('says who first has to play on without which page, and when, and why', () => {
    const ways = finished(waysOutOf(long));
    expect(ways).toEqual({
      remedies: [],
      blocked: [
        {
          players: ['first'],
          remedies: [],
          pairs: [],
          without: { player: 'first', page: 2, at: 30, ...tooWide },
        },
      ],
    });
    expect(wordsOf(long, NONE, ways)).toEqual([
      'there is no plan',
      '  first: it can be planned up to 0:30.0, where first has to play on without page 2: 2 pages have to be in view at ' +
        'once there, and there is room for 1; no single remedy was found',
    ]);
  });

  it('says it of each of two', () => {
    // The second turns in the rest within page 2, to what is left of it and page 3 beside it.
    const second = { ...violin('second', 9), free: [{ from: 29, to: 50, hands: BOTH_HANDS, silent: true }] };
    const two: PlanInstance = {
      players: [...long.players, second],
      stations: [...long.stations, desk('second', 1)],
    };
    const { blocked } = finished(waysOutOf(two));
    expect(blocked.map(({ without }) => without)).toEqual([
      { player: 'first', page: 2, at: 30, ...tooWide },
      expect.objectContaining({
        ...{ player: 'second', page: 4, at: 90 },
        reason: { kind: 'rest', seconds: 3.5, longest: 0, since: 2, room: 2, shared: false },
      }),
    ]);
  });
});

it('a group that has a plan of its own is not named', () => {
  const players = [violin('first', 3), violin('second', 2)];
  const { remedies, blocked } = finished(waysOutOf({ ...BOTH, players }));
  expect(blocked.map((group) => group.players)).toEqual([['first']]);
  expect(remedies).toContainEqual({ kind: 'wider', station: 'desk of first', pages: 3 });
});

describe('where it takes two changes at once', () => {
  /** Two pages lie open at a time, and there are five. */
  const five: PlanInstance = { players: [violin('first', 5)], stations: [desk('first', 0)] };
  const silentAfter = (page: number, seconds: number) => ({
    from: 30 * page,
    to: 30 * page + seconds,
    hands: BOTH_HANDS,
    silent: true,
  });

  it('names pairs that make a plan, one of each two kinds', () => {
    const ways = finished(waysOutOf(five));
    expect(ways.remedies).toEqual([]);
    expect(ways.blocked[0]?.pairs).toEqual([
      [
        { kind: 'wider', station: 'desk of first', pages: 3 },
        { kind: 'station', like: 'desk of first' },
      ],
      [
        { kind: 'station', like: 'desk of first' },
        { kind: 'station', like: 'desk of first' },
      ],
      [
        { kind: 'rest', player: 'first', at: 30, seconds: 3.5, afterPage: 1 },
        { kind: 'station', like: 'desk of first' },
      ],
    ]);
    expect(wordsOf(five, NONE, ways)[1]).toBe(
      `  first: ${whereItFails('first')}; no single remedy was found; ` +
        'two changes at once do: room for 3 pages at desk of first, and one more station like desk of first; ' +
        'or two more stations like desk of first; or a rest of 3.5 s for first after page 1, at 0:30, and one more station like desk of first',
    );
  });

  it('finds two rests where nothing else is allowed', () => {
    const only: PlanInstance = {
      players: [violin('first', 6)],
      stations: [{ ...desk('first', 0), bindings: ['book'] }],
      limits: { maxStations: 1 },
    };
    const { blocked } = finished(waysOutOf(only));
    expect(blocked[0]?.pairs).toContainEqual([
      { kind: 'rest', player: 'first', at: 60, seconds: 3.5, afterPage: 2 },
      { kind: 'rest', player: 'first', at: 120, seconds: 3.5, afterPage: 4 },
    ]);
    const withRests = (...pages: number[]): PlanInstance => {
      const free = pages.map((page) => silentAfter(page, 3.5));
      return { ...only, players: only.players.map((player) => ({ ...player, free })) };
    };
    expect(planNow(withRests(2, 4)).status).toBe('planned');
    expect(planNow(withRests(2)).status).toBe('none');
    expect(planNow(withRests(4)).status).toBe('none');
  });

  it('tells the bar of a rest that would help, where the player has bars', () => {
    const [first] = [violin('first', 4)];
    const bars = Array.from({ length: 30 }, (_, bar) => ({
      ...{ label: String(bar % 15), from: 4 * bar },
      pass: { time: bar < 15 ? 1 : 2, of: 2 },
    }));
    // Bar 15 of the performance, from 60 s on, where page 2 ends; the look ahead is a bar of 4 s.
    const only: PlanInstance = { players: [{ ...first!, bars }], stations: [desk('first', 0)] };
    const remedies = finished(remediesFor(only));
    expect(remedies).toContainEqual({
      ...{ kind: 'rest', player: 'first', at: 60, seconds: 5.5, afterPage: 2 },
      ...{ bar: '0', pass: { time: 2, of: 2 } },
    });
    const lines = wordsOf(only, NONE, { remedies });
    expect(lines.join('\n')).toContain('for first after page 2, at 1:00 (bar 0, second time)');
  });

  it('can be left at any step, and stays within the states allowed', () => {
    const long: PlanInstance = { players: [violin('first', 60)], stations: [desk('first', 0)] };
    const steps = waysOutOf(long);
    expect(steps.next().done).toBe(false);
    expect(steps.return({ remedies: [], blocked: [] }).done).toBe(true);
    const { blocked } = finished(waysOutOf(long));
    expect(blocked).toMatchObject([{ remedies: [], pairs: [], without: { page: 3, at: 60 } }]);
  });
});

describe('why there is no plan, and where', () => {
  /** Four pages, two before the reader: page 3 has to come into view in a rest behind page 2. */
  const silent = (from: number, to: number, hands = BOTH_HANDS) => ({ from, to, hands, silent: true });
  const told = (instance: PlanInstance) => {
    expect(planNow(instance)).toEqual(NONE);
    const { blocked, remedies } = finished(waysOutOf(instance));
    return {
      without: blocked[0]?.without,
      words: wordsOf(instance, NONE, { blocked, remedies }).slice(0, 2),
    };
  };
  const one = (fields: Partial<PlanPlayer>, station: Partial<PlanStation> = {}): PlanInstance => ({
    players: [{ ...violin('first', 4), ...fields }],
    stations: [{ ...desk('first', 0), ...station }],
  });

  it('no rest is long enough: the bar, which time it is, and the longest rest', () => {
    const bars = Array.from({ length: 12 }, (_, bar) => ({
      label: String(1 + (bar % 6)),
      from: 10 * bar,
      pass: { time: bar < 6 ? 1 : 2, of: 2 },
    }));
    const { without, words } = told(one({ bars, lookAhead: 2, free: [silent(58, 60)] }));
    expect(without).toEqual({
      ...{ player: 'first', page: 3, at: 60, bar: '1', pass: { time: 2, of: 2 } },
      reason: { kind: 'rest', seconds: 3.5, longest: 2, since: 1, room: 2, shared: false },
    });
    expect(words).toEqual([
      'there is no plan',
      '  it can be planned up to 1:00.0 (bar 1, second time), where first has to play on without page 3: from page 1 on no ' +
        'rest has the 3.5 s that a turn and the look ahead take; the longest has 2.0 s, and there is room for 2 pages',
    ]);
    expect(planNow(one({ bars, lookAhead: 2, free: [silent(56.4, 60)] })).status).toBe('planned');
  });

  it('no hand is free: the rest is there, and the right one cannot reach', () => {
    const { without, words } = told(one({ free: [silent(50, 60, ['right'])] }));
    expect(without?.reason).toEqual({ kind: 'hand' });
    expect(words[1]).toMatch(
      /page 3: nobody who reaches a leaf there has a hand free while nobody reads from it$/,
    );
    expect(planNow(one({ free: [silent(50, 60, ['left'])] })).status).toBe('planned');
  });

  it('nobody reaches, and he who has a rest does not', () => {
    const free = [silent(50, 60)];
    const { without, words } = told(one({ free }, { reach: [] }));
    expect(without?.reason).toEqual({ kind: 'reach' });
    expect(words[1]).toMatch(/page 3: nobody who could turn in time reaches a leaf there$/);
    // Somebody else reaches it in time, but is never free.
    const busy: PlanPlayer = { id: 'second', pages: 0, readings: [], free: [] };
    const reach = [{ player: 'second', hand: 'left', side: 0, seconds: 1.5 }] as const;
    const beside = one({ free }, { reach });
    expect(told({ ...beside, players: [...beside.players, busy] }).without?.reason).toEqual({ kind: 'hand' });
  });

  it('too much has to be in view at once', () => {
    const sides = [{ reader: 'first', width: 1, position: 0 }] as const;
    expect(told(one({}, { sides })).without?.reason).toEqual({ kind: 'wide', pages: 2, room: 1 });
  });

  it('those who share a stand do not rest together', () => {
    const reach = ['first', 'second'].flatMap((player) =>
      ([0, 1] as const).map((side) => ({ player, hand: 'left', side, seconds: 1.5 }) as const),
    );
    const shared: PlanStation = {
      ...desk('first', 0),
      sides: [
        { reader: 'first', width: 2, position: 0 },
        { reader: 'second', width: 2, position: 0 },
      ],
      bindings: ['ridge'],
      reach,
    };
    const players = [
      { ...violin('first', 4), free: [silent(55, 60)] },
      { ...violin('second', 4), free: [silent(70, 75)] },
    ];
    const { without, words } = told({ players, stations: [shared] });
    expect(without).toMatchObject({ player: 'first', page: 3, reason: { kind: 'rest', shared: true } });
    expect(words[1]).toMatch(/page 3: all who read there share no rest of \d+\.\d s$/);
    const together = players.map((player) => ({ ...player, free: [silent(55, 60)] }));
    expect(planNow({ players: together, stations: [shared] }).status).toBe('planned');
  });
});
