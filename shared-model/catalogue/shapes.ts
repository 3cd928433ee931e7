/** Plain outlines about a spot, anticlockwise. */

import type { Millimetres, Point } from '../document/records.ts';

/** A ring of this many corners is within 0.7 % of the circle's area. */
const CORNERS = 32;

export function circle(middle: Point, radius: Millimetres): Point[] {
  return ellipse(middle, radius, radius);
}

export function ellipse(middle: Point, halfWidth: Millimetres, halfDepth: Millimetres): Point[] {
  return Array.from({ length: CORNERS }, (_, corner) => {
    const angle = (2 * Math.PI * corner) / CORNERS;
    return { x: middle.x + halfWidth * Math.cos(angle), y: middle.y + halfDepth * Math.sin(angle) };
  });
}

export function rectangle(width: Millimetres, depth: Millimetres): Point[] {
  const [x, y] = [width / 2, depth / 2];
  return [
    { x: -x, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
  ];
}
