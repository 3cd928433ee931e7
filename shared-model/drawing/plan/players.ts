/** People from above: shoulders, head and the way they look; under them what they sit on, before them what they hold. */

import { instrumentModel } from '../../catalogue/instruments.ts';
import { bodies } from '../../catalogue/people.ts';
import type { Player } from '../../document/records.ts';
import { ellipse, polygon } from '../outline.ts';
import type { Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { itemToPage, paint, pen, type PlanContext } from './context.ts';
import { heldSymbol } from './held.ts';
import { chairSymbol } from './seats.ts';

export function drawPlayer(context: PlanContext, player: Player): Primitive[] {
  const { palette } = context;
  const map = itemToPage(context, player);
  const body = bodies(player.person, player.chair?.height ?? null).tall;
  const [headX, headY] = [body.headBreadth / 2, body.headLength / 2];
  const nose = polygon([
    { x: -headX * 0.55, y: -headY * 0.8 },
    { x: 0, y: -headY - 75 },
    { x: headX * 0.55, y: -headY * 0.8 },
  ]);
  return [
    ...(player.chair ? chairSymbol(context, map, player.chair.model) : []),
    paint(map, ellipse({ x: 0, y: 0 }, body.shoulderBreadth / 2, BODY_DEPTH / 2), {
      fill: palette.player,
      ...pen(palette.ink, WEIGHT.fine),
    }),
    ...drawHeld(context, player),
    paint(map, nose, { fill: palette.playerHead }),
    paint(map, ellipse({ x: 0, y: 0 }, headX, headY), { fill: palette.playerHead }),
  ];
}

/** Chest and back of a clothed adult (common practice, no source). */
const BODY_DEPTH = 280;

/** What the player has in hand. */
export function drawHeld(context: PlanContext, player: Player): Primitive[] {
  const map = itemToPage(context, player);
  return (context.held.get(player.id) ?? []).flatMap((instrument) => {
    const model = instrumentModel(instrument.model);
    return model ? heldSymbol(context, map, model) : [];
  });
}
