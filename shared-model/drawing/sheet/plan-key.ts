/** What stands beside the plan: the scale bar, the key to signs and letters, and how to use the print. */

import { placedInSetup } from '../../document/document.ts';
import { housePlaces } from '../../document/seating.ts';
import { letterKey } from '../plan/short-marks.ts';
import { SCALE_BAR_HEIGHT, scaleBar } from '../plan/scale-bar.ts';
import type { Box, Primitive } from '../primitives.ts';
import { notesHeight, signKey, signKeyHeight } from './legend.ts';
import type { PlotSheetRequest } from './request.ts';

const GAP = 1.6;

export function planKeyHeight(request: PlotSheetRequest, width: number): number {
  return SCALE_BAR_HEIGHT + GAP + signKeyHeight(width, request);
}

export function planKey(request: PlotSheetRequest, scale: number, box: Box): Primitive[] {
  const { units, palette } = request;
  return [
    scaleBar({ scale, units, palette, x: box.x, y: box.y, width: box.width }),
    ...signKey({ x: box.x, y: box.y + SCALE_BAR_HEIGHT + GAP }, box.width, request),
  ];
}

export function planNotesHeight(request: PlotSheetRequest, width: number): number {
  return notesHeight(planNotes(request), width, request);
}

/** Letters of the marks, how distances run, and how to use the print. */
export function planNotes({ document, setup, units }: PlotSheetRequest): string[] {
  const letters = letterKey(placedInSetup(document, setup));
  const house = housePlaces(document).length > 0 ? ' The seat map has the whole house.' : '';
  const unit = units === 'metric' ? 'millimetres' : 'feet and inches';
  return [
    ...(letters === '' ? [] : [`Marks: ${letters}.${house}`]),
    `Distances in ${unit} from the centre line (CL) to stage left (SL) or right (SR), and upstage (US) of the front edge (EDGE).`,
    'Print at 100 % and check the bar with a ruler. Local codes, the venue and licensed practice come before this plot.',
  ];
}
