import { describe, expect, it } from 'vitest';
import { dropPlan, keepPlan } from '#model/commands/page-plan.ts';
import { addPin, removePins } from '#model/commands/plan-pins.ts';
import {
  addPaper,
  removePaper,
  setBinding,
  setLeaves,
  setPage,
  setPagesAcross,
  setStackSide,
} from '#model/commands/plan-paper.ts';
import { addTurn, changeTurn, removeTurn, type TurnChoice } from '#model/commands/plan-turns.ts';
import { remove } from '#model/commands/remove.ts';
import { copySetup } from '#model/commands/setups.ts';
import { allOf, type Document } from '#model/document/document.ts';
import type { PagePlanRecord } from '#model/document/records.ts';
import { aDocument, aPlayer, aScore, aStand, MUSIC, recordOf, SETUP, SIDE } from '../../helpers/build.ts';
import { frozen } from '../document/freeze.ts';
import { carriedOut, refusal } from './check-laws.ts';

const oboe = aPlayer({ name: 'Oboe' });
const desk = aStand({ sides: [{ ...SIDE, reader: oboe.id }] });
const narrow = aStand({ id: 'stand-2', x: 900, sides: [{ ...SIDE, pagesAcross: 1 }] });
const pair = aStand({ id: 'stand-3', x: -900, form: 'backToBack', sides: [SIDE, SIDE] });
/** The oboe's part goes to page 5. */
const music = {
  ...MUSIC,
  parts: MUSIC.parts.map((part) => ({ ...part, pages: [1, 3, 4, 5].map((page, bar) => ({ page, bar })) })),
};
const DOCUMENT = frozen(aDocument(oboe, desk, narrow, pair, aScore({ players: [oboe.id], music })));
const EMPTY = frozen(carriedOut(DOCUMENT, keepPlan(DOCUMENT, { setup: SETUP, stations: [], turns: [] })));
const at = { setup: SETUP, stand: desk.id };

const planOf = (document: Document): PagePlanRecord => recordOf(document, 'pagePlan-1', 'pagePlan');
const paperOf = (document: Document, stand: string = desk.id) =>
  planOf(document).stations.find(({ station }) => station === stand);

/** Carries out one command after another; each through the laws. */
function after(
  document: Document,
  ...steps: ((now: Document) => Parameters<typeof carriedOut>[1])[]
): Document {
  return steps.reduce((now, step) => frozen(carriedOut(now, step(now))), document);
}

const WITH_BOOK = after(
  EMPTY,
  (now) => addPaper(now, at),
  (now) => setPage(now, { ...at, side: 0, state: 0, slot: 1, page: 1 }),
  (now) => setPage(now, { ...at, side: 0, state: 1, slot: 0, page: 2 }),
);
const WITH_NARROW = after(WITH_BOOK, (now) => addPaper(now, { setup: SETUP, stand: narrow.id }));
const choice: TurnChoice = {
  station: desk.id,
  player: oboe.id,
  hand: 'left',
  place: 2.5,
  direction: 'forward',
};

describe('a page plan', () => {
  it('is kept once a setup, and needs music', () => {
    const again = carriedOut(WITH_BOOK, keepPlan(WITH_BOOK, { setup: SETUP, stations: [], turns: [] }));
    expect(allOf(again, 'pagePlan').map(({ id, stations }) => [id, stations])).toEqual([['pagePlan-1', []]]);
    const silent = aDocument(oboe, desk);
    expect(refusal(silent, keepPlan(silent, { setup: SETUP, stations: [], turns: [] }))).toMatch(
      /no music yet/,
    );
  });

  it('is let go, and cannot be changed when there is none', () => {
    const dropped = after(WITH_BOOK, (now) => dropPlan(now, { setup: SETUP }));
    expect(allOf(dropped, 'pagePlan')).toEqual([]);
    for (const outcome of [dropPlan(dropped, { setup: SETUP }), addPaper(dropped, at)])
      expect(refusal(dropped, outcome)).toBe('No page plan is kept for this setup.');
  });

  it('goes with its music and its setup, and with a copied setup it is copied under ids of its own', () => {
    const removed = (id: string) =>
      allOf(
        after(WITH_BOOK, (now) => remove(now, { ids: [id] })),
        'pagePlan',
      );
    expect(removed('score-1')).toEqual([]);
    const copied = after(WITH_BOOK, (now) => copySetup(now, { setup: SETUP, name: 'Again' }));
    const [first, second, ...more] = allOf(copied, 'pagePlan');
    expect(more).toEqual([]);
    expect(first).toEqual(planOf(WITH_BOOK));
    const stand = allOf(copied, 'stand').find(({ id }) => id === second?.stations[0]?.station);
    expect([second?.setup, stand?.setup]).toEqual(['setup-2', 'setup-2']);
    expect(second?.stations[0]?.views).toEqual(first?.stations[0]?.views);
    const score = allOf(copied, 'score').find(({ id }) => id === second?.score);
    expect(score?.setup).toBe('setup-2');
  });

  it('goes on without a stand or a player that is removed', () => {
    const turned = after(WITH_BOOK, (now) => addTurn(now, { setup: SETUP, turn: choice }));
    const without = (id: string) => planOf(after(turned, (now) => remove(now, { ids: [id] })));
    expect(without(desk.id)).toMatchObject({ stations: [], turns: [] });
    expect(without(oboe.id)).toMatchObject({ stations: planOf(turned).stations, turns: [] });
  });
});

