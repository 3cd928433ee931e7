/** The whole house at its own scale, each place marked by what it sees of one player, or of the one it sees worst. */

import type { SightBand } from '../../checks/report.ts';
import { labelOf } from '../../document/labels.ts';
import { housePlaces } from '../../document/seating.ts';
import { t } from '../../words/say.ts';
import { drawGround, drawItems, planContext, planExtent, WORST_SEEN } from '../plan.ts';
import { PLATFORM_MARGIN } from '../plan/datum.ts';
import { seatBands } from '../plan/house.ts';
import { SCALE_BAR_HEIGHT, scaleBar } from '../plan/scale-bar.ts';
import type { Box, GroupPrimitive, Primitive } from '../primitives.ts';
import { SIGHT_BANDS } from '../sight-bands.ts';
import { largestScale } from '../scales.ts';
import { fitted } from '../text.ts';
import { headsCounted } from './heads.ts';
import { bandKey, BAND_ROW, notes, notesHeight, placeCount } from './legend.ts';
import { heading, HEADING_TYPE, type Block } from './blocks.ts';
import type { PlotSheetRequest } from './request.ts';

export interface SeatMap {
  readonly scale: number;
  readonly children: readonly Primitive[];
}

/** Over the key, mm. */
const KEY_AIR = 3;
const NOTES_AIR = 1;

/** Bands on the left, scale bar and notes on the right. */
function keyHeight(request: PlotSheetRequest, width: number): number {
  const words = explanation(request, WORST_SEEN);
  const right = SCALE_BAR_HEIGHT + NOTES_AIR + notesHeight(words, width - BAR_AT, request);
  return Math.max(5 * BAND_ROW, right) + KEY_AIR;
}

/** Null when there are no places, or when the house fits at no standard scale. `player`: a player's id, or `WORST_SEEN`. */
export function seatMap(request: PlotSheetRequest, body: Box, player = WORST_SEEN): SeatMap | null {
  const scale = seatMapScale(request, body);
  if (scale === null) return null;
  const title = titleFor(request, body, player);
  const area = mapArea(request, body, title.height);
  const extent = planExtent(request.document);
  const counts = request.report ? bandCounts(request, player) : null;
  const key = { x: body.x, y: area.y + area.height + KEY_AIR };
  return {
    scale,
    children: [
      ...title.draw(body),
      drawMap(request, { area, scale, extent, counts, player }),
      ...(counts ? bandKey(counts, key, request) : []),
      scaleBar({
        scale,
        units: request.units,
        palette: request.palette,
        x: body.x + BAR_AT,
        y: key.y,
        width: body.width - BAR_AT,
      }),
      notes(
        explanation(request, player),
        {
          x: body.x + BAR_AT,
          y: key.y + SCALE_BAR_HEIGHT + NOTES_AIR,
          width: body.width - BAR_AT,
          height: body.y + body.height - key.y - SCALE_BAR_HEIGHT - NOTES_AIR,
        },
        request,
      ),
    ],
  };
}

/** The standard scale at which the whole house goes into the body of a sheet; null: at none, or there are no places. */
export function seatMapScale(request: PlotSheetRequest, body: Box): number | null {
  if (housePlaces(request.document).length === 0) return null;
  const area = mapArea(request, body, titleFor(request, body, WORST_SEEN).height);
  const extent = planExtent(request.document);
  return largestScale(
    request.units,
    (candidate) =>
      extent.width / candidate + 2 * PLATFORM_MARGIN <= area.width &&
      extent.height / candidate + PLATFORM_MARGIN + FOOT <= area.height,
  );
}

function titleFor(request: PlotSheetRequest, body: Box, player: string): Block {
  const whose =
    player === WORST_SEEN ? t`Seat map` : t`Seat map: ${labelOf(request.document, request.setup, player)}`;
  const words = fitted(whose, body.width, HEADING_TYPE, request.measure);
  return heading(words, body.width, request);
}

function mapArea(request: PlotSheetRequest, body: Box, titleHeight: number): Box {
  const height = body.height - titleHeight - keyHeight(request, body.width);
  return { ...body, y: body.y + titleHeight, height };
}

/** Below the last row, mm on paper; and where the scale bar begins, right of the key. */
const FOOT = 6;
const BAR_AT = 62;

interface MapLook {
  readonly area: Box;
  readonly scale: number;
  readonly extent: Box;
  readonly counts: readonly number[] | null;
  readonly player: string;
}

function drawMap(
  request: PlotSheetRequest,
  { area, scale, extent, counts, player }: MapLook,
): GroupPrimitive {
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
      sightBands: request.report ? { player } : null,
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
    : t`no sight figures`;
  return {
    kind: 'group',
    clip: area,
    description: t`Seat map at 1:${scale}. ${words}`,
    children: [...drawGround(context), ...drawItems(context)],
  };
}

function bandWords(band: number): string {
  return [t`under 25 %`, t`25 to 50 %`, t`50 to 75 %`, t`75 to 90 %`, t`over 90 %`][band] ?? '';
}

function bandCounts(request: PlotSheetRequest, player: string): number[] {
  const bands: SightBand[] = request.report ? [...seatBands(request.report, player).values()] : [];
  return SIGHT_BANDS.map((band) => bands.filter((each) => each === band).length);
}

/** What counts comes first, for nothing else on the map shows it. */
function explanation(request: PlotSheetRequest, player: string): string[] {
  if (!request.report) return [];
  const words =
    player === WORST_SEEN
      ? t`Each place is marked by the share it sees of whichever player it sees worst: a darker seat sees less, and the disc on it is filled as far as that player is seen.`
      : t`Each place is marked by the share it sees of ${labelOf(request.document, request.setup, player)}: a darker seat sees less, and the disc on it is filled as far as that player is seen.`;
  return [headsCounted(request), words];
}
