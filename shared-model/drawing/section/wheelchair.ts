/** A wheelchair from the side: what is behind whoever sits in it, and the wheel that is before him. */

import type { Millimetres } from '../../document/records.ts';
import { circle, ellipse, line, polyline, type Path } from '../outline.ts';
import { paint, pen } from '../plan/context.ts';
import type { Primitive } from '../primitives.ts';
import { WEIGHT } from '../style.ts';
import type { SectionContext } from './context.ts';
import type { ChairPose } from './figure.ts';

/** Wheels of 24 in, with a rail to push them by, and casters of 7 in. Common practice, no source. */
const WHEEL = 305;
const RAIL = 255;
const CASTER = 90;
/** From the axis of who sits there: back to the large wheel, and ahead to the caster. */
const BEHIND = 110;
const AHEAD = 310;
/** Half the breadth over the wheels, and of one. */
const HALF = 300;
const TYRE = 25;
/** Over the seat, and back from it. */
const REST = { up: 400, back: 40, handle: 130 };
/** Feet stand so high on the footrests. */
export const FOOTREST: Millimetres = 110;

interface Parts {
  readonly behind: readonly Primitive[];
  readonly before: readonly Primitive[];
}

/** Seen straight from ahead or behind there are two narrow wheels, and nothing of them is before the legs. */
export function wheelchairParts(context: SectionContext, pose: Omit<ChairPose, 'back'>): Parts {
  const { palette, toPage } = context;
  const frame = paint(toPage, frameLines(pose), pen(palette.ink, WEIGHT.medium));
  const rubber = (path: Path): Primitive => paint(toPage, path, pen(palette.ink, WEIGHT.medium));
  const rail = (path: Path): Primitive => paint(toPage, path, pen(palette.ink, WEIGHT.hair));
  const { x, y, looks } = pose;
  const narrow = Math.abs(looks);
  if (narrow < IN_PROFILE) {
    const wheels = [-1, 1].flatMap((side) => ellipse({ x: x + side * HALF, y: y + WHEEL }, TYRE, WHEEL));
    return { behind: [frame, rubber(wheels)], before: [] };
  }
  const hub = { x: x - looks * BEHIND, y: y + WHEEL };
  const caster = ellipse({ x: x + looks * AHEAD, y: y + CASTER }, CASTER * narrow, CASTER);
  return {
    behind: [frame],
    before: [
      rubber([...ellipse(hub, WHEEL * narrow, WHEEL), ...caster]),
      rail([...ellipse(hub, RAIL * narrow, RAIL), ...circle(hub, 22)]),
    ],
  };
}

const IN_PROFILE = 0.35;

/** Seat, back with its handle, and the bar down to the footrest. */
function frameLines({ x, y, seat, looks }: Omit<ChairPose, 'back'>): Path {
  const at = (ahead: number, up: number): { x: number; y: number } => ({ x: x + looks * ahead, y: y + up });
  return [
    ...polyline([
      at(-200 - REST.handle, seat + REST.up),
      at(-200 - REST.back, seat + REST.up),
      at(-200, seat),
      at(220, seat),
      at(360, FOOTREST),
      at(520, FOOTREST),
    ]),
    ...line(at(-200, seat), at(-BEHIND, WHEEL)),
  ];
}
