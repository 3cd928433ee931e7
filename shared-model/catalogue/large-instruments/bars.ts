/** Keyboard percussion: a trapeze, deep at the low bars on the player's left, shallow at the high ones. */

import type { Millimetres, Point } from '../../document/records.ts';
import { boxBetween, type LocalBox } from '../boxes.ts';
import { COMMON_PRACTICE, FROM_MEMORY } from '../sources.ts';
import type { LargeInstrumentModel } from './model.ts';

interface Bars {
  readonly width: Millimetres;
  /** Depth at the low and at the high end. */
  readonly low: Millimetres;
  readonly high: Millimetres;
  readonly height: Millimetres;
}

const PLAYER_BEHIND = 350;
/** Resonators and frame hang this far below the bars; under them there are only legs. */
const RESONATORS = 550;

export function barsOf(id: string, name: () => string, bars: Bars): LargeInstrumentModel {
  const { width, low, height } = bars;
  return {
    id,
    get name() {
      return name();
    },
    outline: trapeze(bars),
    width,
    depth: low,
    height,
    boxes: slices(bars),
    playerAt: { x: 0, y: low / 2 + PLAYER_BEHIND },
    source: FROM_MEMORY,
    sourceOf: { playerAt: COMMON_PRACTICE, boxes: COMMON_PRACTICE },
  };
}

/** The player's side is straight; the far side comes in towards the high end. */
function trapeze({ width, low, high }: Bars): Point[] {
  return [
    { x: width / 2, y: low / 2 },
    { x: -width / 2, y: low / 2 },
    { x: -width / 2, y: low / 2 - high },
    { x: width / 2, y: -low / 2 },
  ];
}

function slices({ width, low, high, height }: Bars): LocalBox[] {
  const count = 4;
  return Array.from({ length: count }, (_, slice) => {
    const depth = low + ((high - low) * (slice + 0.5)) / count;
    const left = width / 2 - (slice * width) / count;
    return boxBetween(
      [left, left - width / count],
      [low / 2 - depth, low / 2],
      [Math.max(100, height - RESONATORS), height],
    );
  });
}
