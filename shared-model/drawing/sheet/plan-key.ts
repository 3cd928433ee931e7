/** What stands beside the plan: the scale bar, the key to signs and letters, and how to use the print. */

import { housePlaces } from '../../document/seating.ts';
import { placedInSetup, letterKey } from '../plan/short-marks.ts';
import { SCALE_BAR_HEIGHT, scaleBar } from '../plan/scale-bar.ts';
import type { Box, Primitive } from '../primitives.ts';
import { notes, notesHeight, signKey, signKeyHeight } from './legend.ts';
import type { PlotSheetRequest } from './request.ts';

const GAP = 1.6;

export function planKeyHeight(request: PlotSheetRequest, width: number): number {
  return (
    SCALE_BAR_HEIGHT +
    signKeyHeight(width, request) +
    notesHeight(keyNotes(request), width, request) +
    2 * GAP
  );
}

export function planKey(request: PlotSheetRequest, scale: number, box: Box): Primitive[] {
  const { units, palette } = request;
  const signs = { x: box.x, y: box.y + SCALE_BAR_HEIGHT + GAP };
  const below = signs.y + signKeyHeight(box.width, request) + GAP;
  return [
    scaleBar({ scale, units, palette, x: box.x, y: box.y, width: box.width }),
    ...signKey(signs, box.width, request),
    notes(keyNotes(request), { ...box, y: below, height: box.y + box.height - below + 1 }, request),
  ];
}

function keyNotes({ document, setup, units }: PlotSheetRequest): string[] {
  const letters = letterKey(placedInSetup(document, setup));
  const house = housePlaces(document).length > 0 ? ['The seat map shows the whole house.'] : [];
  const unit = units === 'metric' ? 'millimetres' : 'feet and inches';
  return [
    ...(letters === '' ? [] : [`Marks: ${letters}.`]),
    `Distances in ${unit} from the centre line (CL) to stage left (SL) or right (SR), and upstage (US) of the front edge (EDGE). ${house.join('')}`.trim(),
    'Print at 100 % and check the bar with a ruler. Local codes, the venue and licensed practice come before this plot.',
  ];
}
