/** A black box: one plays on the floor before a steep retractable rake. */

import { HOUSE_PRACTICE, type VenueModel } from './model.ts';
import { door, place, platform, rectangularPlatform, seats } from './parts.ts';

export const studio: VenueModel = {
  id: 'studio',
  name: 'Studio',
  summary: '84 seats on a steep rake before a playing area of 9 by 6 m on the floor.',
  seats: 84,
  source: HOUSE_PRACTICE,
  records: () => [
    platform(rectangularPlatform(9000, 6000), 0, []),
    door('door-1', 'Get-in', { edge: 2, offset: 5800, width: 1800 }),
    seats('rake', 'Rake', { rows: 6, seatsPerRow: 14, y: -1800, rowDepth: 850, riser: 250, staggered: true }),
    place('place-1', 'Wheelchair place', 'wheelchair', { x: 4600, y: -1800 }),
  ],
};
