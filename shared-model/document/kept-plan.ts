/**
 * A page plan as it is kept: what somebody decided, and nothing that can be derived from it. Times are places in the music, so
 * that turns stay where they are in it when the tempo changes.
 */

import type { Id } from './ids.ts';

export type BindingKind = 'loose' | 'book' | 'concertina' | 'ridge';

/**
 * A moment in bars as performed: 47.25 is a quarter through the 48th bar that is played, by time within that bar. Repeats
 * count each time.
 */
export type Place = number;

/** How the paper of one stand is bound, and what its readers see. */
export interface KeptStation {
  readonly station: Id<'stand'>;
  readonly kind: BindingKind;
  /** Leaves that can be turned; there is one state more. */
  readonly leaves: number;
  /** Pages side by side, for each side of the stand. */
  readonly pagesAcross: readonly number[];
  /** Of a ridge booklet: the side on which all leaves lie at first. Otherwise 0. */
  readonly stackSide: 0 | 1;
  /** By side, then by state: pages from left to right as the reader sees them; null: a blank. */
  readonly views: readonly (readonly (readonly (number | null)[])[])[];
}

export interface KeptTurn {
  readonly station: Id<'stand'>;
  readonly player: Id<'player'>;
  readonly hand: 'left' | 'right';
  /** When the hand leaves. */
  readonly place: Place;
  readonly fromState: number;
  readonly toState: number;
}

/** This page is printed there. */
export interface KeptPagePin {
  readonly kind: 'page';
  readonly station: Id<'stand'>;
  readonly side: 0 | 1;
  readonly state: number;
  /** From the reader's left; null: anywhere in the view. */
  readonly slot: number | null;
  readonly page: number;
}

/** There is a turn at this stand, by this player, wholly between these. */
export interface KeptTurnPin {
  readonly kind: 'turn';
  readonly station: Id<'stand'>;
  readonly player: Id<'player'>;
  readonly from: Place;
  readonly to: Place;
}

export type KeptPin = KeptPagePin | KeptTurnPin;
