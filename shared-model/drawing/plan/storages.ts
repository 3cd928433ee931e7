/** Storage places on the plan: a dashed box with the name in it, mostly beyond the platform. */

import { allOf } from '../../document/document.ts';
import { labelOf } from '../../document/labels.ts';
import type { Point, Storage } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { boxOfPoints } from '../bounds.ts';
import { firstFree, type Occupancy } from '../occupancy.ts';
import { polygon } from '../outline.ts';
import type { Box, GroupPrimitive } from '../primitives.ts';
import { DASH, TEXT, WEIGHT } from '../style.ts';
import { fitted, oneLine, textLine } from '../text.ts';
import { onPage, paint, pen, type PlanContext } from './context.ts';

/** How large the box is drawn, mm on the floor: a place has no size of its own. */
const [ACROSS, DEEP] = [1400, 900];

export function storageOutline({ x, y }: Point): Point[] {
  const corner = (right: number, up: number): Point => ({
    x: x + (right * ACROSS) / 2,
    y: y + (up * DEEP) / 2,
  });
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
}

/** What the boxes take up on the page. */
export function storageBoxes(context: PlanContext): Box[] {
  return allOf(context.document, 'storage').flatMap((storage) => {
    const corners = storageOutline(storage).map((corner) => onPage(context, corner));
    return boxOfPoints(corners) ?? [];
  });
}

/** Names keep clear of what is `taken` and of each other: whole, or as much as the box holds, or not at all. */
export function drawStorages(context: PlanContext, taken: Occupancy): GroupPrimitive[] {
  return allOf(context.document, 'storage').map((storage) => drawStorage(context, storage, taken));
}

function drawStorage(context: PlanContext, storage: Storage, taken: Occupancy): GroupPrimitive {
  const { palette, document, setup, measure } = context;
  const name = oneLine(storage.name) || labelOf(document, setup, storage.id);
  const at = onPage(context, storage);
  const look = { size: TEXT.small, weight: 'bold', colour: palette.faint, anchor: 'middle' } as const;
  const width = ACROSS / context.scale - 1;
  const names = [name, fitted(name, width, look, measure)]
    .filter((words) => words !== '')
    .map((words) => textLine(words, { x: at.x, y: at.y + TEXT.small / 3 }, look));
  return {
    kind: 'group',
    subject: storage.id,
    description: t`Storage: ${name}`,
    children: [
      paint(context.toPage, polygon(storageOutline(storage)), pen(palette.faint, WEIGHT.fine, DASH.dashed)),
      ...firstFree(names, taken, { measure, air: 0.2 }),
    ],
  };
}
