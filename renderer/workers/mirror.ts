/** Keeps a copy of the document in a worker by sending only the records that changed. */

import type { Document } from '#model/document/document.ts';
import type { AnyRecord } from '#model/document/records.ts';

export interface RecordChanges {
  readonly put: readonly AnyRecord[];
  readonly drop: readonly string[];
}

/** What turns the records of `from` into those of `to`. Records are immutable, so sameness is identity. */
export function changesBetween(from: Document['records'], to: Document['records']): RecordChanges {
  const put: AnyRecord[] = [];
  const drop: string[] = [];
  for (const [id, record] of to) if (from.get(id) !== record && !isLeftOut(record)) put.push(record);
  for (const id of from.keys()) if (!to.has(id)) drop.push(id);
  return { put, drop };
}

/** No worker looks at underlays, and they are large. */
function isLeftOut({ kind }: AnyRecord): boolean {
  return kind === 'underlay';
}

export function withChanges(records: Document['records'], { put, drop }: RecordChanges): Document['records'] {
  const next = new Map(records);
  for (const record of put) next.set(record.id, record);
  for (const id of drop) next.delete(id);
  return next;
}

const HOUSE_KINDS: readonly string[] = ['platform', 'seatBlock', 'place'];

/** Whether the places of the house may have moved. `before` are the records that `changes` apply to. */
export function touchesHouse(before: Document['records'], { put, drop }: RecordChanges): boolean {
  return (
    put.some((record) => HOUSE_KINDS.includes(record.kind)) ||
    drop.some((id) => HOUSE_KINDS.includes(before.get(id)?.kind ?? ''))
  );
}
