/** The stage plot of a setup as a sheet of a pack. */

import { t } from '../../words/say.ts';
import { pageOf } from '../papers.ts';
import { firstNames } from '../sheet/first-names.ts';
import { sheetOn, titleFields } from '../sheet/page-frame.ts';
import { planLayout, type PlanLayout } from '../sheet/plan-layout.ts';
import { planSheet } from '../sheet/plan-sheet.ts';
import type { PlotRefusal, PlotSheetRequest } from '../sheet/request.ts';
import { laidApart, listed, NO_PAGES, pieceName, plotRequestOf, titleWords } from './pages.ts';
import type { EntryPages, PackEntry, PackRequest } from './request.ts';

/** Why the first of the plots that do not fit at the asked scale does not, and which scale would do; null: all fit. */
export function refusedPlot(
  request: PackRequest,
): { readonly code: string; readonly message: string } | null {
  for (const entry of request.entries.filter(({ kind }) => kind === 'plot')) {
    const layout = layoutOf(request, entry);
    if ('ok' in layout)
      return { code: layout.code, message: `${pieceName(request, entry)}: ${layout.message}` };
  }
  return null;
}

function layoutOf(request: PackRequest, entry: PackEntry): PlanLayout | PlotRefusal {
  return planLayout(scaledRequest(request, entry, false));
}

/** Only plots are drawn in a scale that was asked for; all else is as large as the paper lets it be. */
function scaledRequest(request: PackRequest, entry: PackEntry, withReport: boolean): PlotSheetRequest {
  const plot = laidApart(plotRequestOf(request, entry, withReport));
  return { ...plot, options: { ...plot.options, scale: request.scale } };
}

export function plotPages(request: PackRequest, entry: PackEntry): EntryPages {
  const layout = layoutOf(request, entry);
  if ('ok' in layout) return { ...NO_PAGES, notes: [`${pieceName(request, entry)}: ${layout.message}`] };
  const page = pageOf(layout.page.paper, layout.page.orientation);
  return {
    count: 1,
    notes: [],
    draw: (index, { first, sheets, sheetOf }) => {
      const plot = scaledRequest(request, entry, true);
      const facts = { documentType: entry.title, scale: layout.scale, sheet: first, sheets };
      const { children, dropped } = planSheet(plot, layout, {
        fields: titleFields(plot, page, facts),
        mapSheet: sheetOf(entry.name.replace(/^plot/, 'seats')),
        marksSheet: sheetOf(entry.name.replace(/^plot/, 'marks')),
      });
      const sheet = sheetOn(page, titleWords(request, entry), children);
      const notes = dropped.length === 0 ? [] : [noRoom(pieceName(request, entry), dropped)];
      return { sheet: listed({ request, entry, index }, sheet), notes };
    },
  };
}

function noRoom(piece: string, dropped: readonly string[]): string {
  return t`${piece}: no room on the plan for the labels ${firstNames(dropped)}; they are in the table of marks.`;
}
