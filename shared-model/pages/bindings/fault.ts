/** Whether paper can be bound as described: the shape of the views, and what folding ties together. */

import { msgid, ngettext, t } from '../../words/say.ts';
import { pagesInView, statesOf, type Binding, type PageRef, type View } from './binding.ts';

/** More leaves than this no ridge carries. */
export const MOST_LEAVES = 60;
export const MOST_PAGES_ACROSS = 12;

/** Why there is no such binding, in one sentence; null: it can be made. */
export function bindingFault(binding: Binding): string | null {
  return countFault(binding) ?? shapeFault(binding) ?? concertinaFault(binding);
}

function countFault({ kind, leaves, pagesPerPanel, stackSide }: Binding): string | null {
  if (!isWhole(leaves, 0, MOST_LEAVES)) return t`give 0 to ${MOST_LEAVES} leaves, not ${leaves}`;
  if (!isWhole(pagesPerPanel, 1, MOST_PAGES_ACROSS))
    return t`give 1 to ${MOST_PAGES_ACROSS} pages a panel, not ${pagesPerPanel}`;
  if (kind === 'loose' && leaves > 0) return t`loose pages have no leaves to turn`;
  if (kind === 'book' && pagesPerPanel !== 1) return t`each page of a book is a panel of its own`;
  if (kind === 'concertina' && pagesPerPanel < 2) return t`a concertina shows at least two pages`;
  if (kind !== 'ridge' && stackSide !== 0) return t`a ${kind} has one side, the first`;
  return null;
}

function shapeFault(binding: Binding): string | null {
  const sides = binding.kind === 'ridge' ? 2 : 1;
  const [states, places] = [statesOf(binding), pagesInView(binding)];
  if (binding.views.length !== sides) return sidesFault(binding, sides);
  for (const [side, views] of binding.views.entries()) {
    if (views.length !== states) return t`side ${side} has ${views.length} views; there are ${states} states`;
    const odd = views.findIndex((view) => view.length !== places);
    if (odd >= 0)
      return t`side ${side} shows ${views[odd]?.length ?? 0} pages in state ${odd}; it has ${places} places`;
  }
  return null;
}

function sidesFault({ kind, views: { length: given } }: Binding, count: number): string {
  return ngettext(
    msgid`a ${kind} has ${count} side, not ${given}`,
    `a ${kind} has ${count} sides, not ${given}`,
    count,
  );
}

/** A page that stays in view when a leaf is turned is the same sheet of paper. */
function concertinaFault({ kind, views }: Binding): string | null {
  if (kind !== 'concertina') return null;
  const [row = []] = views;
  const torn = row.findIndex((view, state) => state > 0 && !continues(row[state - 1] ?? [], view));
  return torn < 0
    ? null
    : t`in state ${torn} the pages that were in view before have to move on by two, as they hang together`;
}

function continues(before: View, after: View): boolean {
  return before.slice(2).every((page, place) => isSame(page, after[place] ?? null));
}

function isSame(a: PageRef | null, b: PageRef | null): boolean {
  return a === b || (a !== null && b !== null && a.part === b.part && a.page === b.page);
}

function isWhole(value: number, least: number, most: number): boolean {
  return Number.isInteger(value) && value >= least && value <= most;
}
