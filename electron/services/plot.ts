/** The plot of a setup as a PDF: the same figures and drawing as the window shows. */

import type { PlotOptions } from '#contract/contract.ts';
import { checkSetup } from '#model/checks/check-setup.ts';
import { explainTried } from '#model/checks/explain-tried.ts';
import { triedList } from '#model/checks/tried-list.ts';
import { concertOf, find, type Document } from '#model/document/document.ts';
import { asId, type Id } from '#model/document/ids.ts';
import { dayOf } from '#model/drawing/issued.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import { plotSheets, type PlotSheetsByPart } from '#model/drawing/plot-sheet.ts';
import type { Sheet } from '#model/drawing/primitives.ts';
import { readDocument } from '#model/file-format/read.ts';
import { language } from '#model/words/catalogue.ts';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import { createMeasure } from './fonts.ts';
import { paintPdf } from './pdf-painter.ts';

export interface Plot {
  readonly bytes: Uint8Array;
  readonly pages: number;
  readonly choice: PlotSheetsByPart['choice'];
  /** What the one who prints should know: labels without room, characters without a font. */
  readonly notes: readonly string[];
}

export interface PlotOrder {
  /** Text of a file; read as strictly as one. */
  readonly text: string;
  readonly setup: string;
  readonly options: PlotOptions;
}

/** Throws `FaultError` when the text is not a document, it has no such setup, or the plan does not fit the paper. */
export async function renderPlot({ text, setup, options }: PlotOrder, now = new Date()): Promise<Plot> {
  const read = readDocument(text);
  if (!read.ok) throw new FaultError('plot.notADocument', read.problem.message);
  return plotDocument(read.document, asId<'setup'>(setup), { options, now });
}

export async function plotDocument(
  document: Document,
  setup: Id<'setup'>,
  { options, now }: { readonly options: PlotOptions; readonly now: Date },
): Promise<Plot> {
  if (!find(document, setup)) throw new FaultError('plot.noSetup', t`The concert has no setup "${setup}".`);
  const concert = concertOf(document);
  const report = checkSetup(document, setup);
  const result = plotSheets({
    document,
    setup,
    report,
    explain: explainTried(document, setup, triedList(document, setup, report)),
    options,
    measure: createMeasure(),
    units: concert.units,
    issued: dayOf(now),
    palette: PALETTES.print,
  });
  if (!result.ok) throw new FaultError(result.code, result.message);
  const { choice, notes, sheets } = result;
  return { choice, pages: sheets.length, ...(await painted(sheets, { document, notes, now })) };
}

interface Painting {
  readonly document: Document;
  readonly notes: readonly string[];
  readonly now: Date;
}

async function painted(
  sheets: readonly Sheet[],
  { document, notes, now }: Painting,
): Promise<Pick<Plot, 'bytes' | 'notes'>> {
  const { name, author } = concertOf(document);
  const { bytes, missingGlyphs } = await paintPdf(sheets, {
    title: sheets[0]?.title ?? name,
    author,
    created: now,
    language: language(),
  });
  if (missingGlyphs.length === 0) return { bytes, notes };
  return { bytes, notes: [...notes, t`No font has ${missingGlyphs.join(' ')}: printed as a box.`] };
}
