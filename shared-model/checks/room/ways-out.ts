/** From every node of a net: the widest way to an exit, and the shortest one that is wide enough. */

import { boundsOf } from '../../geometry/polygon.ts';
import { BoxGrid, grown } from './box-grid.ts';
import { LeastFirst } from './queue.ts';
import { isBeyond } from './sites.ts';
import type { Exit } from './walls.ts';
import { lengthThrough, nodeCount, nodeOf, type WayGraph } from './way-graph.ts';

export interface Net {
  readonly graph: WayGraph;
  /** For each half-edge how wide a disc passes through it from node to node; 0: no way. */
  readonly widths: Float64Array;
}

/** A node from which the way out is already known. */
export interface Seed {
  readonly node: number;
  /** The narrowest width, or the length, of that way. */
  readonly measure: number;
  /** Index of the exit it leads to. */
  readonly exit: number;
}

export interface WaysOut {
  /** Widest ways: the narrowest width on the way, 0 for none. Shortest ways: the length, Infinity for none. */
  readonly measure: Float64Array;
  /** The next half-edge to go through; -1 at a seed and where there is no way. */
  readonly next: Int32Array;
  /** Index of the exit it leads to; -1 where there is no way. */
  readonly exit: Int32Array;
}

/** For each node the greatest width that some way out keeps all along; 0 where it is less than `least`. */
export function widestWays(net: Net, seeds: readonly Seed[], least: number): WaysOut {
  return spread(net, seeds, {
    none: 0,
    // Most nodes lie within outlines, and nobody gets through to them: the search does not go there.
    onwards: (width, halfEdge) => {
      const through = Math.min(width, net.widths[halfEdge] ?? 0);
      return through < least ? 0 : through;
    },
    key: (width) => -width,
  });
}

/** For each node the length of the shortest way out along the net that is at least `width` wide. */
export function shortestWays(net: Net, seeds: readonly Seed[], width: number): WaysOut {
  return spread(net, seeds, {
    none: Infinity,
    onwards: (length, halfEdge) =>
      (net.widths[halfEdge] ?? 0) < width ? Infinity : length + lengthThrough(net.graph, halfEdge),
    key: (length) => length,
  });
}

/** The nodes that lie beyond an exit, where every way ends. */
export function seedsBeyond(graph: WayGraph, exitBeyond: ExitBeyond, by: 'width' | 'length'): Seed[] {
  const seeds: Seed[] = [];
  for (let node = 0; node < nodeCount(graph); node++) {
    const exit = exitBeyond(graph.x[node] ?? NaN, graph.y[node] ?? NaN);
    if (exit < 0) continue;
    seeds.push({ node, exit, measure: by === 'width' ? 2 * (graph.radius[node] ?? 0) : 0 });
  }
  return seeds;
}

/** Index of the first exit whose passage a point lies in; -1 when in none. */
export type ExitBeyond = (x: number, y: number) => number;

/** All nodes of every net are asked about, and most of them lie nowhere near an exit. */
export function exitFinder(exits: readonly Exit[]): ExitBeyond {
  const passages = exits.map(({ middle: { x, y }, width }) =>
    grown({ minX: x, minY: y, maxX: x, maxY: y }, 1.2 * width),
  );
  const grid = new BoxGrid(passages);
  const around = boundsOf(
    passages.flatMap(({ minX, minY, maxX, maxY }) => [
      { x: minX, y: minY },
      { x: maxX, y: maxY },
    ]),
  );
  return (x, y) => {
    // A node without a proper circle is not finite, and nowhere.
    if (!(x >= around.minX && x <= around.maxX && y >= around.minY && y <= around.maxY)) return -1;
    let first = -1;
    grid.forEachTouching({ minX: x, minY: y, maxX: x, maxY: y }, (index) => {
      const exit = exits[index];
      if (exit && (first < 0 || index < first) && isBeyond(exit, { x, y })) first = index;
    });
    return first;
  };
}

interface Rule {
  readonly none: number;
  readonly onwards: (measure: number, halfEdge: number) => number;
  /** The lesser the better. */
  readonly key: (measure: number) => number;
}

/** Dijkstra's search from the seeds inwards. */
function spread({ graph }: Net, seeds: readonly Seed[], rule: Rule): WaysOut {
  const count = nodeCount(graph);
  const ways: WaysOut = {
    measure: new Float64Array(count).fill(rule.none),
    next: new Int32Array(count).fill(-1),
    exit: new Int32Array(count).fill(-1),
  };
  const queue = new LeastFirst();
  // Plain numbers: this is asked for every gap of the net.
  const reach = (node: number, measure: number, exit: number, through: number): void => {
    const key = rule.key(measure);
    // A node without a proper circle has no number here and is never reached.
    if (!(key < rule.key(ways.measure[node] ?? rule.none))) return;
    ways.measure[node] = measure;
    ways.next[node] = through;
    ways.exit[node] = exit;
    queue.push(key, node);
  };
  for (const { node, measure, exit } of seeds) reach(node, measure, exit, -1);
  for (let node = queue.pop(); node >= 0; node = queue.pop()) {
    const measure = ways.measure[node] ?? rule.none;
    if (queue.lastKey > rule.key(measure)) continue;
    const exit = ways.exit[node] ?? -1;
    for (let halfEdge = 3 * node; halfEdge < 3 * node + 3; halfEdge++) {
      const twin = graph.twins[halfEdge] ?? -1;
      if (twin >= 0) reach(nodeOf(twin), rule.onwards(measure, halfEdge), exit, twin);
    }
  }
  return ways;
}
