/** Bindings from pages in the order in which they are read. */

import type { Binding, PageRef, SideIndex, View } from './binding.ts';

/** Single pages in a row on one desk. */
export function looseRow(pages: View): Binding {
  return { kind: 'loose', leaves: 0, pagesPerPanel: pages.length, stackSide: 0, views: [[pages]] };
}

/** Printed on both sides, the first page on the right unless it `opensOnLeft`: then inside the front cover. */
export function book(pages: View, opensOnLeft = false): Binding {
  const faces = opensOnLeft ? pages : [null, ...pages];
  const states = Math.max(1, Math.ceil(faces.length / 2));
  return {
    kind: 'book',
    leaves: states - 1,
    pagesPerPanel: 1,
    stackSide: 0,
    views: [inViews(faces, states, { size: 2, step: 2 })],
  };
}

/** Pages taped side to side, of which `shown` (two or more) lie open at a time. */
export function concertina(pages: View, shown = 2): Binding {
  const leaves = Math.max(0, Math.ceil((pages.length - shown) / 2));
  return {
    kind: 'concertina',
    leaves,
    pagesPerPanel: shown,
    stackSide: 0,
    views: [inViews(pages, leaves + 1, { size: shown, step: 2 })],
  };
}

export interface RidgeOrder {
  readonly leaves: number;
  readonly pagesPerPanel: number;
  /** Where the one who turns stands. */
  readonly stackSide: SideIndex;
  /** What each side's reader reads, in order, `pagesPerPanel` a state; empty: nobody reads there. */
  readonly sides: readonly [View, View];
}

/** A ridge booklet that shows both readers their pages in order. Throws when a side has more pages than places. */
export function ridgeBooklet({ leaves, pagesPerPanel, stackSide, sides }: RidgeOrder): Binding {
  const states = leaves + 1;
  const window = { size: pagesPerPanel, step: pagesPerPanel };
  if (sides.some((pages) => pages.length > states * pagesPerPanel))
    throw new Error(`${leaves} leaves of ${pagesPerPanel} pages a side cannot hold that many pages`);
  const views = sides.map((pages) => inViews(pages, states, window));
  return { kind: 'ridge', leaves, pagesPerPanel, stackSide, views };
}

/** Pages `from` to `to` of a part. */
export function pagesOf(part: string, from: number, to: number): PageRef[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => ({ part, page: from + index }));
}

interface Window {
  readonly size: number;
  readonly step: number;
}

function inViews(pages: View, states: number, { size, step }: Window): View[] {
  return Array.from({ length: states }, (_, state) =>
    Array.from({ length: size }, (__, place) => pages[state * step + place] ?? null),
  );
}
