/** Two marks on a printed page, and what lies between them. Millimetres on paper, from the page's upper left corner. */

import type { PageSize, Point } from '#model/document/records.ts';

/** On the bottom and on the top line of a staff. */
export type Marks = readonly [bottom: Point, top: Point];

/** Where the ruler lies at first: near the top of the page, over a staff of a usual height. */
export function firstMarks({ width, height }: PageSize): Marks {
  const x = width / 2;
  const y = height / 4;
  return [
    { x, y: y + 7 },
    { x, y },
  ];
}

/** With one mark elsewhere, still on the page. */
export function withMark(marks: Marks, which: 0 | 1, to: Point, { width, height }: PageSize): Marks {
  const at = { x: Math.min(width, Math.max(0, to.x)), y: Math.min(height, Math.max(0, to.y)) };
  return which === 0 ? [at, marks[1]] : [marks[0], at];
}

/** Lines of a staff run across the page, so only what is up and down counts; in hundredths of a millimetre. */
export function heightBetween([bottom, top]: Marks): number {
  return Math.round(Math.abs(bottom.y - top.y) * 100) / 100;
}

const STEPS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

const [FINE, COARSE] = [0.1, 2];

/** Where a key leads; null: it is no arrow. */
export function steppedBy(key: string, coarse: boolean, from: Point): Point | null {
  const step = STEPS[key];
  if (!step) return null;
  const far = coarse ? COARSE : FINE;
  return { x: from.x + step[0] * far, y: from.y + step[1] * far };
}
