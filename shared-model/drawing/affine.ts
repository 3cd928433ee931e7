/** Affine maps of the plane: turn, mirror, scale and shift. Cubics map exactly, so outlines are built once, at home. */

import type { Vec2 } from '../geometry/frame.ts';
import { radians } from '../geometry/frame.ts';
import type { PathItem } from './primitives.ts';

/** `x' = a x + c y + e`, `y' = b x + d y + f`. */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

export const IDENTITY: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

export function shift(x: number, y: number): Affine {
  return { a: 1, b: 0, c: 0, d: 1, e: x, f: y };
}

/** Turns by degrees from the first axis towards the second, about (x, y). */
export function turnAbout(angle: number, { x, y }: Vec2 = { x: 0, y: 0 }): Affine {
  const [c, s] = [Math.cos(radians(angle)), Math.sin(radians(angle))];
  return { a: c, b: s, c: -s, d: c, e: x - c * x + s * y, f: y - s * x - c * y };
}

/** The map that does `first` and then `second`. */
export function chain(first: Affine, second: Affine): Affine {
  return {
    a: second.a * first.a + second.c * first.b,
    b: second.b * first.a + second.d * first.b,
    c: second.a * first.c + second.c * first.d,
    d: second.b * first.c + second.d * first.d,
    e: second.a * first.e + second.c * first.f + second.e,
    f: second.b * first.e + second.d * first.f + second.f,
  };
}

export function mapPoint(map: Affine, { x, y }: Vec2): Vec2 {
  return { x: map.a * x + map.c * y + map.e, y: map.b * x + map.d * y + map.f };
}

export function mapPath(map: Affine, path: readonly PathItem[]): PathItem[] {
  return path.map((item) => mapItem(map, item));
}

function mapItem(map: Affine, item: PathItem): PathItem {
  if (item[0] === 'Z') return item;
  if (item[0] === 'C') {
    const [, x1, y1, x2, y2, x, y] = item;
    const [p, q, r] = [
      mapPoint(map, { x: x1, y: y1 }),
      mapPoint(map, { x: x2, y: y2 }),
      mapPoint(map, { x, y }),
    ];
    return ['C', p.x, p.y, q.x, q.y, r.x, r.y];
  }
  const point = mapPoint(map, { x: item[1], y: item[2] });
  return [item[0], point.x, point.y];
}
