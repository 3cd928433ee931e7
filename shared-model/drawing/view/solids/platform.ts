/** The platform and its levels, with squares of a metre on the floor, so that depth can be read. */

import { platformOf } from '../../../document/document.ts';
import type { Riser } from '../../../document/records.ts';
import { rectangle } from '../../../catalogue/shapes.ts';
import { placed, type Vec2, type Vec3 } from '../../../geometry/frame.ts';
import { hatching } from '../../outline.ts';
import type { PathItem } from '../../primitives.ts';
import { WEIGHT } from '../../style.ts';
import { placeOn, type ViewContext } from '../context.ts';
import { prism, type Marks, type Place, type Solid } from '../mesh.ts';
import { between } from '../vectors.ts';
import { shadesOn } from './shades.ts';

const STAGE: Place = (x, y, z) => ({ x, y, z });

export function platformSolid(context: ViewContext): Solid {
  const { palette, tints } = context;
  const { id, outline, height } = platformOf(context.document);
  const marks = [
    squares(context, outline),
    ...shadesOn(context, { outline, z: 0, fill: tints.platformShade }),
  ];
  const colours = { top: palette.platform, side: tints.side, marks };
  return { subject: id, parts: [prism(outline, [-height, 0], STAGE, colours)] };
}

export function riserSolid(context: ViewContext, riser: Riser): Solid {
  const { palette, tints } = context;
  const outline = rectangle(riser.width, riser.depth);
  const onStage = outline.map((corner) => placed(riser, corner));
  const marks = shadesOn(context, { outline: onStage, z: riser.height, fill: tints.riserShade });
  const colours = { top: palette.riser, side: tints.side, marks };
  return { subject: riser.id, parts: [prism(outline, [0, riser.height], placeOn(riser, 0), colours)] };
}

const METRE = 1000;

/** Lines a metre apart both ways. */
function squares({ tints }: ViewContext, outline: readonly Vec2[]): Marks {
  const rings = [90, 0].flatMap((angle) => linesOf(hatching(outline, METRE, angle)));
  return { rings, stroke: { colour: tints.board, width: WEIGHT.hair } };
}

/** Lines end so far before the edge, mm, so that its outline stays whole. */
const SHORT = 25;

function linesOf(path: readonly PathItem[]): Vec3[][] {
  return path.flatMap((item, index) => {
    const from = path[index - 1];
    if (item[0] !== 'L' || from?.[0] !== 'M') return [];
    const [start, end] = [
      { x: from[1], y: from[2], z: 0 },
      { x: item[1], y: item[2], z: 0 },
    ];
    const short = SHORT / Math.max(2 * SHORT, Math.hypot(end.x - start.x, end.y - start.y));
    return [[between(start, end, short), between(start, end, 1 - short)]];
  });
}
