/** What helps to make a plan by hand: places as they are typed, a first guess at a turn, and the judge's word on it all. */

import { afterEach, describe, expect, it } from 'vitest';
import { applyDiff } from '#model/document/diff.ts';
import type { Document } from '#model/document/document.ts';
import type { Outcome } from '#model/commands/command.ts';
import { keepPlan } from '#model/commands/page-plan.ts';
import { addPin } from '#model/commands/plan-pins.ts';
import { addPaper, setPage } from '#model/commands/plan-paper.ts';
import { addTurn } from '#model/commands/plan-turns.ts';
import type { Music } from '#model/document/music.ts';
import { instanceOf } from '#model/pages/instance/instance-of.ts';
import { judgedPlan } from '#model/pages/kept/judged.ts';
import { nextTurn } from '#model/pages/kept/next-turn.ts';
import { keptOf } from '#model/pages/kept/plan-of.ts';
import { placeAt } from '#model/score/music/places.ts';
import { pinsOnTurn, turnPin } from '#model/pages/kept/turn-pins.ts';
import { typedPlace } from '#model/pages/kept/typed-place.ts';
import { planNow } from '#model/pages/planner/planner.ts';
import { performanceOf } from '#model/score/music/performance.ts';
import { barLabels } from '#model/score/words/bar-labels.ts';
import { barWords, passesOf } from '#model/score/words/bar-words.ts';
import { speakEnglish } from '#model/words/catalogue.ts';
import { speakFrom } from '#model/words/speak-from.ts';
import { german } from '#model/words/german/index.ts';
import { aDocument, aPlayer, aScore, aStand, MUSIC, SETUP, SIDE } from '../../../helpers/build.ts';

/** Bars 1 2 1 2 3 4, of 4 s each. */
const REPEATED: Music = {
  ...MUSIC,
  order: [
    [0, 1],
    [0, 3],
  ],
};

describe('a place that is typed', () => {
  const performance = performanceOf(REPEATED);
  it.each([
    ['0:10', 0, 2.5],
    ['0:10.4', 0, 2.6],
    ['0:24', 0, 6],
    ['0:25', 0, null],
    ['3', 0, 4],
    ['bar 4', 0, 5],
    ['4.5', 0, 5.5],
    ['4,25', 0, 5.25],
    // The bar that is played twice: whichever is nearer.
    ['2', 0, 1],
    ['2', 5, 3],
    ['2.5', 2.2, 1.5],
    ['9', 0, null],
    ['', 0, null],
    ['soon', 0, null],
    ['1:2:3', 0, null],
    // A minute has sixty seconds.
    ['0:70', 0, null],
    ['0:5', 0, 1.25],
    // As the list of turns calls them.
    ['bar 2, second time', 0, 3],
    ['bar 2 second time', 0, 3],
    ['2, First time', 5, 1],
    ['bar 2.5, 2nd time', 0, 3.5],
    ['bar 2, third time', 0, null],
    ['bar 3, first time', 0, 4],
    ['#4', 0, 5],
    ['bar #4.5', 0, 5.5],
    ['#5', 0, null],
  ])('%s near %d', (typed, near, place) => {
    const found = typedPlace(typed, REPEATED, performance, near);
    if (place === null) expect(found).toBeNull();
    else expect(found).toBeCloseTo(place, 9);
  });

  describe('goes by every name that the program itself writes', () => {
    const numbers = ['1', '2', '3', '', '1', '2', '2', '3'];
    const music: Music = {
      ...MUSIC,
      bars: numbers.map((number) => ({ number, ticks: 8 })),
      movements: [0, 4],
      order: [
        [0, 3],
        [1, 3],
        [4, 7],
        [4, 7],
      ],
    };
    const performance = performanceOf(music);
    const passes = passesOf(performance.played);
    const namesOfAll = () => {
      const label = barLabels(music);
      return Array.from(performance.played, (bar, index) => barWords(label(bar), passes[index] ?? null));
    };
    const read = (typed: string) => typedPlace(typed, music, performance, 0);

    afterEach(speakEnglish);

    it('in English, and by its own bar only', () => {
      const names = namesOfAll();
      expect(names).toContain('bar 1 of movement 2, second time');
      expect(names).toContain('bar #7, first time');
      expect(names.map(read)).toEqual([...names.keys()]);
      expect(read('1.5 of movement 2, second time')).toBe(11.5);
      expect(read('2 of movement 3')).toBeNull();
    });

    it('in German, and English still', () => {
      const english = namesOfAll();
      speakFrom('de', german);
      const names = namesOfAll();
      expect(names).toContain('Takt 1 im 2. Satz, 2. Mal');
      expect(names).toContain('Takt #7, 1. Mal');
      expect([...names, ...english].map(read)).toEqual([...names.keys(), ...names.keys()]);
      expect(read('T. 1,5 im 2. Satz, zweites Mal')).toBe(11.5);
      expect(read('0:04,5')).toBe(read('0:04.5'));
    });
  });

  it('is a bar as it is printed, even with a point in it', () => {
    const music = { ...MUSIC, bars: ['1', '1.5', '2', '3'].map((number) => ({ number, ticks: 8 })) };
    expect(typedPlace('1.5', music, performanceOf(music), 0)).toBe(1);
  });
});

