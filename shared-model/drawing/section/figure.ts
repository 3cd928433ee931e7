/** People from the side, as plain shapes in the upright plane (mm along it, mm up). */

import type { Millimetres } from '../../document/records.ts';
import { facingVector, radians, type Vec2 } from '../../geometry/frame.ts';
import type { SightPlane } from '../../checks/sightlines/rake-plane.ts';
import { ellipse, polygon, roundedRectangle, type Path } from '../outline.ts';
import { bar } from '../plan/held.ts';

export interface Posture {
  /** Of head and shoulders, along the plane. */
  readonly axis: Millimetres;
  readonly floorZ: Millimetres;
  /** Heights above that floor. */
  readonly crown: Millimetres;
  readonly shoulder: Millimetres;
  readonly waist: Millimetres;
  /** What he sits on; null: he stands. */
  readonly seat: Millimetres | null;
  /** Feet of who sits stand so high over the floor. */
  readonly feet?: Millimetres;
  /** How far he looks along the plane: 1 with `out`, -1 against it, 0 straight at or away from the onlooker. */
  readonly looks: number;
  /** Over his shoulders, as far as it shows from the side. */
  readonly breadth: Millimetres;
  /** Of his head, likewise. */
  readonly headWidth: Millimetres;
}

export interface Figure {
  /** Trunk, neck and legs; they overlap. */
  readonly body: readonly Path[];
  readonly head: readonly Path[];
}

/** Crown to chin of an adult, and a neck (common practice, no source). */
const FACE = 225;
const NECK = 110;

export function figureOf(posture: Posture): Figure {
  const { axis, floorZ, crown, shoulder, breadth } = posture;
  const [low, high] = [floorZ + (posture.seat ?? posture.waist - 60), floorZ + shoulder + 35];
  const trunk = upright(axis, breadth, [low, high], breadth * 0.4);
  const neck = upright(axis, NECK, [floorZ + shoulder, floorZ + crown - FACE + 60], 20);
  return {
    body: [...(posture.seat === null ? standingLegs(posture) : seatedLegs(posture)), trunk, neck],
    head: headOf(posture),
  };
}

function upright(
  x: Millimetres,
  width: Millimetres,
  [low, high]: readonly [number, number],
  round: number,
): Path {
  return roundedRectangle({ x: x - width / 2, y: low, width, height: Math.max(0, high - low) }, round);
}

/** In profile one leg hides the other and a foot points ahead; from the front or the back there are two. */
function standingLegs({ axis, floorZ, waist, breadth, looks }: Posture): Path[] {
  const hip = floorZ + waist + 40;
  const shoe = { y: floorZ, height: 75 };
  if (Math.abs(looks) > 0.6) {
    const [heel, toe] = [axis - looks * 80, axis + looks * 190];
    const foot = roundedRectangle({ x: Math.min(heel, toe), width: Math.abs(toe - heel), ...shoe }, 35);
    return [upright(axis, LEG, [floorZ, hip], 50), foot];
  }
  const apart = Math.max(0, breadth * 0.5 - LEG / 4);
  return [-1, 1].map((side) => upright(axis + (side * apart) / 2, LEG, [floorZ, hip], 50));
}

/** A leg in trousers, mm. */
const LEG = 150;

/** Thigh and shin of somebody who sits, mm. */
const THIGH = { length: 400, thick: 150 };
const SHIN = { thick: 115, foot: 190 };

function seatedLegs({ axis, floorZ, seat, feet = 0, looks }: Posture): Path[] {
  const top = floorZ + (seat ?? 0) + THIGH.thick / 2;
  const knee = axis + looks * THIGH.length;
  const foot = knee + looks * SHIN.foot;
  return [
    bar({ x: axis, y: top }, { x: knee, y: top }, THIGH.thick),
    upright(knee, SHIN.thick, [floorZ + feet, top + THIGH.thick / 2], 50),
    roundedRectangle(
      { x: Math.min(knee, foot), y: floorZ + feet, width: Math.abs(foot - knee), height: 70 },
      30,
    ),
  ];
}

/** An oval, and a nose on the side that he looks to. */
function headOf({ axis, floorZ, crown, headWidth, looks }: Posture): Path[] {
  const middle = { x: axis, y: floorZ + crown - FACE / 2 };
  const half = headWidth / 2;
  const oval = ellipse(middle, half, FACE / 2);
  if (Math.abs(looks) < 0.3) return [oval];
  const tip = middle.x + looks * (half + 32);
  const nose = [
    { x: middle.x + looks * half * 0.8, y: middle.y + 28 },
    { x: tip, y: middle.y - 22 },
    { x: middle.x + looks * half * 0.8, y: middle.y - 38 },
  ];
  return [oval, polygon(nose)];
}

/** How much of his looking somebody who faces so does along the plane. */
export function looksAlong({ out }: SightPlane, facing: number): number {
  const look = facingVector(facing);
  return look.x * out.x + look.y * out.y;
}

/** Width of an ellipse from the side: `across` and `along` are its widths across and along the way it looks. */
export function widthSeen(looks: number, across: Millimetres, along: Millimetres): Millimetres {
  return Math.hypot(looks * along, Math.sqrt(Math.max(0, 1 - looks * looks)) * across);
}

export interface ChairPose extends Vec2 {
  readonly seat: Millimetres;
  readonly looks: number;
  readonly back: boolean;
}

/** A chair at (x, y), y being the floor: plate, back and legs, to be drawn as lines. */
export function chairLines({ x, y, seat, looks, back }: ChairPose): Path {
  const turned = Math.sign(looks) || 1;
  const half = 210 * Math.max(Math.abs(looks), Math.cos(radians(60)));
  const [front, rear] = [x + turned * half, x - turned * half];
  const rest: Path = back
    ? [
        ['M', rear, y + seat],
        ['L', rear - turned * 60 * Math.abs(looks), y + seat + 420],
      ]
    : [];
  return [['M', front, y], ['L', front, y + seat], ['L', rear, y + seat], ['L', rear, y], ...rest];
}
