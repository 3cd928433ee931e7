/** Lets things stay for the whole concert, or gives each setup its own again. */

import { applyDiff, type Change } from '../document/diff.ts';
import { allOf, find, setupsOf, type Document } from '../document/document.ts';
import type { Id } from '../document/ids.ts';
import { referencesOf, withReferences } from '../document/references.ts';
import {
  isPlaced,
  type AnyRecord,
  type Group,
  type Instrument,
  type Kind,
  type PlacedRecord,
} from '../document/records.ts';
import { t } from '../words/say.ts';
import { copiesOf } from './clone.ts';
import { refuse, type Command, type Refusal } from './command.ts';
import { editsOf, propose, type Edits } from './propose.ts';
import { recordsOf } from './targets.ts';
import { nameOf, namesOf } from './words.ts';

export interface Share {
  readonly ids: readonly string[];
}

/**
 * These things stay where they are for the whole concert. A player brings his instruments; whoever reads or plays at a
 * thing that stays has to stay himself.
 */
export const share: Command<Share> = (document, { ids }) => {
  const targets = placedOf(document, ids);
  if (!targets.ok) return targets;
  const shared = [...targets.records, ...instrumentsOf(document, targets.records)];
  const missing = namedButNotShared(document, shared);
  if (missing) return missing;
  const edits = new Map([
    ...editsOf(shared.map((record) => ({ ...record, setup: null }))),
    ...groupEdits(document, new Set(shared.map(({ id }) => id))),
  ]);
  const names = namesOf(document, targets.records);
  return propose(document, edits, { label: t`share ${names}` });
};

/** A group all of whose members stay for the whole concert stays with them; others go on without those that do. */
function groupEdits(document: Document, shared: ReadonlySet<string>): Edits {
  const edits = new Map<string, AnyRecord | null>();
  const touched = allOf(document, 'group').filter(
    ({ setup, members }) => setup !== null && members.some((id) => shared.has(id)),
  );
  for (const group of touched) {
    const isWhole = group.members.every((id) => shared.has(id));
    const left = withReferences(group, (id) => (shared.has(id) ? null : id));
    edits.set(group.id, isWhole ? { ...group, setup: null } : left);
  }
  return edits;
}

export interface Unshare extends Share {
  /** The setup that keeps the things themselves; every other gets copies. */
  readonly setup: Id<'setup'>;
}

/** Nothing vanishes from any setup, but from now on each has its own. What is shared and names them comes along. */
export const unshare: Command<Unshare> = (document, { ids, setup }) => {
  const targets = placedOf(document, ids);
  if (!targets.ok) return targets;
  const stray = targets.records.find((record) => record.setup !== null);
  if (stray) return refuse(notSharedWords(nameOf(document, stray)));
  const shared = withNaming(document, targets.records);
  let after = document;
  for (const { id } of setupsOf(document)) {
    if (id !== setup) after = applied(after, copiesFor(after, shared, id));
  }
  after = applied(after, editsOf(shared.map((record) => withSetup(record, setup))));
  const names = namesOf(document, targets.records);
  return propose(document, changesBetween(document, after), { label: t`unshare ${names}` });
};

function notSharedWords(name: string): string {
  return t`${name} is not shared: it stands in one setup only.`;
}

type Shareable = PlacedRecord | Instrument | Group;

function placedOf(
  document: Document,
  ids: readonly string[],
): { readonly ok: true; readonly records: readonly PlacedRecord[] } | Refusal {
  const targets = recordsOf(document, ids);
  if (!targets.ok) return targets;
  const misfit = targets.records.find((record) => !isPlaced(record));
  if (misfit) return refuse(alwaysThereWords(nameOf(document, misfit)));
  return { ok: true, records: targets.records.filter(isPlaced) };
}

function alwaysThereWords(name: string): string {
  return t`${name} is there for the whole concert anyway.`;
}

function instrumentsOf(document: Document, owners: readonly PlacedRecord[]): Instrument[] {
  const players = new Set<string>(owners.map(({ id }) => id));
  return [...document.records.values()].filter(
    (record): record is Instrument => record.kind === 'instrument' && players.has(record.player),
  );
}

/** What stays cannot name what is there in one setup only. */
function namedButNotShared(document: Document, shared: readonly Shareable[]): Refusal | null {
  const ids = new Set<string>(shared.map(({ id }) => id));
  for (const record of shared) {
    for (const { id } of referencesOf(record)) {
      const named = document.records.get(id);
      if (!named || named.kind === 'setup' || ids.has(id)) continue;
      if ('setup' in named && named.setup !== null) {
        return refuse(goesWithWords(nameOf(document, record), nameOf(document, named)));
      }
    }
  }
  return null;
}

function goesWithWords(name: string, other: string): string {
  return t`${name} goes with ${other}, which is in one setup only: share both.`;
}

/** Shared things that name one of these, and so on; whole groups. */
function withNaming(document: Document, records: readonly PlacedRecord[]): Shareable[] {
  const found = new Map<string, Shareable>(records.map((record) => [record.id, record]));
  for (let count = -1; count !== found.size;) {
    count = found.size;
    for (const record of document.records.values()) {
      const isShared = isShareable(record) && record.setup === null;
      if (!isShared || !referencesOf(record).some(({ id }) => found.has(id))) continue;
      found.set(record.id, record);
      if (record.kind === 'group')
        for (const member of placedAmong(document, record)) found.set(member.id, member);
    }
  }
  return [...found.values()];
}

function isShareable(record: AnyRecord): record is Shareable {
  return isPlaced(record) || record.kind === 'instrument' || record.kind === 'group';
}

function placedAmong(document: Document, { members }: Group): PlacedRecord[] {
  return members.flatMap((id) => find(document, id) ?? []);
}

/** Copies of the things for one setup, and what of it named the things naming the copies instead. */
function copiesFor(document: Document, shared: readonly Shareable[], setup: Id<'setup'>): Edits {
  const { records, ids } = copiesOf(document, shared, (id) => id);
  const rename = <K extends Kind>(id: Id<K>): Id<K> => (ids.get(id) as Id<K> | undefined) ?? id;
  const edits = new Map<string, AnyRecord | null>(
    records.map((record) => [record.id, withSetup(record as Shareable, setup)]),
  );
  for (const record of document.records.values()) {
    const isOf = record.id === setup || ('setup' in record && record.setup === setup);
    if (isOf && referencesOf(record).some(({ id }) => ids.has(id)))
      edits.set(record.id, withReferences(record, rename));
  }
  return edits;
}

function withSetup(record: Shareable, setup: Id<'setup'>): AnyRecord {
  return { ...record, setup };
}

function applied(document: Document, edits: Edits): Document {
  const diff = new Map<string, Change>();
  for (const [id, after] of edits) diff.set(id, { before: document.records.get(id) ?? null, after });
  return applyDiff(document, diff);
}

function changesBetween(before: Document, after: Document): Edits {
  const edits = new Map<string, AnyRecord | null>();
  for (const [id, record] of after.records) if (before.records.get(id) !== record) edits.set(id, record);
  return edits;
}
