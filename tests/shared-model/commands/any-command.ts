/** Any command with any arguments, sensible and not, drawn from numbers that fast-check hands in and can shrink. */

import fc from 'fast-check';
import { VENUE_MODELS } from '#model/catalogue/venues.ts';
import { add } from '#model/commands/add.ts';
import { align, distribute, mirror } from '#model/commands/arrange-items.ts';
import { removeWithBelongings } from '#model/commands/belongings.ts';
import type { Outcome } from '#model/commands/command.ts';
import { duplicate } from '#model/commands/duplicate.ts';
import { group, setHidden, setLocked, ungroup } from '#model/commands/groups.ts';
import { mirrorSetup } from '#model/commands/mirror-setup.ts';
import { move, placeAt } from '#model/commands/move.ts';
import { insertCorner, moveCorners, removeCorner } from '#model/commands/platform-outline.ts';
import { setEyeContact } from '#model/commands/need-not-see.ts';
import { keepPlan, dropPlan } from '#model/commands/page-plan.ts';
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
import { addTurn, changeTurn, removeTurn } from '#model/commands/plan-turns.ts';
import { remove } from '#model/commands/remove.ts';
import { replaceVenue } from '#model/commands/replace-venue.ts';
import { seatPlayer, setMobility } from '#model/commands/seat-player.ts';
import { setFields, type FieldsOf } from '#model/commands/set-fields.ts';
import {
  addSetup,
  chooseVariant,
  copySetup,
  removeSetup,
  renameSetup,
  reorderSetup,
  setChangeTime,
  varySetup,
} from '#model/commands/setups.ts';
import { share, unshare } from '#model/commands/share.ts';
import { assignReader, setStandForm } from '#model/commands/stands.ts';
import { countStock } from '#model/commands/stock.ts';
import { turnBy, turnTo, turnTowards, type TurnTowards } from '#model/commands/turn.ts';
import { scaleUnderlay, underlayToOrigin } from '#model/commands/underlay.ts';
import { tracePlatform } from '#model/commands/underlay-trace.ts';
import type { Document } from '#model/document/document.ts';
import { asId, type Id } from '#model/document/ids.ts';
import type { Kind } from '#model/document/records.ts';
import { documentOfEveryKind } from '../document/every-kind.ts';

/** Draws choices from a list of numbers; when they run out, the first choice. */
class Draw {
  private next = 0;
  constructor(private readonly numbers: readonly number[]) {}

  below(count: number): number {
    return count === 0 ? 0 : (this.numbers[this.next++] ?? 0) % count;
  }

  from<const T>(choices: readonly T[]): T {
    return choices[this.below(choices.length)] as T;
  }

  /** Mostly a length of a few metres, sometimes one that no file can hold. */
  length(): number {
    const usual = this.below(12_000) - 6000;
    return this.from([usual, usual, usual, usual / 7, 0, this.from([NaN, Infinity, -2e6, 1e-9])]);
  }

  /** Mostly the id of a record of that kind. */
  id<K extends Kind>(document: Document, kind: K): Id<K> {
    const ids = [...document.records.values()].filter((record) => record.kind === kind).map(({ id }) => id);
    return this.from<string>([...ids, ...ids, 'gone-1', 'concert-1']) as Id<K>;
  }

  /** A few ids, mostly of things that can be moved. */
  ids(document: Document): string[] {
    const all = [...document.records.values()];
    const movable = all.filter((record) => 'x' in record).map(({ id }) => id as string);
    const pool = this.below(8) === 0 ? [...all.map(({ id }) => id as string), 'gone-1'] : movable;
    return Array.from({ length: 1 + this.below(4) }, () => pool[this.below(pool.length)] ?? 'gone-1');
  }
}

type Towards = TurnTowards['towards'];

type Maker = (document: Document, draw: Draw) => Outcome;

const SOURCES = [...documentOfEveryKind().records.values()];

