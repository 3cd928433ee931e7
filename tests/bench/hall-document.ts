/** The halls of `hall-scene.ts` as documents that the editor opens: as many seats, players and occluders. */

import { buildScene } from '#model/checks/scene/build-scene.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { AnyRecord, SeatBlock } from '#model/document/records.ts';
import {
  aConcert,
  aDoor,
  aPlatform,
  aPlayer,
  aSeatBlock,
  aSetup,
  aStand,
  aTable,
  SETUP,
  SIDE,
} from '../helpers/build.ts';
import { diceOf, type Dice } from '../oracles/seeded.ts';
import { playerSpots, seatsByRow, type HallSize, type Spot } from './hall-scene.ts';

/**
 * Seated players where the scene has them, each with a stand of his own, then tables among them until the sight check
 * meets as many occluders as were asked for; the house has the same rows.
 */
export function hallDocument(size: HallSize, seed = 1): Document {
  const dice = diceOf(seed);
  const spots = playerSpots(dice, size.players);
  const records: AnyRecord[] = [aConcert({ name: size.name }), aSetup(), ...hall(spots), house(size.seats)];
  spots.forEach((spot, i) => records.push(...playerWithStand(dice, spot, i)));
  const missing = size.occluders - buildScene(documentOf(records), SETUP).occluders.length;
  for (let i = 0; i < missing; i++) records.push(tableNear(dice, dice.pick(spots), i));
  return documentOf(records);
}

/** Round the players, with room for whatever stands beside them. */
const ROUND = 2000;

function hall(spots: readonly Spot[]): AnyRecord[] {
  const side = Math.max(...spots.map(({ x }) => Math.abs(x))) + ROUND;
  const depth = Math.max(...spots.map(({ y }) => y)) + ROUND;
  const outline = [
    { x: -side, y: 0 },
    { x: side, y: 0 },
    { x: side, y: depth },
    { x: -side, y: depth },
  ];
  return [aPlatform({ outline, openEdges: [0] }), aDoor({ edge: 2 })];
}

function house(seats: number): SeatBlock {
  const seatsPerRow = seatsByRow(seats);
  return aSeatBlock({
    rows: seatsPerRow.length,
    seatsPerRow,
    y: -2000,
    rowDepth: 900,
    riser: 100,
    eyeHeight: 1150,
    firstRow: '1',
  });
}

function playerWithStand(dice: Dice, { x, y }: Spot, i: number): AnyRecord[] {
  const player = aPlayer({
    id: `player-${i + 1}`,
    name: `Player ${i + 1}`,
    x: Math.round(x),
    y: Math.round(y),
    chair: { model: 'orchestra-chair', height: 450 },
  });
  const stand = aStand({
    id: `stand-${i + 1}`,
    x: Math.round(x + dice.between(-200, 200)),
    y: Math.round(y - dice.between(450, 700)),
    lip: Math.round(dice.between(650, 950)),
    facing: upstage(Math.round(dice.between(-40, 40))),
    sides: [{ ...SIDE, reader: asId(`player-${i + 1}`) }],
  });
  return [player, stand];
}

/** Towards the player behind the desk, so many degrees off straight. */
const upstage = (off: number): number => (off > 0 ? off - 180 : off + 180);

function tableNear(dice: Dice, spot: Spot, i: number): AnyRecord {
  return aTable({
    id: `table-${i + 1}`,
    x: Math.round(spot.x + dice.between(-900, 900)),
    y: Math.round(spot.y - dice.between(350, 1100)),
    width: Math.round(dice.between(200, 900)),
    depth: Math.round(dice.between(200, 700)),
    height: Math.round(dice.between(300, 1000)),
    facing: Math.round(dice.between(-90, 90)),
  });
}
