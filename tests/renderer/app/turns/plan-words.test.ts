import { describe, expect, it } from 'vitest';
import type { Pin } from '#model/pages/planner/instance.ts';
import type { PlanCost, StationPlan, Turn } from '#model/pages/planner/plan.ts';
import type { Remedy } from '#model/pages/planner/remedies.ts';
import {
  bindingWords,
  comparedWith,
  comparisonWords,
  pairWords,
  remedyWords,
  sightWords,
  turnWords,
  withoutWords,
} from '../../../../renderer/app/turns/plan-words.ts';

const named = (id: string): string => `<${id}>`;

const TURN: Turn = {
  station: 'stand-2',
  player: 'player-1',
  hand: 'left',
  at: 107.5,
  seconds: 3,
  direction: 'forward',
  fromState: 0,
  toState: 1,
  liftedFrom: 0,
  bar: '44',
  pass: null,
  readers: [
    { player: 'player-2', page: 5, during: true, bar: '44' },
    { player: 'player-1', page: 3, during: false, bar: '44' },
  ],
  window: { from: 107.5, to: 112 },
  margin: 1.5,
  servesPartner: true,
};

const RIDGE: StationPlan = {
  station: 'stand-2',
  kind: 'ridge',
  leaves: 1,
  pagesAcross: [1, 1],
  stackSide: 1,
  views: [],
};

it('where no remedy is found the first missing page is named', () => {
  const where = { player: 'player-1', page: 2, at: 30, bar: '16', pass: null };
  expect(withoutWords({ ...where, reason: { kind: 'reach' } }, named)).toBe(
    'It can be planned up to 0:30.0 (bar 16), where <player-1> has to play on without page 2: nobody who could turn in ' +
      'time reaches a leaf there.',
  );
});

describe('a turn in words', () => {
  it('says when, who, where, on which of the turner\u2019s pages, how much to spare and for whom', () => {
    expect(turnWords(TURN, named)).toEqual({
      when: '1:47.5, bar 44',
      who: '<player-1>, left hand',
      how: '<stand-2>; after page 3; 1.5\u00a0s to spare; also for the partner',
    });
  });

  it('says which time, in a bar that is played more than once', () => {
    expect(turnWords({ ...TURN, pass: { time: 2, of: 2 } }, named).when).toBe('1:47.5, bar 44, second time');
    expect(turnWords({ ...TURN, pass: { time: 1, of: 2 } }, named).when).toBe('1:47.5, bar 44, first time');
  });

  it('says how much time is lacking, and does not call that to spare', () => {
    const how = (margin: number) => turnWords({ ...TURN, margin }, named).how.split('; ')[2];
    expect(how(-43.2)).toBe('43.2\u00a0s too little time');
    expect(how(-0.01)).toBe('0.1\u00a0s too little time');
    expect(how(-1e-12)).toBe('0.0\u00a0s to spare');
    expect(how(0)).toBe('0.0\u00a0s to spare');
  });

  it('leaves out what is not known and what is not so', () => {
    const plain: Turn = {
      ...TURN,
      bar: null,
      direction: 'back',
      readers: [],
      servesPartner: false,
      margin: Infinity,
    };
    expect(turnWords(plain, named)).toMatchObject({
      when: '1:47.5',
      how: '<stand-2>; back again; any time',
    });
  });
});

describe('a binding in words', () => {
  it('of a ridge booklet says before whom the leaves lie at first', () => {
    const readers = ['player-1', 'player-2'];
    expect(bindingWords(RIDGE, readers, named)).toBe(
      'a ridge booklet, 1 leaf; at first all leaves lie before <player-2>',
    );
    expect(bindingWords(RIDGE, ['player-1', null], named)).toContain('before side 2');
  });

  it('of pages that nobody turns names no leaves', () => {
    expect(bindingWords({ ...RIDGE, kind: 'loose', leaves: 0 }, [], named)).toBe('loose pages');
  });
});

it('remedies in words', () => {
  const remedies: Remedy[] = [
    { kind: 'rest', player: 'player-1', at: 62, seconds: 4.25, afterPage: 2 },
    {
      ...{ kind: 'rest', player: 'player-1', at: 62, seconds: 4.25, afterPage: 2 },
      ...{ bar: '29', pass: { time: 2, of: 2 } },
    },
    { kind: 'wider', station: 'stand-2', pages: 3 },
    { kind: 'station', like: 'stand-2' },
    { kind: 'pin', index: 0 },
    { kind: 'pin', index: 1 },
  ];
  const pins: Pin[] = [
    { kind: 'page', station: 'stand-2', side: 0, state: 1, slot: null, page: 4 },
    { kind: 'turn', station: 'stand-2', player: 'player-1', from: 3, to: 9 },
  ];
  expect(remedies.map((remedy) => remedyWords(remedy, named, pins))).toEqual([
    'a rest of 4.3\u00a0s for <player-1> after page 2, at 1:02.0',
    'a rest of 4.3\u00a0s for <player-1> after page 2, at 1:02.0 (bar 29, second time)',
    'room for 3 pages side by side at <stand-2>',
    'one more stand like <stand-2>',
    'letting go of the pin on page 4 on <stand-2>',
    'letting go of the pin on the turn by <player-1> at <stand-2>',
  ]);
});

describe('two changes at once in words', () => {
  const more: Remedy = { kind: 'station', like: 'stand-2' };

  it('names both', () => {
    expect(pairWords([{ kind: 'wider', station: 'stand-2', pages: 3 }, more], named, [])).toBe(
      'room for 3 pages side by side at <stand-2>, and one more stand like <stand-2>',
    );
  });

  it('counts stands that are alike', () => {
    expect(pairWords([more, more], named, [])).toBe('two more stands like <stand-2>');
    expect(pairWords([more, { kind: 'station', like: 'stand-3' }], named, [])).toBe(
      'one more stand like <stand-2>, and one more stand like <stand-3>',
    );
  });
});

it('what the house sees in words', () => {
  const worst = { player: 'player-2', seat: 'seat-9', label: 'C 7', share: 0.434 };
  expect(sightWords({ player: 'player-1', seenWell: 0.875, seesWell: 0.9, worst }, named)).toBe(
    '88\u00a0% of the places see at least 90\u00a0% of <player-1>; worst 43\u00a0%, from C 7',
  );
});

it('a plan that breaks rules is compared with nothing: less is no better then', () => {
  const best: PlanCost = { turns: 4, stations: 2, width: 2, panels: 8, jumps: 0 };
  expect(comparedWith({ violations: [] }, best)).toBe(best);
  expect(comparedWith({ violations: [{ code: 'station-twice', station: 'stand-2' }] }, best)).toBeNull();
});

it('figures beside those of the best plan', () => {
  expect(
    [
      [2, 2],
      [5, 2],
      [1, 2],
    ].map(([own, best]) => comparisonWords(own ?? 0, best ?? 0)),
  ).toEqual(['', '3 more than the best plan known', '1 fewer than the best plan known']);
});
