/** The sheets of text: figures and findings of a setup, cautions of the whole concert. */

import { cautionsSection, figureSections, findingsSection } from '../sheet/sections.ts';
import { laidApart, plotRequestOf, textPages } from './pages.ts';
import type { EntryPages, PackEntry, PackRequest } from './request.ts';

export function figurePages(request: PackRequest, entry: PackEntry): EntryPages {
  const plot = plotRequestOf(request, entry, true);
  return textPages(request, entry, (width) => [
    ...findingsSection(plot, width),
    ...figureSections(plot, laidApart(plot), width),
  ]);
}

export function cautionPages(request: PackRequest, entry: PackEntry): EntryPages {
  return textPages(request, entry, (width) => cautionsSection(request, width));
}
