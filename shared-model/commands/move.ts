/** Moves items on the plan. */

import { platformOf, type Document } from '../document/document.ts';
import { formatLength, type Units } from '../document/measures.ts';
import { isPlaced, type AnyRecord, type Millimetres, type Point } from '../document/records.ts';
import { depthInPolygon } from '../geometry/polygon.ts';
import { t } from '../words/say.ts';
import { refuseInUnits, type Command } from './command.ts';
import { editsOf, propose } from './propose.ts';
import { movedTo } from './spots.ts';
import { movables } from './targets.ts';
import { nameOf, namesOf } from './words.ts';

export interface Move {
  readonly ids: readonly string[];
  /** Towards stage left. */
  readonly dx: Millimetres;
  /** Upstage. */
  readonly dy: Millimetres;
}

/** Moves all of them by the same way. By nothing: an empty diff. */
export const move: Command<Move> = (document, { ids, dx, dy }) => {
  const targets = movables(document, ids);
  if (!targets.ok) return targets;
  const moved = targets.records.map((record) => movedTo(record, { x: record.x + dx, y: record.y + dy }));
  return propose(document, editsOf(moved), { label: moving(document, targets.records) });
};

export interface PlaceAt extends Point {
  readonly id: string;
}

/** How far off the platform a thing may be put by its figures: farther is a slip of the fingers. Common practice, no source. */
export const FARTHEST_ITEM: Millimetres = 50_000;

/** The same for seats and places of the house; halls and open-air grounds reach much farther than things. */
export const FARTHEST_PLACE: Millimetres = 200_000;

/** Puts one item at an exact spot, which must not be farther off the platform than anybody means. */
export const placeAt: Command<PlaceAt> = (document, { id, x, y }) => {
  const targets = movables(document, [id]);
  if (!targets.ok) return targets;
  const [record] = targets.records;
  const limit = isPlaced(record) ? FARTHEST_ITEM : FARTHEST_PLACE;
  const far = distanceToPlatform(document, { x, y });
  // What a file holds from before may be farther off; it can always be brought nearer.
  if (far > limit && far > distanceToPlatform(document, record)) {
    return refuseInUnits((units) => tooFarWords(nameOf(document, record), limitWords(limit, units)));
  }
  return propose(document, editsOf([movedTo(record, { x, y })]), {
    label: moving(document, targets.records),
  });
};

function moving(document: Document, records: readonly AnyRecord[]): string {
  const names = namesOf(document, records);
  return t`move ${names}`;
}

/** In feet and inches the limit is no round figure. */
function limitWords(limit: Millimetres, units: Units): string {
  const length = formatLength(limit, units);
  return units === 'metric' ? length : t`about ${length}`;
}

/** `limit`: a length with its unit. */
function tooFarWords(name: string, limit: string): string {
  return t`${name} would be more than ${limit} from the platform; give a spot nearer to it.`;
}

function distanceToPlatform(document: Document, spot: Point): Millimetres {
  return Math.max(0, -depthInPolygon(spot, platformOf(document).outline));
}
