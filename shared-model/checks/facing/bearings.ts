/** Where a player's partners are from where he looks. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Degrees, Player, Point } from '../../document/records.ts';
import { normaliseFacing } from '../../geometry/frame.ts';
import { isBeyond, lookFrom, turnFor, type Turn } from '../reading/gaze.ts';
import { middleOf, readingPlaces } from '../reading/places.ts';
import { HALF_FIELD } from './published.ts';

/** A direction that a player looks in while he plays. */
export interface Gaze {
  /** Whose page he reads; null: he reads nothing and looks where he faces. */
  readonly stand: Id<'stand'> | null;
  readonly facing: Degrees;
}

/** Of every player who reads: towards the middle of each row of pages, by its stand's id. */
export function readingGazes(document: Document, setup: Id<'setup'>): Map<string, Gaze[]> {
  const gazes = new Map<string, Gaze[]>();
  for (const { reader, stand, paper } of readingPlaces(document, setup)) {
    const gaze = { stand: stand.id, facing: lookFrom(reader, middleOf(paper), reader.facing) };
    gazes.set(reader.id, [...(gazes.get(reader.id) ?? []), gaze]);
  }
  return gazes;
}

/** How one player has to turn to look another in the face. */
export interface Glance {
  readonly looker: Id<'player'>;
  readonly partner: Id<'player'>;
  /** What he looks up from: of several pages the one farthest from his partner. */
  readonly from: Gaze;
  /** Of the partner's face from there in plan, in (-180, 180]: positive to his left. */
  readonly bearing: Degrees;
  readonly turn: Turn;
  /** Whether he notices his partner at the edge of his view without turning at all. */
  readonly inField: boolean;
}

/** `gazes`: what the looker reads; empty: he looks where he faces. */
export function glanceAt(looker: Player, partner: Player, gazes: readonly Gaze[]): Glance {
  const [first = { stand: null, facing: looker.facing }, ...others] = gazes;
  const bearingFrom = ({ facing }: Gaze): Degrees => bearingOf(looker, facing, partner);
  const from = others.reduce(
    (worst, gaze) => (isBeyond(Math.abs(bearingFrom(gaze)), Math.abs(bearingFrom(worst))) ? gaze : worst),
    first,
  );
  const bearing = bearingFrom(from);
  return {
    looker: looker.id,
    partner: partner.id,
    from,
    bearing,
    turn: turnFor(bearing),
    inField: !isBeyond(Math.abs(bearing), HALF_FIELD),
  };
}

/** Of a point from somebody who looks along `facing`; positive to his left, 0 for his own spot. */
export function bearingOf(looker: Point, facing: Degrees, point: Point): Degrees {
  return normaliseFacing(lookFrom(looker, point, facing) - facing);
}
