/** The booklet over the ridge, seen from the end: before the first turn, while the first leaf goes over, and after it. */

import { statesOf } from '../../pages/bindings/binding.ts';
import { t } from '../../words/say.ts';
import { line, polyline } from '../outline.ts';
import type { PathPrimitive, Primitive } from '../primitives.ts';
import type { Block, Spot } from '../sheet/blocks.ts';
import { CAP_HEIGHT, TEXT, WEIGHT } from '../style.ts';
import { fitted, textLine, type Type } from '../text.ts';
import type { BookletOrder } from './order.ts';

const SMALL: Type = { size: TEXT.small, weight: 'regular' };
const BOLD: Type = { size: TEXT.body, weight: 'bold' };

/** Of a desk in the drawing, mm, and its slope. */
const DESK = 27;
const TILT = (65 * Math.PI) / 180;
/** Between layers of paper. */
const LAYER = 1.6;
const HEIGHT = 52;
/** More leaves than this are not drawn one by one. */
const MOST_DRAWN = 4;

/** Side 0 on the left. */
export function overRidgeDrawing(order: BookletOrder, width: number): Block {
  const { leaves } = order.binding;
  const frames =
    leaves === 0
      ? [still(0, t`as it hangs`)]
      : [still(0, t`at the beginning`), turning(), still(1, t`after the first turn`)];
  return {
    height: HEIGHT,
    draw: ({ x, y }) => {
      const step = width / frames.length;
      const children = frames.flatMap((frame, index) =>
        frameDrawing(order, frame, { x: x + step * (index + 0.5), y: y + 11 }, step),
      );
      return [{ kind: 'group', description: spoken(order), children }];
    },
  };
}

interface Frame {
  readonly state: number;
  readonly inMotion: boolean;
  readonly caption: string;
}

function still(state: number, caption: string): Frame {
  return { state, inMotion: false, caption };
}

function turning(): Frame {
  return { state: 0, inMotion: true, caption: t`the first leaf goes over the ridge` };
}

function spoken({ binding, players }: BookletOrder): string {
  const [views, stack] = [statesOf(binding), players[binding.stackSide] || t`the empty desk`];
  return t`The booklet over the ridge from its end, ${views} views: all leaves hang on the side of ${stack} at first; each turn takes the uppermost over the ridge.`;
}

/** `at`: the ridge. */
function frameDrawing(order: BookletOrder, frame: Frame, at: Spot, width: number): Primitive[] {
  const { palette, measure } = order.tools;
  const { binding, players } = order;
  const toStack = binding.stackSide === 0 ? -1 : 1;
  const drawn = Math.min(binding.leaves, MOST_DRAWN);
  const stacked = drawn - frame.state - (frame.inMotion ? 1 : 0);
  const centred = { anchor: 'middle' as const, colour: palette.ink };
  const names = ([0, 1] as const).map((side) =>
    textLine(
      fitted(players[side] || t`nobody`, width / 2 - 3, SMALL, measure),
      { x: at.x + (side === 0 ? -1 : 1) * (width / 4), y: at.y + 36.5 },
      { ...SMALL, ...centred },
    ),
  );
  return [
    ...desks(at, palette.metal),
    fixed(at, -toStack, palette.ink),
    fixed(at, toStack, palette.ink),
    ...piled(at, toStack, { leaves: stacked, first: frame.state + (frame.inMotion ? 2 : 1) }, order),
    ...piled(at, -toStack, { leaves: frame.state, first: 1 }, order),
    ...(frame.inMotion
      ? lifted(at, toStack, order)
      : [
          over(
            at,
            toStack < 0 ? [2 * stacked, 2 * frame.state] : [2 * frame.state, 2 * stacked],
            palette.ink,
          ),
        ]),
    ...names,
    textLine(frame.caption, { x: at.x, y: at.y + 40.5 }, { ...SMALL, ...centred }),
  ];
}

/** A point on a desk: `along` the slope from the ridge, `out` from the board. */
function onDesk(at: Spot, towards: number, along: number, out: number): Spot {
  return {
    x: at.x + towards * (along * Math.cos(TILT) + out * Math.sin(TILT)),
    y: at.y + along * Math.sin(TILT) - out * Math.cos(TILT),
  };
}

