/** A black box: one plays on the floor before a steep retractable rake. */

import { t } from '../../words/say.ts';
import { HOUSE_PRACTICE, type VenueModel } from './model.ts';
import { door, place, platform, rectangularPlatform, seats } from './parts.ts';

export const studio: VenueModel = {
  id: 'studio',
  get name() {
    return t`Studio`;
  },
  get summary() {
    return t`84 seats on a steep rake before a playing area of 9 by 6 m on the floor.`;
  },
  seats: 84,
  source: HOUSE_PRACTICE,
  records: () => [
    platform(rectangularPlatform(9000, 6000), 0, []),
    door('door-1', t`Get-in`, { edge: 2, offset: 5800, width: 1800 }),
    seats('rake', t`Rake`, {
      rows: 6,
      seatsPerRow: 14,
      y: -1800,
      rowDepth: 850,
      riser: 250,
      staggered: true,
    }),
    place('place-1', t`Wheelchair place`, 'wheelchair', { x: 4600, y: -1800 }),
  ],
};
