/** Gives a player something to sit on, or lets him stand. */

import type { Id } from '../document/ids.ts';
import type { Chair, Person, Player } from '../document/records.ts';
import type { Command } from './command.ts';
import { editsOf, propose } from './propose.ts';
import { theRecord } from './targets.ts';
import { nameOf } from './words.ts';

export interface SeatPlayer {
  readonly player: Id<'player'>;
  /** Null: he stands. */
  readonly chair: Chair | null;
}

export const seatPlayer: Command<SeatPlayer> = (document, { player: id, chair }) => {
  const target = theRecord(document, id, 'player');
  if (!target.ok) return target;
  const player = target.record;
  const changed = { ...player, chair, person: measuredAnew(player, chair) };
  const label = `${chair ? 'seat' : 'stand up'} ${nameOf(document, player)}`;
  return propose(document, editsOf([changed]), { label });
};

/**
 * Eyes and shoulders were measured from the floor as he sat or stood. On a higher chair they go up with it; between
 * sitting and standing the figures no longer hold and are dropped.
 */
function measuredAnew({ person, chair: before }: Player, chair: Chair | null): Person {
  const { eyeHeight, shoulderHeight, armLength } = person.measured;
  if (before === null && chair === null) return person;
  const raised = before && chair ? chair.height - before.height : null;
  const anew = (height: number | null): number | null =>
    height === null || raised === null ? null : height + raised;
  return {
    ...person,
    measured: { eyeHeight: anew(eyeHeight), shoulderHeight: anew(shoulderHeight), armLength },
  };
}
