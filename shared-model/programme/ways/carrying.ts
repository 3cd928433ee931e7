/**
 * The ways on which a crew carries things: over the platform past everything that stays where it is, through openings
 * that are wide enough, and beyond them straight to where the things wait.
 */

import { chairOutline } from '../../catalogue/outlines.ts';
import { groundOf } from '../../checks/room/ground.ts';
import { HIGHEST_STEP, LEAST_STEP, levelEdges } from '../../checks/room/level-edges.ts';
import type { Obstacle } from '../../checks/room/sites.ts';
import { between as along, lengthOf, type Wall } from '../../checks/room/walls.ts';
import {
  allOf,
  concertOf,
  documentOf,
  find,
  inSetup,
  platformOf,
  type Document,
} from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightOn } from '../../document/levels.ts';
import { doorway, edgeOf } from '../../document/openings.ts';
import {
  isPlaced,
  type Door,
  type Millimetres,
  type Point,
  type Riser,
  type Storage,
} from '../../document/records.ts';
import { depthInPolygon } from '../../geometry/polygon.ts';
import { nearestOnSegment } from '../../geometry/segments.ts';
import { netOn, onceOn, type End, type Floor, type Goal, type Net } from './net.ts';

/**
 * How freely it goes: as wide as the concert's limits ask for; narrower, or over the edge of a level; or not at all,
 * and then the length is that of the straight line.
 */
export type Ease = 'clear' | 'tight' | 'none';

export interface Way {
  readonly points: readonly Point[];
  readonly length: Millimetres;
  readonly ease: Ease;
  /** The opening that it goes through; null: it stays on the platform, or leaves it where no opening is drawn. */
  readonly door: Id<'door'> | null;
}

/** What is carried is lifted over steps on the way; what is rolled goes round them, by a narrower way too, while there is one. */
export type Manner = 'carried' | 'rolled';

export interface CarryingWays {
  readonly between: (from: Point, to: Point, girth: Millimetres, manner?: Manner) => Way;
  /** From a spot to where a thing waits; null: to the nearest opening. */
  readonly away: (from: Point, storage: Storage | null, girth: Millimetres, manner?: Manner) => Way;
  /** The highest step on a way as it was found here, from the platform outwards; up or down, 0: none. */
  readonly stepOn: (way: Way) => Millimetres;
}

/** The least that somebody with something in his hands needs. Common practice, no source. */
export const LEAST_WAY: Millimetres = 500;

/** What stands on the platform besides what stays for the whole concert. */
export interface Standing {
  readonly obstacles: readonly Obstacle[];
  /** Levels, which are stepped on as far as a step goes. */
  readonly risers: readonly Riser[];
}

export interface CarryingFloor {
  /** For many ways past the same things. */
  readonly past: (standing: Standing) => CarryingWays;
  /** For a few ways past what stands at one moment. */
  readonly pastOnce: (standing: Standing) => CarryingWays;
}

/** `setup`: any of those between which is carried; of it only what stays for the whole concert counts. */
export function carryingFloor(document: Document, setup: Id<'setup'>): CarryingFloor {
  const bare = withoutSetups(document);
  const chairs = chairsOf(bare);
  const past = (netFor: (floor: Floor) => Net) => (standing: Standing) =>
    waysOn(bare, {
      netFor: netsOf(bare, setup, { standing, chairs, netFor }),
      risers: [...inSetup(bare, setup, 'riser'), ...standing.risers],
    });
  return { past: past(netOn), pastOnce: past(onceOn) };
}

/** Ways past `staying` and what stays for the whole concert. */
export function carryingWays(
  document: Document,
  setup: Id<'setup'>,
  staying: readonly Obstacle[] = [],
): CarryingWays {
  return carryingFloor(document, setup).past({ obstacles: staying, risers: [] });
}

/** The net for ways of a width on which no step is higher. */
type NetFor = (width: number, highestStep: number) => Net;

interface Furnishing {
  readonly netFor: NetFor;
  /** All that stand. */
  readonly risers: readonly Riser[];
}

