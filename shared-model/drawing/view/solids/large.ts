/** Instruments that stand on the floor: bars over resonators, drums, cases. */

import {
  largeInstrumentModel,
  USUAL_OUTLINE,
  type LargeInstrumentModel,
} from '../../../catalogue/large-instruments.ts';
import { circle, rectangle } from '../../../catalogue/shapes.ts';
import type { LocalBox } from '../../../catalogue/boxes.ts';
import type { LargeInstrument } from '../../../document/records.ts';
import type { Vec2, Vec3 } from '../../../geometry/frame.ts';
import { isBars, isDrums } from '../../plan/large.ts';
import { floorUnder, placeOn, sizeInPicture, type ViewContext } from '../context.ts';
import { allOver, limb, prism, type Marks, type Part, type Place, type Solid } from '../mesh.ts';
import { mixed } from '../shade.ts';

export function largeInstrumentSolid(context: ViewContext, item: LargeInstrument): Solid {
  const place = placeOn(item, floorUnder(context, item));
  const model = largeInstrumentModel(item.model);
  return { subject: item.id, parts: model ? modelParts(context, model, place) : unknown(context, place) };
}

/** Of a model the catalogue does not know only the plan is known. */
function unknown({ palette }: ViewContext, place: Place): Part[] {
  return [prism(USUAL_OUTLINE, [0, 5], place, { top: palette.wood, side: palette.wood })];
}

function modelParts(context: ViewContext, model: LargeInstrumentModel, place: Place): Part[] {
  if (isDrums(model)) return model.boxes.flatMap((box) => drum(context, box, place));
  return isBars(model)
    ? bars(context, model, place)
    : model.boxes.flatMap((box) => case_(context, box, place));
}

const FRAME = 70;

/** A frame with two rows of bars on it, the tubes below them as one body, and legs. */
function bars(context: ViewContext, model: LargeInstrumentModel, place: Place): Part[] {
  const { palette, tints } = context;
  const { outline, height, boxes } = model;
  const tubes = boxes[0]?.bottom ?? 0;
  const middle = middleOf(outline);
  const inset = outline.map((corner) => shareOfWay(corner, middle, 0.06));
  const legs = outline.map((corner) => {
    const { x, y } = shareOfWay(corner, middle, 0.1);
    return limb(place(x, y, height - FRAME), place(x, y, 0), 18, tints.metal);
  });
  return [
    ...legs,
    prism(inset, [tubes, height - FRAME], place, allOver(tints.pipe)),
    prism(outline, [height - FRAME, height], place, {
      ...allOver(palette.wood),
      marks: barMarks(context, model, place),
    }),
  ];
}

const BAR_PITCH = 75;
const LEAST_BAR = 0.5;

/** The bars of both rows; the far row has the gaps of a keyboard: two bars, a gap, three bars, a gap. */
function barMarks(
  context: ViewContext,
  { outline, width, height }: LargeInstrumentModel,
  place: Place,
): Marks[] {
  const [nearLow, nearHigh, farHigh, farLow] = outline;
  if (!nearLow || !nearHigh || !farHigh || !farLow) return [];
  if (sizeInPicture(context, BAR_PITCH, place(0, 0, height)) < LEAST_BAR) return [];
  const count = Math.round(width / BAR_PITCH);
  const spot = (along: number, across: number): Vec3 => {
    const near = shareOfWay(nearLow, nearHigh, along);
    const { x, y } = shareOfWay(near, shareOfWay(farLow, farHigh, along), across);
    return place(x, y, height);
  };
  const bar = (index: number, from: number, to: number): Vec3[] => {
    const [left, right] = [(index + 0.1) / count, (index + 0.9) / count];
    return [spot(left, from), spot(right, from), spot(right, to), spot(left, to)];
  };
  const rings: Vec3[][] = [];
  for (let index = 0; index < count; index++) {
    rings.push(bar(index, 0.05, 0.5));
    if (index % 7 !== 2 && index % 7 !== 6) rings.push(bar(index + 0.5, 0.56, 0.95));
  }
  const { palette } = context;
  return [
    {
      rings,
      fill: mixed(palette.wood, palette.ink, 0.3),
    },
  ];
}

/** A shell with its head, on three legs. */
function drum({ palette, tints }: ViewContext, box: LocalBox, place: Place): Part[] {
  const shell = circle(box, box.width / 2).filter((_, corner) => corner % 2 === 0);
  const legs = [30, 150, 270].map((angle) => {
    const r = box.width * 0.42;
    const [x, y] = [
      box.x + r * Math.cos((angle * Math.PI) / 180),
      box.y + r * Math.sin((angle * Math.PI) / 180),
    ];
    return limb(place(x, y, box.bottom + 20), place(x, y, 0), 12, tints.metal);
  });
  const colours = { ...allOver(palette.wood), top: palette.page };
  return [...(box.bottom > 30 ? legs : []), prism(shell, [box.bottom, box.top], place, colours)];
}

/** A closed body on four legs. */
function case_({ palette, tints }: ViewContext, box: LocalBox, place: Place): Part[] {
  const corners = rectangle(box.width, box.depth).map(({ x, y }) => ({ x: box.x + x, y: box.y + y }));
  const middle = { x: box.x, y: box.y };
  const legs = corners.map((corner) => {
    const { x, y } = shareOfWay(corner, middle, 0.12);
    return limb(place(x, y, box.bottom), place(x, y, 0), 22, tints.metal);
  });
  return [
    ...(box.bottom > 30 ? legs : []),
    prism(corners, [box.bottom, box.top], place, allOver(palette.wood)),
  ];
}

function middleOf(points: readonly Vec2[]): Vec2 {
  const sum = points.reduce((to, { x, y }) => ({ x: to.x + x, y: to.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}

function shareOfWay(from: Vec2, to: Vec2, share: number): Vec2 {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}
