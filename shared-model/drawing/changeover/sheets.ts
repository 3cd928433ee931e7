/** A changeover as sheets: the plans with their arrows, then the lists. */

import { changeover } from '../../programme/changeover.ts';
import { t } from '../../words/say.ts';
import { pageOf, PAPERS, type Page } from '../papers.ts';
import { isKnownScale, offeredScales } from '../scales.ts';
import { columnsOf, flow } from '../sheet/flow.ts';
import { bodyOf, framed, sheetOn, titleOf } from '../sheet/page-frame.ts';
import type { FittingChoice, PlotRefusal, PlotResult } from '../sheet/request.ts';
import type { Primitive, Sheet } from '../primitives.ts';
import { changeoverBlocks } from './lists.ts';
import { changeoverPlan, changeoverPlanFits } from './plan.ts';
import type { ChangeoverDrawing, ChangeoverSheetRequest } from './request.ts';
import { runsOf } from './runs.ts';
import { changeoverTitle } from './words.ts';

/** An asked scale that is not a standard one or does not fit is refused with what would do. */
export function changeoverSheets(request: ChangeoverSheetRequest): PlotResult {
  const { document, from, to } = request;
  const drawing: ChangeoverDrawing = { ...request, change: changeover(document, from, to) };
  const chosen = chosenPage(request, drawing);
  if ('ok' in chosen) return chosen;
  const { page, scale } = chosen;
  const plans = runsOf(drawing.change).map((run) =>
    changeoverPlan(drawing, run, { body: bodyOf(page), scale }),
  );
  const text = textPage(page);
  const width = columnsOf(bodyOf(text))[0]?.width ?? bodyOf(text).width;
  const lists = flow(changeoverBlocks(drawing, width), bodyOf(text));
  const sheets = plans.length + lists.length;
  const sheetFor = (on: Page, index: number, children: readonly Primitive[]): Sheet => {
    const facts = {
      documentType: t`Changeover`,
      scale: index < plans.length ? scale : null,
      sheet: index + 1,
      sheets,
    };
    const source = { ...request, setup: to ?? from };
    return sheetOn(
      on,
      `${titleOf(request)}: ${changeoverTitle(request)}`,
      framed(source, on, children, facts),
    );
  };
  return {
    ok: true,
    choice: { paper: page.paper, orientation: page.orientation, scale },
    notes: plans.flatMap(({ notes }) => notes),
    sheets: [
      ...plans.map(({ children }, index) => sheetFor(page, index, children)),
      ...lists.map((children, index) => sheetFor(text, plans.length + index, children)),
    ],
  };
}

/** Lists are as wide as a column may be; small paper is turned for them only where it was not asked to stand. */
function textPage(page: Page): Page {
  const upright = pageOf(page.paper, 'portrait');
  return columnsOf(bodyOf(page)).length > 1 ? page : upright;
}

interface ChosenPage {
  readonly page: Page;
  readonly scale: number;
}

function chosenPage(request: ChangeoverSheetRequest, drawing: ChangeoverDrawing): ChosenPage | PlotRefusal {
  const { paper, orientation, scale } = request.options;
  if (scale !== null && !isKnownScale(scale)) {
    const offered = offeredScales(request.units).map((each) => `1:${each}`);
    const message = t`1:${scale} is not a standard drawing scale. Choose one of ${offered.join(', ')}.`;
    return { ok: false, code: 'plot.unknownScale', message, fits: fitting(request, drawing) };
  }
  const fits = fitting(request, drawing).find(
    (choice) =>
      choice.paper === paper &&
      (orientation === 'auto' || choice.orientation === orientation) &&
      (scale === null || choice.scale === scale),
  );
  if (fits) return { page: pageOf(paper, fits.orientation), scale: fits.scale };
  const message =
    scale === null
      ? t`The changeover does not fit on ${paper} at any standard scale. Choose a larger paper or a smaller scale.`
      : t`The changeover does not fit on ${paper} at 1:${scale}. Choose a larger paper or a smaller scale.`;
  return { ok: false, code: 'plot.doesNotFit', message, fits: fitting(request, drawing) };
}

/** The largest drawings first; lying where both are alike. */
function fitting({ units, options }: ChangeoverSheetRequest, drawing: ChangeoverDrawing): FittingChoice[] {
  const asked = options.scale !== null && isKnownScale(options.scale) ? [options.scale] : [];
  const scales = [...new Set([...offeredScales(units), ...asked])].sort((a, b) => a - b);
  return scales.flatMap((scale) =>
    PAPERS.flatMap(({ name }) =>
      (['landscape', 'portrait'] as const)
        .filter((orientation) => changeoverPlanFits(drawing, bodyOf(pageOf(name, orientation)), scale))
        .map((orientation) => ({ paper: name, orientation, scale })),
    ),
  );
}
