/** What cue cards are made from, and the sheets that come of it. */

import type { Document } from '../../document/document.ts';
import type { Id } from '../../document/ids.ts';
import type { Units } from '../../document/measures.ts';
import type { PlanInstance } from '../../pages/planner/instance.ts';
import type { Plan } from '../../pages/planner/plan.ts';
import type { Size } from '../booklet/order.ts';
import type { Sheet } from '../primitives.ts';
import type { TextTools } from '../sheet/blocks.ts';

/** A plan of a setup, with the document and the instance that it is of. */
export interface PlannedPaper {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly instance: PlanInstance;
  readonly plan: Plan;
}

export interface CardsOrder extends PlannedPaper {
  readonly units: Units;
  /** What is printed on, upright. */
  readonly paper: Size;
  readonly tools: TextTools;
}

export interface CardPlace {
  readonly player: string;
  /** Of the player's own cards, from 1. */
  readonly number: number;
  /** Index of the sheet that it is on. */
  readonly sheet: number;
}

export interface CardSheets {
  readonly sheets: readonly Sheet[];
  readonly cards: readonly CardPlace[];
}
