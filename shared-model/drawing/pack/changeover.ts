/** What is done before a piece, or after the last: the plan with its arrows, and the lists for the crew. */

import { asId } from '../../document/ids.ts';
import { changeover } from '../../programme/changeover.ts';
import { t } from '../../words/say.ts';
import { changeoverBlocks } from '../changeover/lists.ts';
import { changeoverPlan, changeoverPlanFits } from '../changeover/plan.ts';
import type { ChangeoverDrawing } from '../changeover/request.ts';
import { runsOf } from '../changeover/runs.ts';
import type { Box } from '../primitives.ts';
import { largestScale } from '../scales.ts';
import { bodyOf } from '../sheet/page-frame.ts';
import { packSheet, pieceName, roomiest, textPages } from './pages.ts';
import type { EntryPages, PackEntry, PackRequest } from './request.ts';

export function changeoverPages(request: PackRequest, entry: PackEntry): EntryPages {
  const { document } = request;
  const from = entry.subject === null ? null : asId<'setup'>(entry.subject);
  const drawing: ChangeoverDrawing = { ...request, change: changeover(document, from, entry.setup) };
  const scaleIn = (body: Box): number | null =>
    largestScale(request.units, (scale) => changeoverPlanFits(drawing, body, scale));
  const page = roomiest(request.paper, scaleIn);
  const lists = textPages(request, entry, (width) => changeoverBlocks(drawing, width));
  if (!page) {
    const note = t`${entry.setup ? pieceName(request, entry) : entry.title}: the plan of the changeover fits on this paper at no standard scale; its lists are printed.`;
    return { ...lists, notes: [note] };
  }
  const runs = runsOf(drawing.change);
  return {
    count: runs.length + lists.count,
    notes: [],
    draw: (index, numbering) => {
      const run = runs[index];
      if (!run) {
        const first = numbering.first + runs.length;
        const { sheet, notes } = lists.draw(index - runs.length, { ...numbering, first });
        return { sheet: { ...sheet, bookmark: [] }, notes };
      }
      const scale = scaleIn(bodyOf(page));
      if (scale === null) throw new Error(`${entry.name} was said to fit, and does not`);
      const { children, notes } = changeoverPlan(drawing, run, { body: bodyOf(page), scale });
      return { sheet: packSheet({ request, entry, page, index, scale }, children, numbering), notes };
    },
  };
}
