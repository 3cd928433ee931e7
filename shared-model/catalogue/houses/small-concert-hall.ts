/** A raked hall with a balcony over its back rows. */

import { t } from '../../words/say.ts';
import { HOUSE_PRACTICE, type VenueModel } from './model.ts';
import { door, place, platform, seats } from './parts.ts';

const PLATFORM = [
  { x: -6000, y: 0 },
  { x: 6000, y: 0 },
  { x: 5200, y: 7500 },
  { x: -5200, y: 7500 },
];

const AISLES = [
  { afterSeat: 5, width: 1100 },
  { afterSeat: 17, width: 1100 },
];

export const smallConcertHall: VenueModel = {
  id: 'small-concert-hall',
  get name() {
    return t`Small concert hall`;
  },
  get summary() {
    return t`396 seats: 308 in raked stalls and 88 in a balcony, before a platform of 12 by 7.5 m, 800 mm high.`;
  },
  seats: 396,
  source: HOUSE_PRACTICE,
  records: () => [
    platform(PLATFORM, 800, [0]),
    door('door-1', t`Platform door, stage left`, { edge: 1, offset: 4800, width: 1200 }),
    door('door-2', t`Platform door, stage right`, { edge: 3, offset: 1500, width: 1200 }),
    seats('stalls', t`Stalls`, {
      rows: 14,
      seatsPerRow: 22,
      seatPitch: 530,
      rowDepth: 920,
      riser: 100,
      y: -3200,
      aisles: AISLES,
      staggered: true,
    }),
    seats('balcony', t`Balcony`, {
      rows: 4,
      seatsPerRow: 22,
      seatPitch: 530,
      rowDepth: 950,
      riser: 350,
      floor: 4200,
      y: -12500,
      aisles: AISLES,
      frontRail: 1100,
    }),
    place('place-1', t`Wheelchair place, stage right`, 'wheelchair', { x: -8000, y: -4100 }),
    place('place-2', t`Wheelchair place, stage left`, 'wheelchair', { x: 8000, y: -4100 }),
    place('camera-1', t`Camera in the balcony`, 'camera', { x: 0, y: -16600, floor: 5600 }),
  ],
};
