/** Little drawings of the evening, on sheets without a border: a setup, and a changeover with its ways. */

import { placedInSetup, type Document } from '#model/document/document.ts';
import type { Id } from '#model/document/ids.ts';
import type { Units } from '#model/document/measures.ts';
import { changeoverPlan, changeoverPlanScale } from '#model/drawing/changeover/plan.ts';
import { runsOf, runWords } from '#model/drawing/changeover/runs.ts';
import { PALETTES } from '#model/drawing/palette.ts';
import { isDownTheHouse, planDrawing, stageExtent } from '#model/drawing/plan.ts';
import type { MeasureText, Sheet } from '#model/drawing/primitives.ts';
import type { Changeover } from '#model/programme/changeover.ts';

export interface Sketching {
  readonly document: Document;
  readonly units: Units;
  readonly measure: MeasureText;
}

/** Of 1:50, small on the screen. */
const SCALE = 50;
const MARGIN = 4;

/** The platform with what stands on it and its names. */
export function setupSketch(
  { document, units, measure }: Sketching,
  setup: Id<'setup'>,
  title: string,
): Sheet {
  const stage = stageExtent(document, setup);
  const house = placedInSetup(document, setup).filter((record) => isDownTheHouse(document, record));
  const origin = { x: MARGIN - stage.x / SCALE, y: MARGIN + (stage.y + stage.height) / SCALE };
  return {
    title,
    width: stage.width / SCALE + 2 * MARGIN,
    height: stage.height / SCALE + 2 * MARGIN,
    children: planDrawing({
      ...{ document, units, measure, setup, origin, scale: SCALE },
      report: null,
      palette: PALETTES.print,
      area: null,
      leftOut: new Set(house.map(({ id }) => id)),
      layers: {
        ...{ seats: false, sightBands: null, marks: true, names: false, words: false },
        ...{ dimensions: 'none', grid: false, reach: false, routes: false },
      },
    }),
  };
}

/** Paper enough for most platforms at 1:50, mm. */
const PAGE = { width: 236, height: 188 };

/** One for each run of steps that one can follow; none when the platform fits at no standard scale. */
export function changeoverSketches(
  { document, units, measure }: Sketching,
  change: Changeover,
  title: string,
): Sheet[] {
  const drawing = { document, units, measure, change, palette: PALETTES.print };
  const body = { x: MARGIN, y: 0, width: PAGE.width - 2 * MARGIN, height: PAGE.height - MARGIN };
  const scale = changeoverPlanScale(drawing, body);
  if (scale === null) return [];
  return runsOf(change).map((run) => {
    const which = runWords(run, change.steps.length);
    const { children } = changeoverPlan(drawing, run, { body, scale });
    return { title: which === '' ? title : `${title}, ${which}`, ...PAGE, children };
  });
}
