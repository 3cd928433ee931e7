/** Where the pins of the findings stand, and which are gathered under one, so that they do not hide the plan. */

import type { Severity } from '#model/checks/finding.ts';
import type { Vec2 } from '#model/geometry/frame.ts';

/** A finding on the plan. */
export interface Pin {
  readonly where: Vec2;
  readonly severity: Severity;
  /** In the list of findings, from 1. */
  readonly number: number;
}

/** At the front edge a head hangs outside the platform; everywhere else it stands above its spot. */
export function hangs({ where }: Pin): boolean {
  return where.y < FRONT;
}

const FRONT = 100;

/** Half the size of a pin's head, in pixels. */
export const PIN = { usual: 10, small: 5, chosen: 13 } as const;

/** Pixels a millimetre: where the whole house shows, pins are small and without figures. */
const SMALL_BELOW = 0.036;

export function isSmallAt(scale: number): boolean {
  return scale < SMALL_BELOW;
}

/** Heads nearer to each other than this many times their half size would touch. */
const APART = 3;

export interface GatheredPin extends Pin {
  readonly more: number;
  readonly chosen: false;
}

/**
 * The gravest first, as in the list of findings; each takes those under it that come later and whose heads it would
 * touch at this scale (pixels a millimetre).
 */
export function gathered(pins: readonly Pin[], scale: number): GatheredPin[] {
  const reach = ((isSmallAt(scale) ? PIN.small : PIN.usual) * APART) / scale;
  const heads: { pin: Pin; more: number }[] = [];
  for (const pin of pins) {
    const head = heads.find(({ pin: { where } }) => distance(where, pin.where) < reach);
    if (head) head.more += 1;
    else heads.push({ pin, more: 0 });
  }
  return heads.map(({ pin, more }) => ({ ...pin, more, chosen: false }));
}

function distance(a: Vec2, b: Vec2): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
