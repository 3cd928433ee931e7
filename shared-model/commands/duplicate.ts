/** Makes more of what is there. */

import type { Document } from '../document/document.ts';
import { wholeGroupsAmong } from '../document/groups.ts';
import type { Id } from '../document/ids.ts';
import type { AnyRecord, Instrument, Kind, Millimetres, Point } from '../document/records.ts';
import { t } from '../words/say.ts';
import { copiesOf, type Copies } from './clone.ts';
import type { Command } from './command.ts';
import { editsOf, propose } from './propose.ts';
import { tidy } from './spots.ts';
import { positioned, type Movable } from './targets.ts';
import { namesOf } from './words.ts';

export interface Duplicate {
  readonly ids: readonly string[];
  /** From the originals to the copies. */
  readonly dx: Millimetres;
  readonly dy: Millimetres;
}

/**
 * Copies of items, seat blocks or places, beside the originals. The instruments of a copied player come along. A
 * copied stand keeps its reader only when he is copied too: the copy, then, reads it. Of a whole group the copies are one, too;
 * copies are never locked or hidden.
 */
export const duplicate: Command<Duplicate> = (document, { ids, dx, dy }) => {
  const targets = positioned(document, ids);
  if (!targets.ok) return targets;
  const originals = [
    ...targets.records,
    ...instrumentsOf(document, targets.records),
    ...wholeGroupsAmong(document, ids),
  ];
  const copies = copiesOf(document, originals, <K extends Kind>(id: Id<K>) =>
    document.records.get(id)?.kind === 'setup' ? id : null,
  );
  const names = namesOf(document, targets.records);
  return propose(document, editsOf(copies.records.map((record) => shifted(record, { x: dx, y: dy }))), {
    label: t`duplicate ${names}`,
    select: selectionOf(targets.records, copies),
  });
};

function instrumentsOf(document: Document, owners: readonly Movable[]): Instrument[] {
  const players = new Set(owners.map(({ id }) => id as string));
  return [...document.records.values()].filter(
    (record): record is Instrument => record.kind === 'instrument' && players.has(record.player),
  );
}

function selectionOf(originals: readonly Movable[], { ids }: Copies): string[] {
  return originals.flatMap(({ id }) => ids.get(id) ?? []);
}

/** Moves a copy as a whole, its cable with it: there is no socket yet that it would be plugged into. */
function shifted(record: AnyRecord, by: Point): AnyRecord {
  if (!('x' in record)) return record;
  const shift = ({ x, y }: Point): Point => ({ x: tidy(x + by.x), y: tidy(y + by.y) });
  if (record.kind !== 'lamp') return { ...record, ...shift(record) };
  return { ...record, ...shift(record), cable: record.cable.map(shift) };
}
