/** Finds what a command is to work on, or says why it cannot. */

import type { Document } from '../document/document.ts';
import { isLocked } from '../document/groups.ts';
import { kindWord } from '../document/labels.ts';
import type {
  AnyRecord,
  Kind,
  PlacedRecord,
  Place,
  RecordOf,
  SeatBlock,
  Storage,
} from '../document/records.ts';
import { isPlaced } from '../document/records.ts';
import { t } from '../words/say.ts';
import { refuse, type Refusal } from './command.ts';
import { nameOf } from './words.ts';

/** What stands at a spot and can be moved. */
export type Movable = PlacedRecord | SeatBlock | Place | Storage;

/** What also looks somewhere and can be turned. */
export type Turnable = PlacedRecord | SeatBlock;

export type Targets<R> =
  { readonly ok: true; readonly records: readonly [R, ...R[]] } | (Refusal & { readonly records?: never });

/** The records of these ids, each once; at least one. */
export function recordsOf(document: Document, ids: readonly string[]): Targets<AnyRecord> {
  const found: AnyRecord[] = [];
  for (const id of new Set(ids)) {
    const record = document.records.get(id);
    if (!record) return refuse(t`There is no "${id}" any more.`);
    found.push(record);
  }
  const [first, ...rest] = found;
  return first ? { ok: true, records: [first, ...rest] } : refuse(t`Select something first.`);
}

/** What stands at a spot, locked or not. */
export function positioned(document: Document, ids: readonly string[]): Targets<Movable> {
  return narrowed(document, recordsOf(document, ids), isMovable, unmovableWords);
}

export function movables(document: Document, ids: readonly string[]): Targets<Movable> {
  return unlocked(document, positioned(document, ids));
}

export function turnables(document: Document, ids: readonly string[]): Targets<Turnable> {
  const targets = narrowed(document, recordsOf(document, ids), isTurnable, unturnableWords);
  return unlocked(document, targets);
}

/** Refuses as soon as one of them is locked, so that what was lined up by hand stays in line. */
export function unlocked<R extends AnyRecord>(document: Document, targets: Targets<R>): Targets<R> {
  const locked = targets.ok ? targets.records.find(({ id }) => isLocked(document, id)) : undefined;
  return locked ? refuse(lockedWords(nameOf(document, locked))) : targets;
}

function lockedWords(name: string): string {
  return t`${name} is locked; unlock it first.`;
}

function unmovableWords(name: string | null): string {
  return name === null ? t`This cannot be moved.` : t`${name} cannot be moved.`;
}

function unturnableWords(name: string | null): string {
  return name === null ? t`This cannot be turned.` : t`${name} cannot be turned.`;
}

/** The one record of this id and kind. */
export function theRecord<K extends Kind>(
  document: Document,
  id: string,
  kind: K,
): { readonly ok: true; readonly record: RecordOf<K> } | Refusal {
  const record = document.records.get(id);
  if (record?.kind !== kind) return refuse(goneWords(kindWord(kind), id));
  return { ok: true, record: record as RecordOf<K> };
}

function goneWords(what: string, id: string): string {
  return t`There is no ${what} "${id}" any more.`;
}

function narrowed<R extends AnyRecord>(
  document: Document,
  targets: Targets<AnyRecord>,
  fits: (record: AnyRecord) => record is R,
  problem: (name: string | null) => string,
): Targets<R> {
  if (!targets.ok) return targets;
  const [first, ...rest] = targets.records.filter(fits);
  const misfit = targets.records.find((record) => !fits(record));
  if (misfit || !first) return refuse(problem(misfit ? nameOf(document, misfit) : null));
  return { ok: true, records: [first, ...rest] };
}

function isMovable(record: AnyRecord): record is Movable {
  return isPlaced(record) || ['seatBlock', 'place', 'storage'].includes(record.kind);
}

function isTurnable(record: AnyRecord): record is Turnable {
  return isPlaced(record) || record.kind === 'seatBlock';
}
