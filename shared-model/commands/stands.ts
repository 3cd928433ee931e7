/** What is done to music stands beyond moving and turning them. */

import { deskDepth } from '../document/desks.ts';
import type { Id } from '../document/ids.ts';
import type { Stand, StandSide } from '../document/records.ts';
import { facingVector } from '../geometry/frame.ts';
import { t } from '../words/say.ts';
import { refuse, type Command } from './command.ts';
import { editsOf, propose } from './propose.ts';
import { movedTo } from './spots.ts';
import { theRecord } from './targets.ts';
import { nameOf } from './words.ts';

export interface AssignReader {
  readonly stand: Id<'stand'>;
  readonly side: 0 | 1;
  /** Null: nobody reads there. */
  readonly reader: Id<'player'> | null;
}

export const assignReader: Command<AssignReader> = (document, { stand: id, side, reader }) => {
  const target = theRecord(document, id, 'stand');
  if (!target.ok) return target;
  const stand = target.record;
  const name = nameOf(document, stand);
  if (side >= stand.sides.length) return refuse(t`${name} has no second side.`);
  const player = reader === null ? null : theRecord(document, reader, 'player');
  if (player && !player.ok) return player;
  const [first, second] = stand.sides;
  const read = (here: StandSide, index: 0 | 1): StandSide => (index === side ? { ...here, reader } : here);
  const sides: Stand['sides'] = second ? [read(first, 0), read(second, 1)] : [read(first, 0)];
  const label = player ? readingWords(nameOf(document, player.record), name) : t`let nobody read at ${name}`;
  return propose(document, editsOf([{ ...stand, sides }]), { label });
};

function readingWords(player: string, stand: string): string {
  return t`let ${player} read at ${stand}`;
}

export interface SetStandForm {
  readonly stand: Id<'stand'>;
  readonly form: Stand['form'];
}

/** Makes a pair of one desk, or one desk of a pair; the first desk stays where it is. */
export const setStandForm: Command<SetStandForm> = (document, { stand: id, form }) => {
  const target = theRecord(document, id, 'stand');
  if (!target.ok) return target;
  const stand = target.record;
  const changed = stand.form === form ? stand : form === 'single' ? singleOf(stand) : pairOf(stand);
  const name = nameOf(document, stand);
  const label = form === 'single' ? t`make ${name} a single stand` : t`make ${name} a back-to-back pair`;
  return propose(document, editsOf([changed]), { label });
};

function pairOf(stand: Stand): Stand {
  const [first] = stand.sides;
  const second: StandSide = { ...first, reader: null, turned: false, freeTime: null };
  return { ...shiftedAlongFacing(stand, -deskDepth(stand) / 2), form: 'backToBack', sides: [first, second] };
}

function singleOf(stand: Stand): Stand {
  return { ...shiftedAlongFacing(stand, deskDepth(stand) / 2), form: 'single', sides: [stand.sides[0]] };
}

/** A single desk is placed by its middle, a pair by the ridge at its upper edge: half a desk apart. */
function shiftedAlongFacing(stand: Stand, by: number): Stand {
  const ahead = facingVector(stand.facing);
  return movedTo(stand, { x: stand.x + ahead.x * by, y: stand.y + ahead.y * by });
}
