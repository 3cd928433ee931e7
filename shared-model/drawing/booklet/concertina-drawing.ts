/** A concertina on its desk, seen from above: which pages are open, and how the others lie behind them. */

import { statesOf } from '../../pages/bindings/binding.ts';
import { jointLabel } from '../../pages/bindings/strip.ts';
import { t } from '../../words/say.ts';
import { line, polyline } from '../outline.ts';
import type { PathPrimitive, Primitive } from '../primitives.ts';
import type { Block, Spot } from '../sheet/blocks.ts';
import { CAP_HEIGHT, TEXT, WEIGHT } from '../style.ts';
import { fitted, textLine, type Type } from '../text.ts';
import type { BookletOrder } from './order.ts';

const SMALL: Type = { size: TEXT.small, weight: 'regular' };
const BOLD: Type = { size: TEXT.small, weight: 'bold' };

const WIDEST_PAGE = 22;
/** Between layers of paper, where there are few. */
const LAYER = 1.9;
const DEEPEST = 24;
/** Thinner layers have no room for the letters of their joints. */
const LETTERED = 1.5;
/** Beside a frame, for the letters of its joints. */
const ASIDE = 7;
const CAPTION = 13;

/** The first views, as these show how it goes, and the last. */
export function concertinaDrawing(order: BookletOrder, width: number): Block {
  const { binding } = order;
  const last = statesOf(binding) - 1;
  const states = [...new Set([0, Math.min(1, last), last])];
  const layer = Math.min(LAYER, DEEPEST / Math.max(1, 2 * binding.leaves));
  const depth = 2 * binding.leaves * layer + 2;
  const step = width / states.length;
  const page = Math.min(WIDEST_PAGE, (step - 2 * ASIDE) / binding.pagesPerPanel);
  return {
    height: depth + CAPTION,
    draw: ({ x, y }) => {
      const left = (index: number): number => x + step * (index + 0.5) - (page * binding.pagesPerPanel) / 2;
      const children = states.flatMap((state, index) =>
        frameDrawing(order, { state, page, layer }, { x: left(index), y: y + depth }),
      );
      return [{ kind: 'group', description: spoken(order), children }];
    },
  };
}

function spoken({ binding }: BookletOrder): string {
  return t`The concertina on its desk from above, ${binding.pagesPerPanel} pages open: those to come lie zig-zag behind the last of them, those done with behind the first.`;
}

interface Frame {
  readonly state: number;
  /** Breadth of a page in the drawing. */
  readonly page: number;
  /** Between layers of paper. */
  readonly layer: number;
}

/** `at`: the left edge of the open pages. */
function frameDrawing(order: BookletOrder, frame: Frame, at: Spot): Primitive[] {
  const { binding, tools } = order;
  const { state, page } = frame;
  const shown = binding.pagesPerPanel;
  const right = { x: at.x + shown * page, y: at.y };
  const ink = tools.palette.ink;
  const numbers = Array.from({ length: shown }, (_, place) =>
    textLine(
      String(2 * state + place + 1),
      { x: at.x + (place + 0.5) * page, y: at.y + 1.5 + TEXT.small },
      { ...BOLD, anchor: 'middle', colour: ink },
    ),
  );
  const caption = fitted(captionOf(order, state), shown * page + 2 * ASIDE, SMALL, tools.measure);
  return [
    { kind: 'path', path: line(at, right), stroke: { colour: ink, width: WEIGHT.bold } },
    ...edgesOf(at, frame, shown, ink),
    ...bunch(order, frame, { corner: at, towards: 1, count: 2 * state }),
    ...bunch(order, frame, { corner: right, towards: -1, count: 2 * (binding.leaves - state) }),
    ...numbers,
    textLine(
      caption,
      { x: (at.x + right.x) / 2, y: at.y + 5.5 + TEXT.small },
      { ...SMALL, anchor: 'middle', colour: ink },
    ),
  ];
}

function captionOf({ binding }: BookletOrder, state: number): string {
  if (binding.leaves === 0) return t`as it stands`;
  if (state === 0) return t`view 1, from above`;
  return state === binding.leaves ? t`view ${state + 1}, the last` : t`view ${state + 1}`;
}

/** Where one open page ends and the next begins. */
function edgesOf(at: Spot, { page }: Frame, shown: number, colour: string): PathPrimitive[] {
  return Array.from({ length: shown + 1 }, (_, place) => {
    const x = at.x + place * page;
    return {
      kind: 'path',
      path: line({ x, y: at.y - 0.7 }, { x, y: at.y + 0.7 }),
      stroke: { colour, width: WEIGHT.fine },
    };
  });
}

interface Bunch {
  /** The outer edge of the open page that hides it. */
  readonly corner: Spot;
  /** From that edge to the other one of the page: 1 to the right. */
  readonly towards: 1 | -1;
  readonly count: number;
}

function bunch(order: BookletOrder, frame: Frame, { corner, towards, count }: Bunch): Primitive[] {
  const { palette } = order.tools;
  const { page, layer } = frame;
  const bends = Array.from({ length: count + 1 }, (_, index) => ({
    x: corner.x + (index % 2 === 0 ? 0 : towards * (page - 1.5)),
    y: corner.y - index * layer,
  }));
  if (count === 0) return [];
  // Letters only on the outside: there blank side lies on blank side.
  const outer = bends.slice(0, -1).flatMap((spot, index) => (index % 2 === 0 ? [{ spot, index }] : []));
  const letters = outer.slice(0, layer < LETTERED ? 1 : outer.length).map(({ spot, index }) => {
    const label = jointLabel(jointAt(order, frame.state, towards, index) - 1);
    const at = { x: spot.x - towards * 1.5, y: spot.y + (TEXT.small * CAP_HEIGHT) / 2 };
    return textLine(label, at, { ...BOLD, anchor: towards > 0 ? 'end' : 'start', colour: palette.ink });
  });
  return [
    { kind: 'path', path: polyline(bends), stroke: { colour: palette.ink, width: WEIGHT.fine } },
    ...letters,
  ];
}

/** The joint that is `index` layers behind the open pages, counted from 1. */
function jointAt({ binding }: BookletOrder, state: number, towards: 1 | -1, index: number): number {
  return towards > 0 ? 2 * state - index : 2 * state + binding.pagesPerPanel + index;
}
