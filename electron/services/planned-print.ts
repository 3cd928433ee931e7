/** What a plan puts on paper, as one PDF: the booklets of its stations, and cue cards for its players. */

import { paperModel, type PaperModel } from '#model/catalogue/paper.ts';
import { concertOf } from '#model/document/document.ts';
import { bookletOfStation } from '#model/drawing/booklet/planned.ts';
import { cardSheets } from '#model/drawing/cards/card-sheets.ts';
import type { PlannedPaper } from '#model/drawing/cards/order.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import type { StationPlan } from '#model/pages/planner/plan.ts';
import { t } from '#model/words/say.ts';
import { drawnBooklet, missingWords, printed, type BookletJob, type DrawnSheets } from './booklet.ts';
import { FaultError } from './faults.ts';
import { createMeasure } from './fonts.ts';
import type { OpenedPart } from './part-pdf.ts';

/** A part's PDF, and which of its pages, from 0, is which page of the part; null: none. */
export interface PartPages {
  readonly part: OpenedPart;
  readonly pages: readonly (number | null)[];
}

export interface PlannedPrint extends PlannedPaper {
  /** By the player's id; pages of players without one become numbered blanks. */
  readonly parts: ReadonlyMap<string, PartPages>;
  /** Paper by its id in the catalogue. */
  readonly booklets: readonly { readonly station: string; readonly paper: string }[];
  /** Null: no cue cards. */
  readonly cards: string | null;
  readonly now: Date;
}

export interface PrintedPlan {
  readonly bytes: Uint8Array;
  readonly sheets: number;
  readonly notes: readonly string[];
}

/** Throws `FaultError`: there is no such station or paper, or pages do not go on it. */
export async function printPlanned(print: PlannedPrint): Promise<PrintedPlan> {
  const booklets = print.booklets.map(({ station, paper }) =>
    drawnBooklet(jobOfStation(print, stationOf(print, station), paper)),
  );
  const all = [...booklets, ...(print.cards === null ? [] : [drawnCards(print, print.cards)])];
  const { name, author } = concertOf(print.document);
  const [first] = all;
  const title = all.length === 1 && first ? first.title : name || t`Paper of the plan`;
  const { bytes, missingGlyphs } = await printed(all, { title, author, now: print.now });
  const missing = missingGlyphs.length > 0 ? [missingWords(missingGlyphs)] : [];
  return {
    bytes,
    sheets: all.reduce((sum, { sheets }) => sum + sheets.length, 0),
    notes: [...new Set([...all.flatMap(({ notes }) => notes), ...missing])],
  };
}

/** Throws `FaultError`. */
export function jobOfStation(print: PlannedPrint, station: StationPlan, paper: string): BookletJob {
  return {
    ...bookletOfStation(print, station),
    page: null,
    paper: paperOf(paper),
    sourceOf: ({ part, page }) => {
      const own = print.parts.get(part);
      const pdfPage = own?.pages[page - 1] ?? null;
      return own && pdfPage !== null && own.part.pages[pdfPage] ? { part: own.part, page: pdfPage } : null;
    },
    now: print.now,
  };
}

function drawnCards(print: PlannedPrint, paper: string): DrawnSheets {
  const { units } = concertOf(print.document);
  const tools = { palette: PALETTES.print, measure: createMeasure() };
  const { sheets } = cardSheets({ ...print, units, paper: paperOf(paper), tools });
  return { title: t`Cue cards`, sheets, placements: [], notes: [] };
}

function stationOf({ plan }: PlannedPrint, id: string): StationPlan {
  const found = plan.stations.find(({ station }) => station === id);
  if (!found) throw new FaultError('paper.noStation', t`The plan puts no paper on "${id}".`);
  return found;
}

function paperOf(id: string): PaperModel {
  const model = paperModel(id);
  if (!model) throw new FaultError('paper.unknown', t`There is no paper "${id}".`);
  return model;
}
