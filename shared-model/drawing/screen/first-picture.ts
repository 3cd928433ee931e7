/**
 * What a window will show of a concert as soon as it is open, drawn before the window is there: the same drawing, with
 * nothing in it but what a painter needs.
 */

import { setupsOf, type Document } from '../../document/document.ts';
import type { Units } from '../../document/measures.ts';
import { drawAnnotations, drawGround, drawItems } from '../plan.ts';
import { grownBox } from '../bounds.ts';
import type { Box, MeasureText, PathItem, Primitive } from '../primitives.ts';
import { cameraAtFirst, type Shown } from './first-camera.ts';
import { shownOf } from './first-look.ts';
import { frameOnPaper, paperScaleFor, visibleExtent, type ViewSize } from './framing.ts';
import { LAYERS_AT_FIRST, screenContext } from './plan-on-screen.ts';

export interface FirstRequest {
  readonly document: Document;
  /** In which the plan will be seen; a few pixels more or less do not matter. */
  readonly view: ViewSize;
  readonly theme: 'light' | 'dark';
  readonly units: Units;
  readonly measure: MeasureText;
}

export interface FirstDrawing extends Shown {
  /** The denominator of the scale that the primitives are drawn at, about the stage's origin. */
  readonly paperScale: number;
  readonly primitives: readonly Primitive[];
}

export function firstDrawing({ document, view, theme, units, measure }: FirstRequest): FirstDrawing {
  const setup = setupsOf(document)[0]?.id;
  if (!setup) throw new Error('document without a setup');
  const shown = shownOf(document, setup);
  const camera = cameraAtFirst(shown, view);
  const paperScale = paperScaleFor(camera.scale);
  const frame = frameOnPaper(grownBox(visibleExtent(camera, view), ROUND / camera.scale), paperScale);
  const plan = { document, setup, report: null, paperScale, theme, units, layers: LAYERS_AT_FIRST, frame };
  const context = screenContext(plan, measure);
  const ground = drawGround(context);
  const items = drawItems(context);
  const { above } = drawAnnotations(context, [...ground, ...items]);
  return { ...shown, paperScale, primitives: [ground, items, above].flatMap((list) => bare(list)) };
}

/** Pixels round the view that are drawn as well, for a view that turns out a little larger. */
const ROUND = 60;

/** Groups are for hands and readers: only what they cut off counts for a painter. */
function bare(primitives: readonly Primitive[]): Primitive[] {
  return primitives.flatMap((primitive): Primitive[] => {
    if (primitive.kind === 'path') return [{ ...primitive, path: primitive.path.map(shortItem) }];
    if (primitive.kind === 'text') return [{ ...primitive, x: short(primitive.x), y: short(primitive.y) }];
    const children = bare(primitive.children);
    return primitive.clip ? [{ kind: 'group', children, clip: shortBox(primitive.clip) }] : children;
  });
}

/** To a thousandth of a millimetre on paper, which no screen shows. */
const short = (length: number): number => Math.round(length * 1000) / 1000;

function shortItem(item: PathItem): PathItem {
  if (item[0] === 'Z') return item;
  if (item[0] !== 'C') return [item[0], short(item[1]), short(item[2])];
  const [, x1, y1, x2, y2, x, y] = item;
  return ['C', short(x1), short(y1), short(x2), short(y2), short(x), short(y)];
}

function shortBox({ x, y, width, height }: Box): Box {
  return { x: short(x), y: short(y), width: short(width), height: short(height) };
}
