/** Seats on three sides of a low platform. */

import { t } from '../../words/say.ts';
import { HOUSE_PRACTICE, type VenueModel } from './model.ts';
import { door, place, platform, rectangularPlatform, seats } from './parts.ts';

const SIDE = { rows: 4, seatsPerRow: 8, y: 3000, riser: 200 };

export const thrustRoom: VenueModel = {
  id: 'thrust-room',
  get name() {
    return t`Room with seats on three sides`;
  },
  get summary() {
    return t`136 seats round a platform of 7 by 6 m, 300 mm high.`;
  },
  seats: 136,
  source: HOUSE_PRACTICE,
  records: () => [
    platform(rectangularPlatform(7000, 6000), 300, [0, 1, 3]),
    door('door-1', t`Door behind the platform`, { edge: 2, offset: 3000 }),
    seats('front', t`Front`, { rows: 6, seatsPerRow: 12, y: -1800, riser: 150 }),
    // Looking at stage left and stage right: the rows lie at the sides of the platform.
    seats('side-right', t`Side, stage right`, { ...SIDE, x: -5200, facing: 90 }),
    seats('side-left', t`Side, stage left`, { ...SIDE, x: 5200, facing: -90 }),
    place('place-1', t`Wheelchair place`, 'wheelchair', { x: 4200, y: -1800 }),
  ],
};
