/** Puts items in line, at even distances, or on the other side of the centre line. */

import { chairOutline, outlineOf } from '../catalogue/outlines.ts';
import type { Lamp, Point, Shape } from '../document/records.ts';
import { isPlaced } from '../document/records.ts';
import { t } from '../words/say.ts';
import { refuse, type Command } from './command.ts';
import { editsOf, propose } from './propose.ts';
import { movedTo, tidy, tidyFacing } from './spots.ts';
import { movables, type Movable } from './targets.ts';
import { nameOf, namesOf } from './words.ts';

/** `x` runs across the stage, `y` up and down it. */
export type Axis = 'x' | 'y';

export interface Align {
  readonly ids: readonly string[];
  /** Along which axis they come to the same. */
  readonly axis: Axis;
  /**
   * `middle`: their spots, half-way between the outermost. `least`, `greatest`: the sides of their outlines, at the one
   * that reaches farthest now; of a player with his chair.
   */
  readonly at: 'least' | 'middle' | 'greatest';
}

/** Puts at least two items in line, by their spots or by one side of their outlines. */
export const align: Command<Align> = (document, { ids, axis, at }) => {
  const targets = movables(document, ids);
  if (!targets.ok) return targets;
  if (targets.records.length < 2) return refuse(t`Select at least two items to align.`);
  const lines = targets.records.map((record) => lineOf(record, axis, at)).sort((a, b) => a - b);
  const [least = 0, greatest = 0] = [lines[0], lines.at(-1)];
  const to = { least, middle: (least + greatest) / 2, greatest }[at];
  const aligned = targets.records.map((record) =>
    withCoordinate(record, axis, record[axis] + to - lineOf(record, axis, at)),
  );
  const names = namesOf(document, targets.records);
  return propose(document, editsOf(aligned), { label: t`align ${names}` });
};

/** What of an item comes to lie in the line. */
function lineOf(record: Movable, axis: Axis, at: Align['at']): number {
  if (at === 'middle' || !isPlaced(record)) return record[axis];
  const chair = record.kind === 'player' ? chairOutline(record) : null;
  const side = at === 'least' ? Math.min : Math.max;
  return [...outlineOf(record), ...(chair ?? [])].reduce(
    (farthest, corner) => side(farthest, corner[axis]),
    record[axis],
  );
}

export interface Distribute {
  readonly ids: readonly string[];
  readonly axis: Axis;
}

/** Spreads at least three items evenly between the two outermost, which stay. */
export const distribute: Command<Distribute> = (document, { ids, axis }) => {
  const targets = movables(document, ids);
  if (!targets.ok) return targets;
  const sorted = [...targets.records].sort((a, b) => a[axis] - b[axis]);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (!first || !last || sorted.length < 3) return refuse(t`Select at least three items to distribute.`);
  const step = (last[axis] - first[axis]) / (sorted.length - 1);
  const spread = sorted.map((record, index) =>
    record === first || record === last ? record : withCoordinate(record, axis, first[axis] + index * step),
  );
  const names = namesOf(document, targets.records);
  return propose(document, editsOf(spread), { label: t`distribute ${names}` });
};

export interface Mirror {
  readonly ids: readonly string[];
}

/**
 * To the same spot on the other side of the centre line, facing mirrored; outlines and cables are flipped over. What
 * has a left and a right hand of its own, such as a grand piano, keeps its build. Sides of a pair keep their
 * readers: their pages look at where the readers are mirrored to.
 */
export const mirror: Command<Mirror> = (document, { ids }) => {
  const targets = movables(document, ids);
  if (!targets.ok) return targets;
  const block = targets.records.find(({ kind }) => kind === 'seatBlock');
  // Its rows count seats from one end and stagger to one side, which has no mirror image.
  if (block) return refuse(withoutMirrorImage(nameOf(document, block)));
  const names = namesOf(document, targets.records);
  return propose(document, editsOf(targets.records.map(mirrored)), { label: t`mirror ${names}` });
};

function withoutMirrorImage(name: string): string {
  return t`${name} cannot be mirrored; move it instead.`;
}

function mirrored(record: Movable): Movable {
  const x = tidy(-record.x);
  if (!isPlaced(record)) return { ...record, x };
  const facing = tidyFacing(-record.facing);
  if (record.kind === 'lamp') return { ...record, x, facing, cable: mirroredCable(record) };
  if (record.kind === 'shape') return { ...record, x, facing, outline: mirroredOutline(record) };
  return { ...record, x, facing };
}

function mirroredCable({ cable }: Lamp): Point[] {
  return cable.map(flipped);
}

/** Backwards, so that the corners run the same way round as before. */
function mirroredOutline({ outline }: Shape): Point[] {
  return outline.map(flipped).reverse();
}

function flipped({ x, y }: Point): Point {
  return { x: 0 - x, y };
}

function withCoordinate(record: Movable, axis: Axis, value: number): Movable {
  return movedTo(record, axis === 'x' ? { x: value, y: record.y } : { x: record.x, y: value });
}