function waysOn(bare: Document, { netFor, risers }: Furnishing): CarryingWays {
  const asked = concertOf(bare).limits.routeWidth;
  const tiers = (girth: Millimetres, manner: Manner) => tiersFor(Math.max(asked, girth), girth, manner);
  const between = (from: Point, to: Point, girth: Millimetres, manner: Manner = 'carried'): Way => {
    for (const { ease, width, highestStep } of tiers(girth, manner)) {
      const line = netFor(width, highestStep).between(spotAt(from), spotAt(to));
      if (line) return { ...line, ease, door: null };
    }
    return straightWay(from, to);
  };
  const openings = allOf(bare, 'door').filter(({ exit }) => exit);
  const away: CarryingWays['away'] = (from, storage, girth, manner = 'carried') => {
    if (storage && isOnPlatform(bare, storage)) return between(from, storage, girth, manner);
    const chosen = find(bare, storage?.door ?? null);
    const doors = chosen ? [chosen] : openings;
    for (const { ease, width, highestStep } of tiers(girth, manner)) {
      const goals = doors.flatMap((door) => crossings(bare, { door, width, storage }));
      const line = netFor(width, highestStep).toAny(spotAt(from), goals);
      const last = line?.points.at(-1);
      const through = last && goals.find(({ end }) => end.x === last.x && end.y === last.y);
      if (line && through) return beyond({ ...line, ease, door: through.door }, storage);
    }
    return straightWay(from, storage ?? nearestWayOff(bare, from, doors));
  };
  return { between, away, stepOn: (way) => highestStepOn(risers, way) };
}

interface Tier {
  readonly ease: Exclude<Ease, 'none'>;
  readonly width: Millimetres;
  readonly highestStep: Millimetres;
}

/** What is tried one after the other. `wide`: as the concert asks for it, or as the thing does. */
function tiersFor(wide: Millimetres, girth: Millimetres, manner: Manner): Tier[] {
  const narrow = Math.max(LEAST_WAY, girth);
  const overSteps: Tier[] = [
    { ease: 'clear', width: wide, highestStep: HIGHEST_STEP },
    { ease: 'tight', width: narrow, highestStep: Infinity },
  ];
  if (manner === 'carried') return overSteps;
  return [
    { ease: 'clear', width: wide, highestStep: LEAST_STEP },
    { ease: 'tight', width: narrow, highestStep: LEAST_STEP },
    ...overSteps,
  ];
}

/** The floor is looked at so often along a way. */
const SPACING: Millimetres = 20;

/** Beyond an opening nothing is drawn: the floor there is taken to be as high as the platform's. */
function highestStepOn(risers: readonly Riser[], { points, door }: Way): Millimetres {
  if (risers.length === 0) return 0;
  const levels = points.flatMap((b, index): number[] => {
    const a = points[index - 1] ?? b;
    const count = Math.max(1, Math.ceil(lengthOf({ a, b }) / SPACING));
    return Array.from({ length: count }, (_, part) =>
      floorHeightOn(risers, along({ a, b }, (part + 1) / count)),
    );
  });
  if (door !== null) levels.push(0);
  const highest = levels.reduce(
    (most, level, index) => Math.max(most, Math.abs(level - (levels[index - 1] ?? level))),
    0,
  );
  return highest > LEAST_STEP ? highest : 0;
}

/** What stays for the whole concert, without people: they walk by themselves. Openings to storage places are open. */
function withoutSetups(document: Document): Document {
  const used = new Set(allOf(document, 'storage').map(({ door }) => door as string | null));
  const records = [...document.records.values()].filter(
    (record) => !isPlaced(record) || (record.setup === null && record.kind !== 'player'),
  );
  return documentOf(
    records.map((record) =>
      record.kind === 'door' && used.has(record.id) ? { ...record, exit: true } : record,
    ),
  );
}

/** Chairs that stay although their players walk. */
function chairsOf(document: Document): Obstacle[] {
  return allOf(document, 'player').flatMap((player) => {
    const outline = player.setup === null ? chairOutline(player) : null;
    return outline ? [{ owner: player.id, outline }] : [];
  });
}

