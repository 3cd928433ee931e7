/** A document without most of what stands on the platform: what a check of two things has to look at. */

import type { Document } from '../../document/document.ts';
import { isPlaced, type Limits } from '../../document/records.ts';

/** Keeps the venue, levels, instruments, and of all other items those of these ids. */
export function excerpt({ records }: Document, ids: readonly string[]): Document {
  const kept = [...records].filter(([id, record]) =>
    isPlaced(record) ? record.kind === 'riser' || ids.includes(id) : record.kind !== 'group',
  );
  return { records: new Map(kept) };
}

/** With other limits, so that a check says what it measures also where nothing is wrong. */
export function withLimits({ records }: Document, limits: Partial<Limits>): Document {
  return {
    records: new Map(
      [...records].map(([id, record]) => [
        id,
        record.kind === 'concert' ? { ...record, limits: { ...record.limits, ...limits } } : record,
      ]),
    ),
  };
}
