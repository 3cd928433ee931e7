/** Tables, instrument stands, lamps, risers and free shapes from above. */

import { instrumentStandModel, USUAL_FOOT_RADIUS } from '../../catalogue/instrument-stands.ts';
import type { InstrumentStand, Lamp, Point, Riser, Shape, Table } from '../../document/records.ts';
import { placed } from '../../geometry/frame.ts';
import { centredRectangle, circle, hatching, line, polygon, polyline, roundedRectangle } from '../outline.ts';
import type { Palette } from '../palette.ts';
import type { PathItem, Primitive } from '../primitives.ts';
import { DASH, WEIGHT } from '../style.ts';
import { itemToPage, onPage, paint, pen, type PlanContext } from './context.ts';

export function drawTable(context: PlanContext, table: Table): Primitive[] {
  const { palette } = context;
  const map = itemToPage(context, table);
  const { width, depth } = table;
  const inset = Math.min(50, width / 6, depth / 6);
  const top = roundedRectangle({ x: -width / 2, y: -depth / 2, width, height: depth }, 25);
  const tray = centredRectangle(width - 2 * inset, depth - 2 * inset);
  return [
    paint(map, top, { fill: palette.wood, ...pen(palette.ink, WEIGHT.fine) }),
    paint(map, tray, pen(palette.ink, WEIGHT.hair)),
  ];
}

/** A foot with three toes and the peg in its middle. */
export function drawInstrumentStand(context: PlanContext, stand: InstrumentStand): Primitive[] {
  const { palette } = context;
  const map = itemToPage(context, stand);
  const radius = instrumentStandModel(stand.model)?.footRadius ?? USUAL_FOOT_RADIUS;
  const toes = [0, 120, 240].flatMap((angle) => {
    const turn = (angle * Math.PI) / 180;
    return line({ x: 0, y: 0 }, { x: radius * Math.sin(turn), y: -radius * Math.cos(turn) });
  });
  return [
    paint(map, circle({ x: 0, y: 0 }, radius), { fill: palette.paper, ...pen(palette.metal, WEIGHT.thin) }),
    paint(map, toes, pen(palette.metal, WEIGHT.medium)),
    paint(map, circle({ x: 0, y: 0 }, Math.max(radius * 0.3, 35)), {
      fill: palette.instrument,
      ...pen(palette.ink, WEIGHT.hair),
    }),
  ];
}

/** The lamp, its cable and the socket. A covered cable runs between two lines. */
export function drawLamp(context: PlanContext, lamp: Lamp): Primitive[] {
  const { palette } = context;
  const map = itemToPage(context, lamp);
  const rays: PathItem[] = [45, 135, 225, 315].flatMap((angle) => {
    const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
    return line({ x: 0, y: 0 }, { x: LAMP_RADIUS * c, y: LAMP_RADIUS * s });
  });
  return [
    ...drawCable(context, lamp),
    paint(map, circle({ x: 0, y: 0 }, LAMP_RADIUS), { fill: palette.lamp, ...pen(palette.ink, WEIGHT.fine) }),
    paint(map, rays, pen(palette.ink, WEIGHT.fine)),
  ];
}

const LAMP_RADIUS = 110;

function drawCable(context: PlanContext, lamp: Lamp): Primitive[] {
  const { palette } = context;
  const socket = lamp.cable.at(-1);
  if (!socket) return [];
  const course = polyline([lamp, ...lamp.cable].map((point) => onPage(context, point)));
  const at = onPage(context, socket);
  const cover: Primitive[] = lamp.cableCovered
    ? [
        { kind: 'path', path: course, ...pen(palette.ink, 1.3) },
        { kind: 'path', path: course, ...pen(palette.paper, 1) },
      ]
    : [];
  return [
    ...cover,
    { kind: 'path', path: course, ...pen(palette.cable, WEIGHT.medium, DASH.short) },
    ...drawSocket(at, palette),
  ];
}

/** A square with a dot, of one size at every scale; the key to the signs shows the same. */
export function drawSocket(at: Point, palette: Palette): Primitive[] {
  return [
    { kind: 'path', path: centredRectangle(2, 2, at), fill: palette.paper, ...pen(palette.ink, WEIGHT.fine) },
    { kind: 'path', path: circle(at, 0.35), fill: palette.ink },
  ];
}

/** A level; its height is written over what stands on it, by riser-heights.ts. */
export function drawRiser(context: PlanContext, riser: Riser): Primitive[] {
  const { palette } = context;
  return [
    paint(itemToPage(context, riser), centredRectangle(riser.width, riser.depth), {
      fill: palette.riser,
      ...pen(palette.ink, WEIGHT.fine),
    }),
  ];
}

/** What belongs to the building is hatched, what was brought in is plain. */
export function drawShape(context: PlanContext, shape: Shape): Primitive[] {
  const { palette } = context;
  const corners = shape.outline.map((corner) => onPage(context, placed(shape, corner)));
  const outline = polygon(corners);
  if (!shape.fixed) {
    return [{ kind: 'path', path: outline, fill: palette.wood, ...pen(palette.ink, WEIGHT.fine) }];
  }
  return [
    { kind: 'path', path: outline, fill: palette.paper },
    { kind: 'path', path: hatching(corners, 1, 45), ...pen(palette.building, WEIGHT.thin) },
    { kind: 'path', path: outline, ...pen(palette.ink, WEIGHT.bold) },
  ];
}
