/** One instrument as a row of a table. */

import { instrumentName } from '../../document/instrument-words.ts';
import type { Millimetres } from '../../document/records.ts';
import type { Hands, HeldBox, InstrumentFamily, InstrumentModel } from './model.ts';
import { COMMON_PRACTICE } from '../sources.ts';

interface Row {
  readonly playing?: Hands;
  readonly free: Hands;
  /** Elbow room beyond the left and the right shoulder. */
  readonly room: readonly [left: Millimetres, right: Millimetres];
  readonly ahead: Millimetres;
  readonly down?: Millimetres;
  readonly held?: HeldBox;
}

/** Makes the rows of one family; nobody publishes these figures, so each says that it is common practice. */
export function rowsOf(family: InstrumentFamily) {
  return (id: string, row: Row): InstrumentModel => ({
    id,
    get name() {
      return instrumentName(id);
    },
    family,
    playing: row.playing ?? 'both',
    freeInRest: row.free,
    elbowRoom: { left: row.room[0], right: row.room[1] },
    ahead: row.ahead,
    showsDownTo: row.down ?? 0,
    held: row.held ?? null,
    source: COMMON_PRACTICE,
  });
}
