/**
 * What a concert opens with, worked out from a few figures of its document: so the page can place the plan to the pixel
 * before it has the document, or any of the window's script. Lengths in mm of the stage, rooms in pixels.
 */

import type { Box } from '../primitives.ts';
import { capped, fitted, WITH_WORDS, type Camera, type Margins, type ViewSize } from './framing.ts';

export interface Shown {
  /** The platform and what stands on it in the setup. */
  readonly stage: Box;
  /** The same of all setups, and the house. */
  readonly house: Box;
  /** Round all storage places; null: there are none. */
  readonly stored: Box | null;
  /** Depths at which the house can be cut between two rows, the nearest to the platform first. */
  readonly rows: readonly number[];
}

const WITH_HOUSE: Margins = { top: 76, bottom: 24, sides: 40 };
/** Below the last row that is shown at first. */
const BELOW_ROW = 6;
/** Of the height of the view, for the front of a house that has no rows to end with. */
const HOUSE_SHARE = 0.3;

/** Rows of the house are shown at first as long as the platform keeps this share of the size that it has without them. */
const WORTH_A_ROW = 0.82;

/** A row and the half of its place that is before its middle, mm. */
const FIRST_ROW = 900;

/** Everything: the house, the platform, and the storage places, above which no words stand. */
export function cameraOnWhole({ house, stored }: Pick<Shown, 'house' | 'stored'>, view: ViewSize): Camera {
  const margins = capped(WITH_HOUSE, view);
  if (!stored) return fitted(house, view, margins);
  const whole = joined(house, stored);
  const above = whole.y + whole.height - (house.y + house.height);
  const { scale } = fitted(whole, view, margins);
  const top = Math.max(margins.bottom, margins.top - above * scale);
  return fitted(whole, view, { ...margins, top });
}

function joined(a: Box, b: Box): Box {
  const [x, y] = [Math.min(a.x, b.x), Math.min(a.y, b.y)];
  const right = Math.max(a.x + a.width, b.x + b.width);
  const top = Math.max(a.y + a.height, b.y + b.height);
  return { x, y, width: right - x, height: top - y };
}

/** The platform over the first rows of the house, none of them cut; or all, if all is as large. */
export function cameraAtFirst(shown: Shown, view: ViewSize): Camera {
  const words = capped(WITH_WORDS, view);
  const usual = lookWithin(shown, { view, margins: words });
  const top = roomAbove(shown, { top: words.top, scale: usual.scale });
  const first = lookWithin(shown, { view, margins: { ...words, top } });
  const whole = cameraOnWhole(shown, view);
  return whole.scale >= first.scale ? whole : first;
}

/** Storage places just above the platform are shown with their names, or not at all where they lie farther off. */
function roomAbove({ stage, stored }: Shown, { top, scale }: { top: number; scale: number }): number {
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

function lookWithin(shown: Shown, { view, margins }: Within): Camera {
  const { stage, rows } = shown;
  const bottom = Math.max(margins.bottom, view.height * HOUSE_SHARE);
  const camera = withRows(shown, { view, margins }) ?? fitted(stage, view, { ...margins, bottom });
  // A wide platform is not as high as its room: what is left over goes to the house, in whole rows.
  const top = stage.y + stage.height;
  const from = (above: number): number => top - (view.height / 2 - above) / camera.scale;
  const foot = from(margins.top) - view.height / 2 / camera.scale;
  const above = margins.top + cutBy(rows, foot, camera.scale);
  return { ...camera, centre: { x: camera.centre.x, y: from(above) } };
}

/** How many pixels of the next row show below the last whole one; none where that is the last of all. */
function cutBy(ends: readonly number[], foot: number, scale: number): number {
  const [first] = ends;
  if (first === undefined) return 0;
  const lines = [first + FIRST_ROW, ...ends];
  const isShown = (line: number): boolean => line >= foot + BELOW_ROW / scale;
  const last = lines.findLast(isShown);
  return last === undefined || lines.every(isShown) ? 0 : (last - foot) * scale - BELOW_ROW;
}

/** With as many rows as leave the platform nearly as large as without; null where no row can be told from the next. */
function withRows({ stage, rows }: Shown, { view, margins }: Within): Camera | null {
  const looks = rows.map((foot) => {
    const extent = { ...stage, y: foot, height: stage.y + stage.height - foot };
    return fitted(extent, view, { ...margins, bottom: BELOW_ROW });
  });
  if (looks.length === 0) return null;
  const alone = fitted(stage, view, { ...margins, bottom: WITH_HOUSE.bottom });
  return looks.findLast(({ scale }) => scale >= alone.scale * WORTH_A_ROW) ?? null;
}
