/** A player's shoulders, his hands, and which of them can let go. */

import { instrumentModel, type Hands } from '../../catalogue/instruments.ts';
import { bodies, type Body } from '../../catalogue/people.ts';
import { inSetup, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightAt } from '../../document/levels.ts';
import type { Person, Player } from '../../document/records.ts';
import { placed, type Vec3 } from '../../geometry/frame.ts';
import type { Hand } from '../report.ts';
import type { Arm } from './postures.ts';
import { HANDS_AHEAD } from './published.ts';

/** A player as one who reaches; places in the stage frame, mm. */
export interface Reacher {
  readonly player: Player;
  /** Of the floor he is on. */
  readonly floor: number;
  readonly shoulders: Readonly<Record<Hand, Vec3>>;
  /** Where his hands are while he plays. */
  readonly handsAt: Vec3;
  readonly arm: Arm;
  /** Standard deviation of the arm about what his stature predicts. */
  readonly armResidual: number;
  /** The arm when he is on his feet; the same when he stands anyway. */
  readonly standingArm: Arm;
}

const HANDS: readonly Hand[] = ['left', 'right'];

/** An instrument the catalogue does not know leaves either hand. */
const UNKNOWN_FREES: Hands = 'both';

/**
 * The hands a player has free in a rest: those that every instrument in his hands lets go. One that waits on a stand
 * or a table takes none, nor does a piano or an instrument on the floor.
 */
export function freeHands(document: Document, setup: Id<'setup'>, player: Id<'player'>): Hand[] {
  const held = inSetup(document, setup, 'instrument').filter(
    (instrument) => instrument.player === player && instrument.support === null,
  );
  const letsGo = held.map(({ model }) => instrumentModel(model)?.freeInRest ?? UNKNOWN_FREES);
  return HANDS.filter((hand) => letsGo.every((free) => free === 'both' || free === hand));
}

/** The smallest and the tallest who may play there: one of them, or two when anyone may. */
export function reachersOf(document: Document, setup: Id<'setup'>, player: Player): Reacher[] {
  const floor = floorHeightAt(document, setup, player);
  const there = bodies(player.person, player.chair?.height ?? null);
  const onFeet = player.chair ? bodies(standingPerson(player.person), null) : there;
  const small = reacher(player, floor, there.small, onFeet.small);
  return player.person.size.by === 'anyone'
    ? [small, reacher(player, floor, there.tall, onFeet.tall)]
    : [small];
}

/** Heights measured as he sits say nothing of him standing. */
function standingPerson(person: Person): Person {
  return { ...person, measured: { ...person.measured, eyeHeight: null, shoulderHeight: null } };
}

function reacher(player: Player, floor: number, body: Body, onFeet: Body): Reacher {
  const shoulder = (side: 1 | -1): Vec3 => ({
    ...placed(player, { x: (side * body.biacromialBreadth) / 2, y: 0 }),
    z: floor + body.shoulderHeight,
  });
  return {
    player,
    floor,
    shoulders: { left: shoulder(1), right: shoulder(-1) },
    handsAt: {
      ...placed(player, { x: 0, y: -HANDS_AHEAD }),
      z: floor + (body.waistHeight + body.shoulderHeight) / 2,
    },
    arm: armOf(body),
    armResidual: body.armResidual,
    standingArm: armOf(onFeet),
  };
}

function armOf({ armLength, shoulderHeight, waistHeight }: Body): Arm {
  return { length: armLength, shoulderHeight, waistHeight };
}
