/** What a plot is made of, and how it answers when it cannot be made. */

import type { Finding } from '../../checks/finding.ts';
import type { Report } from '../../checks/report.ts';
import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Units } from '../../document/measures.ts';
import type { Palette } from '../palette.ts';
import type { Orientation, PaperName } from '../papers.ts';
import type { MeasureText, Sheet } from '../primitives.ts';

/** What a plot is made of, in the order of its sheets; those from `marks` on share sheets. Named as in a print pack. */
export const PLOT_PARTS = [
  'plot',
  'seats',
  'section',
  'marks',
  'inventory',
  'figures',
  'findings',
  'cautions',
] as const;

export type PlotPart = (typeof PLOT_PARTS)[number];

/** The same shape as in the shell's contract. */
export interface PlotOptions {
  readonly paper: PaperName;
  readonly orientation: Orientation | 'auto';
  /** The ratio's denominator, 50 for 1:50; null picks the largest standard scale that fits. */
  readonly scale: number | null;
  /** What is printed, at least one; left out: everything. */
  readonly parts?: readonly PlotPart[];
}

/** A finding in words. */
export interface Explanation {
  readonly headline: string;
  readonly text: string;
  readonly advice: string;
}

export interface PlotSheetRequest {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  /** Null: the plot has no figures, findings or seat map. */
  readonly report: Report | null;
  /** Puts findings into words. */
  readonly explain: (finding: Finding) => Explanation;
  readonly options: PlotOptions;
  readonly measure: MeasureText;
  readonly units: Units;
  /** Day of issue as it is to be printed; empty: left blank for the pen. */
  readonly issued: string;
  readonly palette: Palette;
}

export interface FittingChoice {
  readonly paper: PaperName;
  readonly orientation: Orientation;
  readonly scale: number;
}

export interface PlotRefusal {
  readonly ok: false;
  readonly code: 'plot.unknownScale' | 'plot.doesNotFit' | 'plot.nothingToPrint';
  /** What is wrong and what would do: one sentence for people. */
  readonly message: string;
  /** Choices that would fit, best first. */
  readonly fits: readonly FittingChoice[];
}

export interface PlotSheets {
  readonly ok: true;
  readonly sheets: readonly Sheet[];
  readonly choice: FittingChoice;
  /** What could not be shown, for the one who prints. */
  readonly notes: readonly string[];
}

/** Those of a stage plot. */
export interface PlotSheetsByPart extends Omit<PlotSheets, 'choice'> {
  /** Without a scale where the plan is not printed. */
  readonly choice: Omit<FittingChoice, 'scale'> & { readonly scale: number | null };
  /** The numbers of the sheets that each part is on, from 1; a part that is not printed has none. */
  readonly places: ReadonlyMap<PlotPart, readonly number[]>;
}

export type PlotResult = PlotSheets | PlotRefusal;
