/** Seeded random scenes for comparing the visible shares with other programs. */

import type { Occluder, Scene, SeatPoint, Target, Triple } from '#model/checks/scene.ts';
import { diceOf, type Dice } from './seeded.ts';

export interface SceneSize {
  readonly seats: number;
  readonly targets: number;
  readonly occluders: number;
  /** Which kinds may occur. */
  readonly kinds: readonly Occluder['kind'][];
}

/** A platform 9 m wide with the house before it; some seats are high up, far to the side or on the platform. */
export function randomScene(seed: number, size: SceneSize): Scene {
  const dice = diceOf(seed);
  const targets = repeat(size.targets, (i) => randomTarget(dice, `player-${i}`));
  const occluders = repeat(size.occluders, (i) => randomOccluder(dice, `occluder-${i}`, size.kinds, targets));
  const seats = repeat(size.seats, (i) => randomSeat(dice, `seat-${i}`, occluders));
  return { seats, targets, occluders };
}

function repeat<T>(count: number, make: (index: number) => T): T[] {
  return Array.from({ length: count }, (_, index) => make(index));
}

function randomTarget(dice: Dice, id: string): Target {
  const z0 = dice.between(300, 1000);
  const place = { x: dice.between(-3500, 3500), y: dice.between(1000, 5000) };
  const z1 = z0 + dice.between(400, 1000);
  return { id, ...place, z0, z1, width: dice.between(380, 600), chin: z1 - 220 };
}

function randomSeat(dice: Dice, id: string, occluders: readonly Occluder[]): SeatPoint {
  for (;;) {
    const spot = dice.chance(0.8)
      ? { x: dice.between(-6000, 6000), y: dice.between(-12000, -800) }
      : { x: dice.between(-7000, 7000), y: dice.between(-3000, 8000) };
    const z = dice.chance(0.8) ? dice.between(300, 1800) : dice.between(1800, 6000);
    if (occluders.every((occluder) => !mayHold(occluder, { ...spot, z }))) {
      return { id, ...spot, z, record: 'block', label: id, row: 0 };
    }
  }
}

/** Whether an eye may be inside, generously: such eyes are tested on their own. */
function mayHold(occluder: Occluder, eye: { x: number; y: number; z: number }): boolean {
  if (occluder.kind === 'quad') return false;
  const [x, y] = occluder.kind === 'box' ? occluder.center : [occluder.x, occluder.y];
  const r = occluder.kind === 'box' ? Math.hypot(...occluder.size) / 2 : occluder.r;
  return Math.hypot(eye.x - x, eye.y - y) < r * 1.05 + 5;
}

function randomOccluder(
  dice: Dice,
  id: string,
  kinds: readonly Occluder['kind'][],
  targets: readonly Target[],
): Occluder {
  const owner = dice.chance(0.2) ? { owner: dice.pick(targets).id } : {};
  const common = { id, record: id, ...owner };
  // Most stand somewhere between the house and a player, so that they hide something.
  const near = dice.pick(targets);
  const x = dice.chance(0.7)
    ? near.x * dice.between(0.3, 1) + dice.between(-500, 500)
    : dice.between(-5000, 5000);
  const y = dice.chance(0.7) ? near.y - dice.between(-150, 2500) : dice.between(-6000, 6000);
  const kind = dice.pick(kinds);
  if (kind === 'quad') return { ...common, kind, corners: randomQuad(dice, [x, y, dice.between(300, 1700)]) };
  if (kind === 'box') {
    const size: Triple = [dice.between(50, 2000), dice.between(50, 1500), dice.between(50, 1500)];
    return { ...common, kind, center: [x, y, dice.between(0, 1500)], size, yaw: dice.between(-180, 180) };
  }
  const z0 = dice.between(-200, 1200);
  return { ...common, kind, x, y, z0, z1: z0 + dice.between(0, 1200), r: dice.between(40, 320) };
}

/** A tilted rectangle or a general convex quadrilateral in a random plane; now and then a triangle. */
function randomQuad(dice: Dice, [x, y, z]: Triple): [Triple, Triple, Triple, Triple] {
  const [width, height] = [dice.between(50, 900), dice.between(50, 600)];
  const [turn, tilt] = [dice.between(0, 2 * Math.PI), dice.between(0, Math.PI)];
  const cut = dice.chance(0.5) ? dice.between(0, 1) : 1;
  const corner = (a: number, b: number): Triple => [
    x + Math.cos(turn) * a - Math.sin(turn) * Math.cos(tilt) * b,
    y + Math.sin(turn) * a + Math.cos(turn) * Math.cos(tilt) * b,
    z + Math.sin(tilt) * b,
  ];
  const fourth = dice.chance(0.1) ? corner(width * cut, height) : corner(0, height);
  return [corner(0, 0), corner(width, 0), corner(width * cut, height), fourth];
}
