/**
 * Narrow stretches of a walking route, and what ADA/ABA 403.5.1 says of them: a clear width of 36 in (915 mm), which may
 * drop to 32 in (815 mm) for at most 24 in (610 mm), such stretches at least 48 in (1220 mm) apart.
 *
 * 36 in are 914.4 mm; the standard prints 915. Here the printed millimetres count, so 914.5 is too narrow.
 * This is wording for a caution. Whether a route may be used is for the venue and the local codes to say.
 */

export const CLEAR_WIDTH = 915;
export const PINCH_WIDTH = 815;
export const PINCH_LENGTH = 610;
export const PINCH_APART = 1220;

/** A part of a route that is narrower than CLEAR_WIDTH; distances along the route. */
export interface NarrowStretch {
  readonly from: number;
  readonly to: number;
  readonly width: number;
}

export interface Station {
  /** Along the route. */
  readonly at: number;
  readonly width: number;
}

/** `clear`: no narrow stretch. `pinch`: only such as the standard describes. `narrow`: narrower, longer or closer. */
export type PinchVerdict = 'clear' | 'pinch' | 'narrow';

/** The narrow stretches of a route whose clear width is known at stations in order along it. */
export function narrowStretches(stations: readonly Station[]): NarrowStretch[] {
  const stretches: NarrowStretch[] = [];
  let isOpen = false;
  for (const { at, width } of stations) {
    const last = isOpen ? stretches.pop() : undefined;
    isOpen = width < CLEAR_WIDTH;
    if (isOpen)
      stretches.push({ from: last?.from ?? at, to: at, width: Math.min(last?.width ?? width, width) });
    else if (last) stretches.push(last);
  }
  return stretches;
}

export function pinchVerdict(stretches: readonly NarrowStretch[]): PinchVerdict {
  if (stretches.length === 0) return 'clear';
  return stretches.every((stretch, index) => isPinch(stretch) && isApart(stretches[index - 1], stretch))
    ? 'pinch'
    : 'narrow';
}

function isPinch({ from, to, width }: NarrowStretch): boolean {
  return width >= PINCH_WIDTH && to - from <= PINCH_LENGTH;
}

function isApart(before: NarrowStretch | undefined, stretch: NarrowStretch): boolean {
  return before === undefined || stretch.from - before.to >= PINCH_APART;
}
