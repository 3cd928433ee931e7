/**
 * A walking route from every player to an exit: a real path round everything that stands there. The widest way out is
 * found first. A player whose widest way is as wide as asked gets the shortest way that is; any other gets the widest.
 *
 * Accuracy: ways are compared by widths that are at most 1 mm too great at 915 mm (see sites.ts); the width reported is
 * that of the path itself, measured on the outlines. Not promised: steps between levels are not judged, and turning
 * in a tight corner is judged as for a round walker.
 */

import { inSetup, platformOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Platform, Player } from '../../document/records.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import { pointInPolygon } from '../../geometry/polygon.ts';
import { gapBetweenSegments } from '../../geometry/segments.ts';
import type { RouteResult } from '../report.ts';
import { clearancesOf, type Clearances } from './clearance.ts';
import { groundOf } from './ground.ts';
import {
  departures,
  ownPlace,
  shortestFrom,
  widestFrom,
  type Departure,
  type Link,
  type OwnPlace,
} from './own-place.ts';
import { isBeyond, sitesOf, type Ground } from './sites.ts';
import { tautened, walkerFrom, widthOfWalk, type Walker } from './walk.ts';
import { exitsOf, type Exit } from './walls.ts';
import { narrowAt, nodeAt, nodeBeyond, wayGraph, type WayGraph } from './way-graph.ts';
import {
  exitFinder,
  seedsBeyond,
  shortestWays,
  widestWays,
  type ExitBeyond,
  type Net,
  type WaysOut,
} from './ways-out.ts';

/** Through less than this nobody gets, and the triangulated outlines themselves have gaps as wide as their spacing. */
const NO_WAY = 200;
const MOST_KEPT = 20;

/** One result for each player of the setup, in the order of their numbers. No exit, or no way to one: width 0, no path. */
export function routeResults(document: Document, setup: Id<'setup'>): RouteResult[] {
  const players = inSetup(document, setup, 'player');
  if (exitsOf(document).length === 0) return players.map(nowhere);
  const search = searchOn(groundOf(document, setup), widthAsked(document));
  const platform = platformOf(document);
  return players.map((player) => (isOn(platform, player) ? routeOf(player, search) : nowhere(player)));
}

function widthAsked(document: Document): number {
  for (const record of document.records.values())
    if (record.kind === 'concert') return record.limits.routeWidth;
  return 0;
}

interface Search {
  readonly net: Net;
  readonly exits: readonly Exit[];
  readonly exitBeyond: ExitBeyond;
  readonly clearances: Clearances;
  readonly asked: number;
  readonly widest: WaysOut;
  /** Shortest ways of at least a width. */
  readonly shortest: (width: number) => WaysOut;
}

function searchOn(ground: Ground, asked: number): Search {
  const graph = wayGraph(sitesOf(ground));
  const net: Net = { graph, widthThrough: (halfEdge) => graph.widths[halfEdge] ?? 0 };
  const { exits } = ground;
  const exitBeyond = exitFinder(exits);
  const known = new Map<number, WaysOut>();
  const shortest = (width: number): WaysOut => {
    const ways = known.get(width) ?? shortestWays(net, seedsBeyond(graph, exitBeyond, 'length'), width);
    // Each is as large as the net, so only so many are kept.
    if (known.size < MOST_KEPT) known.set(width, ways);
    return ways;
  };
  return {
    net,
    exits,
    exitBeyond,
    asked,
    shortest,
    clearances: clearancesOf(ground),
    widest: widestWays(net, seedsBeyond(graph, exitBeyond, 'width')),
  };
}

function routeOf(player: Player, search: Search): RouteResult {
  const walker = walkerFrom(player, player.id, search.clearances);
  const place = ownPlace(search.net.graph, walker.free, walker.spot);
  if (!place) return nowhere(player);
  const ways = widestFrom(place, search.widest, search.exitBeyond);
  const possible = departures(place).reduce(
    (best, { node, width }) => Math.max(best, Math.min(width, ways.measure[node] ?? 0)),
    0,
  );
  if (possible < NO_WAY) return nowhere(player);
  // In steps of a millimetre, so that players who leave through one narrow place share the search for it.
  const width = possible < search.asked ? Math.floor(possible) : search.asked;
  return shortestRoute(player, { walker, place, search, width });
}

interface Wanted {
  readonly walker: Walker;
  readonly place: OwnPlace;
  readonly search: Search;
  readonly width: number;
}

function shortestRoute(player: Player, { walker, place, search, width }: Wanted): RouteResult {
  const common = search.shortest(width);
  const ways = shortestFrom(place, common, { exitBeyond: search.exitBeyond, width });
  const total = ({ node, length, width: wide }: Departure): number =>
    wide < width ? Infinity : length + (ways.measure[node] ?? Infinity);
  const start = departures(place).reduce<Departure | null>(
    (best, next) => (total(next) < (best ? total(best) : Infinity) ? next : best),
    null,
  );
  if (!start) return nowhere(player);
  const exit = search.exits[ways.exit[start.node] ?? -1];
  if (!exit) return nowhere(player);
  const line = lineFrom(start.node, { place, ways, common, width, net: search.net });
  const path = upTo(exit, [walker.spot, ...line]);
  const wide = widthOfWalk(walker, path, search.asked);
  const taut = tautened(walker, path, wide);
  return {
    player: player.id,
    exit: exit.id,
    path: taut,
    width: Math.min(exit.width, widthOfWalk(walker, taut)),
  };
}

interface Chain {
  readonly place: OwnPlace;
  readonly ways: WaysOut;
  readonly common: WaysOut;
  readonly net: Net;
  readonly width: number;
}

/** From a node of the player's own net along the best ways, through the middles of the gaps. */
function lineFrom(node: number, { place, ways, common, width, net }: Chain): Vec2[] {
  const own = along(place.net.graph, ways, node);
  const length = (link: Link): number => link.length + (common.measure[link.to] ?? Infinity);
  const link = place.links
    .filter(({ from, width: wide }) => from === own.last && wide >= width)
    .sort((a, b) => length(a) - length(b))[0];
  // Without a link the way ends beyond an exit in the player's own place: he stands in its door.
  if (!link) return own.points;
  return [...own.points, link.at, ...along(net.graph, common, link.to).points];
}

function along(graph: WayGraph, ways: WaysOut, from: number): { points: Vec2[]; last: number } {
  const points = [nodeAt(graph, from)];
  let node = from;
  for (let next = ways.next[node] ?? -1; next >= 0; next = ways.next[node] ?? -1) {
    points.push(narrowAt(graph, next).at);
    node = nodeBeyond(graph, next);
    points.push(nodeAt(graph, node));
  }
  return { points, last: node };
}

/** The line up to where it leaves the platform through the exit. */
function upTo(exit: Exit, line: readonly Vec2[]): Vec2[] {
  const beyond = line.findIndex((point) => isBeyond(exit, point));
  const [a, b] = [line[beyond - 1], line[beyond]];
  if (!a || !b) return [...line];
  const { a: left, b: right } = exit.doorway;
  return [...line.slice(0, beyond), gapBetweenSegments(a, b, left, right).b];
}

function isOn(platform: Platform, point: Vec2): boolean {
  return pointInPolygon(point, platform.outline);
}

function nowhere(player: Player): RouteResult {
  return { player: player.id, exit: null, path: [], width: 0 };
}
