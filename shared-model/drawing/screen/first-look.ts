/** The cameras for what a person asks to be shown of a document: the platform, the whole house, and what it opens with. */

import { allOf, type Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import { housePlaces } from '../../document/seating.ts';
import { boxOfPoints } from '../bounds.ts';
import { planExtent, stageExtent } from '../plan.ts';
import { storageOutline } from '../plan/storages.ts';
import type { Box } from '../primitives.ts';
import { cameraAtFirst, cameraOnWhole, type Shown } from './first-camera.ts';
import { capped, fitted, WITH_WORDS, type Camera, type ViewSize } from './framing.ts';

/** The platform and all that stands on it in a setup, with the words round it. */
export function stageLook(document: Document, setup: Id<'setup'>, view: ViewSize): Camera {
  return fitted(stageExtent(document, setup), view, capped(WITH_WORDS, view));
}

/** Everything: the house, the platform, and the storage places, above which no words stand. */
export function wholeLook(document: Document, view: ViewSize): Camera {
  return cameraOnWhole({ house: planExtent(document), stored: storedExtent(document) }, view);
}

/**
 * The platform, so that everyone on it can be told apart, over the first rows of the house, none of them cut; or all, if
 * all is as large.
 */
export function firstLook(document: Document, setup: Id<'setup'>, view: ViewSize): Camera {
  return cameraAtFirst(shownOf(document, setup), view);
}

/** All that the camera goes by. */
export function shownOf(document: Document, setup: Id<'setup'>): Shown {
  const stage = stageExtent(document, setup);
  const house = planExtent(document);
  return { stage, house, stored: storedExtent(document), rows: rowEnds(document, stage.y) };
}

function storedExtent(document: Document): Box | null {
  return boxOfPoints(allOf(document, 'storage').flatMap((storage) => storageOutline(storage)));
}

/** From the middle of a place to its back, and between the middles of rows that can be told apart, mm. */
const HALF_PLACE = 300;
const ROWS_APART = 2 * HALF_PLACE;

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
