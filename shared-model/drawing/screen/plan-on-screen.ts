/** The plan as a screen shows it: the very primitives that go on paper, about the origin of the stage. */

import type { Document } from '../../document/document.ts';
import { hiddenIn } from '../../document/groups.ts';
import type { Id } from '../../document/ids.ts';
import type { Units } from '../../document/measures.ts';
import { PALETTES } from '../palette.ts';
import { planContext, WORST_SEEN, type PlanContext, type PlanLayers, type PlanReport } from '../plan.ts';
import type { Box, MeasureText } from '../primitives.ts';

export interface ScreenPlan {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly report: PlanReport | null;
  readonly paperScale: number;
  readonly theme: 'light' | 'dark';
  readonly units: Units;
  readonly layers: PlanLayers;
  /** The part of the drawing that is looked at, mm on its paper; seats outside are left out. Left out: all of it. */
  readonly frame?: Box;
}

export function screenContext(plan: ScreenPlan, measure: MeasureText): PlanContext {
  return planContext({
    ...plan,
    scale: plan.paperScale,
    origin: { x: 0, y: 0 },
    palette: PALETTES[plan.theme],
    measure,
    area: null,
    leftOut: hiddenIn(plan.document, plan.setup),
  });
}

/** What a view of a concert shows when it is opened. */
export const AT_FIRST = {
  colouring: WORST_SEEN,
  names: true,
  marks: true,
  grid: true,
  reach: false,
  routes: false,
} as const;

/** What is drawn of a concert that was just opened. */
export const LAYERS_AT_FIRST: PlanLayers = {
  seats: true,
  sightBands: { player: AT_FIRST.colouring },
  marks: AT_FIRST.marks,
  names: AT_FIRST.names,
  dimensions: 'none',
  grid: AT_FIRST.grid,
  words: true,
  reach: AT_FIRST.reach,
  storages: true,
  routes: AT_FIRST.routes,
};
