/** The lists that the two who do it hold in their hands, with boxes to tick. */

import {
  unitWords,
  stepFrom,
  stepNotes,
  stepThing,
  stepTo,
  clock,
  workWord,
  type Telling,
} from '../../programme/step-words.ts';
import {
  carryingCaution,
  changeoverNotes,
  changeoverSummary,
  timeVerdict,
} from '../../programme/changeover-words.ts';
import { timeSources } from '../../programme/handling.ts';
import { peopleOf } from '../../programme/schedule.ts';
import type { Step } from '../../programme/changeover.ts';
import { language } from '../../words/catalogue.ts';
import { t } from '../../words/say.ts';
import { heading, paragraph, type Block } from '../sheet/blocks.ts';
import { tableSection } from '../sheet/sections.ts';
import type { Table } from '../sheet/table.ts';
import type { ChangeoverDrawing } from './request.ts';
import { changeoverTitle } from './words.ts';

/** To be ticked with a pen. */
const BOX = '☐';

export function changeoverBlocks(drawing: ChangeoverDrawing, width: number): Block[] {
  const { change, document } = drawing;
  const words = (text: string, keepsWithNext = false): Block =>
    paragraph(text, width, drawing, { keepsWithNext });
  const opening = [
    heading(changeoverTitle({ document, ...change }), width, drawing),
    words(`${capitalised(changeoverSummary(change))}. ${timeVerdict(change)}`),
    ...changeoverNotes(change).map((note) => words(note)),
  ];
  if (change.steps.length === 0)
    return [...opening, ...stayBlocks(drawing, width), ...cautionBlocks(drawing, width)];
  return [
    ...opening,
    ...listFor(drawing, 'A', width),
    ...listFor(drawing, 'B', width),
    ...stayBlocks(drawing, width),
    ...cautionBlocks(drawing, width),
  ];
}

function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** What one of the two does, in order; what both do is in both lists. */
function listFor(drawing: ChangeoverDrawing, who: 'A' | 'B', width: number): Block[] {
  const { change } = drawing;
  const steps = change.steps.filter(({ hands }) => peopleOf(hands).includes(who));
  if (steps.length === 0) return [];
  const other = who === 'A' ? 'B' : 'A';
  const intro = t`Step by step. “with ${other}”: both carry; wait for each other. “after 3”: begin when step 3 of the other list is done. Through at about ${clock(change.through[who])}.`;
  return tableSection({ title: t`Person ${who}`, intro }, tableOf(drawing, steps, other), width, drawing);
}

function tableOf(drawing: ChangeoverDrawing, steps: readonly Step[], other: 'A' | 'B'): Table {
  const { document, change, units } = drawing;
  const telling: Telling = { document, from: change.from, to: change.to, units };
  // German needs more words for what there is to mind, which must not be cut.
  const [what, place, mind] = language() === 'de' ? [34, 36, 38] : [38, 36, 34];
  return {
    columns: [
      { title: t`No.`, parts: 9, align: 'end', bold: true },
      { title: t`At`, parts: 11, align: 'end' },
      { title: t`Do`, parts: 17, bold: true },
      { title: t`What`, parts: what },
      { title: t`From`, parts: place },
      { title: t`To`, parts: place },
      { title: t`Mind`, parts: mind },
      { title: t`Done`, parts: 10, align: 'end' },
    ],
    rows: steps.map((step) => [
      String(step.number),
      clock(step.begins),
      workWord(step.work),
      stepThing(telling, step),
      stepFrom(telling, step),
      stepTo(telling, step),
      [...(step.hands === 'both' ? [t`with ${other}`] : []), ...stepNotes(telling, step)].join('; '),
      BOX,
    ]),
  };
}

function stayBlocks(drawing: ChangeoverDrawing, width: number): Block[] {
  const { change, document } = drawing;
  const { to } = change;
  if (change.stays.length === 0 || to === null) return [];
  const names = change.stays.map((pair) => unitWords({ document }, pair.to, to));
  return [heading(t`Stays where it is`, width, drawing), paragraph(names.join('; '), width, drawing)];
}

function cautionBlocks(drawing: ChangeoverDrawing, width: number): Block[] {
  return [
    heading(t`Before you carry`, width, drawing),
    paragraph(carryingCaution(), width, drawing),
    paragraph(t`How the times are estimated. ${timeSources()}`, width, drawing),
  ];
}
