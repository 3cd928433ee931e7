/** Puts the concert into another house, of the catalogue or made by its user. */

import { venueModel } from '../catalogue/venues.ts';
import type { HouseRecord, VenueModel } from '../catalogue/venues.ts';
import type { Document } from '../document/document.ts';
import { concertOf } from '../document/document.ts';
import type { AnyRecord } from '../document/records.ts';
import { t } from '../words/say.ts';
import { refuse, type Command } from './command.ts';
import { freshIds } from './fresh-id.ts';
import { propose } from './propose.ts';
import { removalOf } from './remove.ts';

export interface ReplaceVenue {
  /** Id of a venue model. */
  readonly venue: string;
}

export const replaceVenue: Command<ReplaceVenue> = (document, { venue }) => {
  const house = venueModel(venue);
  return house ? replaceHouse(document, { house }) : refuse(t`The catalogue has no venue "${venue}".`);
};

export interface ReplaceHouse {
  readonly house: Pick<VenueModel, 'name' | 'records'>;
}

/** Platform, doors, seats, places and the building's own objects are exchanged; what the setups hold stays. */
export const replaceHouse: Command<ReplaceHouse> = (document, { house }) => {
  const edits = new Map<string, AnyRecord | null>();
  // A column of the old house leaves the group that it was in.
  const left = [...document.records.values()].filter(isOfTheHouse);
  for (const [id, record] of removalOf(document, left)) edits.set(id, record);
  for (const record of underFreeIds(document, house.records())) edits.set(record.id, record);
  const concert = concertOf(document);
  edits.set(concert.id, { ...concert, venue: house.name });
  const label = house.name ? t`change the venue to ${house.name}` : t`change the venue`;
  return propose(document, edits, { label, select: [] });
};

function isOfTheHouse(record: AnyRecord): record is HouseRecord {
  switch (record.kind) {
    case 'platform':
    case 'door':
    case 'seatBlock':
    case 'place':
      return true;
    case 'shape':
      return record.fixed && record.setup === null;
    default:
      return false;
  }
}

/** The model's own ids where nothing that stays has them. */
function underFreeIds(document: Document, records: readonly HouseRecord[]): HouseRecord[] {
  const fresh = freshIds(
    document,
    records.map(({ id }) => id),
  );
  return records.map((record) => {
    const holder = document.records.get(record.id);
    return holder && !isOfTheHouse(holder) ? ({ ...record, id: fresh(record.kind) } as HouseRecord) : record;
  });
}
