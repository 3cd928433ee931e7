/** A player's trunk and the measures that his arms, legs and head are joined to it with. */

import { bodies, type Body } from '../../../catalogue/people.ts';
import type { Millimetres, Player } from '../../../document/records.ts';
import type { Vec3 } from '../../../geometry/frame.ts';
import type { Tints } from '../tints.ts';
import { limb, loft, type Limb, type Part, type Place } from '../mesh.ts';

/** Measures of a player in his own frame: he looks along -y, +x is his left, z counts from his floor. */
export interface Build {
  readonly body: Body;
  /** Of what he sits on; null: he stands. */
  readonly seat: Millimetres | null;
  /** Middle of the mouth. */
  readonly mouth: Vec3;
}

export function buildOf(player: Player): Build {
  const seat = player.chair?.height ?? null;
  const body = bodies(player.person, seat).tall;
  return { body, seat, mouth: { x: 0, y: -body.headLength * 0.46, z: body.crown - MOUTH_BELOW_CROWN } };
}

/** From memory: some four fifths of the height of a head. */
const MOUTH_BELOW_CROWN = 185;

/** Where the legs part, standing. From memory: a little under half the stature. */
export function hipHeight({ waistHeight, crown }: Body): Millimetres {
  return Math.min(waistHeight - 60, crown * 0.47);
}

/** Corners of a section through trunk or head. */
export const AROUND = 20;

export const sectionAngles = Array.from(
  { length: AROUND },
  (_, corner) => ((corner + 0.5) * 2 * Math.PI) / AROUND,
);

/** Half an arm's width to either side is left of the shoulders' breadth for the arms. */
const ARM = 58;

/** From the shoulders' height up, half a breadth less than at the chest, half a depth: the slope up to the neck. */
const SLOPE: readonly (readonly [number, number, number])[] = [
  [-160, 0, 122],
  [-105, 7, 119],
  [-58, 28, 108],
  [-20, 66, 92],
  [6, 106, 74],
];

/** Sections between an ellipse and a rectangle: this power of sine and cosine. */
const FULLNESS = 0.82;

/** From the seat or the hips to the neck. What of it hides others is about as broad as the sight check has it. */
export function trunkPart({ coat }: Tints, { body, seat }: Build, place: Place): Part {
  const chest = body.shoulderBreadth / 2 - ARM;
  const full = (value: number): number => Math.sign(value) * Math.abs(value) ** FULLNESS;
  const section = (z: number, halfBreadth: number, halfDepth: number): Vec3[] =>
    sectionAngles.map((angle) =>
      place(halfBreadth * full(Math.cos(angle)), halfDepth * full(Math.sin(angle)), z),
    );
  const rings = [
    section(seat ?? hipHeight(body), chest - 18, 114),
    ...SLOPE.map(([up, less, halfDepth]) => section(body.shoulderHeight + up, chest - less, halfDepth)),
  ];
  return loft(rings, () => coat);
}

/** The trunk as two uprights, to tell where the arms run into it. */
export function chestOf({ body }: Build, place: Place): Limb[] {
  return [1, -1].map((side) => {
    const x = side * (body.shoulderBreadth / 2 - ARM - 100);
    const at = (below: number): Vec3 => place(x, 0, body.shoulderHeight - below);
    return limb(at(90), at(420), 100, '#000000');
  });
}
