/** Instruments whose plan is a plain rectangle. */

import type { Millimetres, Point } from '../../document/records.ts';
import { rectangle } from '../shapes.ts';
import { COMMON_PRACTICE, FROM_MEMORY } from '../sources.ts';
import type { LargeInstrumentModel } from './model.ts';

interface Case {
  readonly size: readonly [width: Millimetres, depth: Millimetres, height: Millimetres];
  /** Below this there are only legs. */
  readonly bottom: Millimetres;
  readonly playerAt: Point;
  /** The part in the middle that hides something, where the feet stand wider. */
  readonly hidesWidth?: Millimetres;
  readonly hidesDepth?: Millimetres;
}

export function caseOf(id: string, name: () => string, plan: Case): LargeInstrumentModel {
  const [width, depth, height] = plan.size;
  return {
    id,
    get name() {
      return name();
    },
    outline: rectangle(width, depth),
    width,
    depth,
    height,
    boxes: [
      {
        x: 0,
        y: 0,
        width: plan.hidesWidth ?? width,
        depth: plan.hidesDepth ?? depth,
        bottom: plan.bottom,
        top: height,
      },
    ],
    playerAt: plan.playerAt,
    source: FROM_MEMORY,
    sourceOf: { playerAt: COMMON_PRACTICE, boxes: COMMON_PRACTICE },
  };
}
