/** The rows of the list beside the plan, as a tree: groups of several things hold their members, all else stands alone. */

import { allOf, placedInSetup, platformOf, type Document } from '#model/document/document.ts';
import { groupOf } from '#model/document/groups.ts';
import type { Id } from '#model/document/ids.ts';
import type { Group, PlacedRecord, Platform, Storage, Underlay } from '#model/document/records.ts';

export interface OutlineRow {
  readonly record: Platform | Underlay | Storage | Group | PlacedRecord;
  readonly level: 1 | 2;
  /** The group that it is shown under. */
  readonly parent: string | null;
  /** What is selected with it: itself, or what a group holds. */
  readonly ids: readonly string[];
  /** Only of groups. */
  readonly open: boolean | null;
  /** From 1, among those under the same parent. */
  readonly position: number;
  readonly among: number;
}

/** From the ground up: the platform, what lies under the plan, where things wait, then what stands there. */
export function outlineRows(
  document: Document,
  setup: Id<'setup'>,
  closed: ReadonlySet<string>,
): OutlineRow[] {
  const ground = [platformOf(document), ...allOf(document, 'underlay'), ...allOf(document, 'storage')];
  const items = placedInSetup(document, setup);
  const units = new Map<string, Group | PlacedRecord>();
  for (const item of items) {
    const unit = familyOf(document, item.id) ?? item;
    units.set(unit.id, unit);
  }
  const tops = [...ground, ...units.values()];
  return tops.flatMap((record, index) => {
    const top = { record, level: 1, parent: null, position: index + 1, among: tops.length } as const;
    if (record.kind !== 'group') return [{ ...top, ids: [record.id], open: null }];
    const open = !closed.has(record.id);
    const members = items.filter(({ id }) => record.members.includes(id));
    const row: OutlineRow = { ...top, ids: members.map(({ id }) => id), open };
    return open
      ? [row, ...members.map((member, at) => memberRow(record.id, member, [at, members.length]))]
      : [row];
  });
}

function memberRow(parent: string, record: PlacedRecord, [at, among]: readonly [number, number]): OutlineRow {
  return { record, level: 2, parent, ids: [record.id], open: null, position: at + 1, among };
}

/** The group of several things that a thing is in. */
export function familyOf(document: Document, id: string): Group | null {
  const group = groupOf(document, id);
  return group && group.members.length > 1 ? group : null;
}

/** Where a key leads from a row; -1: nowhere. `at` is -1 before the first key. */
export function rowAfterKey(rows: readonly OutlineRow[], at: number, key: string): number {
  const row = rows[at];
  const last = rows.length - 1;
  switch (key) {
    case 'ArrowDown':
      return Math.min(last, at + 1);
    case 'ArrowUp':
      return Math.max(0, at - 1);
    case 'Home':
      return 0;
    case 'End':
      return last;
    case 'ArrowRight':
      return row?.open ? at + 1 : -1;
    case 'ArrowLeft':
      return rows.findIndex(({ record }) => record.id === row?.parent);
    default:
      return -1;
  }
}

/**
 * The next row whose name begins with what is typed, from the row itself on while a word grows, and from the one after
 * it at a first letter; round the end. -1: none.
 */
export function rowTyped(names: readonly string[], at: number, typed: string): number {
  const wanted = typed.toLowerCase();
  const start = Math.max(0, typed.length > 1 ? at : at + 1);
  const order = names.map((_, index) => (start + index) % names.length);
  return order.find((index) => names[index]?.toLowerCase().startsWith(wanted)) ?? -1;
}

/** The row that has the focus after others went: the next that is still there, or the last before. */
export function rowLeft(before: readonly OutlineRow[], at: number, after: readonly OutlineRow[]): number {
  const candidates = [...before.slice(at), ...before.slice(0, at).toReversed()];
  for (const { record } of candidates) {
    const found = after.findIndex((row) => row.record.id === record.id);
    if (found >= 0) return found;
  }
  return -1;
}
