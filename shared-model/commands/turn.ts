/** Turns items, anticlockwise from above. */

import { facingTowards, placed } from '../geometry/frame.ts';
import type { Degrees, Point } from '../document/records.ts';
import { t } from '../words/say.ts';
import { refuse, type Command, type Outcome } from './command.ts';
import { editsOf, propose } from './propose.ts';
import { movedTo, tidyFacing } from './spots.ts';
import { turnables, type Turnable } from './targets.ts';
import { nameOf, namesOf } from './words.ts';

export interface TurnBy {
  readonly ids: readonly string[];
  readonly by: Degrees;
  /**
   * `own`: each about its own spot. `common`: all of them together about the middle of their spots. `first`: all of them
   * together about the spot of the first.
   */
  readonly about: 'own' | 'common' | 'first';
}

export const turnBy: Command<TurnBy> = (document, { ids, by, about }) => {
  const targets = turnables(document, ids);
  if (!targets.ok) return targets;
  const [first] = targets.records;
  const middle = about === 'first' ? { x: first.x, y: first.y } : middleOf(targets.records);
  const turned = targets.records.map((record) => {
    const there = about === 'own' ? record : movedTo(record, turnedAbout(middle, record, by));
    return facing(there, record.facing + by);
  });
  return propose(document, editsOf(turned), { label: t`turn ${namesOf(document, targets.records)}` });
};

export interface TurnTo {
  readonly ids: readonly string[];
  readonly facing: Degrees;
}

export const turnTo: Command<TurnTo> = (document, { ids, facing: wanted }) => {
  const targets = turnables(document, ids);
  if (!targets.ok) return targets;
  const turned = targets.records.map((record) => facing(record, wanted));
  return propose(document, editsOf(turned), { label: t`turn ${namesOf(document, targets.records)}` });
};

export interface TurnTowards {
  readonly ids: readonly string[];
  /** A point of the plan, the id of a record with a spot, or the house (straight ahead, not towards its middle). */
  readonly towards: Point | { readonly id: string } | 'house';
}

/** Turns each about its own spot until it looks that way; of a stand, until its page does. */
export const turnTowards: Command<TurnTowards> = (document, { ids, towards }) => {
  if (towards === 'house') return turnTo(document, { ids, facing: 0 });
  if (!('id' in towards))
    return towardsPoint(document, ids, towards, (names) => t`turn ${names} towards a point`);
  const target = document.records.get(towards.id);
  if (!target || !('x' in target)) return refuse(t`There is nothing there to turn to.`);
  const name = nameOf(document, target);
  return towardsPoint(document, ids, target, (names) => t`turn ${names} towards ${name}`);
};

function towardsPoint(
  document: Parameters<Command<TurnTo>>[0],
  ids: readonly string[],
  point: Point,
  label: (names: string) => string,
): Outcome {
  const targets = turnables(document, ids);
  if (!targets.ok) return targets;
  const atPoint = targets.records.find(({ x, y }) => x === point.x && y === point.y);
  if (atPoint) return refuse(t`${nameOf(document, atPoint)} is at that very spot and cannot look at it.`);
  const turned = targets.records.map((record) => facing(record, facingTowards(record, point)));
  return propose(document, editsOf(turned), {
    label: label(namesOf(document, targets.records)),
  });
}

/** Untouched when it looks that way already, however the file spells it. */
function facing<R extends Turnable>(record: R, to: Degrees): R {
  if (tidyFacing(record.facing) === tidyFacing(to)) return record;
  return { ...record, facing: tidyFacing(to) };
}

/** The mean of the spots, which turning them about it does not change. */
function middleOf(spots: readonly Point[]): Point {
  const sum = spots.reduce((total, { x, y }) => ({ x: total.x + x, y: total.y + y }), { x: 0, y: 0 });
  return { x: sum.x / spots.length, y: sum.y / spots.length };
}

function turnedAbout(middle: Point, { x, y }: Point, by: Degrees): Point {
  return placed({ ...middle, facing: by }, { x: x - middle.x, y: y - middle.y });
}
