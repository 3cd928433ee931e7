/** How every player sees the pages he reads: how far, how steep, how large, how wide. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Degrees, Millimetres } from '../../document/records.ts';
import type { Vec3 } from '../../geometry/frame.ts';
import { eyesOf, type End, type Eye } from './eyes.ts';
import { isBeyond, turnFor, type Turn } from './gaze.ts';
import { pageViews, type PageView } from './page-view.ts';
import { middleOf, readingPlaces, type ReadingPlace } from './places.ts';
import { EDGE_ON, GREATEST_ANGLE, LEAST_LETTERING, SPACES_OF_STAFF } from './published.ts';
import { rowTurn } from './row-turn.ts';
import { judgeStaff, type StaffVerdict } from './staff-size.ts';
import { heightSeenUnder, minutesOfArc } from './visual-angle.ts';

/** One row of pages as its reader sees it. Angles in degrees, lengths in mm. */
export interface ReadingResult {
  readonly player: Id<'player'>;
  readonly stand: Id<'stand'>;
  readonly side: 0 | 1;
  /** Of the two who may play, the one who sees the pages worse; `small` when it is somebody. */
  readonly end: End;
  readonly eye: Vec3;
  /** The middle of the row. */
  readonly middle: Vec3;
  /** From the reader's left. */
  readonly pages: readonly PageView[];
  /** From the eye to the nearest and to the farthest line of the row. */
  readonly nearest: Millimetres;
  readonly farthest: Millimetres;
  /** Greatest of the angles at the pages' middles between line of sight and normal. */
  readonly angle: Degrees;
  /** The same at the line that is worst off. */
  readonly greatestAngle: Degrees;
  /** From the middle of the row to the end of a line farthest to the side, and with what one turns so far. */
  readonly aside: Degrees;
  readonly turn: Turn;
  /** From the leftmost to the rightmost end of a line. */
  readonly sweep: Degrees;
  readonly staffSize: Millimetres | null;
  readonly staff: StaffVerdict;
  /** Apparent height of a staff space, minutes of arc: at the middle of the page, and at the line, where it is least. */
  readonly spaceMinutes: { readonly middle: number; readonly least: number } | null;
  /** Height that lettering needs at the farthest line for 16 minutes of arc, if it is square to the line of sight. */
  readonly lettering: Millimetres;
}

/**
 * One result for every side of a stand with pages and a reader who is there, in the order of the stands' ids.
 *
 * Lines fill each page up to `MARGIN`. When anyone may play, both ends are looked at and the one who sees worse is
 * reported: by the angle if that is beyond 45° for either, else by the smallest apparent size.
 */
export function readingResults(document: Document, setup: Id<'setup'>): ReadingResult[] {
  return readingPlaces(document, setup).map((place) =>
    readingAt(place, eyesOf(document, setup, place.reader)),
  );
}

/** The worse of what these eyes see; at least one. */
export function readingAt(place: ReadingPlace, eyes: readonly Eye[]): ReadingResult {
  return eyes.map((eye) => seenBy(place, eye)).reduce(worseOf);
}

function seenBy({ reader, stand, desk, paper }: ReadingPlace, eye: Eye): ReadingResult {
  const { pagesAcross, staffSize } = desk.side;
  const pages = pageViews(paper, pagesAcross, eye);
  const farthest = greatest(pages, (page) => page.farthest);
  const { aside, sweep } = rowTurn(paper, eye);
  return {
    player: reader.id,
    stand: stand.id,
    side: desk.sideIndex,
    end: eye.end,
    eye: { x: eye.x, y: eye.y, z: eye.z },
    middle: middleOf(paper),
    pages,
    nearest: smallest(pages, (page) => page.nearest),
    farthest,
    angle: greatest(pages, (page) => page.angle),
    greatestAngle: greatest(pages, (page) => page.greatestAngle),
    aside,
    turn: turnFor(aside),
    sweep,
    staffSize,
    staff: judgeStaff(staffSize, readersOf(stand).size > 1),
    spaceMinutes: staffSize === null ? null : spaceMinutes(pages, staffSize / SPACES_OF_STAFF),
    lettering: heightSeenUnder(LEAST_LETTERING, farthest),
  };
}

/** A stand has one reader a side, so two who share it face each other over a back-to-back pair. */
function readersOf(stand: ReadingPlace['stand']): Set<string> {
  return new Set(
    stand.sides.flatMap(({ reader, pagesAcross }) => (reader && pagesAcross > 0 ? [reader] : [])),
  );
}

/** Apparent height of a staff space, minutes of arc: at the middle of the page, and at the line, where it is least. */
export function spaceMinutes(
  pages: readonly PageView[],
  space: Millimetres,
): { middle: number; least: number } {
  const minutes = (scale: number): number => minutesOfArc(space * scale, 1);
  return {
    middle: minutes(smallest(pages, ({ scale }) => scale.middle)),
    least: minutes(smallest(pages, ({ scale }) => scale.least)),
  };
}

type Figure = (page: PageView) => number;

function greatest(pages: readonly PageView[], figure: Figure): number {
  return pages.reduce((most, page) => Math.max(most, figure(page)), -Infinity);
}

function smallest(pages: readonly PageView[], figure: Figure): number {
  return pages.reduce((least, page) => Math.min(least, figure(page)), Infinity);
}

function worseOf(small: ReadingResult, tall: ReadingResult): ReadingResult {
  const steeper = gradeOf(tall.angle) - gradeOf(small.angle);
  if (steeper !== 0) return steeper > 0 ? tall : small;
  return leastScale(tall) < leastScale(small) ? tall : small;
}

/** 0: square enough. 1: steeper than the published limit. 2: on edge or from behind. */
function gradeOf(angle: Degrees): 0 | 1 | 2 {
  if (!isBeyond(angle, GREATEST_ANGLE)) return 0;
  return angle < EDGE_ON ? 1 : 2;
}

function leastScale({ pages }: ReadingResult): number {
  return smallest(pages, ({ scale }) => scale.least);
}
