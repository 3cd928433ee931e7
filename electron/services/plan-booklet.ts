/** The paper of one station of a plan as a booklet to print. */

import type { Document } from '#model/document/document.ts';
import { labelOf } from '#model/document/labels.ts';
import { partPlayedBy } from '#model/document/parts.ts';
import type { Setup } from '#model/document/records.ts';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import type { Plan, StationPlan, Turn } from '#model/pages/planner/plan.ts';
import { clockWords } from '#model/score/words/clock-words.ts';
import type { BookletDescription, DescribedSide } from './booklet-description.ts';

export interface PlannedPaper {
  readonly document: Document;
  readonly setup: Setup;
  readonly instance: PlanInstance;
  readonly plan: Plan;
  /** Its name; the catalogue's id in any case of letters. */
  readonly paper: string;
  /** The PDF of a player's part, by the player's id; pages without one become numbered blanks. */
  readonly pdfs: ReadonlyMap<string, string>;
}

export function bookletOfStation(planned: PlannedPaper, station: StationPlan): BookletDescription {
  const { document, setup, plan, paper } = planned;
  const piece = setup.name || labelOf(document, setup.id, setup.id);
  return {
    format: 'standlines-booklet',
    version: 1,
    title: `${piece}: ${labelOf(document, setup.id, station.station)}`,
    binding: station.kind,
    leaves: station.leaves,
    pagesPerPanel:
      station.kind === 'book' ? 1 : station.pagesAcross.reduce((most, across) => Math.max(most, across), 1),
    stackSide: station.stackSide === 1 ? 'second' : 'first',
    paper: paper.toLowerCase(),
    pageSize: null,
    sides: station.views.map((_, side) => sideOf(planned, station, side)),
    cues: cuesOf(planned, plan.turns, station),
  };
}

function sideOf(
  { document, setup, instance, pdfs }: PlannedPaper,
  { station, views }: StationPlan,
  side: number,
): DescribedSide {
  const reader = instance.stations.find(({ id }) => id === station)?.sides[side]?.reader ?? null;
  const player = instance.players.find(({ id }) => id === reader);
  return {
    player: player ? namedPart(document, setup, player.id) : '',
    pages: player ? Math.max(1, player.pages) : null,
    pdf: (player && pdfs.get(player.id)) ?? null,
    pdfPages: null,
    views: (views[side] ?? []).map((view) => [...view]),
  };
}

/** "Oboe", or "Maria (Oboe)" when the player goes by another name than the part. */
function namedPart(document: Document, setup: Setup, player: string): string {
  const label = labelOf(document, setup.id, player);
  const part = partPlayedBy(document, setup.id, player)?.part.name.trim() ?? '';
  return part === '' || label.toLowerCase().includes(part.toLowerCase()) ? label : `${label}: ${part}`;
}

/** One for each leaf: when it goes over for the first time, and by whose hand. */
function cuesOf(
  { document, setup }: PlannedPaper,
  turns: readonly Turn[],
  { station, leaves }: StationPlan,
): string[] {
  return Array.from({ length: leaves }, (_, leaf) => {
    const turn = turns.find(
      (one) => one.station === station && one.fromState === leaf && one.toState === leaf + 1,
    );
    if (!turn) return '';
    const hand = labelOf(document, setup.id, turn.player);
    const when = turn.bar === null ? clockWords(turn.at) : `in bar ${turn.bar} (${clockWords(turn.at)})`;
    return `${when}: ${hand} turns${turn.servesPartner ? ' for both' : ''}`;
  });
}
