/** What an item is called on the plot, in findings and in lists: "stand 3", or its name. */

import { find, inSetup, platformOf, programmeOf, type Document } from './document.ts';
import { asId, compareIds, type Id } from './ids.ts';
import type { AnyRecord, Kind } from './records.ts';
import { isPlaced } from './records.ts';
import { openingKind, type OpeningKind } from './openings.ts';
import { instrumentWord } from './instrument-words.ts';
import { t } from '../words/say.ts';

const KIND_WORDS: Readonly<Record<Kind, () => string>> = {
  concert: () => t`concert`,
  setup: () => t`setup`,
  score: () => t`score`,
  pagePlan: () => t`page plan`,
  platform: () => t`platform`,
  door: () => t`door`,
  seatBlock: () => t`seat block`,
  place: () => t`place`,
  storage: () => t`storage`,
  stock: () => t`stock`,
  underlay: () => t`underlay`,
  player: () => t`player`,
  instrument: () => t`instrument`,
  stand: () => t`stand`,
  instrumentStand: () => t`instrument stand`,
  table: () => t`table`,
  seat: () => t`seat`,
  piano: () => t`piano`,
  largeInstrument: () => t`large instrument`,
  lamp: () => t`lamp`,
  riser: () => t`riser`,
  shape: () => t`object`,
  group: () => t`group`,
};

export function kindWord(kind: Kind): string {
  return KIND_WORDS[kind]();
}

/**
 * Number of an item among its kind in the setup, from 1, in natural id order; 0 when it is not there. Setups are
 * numbered as in the programme, a variant as what it is a variant of.
 */
export function numberOf(document: Document, setup: Id<'setup'>, record: AnyRecord): number {
  if (record.kind === 'setup') {
    const played = record.variantOf ?? record.id;
    return programmeOf(document).findIndex(({ id }) => id === played) + 1;
  }
  return placeInOrder(inSetup(document, setup, record.kind), record.id) + 1;
}

/** Index of the record in a list in natural id order, by halving; -1 when it is not there. */
function placeInOrder(records: readonly AnyRecord[], id: string): number {
  let [low, high] = [0, records.length - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const order = compareIds(records[middle]?.id ?? '', id);
    if (order === 0) return middle;
    if (order < 0) low = middle + 1;
    else high = middle - 1;
  }
  return -1;
}

/** "stand 3": kind and number, the same on the plot and in the marks table. */
export function markOf(document: Document, setup: Id<'setup'>, record: AnyRecord): string {
  const word =
    record.kind === 'door'
      ? OPENING_WORDS[openingKind(platformOf(document), record)]()
      : kindWord(record.kind);
  return `${word} ${numberOf(document, setup, record)}`;
}

const OPENING_WORDS: Readonly<Record<OpeningKind, () => string>> = {
  door: () => t`door`,
  steps: () => t`steps`,
  ramp: () => t`ramp`,
};

/**
 * The name if it has one, with the mark behind it for things that are set: "Clarinet (player 1)", "stand 3". A carried
 * instrument without a name goes by its model, which says more than its number.
 */
export function labelOf(document: Document, setup: Id<'setup'>, id: string): string {
  const record = find(document, asId(id));
  if (!record) return id;
  if (record.kind === 'instrument') return record.name || instrumentWord(record.model);
  const mark = isPlaced(record) ? markOf(document, setup, record) : '';
  if (!record.name) return mark || markOf(document, setup, record);
  return mark ? `${record.name} (${mark})` : record.name;
}
