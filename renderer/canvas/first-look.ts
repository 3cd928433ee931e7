/** The cameras for what a person asks to be shown: the platform, the whole house, and what a concert opens with. */

import { allOf, type Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import { housePlaces } from '#model/document/seating.ts';
import { joinBoxes } from '#model/drawing/bounds.ts';
import { planExtent, stageExtent } from '#model/drawing/plan.ts';
import { storageOutline } from '#model/drawing/plan/storages.ts';
import { capped, extentOf, fitted, type Camera, type Extent, type Margins, type ViewSize } from './camera.ts';

/** In pixels: the words, figures and edge marks of the drawing stand outside the platform. */
const WITH_WORDS = { top: 76, bottom: 72, sides: 98 };
const WITH_HOUSE = { top: 76, bottom: 24, sides: 40 };
/** Below the last row that is shown at first. */
const BELOW_ROW = 6;
/** Of the height of the view, for the front of a house that has no rows to end with. */
const HOUSE_SHARE = 0.3;

/** Rows of the house are shown at first as long as the platform keeps this share of the size that it has without them. */
const WORTH_A_ROW = 0.82;

/** From the middle of a place to its back, and between the middles of rows that can be told apart, mm. */
const HALF_PLACE = 300;
const ROWS_APART = 2 * HALF_PLACE;

/** The platform and all that stands on it in a setup, with the words round it. */
export function stageLook(document: Document, setup: Id<'setup'>, view: ViewSize): Camera {
  return fitted(stageExtent(document, setup), view, capped(WITH_WORDS, view));
}

/** Everything: the house, the platform, and the storage places, above which no words stand. */
export function wholeLook(document: Document, view: ViewSize): Camera {
  const house = planExtent(document);
  const stored = storedExtent(document);
  const margins = capped(WITH_HOUSE, view);
  if (!stored) return fitted(house, view, margins);
  const whole = joinBoxes([house, stored]) ?? house;
  const above = whole.y + whole.height - (house.y + house.height);
  const { scale } = fitted(whole, view, margins);
  const top = Math.max(margins.bottom, margins.top - above * scale);
  return fitted(whole, view, { ...margins, top });
}

function storedExtent(document: Document): Extent | null {
  return extentOf(allOf(document, 'storage').flatMap((storage) => storageOutline(storage)));
}

/**
 * The platform, so that everyone on it can be told apart, over the first rows of the house, none of them cut; or all, if
 * all is as large.
 */
export function firstLook(document: Document, setup: Id<'setup'>, view: ViewSize): Camera {
  const words = capped(WITH_WORDS, view);
  const usual = lookWithin(document, setup, { view, margins: words });
  const top = roomAbove(document, stageExtent(document, setup), { top: words.top, scale: usual.scale });
  const first = lookWithin(document, setup, { view, margins: { ...words, top } });
  const whole = wholeLook(document, view);
  return whole.scale >= first.scale ? whole : first;
}

/** Storage places just above the platform are shown with their names, or not at all where they lie farther off. */
function roomAbove(
  document: Document,
  stage: Extent,
  { top, scale }: { readonly top: number; readonly scale: number },
): number {
  const stored = storedExtent(document);
  const front = stored ? (stored.y - (stage.y + stage.height)) * scale : Infinity;
  if (!stored || front >= top || front < 0) return top;
  const back = front + stored.height * scale + BELOW_ROW;
  return back <= top * MOST_ABOVE ? Math.max(top, back) : Math.max(front, top * LEAST_ABOVE);
}

/** In shares of the usual room above the platform. */
const [MOST_ABOVE, LEAST_ABOVE] = [1.45, 0.8];

interface Within {
  readonly view: ViewSize;
  readonly margins: Margins;
}

function lookWithin(document: Document, setup: Id<'setup'>, { view, margins }: Within): Camera {
  const stage = stageExtent(document, setup);
  const bottom = Math.max(margins.bottom, view.height * HOUSE_SHARE);
  const camera = withRows(document, stage, { view, margins }) ?? fitted(stage, view, { ...margins, bottom });
  // A wide platform is not as high as its room: what is left over goes to the house, in whole rows.
  const top = stage.y + stage.height;
  const from = (above: number): number => top - (view.height / 2 - above) / camera.scale;
  const foot = from(margins.top) - view.height / 2 / camera.scale;
  const above = margins.top + cutBy(rowEnds(document, stage.y), foot, camera.scale);
  return { ...camera, centre: { x: camera.centre.x, y: from(above) } };
}

/** How many pixels of the next row show below the last whole one; none where that is the last of all. */
function cutBy(ends: readonly number[], foot: number, scale: number): number {
  const [first] = ends;
  if (first === undefined) return 0;
  const lines = [first + 3 * HALF_PLACE, ...ends];
  const isShown = (line: number): boolean => line >= foot + BELOW_ROW / scale;
  const last = lines.findLast(isShown);
  return last === undefined || lines.every(isShown) ? 0 : (last - foot) * scale - BELOW_ROW;
}

/** With as many rows as leave the platform nearly as large as without; null where no row can be told from the next. */
function withRows(document: Document, stage: Extent, { view, margins }: Within): Camera | null {
  const looks = rowEnds(document, stage.y).map((foot) => {
    const extent = { ...stage, y: foot, height: stage.y + stage.height - foot };
    return fitted(extent, view, { ...margins, bottom: BELOW_ROW });
  });
  if (looks.length === 0) return null;
  const alone = fitted(stage, view, { ...margins, bottom: WITH_HOUSE.bottom });
  return looks.findLast(({ scale }) => scale >= alone.scale * WORTH_A_ROW) ?? null;
}

/** Depths at which the house can be cut between two rows, the nearest to the platform first. */
function rowEnds(document: Document, front: number): number[] {
  const depths = housePlaces(document)
    .map(({ y }) => y)
    .toSorted((a, b) => b - a);
  return depths.flatMap((y, at) => {
    const next = depths[at + 1];
    const isEnd = next === undefined || y - next >= ROWS_APART;
    return isEnd && y < front ? [y - HALF_PLACE] : [];
  });
}
