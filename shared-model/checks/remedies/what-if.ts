/**
 * What the house would see if one thing were not there, hung lower or stood turned: how much of the loss is its own.
 * Each figure is that of the whole check on the changed scene, not an estimate from its shadow alone.
 */

import { concertOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { isPlaced, type AnyRecord, type Degrees, type Millimetres } from '../../document/records.ts';
import type { RemedyChange } from '../finding.ts';
import type { Scene } from '../scene.ts';
import { sharesOf, shareOfPlaces } from '../sightlines/house-figures.ts';
import { createSightEngine } from '../sightlines/sight-engine.ts';
import { carriedOut } from './carry-out.ts';
import { scenesOf } from './scenes.ts';
import { roomBelow } from './ways.ts';
import { weightOf } from './weights.ts';

/** What the house sees of one player. */
export interface SeenShare {
  readonly player: string;
  /** Share of places (0..1) that see him well. */
  readonly seenWell: number;
  /** Mean share of his window (0..1) over the house. */
  readonly mean: number;
}

export interface WhatIf {
  readonly record: string;
  /** As it stands; one entry a player, in the order of the scene. */
  readonly now: readonly SeenShare[];
  /** Without it. A player who is himself the thing still stands there, but hides nobody. */
  readonly gone: readonly SeenShare[];
  /** Its desk `by` mm lower, as low as its kind of stand goes; null: it has no desk, or that is down already. */
  readonly lowered: { readonly by: Millimetres; readonly seen: readonly SeenShare[] } | null;
  /** Turned about its own spot `by` degrees to where most is seen; null: it stays, or no turn tried brings anything. */
  readonly turned: { readonly by: Degrees; readonly seen: readonly SeenShare[] } | null;
}

/** Turned farther, a desk no longer shows its pages to whom it did. */
const TURNS: readonly Degrees[] = [5, -5, 10, -10, 20, -20, 30, -30, 45, -45];

/** Null: there is nothing of this id that stands in the setup and hides anybody. */
export function whatIf(document: Document, setup: Id<'setup'>, record: string): WhatIf | null {
  const scenes = scenesOf(document, setup);
  const { base } = scenes;
  const thing = document.records.get(record);
  if (!thing || !base.occluders.some((occluder) => occluder.record === record)) return null;
  const engine = createSightEngine(base);
  const limit = concertOf(document).limits.seesWell;
  const measured = (scene: Scene): SeenShare[] => seenShares(scene, engine.update(scene).visible, limit);
  const tried = (change: RemedyChange): SeenShare[] | null => {
    const changed = carriedOut(document, change);
    return changed && measured(scenes.of(changed));
  };
  const now = seenShares(base, engine.visible, limit);
  return {
    record,
    now,
    gone: measured({ ...base, occluders: base.occluders.filter((occluder) => occluder.record !== record) }),
    lowered: lowered(thing, tried),
    turned: mayTurn(document, thing) ? bestTurn(record, now, tried) : null,
  };
}

function seenShares(scene: Scene, visible: Float64Array, limit: number): SeenShare[] {
  return scene.targets.map(({ id }, target) => {
    const shares = sharesOf(scene, visible, target);
    return { player: id, seenWell: shareOfPlaces(shares, limit), mean: meanOf(shares) };
  });
}

function meanOf(shares: Float64Array): number {
  return shares.length === 0 ? 1 : shares.reduce((sum, share) => sum + share, 0) / shares.length;
}

type Tried = (change: RemedyChange) => SeenShare[] | null;

function lowered(thing: AnyRecord, tried: Tried): WhatIf['lowered'] {
  if (thing.kind !== 'stand') return null;
  const by = roomBelow(thing);
  const seen = by > 0 ? tried({ kind: 'lower', item: thing.id, by }) : null;
  return seen && { by, seen };
}

function mayTurn(document: Document, thing: AnyRecord): boolean {
  return isPlaced(thing) && weightOf(document, thing) !== null;
}

/** A turn has to bring this much of one player's window on average, or it is not worth naming. */
const WORTH = 0.001;

function bestTurn(item: string, now: readonly SeenShare[], tried: Tried): WhatIf['turned'] {
  let best: WhatIf['turned'] = null;
  let most = totalOf(now) + WORTH;
  for (const by of TURNS) {
    const seen = tried({ kind: 'turn', item, by });
    if (seen && totalOf(seen) > most) [best, most] = [{ by, seen }, totalOf(seen)];
  }
  return best;
}

function totalOf(seen: readonly SeenShare[]): number {
  return seen.reduce((sum, { mean }) => sum + mean, 0);
}