const harp = aPlayer({ name: 'Harp', y: 2000 });
const desk = aStand({ y: 1500, sides: [{ ...SIDE, reader: harp.id, pagesAcross: 2 }] });
/** Ten bars of 4 s on three pages; silent in bars 5 and 6, from 16 s to 24 s. */
const music: Music = {
  ...MUSIC,
  bars: Array.from({ length: 10 }, (_, bar) => ({ number: `${bar + 1}`, ticks: 8 })),
  order: [[0, 9]],
  parts: [
    {
      ...MUSIC.parts[0]!,
      silences: [
        [4, 0, 8],
        [5, 0, 8],
      ],
      pages: [0, 3, 7].map((bar, index) => ({ page: index + 1, bar })),
    },
  ],
};
const DOCUMENT = aDocument(harp, desk, aScore({ players: [harp.id], music }));

function after(document: Document, ...steps: ((now: Document) => Outcome)[]): Document {
  return steps.reduce((now, step) => {
    const outcome = step(now);
    if (!outcome.ok) throw new Error(outcome.reason);
    return applyDiff(now, outcome.diff);
  }, document);
}

const at = { setup: SETUP, stand: desk.id, side: 0 };
const BOOK = after(
  DOCUMENT,
  (now) => keepPlan(now, { setup: SETUP, stations: [], turns: [] }),
  (now) => addPaper(now, at),
  (now) => setPage(now, { ...at, state: 0, slot: 0, page: 1 }),
  (now) => setPage(now, { ...at, state: 0, slot: 1, page: 2 }),
  (now) => setPage(now, { ...at, state: 1, slot: 0, page: 3 }),
  (now) => setPage(now, { ...at, state: 1, slot: 1, page: 2 }),
);

function judged(document: Document) {
  const found = judgedPlan(document, SETUP);
  if (!found) throw new Error('nothing is kept');
  return found;
}

