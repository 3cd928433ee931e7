/** The music of a setup, who plays what of it, and the plan of its pages. */

import { inSetup, type Document } from './document.ts';
import type { Id } from './ids.ts';
import type { Music, Part } from './music.ts';
import type { Millimetres, PagePlanRecord, ScoreRecord } from './records.ts';

/** Undefined: the setup has no music. */
export function scoreOf(document: Document, setup: Id<'setup'>): ScoreRecord | undefined {
  return inSetup(document, setup, 'score')[0];
}

/** Undefined: no page plan is kept for the setup. */
export function keptPlanOf(document: Document, setup: Id<'setup'>): PagePlanRecord | undefined {
  return inSetup(document, setup, 'pagePlan')[0];
}

export interface PlayedPart {
  readonly music: Music;
  readonly part: Part;
}

/** Null: the player has no part. */
export function partPlayedBy(document: Document, setup: Id<'setup'>, player: string): PlayedPart | null {
  const score = scoreOf(document, setup);
  const part = score?.music.parts[score.players.findIndex((one) => one === player)];
  return score && part ? { music: score.music, part } : null;
}

/** Height of the staves that the player reads, as his part is printed; null: not known. */
export function printedStaff(document: Document, setup: Id<'setup'>, player: string): Millimetres | null {
  const score = scoreOf(document, setup);
  const part = score?.players.findIndex((one) => one === player) ?? -1;
  return score?.pdfs[part]?.staffSize ?? null;
}
