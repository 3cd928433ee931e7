/** A room in a house: chairs set in arcs round the players. */

import { t } from '../../words/say.ts';
import { HOUSE_PRACTICE, type VenueModel } from './model.ts';
import { door, platform, rectangularPlatform, seats } from './parts.ts';

export const drawingRoom: VenueModel = {
  id: 'drawing-room',
  get name() {
    return t`Drawing-room`;
  },
  get summary() {
    return t`42 chairs in arcs before a playing area of 5 by 3.5 m on the floor.`;
  },
  seats: 42,
  source: HOUSE_PRACTICE,
  records: () => [
    platform(rectangularPlatform(5000, 3500), 0, []),
    door('door-1', t`Double doors`, { edge: 3, offset: 1200, width: 1400 }),
    seats('chairs', t`Chairs`, {
      rows: 5,
      seatsPerRow: [6, 8, 8, 10, 10],
      y: -1500,
      seatPitch: 560,
      rowDepth: 850,
      curveRadius: 4500,
    }),
  ],
};
