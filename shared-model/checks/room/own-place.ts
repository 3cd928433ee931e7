/**
 * How a player leaves his own place. On the common net his body and chair are in everybody's way; once he has got
 * up they are not in his, and neither is what he stands in the middle of, a set of drums for instance. So the part of the
 * net around him is made anew without them, and joined to the rest.
 */

import type { Vec2 } from '../../geometry/frame.ts';
import { turn } from '../../geometry/segments.ts';
import { FIRST_STEP, widthFrom, type Start } from './first-step.ts';
import { someSites } from './sites.ts';
import {
  seedsBeyond,
  shortestWays,
  widestWays,
  type ExitBeyond,
  type Net,
  type WaysOut,
} from './ways-out.ts';
import {
  discAt,
  endOf,
  narrowAt,
  nodeBeyond,
  nodeCount,
  nodeOf,
  siteAt,
  startOf,
  throughGap,
  wayGraph,
  type Narrow,
  type WayGraph,
} from './way-graph.ts';

/** More nodes round one spot than twenty close neighbours make: a heap of things that nobody gets out of. */
const HEAP = 5000;

export interface OwnPlace {
  readonly start: Start;
  readonly net: Net;
  /** Ways from the place's own net to the common one. */
  readonly links: readonly Link[];
}

export interface Link extends Narrow {
  readonly from: number;
  /** Node of the common net. */
  readonly to: number;
  readonly length: number;
}

/** A node that can be walked to from the spot straight away. */
export interface Departure {
  readonly node: number;
  /** From the spot to the node. */
  readonly length: number;
  readonly width: number;
}

/**
 * The net round the spot without the sites that belong to `free`, which are not in the way of the one who is there; null
 * when the spot is not among sites, or under a heap.
 */
export function ownPlace(common: WayGraph, start: Start): OwnPlace | null {
  const { free, spot } = start;
  const hole = holeAround(common, free, spot);
  if (hole.size > HEAP) return null;
  const indices = sitesOn(common, hole, free);
  if (indices.length < 3) return null;
  const graph = wayGraph(someSites(common.sites, indices));
  const beyondRim = nodesBeyond(graph, rimOf(common, hole), indices);
  const inside = nodesWithin(graph, spot, beyondRim);
  if (inside.length === 0) return null;
  return {
    start,
    net: { graph, widths: widthsWithin(graph, inside, start) },
    links: linksFrom([graph, common], inside, { start, beyondRim }),
  };
}

/** The widest ways out of the place, given those of the common net, as far as they are `least` wide. */
export function widestFrom(
  { net, links }: OwnPlace,
  common: WaysOut,
  { exitBeyond, least }: { readonly exitBeyond: ExitBeyond; readonly least: number },
): WaysOut {
  const seeds = links.map(({ from, width, to }) => ({
    node: from,
    measure: Math.min(width, common.measure[to] ?? 0),
    exit: common.exit[to] ?? -1,
  }));
  return widestWays(net, [...seeds, ...seedsBeyond(net.graph, exitBeyond, 'width')], least);
}

/** The shortest ways out of the place that are `width` wide, given those of the common net. */
export function shortestFrom(
  { net, links }: OwnPlace,
  common: WaysOut,
  { exitBeyond, width }: { readonly exitBeyond: ExitBeyond; readonly width: number },
): WaysOut {
  const seeds = links.map((link) => ({
    node: link.from,
    measure: link.width < width ? Infinity : link.length + (common.measure[link.to] ?? Infinity),
    exit: common.exit[link.to] ?? -1,
  }));
  return shortestWays(net, [...seeds, ...seedsBeyond(net.graph, exitBeyond, 'length')], width);
}

/**
 * The nodes in whose empty circle the spot lies. Beyond the first step the walk to one is at least `width` wide,
 * since every point of it lies that deep in the circle.
 */
export function departures({ start: { spot }, net: { graph } }: OwnPlace): Departure[] {
  const found: Departure[] = [];
  for (let node = 0; node < nodeCount(graph); node++) {
    const radius = graph.radius[node] ?? NaN;
    const length = Math.hypot((graph.x[node] ?? NaN) - spot.x, (graph.y[node] ?? NaN) - spot.y);
    if (!(length <= radius)) continue;
    const width = length <= FIRST_STEP ? Infinity : 2 * (radius - length + FIRST_STEP);
    found.push({ node, length, width });
  }
  return found;
}

/** The nodes that the sites of `free` make, and those within the first step. */
function holeAround(graph: WayGraph, free: ReadonlySet<string>, spot: Vec2): Set<number> {
  const hole = new Set<number>();
  const { x, y } = graph;
  for (let node = 0; node < x.length && hole.size <= HEAP; node++) {
    // Most nodes are far away, and this asks all of them for every player.
    if (!(Math.abs((x[node] ?? NaN) - spot.x) <= FIRST_STEP)) continue;
    if (Math.hypot((x[node] ?? NaN) - spot.x, (y[node] ?? NaN) - spot.y) <= FIRST_STEP) hole.add(node);
  }
  for (const owner of free) {
    for (const halfEdge of graph.halfEdgesOf().get(owner) ?? []) hole.add(nodeOf(halfEdge));
  }
  return hole;
}

