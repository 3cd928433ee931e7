/** Takes things together, locks and hides them. */

import type { Document } from '../document/document.ts';
import { groupOf } from '../document/groups.ts';
import type { Id } from '../document/ids.ts';
import { withReferences } from '../document/references.ts';
import { isPlaced, type AnyRecord, type Group, type PlacedRecord } from '../document/records.ts';
import { t } from '../words/say.ts';
import { refuse, type Command, type Outcome, type Refusal } from './command.ts';
import { freshIds } from './fresh-id.ts';
import { propose, type Edits } from './propose.ts';
import { recordsOf, unlocked, type Targets } from './targets.ts';
import { nameOf, namesOf } from './words.ts';

export interface Grouping {
  readonly ids: readonly string[];
}

/** One group of at least two things; they leave the groups that they are in. */
export const group: Command<Grouping> = (document, { ids }) => {
  const targets = unlocked(document, placedAmong(document, ids, ungroupableWords));
  if (!targets.ok) return targets;
  const { records } = targets;
  if (records.length < 2) return refuse(t`Select at least two things to group.`);
  const misfit = differentSetup(document, records);
  if (misfit) return misfit;
  const made = newGroup(records, { id: freshIds(document)('group'), setup: records[0].setup });
  const names = namesOf(document, records);
  const label = t`group ${names}`;
  const before = groupOf(document, records[0].id);
  // Grouping the very members of a group once more changes nothing.
  if (before?.members.length === records.length && records.every(({ id }) => before.members.includes(id)))
    return propose(document, new Map(), { label });
  const edits = new Map<string, AnyRecord | null>([...lettingGo(document, records), [made.id, made]]);
  return propose(document, edits, { label, select: records.map(({ id }) => id) });
};

/** Every group that one of these is in is no more; what was locked or hidden stays so, each by itself. */
export const ungroup: Command<Grouping> = (document, { ids }) => {
  const targets = placedAmong(document, ids, ungroupableWords);
  if (!targets.ok) return targets;
  const groups = groupsOf(document, targets.records).filter(({ members }) => members.length > 1);
  const [first, second] = groups;
  if (!first) return refuse(t`Nothing of what is selected is in a group.`);
  const fresh = freshIds(document);
  const edits = new Map<string, AnyRecord | null>();
  for (const each of groups) {
    edits.set(each.id, null);
    if (!each.locked && !each.hidden) continue;
    for (const member of each.members) {
      const id = fresh('group');
      edits.set(id, { ...each, id, name: '', members: [member] });
    }
  }
  return propose(document, edits, { label: ungroupingWords(document, second ? groups : [first]) });
};

function ungroupingWords(document: Document, groups: readonly Group[]): string {
  const names = namesOf(document, groups);
  return t`ungroup ${names}`;
}

export interface Locking extends Grouping {
  readonly locked: boolean;
}

/** With a thing its whole group. */
export const setLocked: Command<Locking> = (document, { ids, locked }) =>
  marked(document, ids, {
    fields: { locked },
    label: (names) => (locked ? t`lock ${names}` : t`unlock ${names}`),
    misfit: (name) => t`${name} cannot be locked: only what stands on the platform can.`,
  });

export interface Hiding extends Grouping {
  readonly hidden: boolean;
}

/** With a thing its whole group. What is hidden is selected no more: nobody could see what he does to it. */
export const setHidden: Command<Hiding> = (document, { ids, hidden }) => {
  const outcome = marked(document, ids, {
    fields: { hidden },
    label: (names) => (hidden ? t`hide ${names}` : t`show ${names}`),
    misfit: (name) => t`${name} cannot be hidden: only what stands on the platform can.`,
  });
  return outcome.ok && hidden ? { ...outcome, select: [] } : outcome;
};

interface Marking {
  readonly fields: { readonly locked: boolean } | { readonly hidden: boolean };
  readonly label: (names: string) => string;
  readonly misfit: (name: string) => string;
}

function marked(document: Document, ids: readonly string[], { fields, label, misfit }: Marking): Outcome {
  const targets = placedAmong(document, ids, misfit);
  if (!targets.ok) return targets;
  const fresh = freshIds(document);
  const edits = new Map<string, AnyRecord | null>();
  for (const record of targets.records) {
    const before = groupOf(document, record.id);
    const wanted = { ...(before ?? aloneOf(record)), ...fields };
    const id = before?.id ?? fresh('group');
    // A group of one that marks nothing says nothing.
    const isIdle = wanted.members.length === 1 && !wanted.locked && !wanted.hidden;
    if (before || !isIdle) edits.set(id, isIdle ? null : { ...wanted, id });
  }
  return propose(document, edits, { label: label(namesOf(document, targets.records)) });
}

function aloneOf({ id, setup }: PlacedRecord): Omit<Group, 'id'> {
  return { kind: 'group', name: '', setup, members: [id], locked: false, hidden: false };
}

function newGroup(records: readonly PlacedRecord[], { id, setup }: Pick<Group, 'id' | 'setup'>): Group {
  const members = records.map((record): Id<PlacedRecord['kind']> => record.id);
  return { id, kind: 'group', name: '', setup, members, locked: false, hidden: false };
}

function lettingGo(document: Document, records: readonly PlacedRecord[]): Edits {
  const going = new Set<string>(records.map(({ id }) => id));
  const without = groupsOf(document, records).map(
    (each) => [each.id, withReferences(each, (id) => (going.has(id) ? null : id))] as const,
  );
  return new Map(without);
}

function groupsOf(document: Document, records: readonly PlacedRecord[]): Group[] {
  return [...new Set(records.flatMap(({ id }) => groupOf(document, id) ?? []))];
}

function differentSetup(document: Document, records: readonly PlacedRecord[]): Refusal | null {
  const stays = records.find(({ setup }) => setup === null);
  const passes = records.find(({ setup }) => setup !== null);
  if (!stays || !passes)
    return records.every(({ setup }) => setup === records[0]?.setup)
      ? null
      : refuse(t`Things of different setups cannot be grouped.`);
  return refuse(unlikeWords(nameOf(document, stays), nameOf(document, passes)));
}

function unlikeWords(stays: string, passes: string): string {
  return t`${stays} stays for the whole concert and ${passes} does not: they cannot be grouped.`;
}

function ungroupableWords(name: string): string {
  return t`${name} cannot be grouped: only what stands on the platform can.`;
}

function placedAmong(
  document: Document,
  ids: readonly string[],
  misfitWords: (name: string) => string,
): Targets<PlacedRecord> {
  const targets = recordsOf(document, ids);
  if (!targets.ok) return targets;
  const misfit = targets.records.find((record) => !isPlaced(record));
  if (misfit) return refuse(misfitWords(nameOf(document, misfit)));
  const [first, ...rest] = targets.records.filter(isPlaced);
  return first ? { ok: true, records: [first, ...rest] } : refuse(t`Select something first.`);
}
