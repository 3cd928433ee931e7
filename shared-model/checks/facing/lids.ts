/** Tries whether eyes meet over a piano once its lid comes down. */

import { find, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightAt } from '../../document/levels.ts';
import type { Piano } from '../../document/records.ts';
import { eyesOf } from '../reading/eyes.ts';
import { pianoOccluders } from '../scene/furniture.ts';
import { eyeContact, solidsOf } from './blockers.ts';

type Lid = Piano['lid'];

const LOWER: Readonly<Record<Lid, readonly Lid[]>> = {
  closed: [],
  half: ['closed'],
  full: ['half', 'closed'],
};

/** The highest setting of the lid at which the piano no longer blocks the two; null: no piano, or none does. */
export function lidThatClears(
  document: Document,
  setup: Id<'setup'>,
  [a, b]: readonly [Id<'player'>, Id<'player'>],
  record: string,
): Lid | null {
  const piano = document.records.get(record);
  const [first, second] = [find(document, a), find(document, b)];
  if (piano?.kind !== 'piano' || !first || !second) return null;
  const floor = floorHeightAt(document, setup, piano);
  const eyes = [eyesOf(document, setup, first), eyesOf(document, setup, second)] as const;
  const clears = (lid: Lid): boolean =>
    eyeContact(solidsOf(pianoOccluders({ ...piano, lid }, floor)), [a, b], eyes).blockers.length === 0;
  return LOWER[piano.lid].find(clears) ?? null;
}
