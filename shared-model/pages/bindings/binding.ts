/**
 * How the paper of one station is bound: what kind, how many leaves, and which page is where in which state.
 *
 * A station is one desk (one side) or a back-to-back pair (two sides, whose readers face each other). A state counts
 * the leaves turned so far: 0 to `leaves`. One movement takes every side of the station from one state to the next.
 */

import type { BindingKind } from '../../document/kept-plan.ts';

export type { BindingKind } from '../../document/kept-plan.ts';

/** 0: the first side of the station, 1: the other side of a back-to-back pair. */
export type SideIndex = 0 | 1;

/** A page of somebody's part. Two players who read the same part from paper of their own name the same pages. */
export interface PageRef {
  /** Names the part; the id of its player as a rule. */
  readonly part: string;
  /** From 1, as the part numbers its pages. */
  readonly page: number;
}

/** What a reader sees in one state: pages from left to right as he sees them; null: nothing printed there. */
export type View = readonly (PageRef | null)[];

/**
 * - `loose`: single pages in a row. No leaves; `pagesPerPanel` is the number of places in the row. One side.
 * - `book`: printed on both sides of the paper, `pagesPerPanel` 1. One side, views of two pages: in state s the back of leaf s
 *   and the front of leaf s + 1; in state 0 on the left, and in the last state on the right, what lies inside the cover.
 * - `concertina`: pages taped side to side in a row and folded zig-zag, printed on one side of the paper. One side. A view
 *   is `pagesPerPanel` neighbouring pages, at least two; a turn moves it on by two, which is one leaf.
 * - `ridge`: a booklet hung over the ridge of a back-to-back pair, printed on one side of the paper. Two sides, views of
 *   `pagesPerPanel` pages each. All leaves start on the stack side, where the one who turns them stands.
 */
export interface Binding {
  readonly kind: BindingKind;
  /** Leaves that can be turned; a binding has one state more. */
  readonly leaves: number;
  readonly pagesPerPanel: number;
  /** Of a ridge booklet: the side on which all leaves lie in state 0. 0 for every other kind. */
  readonly stackSide: SideIndex;
  /** Indexed by side, then by state, then by place from the left. A side nobody reads holds nulls only. */
  readonly views: readonly (readonly View[])[];
}

export function statesOf(binding: Binding): number {
  return binding.leaves + 1;
}

/** How many pages stand side by side in every view of a binding. */
export function pagesInView({ kind, pagesPerPanel }: Pick<Binding, 'kind' | 'pagesPerPanel'>): number {
  return kind === 'book' ? 2 : pagesPerPanel;
}

/** What the reader on a side sees in a state; throws when the binding has no such side or state. */
export function viewOf(binding: Binding, side: SideIndex, state: number): View {
  const view = binding.views[side]?.[state];
  if (!view) throw new Error(`a ${binding.kind} binding has no state ${state} on side ${side}`);
  return view;
}
