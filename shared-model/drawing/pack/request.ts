/** What a print pack is made of: what is asked for, what it has to print, and pages that are drawn one at a time. */

import type { Report } from '../../checks/report.ts';
import type { Id } from '../../document/ids.ts';
import type { PaperName } from '../papers.ts';
import type { Sheet } from '../primitives.ts';
import type { PlotSheetRequest } from '../sheet/request.ts';

/** The kinds of sheets, in the order in which a pack has them unless it is said otherwise. */
export const PACK_KINDS = [
  'cover',
  'plot',
  'marks',
  'floor',
  'section',
  'seats',
  'view',
  'turns',
  'cards',
  'booklet',
  'figures',
  'changeover',
  'inventory',
  'cautions',
] as const;

export type PackKind = (typeof PACK_KINDS)[number];

/** One thing to choose: a sheet, or a few that belong together. */
export interface PackEntry {
  /**
   * Its name on the command line and in file names, of letters, digits and dashes: "cover", "plot-2", "seats-1-p3". The
   * number is the setup's place in the programme, "1b" its second version.
   */
  readonly name: string;
  readonly kind: PackKind;
  /** For people: "Stage plot", "View from C 12". */
  readonly title: string;
  /** Null: of the whole concert. */
  readonly setup: Id<'setup'> | null;
  /** Of seats a player's id, of a view the place's, of a booklet the stand's; null: the kind needs none. */
  readonly subject: string | null;
  /** Whether it is in a pack for which nobody has chosen sheets. */
  readonly usual: boolean;
}

/** What the checks say of a setup, and in which words. */
export interface CheckedSetup {
  readonly report: Report;
  readonly explain: PlotSheetRequest['explain'];
}

export interface PackRequest extends Pick<
  PlotSheetRequest,
  'document' | 'measure' | 'units' | 'issued' | 'palette'
> {
  readonly paper: PaperName;
  /** Of the stage plots, 50 for 1:50; null: the largest that fits each. */
  readonly scale: number | null;
  /** Asked again and again of the same setups: whoever hands it in remembers. */
  readonly checked: (setup: Id<'setup'>) => CheckedSetup;
  /** What the pack has in it, in its order; the cover lists it. */
  readonly entries: readonly PackEntry[];
}

/** Where the pages of an entry stand in the pack. */
export interface Numbering {
  /** Of the entry's first page, from 1. */
  readonly first: number;
  /** Of the whole pack. */
  readonly sheets: number;
  /** The first sheet of another entry; null: the pack does not have it. */
  readonly sheetOf: (name: string) => number | null;
}

export interface DrawnPage {
  readonly sheet: Sheet;
  /** What could not be shown, for the one who prints. */
  readonly notes: readonly string[];
}

/** Pages of one entry, none of which is drawn before it is asked for. */
export interface EntryPages {
  /** 0 where there is nothing to draw, or where it fits at no standard scale. */
  readonly count: number;
  readonly notes: readonly string[];
  /** `index` from 0. */
  readonly draw: (index: number, numbering: Numbering) => DrawnPage;
}
