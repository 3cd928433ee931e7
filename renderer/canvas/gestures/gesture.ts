/** What the pointer does between going down and coming up. */

import type { Vec2 } from '#model/geometry/frame.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import type { Guide } from '../snapping.ts';
import type { Extent } from '../camera.ts';

/** The pointer in pixels of the view and on the stage, with the keys that are held. */
export interface PointerAt {
  readonly pixel: Vec2;
  readonly spot: Vec2;
  /** Shift: in addition; of a drag, straight along one axis. */
  readonly add: boolean;
  /** Ctrl or Cmd: at a press in addition, while something is dragged without snapping. */
  readonly free: boolean;
  /** Alt: a copy. */
  readonly copy: boolean;
  /** Ctrl alone: held since before the press it makes a copy, as Alt does, which some desktops keep to themselves. */
  readonly control: boolean;
}

export interface Gesture {
  readonly cursor: string;
  move(at: PointerAt): void;
  /** The pointer came up: what is shown counts. */
  finish(at: PointerAt): void;
  /** Escape, or the pointer was lost: as if nothing had been. */
  cancel(): void;
}

/** What a gesture may show on the overlay while it lasts. */
export interface Traces {
  guides: readonly Guide[];
  marquee: Extent | null;
  caption: { readonly at: Vec2; readonly words: string } | null;
}

export interface Bench {
  readonly editor: Editor;
  readonly traces: Traces;
}

export function clearTraces(traces: Traces): void {
  traces.guides = [];
  traces.marquee = null;
  traces.caption = null;
}
