/** A quiet darker patch on the floor under whatever stands there: it is what ties things to their spot. */

import { outlineOf } from '../../../catalogue/outlines.ts';
import { circle, ellipse } from '../../../catalogue/shapes.ts';
import type { PlacedRecord } from '../../../document/records.ts';
import { placed, type Vec2 } from '../../../geometry/frame.ts';
import { pointInPolygon } from '../../../geometry/polygon.ts';
import { floorUnder, type ViewContext } from '../context.ts';
import type { Marks } from '../mesh.ts';

interface Floor {
  readonly outline: readonly Vec2[];
  readonly z: number;
  readonly fill: string;
}

/** One mark for each thing that stands wholly on a floor. */
export function shadesOn(context: ViewContext, { outline, z, fill }: Floor): Marks[] {
  return context.items.flatMap((item) => {
    if (item.kind === 'riser' || Math.abs(floorUnder(context, item) - z) > 1) return [];
    const corners = footOf(item);
    if (!corners.every((corner) => pointInPolygon(corner, outline))) return [];
    return [{ rings: [corners.map(({ x, y }) => ({ x, y, z }))], fill }];
  });
}

/** From memory: about as much floor as something covers or darkens. */
function footOf(item: PlacedRecord): Vec2[] {
  switch (item.kind) {
    case 'player': {
      const feet = item.chair ? ellipse({ x: 0, y: -60 }, 290, 330) : ellipse({ x: 0, y: -40 }, 250, 190);
      return feet.map((corner) => placed(item, corner));
    }
    case 'stand':
      return circle(item, 190);
    case 'lamp':
      return circle(item, 170);
    default:
      return outlineOf(item);
  }
}
