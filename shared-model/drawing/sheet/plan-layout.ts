/** Where the plan goes on the first sheet, and at which scale. */

import { housePlaces } from '../../document/seating.ts';
import type { Point } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { isKnownScale, offeredScales } from '../scales.ts';
import { pageOf, PAPERS, type Orientation, type Page } from '../papers.ts';
import { PLATFORM_MARGIN } from '../plan/datum.ts';
import { stageToPage } from '../plan/context.ts';
import { stageExtent } from '../plan/extent.ts';
import { houseShown } from '../plan/house-shown.ts';
import type { Box } from '../primitives.ts';
import { planKeyHeight, planNotesHeight } from './plan-key.ts';
import type { FittingChoice, PlotOptions, PlotRefusal, PlotSheetRequest } from './request.ts';
import { TITLE_BLOCK_HEIGHT, titleBlockBox } from './title-block.ts';

export interface PlanLayout {
  readonly page: Page;
  readonly scale: number;
  /** Of the stage frame, on the page. */
  readonly origin: Point;
  /** What the plan may fill. */
  readonly area: Box;
  /** For the scale bar and the signs. */
  readonly key: Box;
  readonly notes: Box;
  readonly title: Box;
}

/** The asked layout, or the best of those that fit, or why there is none. */
export function planLayout(request: PlotSheetRequest): PlanLayout | PlotRefusal {
  const { paper, scale } = request.options;
  if (scale !== null && !isKnownScale(scale)) return unknownScale(request, scale);
  const pages = orientations(request).map((orientation) => pageOf(paper, orientation));
  const scales = scale === null ? offeredScales(request.units) : [scale];
  for (const candidate of scales) {
    const layouts = pages
      .filter((page) => fits(request, page, candidate))
      .map((page) => layOut(request, page, candidate));
    const best = mostSeats(request, layouts);
    if (best) return best;
  }
  return doesNotFit(request);
}

function orientations({ options }: PlotSheetRequest): readonly Orientation[] {
  return options.orientation === 'auto' ? ['landscape', 'portrait'] : [options.orientation];
}

const INSET = 2;
/** Between the notes and the scale bar below them. */
const KEY_AIR = 1.4;

interface Regions {
  readonly area: Box;
  readonly key: Box;
  readonly notes: Box;
  readonly title: Box;
}

