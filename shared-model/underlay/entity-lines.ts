/** One entity of a DXF as a chain of straight lines in its own frame. */

import { placed, type Vec2 } from '../geometry/frame.ts';
import type { DxfEntity, DxfVertex } from './dxf-entities.ts';
import { splinePoints } from './spline.ts';

/** Curves are drawn with so many lines a full turn: off a circle by 0.2 % of its radius. */
const STEPS_PER_TURN = 48;
const TURN = 2 * Math.PI;

/** Null: it is no line, or one with a number that is not finite. */
export function chainOf(entity: DxfEntity): Vec2[] | null {
  const chain = pointsOf(entity);
  if (!chain || chain.length < 2 || !chain.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y)))
    return null;
  return isFromBehind(entity) ? chain.map(({ x, y }) => ({ x: -x, y })) : chain;
}

/** The arbitrary axes of the DXF reference for the only direction that plans have besides upwards. */
export function isFromBehind({ extrusionDirectionZ, extrusionDirection }: DxfEntity): boolean {
  return (extrusionDirectionZ ?? extrusionDirection?.z ?? 1) < 0;
}

function pointsOf(entity: DxfEntity): Vec2[] | null {
  switch (entity.type) {
    case 'LINE':
      return (entity.vertices ?? []).map(({ x, y }) => ({ x, y }));
    case 'LWPOLYLINE':
    case 'POLYLINE':
      return entity.is3dPolygonMesh || entity.isPolyfaceMesh ? null : polylinePoints(entity);
    case 'ARC':
    case 'CIRCLE':
      return circlePoints(entity);
    case 'ELLIPSE':
      return ellipsePoints(entity);
    case 'SPLINE':
      return splinePoints(entity);
    default:
      return null;
  }
}

function polylinePoints({ vertices = [], shape }: DxfEntity): Vec2[] {
  const [first] = vertices;
  const corners = shape && first ? [...vertices, first] : vertices;
  return corners.flatMap((vertex, index) => {
    const before = corners[index - 1];
    return before?.bulge ? bulgePoints(before, vertex) : [{ x: vertex.x, y: vertex.y }];
  });
}

/** From behind `from` to `to`, along the arc that bulges between them. */
function bulgePoints(from: DxfVertex, to: DxfVertex): Vec2[] {
  const bulge = from.bulge ?? 0;
  const angle = 4 * Math.atan(bulge);
  // The centre lies square to the chord's middle, so far that the arc takes up its angle.
  const out = (1 - bulge * bulge) / (4 * bulge);
  const centre = {
    x: (from.x + to.x) / 2 - (to.y - from.y) * out,
    y: (from.y + to.y) / 2 + (to.x - from.x) * out,
  };
  const radius = Math.hypot(from.x - centre.x, from.y - centre.y);
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  return [...arcPoints({ centre, radius, start, angle }).slice(1, -1), { x: to.x, y: to.y }];
}

function circlePoints({
  type,
  center,
  radius = NaN,
  startAngle = 0,
  endAngle = TURN,
}: DxfEntity): Vec2[] | null {
  if (!center) return null;
  const isWhole = type === 'CIRCLE';
  return arcPoints({
    centre: center,
    radius,
    start: isWhole ? 0 : startAngle,
    angle: isWhole ? TURN : anticlockwise(startAngle, endAngle),
  });
}

/** An ellipse is a circle of radius 1, stretched along its axes. */
function ellipsePoints({
  center,
  majorAxisEndPoint: axis,
  axisRatio = NaN,
  startAngle = 0,
  endAngle = TURN,
}: DxfEntity): Vec2[] | null {
  if (!center || !axis) return null;
  const unit = {
    centre: { x: 0, y: 0 },
    radius: 1,
    start: startAngle,
    angle: anticlockwise(startAngle, endAngle),
  };
  return arcPoints(unit).map(({ x, y }) => ({
    x: center.x + x * axis.x - y * axisRatio * axis.y,
    y: center.y + x * axis.y + y * axisRatio * axis.x,
  }));
}

/** From one angle on to the other, more than nothing and at most a full turn. */
function anticlockwise(from: number, to: number): number {
  const angle = (((to - from) % TURN) + TURN) % TURN;
  return angle < 1e-9 ? TURN : angle;
}

interface ArcOf {
  readonly centre: Vec2;
  readonly radius: number;
  /** Radians. */
  readonly start: number;
  readonly angle: number;
}

function arcPoints({ centre, radius, start, angle }: ArcOf): Vec2[] {
  const steps = Math.max(1, Math.ceil((Math.abs(angle) / TURN) * STEPS_PER_TURN));
  if (!Number.isFinite(steps)) return [{ x: NaN, y: NaN }];
  return Array.from({ length: steps + 1 }, (_, step) => {
    const at = start + (angle * step) / steps;
    return { x: centre.x + radius * Math.cos(at), y: centre.y + radius * Math.sin(at) };
  });
}

/** Where the points of a block come to lie when an insert puts it down, in row and column of its array. */
export function insertedAt(insert: DxfEntity, base: Vec2, { x, y }: Vec2, shift: Vec2): Vec2 {
  const { position = { x: NaN, y: NaN }, rotation = 0, xScale = 1, yScale = 1 } = insert;
  const local = { x: (x - base.x) * xScale + shift.x, y: (y - base.y) * yScale + shift.y };
  const at = placed({ ...position, facing: rotation }, local);
  return isFromBehind(insert) ? { x: -at.x, y: at.y } : at;
}
