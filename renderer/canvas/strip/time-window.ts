/** Which stretch of a performance a pane shows, and where in it a moment lies. Seconds and pixels. */

export interface TimeWindow {
  /** The moment at the left edge. */
  readonly from: number;
  /** How much is shown. */
  readonly seconds: number;
}

/** Nobody turns a page in less; closer than this there is nothing more to see. */
const LEAST_SECONDS = 4;

export function wholeOf(length: number): TimeWindow {
  return { from: 0, seconds: Math.max(LEAST_SECONDS, length) };
}

export function pixelOf({ from, seconds }: TimeWindow, width: number, time: number): number {
  return ((time - from) / seconds) * width;
}

export function timeOf({ from, seconds }: TimeWindow, width: number, pixel: number): number {
  return from + (pixel / Math.max(1, width)) * seconds;
}

/** Shows `factor` times as much; `time` stays where it is, as far as there is something on both sides. */
export function zoomed(window: TimeWindow, length: number, time: number, factor: number): TimeWindow {
  const { seconds: most } = wholeOf(length);
  const seconds = Math.min(most, Math.max(LEAST_SECONDS, window.seconds * factor));
  return within({ from: time - ((time - window.from) / window.seconds) * seconds, seconds }, length);
}

export function shifted(window: TimeWindow, length: number, by: number): TimeWindow {
  return within({ ...window, from: window.from + by }, length);
}

export function isWhole({ seconds }: TimeWindow, length: number): boolean {
  return seconds >= wholeOf(length).seconds;
}

/** Shows a moment that has left the window, or is about to: a little after the left edge, so that what comes is seen. */
export function turnedTo(window: TimeWindow, length: number, time: number): TimeWindow {
  const share = (time - window.from) / window.seconds;
  return share >= 0 && share <= 0.96
    ? window
    : within({ ...window, from: time - 0.08 * window.seconds }, length);
}

/** Lets the moment run to the middle, and then the music run past it. */
export function followed(window: TimeWindow, length: number, time: number): TimeWindow {
  const share = (time - window.from) / window.seconds;
  if (share < 0 || share > 1) return turnedTo(window, length, time);
  return share > 0.5 ? within({ ...window, from: time - 0.5 * window.seconds }, length) : window;
}

function within({ from, seconds }: TimeWindow, length: number): TimeWindow {
  return { from: Math.max(0, Math.min(from, wholeOf(length).seconds - seconds)), seconds };
}

/** What is painted at once, `width` pixels wide. */
export interface PaintedStretch {
  readonly window: TimeWindow;
  readonly width: number;
}

/** As much as is shown, as a share, that is painted on either side of it. */
const BESIDE = 0.5;

/**
 * What to paint so that `shown` can be seen, `width` pixels wide: somewhat more, so that it need only be pushed along for a
 * while; the one `before`, as long as it holds all that is shown at the same size.
 */
export function stretchFor(
  shown: TimeWindow,
  width: number,
  length: number,
  before: PaintedStretch | null,
): PaintedStretch {
  const scale = width / shown.seconds;
  if (before && Math.abs(before.width / before.window.seconds - scale) < 1e-9 * scale && holds(before, shown))
    return before;
  const from = Math.max(0, shown.from - BESIDE * shown.seconds);
  const to = Math.min(wholeOf(length).seconds, shown.from + (1 + BESIDE) * shown.seconds);
  return { window: { from, seconds: to - from }, width: (to - from) * scale };
}

function holds({ window }: PaintedStretch, { from, seconds }: TimeWindow): boolean {
  const slack = 1e-9 * seconds;
  return window.from <= from + slack && window.from + window.seconds >= from + seconds - slack;
}
