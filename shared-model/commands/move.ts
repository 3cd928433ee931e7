/** Moves items on the plan. */

import type { Millimetres, Point } from '../document/records.ts';
import type { Command } from './command.ts';
import { editsOf, propose } from './propose.ts';
import { movedTo } from './spots.ts';
import { movables } from './targets.ts';
import { namesOf } from './words.ts';

export interface Move {
  readonly ids: readonly string[];
  /** Towards stage left. */
  readonly dx: Millimetres;
  /** Upstage. */
  readonly dy: Millimetres;
}

/** Moves all of them by the same way. By nothing: an empty diff. */
export const move: Command<Move> = (document, { ids, dx, dy }) => {
  const targets = movables(document, ids);
  if (!targets.ok) return targets;
  const moved = targets.records.map((record) => movedTo(record, { x: record.x + dx, y: record.y + dy }));
  return propose(document, editsOf(moved), { label: `move ${namesOf(document, targets.records)}` });
};

export interface PlaceAt extends Point {
  readonly id: string;
}

/** Puts one item at an exact spot. */
export const placeAt: Command<PlaceAt> = (document, { id, x, y }) => {
  const targets = movables(document, [id]);
  if (!targets.ok) return targets;
  const [record] = targets.records;
  return propose(document, editsOf([movedTo(record, { x, y })]), {
    label: `move ${namesOf(document, targets.records)}`,
  });
};
