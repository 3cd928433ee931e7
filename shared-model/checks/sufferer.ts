/** Who suffers from what a check found, so that a list can be read person by person. */

import type { Document } from '../document/document.ts';
import type { Finding } from './finding.ts';

/** `house`: those who look on; `all`: everybody on the platform; else the id of a player. */
export type Sufferer = string;

export const HOUSE: Sufferer = 'house';
export const ALL: Sufferer = 'all';

export interface Suffering<F> {
  readonly sufferer: Sufferer;
  readonly findings: readonly F[];
}

/** The first player whom a finding names, unless it is the house that sees too little, or many have to step over a cable. */
export function suffererOf(document: Document, { code, subjects, measured }: Finding): Sufferer {
  if (code === 'sight.house') return HOUSE;
  if (code === 'room.cable' && measured > 1) return ALL;
  return subjects.find((id) => document.records.get(id)?.kind === 'player') ?? ALL;
}

/** Of several findings with one cause he who suffers from all of them, or everybody. */
function suffererOfAll(document: Document, members: readonly { readonly finding: Finding }[]): Sufferer {
  const sufferers = new Set(members.map(({ finding }) => suffererOf(document, finding)));
  const [first = ALL] = sufferers;
  return sufferers.size > 1 ? ALL : first;
}

/** In the order in which each comes first, and for each in the order given. */
export function bySufferer<F extends { readonly members: readonly { readonly finding: Finding }[] }>(
  document: Document,
  findings: readonly F[],
): Suffering<F>[] {
  const groups = new Map<Sufferer, F[]>();
  for (const each of findings) {
    const sufferer = suffererOfAll(document, each.members);
    const theirs = groups.get(sufferer);
    if (theirs) theirs.push(each);
    else groups.set(sufferer, [each]);
  }
  return [...groups].map(([sufferer, theirs]) => ({ sufferer, findings: theirs }));
}
