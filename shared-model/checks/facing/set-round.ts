/** How far somebody would have to be turned, with the page, to see everybody he must without turning the body. */

import type { Degrees } from '../../document/records.ts';
import { normaliseFacing } from '../../geometry/frame.ts';
import { isBeyond, TURN_LIMITS } from '../reading/gaze.ts';
import type { Glance } from './bearings.ts';
import { PROFILE } from './published.ts';

/** `back`: only by more than a profile from the house; `opposed`: no way of facing suits all. */
export type SetRound =
  { readonly kind: 'round'; readonly by: Degrees } | { readonly kind: 'back' } | { readonly kind: 'opposed' };

/**
 * The least turn in whole degrees, to his left positive, after which each of one looker's `glances` asks for no more
 * than his head. Pages are taken to go round about him, and who faces from the house by more than a profile already may stay so.
 */
export function setRound(glances: readonly Glance[]): SetRound {
  const suiting = TURNS.filter((turn) => glances.every((glance) => suits(glance, turn)));
  const by = suiting.find((turn) => glances.every((glance) => keepsFront(glance, turn)));
  if (by !== undefined) return { kind: 'round', by };
  return { kind: suiting.length > 0 ? 'back' : 'opposed' };
}

/** Least first. */
const TURNS: readonly Degrees[] = Array.from({ length: 180 }, (_, index) => [index + 1, -index - 1]).flat();

function suits({ bearing }: Glance, turn: Degrees): boolean {
  return !isBeyond(Math.abs(normaliseFacing(bearing - turn)), TURN_LIMITS.head);
}

function keepsFront({ from }: Glance, turn: Degrees): boolean {
  const now = Math.abs(normaliseFacing(from.facing));
  return !isBeyond(Math.abs(normaliseFacing(from.facing + turn)), Math.max(now, PROFILE));
}
