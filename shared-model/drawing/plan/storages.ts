/** Storage places on the plan: a dashed box with the name in it, mostly beyond the platform. */

import { allOf } from '../../document/document.ts';
import { labelOf } from '../../document/labels.ts';
import type { Point, Storage } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { polygon } from '../outline.ts';
import type { GroupPrimitive } from '../primitives.ts';
import { DASH, TEXT, WEIGHT } from '../style.ts';
import { oneLine, textLine } from '../text.ts';
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

export function drawStorages(context: PlanContext): GroupPrimitive[] {
  return allOf(context.document, 'storage').map((storage) => drawStorage(context, storage));
}

function drawStorage(context: PlanContext, storage: Storage): GroupPrimitive {
  const { palette, document, setup } = context;
  const name = oneLine(storage.name) || labelOf(document, setup, storage.id);
  const at = onPage(context, storage);
  const look = { size: TEXT.small, weight: 'bold', colour: palette.faint, anchor: 'middle' } as const;
  return {
    kind: 'group',
    subject: storage.id,
    description: t`Storage: ${name}`,
    children: [
      paint(context.toPage, polygon(storageOutline(storage)), pen(palette.faint, WEIGHT.fine, DASH.dashed)),
      textLine(name, { x: at.x, y: at.y + TEXT.small / 3 }, look),
    ],
  };
}
