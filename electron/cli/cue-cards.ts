/** Cue cards beside what `turns` tells. */

import { resolve } from 'node:path';
import type { PlannedPaper } from '#model/drawing/cards/order.ts';
import { faultOf } from '../services/faults.ts';
import { printPlanned } from '../services/planned-print.ts';
import { usualPaper } from './planned-booklet.ts';
import { isSameFile, savePrint } from './printed-file.ts';
import type { Surroundings } from './surroundings.ts';
import { UsageError, type TurnsOrder } from './usage.ts';

/** Saved if they were asked for and there is a plan; what there is to remark on it. Throws `UsageError`. */
export async function saveCards(
  { cards, paper, file }: Pick<TurnsOrder, 'cards' | 'paper' | 'file'>,
  planned: PlannedPaper | null,
  { fs, now }: Surroundings,
): Promise<readonly string[]> {
  if (cards === null || planned === null) return [];
  const out = resolve(cards);
  if (await isSameFile(fs, out, resolve(file)))
    throw new UsageError('--cards is the FILE itself; give another name');
  const { bytes, notes } = await printPlanned({
    ...planned,
    parts: new Map(),
    booklets: [],
    cards: (paper ?? usualPaper(planned.document)).toLowerCase(),
    now: now(),
  });
  const { warning } = await savePrint(fs, out, bytes).catch((error: unknown) => {
    throw new UsageError(faultOf(error, out).message);
  });
  return warning ? [...notes, warning] : notes;
}
