/** From where to where the section shows the house. */

import { platformOf } from '../../document/document.ts';
import { crossings } from '../../checks/sightlines/rake-focus.ts';
import { onPlane } from '../../checks/sightlines/rake-plane.ts';
import type { Millimetres } from '../../document/records.ts';
import type { SectionContext } from './context.ts';
import { stepsOf } from './steps.ts';

/** Floor behind the last row and behind the platform. */
const MARGIN = 300;

/** Along the plane: the platform, what stands on it, and all rows and places that are shown. */
export function sectionReach(context: SectionContext): {
  readonly from: Millimetres;
  readonly to: Millimetres;
} {
  const { plane, document, rakes, places, items, cut } = context;
  let [from, to] = [Infinity, -Infinity];
  const add = (out: Millimetres): void => {
    [from, to] = [Math.min(from, out), Math.max(to, out)];
  };
  const { outline } = platformOf(document);
  if (cut.through === 'centre') for (const corner of outline) add(onPlane(plane, corner).out);
  for (const out of crossings(plane, outline)) add(out);
  for (const { record } of items) add(onPlane(plane, record).out);
  for (const rake of rakes) {
    for (const tread of stepsOf(context, rake).treads) {
      add(tread.from);
      add(tread.to);
    }
  }
  for (const { out } of places) add(out + PLACE_ROOM);
  return { from: from - MARGIN, to: to + MARGIN };
}

const PLACE_ROOM = 500;
