/** From every node of a net: the widest way to an exit, and the shortest one that is wide enough. */

import { boundsOf } from '../../geometry/polygon.ts';
import { BoxGrid, grown } from './box-grid.ts';
import { LeastFirst } from './queue.ts';
import { isBeyond } from './sites.ts';
import type { Exit } from './walls.ts';
import { lengthThrough, nodeBeyond, nodeCount, type WayGraph } from './way-graph.ts';

export interface Net {
  readonly graph: WayGraph;
  /** How wide a disc passes from a node through one of its half-edges; 0: no way. */
  readonly widthThrough: (halfEdge: number) => number;
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

/** For each node the greatest width that some way out keeps all along. */
export function widestWays(net: Net, seeds: readonly Seed[]): WaysOut {
  return spread(net, seeds, {
    none: 0,
    onwards: (width, halfEdge) => Math.min(width, net.widthThrough(halfEdge)),
    key: (width) => -width,
  });
}

/** For each node the length of the shortest way out along the net that is at least `width` wide. */
export function shortestWays(net: Net, seeds: readonly Seed[], width: number): WaysOut {
  return spread(net, seeds, {
    none: Infinity,
    onwards: (length, halfEdge) =>
      net.widthThrough(halfEdge) < width ? Infinity : length + lengthThrough(net.graph, halfEdge),
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
  const reach = ({ node, measure, exit }: Seed, through: number): void => {
    const key = rule.key(measure);
    // A node without a proper circle has no number here and is never reached.
    if (!(key < rule.key(ways.measure[node] ?? rule.none))) return;
    [ways.measure[node], ways.next[node], ways.exit[node]] = [measure, through, exit];
    queue.push(key, node);
  };
  for (const seed of seeds) reach(seed, -1);
  for (let best = queue.pop(); best; best = queue.pop()) {
    const measure = ways.measure[best.item] ?? rule.none;
    if (best.key > rule.key(measure)) continue;
    for (let halfEdge = 3 * best.item; halfEdge < 3 * best.item + 3; halfEdge++) {
      const node = nodeBeyond(graph, halfEdge);
      if (node < 0) continue;
      const seed = { node, measure: rule.onwards(measure, halfEdge), exit: ways.exit[best.item] ?? -1 };
      reach(seed, graph.twins[halfEdge] ?? -1);
    }
  }
  return ways;
}
