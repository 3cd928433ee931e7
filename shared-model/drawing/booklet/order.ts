/** What a booklet is printed from, and the sheets that come of it. */

import type { Binding, PageRef } from '../../pages/bindings/binding.ts';
import type { Sheet } from '../primitives.ts';
import type { TextTools } from '../sheet/blocks.ts';

/** Millimetres. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface NamedSize extends Size {
  readonly name: string;
}

export interface BookletOrder {
  readonly title: string;
  readonly binding: Binding;
  /** Who reads on each side of the station; empty: nobody. */
  readonly players: readonly string[];
  /** Room for a page on the panels. No page is larger. */
  readonly page: Size;
  /** True size of a page; null: there is no PDF of it, so a numbered blank is drawn. */
  readonly sizeOf: (ref: PageRef) => Size | null;
  /** Upright. */
  readonly paper: NamedSize;
  /** When each turn is made, in words ("after bar 48"), the first turn first; empty: not said. */
  readonly cues: readonly string[];
  /** Who makes each turn; left out or empty: who reads where the leaves lie at first. */
  readonly turners?: readonly string[];
  /** What is wrong with the plan that it is of, as a sentence. */
  readonly warning?: string;
  readonly tools: TextTools;
}

/** A page of a part at its true size. */
export interface PlacedPage extends Size {
  readonly ref: PageRef;
  /** Top left corner of the area it covers, mm from the top left corner of the sheet. */
  readonly x: number;
  readonly y: number;
  /** It stands on its head. */
  readonly turned: boolean;
}

export interface BookletSheet {
  readonly sheet: Sheet;
  /** What lies under the marks. */
  readonly pages: readonly PlacedPage[];
}

export interface BookletSheets {
  readonly ok: true;
  /** First what is cut and taped, in order, then how to do it. */
  readonly sheets: readonly BookletSheet[];
  /** How many of the sheets are panels or pages; the others are the instructions. */
  readonly printed: number;
  readonly perSheet: 'panel' | 'page';
}

export interface BookletRefusal {
  readonly ok: false;
  readonly code: 'booklet.doesNotFit';
  readonly message: string;
}
