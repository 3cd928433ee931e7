/** House types to begin with: a platform, its doors, the seats, and what stands in the way. */

import { churchChancel } from './houses/church-chancel.ts';
import { drawingRoom } from './houses/drawing-room.ts';
import type { VenueModel } from './houses/model.ts';
import { recitalRoom } from './houses/recital-room.ts';
import { schoolHall } from './houses/school-hall.ts';
import { smallConcertHall } from './houses/small-concert-hall.ts';
import { studio } from './houses/studio.ts';
import { thrustRoom } from './houses/thrust-room.ts';
import { finder } from './sources.ts';

export type { HouseRecord, VenueModel } from './houses/model.ts';

export const VENUE_MODELS: readonly VenueModel[] = [
  recitalRoom,
  smallConcertHall,
  churchChancel,
  schoolHall,
  studio,
  drawingRoom,
  thrustRoom,
];

export const venueModel = finder(VENUE_MODELS);