interface Furnished {
  readonly standing: Standing;
  readonly chairs: readonly Obstacle[];
  readonly netFor: (floor: Floor) => Net;
}

function netsOf(document: Document, setup: Id<'setup'>, furnished: Furnished): NetFor {
  const { standing, chairs, netFor } = furnished;
  const known = new Map<string, Net>();
  const netOf = (width: number, highestStep: number): Net => {
    const ground = groundOf(document, setup, { onWheels: false, highestStep });
    const walls = [...ground.walls, ...stepsOf(standing, highestStep)];
    const obstacles = [...ground.obstacles, ...standing.obstacles, ...chairs];
    return netFor({ ground: { ...ground, walls, obstacles }, outline: platformOf(document).outline, width });
  };
  const levels = [...inSetup(document, setup, 'riser'), ...standing.risers];
  const tallest = levels.reduce((most, { height }) => Math.max(most, height), 0);
  return (width, limit) => {
    // Where nothing is as high as that, one net does for every limit.
    const highestStep = tallest <= limit ? Infinity : limit;
    const key = `${width} ${highestStep}`;
    const net = known.get(key) ?? netOf(width, highestStep);
    known.set(key, net);
    return net;
  };
}

function stepsOf({ risers }: Standing, highestStep: number): Wall[] {
  return levelEdges(risers, highestStep).map(({ a, b, riser }) => ({ a, b, of: riser.id }));
}

function spotAt({ x, y }: Point): End {
  return { x, y, isDoorway: false };
}

interface Passing {
  readonly door: Door;
  readonly width: number;
  readonly storage: Storage | null;
}

interface Crossing extends Goal {
  readonly door: Id<'door'>;
}

/** Where something of this width goes through an opening: in its middle, or close to either jamb; nowhere if it does not fit. */
function crossings(document: Document, { door, width, storage }: Passing): Crossing[] {
  const opening = doorway(platformOf(document), door);
  const room = lengthOf(opening);
  if (room < width) return [];
  const nearJamb = width / 2 / room;
  const shares = room - width < JAMB ? [0.5] : [nearJamb, 0.5, 1 - nearJamb];
  return shares.map((share) => {
    const end = { ...along(opening, share), isDoorway: true };
    const beyondIt = storage ? Math.hypot(storage.x - end.x, storage.y - end.y) : 0;
    return { end, beyond: beyondIt, door: door.id };
  });
}

/** An opening with less than this to spare is crossed in its middle. */
const JAMB: Millimetres = 300;

/** Beyond the opening nothing is drawn, so the way there is straight. */
function beyond(way: Way, storage: Storage | null): Way {
  const last = way.points.at(-1);
  if (!storage || !last) return way;
  const end = { x: storage.x, y: storage.y };
  return {
    ...way,
    points: [...way.points, end],
    length: way.length + Math.hypot(end.x - last.x, end.y - last.y),
  };
}

function straightWay(from: Point, to: Point): Way {
  const [a, b] = [
    { x: from.x, y: from.y },
    { x: to.x, y: to.y },
  ];
  return { points: [a, b], length: Math.hypot(b.x - a.x, b.y - a.y), ease: 'none', door: null };
}

/** The nearest opening, or where none is drawn the nearest edge. */
function nearestWayOff(document: Document, from: Point, doors: readonly Door[]): Point {
  const platform = platformOf(document);
  const ways =
    doors.length > 0
      ? doors.map((door) => along(doorway(platform, door), 0.5))
      : platform.outline.map((_, index) => {
          const { a, b } = edgeOf(platform, index);
          return nearestOnSegment(from, a, b);
        });
  return ways.reduce<Point>(
    (best, spot) =>
      Math.hypot(spot.x - from.x, spot.y - from.y) < Math.hypot(best.x - from.x, best.y - from.y)
        ? spot
        : best,
    ways[0] ?? from,
  );
}

function isOnPlatform(document: Document, point: Point): boolean {
  return depthInPolygon(point, platformOf(document).outline) > 0;
}
