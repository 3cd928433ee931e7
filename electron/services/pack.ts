/** The print pack of a concert as one PDF, sheet after sheet into a stream, so that a long one takes no more memory than a short one. */

import type { Writable } from 'node:stream';
import { setImmediate as nextTurn } from 'node:timers/promises';
import { checkSetup } from '#model/checks/check-setup.ts';
import { explainTried } from '#model/checks/explain-tried.ts';
import type { Finding } from '#model/checks/finding.ts';
import type { Explained } from '#model/checks/sentence-parts.ts';
import { triedList } from '#model/checks/tried-list.ts';
import { concertOf, type Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import { dayOf } from '#model/drawing/issued.ts';
import {
  chosenEntries,
  countPack,
  packEntries,
  unknownSheetWords,
  packSheets,
  refusedPlot,
  usualEntries,
  type CheckedSetup,
  type CountedPack,
  type PackEntry,
  type PackRequest,
  type PackSheet,
} from '#model/drawing/pack/pack.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { PaperName } from '#model/drawing/papers.ts';
import type { Sheet } from '#model/drawing/primitives.ts';
import { language } from '#model/words/catalogue.ts';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import { createMeasure } from './fonts.ts';
import { paintPdfTo } from './pdf-painter.ts';

export interface PackOrder {
  readonly document: Document;
  readonly paper: PaperName;
  /** Names of entries, or kinds of them, in the order of the sheets; null: the usual ones. */
  readonly sheets: readonly string[] | null;
  /** Of the stage plots, 50 for 1:50; null: the largest that fits each. */
  readonly scale: number | null;
  readonly now: Date;
}

export interface PackWatch {
  /** Told before each step. Entries are counted before the first sheet is drawn. */
  readonly progress?: (step: PackStep) => void;
  /** Work ends at the next step with `pack.stopped`. */
  readonly signal?: AbortSignal;
}

export interface PackStep {
  readonly doing: 'counting' | 'drawing';
  /** Entries counted, or sheets drawn, and of how many. */
  readonly done: number;
  readonly of: number;
}

/** A pack whose sheets are known by number and not yet drawn. */
export interface OpenedPack {
  readonly counted: CountedPack;
  /** To be gone through once. Throws `FaultError` when it is stopped. */
  readonly sheets: Iterable<PackSheet>;
  /** What could not be shown, of the sheets drawn by now. */
  readonly notes: Set<string>;
  /** Characters that no font has, of the sheets painted by now. */
  readonly missing: Set<string>;
}

export interface PrintedPack {
  readonly sheets: number;
  readonly entries: CountedPack['entries'];
  readonly notes: readonly string[];
}

/** Throws `FaultError`: a name that no entry has, nothing to print, or it was stopped. */
export async function printPack(
  order: PackOrder,
  sink: Writable,
  watch: PackWatch = {},
): Promise<PrintedPack> {
  const pack = await openPack(order, watch);
  return printOpened(order, pack, sink);
}

/** Counts the sheets. Throws `FaultError` as `printPack` does. */
export async function openPack(order: PackOrder, watch: PackWatch = {}): Promise<OpenedPack> {
  const request = packRequest(order);
  refuseScale(request);
  const counted = await countedPack(request, watch);
  const notes = new Set(counted.notes);
  return {
    counted,
    notes,
    missing: new Set(),
    sheets: sheetsOf(request, counted, { watch, told: (note) => notes.add(note) }),
  };
}

/** Does something with a sheet before the next one is drawn. */
export type EachSheet = (sheet: PackSheet) => Promise<void>;

/** Each sheet goes to `each`, too, so that it is drawn once however many files it is in. */
export async function printOpened(
  { document, now }: PackOrder,
  pack: OpenedPack,
  sink: Writable,
  each?: EachSheet,
): Promise<PrintedPack> {
  const { name, author } = concertOf(document);
  const meta = { title: name || t`Concert`, author, created: now, language: language() };
  const { missingGlyphs } = await paintPdfTo(sink, passedOn(pack.sheets, each), meta);
  for (const character of missingGlyphs) pack.missing.add(character);
  return { sheets: pack.counted.sheets, entries: pack.counted.entries, notes: notesOf(pack) };
}

/** What the one who prints should know, once everything is painted. */
export function notesOf({ notes, missing }: OpenedPack): string[] {
  if (missing.size === 0) return [...notes];
  return [...notes, t`No font has ${[...missing].join(' ')}: printed as a box.`];
}

async function* passedOn(sheets: Iterable<PackSheet>, each: EachSheet | undefined): AsyncGenerator<Sheet> {
  for (const drawn of sheets) {
    await each?.(drawn);
    yield drawn.sheet;
  }
}

/** What the drawings are made from, the usual sheets or the chosen ones. Throws `FaultError`. */
export function packRequest({ document, paper, scale, sheets, now }: PackOrder): PackRequest {
  return {
    ...{ document, paper, scale },
    entries: entriesFor(document, sheets),
    checked: rememberedChecks(document),
    measure: createMeasure(),
    units: concertOf(document).units,
    issued: dayOf(now),
    palette: PALETTES.print,
  };
}

function entriesFor(document: Document, sheets: readonly string[] | null): readonly PackEntry[] {
  if (sheets === null) return usualEntries(packEntries(document));
  const chosen = chosenEntries(document, sheets);
  if ('unknown' in chosen)
    throw new FaultError('pack.unknownSheet', unknownSheetWords(document, chosen.unknown));
  return chosen.entries;
}

/** Each setup is checked once, and tried against once for each of its findings. */
function rememberedChecks(document: Document): PackRequest['checked'] {
  const known = new Map<string, CheckedSetup>();
  return (setup) => {
    const before = known.get(setup);
    if (before) return before;
    const checked = checkedSetup(document, setup);
    known.set(setup, checked);
    return checked;
  };
}

function checkedSetup(document: Document, setup: Id<'setup'>): CheckedSetup {
  const report = checkSetup(document, setup);
  const explain = explainTried(document, setup, triedList(document, setup, report));
  const told = new Map<Finding, Explained>();
  return {
    report,
    explain: (finding) => {
      const words = told.get(finding) ?? explain(finding);
      told.set(finding, words);
      return words;
    },
  };
}

/** Whoever asks for a scale gets it or hears which would do; no sheet is left out in silence. */
function refuseScale(request: PackRequest): void {
  if (request.scale === null) return;
  const refusal = refusedPlot(request);
  if (refusal) throw new FaultError(refusal.code, refusal.message);
}

async function countedPack(request: PackRequest, { progress, signal }: PackWatch): Promise<CountedPack> {
  const of = request.entries.length;
  const steps = countPack(request);
  for (let done = 0; ; done++) {
    refuseStopped(signal);
    progress?.({ doing: 'counting', done, of });
    const step = steps.next();
    if (step.done) {
      if (step.value.sheets > 0) return step.value;
      throw new FaultError(
        'pack.empty',
        step.value.notes[0] ?? t`There is nothing to print: choose a sheet.`,
      );
    }
    // Checks take their time: whoever wants to stop is heard between them.
    await nextTurn();
  }
}

interface Listening {
  readonly watch: PackWatch;
  readonly told: (note: string) => void;
}

function* sheetsOf(
  request: PackRequest,
  counted: CountedPack,
  { watch, told }: Listening,
): Generator<PackSheet> {
  const { progress, signal } = watch;
  const of = counted.sheets;
  progress?.({ doing: 'drawing', done: 0, of });
  for (const drawn of packSheets(request, counted)) {
    refuseStopped(signal);
    drawn.notes.forEach(told);
    yield drawn;
    progress?.({ doing: 'drawing', done: drawn.number, of });
  }
}

function refuseStopped(signal: AbortSignal | undefined): void {
  if (signal?.aborted) throw new FaultError('pack.stopped', t`The pack was stopped before it was whole.`);
}