describe('paper of a plan', () => {
  it('is at first what the stand takes', () => {
    const papers = after(
      EMPTY,
      (now) => addPaper(now, at),
      (now) => addPaper(now, { ...at, stand: narrow.id }),
      (now) => addPaper(now, { ...at, stand: pair.id }),
    );
    expect(
      planOf(papers).stations.map(({ kind, leaves, pagesAcross }) => [kind, leaves, pagesAcross]),
    ).toEqual([
      ['book', 1, [2]],
      ['loose', 0, [1]],
      ['ridge', 1, [2, 2]],
    ]);
    expect(refusal(papers, addPaper(papers, at))).toMatch(/has paper of this plan already/);
    const taken = after(papers, (now) => removePaper(now, { ...at, stand: pair.id }));
    expect(planOf(taken).stations.map(({ station }) => station)).toEqual(['stand-1', 'stand-2']);
  });

  it('gets a page, and a blank', () => {
    expect(paperOf(WITH_BOOK)?.views).toEqual([
      [
        [null, 1],
        [2, null],
      ],
    ]);
    const blank = after(WITH_BOOK, (now) => setPage(now, { ...at, side: 0, state: 1, slot: 0, page: null }));
    expect(paperOf(blank)?.views[0]?.[1]).toEqual([null, null]);
    const beyond = setPage(WITH_BOOK, { ...at, side: 0, state: 2, slot: 0, page: 1 });
    expect(refusal(WITH_BOOK, beyond)).toMatch(/no such place/);
    expect(refusal(WITH_BOOK, setPage(WITH_BOOK, { ...at, side: 0, state: 0, slot: 0, page: 1.5 }))).toMatch(
      /1\.5 is not allowed/,
    );
  });

  it('takes no page that the part of its reader lacks', () => {
    const page = (wanted: number, stand = desk.id) =>
      setPage(WITH_NARROW, { ...at, stand, side: 0, state: 0, slot: 0, page: wanted });
    expect(carriedOut(WITH_NARROW, page(5))).toBeDefined();
    expect(refusal(WITH_NARROW, page(6))).toBe('Oboe (player 1) has no page 6: the part has 5 pages.');
    expect(refusal(WITH_NARROW, page(99))).toMatch(/has no page 99/);
    // Of a stand from which nobody reads nothing is known.
    expect(carriedOut(WITH_NARROW, page(99, narrow.id))).toBeDefined();
  });

  it('gets leaves and loses them, the pages with them', () => {
    const more = after(WITH_BOOK, (now) => setLeaves(now, { ...at, leaves: 2 }));
    expect(paperOf(more)?.views[0]).toEqual([
      [null, 1],
      [2, null],
      [null, null],
    ]);
    const fewer = after(more, (now) => setLeaves(now, { ...at, leaves: 0 }));
    expect(paperOf(fewer)?.views[0]).toEqual([[null, 1]]);
    expect(refusal(fewer, setLeaves(fewer, { ...at, leaves: -1 }))).toMatch(/from 0 to 999/);
  });

  it('is bound otherwise, wider, or from the other side', () => {
    const loose = after(
      WITH_BOOK,
      (now) => setBinding(now, { ...at, kind: 'loose' }),
      (now) => setPagesAcross(now, { ...at, pages: 3 }),
    );
    expect(paperOf(loose)).toMatchObject({ kind: 'loose', leaves: 0, views: [[[null, 1, null]]] });
    const wide = after(
      WITH_BOOK,
      (now) => setBinding(now, { ...at, kind: 'concertina' }),
      (now) => setPagesAcross(now, { ...at, pages: 3 }),
      (now) => setPage(now, { ...at, side: 0, state: 1, slot: 1, page: 3 }),
      (now) => setPage(now, { ...at, side: 0, state: 0, slot: 2, page: 1 }),
      (now) => setLeaves(now, { ...at, leaves: 2 }),
      (now) => setPage(now, { ...at, side: 0, state: 2, slot: 0, page: 2 }),
    );
    // A turn moves it on by two pages, so the third of a view is the first of the next.
    expect(paperOf(wide)?.views[0]).toEqual([
      [null, 1, 1],
      [1, 3, 2],
      [2, null, null],
    ]);
    const there = { ...at, stand: pair.id };
    const ridge = after(
      EMPTY,
      (now) => addPaper(now, there),
      (now) => setStackSide(now, { ...there, stackSide: 1 }),
      (now) => setPagesAcross(now, { ...there, pages: 1 }),
    );
    expect(paperOf(ridge, pair.id)).toMatchObject({ stackSide: 1, pagesAcross: [1, 1] });
  });
});