function desks(at: Spot, colour: string): PathPrimitive[] {
  const stroke = { colour, width: WEIGHT.heavy };
  return [-1, 1].flatMap((towards): PathPrimitive[] => {
    const lip = onDesk(at, towards, DESK, 0);
    return [
      { kind: 'path', path: polyline([at, lip, onDesk(at, towards, DESK, 3)]), stroke },
      {
        kind: 'path',
        path: line(onDesk(at, towards, DESK * 0.55, 0), { x: at.x + towards * 7, y: at.y + 33 }),
        stroke,
      },
    ];
  });
}

/** F or B on its desk. */
function fixed(at: Spot, towards: number, colour: string): PathPrimitive {
  const path = polyline([
    onDesk(at, towards, 0, layerOut(0) * AT_RIDGE),
    onDesk(at, towards, DESK - 2, layerOut(0)),
  ]);
  return { kind: 'path', path, stroke: { colour, width: WEIGHT.medium } };
}

/** From the board to the `layer`th sheet of paper on it, mm in the drawing. */
function layerOut(layer: number): number {
  return LAYER * (layer + 0.6);
}

/** Where paper goes over the ridge: from what lies uppermost on one side to what lies uppermost on the other. */
function over(at: Spot, layers: readonly [number, number], colour: string): PathPrimitive {
  const [a, b] = [
    onDesk(at, -1, 0, layerOut(layers[0]) * AT_RIDGE),
    onDesk(at, 1, 0, layerOut(layers[1]) * AT_RIDGE),
  ];
  const top = Math.min(a.y, b.y) - 1;
  return {
    kind: 'path',
    path: [
      ['M', a.x, a.y],
      ['C', a.x, top, b.x, top, b.x, b.y],
    ],
    stroke: { colour, width: WEIGHT.fine },
  };
}

interface Pile {
  readonly leaves: number;
  /** Number of the first leaf in it. */
  readonly first: number;
}

/** Layers lie closer at the ridge, where they are taped to one another, than at their hems. */
const AT_RIDGE = 0.3;

/** Each leaf is a hairpin: down to the hem and up again. */
function piled(at: Spot, towards: number, { leaves, first }: Pile, order: BookletOrder): Primitive[] {
  const { palette } = order.tools;
  const isStack = towards === (order.binding.stackSide === 0 ? -1 : 1);
  const more = order.binding.leaves > MOST_DRAWN ? ' ...' : '';
  const hairpins = Array.from({ length: leaves }, (_, index): PathPrimitive => {
    const inner = layerOut(2 * index + 1);
    const outer = layerOut(2 * index + 2);
    const path = polyline([
      onDesk(at, towards, 0, inner * AT_RIDGE),
      onDesk(at, towards, DESK - 2.5, inner),
      onDesk(at, towards, DESK - 2.5, outer),
      onDesk(at, towards, 0, outer * AT_RIDGE),
    ]);
    return { kind: 'path', path, stroke: { colour: palette.ink, width: WEIGHT.fine } };
  });
  const end = onDesk(at, towards, DESK, layerOut(2 * leaves + 1));
  const uppermost =
    leaves === 0 ? (isStack ? 'B' : 'F') : isStack ? `${first}o${more}` : `${first + leaves - 1}i`;
  const words = textLine(
    uppermost,
    { x: end.x + towards * 1.5, y: end.y + (TEXT.body * CAP_HEIGHT) / 2 - 4 },
    { ...BOLD, colour: palette.ink, anchor: towards < 0 ? 'end' : 'start' },
  );
  return [...hairpins, words];
}

/** The first leaf, upright over the ridge, and the way it goes. */
function lifted(at: Spot, towards: number, { tools: { palette } }: BookletOrder): Primitive[] {
  const stroke = { colour: palette.selection, width: WEIGHT.medium };
  const [top, half] = [at.y - 9.5, LAYER / 2];
  const from = { x: at.x + towards * 11, y: at.y - 4 };
  const to = { x: at.x - towards * 11, y: at.y - 4 };
  return [
    {
      kind: 'path',
      path: polyline([
        { x: at.x - half, y: at.y - 0.5 },
        { x: at.x - half, y: top },
        { x: at.x + half, y: top },
        { x: at.x + half, y: at.y - 0.5 },
      ]),
      stroke,
    },
    {
      kind: 'path',
      path: [
        ['M', from.x, from.y],
        ['C', from.x - towards * 4, at.y - 14, to.x + towards * 4, at.y - 14, to.x, to.y],
      ],
      stroke,
    },
    {
      kind: 'path',
      path: polyline([
        { x: to.x + towards * 2.2, y: to.y - 1.6 },
        to,
        { x: to.x - towards * 0.4, y: to.y - 2.8 },
      ]),
      stroke,
    },
  ];
}
