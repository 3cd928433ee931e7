/** The outline of somebody who sits in the house, from before or behind: only for the look of it, from memory. */

import type { Millimetres } from '../../../document/records.ts';
import type { Vec2 } from '../../../geometry/frame.ts';

/** About the eye: x to the right, y up, mm. */
export interface ListenerOutlines {
  readonly head: readonly Vec2[];
  readonly body: readonly Vec2[];
}

type Half = readonly (readonly [number, number])[];

/** The right half of the trunk, from the hips up to the neck; the shins are put under it. */
const TRUNK: Half = [
  [178, -690],
  [212, -590],
  [226, -470],
  [228, -345],
  [217, -285],
  [190, -246],
  [148, -221],
  [98, -203],
  [66, -184],
  [58, -152],
  [57, -100],
];

const HEAD: Half = [
  [20, -124],
  [54, -112],
  [72, -80],
  [82, -36],
  [86, 8],
  [80, 56],
  [58, 94],
  [26, 110],
  [10, 114],
];

/** Of a person whose eyes are so high over the floor; `fine` for one who is near. */
export function listenerOutlines(eyeHeight: Millimetres, fine: boolean): ListenerOutlines {
  const { head, trunk } = fine ? FINE : COARSE;
  const floor = -Math.max(740, eyeHeight);
  const shins: Half = [
    [118, floor],
    [146, floor + 40],
  ];
  return { head, body: mirrored([...shins, ...trunk]) };
}

const COARSE = { head: mirrored(everySecond(HEAD)), trunk: everySecond(TRUNK) };
const FINE = { head: mirrored(rounded(HEAD)), trunk: rounded(TRUNK) };

function everySecond(points: Half): Half {
  return points.filter((_, index) => index % 2 === 0 || index === points.length - 1);
}

/** Two points more between any two, on the curve of Catmull and Rom (1974) through all of them. */
function rounded(points: Half): Half {
  return points.flatMap((from, index): Half => {
    const to = points[index + 1];
    if (!to) return [from];
    const [before, after] = [points[index - 1] ?? from, points[index + 2] ?? to];
    return [0, 1 / 3, 2 / 3].map((t): readonly [number, number] => {
      const at = (axis: 0 | 1): number => along([before[axis], from[axis], to[axis], after[axis]], t);
      return [at(0), at(1)];
    });
  });
}

function along([a, b, c, d]: readonly [number, number, number, number], t: number): number {
  return b + (t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)))) / 2;
}

/** Points on the right, from the foot up, and their mirror images on the way down. */
function mirrored(right: Half): Vec2[] {
  const left = right.toReversed().map(([x, y]): Vec2 => ({ x: -x, y }));
  return [...right.map(([x, y]): Vec2 => ({ x, y })), ...left];
}