const MAKERS: readonly Maker[] = [
  (document, draw) => move(document, { ids: draw.ids(document), dx: draw.length(), dy: draw.length() }),
  (document, draw) =>
    placeAt(document, { id: draw.ids(document)[0] ?? '', x: draw.length(), y: draw.length() }),
  (document, draw) =>
    turnBy(document, {
      ids: draw.ids(document),
      by: draw.length() / 10,
      about: draw.from(['own', 'common']),
    }),
  (document, draw) => turnTo(document, { ids: draw.ids(document), facing: draw.length() / 10 }),
  (document, draw) =>
    turnTowards(document, {
      ids: draw.ids(document),
      towards: draw.from<Towards>([
        'house',
        { id: draw.ids(document)[0] ?? '' },
        { x: draw.length(), y: draw.length() },
      ]),
    }),
  (document, draw) =>
    align(document, {
      ids: draw.ids(document),
      axis: draw.from(['x', 'y']),
      at: draw.from(['least', 'middle', 'greatest']),
    }),
  (document, draw) => distribute(document, { ids: draw.ids(document), axis: draw.from(['x', 'y']) }),
  (document, draw) => mirror(document, { ids: draw.ids(document) }),
  (document, draw) => duplicate(document, { ids: draw.ids(document), dx: draw.length(), dy: draw.length() }),
  (document, draw) => remove(document, { ids: draw.ids(document) }),
  (document, draw) => group(document, { ids: draw.ids(document) }),
  (document, draw) => group(document, { ids: draw.ids(document) }),
  (document, draw) => ungroup(document, { ids: draw.ids(document) }),
  (document, draw) =>
    setLocked(document, { ids: draw.ids(document), locked: draw.from([false, false, true]) }),
  (document, draw) => setHidden(document, { ids: draw.ids(document), hidden: draw.from([false, true]) }),
  (document, draw) => removeWithBelongings(document, { ids: draw.ids(document) }),
  (document, draw) =>
    setEyeContact(document, {
      setup: draw.id(document, 'setup'),
      pair: [draw.id(document, 'player'), draw.id(document, 'player')],
      needed: draw.from([false, true]),
    }),
  (document, draw) => {
    const { id: _, ...fields } = SOURCES[draw.below(SOURCES.length)] ?? SOURCES[0] ?? {};
    return add(document, fields as Parameters<typeof add>[1]);
  },
  (document, draw) =>
    setFields(document, {
      ids: [draw.id(document, 'stand')],
      fields: draw.from<FieldsOf<'stand'>>([
        { lip: draw.length() / 3 },
        { tilt: draw.length() / 60 },
        { setup: draw.from([null, draw.id(document, 'setup')]) },
        { form: draw.from(['single', 'backToBack']) },
        { name: draw.from(['Left', '', 'a\nb']) },
      ]),
    }),
  (document, draw) =>
    setFields(document, {
      ids: [draw.id(document, 'seatBlock')],
      fields: draw.from<FieldsOf<'seatBlock'>>([
        { seatsPerRow: draw.below(40) },
        { rows: draw.below(300) },
        { curveRadius: draw.length() },
        { aisles: [{ afterSeat: draw.below(9), width: 900 }] },
      ]),
    }),
  (document, draw) =>
    assignReader(document, {
      stand: draw.id(document, 'stand'),
      side: draw.from([0, 1]),
      reader: draw.from([null, draw.id(document, 'player')]),
    }),
  (document, draw) =>
    setStandForm(document, { stand: draw.id(document, 'stand'), form: draw.from(['single', 'backToBack']) }),
  (document, draw) =>
    seatPlayer(document, {
      player: draw.id(document, 'player'),
      chair: draw.from([
        null,
        { model: draw.from(['orchestra-chair', 'wheelchair']), height: draw.length() / 4 },
      ]),
    }),
  (document, draw) =>
    setMobility(document, {
      player: draw.id(document, 'player'),
      mobility: draw.from(['walks', 'wheelchair']),
    }),
  (document, draw) => addSetup(document, { name: draw.from(['Encore', '', 'x'.repeat(201)]) }),
  (document, draw) => copySetup(document, { setup: draw.id(document, 'setup'), name: 'Copy' }),
  (document, draw) => varySetup(document, { setup: draw.id(document, 'setup'), name: 'Another way' }),
  (document, draw) => chooseVariant(document, { setup: draw.id(document, 'setup') }),
  (document, draw) => mirrorSetup(document, { setup: draw.id(document, 'setup') }),
  (document, draw) =>
    setChangeTime(document, {
      setup: draw.id(document, 'setup'),
      seconds: draw.from([null, 240, -1, NaN]),
    }),
  (document, draw) => share(document, { ids: draw.ids(document) }),
  (document, draw) => unshare(document, { ids: draw.ids(document), setup: draw.id(document, 'setup') }),
  (document, draw) =>
    countStock(document, {
      item: draw.from(['stand', 'seat', 'cable', 'shape']),
      model: draw.from(['', 'orchestral', 'orchestra-chair']),
      name: draw.from(['', 'Lectern']),
      owned: draw.from([0, 12, 1.5, -1]),
      storage: draw.from([null, draw.id(document, 'storage')]),
    }),
  (document, draw) => removeSetup(document, { setup: draw.id(document, 'setup') }),
  (document, draw) =>
    renameSetup(document, { setup: draw.id(document, 'setup'), name: draw.from(['Duo', '\ud800']) }),
  (document, draw) => reorderSetup(document, { setup: draw.id(document, 'setup'), to: draw.below(5) }),
  (document, draw) =>
    moveCorners(document, { moves: [{ corner: draw.below(6), x: draw.length(), y: draw.length() }] }),
  (document, draw) => insertCorner(document, { edge: draw.below(6), x: draw.length(), y: draw.length() }),
  (document, draw) => removeCorner(document, { corner: draw.below(6) }),
  (document, draw) => planEdit(document, draw),
  (document, draw) => planEdit(document, draw),
  (document, draw) =>
    scaleUnderlay(document, {
      id: draw.id(document, 'underlay'),
      a: { x: draw.length(), y: draw.length() },
      b: { x: draw.length(), y: draw.length() },
      distance: draw.length(),
      level: draw.below(2) === 0,
    }),
  (document, draw) =>
    underlayToOrigin(document, {
      id: draw.id(document, 'underlay'),
      point: { x: draw.length(), y: draw.length() },
    }),
  (document, draw) =>
    tracePlatform(document, {
      outline: Array.from({ length: draw.below(7) }, () => ({ x: draw.length(), y: draw.length() })),
    }),
  (document, draw) =>
    replaceVenue(document, { venue: draw.from(['moon', ...VENUE_MODELS.map(({ id }) => id)]) }),
];

