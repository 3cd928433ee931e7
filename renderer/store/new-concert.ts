/** An empty concert in a house of the catalogue. */

import type { VenueModel } from '#model/catalogue/venues.ts';
import { documentOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { Units } from '#model/document/measures.ts';
import type { Concert, Setup } from '#model/document/records.ts';

/** The tool's own cautions to begin with; the director sets his own. Widths: 36 in is a usual clear way. */
const LIMITS: Concert['limits'] = { seesWell: 0.9, houseShare: 0.75, edgeDistance: 600, routeWidth: 915 };

export function newConcert(venue: VenueModel, units: Units): Document {
  const concert: Concert = {
    id: asId('concert-1'),
    kind: 'concert',
    name: '',
    venue: venue.name,
    date: '',
    revision: '',
    author: '',
    units,
    headsInFront: false,
    limits: LIMITS,
    contacts: [],
    views: [],
  };
  const setup: Setup = {
    id: asId('setup-1'),
    kind: 'setup',
    name: '',
    order: 1,
    notes: '',
    needNotSee: [],
    variantOf: null,
    changeTime: null,
  };
  return documentOf([concert, setup, ...venue.records()]);
}
