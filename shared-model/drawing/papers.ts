/** Sheets that plots are printed on, and the frame drawn on them. */

import type { Units } from '../document/measures.ts';
import { paperIn } from '../document/regions.ts';
import type { Box } from './primitives.ts';

export type PaperName = 'A4' | 'A3' | 'Letter' | 'Tabloid';
export type Orientation = 'portrait' | 'landscape';

export interface Paper {
  readonly name: PaperName;
  /** Upright: width is the shorter side, mm. */
  readonly width: number;
  readonly height: number;
  readonly source: string;
}

const INCH = 25.4;

export const PAPERS: readonly Paper[] = [
  { name: 'A4', width: 210, height: 297, source: 'ISO 216' },
  { name: 'A3', width: 297, height: 420, source: 'ISO 216' },
  { name: 'Letter', width: 8.5 * INCH, height: 11 * INCH, source: 'ANSI/ASME Y14.1 size A (from memory)' },
  { name: 'Tabloid', width: 11 * INCH, height: 17 * INCH, source: 'ANSI/ASME Y14.1 size B (from memory)' },
];

export function paperNamed(name: PaperName): Paper {
  const paper = PAPERS.find((candidate) => candidate.name === name);
  if (!paper) throw new Error(`no paper ${name}`);
  return paper;
}

/**
 * To begin with: the paper used last, otherwise the one that is usual where the concert's units are, or where somebody
 * is. `locale`: a language tag with a region.
 */
export function usualPaper(lastUsed: string | null, units: Units, locale = ''): PaperName {
  const known = PAPERS.find(({ name }) => name === lastUsed);
  return known?.name ?? (units === 'imperial' ? 'Letter' : paperIn(locale));
}

export interface Page {
  readonly paper: PaperName;
  readonly orientation: Orientation;
  readonly width: number;
  readonly height: number;
  /** Inside the border: what may be printed on. */
  readonly frame: Box;
}

/** ISO 5457 (from memory): a border of 10 mm, 20 mm on the left for filing. */
const BORDER = 10;
const FILING_BORDER = 20;

export function pageOf(name: PaperName, orientation: Orientation): Page {
  const paper = paperNamed(name);
  const [width, height] =
    orientation === 'portrait' ? [paper.width, paper.height] : [paper.height, paper.width];
  const frame: Box = {
    x: FILING_BORDER,
    y: BORDER,
    width: width - FILING_BORDER - BORDER,
    height: height - 2 * BORDER,
  };
  return { paper: name, orientation, width, height, frame };
}
