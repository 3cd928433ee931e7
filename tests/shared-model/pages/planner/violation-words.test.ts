/** Every rule that can be broken, in a sentence, with what it is about. */

import { expect, it } from 'vitest';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import type { Violation } from '#model/pages/planner/judge.ts';
import type { Plan, Turn } from '#model/pages/planner/plan.ts';
import { violationSubjects, violationWords } from '#model/pages/planner/violation-words.ts';

const TURN: Turn = {
  station: 'desk',
  player: 'oboe',
  hand: 'left',
  at: 65.25,
  seconds: 2,
  direction: 'forward',
  fromState: 0,
  toState: 1,
  liftedFrom: 0,
  bar: '17',
  pass: null,
  readers: [],
  window: { from: 60, to: 70 },
  margin: 8,
  servesPartner: false,
};
const plan: Plan = {
  stations: [{ station: 'desk', kind: 'book', leaves: 1, pagesAcross: [2], stackSide: 0, views: [] }],
  turns: [TURN, { ...TURN, player: 'viola', direction: 'back', bar: null }],
};
const instance: PlanInstance = {
  players: [
    {
      id: 'oboe',
      pages: 3,
      readings: [],
      free: [],
      bars: [0, 4, 8, 12].map((from, index) => ({ label: String(index + 1), from })),
    },
  ],
  stations: [],
};
const named = (id: string): string => `<${id}>`;

it.each<[Violation, string, string[]]>([
  [
    { code: 'page-not-in-view', player: 'oboe', page: 2, from: -2, to: 8 },
    '<oboe> needs page 2 from 0:00.0 to 0:08.0 (bars 1 to 2), and it is not in view all that time.',
    ['oboe'],
  ],
  [
    { code: 'unknown-station', station: 'desk' },
    'Nobody who has a part reads at <desk>, so the plan cannot use it.',
    ['desk'],
  ],
  [{ code: 'station-twice', station: 'desk' }, '<desk> is in the plan twice.', ['desk']],
  [{ code: 'too-many-stations', stations: 4, most: 3 }, 'The plan uses 4 stands; 3 are allowed.', ['desk']],
  [
    { code: 'binding-not-allowed', station: 'desk' },
    '<desk> does not take paper that is bound like this.',
    ['desk'],
  ],
  [
    { code: 'too-wide', station: 'desk', side: 0, pages: 3, width: 2 },
    '3 pages side by side are too wide for <desk>, which holds 2.',
    ['desk'],
  ],
  [
    { code: 'views-do-not-fit', station: 'desk', side: 0 },
    'The views of <desk> do not fit its leaves and its pages side by side.',
    ['desk'],
  ],
  [
    { code: 'no-such-page', station: 'desk', page: 9 },
    '<desk> shows page 9, which its reader’s part does not have.',
    ['desk'],
  ],
  [
    { code: 'out-of-reach', turn: 0 },
    '<oboe>, who turns at <desk> at 1:05.3 (bar 17), does not get to the leaf with the left hand without a step.',
    ['oboe', 'desk'],
  ],
  [
    { code: 'hand-not-free', turn: 1 },
    '<viola>, who turns at <desk> at 1:05.3, has no left hand free for the 2.0 s that it takes.',
    ['viola', 'desk'],
  ],
  [
    { code: 'turn-too-short', turn: 0, needed: 3.5 },
    '<oboe>, who turns at <desk> at 1:05.3 (bar 17), needs 3.5 s for it; the plan gives 2.0 s.',
    ['oboe', 'desk'],
  ],
  [
    { code: 'two-turns-at-once', turn: 0, other: 1 },
    '<oboe>, who turns at <desk> at 1:05.3 (bar 17), is at it while another turn is made, at <desk> by <viola>; neither leaves the other time.',
    ['oboe', 'desk', 'viola'],
  ],
  [
    { code: 'wrong-state', turn: 1 },
    '<viola>, who turns at <desk> at 1:05.3, finds no leaf there to turn back.',
    ['viola', 'desk'],
  ],
  [
    { code: 'wrong-side', turn: 0 },
    '<oboe>, who turns at <desk> at 1:05.3 (bar 17), would lift the leaf from the side where it does not lie.',
    ['oboe', 'desk'],
  ],
  [
    { code: 'pin-lost', pin: { kind: 'page', station: 'desk', side: 0, state: 1, slot: null, page: 3 } },
    'Page 3 is pinned on <desk>, with 1 leaf turned, and is not there.',
    ['desk'],
  ],
  [
    { code: 'pin-lost', pin: { kind: 'turn', station: 'desk', player: 'oboe', from: 61, to: 75.5 } },
    'A turn by <oboe> at <desk> is pinned between 1:01.0 and 1:15.5, and there is none.',
    ['oboe', 'desk'],
  ],
])('$code', (violation, words, subjects) => {
  expect(violationWords(violation, { instance, plan }, named)).toBe(words);
  expect(violationSubjects(violation, { instance, plan })).toEqual(subjects);
});
