/** What of the concert is on the screen and how: nothing in here is part of the document. */

import { AT_FIRST } from '#model/drawing/screen/plan-on-screen.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import type { Camera, ViewSize } from '../canvas/camera.ts';
import type { PlanTool } from '../canvas/gestures/tool.ts';
import type { Thing } from '../store/things.ts';

/** What the pointer does on the plan. */
export type Hand = 'arrange' | 'pan';

/** What the view was set to show, and the camera that shows it. */
export interface Framing {
  readonly camera: Camera;
  /** The camera that shows the same in a window of the size it has by now. */
  readonly again: () => Camera;
}

export class View {
  camera: Camera = $state.raw({ centre: { x: 0, y: 0 }, scale: 0.05 });
  size: ViewSize = $state.raw({ width: 0, height: 0 });
  /** Counts only while its camera is still the view's: moving the view by hand ends it. */
  framing: Framing | null = null;
  hand: Hand = $state('arrange');

  /** What the next click on the plan sets down. */
  armed: Thing | null = $state.raw(null);
  /** Where in the window the pointer carries it from the shelf, still pressed; null: it waits for a click. */
  carried: Vec2 | null = $state.raw(null);
  withStand = $state(true);

  /** What takes the clicks on the plan, until it is ended. */
  tool: PlanTool | null = $state.raw(null);
  /** The underlay that may be dragged; all others lie fast. */
  looseUnderlay: string | null = $state(null);

  /** The group that was gone into, whose members are taken hold of one by one. */
  entered: string | null = $state(null);

  /** A player's id, `WORST_SEEN`, or null for plain seats. */
  colouring: string | null = $state(AT_FIRST.colouring);
  /** The place of the house that is looked into. */
  seat: string | null = $state(null);
  /** Key of the finding that is looked at. */
  finding: string | null = $state(null);

  names: boolean = $state(AT_FIRST.names);
  marks: boolean = $state(AT_FIRST.marks);
  grid: boolean = $state(AT_FIRST.grid);
  reach: boolean = $state(AT_FIRST.reach);
  routes: boolean = $state(AT_FIRST.routes);

  #below: 'section' | 'turns' | 'strip' | null = $state(null);

  /** The section under the plan; it, the page turns and the time strip take each other's place. */
  get section(): boolean {
    return this.#below === 'section';
  }

  set section(shown: boolean) {
    this.#show('section', shown);
  }

  /** The page turns under the plan. */
  get turns(): boolean {
    return this.#below === 'turns';
  }

  set turns(shown: boolean) {
    this.#show('turns', shown);
  }

  /** The time strip under the plan. */
  get strip(): boolean {
    return this.#below === 'strip';
  }

  set strip(shown: boolean) {
    this.#show('strip', shown);
  }

  #show(what: 'section' | 'turns' | 'strip', shown: boolean): void {
    if (shown) this.#below = what;
    else if (this.#below === what) this.#below = null;
  }

  /** The player whom the section through the place looked into goes to; null: it is on the centre line. */
  sectionCut: string | null = $state(null);
  /** The player to whom the lines of sight lead; null: to the edge of the platform. */
  sectionFocus: string | null = $state(null);

  /** The evening, piece by piece, in the place of the plan. */
  programme = $state(false);

  /** The first things to try. */
  hints = $state(false);

  leftOpen = $state(true);
  rightOpen = $state(true);

  /** Where the pointer is on the stage; null: not over the plan. */
  pointer: Vec2 | null = $state.raw(null);
}
