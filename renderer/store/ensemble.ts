/** A whole ensemble set down at once: players with their instruments, seats and stands, in a shape that fits the platform. */

import type { Fashion } from '#model/arrange/fashions.ts';
import type { Member } from '#model/arrange/instrument-words.ts';
import { addRecords } from '#model/commands/add.ts';
import { refuse, type Outcome } from '#model/commands/command.ts';
import type { Document } from '#model/document/document.ts';
import { text } from '../app/text.ts';
import { ensembleOnPlatform } from './ensemble-places.ts';
import type { EnsembleOrder } from './ensemble-records.ts';

/** Everybody in one step, in the usual fashion or in this one; refused where they do not go on the platform so. */
export function addEnsemble(
  document: Document,
  members: readonly Member[],
  order: EnsembleOrder,
  fashion?: Fashion,
): Outcome {
  const set = ensembleOnPlatform(document, members, order, fashion);
  if (!set) return refuse(text.toPlace.noRoom);
  const outcome = addRecords(document, { records: set.records });
  const label = text.toPlace.addedPlayers(members.length);
  return outcome.ok ? { ...outcome, label, select: set.players } : outcome;
}
