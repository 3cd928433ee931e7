/** A small drawing of the platform with the corners that tapes are hooked at; not to scale. */

import type { Point } from '../../document/records.ts';
import { t } from '../../words/say.ts';
import { boxOfPoints } from '../bounds.ts';
import { circle, line, polygon } from '../outline.ts';
import type { Primitive } from '../primitives.ts';
import type { Block, Spot, TextTools } from '../sheet/blocks.ts';
import { CAP_HEIGHT, DASH, TEXT, WEIGHT } from '../style.ts';
import { textLine } from '../text.ts';
import type { FixedPoint } from './tapes.ts';

const HEIGHT = 34;
const WIDEST = 90;
/** For the letters outside the corners. */
const MARGIN = 7;

export function tapeKey(
  { palette, measure }: TextTools,
  points: readonly FixedPoint[],
  outline: readonly Point[],
  width: number,
): Block {
  return {
    height: HEIGHT + 2,
    keepsWithNext: true,
    draw: (at) => [
      {
        kind: 'group',
        description: t`The platform from above, the house at the bottom, with the points ${points.map(({ letter }) => letter).join(', ')}; not to scale`,
        children: drawKey({ palette, measure }, points, outline, { ...at, width: Math.min(width, WIDEST) }),
      },
    ],
  };
}

interface KeyPlace extends Spot {
  readonly width: number;
}

function drawKey(
  { palette }: TextTools,
  points: readonly FixedPoint[],
  outline: readonly Point[],
  { x, y, width }: KeyPlace,
): Primitive[] {
  const box = boxOfPoints(outline);
  if (!box) return [];
  const scale = Math.min(
    (width - 2 * MARGIN) / Math.max(box.width, 1),
    (HEIGHT - 2 * MARGIN) / Math.max(box.height, 1),
  );
  const onKey = (point: Point): Point => ({
    x: x + MARGIN + (point.x - box.x) * scale,
    y: y + HEIGHT - MARGIN - (point.y - box.y) * scale,
  });
  const [a, b] = points;
  const mark = onKey({ x: box.x + box.width * 0.62, y: box.y + box.height * 0.55 });
  const thin = { colour: palette.ink, width: WEIGHT.thin };
  const tapes = [a, b].flatMap((point) => (point ? line(onKey(point), mark) : []));
  return [
    {
      kind: 'path',
      path: polygon(outline.map(onKey)),
      fill: palette.platform,
      stroke: { ...thin, width: WEIGHT.medium },
    },
    { kind: 'path', path: tapes, stroke: { ...thin, dash: DASH.dashed } },
    { kind: 'path', path: cross(mark), stroke: { ...thin, width: WEIGHT.medium } },
    ...points.flatMap((point) =>
      letterAt(point.letter, onKey(point), { palette, middle: onKey(centre(box)) }),
    ),
    textLine(
      t`mark`,
      { x: mark.x + 2, y: mark.y + (TEXT.small * CAP_HEIGHT) / 2 },
      { size: TEXT.small, weight: 'regular', colour: palette.ink },
    ),
  ];
}

function centre(box: { x: number; y: number; width: number; height: number }): Point {
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

function cross({ x, y }: Point) {
  return [...line({ x: x - 1.2, y }, { x: x + 1.2, y }), ...line({ x, y: y - 1.2 }, { x, y: y + 1.2 })];
}

interface LetterLook extends Pick<TextTools, 'palette'> {
  readonly middle: Point;
}

/** A dot at the corner, its letter outside. */
function letterAt(letter: string, at: Point, { palette, middle }: LetterLook): Primitive[] {
  const out = { x: at.x < middle.x ? -1 : 1, y: at.y < middle.y ? -1 : 1 };
  const baseline = at.y + out.y * 1.5 + (out.y > 0 ? TEXT.body * CAP_HEIGHT : 0);
  return [
    { kind: 'path', path: circle(at, 0.8), fill: palette.ink },
    textLine(
      letter,
      { x: at.x + out.x * 2.6, y: baseline },
      { size: TEXT.body, weight: 'bold', colour: palette.ink, anchor: 'middle' },
    ),
  ];
}
