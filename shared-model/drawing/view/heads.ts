/** Where the players' heads are in a picture, and whether anything of them is to be seen there. */

import type { Player } from '../../document/records.ts';
import type { Box, Primitive } from '../primitives.ts';
import { depthOf, project, scaleAt } from './camera.ts';
import { floorUnder, type ViewContext } from './context.ts';
import { HEAD_HEIGHT } from './solids/figure.ts';
import { buildOf } from './solids/trunk.ts';
import { paintedAreas, topmostAt, type PaintedArea } from './topmost.ts';

export interface Head {
  readonly player: Player;
  /** Before the eye, mm. */
  readonly depth: number;
  /** Round the head, on the paper. */
  readonly box: Box;
  readonly seen: boolean;
}

/** The heads that are whole on the paper, from the left. */
export function headsIn(context: ViewContext, picture: readonly Primitive[]): Head[] {
  const areas = paintedAreas(picture);
  const heads = context.items.flatMap((record): Head[] => {
    if (record.kind !== 'player' || record.id === context.view.subject) return [];
    const place = headPlace(context, record);
    if (!place || !isOnPaper(place.box, context)) return [];
    return [{ player: record, ...place, seen: isSeen(record.id, place.box, areas) }];
  });
  return heads.sort((a, b) => a.box.x + a.box.width / 2 - (b.box.x + b.box.width / 2));
}

function headPlace(context: ViewContext, player: Player): Pick<Head, 'depth' | 'box'> | null {
  const { camera } = context;
  const { body } = buildOf(player);
  const crown = { x: player.x, y: player.y, z: floorUnder(context, player) + body.crown };
  const scale = scaleAt(camera, crown);
  if (scale === 0) return null;
  const { x, y } = project(camera, crown);
  const width = body.headLength * scale;
  return { depth: depthOf(camera, crown), box: { x: x - width / 2, y, width, height: HEAD_HEIGHT * scale } };
}

function isOnPaper(head: Box, { width, height }: ViewContext): boolean {
  return head.x > 0 && head.x + head.width < width && head.y > 0 && head.y + head.height < height;
}

/** Spots of a head at which it may be seen: shares of its box. */
const SPOTS = [0.3, 0.5, 0.7].flatMap((x) => [0.15, 0.35, 0.55, 0.8].map((y) => ({ x, y })));

function isSeen(player: string, box: Box, areas: readonly PaintedArea[]): boolean {
  return SPOTS.some(
    ({ x, y }) => topmostAt(areas, { x: box.x + x * box.width, y: box.y + y * box.height }) === player,
  );
}
