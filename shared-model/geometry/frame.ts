/** Directions of the stage frame (see document/records.ts) as vectors. */

export interface Vec2 {
  readonly x: number;
  readonly y: number;
}

export interface Vec3 extends Vec2 {
  readonly z: number;
}

export function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

export function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}

/** The unit vector of a facing in degrees: 0 is (0, -1), 90 is (1, 0). */
export function facingVector(facing: number): Vec2 {
  const angle = radians(facing);
  return { x: Math.sin(angle), y: -Math.cos(angle) };
}

/** The facing in degrees, in (-180, 180], that looks from one point to another; 0 when they coincide. */
export function facingTowards(from: Vec2, to: Vec2): number {
  return normaliseFacing(degrees(Math.atan2(to.x - from.x, from.y - to.y)));
}

/** The same direction in (-180, 180]. */
export function normaliseFacing(facing: number): number {
  const turned = ((facing % 360) + 360) % 360;
  return turned > 180 ? turned - 360 : turned;
}

/** A point given about an item, before the item is turned, in the stage frame. */
export function placed(item: Vec2 & { readonly facing: number }, local: Vec2): Vec2 {
  const angle = radians(item.facing);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { x: item.x + c * local.x - s * local.y, y: item.y + s * local.x + c * local.y };
}
