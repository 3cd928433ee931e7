/** The things of a setup one by one, as a crew carries them: a back-to-back pair is two stands, a player's chair is one. */

import { chairOutline, outlineOf } from '../catalogue/outlines.ts';
import { desksOf } from '../document/desks.ts';
import { placedInSetup, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { floorHeightAt } from '../document/levels.ts';
import type { Degrees, Lamp, Millimetres, Piano, PlacedRecord, Point, Stand } from '../document/records.ts';
import { normaliseFacing } from '../geometry/frame.ts';
import { convexHull } from '../geometry/convex-hull.ts';
import { boundsOf, forEachEdge, type Polygon } from '../geometry/polygon.ts';
import { turn } from '../geometry/segments.ts';
import { interchangeKey, thingOf, type Thing } from './thing.ts';

export interface Unit {
  /** Once in its setup: the record's id, with the side of a pair behind it. */
  readonly id: string;
  readonly record: PlacedRecord;
  readonly thing: Thing;
  /** Units of one key can stand in for each other. */
  readonly key: string;
  readonly spot: Spot;
  readonly outline: Polygon;
  readonly settings: Settings;
}

export interface Spot extends Point {
  readonly facing: Degrees;
  /** Height of the floor it stands on above the platform's. */
  readonly level: Millimetres;
}

/** What is set on a thing once it stands. */
export interface Settings {
  readonly lip?: Millimetres;
  readonly tilt?: Degrees;
  /** Of a seat, a lamp or an instrument stand. */
  readonly height?: Millimetres;
  readonly lid?: Piano['lid'];
  readonly cable?: Lamp['cable'];
}

/** What stands in this setup only and is carried; what stays for the whole concert is not among it. */
export function unitsOf(document: Document, setup: Id<'setup'>): Unit[] {
  return placedInSetup(document, setup)
    .filter((record) => record.setup === setup)
    .flatMap((record) => unitsOfRecord(record, (point) => floorHeightAt(document, setup, point)));
}

/** What stays for the whole concert, as units: it is counted, but not carried between setups. */
export function stayingUnits(document: Document, setup: Id<'setup'>): Unit[] {
  return placedInSetup(document, setup)
    .filter((record) => record.setup === null)
    .flatMap((record) => unitsOfRecord(record, (point) => floorHeightAt(document, setup, point)));
}

/** Everything that a crew finds on the platform in this setup, chairs of players too; nothing that belongs to the building. */
export function thingsStanding(document: Document, setup: Id<'setup'>): number {
  return unitsOf(document, setup).length + stayingUnits(document, setup).length;
}

function unitsOfRecord(record: PlacedRecord, levelAt: (point: Point) => Millimetres): Unit[] {
  const thing = thingOf(record);
  if (!thing) return [];
  if (record.kind === 'stand' && record.form === 'backToBack') return pairOf(record, thing, levelAt);
  const outline = (record.kind === 'player' ? chairOutline(record) : null) ?? outlineOf(record);
  const level = record.kind === 'riser' ? 0 : levelAt(record);
  const { id, x, y, facing } = record;
  return [
    {
      id,
      record,
      thing,
      outline,
      key: interchangeKey(record),
      spot: { x, y, facing, level },
      settings: settingsOf(record),
    },
  ];
}

/** Each desk of a pair is a stand by itself, its middle where that of a single one would be measured. */
function pairOf(pair: Stand, thing: Thing, levelAt: (point: Point) => Millimetres): Unit[] {
  return desksOf(pair).map(({ board: [a, , c], sideIndex }) => {
    const at = { x: (a.x + c.x) / 2, y: (a.y + c.y) / 2 };
    const facing = normaliseFacing(pair.facing + 180 * sideIndex);
    const single: Stand = { ...pair, ...at, facing, form: 'single', sides: [pair.sides[0]] };
    return {
      id: `${pair.id}/${sideIndex + 1}`,
      record: pair,
      thing,
      key: interchangeKey(pair),
      spot: { ...at, facing, level: levelAt(at) },
      outline: outlineOf(single),
      settings: settingsOf(pair),
    };
  });
}

function settingsOf(record: PlacedRecord): Settings {
  switch (record.kind) {
    case 'player':
      return record.chair ? { height: record.chair.height } : {};
    case 'stand':
      return { lip: record.lip, tilt: record.tilt };
    case 'seat':
    case 'instrumentStand':
      return { height: record.height };
    case 'lamp':
      return { height: record.height, cable: record.cable };
    case 'piano':
      return { lid: record.lid };
    default:
      return {};
  }
}

/** The least room that it needs on its way: how wide its outline is where it is narrowest. */
export function girthOf({ outline }: Unit): Millimetres {
  let least = Infinity;
  forEachEdge(convexHull(outline), (a, b) => {
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    // The hull is narrowest square to one of its edges, all of it on one side of that.
    const width = outline.reduce((most, corner) => Math.max(most, turn(a, b, corner) / length), 0);
    least = Math.min(least, width);
  });
  return Number.isFinite(least) ? least : 0;
}

/** Larger than this on plan or higher than this, an object takes two. Common practice, no source. */
const [LARGE_AREA, LARGE_HEIGHT] = [0.5e6, 1500];
const LONG_TABLE: Millimetres = 1200;

/** How many carry it: pianos, large instruments, risers and large objects by both. Common practice, no source. */
export function carriersOf({ record }: Pick<Unit, 'record'>): 1 | 2 {
  switch (record.kind) {
    case 'piano':
    case 'largeInstrument':
    case 'riser':
      return 2;
    case 'table':
      return record.width > LONG_TABLE ? 2 : 1;
    case 'shape': {
      const { minX, maxX, minY, maxY } = boundsOf(record.outline);
      return (maxX - minX) * (maxY - minY) > LARGE_AREA || record.height > LARGE_HEIGHT ? 2 : 1;
    }
    default:
      return 1;
  }
}

/** Whether it goes on its wheels, or on a dolly. Common practice, no source. */
export function isRolled({ record }: Pick<Unit, 'record'>): boolean {
  return record.kind === 'piano' || record.kind === 'largeInstrument';
}
