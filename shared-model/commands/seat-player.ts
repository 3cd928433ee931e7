/** Gives a player something to sit on, lets him stand, or says that he uses a wheelchair. */

import { USUAL_SEAT, WHEELCHAIR } from '../catalogue/seats.ts';
import type { Id } from '../document/ids.ts';
import type { Chair, Mobility, Person, Player } from '../document/records.ts';
import { t } from '../words/say.ts';
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
  const mobility = isWheelchair(chair) ? 'wheelchair' : player.mobility;
  const changed = { ...player, chair, mobility, person: measuredAnew(player, chair) };
  const name = nameOf(document, player);
  const label = chair ? t`seat ${name}` : t`stand up ${name}`;
  return propose(document, editsOf([changed]), { label });
};

export interface SetMobility {
  readonly player: Id<'player'>;
  readonly mobility: Mobility;
}

/** Who comes in a wheelchair sits in it, until he is given another chair; who walks is not left sitting in one. */
export const setMobility: Command<SetMobility> = (document, { player: id, mobility }) => {
  const target = theRecord(document, id, 'player');
  if (!target.ok) return target;
  const player = target.record;
  const chair = mobility === player.mobility ? player.chair : chairFor(mobility, player.chair);
  const changed = { ...player, chair, mobility, person: measuredAnew(player, chair) };
  const name = nameOf(document, player);
  const label = mobility === 'wheelchair' ? t`seat ${name} in a wheelchair` : t`let ${name} walk`;
  return propose(document, editsOf([changed]), { label });
};

function chairFor(mobility: Mobility, before: Chair | null): Chair | null {
  const { id, height } = mobility === 'wheelchair' ? WHEELCHAIR : USUAL_SEAT;
  return mobility === 'wheelchair' || isWheelchair(before) ? { model: id, height: height.usual } : before;
}

function isWheelchair(chair: Chair | null): boolean {
  return chair?.model === WHEELCHAIR.id;
}

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
