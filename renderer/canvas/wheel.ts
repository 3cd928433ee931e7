/** What turned the wheel. */

export interface WheelTurn {
  readonly deltaX: number;
  readonly deltaY: number;
  readonly deltaMode: number;
  /** Chromium's own: 120 for each notch. */
  readonly wheelDeltaY?: number;
}

const BY_LINES = 1;
const NOTCH = 120;
/** The least that a notch of a wheel scrolls, in pixels, on any of the three systems. */
const LEAST_NOTCH = 50;

/**
 * A mouse's wheel goes in notches and zooms; two fingers on a pad, which come in small steps, move the view. Nothing but the
 * size of the steps tells them apart. `from memory` of what browsers send.
 */
export function isNotched({ deltaX, deltaY, deltaMode, wheelDeltaY }: WheelTurn): boolean {
  if (deltaX !== 0 || deltaY === 0) return false;
  if (deltaMode === BY_LINES) return true;
  return Math.abs(deltaY) >= LEAST_NOTCH && wheelDeltaY !== undefined && wheelDeltaY % NOTCH === 0;
}
