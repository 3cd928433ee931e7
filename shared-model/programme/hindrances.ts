/** What has to be gone before something can be set, and what has to stand before something can stand on it. */

import { mayShareRoom } from '../checks/room/may-share.ts';
import { pointInPolygon } from '../geometry/polygon.ts';
import { polygonsOverlap } from '../geometry/polygon-pairs.ts';
import type { Unit } from './units.ts';

/**
 * Whether `leaving` has to be gone before `coming` can be where it goes. What goes together when it is set, as a lamp and
 * the stand that it is clipped to, does not go together while the one is about to be taken away.
 */
export function isInTheWay(leaving: Unit, coming: Unit): boolean {
  return polygonsOverlap(leaving.outline, coming.outline);
}

/** The same for what is turned or set anew where it stands: that stays, and another may be meant to go with it. */
export function isInTheWayInPlace(staying: Unit, coming: Unit): boolean {
  return !mayShareRoom(staying.record, coming.record) && isInTheWay(staying, coming);
}

/** Whether `upper` stands on `lower` (a level, or what a table-top stand stands on) or is clipped to it. */
export function restsOn(upper: Unit, lower: Unit): boolean {
  if (upper === lower || upper.thing.item === 'riser') return false;
  if (lower.thing.item === 'riser') return upper.spot.level > 0 && pointInPolygon(upper.spot, lower.outline);
  const isOver = polygonsOverlap(upper.outline, lower.outline);
  if (upper.thing.item === 'lamp' && lower.thing.item === 'stand') return isOver;
  const isTableTop = upper.thing.item === 'stand' && upper.thing.model === 'table-top';
  return isTableTop && FURNITURE.includes(lower.thing.item) && isOver;
}

const FURNITURE: readonly string[] = ['table', 'piano', 'largeInstrument'];
