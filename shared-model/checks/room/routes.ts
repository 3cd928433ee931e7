/**
 * A way out for every player: a real path round everything that stands there, to an exit. A player who can get out as
 * wide as asked gets the shortest way that is; any other gets the widest there is. Who uses a wheelchair gets a way
 * without steps, with the room to turn that is asked for on it (turning.ts). Nobody is led over the edge of a level higher
 * than HIGHEST_STEP where there is another way.
 *
 * Accuracy: ways are compared by widths that are at most 1 mm too great at 915 mm (see sites.ts); the width reported is
 * that of the path itself, measured on the outlines, and where it is narrow the one that a tape gives across it. Not promised: in a bend narrower than asked,
 * turning is judged as for something round.
 */

import { inSetup, platformOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Platform, Player, Seat } from '../../document/records.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import { pointInPolygon } from '../../geometry/polygon.ts';
import { gapBetweenSegments } from '../../geometry/segments.ts';
import type { RouteResult } from '../report.ts';
import { clearancesOf, type Clearances } from './clearance.ts';
import { climbing, onFoot, onWheels, wheelchairUsers, type Gait } from './gait.ts';
import { groundOf, groundWithin } from './ground.ts';
import { HIGHEST_STEP } from './level-edges.ts';
import {
  departures,
  ownPlace,
  shortestFrom,
  widestFrom,
  type Departure,
  type Link,
  type OwnPlace,
} from './own-place.ts';
import { isNarrow, narrowPlaceOf } from './narrow-place.ts';
import { isBeyond, sitesOf } from './sites.ts';
import { turningCircles } from './turning.ts';
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

/**
 * One result for each player of the setup, in the order of their numbers, then for each wheelchair set where no player
 * sits. No exit, or no way to one: width 0, no path.
 */
export function routeResults(document: Document, setup: Id<'setup'>): RouteResult[] {
  const users = wheelchairUsers(document, setup);
  const ofWheels = waysOf(document, setup, { people: users, gait: onWheels(document) });
  const walking = inSetup(document, setup, 'player').filter(({ mobility }) => mobility === 'walks');
  const ofFeet = waysOnFoot(document, setup, walking);
  const found = new Map([...ofFeet, ...ofWheels].map((route) => [route.player, route]));
  const seats = users.filter(({ kind }) => kind === 'seat');
  return [...inSetup(document, setup, 'player'), ...seats].flatMap(({ id }) => found.get(id) ?? []);
}

/** Over the high edge of a level only where there is no other way. */
function waysOnFoot(document: Document, setup: Id<'setup'>, people: readonly Player[]): RouteResult[] {
  const level = waysOf(document, setup, { people, gait: onFoot(document) });
  if (!inSetup(document, setup, 'riser').some(({ height }) => height > HIGHEST_STEP)) return level;
  const isStuck = new Set(level.flatMap(({ player, exit }) => (exit === null ? [player] : [])));
  const stuck = people.filter(({ id }) => isStuck.has(id));
  return [...level, ...waysOf(document, setup, { people: stuck, gait: climbing(document) })];
}

/** The way of one player who walks, as `routeResults` finds it; null when nobody of that id does. */
export function wayOnFoot(document: Document, setup: Id<'setup'>, player: string): RouteResult | null {
  const people = inSetup(document, setup, 'player').filter(
    ({ id, mobility }) => id === player && mobility === 'walks',
  );
  return waysOnFoot(document, setup, people).at(-1) ?? null;
}

/** The way of one wheelchair, as `routeResults` finds it; null when nobody of that id uses one. */
export function wheelchairWay(document: Document, setup: Id<'setup'>, user: string): RouteResult | null {
  const people = wheelchairUsers(document, setup).filter(({ id }) => id === user);
  return waysOf(document, setup, { people, gait: onWheels(document) })[0] ?? null;
}

interface Party {
  readonly people: readonly (Player | Seat)[];
  readonly gait: Gait;
}

function waysOf(document: Document, setup: Id<'setup'>, { people, gait }: Party): RouteResult[] {
  if (people.length === 0) return [];
  if (!gait.onWheels && exitsOf(document).length === 0) return people.map(nowhere);
  const search = searchOn(document, setup, gait);
  const platform = platformOf(document);
  const within = gait.onWheels ? groundWithin(document, setup, gait) : null;
  const room = within && { sites: sitesOf(within), clearances: clearancesOf(within) };
  return people.map((person) => {
    if (!isOn(platform, person)) return nowhere(person);
    const walker = walkerFrom(person, person.id, search);
    const route = routeOf(person, { ...search, walker });
    return room ? { ...route, turning: turningCircles(room, walker, route) } : route;
  });
}

interface Search {
  readonly net: Net;
  readonly exits: readonly Exit[];
  readonly exitBeyond: ExitBeyond;
  readonly clearances: Clearances;
  readonly gait: Gait;
  readonly widest: () => WaysOut;
  /** Shortest ways of at least a width. */
  readonly shortest: (width: number) => WaysOut;
}

