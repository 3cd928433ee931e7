/** What of a record it is that hides somebody: of a block of seats its heads or its rail. */

import type { Document } from '../../document/document.ts';
import { t } from '../../words/say.ts';
import { HEAD } from '../scene/house.ts';
import type { Scene, Target } from '../scene.ts';
import { visibleShares } from './visible-shares.ts';

/** `self`: the thing as such. */
export type CoverPart = 'heads' | 'rail' | 'self';

/** Of heads and rail the one that hides more of the target over the house by itself. */
export function coverPartOf(document: Document, scene: Scene, target: Target, record: string): CoverPart {
  const kind = document.records.get(record)?.kind;
  if (kind !== 'seatBlock' && kind !== 'place') return 'self';
  const mine = scene.occluders.filter((occluder) => occluder.record === record);
  const seenPast = (heads: boolean): number => {
    const occluders = mine.filter(({ id }) => id.startsWith(HEAD) === heads);
    return visibleShares({ seats: scene.seats, targets: [target], occluders }).reduce(
      (sum, share) => sum + share,
      0,
    );
  };
  return seenPast(true) <= seenPast(false) ? 'heads' : 'rail';
}

/** "heads in Stalls", "the rail of Balcony", or the label alone. */
export function coverName(part: CoverPart, label: string): string {
  if (part === 'heads') return t`heads in ${label}`;
  return part === 'rail' ? t`the rail of ${label}` : label;
}
