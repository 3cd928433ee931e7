/** The ways in which things can be changed, each as a search for the least of it that helps. */

import { standModel, USUAL_STAND } from '../../catalogue/stands.ts';
import type { PlacedRecord, Stand } from '../../document/records.ts';
import { facingVector, type Vec2 } from '../../geometry/frame.ts';
import type { Remedy, RemedyChange } from '../finding.ts';
import { smallestRemedy, type Attempt } from './attempt.ts';
import { firstPassing, type Steps } from './search.ts';

/** Heights are round to 5 mm. */
const LOWERING: Omit<Steps, 'most'> = { coarse: 40, fine: 5 };
/** Turned farther, a desk no longer shows its pages to whom it did. */
const TURNING: Steps = { coarse: 8, fine: 1, most: 48 };

/** Of the desks of these stands the one that has to come down least. */
export function lowerOne(stands: readonly Stand[], attempt: Attempt): Remedy | null {
  const lowered = (stand: Stand, amount: number): RemedyChange => ({
    kind: 'lower',
    item: stand.id,
    by: Math.min(amount, roomBelow(stand)),
  });
  const able = stands.filter((stand) => roomBelow(stand) > 0);
  return smallestRemedy(able, loweringOf(able), lowered, attempt);
}

/** All desks down by the same, or as far as they go. */
export function lowerTogether(stands: readonly Stand[], attempt: Attempt): Remedy | null {
  const able = stands.filter((stand) => roomBelow(stand) > 0);
  if (able.length < 2) return null;
  const lowered = (desks: readonly Stand[], amount: number): RemedyChange => ({
    kind: 'lowerAll',
    items: desks.map((stand) => ({ item: stand.id, by: Math.min(amount, roomBelow(stand)) })),
  });
  return smallestRemedy([able], loweringOf(able), lowered, attempt);
}

/** Of these stands the one that has to turn least, about its own spot. */
export function turnOne(stands: readonly Stand[], attempt: Attempt): Remedy | null {
  const ways = stands.flatMap((stand) => [1, -1].map((sense) => ({ stand, sense })));
  const turned = ({ stand, sense }: (typeof ways)[number], amount: number): RemedyChange => ({
    kind: 'turn',
    item: stand.id,
    by: sense * amount,
  });
  return smallestRemedy(ways, TURNING, turned, attempt);
}

/**
 * Somebody turned about his own spot, with the stands he alone reads from: either way, at most so far (degrees). The
 * first of the ids is his.
 */
export function turnRound(ids: Together, most: number, attempt: Attempt): Remedy | null {
  const [item, ...others] = ids;
  const turned = (sense: number, amount: number): RemedyChange => {
    const by = sense * amount;
    return others.length > 0 ? { kind: 'turnTogether', items: ids, by } : { kind: 'turn', item, by };
  };
  return smallestRemedy([1, -1], { ...TURNING, most }, turned, attempt);
}

/** Ids of what is moved or turned as one; at least one. */
export type Together = readonly [string, ...string[]];

/** What is tried to be moved, with the direction, a unit vector. */
export interface Way {
  readonly items: Together;
  readonly direction: Vec2;
}

/** Both coordinates of a move are round to this, mm. */
const ROUND = 10;

/**
 * Of all ways the shortest, and of that no more than it takes: neither coordinate can be a round step smaller.
 * `coarse` and `most` in mm.
 */
export function moveOne(ways: readonly Way[], steps: Omit<Steps, 'fine'>, attempt: Attempt): Remedy | null {
  const round = (length: number): number => Math.round(length / ROUND) * ROUND + 0;
  const moved = ({ items, direction }: Way, amount: number): Move =>
    moveOf(items, round(direction.x * amount), round(direction.y * amount));
  const shortest = smallestRemedy(ways, { ...steps, fine: ROUND }, moved, attempt);
  return shortest && isMove(shortest) ? trimmed(shortest, attempt) : shortest;
}

type Move = Extract<RemedyChange, { readonly dx: number }>;

function isMove(change: RemedyChange): change is Move {
  return 'dx' in change;
}

function moveOf(items: Together, dx: number, dy: number): Move {
  return items.length > 1
    ? { kind: 'moveTogether', items, dx, dy }
    : { kind: 'move', item: items[0], dx, dy };
}

/** Takes off what rounding and the choice of directions have added. */
function trimmed(move: Move, attempt: Attempt): Remedy | null {
  const { dx, dy } = move;
  const to = (x: number, y: number): Move => ({ ...move, dx: x, dy: y });
  const passes = (x: number, y: number): boolean => attempt(to(x, y)) !== null;
  const x = leastLength(dx, (length) => passes(length, dy));
  const y = leastLength(dy, (length) => passes(x, length));
  if (x !== dx || y !== dy) return trimmed(to(x, y), attempt);
  const after = attempt(to(dx, dy));
  return after === null ? null : { ...to(dx, dy), after };
}

/** The length nearest to 0, in round steps, down to which all that is tried passes. */
function leastLength(length: number, passes: (length: number) => boolean): number {
  const at = (step: number): number => Math.sign(length) * step * ROUND + 0;
  const steps = Math.abs(length) / ROUND;
  if (steps === 0 || !passes(at(steps - 1))) return length;
  return at(firstPassing([-1, steps - 1], (step) => passes(at(step))));
}

/** Towards the house, stage left, upstage and stage right. */
export const STRAIGHT: readonly Vec2[] = [0, 90, 180, -90].map(facingVector);

/** Every 22.5 degrees; of two moves that do as well the straight one comes first. */
export const ALL_ROUND: readonly Vec2[] = [
  ...STRAIGHT,
  ...[45, 135, -135, -45].map(facingVector),
  ...[22.5, 67.5, 112.5, 157.5, -157.5, -112.5, -67.5, -22.5].map(facingVector),
];

export function waysOf(items: Together, directions: readonly Vec2[]): Way[] {
  return directions.map((direction) => ({ items, direction }));
}

export function everyWay(items: readonly PlacedRecord[], directions: readonly Vec2[]): Way[] {
  return items.flatMap(({ id }) => waysOf([id], directions));
}

export function standsAmong(records: readonly PlacedRecord[]): Stand[] {
  return records.filter((record) => record.kind === 'stand');
}

function loweringOf(stands: readonly Stand[]): Steps {
  return { ...LOWERING, most: stands.reduce((most, stand) => Math.max(most, roomBelow(stand)), 0) };
}

/** How far a desk goes down as its model is made, in round steps. */
export function roomBelow({ model, lip }: Stand): number {
  const { least } = (standModel(model) ?? USUAL_STAND).lip;
  return Math.max(0, Math.floor((lip - least) / LOWERING.fine) * LOWERING.fine);
}