/** From the bottom up: the title block, the key beside it where there is room or above it, and the notes. */
function regions(request: PlotSheetRequest, { frame }: Page): Regions {
  const title = titleBlockBox(frame);
  const beside = frame.width - title.width;
  const keyWidth = (beside > 0 ? beside : frame.width) - 2 * INSET;
  const keyHeight = planKeyHeight(request, keyWidth) + KEY_AIR;
  const strip = beside > 0 ? Math.max(TITLE_BLOCK_HEIGHT, keyHeight) : TITLE_BLOCK_HEIGHT + keyHeight + INSET;
  const keyTop = frame.y + frame.height - strip;
  const inner = { x: frame.x + INSET, width: frame.width - 2 * INSET };
  const notesHeight = planNotesHeight(request, inner.width);
  const notesTop = keyTop - notesHeight - 1;
  return {
    title,
    key: { x: inner.x, y: keyTop + KEY_AIR, width: keyWidth, height: keyHeight - KEY_AIR },
    notes: { ...inner, y: notesTop, height: notesHeight },
    area: { ...inner, y: frame.y + INSET, height: notesTop - frame.y - 2 * INSET },
  };
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Paper that the platform, its items and its words need, mm. */
function neededSize({ document, setup }: PlotSheetRequest, scale: number): Size {
  const stage = stageExtent(document, setup);
  return {
    width: stage.width / scale + 2 * PLATFORM_MARGIN,
    height: stage.height / scale + 2 * PLATFORM_MARGIN,
  };
}

function fits(request: PlotSheetRequest, page: Page, scale: number): boolean {
  const { area } = regions(request, page);
  const needed = neededSize(request, scale);
  return needed.width <= area.width && needed.height <= area.height;
}

/** The platform as high as it goes, so that the front rows show below it; in the middle when none would. */
function layOut(request: PlotSheetRequest, page: Page, scale: number): PlanLayout {
  const { area, ...boxes } = regions(request, page);
  const stage = stageExtent(request.document, request.setup);
  const x = area.x + area.width / 2 - (stage.x + stage.width / 2) / scale;
  const top = area.y + PLATFORM_MARGIN + (stage.y + stage.height) / scale;
  const high: PlanLayout = { ...boxes, page, scale, area, origin: { x, y: top } };
  const spare = area.height - neededSize(request, scale).height;
  if (seatsShown(request, high) === 0) return { ...high, origin: { x, y: top + spare / 2 } };
  const below = lowestSeat(request) / scale;
  const used = PLATFORM_MARGIN + (stage.y + stage.height) / scale - below + SEAT_ROOM;
  return { ...high, origin: { x, y: top + Math.max(0, (area.height - used) / 2) } };
}

/** Below the last row, mm on paper. */
const SEAT_ROOM = 8;

function lowestSeat({ document }: PlotSheetRequest): number {
  return housePlaces(document).reduce((lowest, place) => Math.min(lowest, place.y), 0);
}

function seatsShown({ document }: PlotSheetRequest, { origin, area, scale }: PlanLayout): number {
  const shown = houseShown({ document, area, scale, toPage: stageToPage(scale, origin) });
  return shown.blocks.reduce((sum, { seats }) => sum + seats.length, shown.places.length);
}

function mostSeats(request: PlotSheetRequest, layouts: readonly PlanLayout[]): PlanLayout | undefined {
  let best: PlanLayout | undefined;
  let most = -1;
  for (const layout of layouts) {
    const count = seatsShown(request, layout);
    if (count > most) [best, most] = [layout, count];
  }
  return best;
}

function unknownScale(request: PlotSheetRequest, scale: number): PlotRefusal {
  const offered = offeredScales(request.units).map((each) => `1:${each}`);
  return {
    ok: false,
    code: 'plot.unknownScale',
    message: t`1:${scale} is not a standard drawing scale. Choose one of ${offered.join(', ')}.`,
    fits: fittingChoices(request),
  };
}

function doesNotFit(request: PlotSheetRequest): PlotRefusal {
  const { paper, scale } = request.options;
  const choices = fittingChoices(request);
  const same = choices.find((choice) => choice.paper === paper);
  const larger = scale === null ? undefined : choices.find((choice) => choice.scale === scale);
  const ways = [same, larger].filter((way) => way !== undefined).map(choiceWords);
  return {
    ok: false,
    code: 'plot.doesNotFit',
    message: `${refusal({ paper, scale })} ${adviceOf(ways)}`,
    fits: choices,
  };
}

function refusal({ paper, scale }: Pick<PlotOptions, 'paper' | 'scale'>): string {
  return scale === null
    ? t`The platform with what stands on it does not fit on ${paper} at any standard scale.`
    : t`The platform with what stands on it does not fit on ${paper} at 1:${scale}.`;
}

function adviceOf([first, second]: readonly string[]): string {
  if (first === undefined) return t`It fits on no paper offered.`;
  return second === undefined ? t`Choose ${first}.` : t`Choose ${first}, or ${second}.`;
}

function choiceWords({ paper, orientation, scale }: FittingChoice): string {
  return orientation === 'landscape'
    ? t`1:${scale} on ${paper} landscape`
    : t`1:${scale} on ${paper} portrait`;
}

/** For every paper and orientation the largest standard scale that fits; for the asked scale also where it fits. */
function fittingChoices(request: PlotSheetRequest): FittingChoice[] {
  const asked = request.options.scale;
  const scales = offeredScales(request.units);
  const all = asked !== null && isKnownScale(asked) && !scales.includes(asked) ? [asked, ...scales] : scales;
  return all
    .flatMap((scale) =>
      PAPERS.flatMap(({ name }) =>
        (['landscape', 'portrait'] as const)
          .filter((orientation) => fits(request, pageOf(name, orientation), scale))
          .map((orientation) => ({ paper: name, orientation, scale })),
      ),
    )
    .sort((a, b) => a.scale - b.scale);
}
