/** A nave with columns and pews; one plays on the chancel floor, three steps up. */

import { t } from '../../words/say.ts';
import { HOUSE_PRACTICE, type VenueModel } from './model.ts';
import { column, door, place, platform, seats } from './parts.ts';

const CHANCEL = [
  { x: -3600, y: 0 },
  { x: 3600, y: 0 },
  { x: 3600, y: 3200 },
  { x: 2400, y: 5200 },
  { x: -2400, y: 5200 },
  { x: -3600, y: 3200 },
];

const PEWS = { rows: 12, seatsPerRow: 6, seatPitch: 500, y: -2600, eyeHeight: 1180 };

export const churchChancel: VenueModel = {
  id: 'church-chancel',
  get name() {
    return t`Church chancel`;
  },
  get summary() {
    return t`A chancel of 7.2 by 5.2 m, 450 mm up, before pews for 144 on both sides of a nave with six columns.`;
  },
  seats: 144,
  source: HOUSE_PRACTICE,
  records: () => [
    platform(CHANCEL, 450, [0]),
    door('door-1', t`Vestry door`, { edge: 1, offset: 1600, width: 900 }),
    door('door-2', t`Chancel steps`, { edge: 0, offset: 2600, width: 2000, stepFree: false }),
    seats('pews-right', t`Pews, stage right`, { ...PEWS, x: -2300 }),
    seats('pews-left', t`Pews, stage left`, { ...PEWS, x: 2300 }),
    place('place-1', t`Wheelchair place`, 'wheelchair', { x: 0, y: -3000 }),
    ...[-1500, -5500, -9500].flatMap((y, pair) => [
      column(`column-${2 * pair + 1}`, { x: -4300, y }, 300, 6000),
      column(`column-${2 * pair + 2}`, { x: 4300, y }, 300, 6000),
    ]),
  ],
};
