/** Curves as chains of straight lines, for readers that know no cubics. */

import type { Vec2 } from '../../geometry/frame.ts';
import type { PathItem } from '../primitives.ts';

export interface Chain {
  readonly points: readonly Vec2[];
  /** The last point joins the first one. */
  readonly closed: boolean;
}

/** A chain for each outline of a path; nowhere farther from it than `tolerance`, in the path's own unit. */
export function flattened(path: readonly PathItem[], tolerance: number): Chain[] {
  const chains: { points: Vec2[]; closed: boolean }[] = [];
  for (const item of path) {
    const chain = chains.at(-1);
    if (item[0] === 'M') chains.push({ points: [{ x: item[1], y: item[2] }], closed: false });
    else if (!chain) throw new Error('a path does not begin with a place to begin at');
    else if (item[0] === 'Z') chain.closed = true;
    else if (item[0] === 'L') chain.points.push({ x: item[1], y: item[2] });
    else addCurve(chain.points, item, tolerance);
  }
  return chains.map(withoutDoubles).filter(({ points }) => points.length > 1);
}

type Cubic = Extract<PathItem, readonly ['C', ...number[]]>;

/**
 * Even steps: a cubic is off its chord by at most an eighth of its greatest second derivative times the step squared
 * (the bound of linear interpolation, as in any textbook of numerical analysis).
 */
function addCurve(points: Vec2[], [, x1, y1, x2, y2, x, y]: Cubic, tolerance: number): void {
  const from = points.at(-1) ?? { x, y };
  const bend =
    6 *
    Math.max(
      Math.hypot(from.x - 2 * x1 + x2, from.y - 2 * y1 + y2),
      Math.hypot(x1 - 2 * x2 + x, y1 - 2 * y2 + y),
    );
  const steps = Math.max(1, Math.ceil(Math.sqrt(bend / 8 / tolerance)));
  for (let step = 1; step < steps; step++) {
    const [t, s] = [step / steps, 1 - step / steps];
    const at = (a: number, b: number, c: number, d: number): number =>
      s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
    points.push({ x: at(from.x, x1, x2, x), y: at(from.y, y1, y2, y) });
  }
  points.push({ x, y });
}

/** Outlines often come back to where they began before they are closed. */
function withoutDoubles({ points, closed }: Chain): Chain {
  const kept = points.filter((point, index) => index === 0 || !isSame(point, points[index - 1]));
  if (closed && kept.length > 1 && isSame(kept.at(-1), kept[0])) kept.pop();
  return { points: kept, closed };
}

function isSame(a: Vec2 | undefined, b: Vec2 | undefined): boolean {
  return a !== undefined && b !== undefined && Math.hypot(a.x - b.x, a.y - b.y) < 1e-6;
}
