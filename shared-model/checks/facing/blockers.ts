/** What of a scene stands in the line between two players' eyes. */

import { TOUCHING } from '../../geometry/tolerances.ts';
import type { Eye } from '../reading/eyes.ts';
import type { Occluder, QuadOccluder, Triple } from '../scene.ts';
import { cutOf } from './cuts.ts';
import { eyeLine, heightsOver, isMet, type Cut, type EyeLine } from './eye-line.ts';

/**
 * Solid things, each with a disc round it in plan, so that most lines are seen to pass it at once. The discs are plain
 * numbers in a row because every pair of players asks all of them.
 */
export interface Solids {
  readonly things: readonly Occluder[];
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly radius: Float64Array;
}

export function solidsOf(things: readonly Occluder[]): Solids {
  const discs = things.map(discOf);
  return {
    things,
    x: Float64Array.from(discs, ({ x }) => x),
    y: Float64Array.from(discs, ({ y }) => y),
    radius: Float64Array.from(discs, ({ radius }) => radius),
  };
}

/** What stands in the way, and how far it would have to be lowered for every line to pass over all of it. */
export interface Blocker {
  readonly record: string;
  readonly lowerBy: number;
}

export interface EyeContact {
  /** Most to be lowered first; empty: they see each other's eyes. */
  readonly blockers: readonly Blocker[];
  /** What the line passes over most closely, and by how much; null: over nothing. */
  readonly passesOver: { readonly record: string; readonly by: number } | null;
}

/**
 * Eye contact of two players, whoever of those that may play it is: everything that blocks one pair of their eyes
 * counts, by the most it would have to be lowered for any. Their own bodies, and what they hold, are left out.
 */
export function eyeContact(
  solids: Solids,
  players: readonly [string, string],
  eyes: readonly [readonly Eye[], readonly Eye[]],
): EyeContact {
  const lines = eyes[0].flatMap((from) => eyes[1].flatMap((to) => eyeLine(from, to) ?? []));
  const [first] = lines;
  if (!first) return { blockers: [], passesOver: null };
  // All lines of a pair run over the same ground.
  const pieces = thingsNear(first, solids).flatMap((thing): Piece[] => {
    const cut = players.includes(thing.owner ?? '') ? null : cutOf(first, thing);
    return cut ? [{ record: thing.record, cut }] : [];
  });
  return contactAlong(lines, pieces);
}

/** What the lines' upright plane cuts out of a part of a record. */
interface Piece {
  readonly record: string;
  readonly cut: Cut;
}

/** In the order of the solids. */
function thingsNear({ from, along, length }: EyeLine, { things, x, y, radius }: Solids): Occluder[] {
  const near: Occluder[] = [];
  for (let index = 0; index < things.length; index++) {
    const dx = (x[index] ?? NaN) - from.x;
    const dy = (y[index] ?? NaN) - from.y;
    const r = radius[index] ?? NaN;
    if (Math.abs(dy * along.x - dx * along.y) > r) continue;
    const ahead = dx * along.x + dy * along.y;
    const thing = things[index];
    if (thing && ahead >= -r && ahead <= length + r) near.push(thing);
  }
  return near;
}

function contactAlong(lines: readonly EyeLine[], pieces: readonly Piece[]): EyeContact {
  const met = new Set<string>();
  // Over all lines and parts: one that hangs clear above a line would come down into it.
  const greatest = new Map<string, number>();
  let passesOver: EyeContact['passesOver'] = null;
  for (const { record, cut } of pieces) {
    for (const line of lines) {
      const heights = heightsOver(line, cut);
      greatest.set(record, Math.max(greatest.get(record) ?? 0, heights.most));
      if (isMet(heights)) met.add(record);
      else passesOver = closerOf(passesOver, record, -heights.most);
    }
  }
  const blockers = [...met].map((record) => ({ record, lowerBy: greatest.get(record) ?? 0 }));
  return { blockers: blockers.sort(mostFirst), passesOver };
}

/** `by`: how far a line passes over a thing; less than nothing when it passes under it. */
function closerOf(known: EyeContact['passesOver'], record: string, by: number): EyeContact['passesOver'] {
  if (by < -TOUCHING || by >= (known?.by ?? Infinity)) return known;
  return { record, by: Math.max(0, by) };
}

/** Equal ones by their ids, so that the order does not hang on that of the scene. */
function mostFirst(a: Blocker, b: Blocker): number {
  return b.lowerBy - a.lowerBy || (a.record < b.record ? -1 : 1);
}

interface Disc {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** More than what only touches it. */
const SLACK = 1;

function discOf(thing: Occluder): Disc {
  switch (thing.kind) {
    case 'capsule':
      return { x: thing.x, y: thing.y, radius: thing.r + SLACK };
    case 'box':
      return discRound(thing.center, Math.hypot(thing.size[0], thing.size[1]) / 2);
    case 'quad':
      return discOfQuad(thing);
  }
}

function discOfQuad({ corners: [a, b, c, d] }: QuadOccluder): Disc {
  const middle = [(a[0] + b[0] + c[0] + d[0]) / 4, (a[1] + b[1] + c[1] + d[1]) / 4] as const;
  const out = ([x, y]: Triple): number => Math.hypot(x - middle[0], y - middle[1]);
  return discRound(middle, Math.max(out(a), out(b), out(c), out(d)));
}

function discRound([x, y]: readonly [number, number, ...unknown[]], radius: number): Disc {
  return { x, y, radius: radius + SLACK };
}
