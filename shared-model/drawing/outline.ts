/** Outlines as paths of straight lines and cubics, in whatever unit and frame the caller draws in. */

import type { Vec2 } from '../geometry/frame.ts';
import { radians } from '../geometry/frame.ts';
import type { Box, PathItem } from './primitives.ts';

export type Path = readonly PathItem[];

export function polyline(points: readonly Vec2[]): PathItem[] {
  return points.map(({ x, y }, index) => [index === 0 ? 'M' : 'L', x, y]);
}

export function polygon(points: readonly Vec2[]): PathItem[] {
  return points.length === 0 ? [] : [...polyline(points), ['Z']];
}

export function line(a: Vec2, b: Vec2): PathItem[] {
  return [
    ['M', a.x, a.y],
    ['L', b.x, b.y],
  ];
}

export function rectangle({ x, y, width, height }: Box): PathItem[] {
  return [['M', x, y], ['L', x + width, y], ['L', x + width, y + height], ['L', x, y + height], ['Z']];
}

/** A rectangle about a centre. */
export function centredRectangle(width: number, height: number, at: Vec2 = { x: 0, y: 0 }): PathItem[] {
  return rectangle({ x: at.x - width / 2, y: at.y - height / 2, width, height });
}

/** The radius is cut down to half the shorter side. */
export function roundedRectangle({ x, y, width, height }: Box, radius: number): PathItem[] {
  const r = Math.max(0, Math.min(radius, width / 2, height / 2));
  if (r === 0) return rectangle({ x, y, width, height });
  const [right, bottom, k] = [x + width, y + height, r * (1 - KAPPA)];
  return [
    ['M', x + r, y],
    ['L', right - r, y],
    ['C', right - k, y, right, y + k, right, y + r],
    ['L', right, bottom - r],
    ['C', right, bottom - k, right - k, bottom, right - r, bottom],
    ['L', x + r, bottom],
    ['C', x + k, bottom, x, bottom - k, x, bottom - r],
    ['L', x, y + r],
    ['C', x, y + k, x + k, y, x + r, y],
    ['Z'],
  ];
}

export function circle(centre: Vec2, radius: number): PathItem[] {
  return ellipse(centre, radius, radius);
}

/** Four cubics: off the true curve by less than 0.03 % of the radius. */
export function ellipse({ x, y }: Vec2, rx: number, ry: number): PathItem[] {
  const [kx, ky] = [rx * KAPPA, ry * KAPPA];
  return [
    ['M', x + rx, y],
    ['C', x + rx, y + ky, x + kx, y + ry, x, y + ry],
    ['C', x - kx, y + ry, x - rx, y + ky, x - rx, y],
    ['C', x - rx, y - ky, x - kx, y - ry, x, y - ry],
    ['C', x + kx, y - ry, x + rx, y - ky, x + rx, y],
    ['Z'],
  ];
}

/** An open arc from one angle to another, in degrees from the first axis towards the second. */
export function arc(centre: Vec2, radius: number, from: number, to: number): PathItem[] {
  const start = onCircle(centre, radius, from);
  return [['M', start.x, start.y], ...arcItems(centre, radius, from, to)];
}

/** A slice of a disc. */
export function slice(centre: Vec2, radius: number, from: number, to: number): PathItem[] {
  const start = onCircle(centre, radius, from);
  return [['M', centre.x, centre.y], ['L', start.x, start.y], ...arcItems(centre, radius, from, to), ['Z']];
}

/** Parallel lines over a polygon, cut off at its outline (even-odd), `spacing` apart, at an angle in degrees. */
export function hatching(outline: readonly Vec2[], spacing: number, angle: number): PathItem[] {
  const [c, s] = [Math.cos(radians(angle)), Math.sin(radians(angle))];
  const turned = outline.map(({ x, y }) => ({ x: c * x + s * y, y: c * y - s * x }));
  const path: PathItem[] = [];
  for (const y of levels(turned, spacing)) {
    const cuts = crossings(turned, y);
    for (let i = 1; i < cuts.length; i += 2) {
      const [from, to] = [cuts[i - 1] ?? 0, cuts[i] ?? 0];
      path.push(['M', c * from - s * y, s * from + c * y], ['L', c * to - s * y, s * to + c * y]);
    }
  }
  return path;
}

/** Distance of a cubic's control points for a quarter of a circle. */
const KAPPA = (4 / 3) * (Math.SQRT2 - 1);

const MOST_HATCH_LINES = 2000;

function onCircle({ x, y }: Vec2, radius: number, angle: number): Vec2 {
  return { x: x + radius * Math.cos(radians(angle)), y: y + radius * Math.sin(radians(angle)) };
}

/** Cubics of at most a quarter turn each. */
function arcItems(centre: Vec2, radius: number, from: number, to: number): PathItem[] {
  const pieces = Math.max(1, Math.ceil(Math.abs(to - from) / 90 - 1e-9));
  const step = (to - from) / pieces;
  const k = (4 / 3) * Math.tan(radians(step) / 4) * radius;
  return Array.from({ length: pieces }, (_, piece): PathItem => {
    const [a, b] = [from + piece * step, from + (piece + 1) * step];
    const [p, q] = [onCircle(centre, radius, a), onCircle(centre, radius, b)];
    const [ca, sa] = [Math.cos(radians(a)), Math.sin(radians(a))];
    const [cb, sb] = [Math.cos(radians(b)), Math.sin(radians(b))];
    return ['C', p.x - k * sa, p.y + k * ca, q.x + k * sb, q.y - k * cb, q.x, q.y];
  });
}

/** Heights of the hatch lines; coarser when there would be too many to draw. */
function levels(points: readonly Vec2[], spacing: number): number[] {
  let [low, high] = [Infinity, -Infinity];
  for (const { y } of points) [low, high] = [Math.min(low, y), Math.max(high, y)];
  if (!(high > low) || !(spacing > 0)) return [];
  const step = Math.max(spacing, (high - low) / MOST_HATCH_LINES);
  const count = Math.floor((high - low) / step);
  return Array.from({ length: count }, (_, index) => low + (index + 0.5) * step);
}

function crossings(points: readonly Vec2[], y: number): number[] {
  const cuts: number[] = [];
  points.forEach((a, index) => {
    const b = points[(index + 1) % points.length] ?? a;
    if (a.y > y !== b.y > y) cuts.push(a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x));
  });
  return cuts.sort((a, b) => a - b);
}
