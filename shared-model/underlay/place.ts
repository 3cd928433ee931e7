/** Where an underlay lies: from its own units (pixels or those of the drawing, y upwards) to the stage. */

import type { Underlay } from '../document/records.ts';
import { placed, radians, type Vec2 } from '../geometry/frame.ts';
import type { Polygon } from '../geometry/polygon.ts';

export function underlayToStage({ x, y, turn, scale }: Underlay, own: Vec2): Vec2 {
  return placed({ x, y, facing: turn }, { x: own.x * scale, y: own.y * scale });
}

export function stageToUnderlay({ x, y, turn, scale }: Underlay, spot: Vec2): Vec2 {
  const [c, s] = [Math.cos(radians(turn)), Math.sin(radians(turn))];
  const [dx, dy] = [spot.x - x, spot.y - y];
  return { x: (c * dx + s * dy) / scale, y: (c * dy - s * dx) / scale };
}

/** Its corners on the stage, anticlockwise from the lower left one. */
export function underlayOutline(underlay: Underlay): Polygon {
  const { width, height } = underlay.content;
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  return corners.map((corner) => underlayToStage(underlay, corner));
}
