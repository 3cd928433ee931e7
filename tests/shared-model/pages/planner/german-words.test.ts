/** Plans, what they break and why there is none, in German: one and many, the order of a sentence, decimal commas. */

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import type { Plan, Turn } from '#model/pages/planner/plan.ts';
import { violationWords } from '#model/pages/planner/violation-words.ts';
import { withoutWords } from '#model/pages/planner/without-words.ts';
import { planSightWords, shortCostWords } from '#model/pages/planner/words.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';

const named = (id: string): string => `<${id}>`;

beforeEach(() => speakFrom('de', german));
afterEach(speakEnglish);

describe('what a plan takes', () => {
  it.each([
    [{ turns: 1, stations: 1, panels: 1 }, '1 Wendestelle, 1 Pult, 1 Druckbahn'],
    [{ turns: 0, stations: 2, panels: 6 }, '0 Wendestellen, 2 Pulte, 6 Druckbahnen'],
  ])('of %j', (cost, words) => {
    expect(shortCostWords({ width: 2, jumps: 0, ...cost })).toBe(words);
  });

  it('of what the house sees', () => {
    const worst = { player: 'viola', seat: 'seat-1', label: 'C 12', share: 0.5 };
    const sight = { player: 'oboe', seenWell: 0.75, seesWell: 0.9, worst };
    expect(planSightWords(sight, named)).toBe(
      '75 % der Plätze sehen mindestens 90 % von <oboe>; am wenigsten 50 % von <viola>, Platz: C 12',
    );
  });
});

const TURN: Turn = {
  ...{ station: 'desk', player: 'oboe', hand: 'left', at: 65.25, seconds: 2.5, direction: 'forward' },
  ...{ fromState: 0, toState: 1, liftedFrom: 0, bar: null, pass: null, readers: [] },
  ...{ window: { from: 60, to: 70 }, margin: 8, servesPartner: false },
};
const plan: Plan = { stations: [], turns: [TURN, { ...TURN, player: 'viola', direction: 'back' }] };
const instance: PlanInstance = { players: [], stations: [] };

describe('a broken rule', () => {
  it.each([
    [
      { code: 'hand-not-free', turn: 0 } as const,
      'Beim Umblättern an <desk>, 1:05,3: <oboe> hat die linke Hand nicht so lange frei, wie es dauert: 2,5 s.',
    ],
    [
      { code: 'two-turns-at-once', turn: 0, other: 1 } as const,
      'Beim Umblättern an <desk>, 1:05,3: <oboe> ist noch dabei, während auch <viola> an <desk> umblättert; keines lässt dem anderen Zeit.',
    ],
    [
      { code: 'too-wide', station: 'desk', side: 0, pages: 3, width: 2 } as const,
      '<desk>: 3 Seiten nebeneinander sind zu breit, Platz ist für 2.',
    ],
  ])('%j', (violation, sentence) => {
    expect(violationWords(violation, { instance, plan }, named)).toBe(sentence);
  });

  it.each([
    [0, 'An <desk> ist Seite 4 angeheftet, vor dem ersten Umblättern, und liegt dort nicht.'],
    [1, 'An <desk> ist Seite 4 angeheftet, nach einmal Umblättern, und liegt dort nicht.'],
    [2, 'An <desk> ist Seite 4 angeheftet, nach 2-mal Umblättern, und liegt dort nicht.'],
  ])('a pin that is lost after %i leaves', (state, sentence) => {
    const pin = { kind: 'page', station: 'desk', side: 0, state, slot: 0, page: 4 } as const;
    expect(violationWords({ code: 'pin-lost', pin }, { instance, plan }, named)).toBe(sentence);
  });
});

it('where a planning fails is one sentence, with the reason behind it', () => {
  const where = { player: 'oboe', page: 3, at: 60, bar: null, pass: null };
  const rest = { kind: 'rest', seconds: 4, longest: 1.25, since: 2, room: 1, shared: false } as const;
  expect(withoutWords({ ...where, reason: rest }, named)).toBe(
    'planbar ist es bis 1:00,0, dort muss <oboe> ohne Seite 3 weiterspielen: ab Seite 2 ist keine Pause 4,0 s lang, was Umblättern und Vorauslesen brauchen; die längste hat 1,3 s, und Platz ist für 1 Seite',
  );
});
