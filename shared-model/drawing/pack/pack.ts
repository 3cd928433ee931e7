/**
 * The print pack: what can be in it, and its sheets one after the other. Nothing is kept: the sheets are counted first,
 * entry by entry, and drawn when they are asked for, so that a long pack takes no more memory than a short one.
 */

import type { Sheet } from '../primitives.ts';
import { changeoverPages } from './changeover.ts';
import { coverPages } from './cover.ts';
import { floorPages } from './floor.ts';
import { inventoryPages } from './inventory.ts';
import { marksPages } from './marks.ts';
import { bookletPages, cardPages, turnsPages } from './planned.ts';
import { viewPages } from './view.ts';
import { cautionPages, figurePages } from './texts.ts';
import { sectionPages, seatMapPages } from './drawings.ts';
import { plotPages } from './plot.ts';
import type { EntryPages, Numbering, PackEntry, PackKind, PackRequest } from './request.ts';

export { chosenEntries, packEntries, pieceOfEntry, unknownSheetWords } from './entries.ts';
export { refusedPlot } from './plot.ts';
export { PACK_KINDS } from './request.ts';
export type {
  CheckedSetup,
  DrawnPage,
  EntryPages,
  Numbering,
  PackEntry,
  PackKind,
  PackRequest,
} from './request.ts';

type Pages = (request: PackRequest, entry: PackEntry) => EntryPages;

const PAGES: Readonly<Record<PackKind, Pages>> = {
  cover: coverPages,
  plot: plotPages,
  marks: marksPages,
  floor: floorPages,
  section: sectionPages,
  seats: seatMapPages,
  view: viewPages,
  turns: turnsPages,
  cards: cardPages,
  booklet: bookletPages,
  figures: figurePages,
  changeover: changeoverPages,
  inventory: inventoryPages,
  cautions: cautionPages,
};

/** The pages of one entry, to be drawn one by one. */
export function entryPages(request: PackRequest, entry: PackEntry): EntryPages {
  return PAGES[entry.kind](request, entry);
}

/** An entry of a pack with its place in it. */
export interface CountedEntry {
  readonly entry: PackEntry;
  /** Number of its first sheet, from 1. */
  readonly first: number;
  readonly count: number;
}

export interface CountedPack {
  readonly entries: readonly CountedEntry[];
  readonly sheets: number;
  /** What is not in the pack though it was asked for, and why. */
  readonly notes: readonly string[];
}

/** Step by step, for it may take seconds: each entry that was counted, and at last the whole. */
export function* countPack(request: PackRequest): Generator<PackEntry, CountedPack> {
  const counts = new Map<PackEntry, number>();
  const notes: string[] = [];
  const count = (entry: PackEntry, entries: readonly PackEntry[]): void => {
    const pages = entryPages({ ...request, entries }, entry);
    notes.push(...pages.notes);
    if (pages.count > 0) counts.set(entry, pages.count);
  };
  for (const entry of request.entries.filter(({ kind }) => kind !== 'cover')) {
    count(entry, request.entries);
    yield entry;
  }
  // A cover lists what there is, so it is counted when that is known.
  const present = request.entries.filter((entry) => entry.kind === 'cover' || counts.has(entry));
  for (const entry of present.filter(({ kind }) => kind === 'cover')) {
    count(entry, present);
    yield entry;
  }
  return { ...numbered(present, counts), notes };
}

function numbered(
  entries: readonly PackEntry[],
  counts: ReadonlyMap<PackEntry, number>,
): Omit<CountedPack, 'notes'> {
  let first = 1;
  const counted = entries.flatMap((entry): CountedEntry[] => {
    const count = counts.get(entry) ?? 0;
    first += count;
    return count > 0 ? [{ entry, first: first - count, count }] : [];
  });
  return { entries: counted, sheets: first - 1 };
}

export interface PackSheet {
  readonly sheet: Sheet;
  readonly entry: PackEntry;
  /** From 1. */
  readonly number: number;
  readonly notes: readonly string[];
}

/** Every sheet in order, each drawn when it is asked for. */
export function* packSheets(request: PackRequest, counted: CountedPack): Generator<PackSheet, void> {
  const entries = counted.entries.map(({ entry }) => entry);
  for (const { entry, first, count } of counted.entries) {
    const pages = entryPages({ ...request, entries }, entry);
    const numbering = numberingOf(counted, first);
    for (let index = 0; index < count; index++)
      yield { ...pages.draw(index, numbering), entry, number: first + index };
  }
}

export function numberingOf({ entries, sheets }: CountedPack, first: number): Numbering {
  const firsts = new Map(entries.map((each) => [each.entry.name, each.first]));
  return { first, sheets, sheetOf: (name) => firsts.get(name) ?? null };
}

/** What is in a pack for which nobody has chosen. */
export function usualEntries(entries: readonly PackEntry[]): PackEntry[] {
  return entries.filter(({ usual }) => usual);
}