describe('turns of a plan', () => {
  it('are in the order of their places, leaf after leaf', () => {
    const turned = after(
      WITH_BOOK,
      (now) => addTurn(now, { setup: SETUP, turn: choice }),
      (now) => addTurn(now, { setup: SETUP, turn: { ...choice, place: 1, hand: 'right' } }),
      (now) => addTurn(now, { setup: SETUP, turn: { ...choice, place: 3, direction: 'back' } }),
    );
    const states = (document: Document) =>
      planOf(document).turns.map(({ place, fromState, toState }) => [place, fromState, toState]);
    expect(states(turned)).toEqual([
      [1, 0, 1],
      [2.5, 1, 2],
      [3, 2, 1],
    ]);
    const later = after(turned, (now) => changeTurn(now, { setup: SETUP, turn: 0, fields: { place: 3.5 } }));
    expect(states(later)).toEqual([
      [2.5, 0, 1],
      [3, 1, 0],
      [3.5, 0, 1],
    ]);
    expect(planOf(later).turns.at(-1)?.hand).toBe('right');
    // Taken back before any was turned: left for the judge.
    const without = after(later, (now) => removeTurn(now, { setup: SETUP, turn: 0 }));
    expect(states(without)).toEqual([
      [3, 1, 0],
      [3.5, 0, 1],
    ]);
  });

  it('need paper, and a turn that is there', () => {
    expect(refusal(EMPTY, addTurn(EMPTY, { setup: SETUP, turn: choice }))).toBe(
      'Put paper on that stand first.',
    );
    expect(refusal(WITH_BOOK, removeTurn(WITH_BOOK, { setup: SETUP, turn: 0 }))).toMatch(
      /not there any more/,
    );
  });
});

describe('pins of a plan', () => {
  const pin = { kind: 'page', station: desk.id, side: 0, state: 1, slot: 0, page: 2 } as const;
  const PINNED = after(WITH_BOOK, (now) => addPin(now, { setup: SETUP, pin }));

  it('hold the page that is typed over, and go with a blank or with the leaf', () => {
    const typed = after(PINNED, (now) => setPage(now, { ...at, side: 0, state: 1, slot: 0, page: 5 }));
    expect(planOf(typed).pins).toEqual([{ ...pin, page: 5 }]);
    const blank = after(PINNED, (now) => setPage(now, { ...at, side: 0, state: 1, slot: 0, page: null }));
    expect(planOf(blank).pins).toEqual([]);
    expect(planOf(after(PINNED, (now) => setLeaves(now, { ...at, leaves: 0 }))).pins).toEqual([]);
    expect(planOf(after(PINNED, (now) => removePaper(now, at))).pins).toEqual([]);
  });

  it('stay when another plan is kept that has a place for them', () => {
    const { stations, turns } = planOf(PINNED);
    const again = after(PINNED, (now) => keepPlan(now, { setup: SETUP, stations, turns }));
    expect(planOf(again).pins).toEqual([pin]);
    const other = after(PINNED, (now) => keepPlan(now, { setup: SETUP, stations: [], turns: [] }));
    expect(planOf(other).pins).toEqual([]);
  });

  it('are taken out, and need a place', () => {
    expect(planOf(after(PINNED, (now) => removePins(now, { setup: SETUP, pins: [0] }))).pins).toEqual([]);
    expect(refusal(EMPTY, addPin(EMPTY, { setup: SETUP, pin }))).toMatch(/Put paper/);
    expect(refusal(PINNED, addPin(PINNED, { setup: SETUP, pin: { ...pin, state: 9 } }))).toMatch(
      /no such place/,
    );
  });
});
