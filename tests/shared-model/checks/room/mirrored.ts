/** A placed record as it stands in a mirror along the centre line: stage left becomes stage right. */

import type { PlacedRecord } from '#model/document/records.ts';

export function mirrored<R extends PlacedRecord>(record: R): R {
  const turned = { ...record, x: -record.x, facing: -record.facing };
  return turned.kind === 'shape'
    ? { ...turned, outline: turned.outline.map(({ x, y }) => ({ x: -x, y })).reverse() }
    : turned;
}