describe('a plan by hand', () => {
  it('lacks its turn until one is added in the rest that is offered; then it is as good as the planned one', () => {
    const before = judged(BOOK);
    expect(before.judgement.violations).toMatchObject([{ code: 'page-not-in-view', page: 3 }]);
    const next = nextTurn(before.instance, before.plan, desk.id);
    expect(next).toMatchObject({ player: harp.id, at: 16 });
    const turn = {
      station: desk.id,
      player: harp.id,
      hand: next!.hand,
      place: placeAt(before.performance, next!.at),
      direction: 'forward' as const,
    };
    const whole = judged(after(BOOK, (now) => addTurn(now, { setup: SETUP, turn })));
    expect(whole.judgement.violations).toEqual([]);
    const best = planNow(whole.instance);
    expect(best.status === 'planned' && whole.judgement.cost.turns - best.cost.turns).toBe(0);
    // The hand leaves where the rest begins: nothing to spare before it, 8 s less the turn and the look-ahead in all.
    const [told] = whole.plan.turns;
    expect(told?.window.from).toBeCloseTo(16, 9);
    expect(told?.bar).toBe('5');
    expect(told?.readers).toMatchObject([{ player: harp.id, page: 2, during: true }]);
    // Out of the rest no hand is free, and there is nothing to spare.
    const busy = judged(after(BOOK, (now) => addTurn(now, { setup: SETUP, turn: { ...turn, place: 1 } })));
    expect(busy.judgement.violations).toContainEqual({ code: 'hand-not-free', turn: 0 });
    expect(busy.plan.turns[0]?.margin).toBeLessThan(0);
  });

  it('offers a turn after those that are there, by somebody who reads when nobody gets to the leaf', () => {
    const { instance, plan } = judged(BOOK);
    const far = { ...instance, stations: instance.stations.map((one) => ({ ...one, reach: [] })) };
    expect(nextTurn(far, plan, desk.id)).toEqual({ player: harp.id, hand: 'right', at: 0 });
    expect(nextTurn({ players: [], stations: [] }, plan, desk.id)).toBeNull();
  });

  it('goes along with a tempo that is typed over, and does not fall over when bars are taken away', () => {
    const turn = {
      station: desk.id,
      player: harp.id,
      hand: 'left',
      place: 4.5,
      direction: 'forward',
    } as const;
    const whole = after(BOOK, (now) => addTurn(now, { setup: SETUP, turn }));
    const withMusic = (changed: Partial<Music>): Document => ({
      records: new Map(whole.records).set(
        'score-1',
        aScore({ players: [harp.id], music: { ...music, ...changed } }),
      ),
    });
    const slow = withMusic({ tempos: [{ bar: 0, at: 0, quartersPerMinute: 30, source: 'typed' }] });
    expect(judged(whole).plan.turns[0]).toMatchObject({ at: 18, bar: '5' });
    expect(judged(slow).plan.turns[0]).toMatchObject({ at: 36, bar: '5' });
    const short = judged(withMusic({ order: [[0, 1]] }));
    expect(short.plan.turns[0]?.at).toBe(8);
    expect(short.judgement.violations).toContainEqual({ code: 'hand-not-free', turn: 0 });
  });

  it('hands its pins to the planner, which keeps them or finds none', () => {
    const pinned = (page: number, state: number) =>
      after(BOOK, (now) =>
        addPin(now, {
          setup: SETUP,
          pin: { kind: 'page', station: desk.id, side: 0, state, slot: 1, page },
        }),
      );
    const plan = (document: Document) => {
      const asked = instanceOf(document, SETUP);
      if (!asked.ok) throw new Error(asked.missing.join());
      return planNow(asked.instance);
    };
    const kept = plan(pinned(2, 0));
    expect(kept.status === 'planned' && kept.plan.stations[0]?.views[0]?.[0]?.[1]).toBe(2);
    // A page of the last state that nobody has to see is no trouble; page 1 in the second of two states is.
    const windowed = after(BOOK, (now) =>
      addPin(now, {
        setup: SETUP,
        pin: { kind: 'turn', station: desk.id, player: harp.id, from: 0, to: 3 },
      }),
    );
    expect(plan(windowed)).toMatchObject({ status: 'none' });
    expect(judged(windowed).judgement.violations).toContainEqual({
      code: 'pin-lost',
      pin: { kind: 'turn', station: desk.id, player: harp.id, from: 0, to: 12 },
    });
  });

  it('holds a turn by a pin where it lies, and the planner leaves it there', () => {
    const turn = {
      station: desk.id,
      player: harp.id,
      hand: 'right',
      place: 4.1,
      direction: 'forward',
    } as const;
    const turned = (place: number) =>
      after(BOOK, (now) => addTurn(now, { setup: SETUP, turn: { ...turn, place } }));
    const [inRest, busy] = [judged(turned(4.1)), judged(turned(1))];
    const pin = turnPin(inRest, inRest.plan.turns[0]!);
    // The rest is bars 5 and 6, and the page goes on with bar 7: it has to be there a bar before.
    expect(pin).toMatchObject({ kind: 'turn', station: desk.id, player: harp.id, from: 4.1, to: 5 });
    expect(turnPin(busy, busy.plan.turns[0]!)).toMatchObject({ from: 1 });
    const pinned = judged(after(turned(4.1), (now) => addPin(now, { setup: SETUP, pin })));
    expect(pinsOnTurn(pinned, pinned.plan.turns[0]!)).toEqual([0]);
    expect(pinned.judgement.violations).toEqual([]);
    expect(pinsOnTurn(inRest, inRest.plan.turns[0]!)).toEqual([]);
    // Bar 5 begins at 16 s, and without the pin that is when it would be turned.
    for (const [held, at] of [
      [turned(4.1), 16],
      [after(turned(4.1), (now) => addPin(now, { setup: SETUP, pin })), 16.4],
    ] as const) {
      const asked = instanceOf(held, SETUP);
      const again = asked.ok ? planNow(asked.instance) : null;
      if (again?.status !== 'planned') throw new Error('no plan');
      expect(again.plan.turns.map((each) => each.at)).toEqual([expect.closeTo(at, 6)]);
    }
  });

  it('that was planned and kept is judged as it was', () => {
    const asked = instanceOf(DOCUMENT, SETUP);
    const result = asked.ok ? planNow(asked.instance) : null;
    if (result?.status !== 'planned') throw new Error('no plan');
    const kept = after(DOCUMENT, (now) =>
      keepPlan(now, { setup: SETUP, ...keptOf(result.plan, performanceOf(music)) }),
    );
    expect(judged(kept).judgement).toEqual({ violations: [], cost: result.cost });
  });

  it('is nothing without a plan, without music, and with players who lack pages', () => {
    expect(judgedPlan(DOCUMENT, SETUP)).toBeNull();
    const unpaged = { ...music, parts: music.parts.map((part) => ({ ...part, ownPages: false })) };
    const without: Document = {
      records: new Map(BOOK.records).set('score-1', aScore({ players: [harp.id], music: unpaged })),
    };
    expect(judgedPlan(without, SETUP)).toBeNull();
  });
});
