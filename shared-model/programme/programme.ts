/** The whole evening: the first set-up, what happens between the pieces, and the last strike. */

import { programmeOf, setupsOf, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import type { Setup } from '../document/records.ts';
import { changeover, type Changeover } from './changeover.ts';

export interface Part {
  readonly from: Setup | null;
  readonly to: Setup | null;
}

/** From nothing to the first setup, from each to the next, and from the last to nothing. */
export function partsOf(document: Document): Part[] {
  const setups = programmeOf(document);
  return [null, ...setups].map((from, index) => ({ from, to: setups[index] ?? null }));
}

export function changeoversOf(document: Document): Changeover[] {
  return partsOf(document).map(({ from, to }) => changeover(document, from?.id ?? null, to?.id ?? null));
}

/** What is played before and after this setup; a variant has the neighbours of what it is a variant of. */
export function neighboursOf(
  document: Document,
  setup: Setup,
): { readonly before: Id<'setup'> | null; readonly after: Id<'setup'> | null } {
  const programme = programmeOf(document);
  const at = programme.findIndex(({ id }) => id === (setup.variantOf ?? setup.id));
  return { before: programme[at - 1]?.id ?? null, after: programme[at + 1]?.id ?? null };
}

/** Every setup: those of the programme in their order, behind each its variants. */
export function setupsWithVariants(document: Document): Setup[] {
  const setups = setupsOf(document);
  const played = setups.filter(({ variantOf }) => variantOf === null);
  return played.flatMap((setup) => [setup, ...setups.filter(({ variantOf }) => variantOf === setup.id)]);
}

/** From 1: where in the programme a setup is played, or what it is a variant of. */
export function placeInProgramme(document: Document, { id, variantOf }: Setup): number {
  return programmeOf(document).findIndex((piece) => piece.id === (variantOf ?? id)) + 1;
}

/** The setup of the programme that this one is, or is a variant of, and then its variants. */
export function variantsWith(document: Document, setup: Setup): Setup[] {
  const original = setup.variantOf ?? setup.id;
  return setupsOf(document).filter(({ id, variantOf }) => id === original || variantOf === original);
}
