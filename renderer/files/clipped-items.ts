/** Items on the clipboard, as text that another window can read; whatever else is there is left alone. */

import { addRecords } from '#model/commands/add.ts';
import { copiesOf } from '#model/commands/clone.ts';
import { refuse, type Outcome } from '#model/commands/command.ts';
import type { Document } from '#model/document/document.ts';
import { wholeGroupsAmong } from '#model/document/groups.ts';
import type { Id } from '#model/document/ids.ts';
import {
  isPlaced,
  type AnyRecord,
  type Group,
  type Instrument,
  type Kind,
  type PlacedRecord,
  type Point,
} from '#model/document/records.ts';
import { readRecord } from '#model/file-format/record.ts';
import { text } from '../app/text.ts';

const FORMAT = 'standlines-items';
const LONGEST = 1_000_000;
const MOST = 2000;

/** Placed things, what players carry and what is grouped: the music stays with its setup. */
export type ClippedItem = PlacedRecord | Instrument | Group;

function isClippable(record: AnyRecord): record is ClippedItem {
  return isPlaced(record) || record.kind === 'instrument' || record.kind === 'group';
}

/** The placed things of the selection, players with their instruments, groups as far as they are whole; null when there are none. */
export function clipped(document: Document, ids: readonly string[]): string | null {
  const items = ids.flatMap((id) => document.records.get(id) ?? []).filter(isPlaced);
  if (items.length === 0) return null;
  const players = new Set<string>(items.map(({ id }) => id));
  const instruments = [...document.records.values()].filter(
    (record): record is Instrument => record.kind === 'instrument' && players.has(record.player),
  );
  const groups = wholeGroupsAmong(document, ids);
  return JSON.stringify({ format: FORMAT, version: 1, records: [...items, ...instruments, ...groups] });
}

/** The items of a clipboard text; null when it holds something else. Never throws. */
export function readClipped(text: string): ClippedItem[] | null {
  if (text.length > LONGEST || !text.includes(FORMAT)) return null;
  const raw = parsed(text);
  if (raw?.format !== FORMAT || raw.version !== 1 || !Array.isArray(raw.records)) return null;
  if (raw.records.length > MOST) return null;
  const items: ClippedItem[] = [];
  for (const entry of raw.records as unknown[]) {
    const result = readRecord(entry);
    if (!result.ok || !isClippable(result.record)) return null;
    items.push(result.record);
  }
  return items.length > 0 ? items : null;
}

export interface Pasting {
  readonly setup: Id<'setup'>;
  /** From where they stood to where they are put. */
  readonly by: Point;
}

/** Adds copies to a setup. What they named and what is not among them they let go of. */
export function pasted(document: Document, items: readonly ClippedItem[], { setup, by }: Pasting): Outcome {
  const here = items.map((item) => ({ ...item, setup: item.setup === null ? null : setup }));
  const stays = <K extends Kind>(id: Id<K>): Id<K> | null => (id === (setup as string) ? id : null);
  const { records } = copiesOf(document, here, stays);
  const moved = records.map((record) => shifted(record, by));
  if (moved.length === 0) return refuse(text.toPlace.nothingToPaste);
  const outcome = addRecords(document, { records: moved });
  return outcome.ok ? { ...outcome, select: moved.filter(isPlaced).map(({ id }) => id) } : outcome;
}

function shifted(record: AnyRecord, by: Point): AnyRecord {
  if (!isPlaced(record)) return record;
  const shift = ({ x, y }: Point): Point => ({ x: x + by.x, y: y + by.y });
  const moved = { ...record, ...shift(record) };
  return moved.kind === 'lamp' ? { ...moved, cable: moved.cable.map(shift) } : moved;
}

function parsed(text: string): { format?: unknown; version?: unknown; records?: unknown } | null {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' ? value : null;
  } catch {
    return null;
  }
}
