/** Something that takes clicks on the plan one after the other until it is ended; while it lasts, a drag moves the view. */

import type { Vec2 } from '#model/geometry/frame.ts';
import type { PointerAt } from './gesture.ts';

/** What a tool has marked so far, on the stage. */
export interface ToolMarks {
  readonly points: readonly Vec2[];
  /** Where the next click would set a point; null: the pointer is elsewhere. */
  readonly next: Vec2 | null;
  /** The points are corners of an outline, joined by lines. */
  readonly joined: boolean;
  readonly caption: string;
}

export interface PlanTool {
  /** What to do now; said above the plan. */
  readonly words: string;
  readonly marks: ToolMarks;
  hover(at: PointerAt): void;
  click(at: PointerAt): void;
  double(): void;
  /** Whether the key was for the tool. Escape is not: whoever holds the tool drops it, and says so by `cancel`. */
  key(key: string): boolean;
  /** The pointer left the plan. */
  leave(): void;
  /** As if nothing had been. */
  cancel(): void;
}
