/** The floor under the rows of a block, tread by tread. */

import type { BlockRake } from '../../checks/sightlines/rake.ts';
import { find, platformOf } from '../../document/document.ts';
import type { Millimetres } from '../../document/records.ts';
import type { SectionContext, ShownPlace } from './context.ts';

/** `from` is the end nearer to what the rows look at. */
export interface Tread {
  readonly from: Millimetres;
  readonly to: Millimetres;
  readonly z: Millimetres;
}

export interface Steps {
  /** From the front. */
  readonly treads: readonly Tread[];
}

/** How far behind the eyes of a row its tread ends: the back of the seat. Common practice, no source. */
export const BEHIND_EYES = 320;

/** Treads as deep as the rows; a single place a step behind the last row stands on one more. */
export function stepsOf(context: SectionContext, { block, rows }: BlockRake): Steps {
  const depth = find(context.document, block)?.rowDepth ?? 0;
  const treads: Tread[] = [];
  for (const { out, looks, floorZ } of rows) {
    const last = treads.at(-1);
    const to = out + looks * BEHIND_EYES;
    treads.push({ from: last ? last.to : to - looks * depth, to, z: floorZ });
  }
  const back = treads.at(-1);
  const place = back && context.places.find((each) => standsBehind(each, back));
  if (back && place) treads.push({ from: back.to, to: place.out + ROOM_BEHIND, z: place.floorZ });
  return { treads };
}

/** Room for a camera on its legs or a standing listener. */
const ROOM_BEHIND = 500;
/** Farther back, or with a larger step, a place has a floor of its own. */
const NEAR_BEHIND = 2500;
const LIKE_A_STEP = 600;

function standsBehind({ out, floorZ }: ShownPlace, back: Tread): boolean {
  const rise = floorZ - back.z;
  return out > back.to && out < back.to + NEAR_BEHIND && rise > -1 && rise < LIKE_A_STEP;
}

/** Front rows a storey over the house floor are a balcony: it is drawn as a slab, with room under it. */
const STOREY = 2000;

export function isUpper(context: SectionContext, rake: BlockRake): boolean {
  const front = rake.rows[0];
  if (!front) return false;
  return front.floorZ + platformOf(context.document).height >= STOREY;
}
