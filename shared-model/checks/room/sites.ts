/**
 * Points close together along everything a walker must keep away from. Between such points the widest way can be
 * found exactly; how close they lie says how near that is to the truth (see SPACING).
 */

import type { Segment } from '../../document/openings.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import { forEachEdge, type Polygon } from '../../geometry/polygon.ts';
import { between, lengthOf, type Exit, type Wall } from './walls.ts';

/** What stands in the way, and whose it is: a player does not run into himself. */
export interface Obstacle {
  readonly owner: string;
  readonly outline: Polygon;
}

/** Everything a walker meets on the platform's floor. */
export interface Ground {
  readonly walls: readonly Wall[];
  readonly obstacles: readonly Obstacle[];
  readonly exits: readonly Exit[];
}

export interface Sites {
  /** x0, y0, x1, y1, ... */
  readonly coordinates: Float64Array;
  /** Owner of each point; '' for the walls. */
  readonly owners: readonly string[];
}

/**
 * A gap of width w between outlines sampled every s is taken to be at most s²/(2w) wider than it is: with 40 mm
 * less than 1 mm at 915 and 2 mm at 400. Widths that are reported are measured again on the outlines themselves.
 */
export const SPACING = 40;
/** More points than this make the spacing wider: a bound on time, reached with some 800 items. */
const MOST_SITES = 60_000;

export function sitesOf(ground: Ground): Sites {
  const stretches = stretchesOf(ground);
  const total = stretches.reduce((sum, { segment }) => sum + lengthOf(segment), 0);
  const spacing = Math.max(SPACING, total / MOST_SITES);
  const coordinates: number[] = [];
  const owners: string[] = [];
  for (const { segment, owner } of stretches) {
    const steps = Math.max(1, Math.ceil(lengthOf(segment) / spacing));
    for (let step = 0; step < steps; step++) {
      const { x, y } = nudged(between(segment, step / steps), owners.length);
      coordinates.push(x, y);
      owners.push(owner);
    }
  }
  return { coordinates: Float64Array.from(coordinates), owners };
}

/** The sites at `indices` as a set of their own. */
export function someSites(sites: Sites, indices: readonly number[]): Sites {
  const coordinates = new Float64Array(indices.length * 2);
  indices.forEach((site, index) => {
    coordinates[2 * index] = sites.coordinates[2 * site] ?? 0;
    coordinates[2 * index + 1] = sites.coordinates[2 * site + 1] ?? 0;
  });
  return { coordinates, owners: indices.map((site) => sites.owners[site] ?? '') };
}

/** Where a route has left the platform: a passage as wide as the doorway and as long, closed at its end. */
export function isBeyond(exit: Exit, point: Vec2): boolean {
  const [dx, dy] = [point.x - exit.middle.x, point.y - exit.middle.y];
  const out = dx * exit.outward.x + dy * exit.outward.y;
  const along = dx * exit.outward.y - dy * exit.outward.x;
  return out > 0 && out < exit.width && Math.abs(along) < exit.width / 2;
}

interface Stretch {
  readonly segment: Segment;
  readonly owner: string;
}

function stretchesOf({ walls, obstacles, exits }: Ground): Stretch[] {
  const stretches: Stretch[] = walls.map((segment) => ({ segment, owner: '' }));
  // A wall that ends at a doorway keeps its corner through the passage that begins there.
  for (const exit of exits) for (const segment of passage(exit)) stretches.push({ segment, owner: '' });
  for (const { owner, outline } of obstacles) {
    forEachEdge(outline, (a, b) => stretches.push({ segment: { a, b }, owner }));
  }
  return stretches;
}

function passage({ doorway, outward, width }: Exit): Segment[] {
  const out = (point: Vec2): Vec2 => ({ x: point.x + width * outward.x, y: point.y + width * outward.y });
  const { a, b } = doorway;
  return [
    { a, b: out(a) },
    { a: out(a), b: out(b) },
    { a: out(b), b },
    // Sites start at `a` of a stretch, so the second jamb needs one that starts at it.
    { a: b, b },
  ];
}

/**
 * Moves a site by up to 0.005 mm in a direction that depends on its number only. Regular arrangements put many
 * sites on one circle, where the triangulation is not unique; after this it is.
 */
function nudged(point: Vec2, number: number): Vec2 {
  const turn = Math.sin((number + 1) * 12.9898) * 43758.5453;
  const angle = 2 * Math.PI * (turn - Math.floor(turn));
  return { x: point.x + 0.005 * Math.cos(angle), y: point.y + 0.005 * Math.sin(angle) };
}
