/** A high stage at the end of a sports-hall floor. */

import { t } from '../../words/say.ts';
import { HOUSE_PRACTICE, type VenueModel } from './model.ts';
import { door, place, platform, rectangularPlatform, seats } from './parts.ts';

export const schoolHall: VenueModel = {
  id: 'school-hall',
  get name() {
    return t`School hall`;
  },
  get summary() {
    return t`240 chairs in two blocks on a flat floor before a stage of 9 by 5 m, 900 mm high.`;
  },
  seats: 240,
  source: HOUSE_PRACTICE,
  records: () => [
    platform(rectangularPlatform(9000, 5000), 900, [0]),
    door('door-1', t`Wing, stage left`, { edge: 1, offset: 3000, stepFree: false }),
    door('door-2', t`Wing, stage right`, { edge: 3, offset: 1000, stepFree: false }),
    seats('stalls', t`Chairs`, {
      rows: 15,
      seatsPerRow: 16,
      seatPitch: 500,
      y: -3000,
      aisles: [{ afterSeat: 8, width: 1000 }],
    }),
    place('place-1', t`Wheelchair place`, 'wheelchair', { x: -5600, y: -3000 }),
    place('camera-1', t`Camera at the back`, 'camera', { x: 0, y: -17500 }),
  ],
};
