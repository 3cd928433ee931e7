/** The drawings of the house: sections, seat maps, and what is seen from chosen places. */

import { t } from '../../words/say.ts';
import { seatMap, seatMapScale } from '../sheet/seat-map-sheet.ts';
import { sectionScale, sectionSheet } from '../sheet/section-sheet.ts';
import { drawingPage, laidApart, pieceName, plotRequestOf } from './pages.ts';
import type { EntryPages, PackEntry, PackRequest } from './request.ts';

/** A section shows balconies where they are. */
export function sectionPages(request: PackRequest, entry: PackEntry): EntryPages {
  const bare = plotRequestOf(request, entry, false);
  return drawingPage(request, entry, {
    scaleIn: (body) => sectionScale(bare, body),
    draw: (body) => sectionSheet(plotRequestOf(request, entry, true), body),
    tooLarge: t`${pieceName(request, entry)}: the house has no rows, or fits on this paper at no standard scale from the side, so there is no section.`,
  });
}

export function seatMapPages(request: PackRequest, entry: PackEntry): EntryPages {
  const bare = laidApart(plotRequestOf(request, entry, false));
  return drawingPage(request, entry, {
    scaleIn: (body) => seatMapScale(bare, body),
    draw: (body) => seatMap(laidApart(plotRequestOf(request, entry, true)), body, entry.subject ?? undefined),
    tooLarge: t`${pieceName(request, entry)}: the house fits on this paper at no standard scale, so there is no seat map.`,
  });
}