/** Something done to a page plan by hand; the plan is not always there. */
function planEdit(document: Document, draw: Draw): Outcome {
  const setup = draw.from([asId<'setup'>('setup-1'), draw.id(document, 'setup')]);
  const stand = draw.id(document, 'stand');
  const paper = { setup, stand };
  const [side, state, slot] = [draw.from([0, 1] as const), draw.below(4), draw.below(4)];
  const place = draw.from([draw.below(5000) / 1000, draw.below(5000) / 1000, NaN, -1]);
  const turn = {
    station: stand,
    player: draw.id(document, 'player'),
    hand: draw.from(['left', 'right']),
    place,
    direction: draw.from(['forward', 'back']),
  } as const;
  return draw.from([
    () => keepPlan(document, { setup, stations: [], turns: [] }),
    () => dropPlan(document, { setup }),
    () => addPaper(document, paper),
    () => removePaper(document, paper),
    () => setPage(document, { ...paper, side, state, slot, page: draw.from([null, 1, 7, 0.5]) }),
    () => setLeaves(document, { ...paper, leaves: draw.from([0, 1, 3, -1, 1e9]) }),
    () => setPagesAcross(document, { ...paper, pages: draw.from([0, 1, 3, 13, NaN]) }),
    () => setBinding(document, { ...paper, kind: draw.from(['loose', 'book', 'concertina', 'ridge']) }),
    () => setStackSide(document, { ...paper, stackSide: side }),
    () => addTurn(document, { setup, turn }),
    () => changeTurn(document, { setup, turn: draw.below(3), fields: { place } }),
    () => removeTurn(document, { setup, turn: draw.below(3) }),
    () => removePins(document, { setup, pins: [draw.below(3)] }),
    () => addPin(document, { setup, pin: { kind: 'page', station: stand, side, state, slot, page: 1 } }),
    () => addPin(document, { setup, pin: { ...turn, kind: 'turn', from: place, to: place + 1 } }),
  ])();
}

/** Asks some command; what it answers depends only on the document and the numbers. */
export function answerOf(document: Document, numbers: readonly number[]): Outcome {
  const draw = new Draw(numbers);
  return draw.from(MAKERS)(document, draw);
}

/** The numbers that `answerOf` draws from. */
export const anyNumbers = fc.array(fc.nat({ max: 1_000_000 }), { minLength: 10, maxLength: 14, size: 'max' });
