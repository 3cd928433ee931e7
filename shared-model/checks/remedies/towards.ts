/** Moves of two things towards each other, and apart. */

import type { PlacedRecord, Point } from '../../document/records.ts';
import { facingTowards, facingVector, type Vec2 } from '../../geometry/frame.ts';
import type { Remedy } from '../finding.ts';
import type { Attempt } from './attempt.ts';
import { moveOne, waysOf } from './ways.ts';

/** Away from the straight line, degrees: something may stand there. */
const ASIDE = [0, -15, 15, -30, 30, -45, 45, -60, 60];
const COARSE = 100;
/** Nothing is brought from farther, mm. */
const FARTHEST = 3000;
/** Nor sent farther away: it would be another place for it. */
const FARTHEST_APART = 1000;

/** The shortest move of `item` towards `other`, and no farther than there. */
export function moveTowards(item: PlacedRecord, other: Point, attempt: Attempt): Remedy | null {
  const most = Math.min(FARTHEST, Math.hypot(other.x - item.x, other.y - item.y));
  return moveAlong(item, { straight: facingTowards(item, other), most }, attempt);
}

/** The shortest move of `item` away from `other`. */
export function moveApart(item: PlacedRecord, other: Point, attempt: Attempt): Remedy | null {
  return moveAlong(item, { straight: facingTowards(other, item), most: FARTHEST_APART }, attempt);
}

interface Course {
  readonly straight: number;
  readonly most: number;
}

function moveAlong({ id }: PlacedRecord, { straight, most }: Course, attempt: Attempt): Remedy | null {
  const direction = (aside: number): Vec2 => facingVector(straight + aside);
  return moveOne(waysOf([id], ASIDE.map(direction)), { coarse: COARSE, most }, attempt);
}
