/** The sheets of the plan that is shown, as they come out of the printer: a booklet for each stand with paper, and cue cards. */

import { keepPlan } from '#model/commands/page-plan.ts';
import { applyDiff } from '#model/document/diff.ts';
import type { Document } from '#model/document/document.ts';
import { concertOf, find } from '#model/document/document.ts';
import { labelOf } from '#model/document/labels.ts';
import { scoreOf } from '#model/document/parts.ts';
import type { PartPdf } from '#model/document/records.ts';
import { paperModel } from '#model/catalogue/paper.ts';
import {
  bookletSheets,
  type BookletOrder,
  type PlacedPage,
  type Size,
} from '#model/drawing/booklet/booklet-sheets.ts';
import { pageRoom } from '#model/drawing/booklet/page-room.ts';
import { placeholder } from '#model/drawing/booklet/placeholder.ts';
import { bookletOfStation } from '#model/drawing/booklet/planned.ts';
import { cardSheets } from '#model/drawing/cards/card-sheets.ts';
import type { PlannedPaper } from '#model/drawing/cards/order.ts';
import type { Primitive, Sheet } from '#model/drawing/primitives.ts';
import type { TextTools } from '#model/drawing/sheet/blocks.ts';
import { judgedPlan } from '#model/pages/kept/judged.ts';
import { keptOf } from '#model/pages/kept/plan-of.ts';
import type { PageRef } from '#model/pages/bindings/binding.ts';
import type { StationPlan } from '#model/pages/planner/plan.ts';
import { performanceOf } from '#model/score/music/performance.ts';
import type { ShownPlan } from '../../state/shown-plan.ts';

/** The plan as the one that the setup keeps: so it travels in the text of the document, and so the shell prints it. */
export function printable({ document, setup, plan }: ShownPlan): PlannedPaper | null {
  const score = scoreOf(document, setup);
  if (!score) return null;
  const outcome = keepPlan(document, { setup, ...keptOf(plan, performanceOf(score.music)) });
  const keeping: Document = outcome.ok ? applyDiff(document, outcome.diff) : document;
  const kept = outcome.ok ? judgedPlan(keeping, setup) : null;
  return kept && { document: keeping, setup, instance: kept.instance, plan: kept.plan };
}

/** The PDF that a concert names for a player's part. */
export function pdfOf({ document, setup }: PlannedPaper, player: string): PartPdf | null {
  const score = scoreOf(document, setup);
  return score?.pdfs[score.players.findIndex((one) => one === player)] ?? null;
}

/** A page of a part's PDF on a sheet. */
export interface PrintedPage {
  readonly placed: PlacedPage;
  /** Who reads it. */
  readonly player: string;
  /** Of his PDF, from 1. */
  readonly page: number;
  /** What stands for it until it can be seen. */
  readonly instead: readonly Primitive[];
}

export type Drawn =
  | {
      readonly ok: true;
      readonly sheets: readonly Sheet[];
      /** What lies under the marks, by sheet. */
      readonly pages: readonly (readonly PrintedPage[])[];
      /** Without the instructions. */
      readonly printed: number;
      /** Every page has a sheet of its own, as no panel goes on the paper whole. */
      readonly splits: boolean;
    }
  | { readonly ok: false; readonly message: string };

export interface Asked {
  readonly planned: PlannedPaper;
  /** Players whose PDF is at hand. */
  readonly withPdf: ReadonlySet<string>;
  /** Id in the catalogue. */
  readonly paper: string;
  readonly tools: TextTools;
}

export function bookletDrawn(asked: Asked, station: StationPlan): Drawn {
  const { planned, tools } = asked;
  const booklet = bookletOfStation(planned, station);
  const sizeOf = (ref: PageRef): Size | null => sizeOfPage(asked, ref);
  const sizes = booklet.binding.views.flat(2).flatMap((ref) => (ref && sizeOf(ref)) ?? []);
  const order: BookletOrder = {
    ...booklet,
    page: pageRoom(sizes),
    paper: paperOf(asked.paper),
    sizeOf,
    tools,
  };
  const result = bookletSheets(order);
  if (!result.ok) return result;
  const across = booklet.binding.kind === 'ridge' ? booklet.binding.pagesPerPanel : 1;
  return {
    ok: true,
    sheets: result.sheets.map(({ sheet }) => sheet),
    pages: result.sheets.map(({ pages }) => pages.map((placed) => printedPage(asked, placed))),
    printed: result.printed,
    splits: across > 1 && result.perSheet === 'page',
  };
}

function printedPage({ planned, tools }: Asked, placed: PlacedPage): PrintedPage {
  const { part, page } = placed.ref;
  const own = pdfOf(planned, part)?.pages[page - 1] ?? null;
  if (own === null) throw new Error(`page ${page} of ${part} has a size but no PDF page`);
  return { placed, player: part, page: own, instead: placeholder(placed, tools) };
}

export function cardsDrawn({ planned, paper, tools }: Asked): Drawn {
  const { units } = concertOf(planned.document);
  const { sheets } = cardSheets({ ...planned, units, paper: paperOf(paper), tools });
  return { ok: true, sheets, pages: [], printed: sheets.length, splits: false };
}

function sizeOfPage({ planned, withPdf }: Asked, { part, page }: PageRef): Size | null {
  const pdf = withPdf.has(part) ? pdfOf(planned, part) : null;
  const index = pdf?.pages[page - 1] ?? null;
  return (index !== null && pdf?.sizes[index - 1]) || null;
}

function paperOf(id: string) {
  const model = paperModel(id);
  if (!model) throw new Error(`the catalogue has no paper ${id}`);
  return model;
}

export function pieceOf({ document, setup }: Pick<PlannedPaper, 'document' | 'setup'>): string {
  return find(document, setup)?.name || labelOf(document, setup, setup);
}

/** By side of the stand. */
export function readersOf({ instance }: PlannedPaper, { station }: StationPlan): (string | null)[] {
  return instance.stations.find(({ id }) => id === station)?.sides.map(({ reader }) => reader) ?? [];
}
