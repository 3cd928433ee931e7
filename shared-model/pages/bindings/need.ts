/** What a binding takes: paper to print, paper to carry, stands and room on the lip. */

import type { Millimetres } from '../../document/records.ts';
import { pagesInView, type Binding } from './binding.ts';
import { stripOf } from './strip.ts';

export interface Need {
  /** Panels of the paper, printed or blank. */
  readonly panels: number;
  /** Those with at least one page on them: what the binding weighs against others. */
  readonly printedPanels: number;
  readonly printedPages: number;
  /** Cards that stiffen its leaves. */
  readonly cards: number;
  /** Desks: two, back to back, for a ridge booklet. */
  readonly stands: 1 | 2;
  /** Of the row of pages before each reader; pages may overhang the desk. */
  readonly width: Millimetres;
}

export function needOf(binding: Binding, pageWidth: Millimetres): Need {
  const { panels } = stripOf(binding);
  const pagesOn = panels.map(({ pages }) => pages.filter((page) => page !== null).length);
  return {
    panels: panels.length,
    printedPanels: pagesOn.filter((count) => count > 0).length,
    printedPages: pagesOn.reduce((sum, count) => sum + count, 0),
    cards: panels.filter(({ card }) => card).length,
    stands: binding.kind === 'ridge' ? 2 : 1,
    width: pagesInView(binding) * pageWidth,
  };
}
