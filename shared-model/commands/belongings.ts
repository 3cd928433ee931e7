/** What came with a player and is of use to nobody else, and how he is removed with it. */

import { allOf, type Document } from '../document/document.ts';
import { isLocked } from '../document/groups.ts';
import type { InstrumentStand, Stand } from '../document/records.ts';
import { t } from '../words/say.ts';
import type { Proposal, Refusal } from './command.ts';
import { remove, type Remove } from './remove.ts';
import { recordsOf } from './targets.ts';
import { namesOf } from './words.ts';

export type Belonging = Stand | InstrumentStand;

/** As `Proposal`, with what goes although it was not asked for. */
export interface Removal extends Proposal {
  readonly along: readonly Belonging[];
}

/**
 * Stands at which nobody else reads, and instrument stands on which nobody else's instruments wait. What stays for the
 * whole concert goes only with players who do too. Tables, pianos and large instruments stay: they serve the house.
 */
export function belongingsOf(document: Document, players: readonly string[]): Belonging[] {
  const going = new Set(players);
  const isOnlyTheirs = ({ setup }: Belonging, users: readonly (string | null)[]): boolean => {
    const somebody = users.filter((id) => id !== null);
    if (somebody.length === 0 || !somebody.every((id) => going.has(id))) return false;
    return setup !== null || somebody.every((id) => isForWholeConcert(document, id));
  };
  const stands = allOf(document, 'stand').filter((stand) =>
    isOnlyTheirs(
      stand,
      stand.sides.map(({ reader }) => reader),
    ),
  );
  const instruments = allOf(document, 'instrument');
  const holders = allOf(document, 'instrumentStand').filter((holder) =>
    isOnlyTheirs(
      holder,
      instruments.flatMap(({ support, player }) => (support === holder.id ? [player] : [])),
    ),
  );
  return [...stands, ...holders];
}

function isForWholeConcert(document: Document, id: string): boolean {
  const record = document.records.get(id);
  return record?.kind === 'player' && record.setup === null;
}

/** Like `remove`, and in the same step what belonged only to the removed players and is not locked. */
export function removeWithBelongings(document: Document, { ids }: Remove): Removal | Refusal {
  const targets = recordsOf(document, ids);
  if (!targets.ok) return targets;
  const asked = new Set<string>(ids);
  const players = targets.records.filter(({ kind }) => kind === 'player').map(({ id }) => id);
  const along = belongingsOf(document, players).filter(({ id }) => !asked.has(id) && !isLocked(document, id));
  const outcome = remove(document, { ids: [...ids, ...along.map(({ id }) => id)] });
  if (!outcome.ok || along.length === 0) return outcome.ok ? { ...outcome, along } : outcome;
  const names = namesOf(document, targets.records);
  return { ...outcome, along, label: t`remove ${names} and what came along` };
}
