/** Where on the sheet of a changeover its plan, the scale bar and the notes lie: under the plan, or beside it. */

import { t } from '../../words/say.ts';
import { changeoverTitle } from './words.ts';
import type { ChangeoverDrawing } from './request.ts';
import { runWords, type Run } from './runs.ts';
import { PLATFORM_MARGIN } from '../plan/datum.ts';
import { SCALE_BAR_HEIGHT } from '../plan/scale-bar.ts';
import type { Box } from '../primitives.ts';
import { heading, HEADING_TYPE, type Block } from '../sheet/blocks.ts';
import { notesHeight } from '../sheet/legend.ts';
import { fitted } from '../text.ts';

export interface ChangeoverLayout {
  readonly title: Block;
  readonly plan: Box;
  /** Its height is the bar's own. */
  readonly bar: Box;
  readonly notes: Box;
}

export const changeoverKey = (): string[] => [
  t`Dashed: where a thing stood. Drawn in full: where it comes to stand. Faint: stands still meanwhile. An arrow leads from the one to the other; beyond an opening it is cut short.`,
  t`White on black: the step in the lists, and who takes it, A, B or both (AB). In bubbles: marks as on the stage plot; “was S1”: its mark in the setup before. Players walk by themselves. Print at 100 % and check the bar. Local codes, the venue and licensed practice come first.`,
];

/** Where the scale bar ends and the notes begin. */
const NOTES_AT = 118;
const GAP = 2.5;
/** Narrower than this beside the scale bar, the notes stand under it. */
const LEAST_NOTES = 90;
/** Of a column beside the plan: the caption of the bar goes into it. */
const COLUMN = 58;

/** The first layout in which the stage, an extent in mm, goes on at that scale; null: none. */
export function changeoverLayout(
  drawing: ChangeoverDrawing,
  { body, stage, scale }: { readonly body: Box; readonly stage: Box; readonly scale: number },
  run: Run | null = null,
): ChangeoverLayout | null {
  const width = stage.width / scale + 2 * PLATFORM_MARGIN;
  const height = stage.height / scale + 2 * PLATFORM_MARGIN;
  const layouts = [under, beside].map((arranged) => arranged(drawing, body, run));
  return layouts.find(({ plan }) => width <= plan.width && height <= plan.height) ?? null;
}

function under(drawing: ChangeoverDrawing, body: Box, run: Run | null): ChangeoverLayout {
  const title = titleBlock(drawing, body, run);
  const isWide = body.width - NOTES_AT > LEAST_NOTES;
  const notesWidth = isWide ? body.width - NOTES_AT : body.width;
  const height = notesHeight(changeoverKey(), notesWidth, drawing);
  const foot = isWide ? Math.max(SCALE_BAR_HEIGHT, height) : SCALE_BAR_HEIGHT + 1 + height;
  const y = body.y + body.height - foot;
  const barWidth = isWide ? NOTES_AT - GAP : body.width;
  return {
    title,
    plan: { ...body, y: body.y + title.height, height: body.height - title.height - foot - GAP },
    bar: { x: body.x, y, width: barWidth, height: SCALE_BAR_HEIGHT },
    notes: {
      x: isWide ? body.x + NOTES_AT : body.x,
      y: isWide ? y : y + SCALE_BAR_HEIGHT + 1,
      width: notesWidth,
      height,
    },
  };
}

/** On paper that is broader than the platform but too low to have anything under it. */
function beside(drawing: ChangeoverDrawing, body: Box, run: Run | null): ChangeoverLayout {
  const title = titleBlock(drawing, body, run);
  const bottom = body.y + body.height;
  const x = body.x + body.width - COLUMN;
  const height = notesHeight(changeoverKey(), COLUMN, drawing);
  return {
    title,
    plan: {
      x: body.x,
      y: body.y + title.height,
      width: body.width - COLUMN - GAP,
      height: body.height - title.height,
    },
    bar: { x, y: bottom - SCALE_BAR_HEIGHT, width: COLUMN, height: SCALE_BAR_HEIGHT },
    notes: { x, y: bottom - SCALE_BAR_HEIGHT - GAP - height, width: COLUMN, height },
  };
}

/** As high for every run. */
function titleBlock(
  { document, change, measure, palette }: ChangeoverDrawing,
  body: Box,
  run: Run | null,
): Block {
  const which = run ? runWords(run, change.steps.length) : '';
  const title = changeoverTitle({ document, from: change.from, to: change.to });
  const words = which === '' ? title : `${title}, ${which}`;
  return heading(fitted(words, body.width, HEADING_TYPE, measure), body.width, { measure, palette });
}