function sitesOn(graph: WayGraph, hole: ReadonlySet<number>, free: ReadonlySet<string>): number[] {
  const sites = new Set<number>();
  for (const node of hole) {
    for (let halfEdge = 3 * node; halfEdge < 3 * node + 3; halfEdge++) {
      const site = startOf(graph, halfEdge);
      if (!free.has(graph.sites.owners[site] ?? '')) sites.add(site);
    }
  }
  return [...sites].sort((a, b) => a - b);
}

/** For every edge of the hole's rim, by its two sites: the node outside. */
function rimOf(common: WayGraph, hole: ReadonlySet<number>): Map<number, number> {
  const rim = new Map<number, number>();
  for (const node of hole) {
    for (let halfEdge = 3 * node; halfEdge < 3 * node + 3; halfEdge++) {
      const outer = nodeBeyond(common, halfEdge);
      if (outer >= 0 && !hole.has(outer)) {
        rim.set(edgeKey(startOf(common, halfEdge), endOf(common, halfEdge)), outer);
      }
    }
  }
  return rim;
}

/** More than there are sites, so that one number names a pair of them. */
const SITES = 2 ** 26;

function edgeKey(a: number, b: number): number {
  return a < b ? a * SITES + b : b * SITES + a;
}

/** For every half-edge of the new net the node of the common one that lies beyond it; -1 where it is not on the rim. */
function nodesBeyond(
  graph: WayGraph,
  rim: ReadonlyMap<number, number>,
  indices: readonly number[],
): Int32Array {
  const beyond = new Int32Array(graph.corners.length);
  for (let halfEdge = 0; halfEdge < beyond.length; halfEdge++) {
    const a = indices[startOf(graph, halfEdge)] ?? -1;
    const b = indices[endOf(graph, halfEdge)] ?? -1;
    beyond[halfEdge] = rim.get(edgeKey(a, b)) ?? -1;
  }
  return beyond;
}

/** The nodes that are joined to the one under the spot without crossing the rim. */
function nodesWithin(graph: WayGraph, spot: Vec2, beyondRim: Int32Array): number[] {
  const inside = new Set<number>();
  const waiting: number[] = [];
  for (let node = 0; node < nodeCount(graph) && waiting.length === 0; node++) {
    if (holds(graph, node, spot)) waiting.push(node);
  }
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    inside.add(node);
    for (let halfEdge = 3 * node; halfEdge < 3 * node + 3; halfEdge++) {
      const next = nodeBeyond(graph, halfEdge);
      if (next >= 0 && !inside.has(next) && beyondRim[halfEdge] === -1) waiting.push(next);
    }
  }
  return [...inside];
}

function holds(graph: WayGraph, node: number, point: Vec2): boolean {
  const corner = (k: number): Vec2 => siteAt(graph.sites, startOf(graph, 3 * node + k));
  const [a, b, c] = [corner(0), corner(1), corner(2)];
  const [ab, bc, ca] = [turn(a, b, point), turn(b, c, point), turn(c, a, point)];
  return (ab >= 0 && bc >= 0 && ca >= 0) || (ab <= 0 && bc <= 0 && ca <= 0);
}

/** How wide the ways between the nodes inside have to be taken for; 0 for all others. */
function widthsWithin(graph: WayGraph, inside: readonly number[], start: Start): Float64Array {
  const widths = new Float64Array(graph.corners.length);
  const isInside = new Set(inside);
  for (const from of inside) {
    for (let halfEdge = 3 * from; halfEdge < 3 * from + 3; halfEdge++) {
      const to = nodeBeyond(graph, halfEdge);
      if (!isInside.has(to)) continue;
      widths[halfEdge] = widthFrom(start, {
        narrow: narrowAt(graph, halfEdge),
        site: siteAt(graph.sites, startOf(graph, halfEdge)),
        ends: [discAt(graph, from), discAt(graph, to)],
      });
    }
  }
  return widths;
}

/** Where the rim of the hole is also an edge of the new net, one walks over from the one to the other. */
function linksFrom(
  [graph, common]: readonly [WayGraph, WayGraph],
  inside: readonly number[],
  { start, beyondRim }: { readonly start: Start; readonly beyondRim: Int32Array },
): Link[] {
  const links: Link[] = [];
  for (const from of inside) {
    for (let halfEdge = 3 * from; halfEdge < 3 * from + 3; halfEdge++) {
      const to = beyondRim[halfEdge] ?? -1;
      if (to < 0) continue;
      const ends = [discAt(graph, from), discAt(common, to)] as const;
      const site = siteAt(graph.sites, startOf(graph, halfEdge));
      const narrow = throughGap([site, siteAt(graph.sites, endOf(graph, halfEdge))], ...ends);
      links.push({
        from,
        to,
        at: narrow.at,
        width: widthFrom(start, { narrow, site, ends }),
        length: Math.hypot(ends[0].x - ends[1].x, ends[0].y - ends[1].y),
      });
    }
  }
  return links;
}
