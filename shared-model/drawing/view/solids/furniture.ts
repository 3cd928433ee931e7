/** Tables, pegs, lamps and whatever else has an outline and a height. */

import { instrumentModel, type HeldBox } from '../../../catalogue/instruments.ts';
import { instrumentStandModel, USUAL_FOOT_RADIUS } from '../../../catalogue/instrument-stands.ts';
import { circle, rectangle } from '../../../catalogue/shapes.ts';
import { platformOf } from '../../../document/document.ts';
import type { Instrument, InstrumentStand, Lamp, Shape, Table } from '../../../document/records.ts';
import { facingVector } from '../../../geometry/frame.ts';
import { pointInPolygon } from '../../../geometry/polygon.ts';
import { floorUnder, placeOn, type ViewContext } from '../context.ts';
import { allOver, limb, loft, prism, type Part, type Place, type Solid } from '../mesh.ts';
import { plate, roundedOutline } from './plates.ts';

const TOP = 40;

/** Closed down to the floor, as the sight check counts it: a top with a cloth. */
export function tableSolid(context: ViewContext, table: Table): Solid {
  const { palette, tints } = context;
  const place = placeOn(table, floorUnder(context, table));
  const { width, depth, height } = table;
  const inset = Math.min(12, width / 8, depth / 8);
  const cloth = { top: tints.cloth, side: tints.cloth };
  const waiting = waitingOn(context, table).map(({ model }, index) =>
    onTable(context, model, (x, y, z) => place(x + besideEachOther(index), y, z + height)),
  );
  return {
    subject: table.id,
    parts: [
      prism(rectangle(width - 2 * inset, depth - 2 * inset), [0, height - TOP], place, cloth),
      prism(rectangle(width, depth), [height - TOP, height], place, allOver(palette.wood)),
      ...waiting,
    ],
  };
}

function waitingOn({ instruments }: ViewContext, support: InstrumentStand | Table): Instrument[] {
  return instruments.filter((instrument) => instrument.support === support.id);
}

/** From the middle to either side in turn. */
const besideEachOther = (index: number): number => (index % 2 === 0 ? 110 : -110) * Math.ceil(index / 2);

/** Small things are drawn as a plain drum; what the sight check counts stands upright. */
function onTable({ palette }: ViewContext, model: string, place: Place): Part {
  const held = instrumentModel(model)?.held;
  if (held) return upright(held, 0, place, palette.instrument);
  const colours = { top: palette.instrument, side: palette.instrument };
  return prism(everyThird(circle({ x: 0, y: 0 }, 38)), [0, 95], place, colours);
}

function everyThird<T>(points: readonly T[]): T[] {
  return points.filter((_, corner) => corner % 3 === 0);
}

/** As high, wide and deep as the sight check counts it. */
function upright({ width, depth, top, bottom }: HeldBox, foot: number, place: Place, fill: string): Part {
  return plate(place, {
    middle: { x: 0, y: 0, z: foot + (top - bottom) / 2 },
    along: { x: 0, y: 0, z: 1 },
    across: { x: 1, y: 0, z: 0 },
    outline: roundedOutline(top - bottom, width, 0.25),
    thickness: depth,
    fill,
  });
}

/** A peg on three toes, with what waits on it. */
export function instrumentStandSolid(context: ViewContext, stand: InstrumentStand): Solid {
  const { tints } = context;
  const place = placeOn(stand, floorUnder(context, stand));
  const radius = instrumentStandModel(stand.model)?.footRadius ?? USUAL_FOOT_RADIUS;
  const toes = [0, 120, 240].map((angle) => {
    const toe = facingVector(angle);
    return limb(place(0, 0, 60), place(toe.x * radius, toe.y * radius, 8), 8, tints.metal);
  });
  return {
    subject: stand.id,
    parts: [
      ...toes,
      limb(place(0, 0, 40), place(0, 0, stand.height * 0.45), 9, tints.metal),
      ...waitingOn(context, stand).flatMap(({ model }) => onPeg(context, model, stand.height, place)),
    ],
  };
}

/** Slender ones reach somewhat over the height at which a hand takes them. */
function onPeg({ palette }: ViewContext, model: string, height: number, place: Place): Part[] {
  const held = instrumentModel(model)?.held;
  if (held) return [upright(held, 0, place, palette.instrument)];
  const top = height * 1.25;
  return [
    limb(place(0, 0, 60), place(0, 0, 190), [36, 18], palette.instrument),
    limb(place(0, 0, 180), place(0, 0, top), 17, palette.instrument),
  ];
}

const SHADE = { height: 150, foot: 130, top: 70 };

/** A post on a foot, a shade, and the cable along the floor. */
export function lampSolid(context: ViewContext, lamp: Lamp): Solid {
  const { palette, tints } = context;
  const floor = floorUnder(context, lamp);
  const place = placeOn(lamp, floor);
  const low = Math.max(0, lamp.height - SHADE.height);
  const ring = (radius: number, z: number) =>
    circle({ x: 0, y: 0 }, radius).map(({ x, y }) => place(x, y, z));
  return {
    subject: lamp.id,
    parts: [
      ...cableParts(context, lamp),
      prism(everyThird(circle({ x: 0, y: 0 }, 140)), [0, 22], place, { top: tints.metal, side: tints.metal }),
      limb(place(0, 0, 20), place(0, 0, low + 20), 11, tints.metal),
      loft([everyThird(ring(SHADE.foot, low)), everyThird(ring(SHADE.top, lamp.height))], () => palette.lamp),
    ],
  };
}

const CABLE = 7;

function cableParts({ palette }: ViewContext, lamp: Lamp): Part[] {
  const spots = [{ x: lamp.x, y: lamp.y }, ...lamp.cable].map(({ x, y }) => ({ x, y, z: CABLE }));
  return spots.slice(1).flatMap((to, index) => {
    const from = spots[index];
    return from && Math.hypot(to.x - from.x, to.y - from.y) > 1 ? [limb(from, to, CABLE, palette.cable)] : [];
  });
}

/** Heights count from the floor; what stands beside the platform goes down to the floor of the house. */
export function shapeSolid(context: ViewContext, shape: Shape): Solid {
  const { palette, tints, document } = context;
  const platform = platformOf(document);
  const isOn = pointInPolygon(shape, platform.outline);
  const floor = isOn ? floorUnder(context, shape) : 0;
  const bottom = isOn ? 0 : -platform.height;
  const colour = shape.fixed ? tints.column : palette.wood;
  return {
    subject: shape.id,
    parts: [
      prism(shape.outline, [bottom, shape.height], placeOn(shape, floor), { top: colour, side: colour }),
    ],
  };
}
