/** Tries how little has to change at a desk for its pages to be read well: its tilt, its facing, fewer pages. */

import { standModel, USUAL_STAND } from '../../catalogue/stands.ts';
import { desksOf, type Rectangle3 } from '../../document/desks.ts';
import { find, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { floorHeightAt } from '../../document/levels.ts';
import type { Degrees, Stand } from '../../document/records.ts';
import { normaliseFacing } from '../../geometry/frame.ts';
import { eyesOf, type Eye } from './eyes.ts';
import { isBeyond } from './gaze.ts';
import { pageViews } from './page-view.ts';
import { placesAt } from './places.ts';
import { GREATEST_ANGLE } from './published.ts';
import type { ReadingResult } from './reading.ts';
import { rowTurn } from './row-turn.ts';
import { between } from './vectors.ts';

/** A change that was tried: the stand's new tilt or facing, and the greatest angle that was measured then. */
export interface Clearing {
  readonly change: 'tilt' | 'facing';
  readonly to: Degrees;
  readonly angle: Degrees;
}

/** At the pages' middles, or at the line that is worst off. */
export type AngleKind = 'angle' | 'greatestAngle';

/**
 * The smallest change in whole degrees after which every page of the stand is within 45° for its reader: of the tilt
 * as far as the model goes, or else of the facing of a single stand. Null: neither does.
 */
export function clearingOf(
  document: Document,
  setup: Id<'setup'>,
  standId: Id<'stand'>,
  kind: AngleKind,
): Clearing | null {
  const stand = find(document, standId);
  if (!stand) return null;
  const angleOf = measurer(document, setup, stand, kind);
  return byTilt(stand, angleOf) ?? (stand.form === 'single' ? byFacing(stand, angleOf) : null);
}

type AngleOf = (changed: Stand) => Degrees;

/** The angle that is worst of all who read on the stand as changed; readers and floor stay as they are. */
function measurer(document: Document, setup: Id<'setup'>, stand: Stand, kind: AngleKind): AngleOf {
  const floor = floorHeightAt(document, setup, stand);
  const readers = placesAt(document, setup, stand).map((place) => ({
    place,
    eyes: eyesOf(document, setup, place.reader),
  }));
  return (changed) => {
    const desks = desksOf(changed, floor);
    return readers.reduce((most, { place, eyes }) => {
      const desk = desks[place.desk.sideIndex];
      if (!desk?.paper) return most;
      return Math.max(most, greatest(desk.paper, desk.side.pagesAcross, eyes, kind));
    }, 0);
  };
}

function greatest(row: Rectangle3, pages: number, eyes: readonly Eye[], kind: AngleKind): Degrees {
  let most = 0;
  for (const eye of eyes) for (const view of pageViews(row, pages, eye)) most = Math.max(most, view[kind]);
  return most;
}

function byTilt(stand: Stand, angleOf: AngleOf): Clearing | null {
  const { least, most } = (standModel(stand.model) ?? USUAL_STAND).tilt;
  const tilts = nearestFirst(stand.tilt, 90).filter((tilt) => tilt >= least && tilt <= most);
  return firstThatClears('tilt', tilts, (tilt) => angleOf({ ...stand, tilt }));
}

function byFacing(stand: Stand, angleOf: AngleOf): Clearing | null {
  const facings = nearestFirst(stand.facing, 180).map(normaliseFacing);
  return firstThatClears('facing', facings, (facing) => angleOf({ ...stand, facing }));
}

function firstThatClears(
  change: Clearing['change'],
  candidates: readonly Degrees[],
  measure: (to: Degrees) => Degrees,
): Clearing | null {
  for (const to of candidates) {
    const angle = measure(to);
    if (!isBeyond(angle, GREATEST_ANGLE)) return { change, to, angle };
  }
  return null;
}

export interface FewerPages {
  readonly pages: number;
  /** From the middle of the narrower row to its outer end, as its reader sees it. */
  readonly aside: Degrees;
}

/** The most pages side by side whose row ends within `limit` of its middle; null: not even one does. */
export function fewerPagesFor(
  document: Document,
  setup: Id<'setup'>,
  { stand: standId, side, pages, eye }: ReadingResult,
  limit: Degrees,
): FewerPages | null {
  const stand = find(document, standId);
  const place = stand && placesAt(document, setup, stand).find(({ desk }) => desk.sideIndex === side);
  if (!place) return null;
  for (let count = pages.length - 1; count > 0; count--) {
    const { aside } = rowTurn(narrowed(place.paper, count / pages.length), eye);
    if (!isBeyond(aside, limit)) return { pages: count, aside };
  }
  return null;
}

/** The row with its middle where it is and so much of its width. */
function narrowed([lipLeft, lipRight, topRight, topLeft]: Rectangle3, share: number): Rectangle3 {
  const [near, far] = [(1 - share) / 2, (1 + share) / 2];
  return [
    between(lipLeft, lipRight, near),
    between(lipLeft, lipRight, far),
    between(topLeft, topRight, far),
    between(topLeft, topRight, near),
  ];
}

/** Whole degrees about `angle`, up to `farthest` away on either side. */
function nearestFirst(angle: Degrees, farthest: number): Degrees[] {
  const start = Math.round(angle);
  return Array.from({ length: 2 * farthest + 1 }, (_, index) =>
    index % 2 === 0 ? start + index / 2 : start - (index + 1) / 2,
  );
}
