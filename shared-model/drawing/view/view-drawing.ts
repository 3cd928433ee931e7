/** What somebody sees from his place, as a drawing: the same on the screen and on paper. */

import { line, rectangle } from '../outline.ts';
import type { GroupPrimitive, Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import { horizonOf } from './camera.ts';
import { viewContext, type ViewContext, type ViewRequest } from './context.ts';
import { headsIn } from './heads.ts';
import { namesOver } from './names.ts';
import { pictureOf } from './picture.ts';
import { solidsOf } from './solids/solids.ts';
import { describeSeen, describeView } from './words.ts';

export type { ViewRequest } from './context.ts';
export { pictureHeight, type View } from './view.ts';
export { viewFromPlayer } from './player-view.ts';
export { viewFromSeat } from './seat-view.ts';
export { subjectAt } from './topmost.ts';

/** The picture in mm on paper of the request's width and height, in one group that is cut off at its edges. */
export function viewDrawing(request: ViewRequest): Primitive[] {
  const context = viewContext(request);
  const picture = pictureOf(solidsOf(context), context.camera, context.palette, (subject) =>
    describeSeen(context, subject),
  );
  const heads = headsIn(context, picture);
  const whole: GroupPrimitive = {
    kind: 'group',
    clip: { x: 0, y: 0, width: request.width, height: request.height },
    description: describeView(context, heads),
    children: [...surroundings(context), ...picture, ...(request.names ? namesOver(context, heads) : [])],
  };
  return [whole];
}

/** Of the room nothing is known but its floor: paper above the horizon, a quiet tone below it. */
function surroundings({ camera, palette, tints, width, height }: ViewContext): Primitive[] {
  const horizon = Math.max(0, Math.min(height, horizonOf(camera)));
  const ground = { x: 0, y: horizon, width, height: height - horizon };
  const edge = line({ x: 0, y: horizon }, { x: width, y: horizon });
  return [
    { kind: 'path', path: rectangle({ x: 0, y: 0, width, height }), fill: palette.paper },
    { kind: 'path', path: rectangle(ground), fill: tints.houseFloor },
    { kind: 'path', path: edge, stroke: { colour: palette.hairline, width: WEIGHT.hair } },
  ];
}
