/** What is grouped, locked and hidden, asked by its members. */

import { allOf, inSetup, type Document } from './document.ts';
import type { Id } from './ids.ts';
import type { Group } from './records.ts';

/** The group that a thing is in; null: none. */
export function groupOf(document: Document, id: string): Group | null {
  return groupsByMember(document).get(id) ?? null;
}

export function isLocked(document: Document, id: string): boolean {
  return groupOf(document, id)?.locked ?? false;
}

export function isHidden(document: Document, id: string): boolean {
  return groupOf(document, id)?.hidden ?? false;
}

/** The things of a setup that are not drawn on the screen. */
export function hiddenIn(document: Document, setup: Id<'setup'>): ReadonlySet<string> {
  const hidden = inSetup(document, setup, 'group').filter((group) => group.hidden);
  return new Set(hidden.flatMap(({ members }) => members));
}

/** Whole groups for what is of several things, the thing alone otherwise; each once, in the order given. */
export function withTheirGroups(document: Document, ids: readonly string[]): string[] {
  return [...new Set(ids.flatMap((id): readonly string[] => groupOf(document, id)?.members ?? [id]))];
}

/** Groups of several things of which all are among these, free and shown as their copies are to be. */
export function wholeGroupsAmong(document: Document, ids: readonly string[]): Group[] {
  const among = new Set(ids);
  const groups = new Set(ids.flatMap((id) => groupOf(document, id) ?? []));
  return [...groups]
    .filter(({ members }) => members.length > 1 && members.every((id) => among.has(id)))
    .map((group) => ({ ...group, locked: false, hidden: false }));
}

/** Asked for every thing on the plan in every frame, so it is made once a document. */
const BY_MEMBER = new WeakMap<Document['records'], ReadonlyMap<string, Group>>();

function groupsByMember(document: Document): ReadonlyMap<string, Group> {
  const known = BY_MEMBER.get(document.records);
  if (known) return known;
  const groups = new Map<string, Group>();
  for (const group of allOf(document, 'group')) for (const id of group.members) groups.set(id, group);
  BY_MEMBER.set(document.records, groups);
  return groups;
}
