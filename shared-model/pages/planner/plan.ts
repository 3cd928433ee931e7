/** The answer: what is bound how at each station, which page is where, and every turn. */

import type { Interval, Seconds } from '../../score/time-line.ts';
import type { Pass } from '../../score/words/bar-words.ts';
import type { BindingKind, SideIndex } from '../bindings/binding.ts';
import type { Hand } from './instance.ts';

/** Page numbers of the reader's part from left to right as he sees them; null: a blank. */
export type PlanView = readonly (number | null)[];

export interface StationPlan {
  readonly station: string;
  readonly kind: BindingKind;
  /** Leaves L; there are L + 1 states. */
  readonly leaves: number;
  /** Pages side by side, for each side of the station. On a ridge the same on both. */
  readonly pagesAcross: readonly number[];
  /** Of a ridge booklet: where all leaves lie at the beginning, and where those stand who turn them on. Otherwise 0. */
  readonly stackSide: SideIndex;
  /** By side, then by state. A side nobody reads has blanks. */
  readonly views: readonly (readonly PlanView[])[];
}

/** Where a reader's part is when a leaf is turned. */
export interface AtPage {
  readonly player: string;
  /** The page he is on, or was on last; null: he has not begun. */
  readonly page: number | null;
  /** He goes on with the same page; otherwise it is done. */
  readonly during: boolean;
  readonly bar: string | null;
}

export interface Turn {
  readonly station: string;
  readonly player: string;
  readonly hand: Hand;
  /** When the hand leaves. */
  readonly at: Seconds;
  /** What the turn needs, there and back. */
  readonly seconds: Seconds;
  readonly direction: 'forward' | 'back';
  readonly fromState: number;
  readonly toState: number;
  /** The side from which the leaf is lifted away. */
  readonly liftedFrom: SideIndex;
  /** The turner's own bar at that time; null: not known. */
  readonly bar: string | null;
  /** Which time through that bar; null: it is played once, or not known. */
  readonly pass: Pass | null;
  /** For every reader of the station. */
  readonly readers: readonly AtPage[];
  /** Nobody needs the station, and the turner's hand is free. */
  readonly window: Interval;
  /** Length of the window less what the turn needs. */
  readonly margin: Seconds;
  /** Somebody else than the turner gets new pages by it. */
  readonly servesPartner: boolean;
}

export interface Plan {
  /** The stations that are used. */
  readonly stations: readonly StationPlan[];
  /** In the order of time. */
  readonly turns: readonly Turn[];
}

/** The side from which a leaf is lifted: it goes on from the stack side and comes back from the other. */
export function liftedFrom(
  { kind, stackSide }: Pick<StationPlan, 'kind' | 'stackSide'>,
  direction: Turn['direction'],
): SideIndex {
  if (kind !== 'ridge') return 0;
  return (direction === 'forward' ? stackSide : 1 - stackSide) as SideIndex;
}

/** What a plan costs, gravest first; each is compared only when all before it are equal. */
export interface PlanCost {
  readonly turns: number;
  readonly stations: number;
  /** Pages side by side before the reader who has most. */
  readonly width: number;
  /** Of a ridge booklet a panel is a view with at least one page; of all others every page is a panel. */
  readonly panels: number;
  /** How often a reader does not go on to the right, nor from the left end of his row; see `isJump`. */
  readonly jumps: number;
}

export const COST_ORDER = [
  'turns',
  'stations',
  'width',
  'panels',
  'jumps',
] as const satisfies (keyof PlanCost)[];

/** What was shown about one figure: no plan that is as good in all graver figures has less than `atLeast`. */
export interface Bound {
  readonly value: number;
  readonly atLeast: number;
}

export type Proof = Readonly<Record<keyof PlanCost, Bound>>;

export function isProved({ value, atLeast }: Bound): boolean {
  return value <= atLeast;
}

/** Negative: `a` is the better. */
export function compareCosts(a: PlanCost, b: PlanCost): number {
  for (const figure of COST_ORDER) if (a[figure] !== b[figure]) return a[figure] - b[figure];
  return 0;
}
