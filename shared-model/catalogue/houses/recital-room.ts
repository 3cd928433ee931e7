/** A flat room with a low platform at one end. */

import { t } from '../../words/say.ts';
import { HOUSE_PRACTICE, RECITAL_PLATFORM, type VenueModel } from './model.ts';
import { door, place, platform, rectangularPlatform, seats } from './parts.ts';

export const recitalRoom: VenueModel = {
  id: 'recital-room',
  get name() {
    return t`Recital room`;
  },
  get summary() {
    return t`180 chairs on a flat floor before a platform of 8.4 by 5.6 m, 650 mm high.`;
  },
  seats: 180,
  source: HOUSE_PRACTICE,
  sourceOf: { platform: RECITAL_PLATFORM },
  records: () => [
    platform(rectangularPlatform(8400, 5600), 650, [0]),
    door('door-1', t`Door to the green room`, { edge: 2, offset: 600 }),
    door('door-2', t`Steps to the house`, { edge: 3, offset: 4200, stepFree: false }),
    seats('stalls', t`Stalls`, {
      rows: 10,
      seatsPerRow: 18,
      y: -2400,
      aisles: [{ afterSeat: 9, width: 680 }],
      staggered: true,
    }),
    place('place-1', t`Wheelchair place, stage right`, 'wheelchair', { x: -6200, y: -2400 }),
    place('place-2', t`Wheelchair place, stage left`, 'wheelchair', { x: 6200, y: -2400 }),
  ],
};
