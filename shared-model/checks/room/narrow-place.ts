/** The narrowest place of a way that is narrower than asked: how wide, where, and whether it is the door. */

import type { Point } from '../../document/records.ts';
import type { Vec2 } from '../../geometry/frame.ts';
import { crossWidths, type CrossStation } from './cross-widths.ts';
import type { Walker } from './walk.ts';
import type { Exit } from './walls.ts';

/** The search for the widest way may miss by so much; a way that lacks less is not narrow. */
const ACCURACY = 0.5;
/** A way runs at most so far beside the middle of a narrow place, and measures that much less than is there. */
const OFF_MIDDLE = 1;

export function isNarrow(width: number, asked: number): boolean {
  return width < asked - ACCURACY;
}

export interface NarrowWay {
  readonly walker: Walker;
  readonly path: readonly Vec2[];
  /** That of a disc that follows the path. */
  readonly width: number;
  readonly asked: number;
  readonly exit: Exit | undefined;
}

export interface NarrowPlace {
  /** As with a tape across it, where that is what makes the way narrow. */
  readonly width: number;
  readonly where: Point;
  readonly isDoor: boolean;
  /** So far from `where` is what it is narrow between; null: not known. */
  readonly reach: number | null;
  readonly stations: readonly CrossStation[];
}

export function narrowPlaceOf({ walker, path, width, asked, exit }: NarrowWay): NarrowPlace {
  const stations = crossWidths(walker, path);
  const least = stations.reduce<CrossStation | null>(
    (least, next) => (next.width < (least?.width ?? Infinity) ? next : least),
    null,
  );
  if (exit && exit.width - width < OFF_MIDDLE && exit.width <= (least?.width ?? Infinity) + OFF_MIDDLE)
    return { width: Math.min(exit.width, asked), where: exit.middle, isDoor: true, reach: null, stations };
  if (!least) return { width, where: walker.spot, isDoor: false, reach: null, stations };
  const isTaped = Math.abs(least.width - width) <= OFF_MIDDLE && least.width < asked;
  return {
    width: isTaped ? least.width : width,
    where: least.point,
    isDoor: false,
    reach: Math.max(width, least.width),
    stations,
  };
}
