/** Seeded scenes of a concert hall with so many seats, players and occluders. */

import type { Occluder, Scene, SeatPoint, Target, Triple } from '#model/checks/scene.ts';
import { diceOf, type Dice } from '../oracles/seeded.ts';

export interface HallSize {
  readonly name: string;
  readonly seats: number;
  readonly players: number;
  readonly occluders: number;
}

export const W1: HallSize = { name: 'W1', seats: 400, players: 6, occluders: 40 };
export const W2: HallSize = { name: 'W2', seats: 2000, players: 12, occluders: 120 };
export const W3: HallSize = { name: 'W3', seats: 20_000, players: 40, occluders: 400 };

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/**
 * A platform as wide as it takes, players in arcs on it, each with a body and a head and, as far as the number of
 * occluders goes, stands with paper (two quads each), boxes and rails; before it a raked house.
 */
export function hallScene({ seats, players, occluders }: HallSize, seed = 1): Scene {
  const dice = diceOf(seed);
  const spots = playerSpots(dice, players);
  const made: Occluder[] = [];
  spots.forEach((spot, i) => made.push(...bodyOf(spot, `player-${i}`)));
  for (let i = 0; made.length < occluders; i++) made.push(...furniture(dice, spots, i));
  return {
    seats: houseSeats(seats),
    targets: spots.map(({ x, y }, i): Target => ({ id: `player-${i}`, x, y, ...SEATED })),
    occluders: made.slice(0, occluders),
  };
}

/** The window of somebody seated. */
const SEATED = { z0: 620, z1: 1300, width: 490, chin: 1080 };

export function playerSpots(dice: Dice, players: number): Spot[] {
  const columns = Math.ceil(Math.sqrt(players * 1.8));
  return Array.from({ length: players }, (_, i) => ({
    x: ((i % columns) - (columns - 1) / 2) * 1500 + dice.between(-200, 200),
    y: 1500 + Math.floor(i / columns) * 1500 + dice.between(-200, 200),
  }));
}

function bodyOf({ x, y }: Spot, player: string): Occluder[] {
  const common = { record: player, owner: player, kind: 'capsule', x, y } as const;
  return [
    { ...common, id: `${player}:body`, z0: 200, z1: 850, r: 200 },
    { ...common, id: `${player}:head`, z0: 1150, z1: 1210, r: 90 },
  ];
}

function furniture(dice: Dice, spots: readonly Spot[], i: number): Occluder[] {
  const spot = dice.pick(spots);
  const at: Spot = { x: spot.x + dice.between(-900, 900), y: spot.y - dice.between(350, 1100) };
  const record = `item-${i}`;
  if (dice.chance(0.2)) {
    const size: Triple = [dice.between(200, 900), dice.between(200, 700), dice.between(300, 1000)];
    const center: Triple = [at.x, at.y, size[2] / 2];
    return [{ id: record, record, kind: 'box', center, size, yaw: dice.between(-90, 90) }];
  }
  const lip = dice.between(650, 950);
  const turn = dice.between(-0.7, 0.7);
  return [
    { id: `${record}:board`, record, kind: 'quad', corners: desk(at, lip, turn, [510, 340]) },
    { id: `${record}:paper`, record, kind: 'quad', corners: desk(at, lip, turn, [420, 297]) },
  ];
}

function desk(
  { x, y }: Spot,
  lip: number,
  turn: number,
  [width, height]: [number, number],
): [Triple, Triple, Triple, Triple] {
  const depth = height * Math.cos((65 * Math.PI) / 180);
  const top = lip + height * Math.sin((65 * Math.PI) / 180);
  const corner = (sideways: number, back: number, z: number): Triple => [
    x + Math.cos(turn) * sideways - Math.sin(turn) * back,
    y + Math.sin(turn) * sideways + Math.cos(turn) * back,
    z,
  ];
  return [
    corner(-width / 2, 0, lip),
    corner(width / 2, 0, lip),
    corner(width / 2, -depth, top),
    corner(-width / 2, -depth, top),
  ];
}

/** Seats of each row, from the front: rows that grow longer towards the back. */
export function seatsByRow(count: number): number[] {
  const rows: number[] = [];
  for (let left = count; left > 0; left -= rows.at(-1) ?? left) rows.push(Math.min(left, 20 + rows.length));
  return rows;
}

/** On a rake of 100 mm a row, from 600 mm below the platform. */
function houseSeats(count: number): SeatPoint[] {
  return seatsByRow(count).flatMap((inRow, row) =>
    Array.from({ length: inRow }, (_, k): SeatPoint => {
      const label = `${row + 1}-${k + 1}`;
      return {
        id: `stalls/${label}`,
        record: 'stalls',
        label,
        row,
        x: (k - (inRow - 1) / 2) * 520,
        y: -2000 - row * 900,
        z: -600 + 1150 + row * 100,
      };
    }),
  );
}
