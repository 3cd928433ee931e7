/** Seeded random stages: everything that can be placed, anywhere and in one another, with eyes anywhere. */

import type { Document } from '#model/document/document.ts';
import type { AnyRecord } from '#model/document/records.ts';
import {
  aConcert,
  aDocument,
  aLargeInstrument,
  anInstrument,
  aPiano,
  aPlace,
  aPlayer,
  aRiser,
  aSeatBlock,
  aShape,
  aStand,
  aTable,
  SIDE,
} from '../../../helpers/build.ts';
import { diceOf, type Dice } from '../../../oracles/seeded.ts';

export interface RandomStage {
  readonly document: Document;
  readonly seats: readonly string[];
  readonly players: readonly string[];
}

type ItemKind = 'player' | 'stand' | 'table' | 'piano' | 'largeInstrument' | 'riser' | 'shape';

const KINDS: readonly ItemKind[] = ['player', 'stand', 'table', 'piano', 'largeInstrument', 'riser', 'shape'];

export function randomStage(seed: number, count: number, kinds = KINDS): RandomStage {
  const dice = diceOf(seed);
  const items = Array.from({ length: count }, (_, index) => randomItem(dice, dice.pick(kinds), index)).flat();
  const seats = Array.from({ length: 3 }, (_, index) => randomPlace(dice, `eye-${index}`));
  const house = [
    aConcert({ headsInFront: dice.chance(0.4) }),
    aSeatBlock({ rows: 3, frontRail: dice.pick([0, 900]), riser: dice.pick([0, 200]), curveRadius: 0 }),
  ];
  return {
    document: aDocument(...house, ...items, ...seats),
    seats: [...seats.map(({ id }) => id), 'stalls/B-4'],
    players: items.flatMap(({ id, kind }) => (kind === 'player' ? id : [])),
  };
}

/** In the stalls, in a balcony, behind or beside the platform, and now and then among or in the items on it. */
function randomPlace(dice: Dice, id: string): AnyRecord & { readonly kind: 'place' } {
  const [x, y] = dice.chance(0.6)
    ? [dice.between(-6000, 6000), dice.between(-9000, -800)]
    : [dice.between(-5000, 5000), dice.between(-1000, 8000)];
  return aPlace({
    id,
    use: dice.pick(['camera', 'standing']),
    x,
    y,
    floor: dice.pick([0, 0, 500, 4000]),
    eyeHeight: dice.between(900, 1800),
  });
}

function randomItem(dice: Dice, kind: ItemKind, index: number): AnyRecord[] {
  const id = `${kind}-${index + 1}`;
  const facing = dice.pick([0, 90, 180, dice.between(-180, 180)]);
  const common = { id, x: dice.between(-3900, 3900), y: dice.between(100, 4900), facing };
  switch (kind) {
    case 'player':
      return randomPlayer(dice, common);
    case 'stand': {
      const sides = [{ ...SIDE, pagesAcross: dice.whole(0, 4) }] as const;
      return [aStand({ ...common, lip: dice.between(500, 1200), tilt: dice.between(10, 85), sides })];
    }
    case 'table':
      return [aTable({ ...common, width: dice.between(100, 1500), height: dice.between(0, 1100) })];
    case 'piano':
      return [aPiano({ ...common, lid: dice.pick(['closed', 'half', 'full']) })];
    case 'largeInstrument':
      return [aLargeInstrument({ ...common, model: dice.pick(LARGE) })];
    case 'riser':
      return [aRiser({ ...common, height: dice.pick([200, 400, 600]) })];
    case 'shape':
      return [aShape({ ...common, height: dice.between(10, 3000) })];
  }
}

const LARGE = ['marimba-5-octave', 'timpani', 'bass-drum', 'harp', 'drum-kit'];
const HELD = ['tuba', 'cello', 'clarinet-b-flat', 'viola', 'flute', 'horn'];

function randomPlayer(
  dice: Dice,
  common: { readonly id: string; readonly x: number; readonly y: number; readonly facing: number },
): AnyRecord[] {
  const player = aPlayer({ ...common, chair: dice.pick([null, { model: 'orchestra-chair', height: 450 }]) });
  const id = `instrument-of-${player.id}`;
  return [player, anInstrument({ id, player: player.id, model: dice.pick(HELD) })];
}
