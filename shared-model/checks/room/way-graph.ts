/**
 * The net of ways between sites that keep as far from them as possible: the edges of the sites' Voronoi diagram.
 * A node is the middle of the circle through three sites that has no site inside; two nodes are joined through the
 * gap between two neighbouring sites. The widest way between two places runs along this net (C. Ó'Dúnlaing and
 * C. K. Yap, "A retraction method for planning the motion of a disc", J. Algorithms 6 (1985) 104-111).
 */

import Delaunator from 'delaunator';
import type { Vec2 } from '../../geometry/frame.ts';
import type { Sites } from './sites.ts';

/**
 * All arrays are flat. Node `n` has the half-edges 3n, 3n + 1 and 3n + 2; half-edge `e` starts at site `corners[e]`
 * and ends where the next one of its node starts.
 */
export interface WayGraph {
  readonly sites: Sites;
  readonly corners: Uint32Array;
  /** The half-edge on the other side of the same gap; -1 on the outside. */
  readonly twins: Int32Array;
  /** Middle and radius of each node's empty circle; not finite when its three sites lie on a line. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly radius: Float64Array;
  /** How wide a disc passes through each half-edge from node to node; 0 on the outside. */
  readonly widths: Float64Array;
  /** The half-edges that start at sites of each owner; walls have none. Worked out when it is first asked for. */
  readonly halfEdgesOf: () => ReadonlyMap<string, readonly number[]>;
}

/** A node as a disc without a site inside. */
export interface Disc extends Vec2 {
  readonly radius: number;
}

/** The narrowest spot on a way between two nodes, and how wide a disc passes it. */
export interface Narrow {
  readonly at: Vec2;
  readonly width: number;
}

export function wayGraph(sites: Sites): WayGraph {
  const { triangles, halfedges } = new Delaunator(sites.coordinates);
  const count = triangles.length / 3;
  let halfEdges: ReadonlyMap<string, readonly number[]> | null = null;
  const graph: WayGraph = {
    sites,
    corners: triangles,
    twins: halfedges,
    x: new Float64Array(count),
    y: new Float64Array(count),
    radius: new Float64Array(count),
    widths: new Float64Array(triangles.length),
    halfEdgesOf: () => (halfEdges ??= byOwner(sites, triangles)),
  };
  for (let node = 0; node < count; node++) measureCircle(graph, node);
  for (let halfEdge = 0; halfEdge < triangles.length; halfEdge++) measureGap(graph, halfEdge);
  return graph;
}

export function nodeCount(graph: WayGraph): number {
  return graph.radius.length;
}

export function nodeAt(graph: WayGraph, node: number): Vec2 {
  return { x: graph.x[node] ?? NaN, y: graph.y[node] ?? NaN };
}

export function discAt(graph: WayGraph, node: number): Disc {
  return { x: graph.x[node] ?? NaN, y: graph.y[node] ?? NaN, radius: graph.radius[node] ?? NaN };
}

export function siteAt({ coordinates }: Sites, site: number): Vec2 {
  return { x: coordinates[2 * site] ?? NaN, y: coordinates[2 * site + 1] ?? NaN };
}

/** The site at which a half-edge starts. */
export function startOf(graph: WayGraph, halfEdge: number): number {
  return graph.corners[halfEdge] ?? 0;
}

/** The site at which a half-edge ends. */
export function endOf(graph: WayGraph, halfEdge: number): number {
  return startOf(graph, halfEdge % 3 === 2 ? halfEdge - 2 : halfEdge + 1);
}

/** The node that a half-edge belongs to. */
export function nodeOf(halfEdge: number): number {
  return Math.floor(halfEdge / 3);
}

/** The node beyond a half-edge; -1 when there is none. */
export function nodeBeyond(graph: WayGraph, halfEdge: number): number {
  return nodeOf(graph.twins[halfEdge] ?? -1);
}

/** From node to node through a half-edge. */
export function lengthThrough({ x, y, twins }: WayGraph, halfEdge: number): number {
  const [from, to] = [nodeOf(halfEdge), nodeOf(twins[halfEdge] ?? -1)];
  return Math.hypot((x[to] ?? NaN) - (x[from] ?? NaN), (y[to] ?? NaN) - (y[from] ?? NaN));
}

