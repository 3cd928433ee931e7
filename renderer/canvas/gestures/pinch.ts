/** Two fingers on the plan: what lies under them stays under them, larger or smaller. */

import type { Vec2 } from '#model/geometry/frame.ts';
import { panned, zoomedAt, type Camera, type ViewSize } from '../camera.ts';

/** Where two fingers are, in pixels of the view. */
export type TwoFingers = readonly [Vec2, Vec2];

/** Fingers nearer to each other than this tell no scale. */
const LEAST_APART = 8;

/** The camera after two fingers went from one place to another. */
export function pinched(camera: Camera, view: ViewSize, before: TwoFingers, now: TwoFingers): Camera {
  const factor = Math.max(LEAST_APART, apart(now)) / Math.max(LEAST_APART, apart(before));
  const [from, to] = [middle(before), middle(now)];
  return panned(zoomedAt(camera, view, from, factor), { x: to.x - from.x, y: to.y - from.y });
}

/** The fingers that are down, at most two of them. */
export class Fingers {
  readonly #at = new Map<number, Vec2>();

  /** Whether this is the second of two. */
  down(id: number, at: Vec2): boolean {
    if (this.#at.size < 2) this.#at.set(id, at);
    return this.#at.size === 2;
  }

  /** Where the two were and are now; null: there are not two, or this is neither. */
  move(id: number, at: Vec2): { readonly before: TwoFingers; readonly now: TwoFingers } | null {
    if (!this.#at.has(id)) return null;
    const before = this.#both;
    this.#at.set(id, at);
    const now = this.#both;
    return before && now && { before, now };
  }

  up(id: number): void {
    this.#at.delete(id);
  }

  get #both(): TwoFingers | null {
    const [a, b] = this.#at.values();
    return a && b ? [a, b] : null;
  }
}

const apart = ([a, b]: TwoFingers): number => Math.hypot(a.x - b.x, a.y - b.y);

const middle = ([a, b]: TwoFingers): Vec2 => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