/** What all who get along in one manner have in common. */
function searchOn(document: Document, setup: Id<'setup'>, gait: Gait): Search {
  const ground = groundOf(document, setup, gait);
  const graph = wayGraph(sitesOf(ground));
  const net: Net = { graph, widths: graph.widths };
  const { exits } = ground;
  const exitBeyond = exitFinder(exits);
  const known = new Map<number, WaysOut>();
  const shortest = (width: number): WaysOut => {
    const ways = known.get(width) ?? shortestWays(net, seedsBeyond(graph, exitBeyond, 'length'), width);
    // Each is as large as the net, so only so many are kept.
    if (known.size < MOST_KEPT) known.set(width, ways);
    return ways;
  };
  let widest: WaysOut | null = null;
  return {
    net,
    exits,
    exitBeyond,
    gait,
    shortest,
    clearances: clearancesOf(ground),
    widest: () => (widest ??= widestWays(net, seedsBeyond(graph, exitBeyond, 'width'), NO_WAY)),
  };
}

interface OwnSearch extends Search {
  readonly walker: Walker;
}

function routeOf(person: Player | Seat, search: OwnSearch): RouteResult {
  const { walker, gait } = search;
  const place = ownPlace(search.net.graph, { ...walker, squeeze: gait.squeeze });
  if (!place) return nowhere(person);
  const asked = shortestLine({ place, search, width: gait.asked });
  // Most get out as wide as asked, and then there is no need to know how wide the widest way is.
  if (asked?.isSurelyWide) return walked(person, asked, search);
  const width = widthToAskFor(place, search);
  const line = width === null ? null : shortestLine({ place, search, width });
  return line ? walked(person, line, search) : nowhere(person);
}

/** The width asked for, or else that of the widest way; null when nobody gets through. */
function widthToAskFor(place: OwnPlace, { widest, exitBeyond, gait }: Search): number | null {
  const ways = widestFrom(place, widest(), { exitBeyond, least: NO_WAY });
  const possible = departures(place).reduce(
    (best, { node, width }) => Math.max(best, Math.min(width, ways.measure[node] ?? 0)),
    0,
  );
  if (possible < NO_WAY) return null;
  // In steps of a millimetre, so that players who leave through one narrow place share the search for it.
  return possible < gait.asked ? Math.floor(possible) : gait.asked;
}

interface Line {
  readonly exit: Exit;
  readonly points: readonly Vec2[];
  /** The widest way is at least as wide as this one was asked to be. */
  readonly isSurelyWide: boolean;
}

interface Wanted {
  readonly place: OwnPlace;
  readonly search: OwnSearch;
  readonly width: number;
}

/** The shortest line along the nets that is so wide; null when there is none. */
function shortestLine({ place, search, width }: Wanted): Line | null {
  const common = search.shortest(width);
  const ways = shortestFrom(place, common, { exitBeyond: search.exitBeyond, width });
  const total = ({ node, length, width: wide }: Departure): number =>
    wide < width ? Infinity : length + (ways.measure[node] ?? Infinity);
  const start = departures(place).reduce<Departure | null>(
    (best, next) => (total(next) < (best ? total(best) : Infinity) ? next : best),
    null,
  );
  const exit = start && search.exits[ways.exit[start.node] ?? -1];
  if (!exit) return null;
  const { points, radius } = lineFrom(start.node, { place, ways, common, width, net: search.net });
  return { exit, points: upTo(exit, [search.walker.spot, ...points]), isSurelyWide: 2 * radius >= width };
}

function walked(person: Player | Seat, { exit, points }: Line, { walker, gait }: OwnSearch): RouteResult {
  const taut = tautened(walker, points, widthOfWalk(walker, points, gait.asked));
  const clear = Math.min(exit.width, widthOfWalk(walker, taut));
  const way = { walker, path: taut, width: clear, asked: gait.asked, exit };
  // What is narrow is told as it is measured across; the finding says the same.
  const width = isNarrow(clear, gait.asked) ? narrowPlaceOf(way).width : clear;
  return { player: person.id, exit: exit.id, path: taut, width, turning: [] };
}

interface Chain {
  readonly place: OwnPlace;
  readonly ways: WaysOut;
  readonly common: WaysOut;
  readonly net: Net;
  readonly width: number;
}

/** From a node of the player's own net along the best ways, through the middles of the gaps; `radius` of its last node. */
function lineFrom(
  node: number,
  { place, ways, common, width, net }: Chain,
): { readonly points: Vec2[]; readonly radius: number } {
  const own = along(place.net.graph, ways, node);
  const length = (link: Link): number => link.length + (common.measure[link.to] ?? Infinity);
  const link = place.links
    .filter(({ from, width: wide }) => from === own.last && wide >= width)
    .sort((a, b) => length(a) - length(b))[0];
  // Without a link the way ends beyond an exit in the player's own place: he stands in its door.
  if (!link) return { points: own.points, radius: place.net.graph.radius[own.last] ?? 0 };
  const rest = along(net.graph, common, link.to);
  return {
    points: [...own.points, link.at, ...rest.points],
    radius: net.graph.radius[rest.last] ?? 0,
  };
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

function nowhere({ id }: Player | Seat): RouteResult {
  return { player: id, exit: null, path: [], width: 0, turning: [] };
}
