/** The whole house at its own scale, each place marked by what it sees of the player it sees worst. */

import type { SightBand } from '../../checks/report.ts';
import { drawGround, drawItems, planContext, planExtent, WORST_SEEN } from '../plan.ts';
import { PLATFORM_MARGIN } from '../plan/datum.ts';
import { seatBands } from '../plan/house.ts';
import { SCALE_BAR_HEIGHT, scaleBar } from '../plan/scale-bar.ts';
import type { Box, GroupPrimitive, Primitive } from '../primitives.ts';
import { SIGHT_BANDS } from '../sight-bands.ts';
import { largestScale } from '../scales.ts';
import { LEADING, TEXT } from '../style.ts';
import { bandKey, BAND_ROW, notes, placeCount } from './legend.ts';
import { heading } from './blocks.ts';
import type { PlotSheetRequest } from './request.ts';

export interface SeatMap {
  readonly scale: number;
  readonly children: readonly Primitive[];
}

const KEY_HEIGHT = Math.max(5 * BAND_ROW, SCALE_BAR_HEIGHT) + 3;

/** Null when there are no places, or when the house fits at no standard scale. */
export function seatMap(request: PlotSheetRequest, body: Box): SeatMap | null {
  const title = heading('Seat map', body.width, request);
  const area: Box = { ...body, y: body.y + title.height, height: body.height - title.height - KEY_HEIGHT };
  const extent = planExtent(request.document);
  const scale = largestScale(
    request.units,
    (candidate) =>
      extent.width / candidate + 2 * PLATFORM_MARGIN <= area.width &&
      extent.height / candidate + PLATFORM_MARGIN + FOOT <= area.height,
  );
  if (scale === null) return null;
  const counts = request.report ? bandCounts(request) : null;
  const key = { x: body.x, y: body.y + body.height - KEY_HEIGHT + 3 };
  return {
    scale,
    children: [
      ...title.draw(body),
      drawMap(request, { area, scale, extent, counts }),
      ...(counts ? bandKey(counts, key, request) : []),
      scaleBar({
        scale,
        units: request.units,
        palette: request.palette,
        x: body.x + BAR_AT,
        y: key.y,
        width: body.width - BAR_AT,
      }),
      ...explanation(request, {
        x: body.x + BAR_AT,
        y: key.y + SCALE_BAR_HEIGHT + 1,
        width: body.width - BAR_AT,
      }),
    ],
  };
}

/** Below the last row, mm on paper; and where the scale bar begins, right of the key. */
const FOOT = 6;
const BAR_AT = 62;

interface MapLook {
  readonly area: Box;
  readonly scale: number;
  readonly extent: Box;
  readonly counts: readonly number[] | null;
}

function drawMap(request: PlotSheetRequest, { area, scale, extent, counts }: MapLook): GroupPrimitive {
  const used = extent.height / scale + PLATFORM_MARGIN + FOOT;
  const top = area.y + PLATFORM_MARGIN + Math.max(0, (area.height - used) / 2);
  const context = planContext({
    ...request,
    scale,
    area,
    origin: {
      x: area.x + area.width / 2 - (extent.x + extent.width / 2) / scale,
      y: top + (extent.y + extent.height) / scale,
    },
    layers: {
      seats: true,
      sightBands: request.report ? { player: WORST_SEEN } : null,
      marks: false,
      names: false,
      words: false,
      dimensions: 'none',
      grid: false,
      reach: false,
      routes: false,
    },
  });
  const words = counts
    ? counts.map((count, band) => `${bandWords(band)}: ${placeCount(count)}`).join(', ')
    : 'no sight figures';
  return {
    kind: 'group',
    clip: area,
    description: `Seat map at 1:${scale}. ${words}`,
    children: [...drawGround(context), ...drawItems(context)],
  };
}

function bandWords(band: number): string {
  return ['under 25 %', '25 to 50 %', '50 to 75 %', '75 to 90 %', 'over 90 %'][band] ?? '';
}

function bandCounts(request: PlotSheetRequest): number[] {
  const bands: SightBand[] = request.report ? [...seatBands(request.report, WORST_SEEN).values()] : [];
  return SIGHT_BANDS.map((band) => bands.filter((each) => each === band).length);
}

function explanation(
  request: PlotSheetRequest,
  { x, y, width }: { x: number; y: number; width: number },
): Primitive[] {
  if (!request.report) return [];
  const words =
    'Each place is marked by the share it sees of whichever player it sees worst: a darker seat sees less, and the disc on it is filled as far as that player is seen.';
  return [notes([words], { x, y, width, height: 3 * TEXT.small * LEADING }, request)];
}