/** The way from one disc to another through the gap between sites `a` and `b`, both of which they touch. */
export function throughGap([a, b]: readonly [Vec2, Vec2], from: Disc, to: Disc): Narrow {
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  // Both discs' middles lie on the bisector; the gap's own middle is the narrowest spot if it lies between them.
  const side = (from.x - middle.x) * (to.x - middle.x) + (from.y - middle.y) * (to.y - middle.y);
  if (side <= 0) return { at: middle, width: Math.hypot(b.x - a.x, b.y - a.y) };
  const lesser = from.radius < to.radius ? from : to;
  return { at: { x: lesser.x, y: lesser.y }, width: 2 * lesser.radius };
}

/** The way out of a node through one of its half-edges, which must have a twin. */
export function narrowAt(graph: WayGraph, halfEdge: number): Narrow {
  const gap = [
    siteAt(graph.sites, startOf(graph, halfEdge)),
    siteAt(graph.sites, endOf(graph, halfEdge)),
  ] as const;
  return throughGap(gap, discAt(graph, nodeOf(halfEdge)), discAt(graph, nodeBeyond(graph, halfEdge)));
}

function byOwner({ owners }: Sites, corners: Uint32Array): Map<string, number[]> {
  const halfEdges = new Map<string, number[]>();
  corners.forEach((site, halfEdge) => {
    const owner = owners[site];
    if (!owner) return;
    const known = halfEdges.get(owner);
    if (known) known.push(halfEdge);
    else halfEdges.set(owner, [halfEdge]);
  });
  return halfEdges;
}

function measureCircle({ sites, corners, x, y, radius }: WayGraph, node: number): void {
  const [a, b, c] = [corners[3 * node] ?? 0, corners[3 * node + 1] ?? 0, corners[3 * node + 2] ?? 0];
  const at = sites.coordinates;
  const [ax, ay] = [at[2 * a] ?? NaN, at[2 * a + 1] ?? NaN];
  const [bx, by] = [(at[2 * b] ?? NaN) - ax, (at[2 * b + 1] ?? NaN) - ay];
  const [cx, cy] = [(at[2 * c] ?? NaN) - ax, (at[2 * c + 1] ?? NaN) - ay];
  const twice = 2 * (bx * cy - by * cx);
  const [bb, cc] = [bx * bx + by * by, cx * cx + cy * cy];
  const [mx, my] = [(cy * bb - by * cc) / twice, (bx * cc - cx * bb) / twice];
  x[node] = ax + mx;
  y[node] = ay + my;
  radius[node] = Math.hypot(mx, my);
}

/** The width that `narrowAt` gives, in plain numbers because every gap of the net is measured. */
function widthOfGap(graph: WayGraph, halfEdge: number): number {
  const { sites, x, y, radius } = graph;
  const [from, to] = [nodeOf(halfEdge), nodeBeyond(graph, halfEdge)];
  const [a, b] = [2 * startOf(graph, halfEdge), 2 * endOf(graph, halfEdge)];
  const [ax, ay] = [sites.coordinates[a] ?? NaN, sites.coordinates[a + 1] ?? NaN];
  const [bx, by] = [sites.coordinates[b] ?? NaN, sites.coordinates[b + 1] ?? NaN];
  const [mx, my] = [(ax + bx) / 2, (ay + by) / 2];
  const [fromX, fromY] = [(x[from] ?? NaN) - mx, (y[from] ?? NaN) - my];
  const [toX, toY] = [(x[to] ?? NaN) - mx, (y[to] ?? NaN) - my];
  if (fromX * toX + fromY * toY <= 0) return Math.hypot(bx - ax, by - ay);
  const [r, s] = [radius[from] ?? NaN, radius[to] ?? NaN];
  return 2 * (r < s ? r : s);
}

/** Both half-edges of a gap at once. */
function measureGap(graph: WayGraph, halfEdge: number): void {
  const twin = graph.twins[halfEdge] ?? -1;
  if (twin < halfEdge) return;
  const width = widthOfGap(graph, halfEdge);
  graph.widths[halfEdge] = width;
  graph.widths[twin] = width;
}
