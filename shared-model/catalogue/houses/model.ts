/** What the catalogue says of a house: its platform, its doors, where people sit, what stands in the way. */

import type { Door, Place, Platform, SeatBlock, Shape } from '../../document/records.ts';
import type { Model } from '../sources.ts';

export type HouseRecord = Platform | Door | SeatBlock | Place | Shape;

export interface VenueModel extends Model {
  /** One sentence for the chooser. */
  readonly summary: string;
  /** Seats in blocks; single places come on top. */
  readonly seats: number;
  /** Fresh records, exactly one of them a platform, with ids of their own that do not clash with each other. */
  readonly records: () => readonly HouseRecord[];
}

/** What most figures of the invented houses rest on. */
export const HOUSE_PRACTICE = 'an invented house of a usual kind; common practice, no source';

/** DG 1110-3-120 = UFC 4-740-08AN, Music and Drama Centers (1981), ch. 3: 37.2 to 55.7 m², 610 to 762 mm high. */
export const RECITAL_PLATFORM = 'US Army DG 1110-3-120 (UFC 4-740-08AN) ch. 3, recital platform';
