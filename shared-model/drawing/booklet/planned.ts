/** The paper of one station of a plan as a booklet to print: what it is called, how it is bound, whose it is, when it is turned. */

import { find } from '../../document/document.ts';
import { labelOf } from '../../document/labels.ts';
import { partPlayedBy } from '../../document/parts.ts';
import type { Binding, PageRef } from '../../pages/bindings/binding.ts';
import { brokenRulesWords } from '../../pages/planner/broken-rules.ts';
import type { PlanView, StationPlan, Turn } from '../../pages/planner/plan.ts';
import { barWords } from '../../score/words/bar-words.ts';
import { clockWords } from '../../score/words/clock-words.ts';
import { t } from '../../words/say.ts';
import type { PlannedPaper } from '../cards/order.ts';
import type { BookletOrder } from './order.ts';

export type PlannedBooklet = Pick<
  BookletOrder,
  'title' | 'binding' | 'players' | 'cues' | 'turners' | 'warning'
>;

/** Pages go by the id of the player whose part they are of. */
export function bookletOfStation(planned: PlannedPaper, station: StationPlan): PlannedBooklet {
  const { document, setup } = planned;
  const piece = find(document, setup)?.name || labelOf(document, setup, setup);
  const readers = readersOf(planned, station);
  const turns = firstTurns(planned, station);
  const warning = brokenRulesWords(planned);
  return {
    title: `${piece}: ${labelOf(document, setup, station.station)}`,
    binding: bindingOf(station, readers),
    players: readers.map((reader) => (reader === null ? '' : namedPart(planned, reader))),
    cues: turns.map((each) => whenWords(each)),
    turners: turns.map(([first]) => (first ? labelOf(document, setup, first.player) : '')),
    ...(warning === null ? {} : { warning }),
  };
}

/** By side; null: nobody whose pages are planned. */
function readersOf({ instance }: PlannedPaper, { station, views }: StationPlan): (string | null)[] {
  const sides = instance.stations.find(({ id }) => id === station)?.sides ?? [];
  return views.map((_, side) => sides[side]?.reader ?? null);
}

function bindingOf(
  { kind, leaves, pagesAcross, stackSide, views }: StationPlan,
  readers: readonly (string | null)[],
): Binding {
  const across = pagesAcross.reduce((most, count) => Math.max(most, count), 1);
  return {
    kind,
    leaves,
    pagesPerPanel: kind === 'book' ? 1 : across,
    stackSide,
    views: views.map((states, side) => states.map((view) => refsIn(view, readers[side] ?? null))),
  };
}

function refsIn(view: PlanView, part: string | null): (PageRef | null)[] {
  return view.map((page) => (page === null || part === null ? null : { part, page }));
}

/** "Oboe", or "Maria: Oboe" when the player goes by another name than the part. */
function namedPart({ document, setup }: PlannedPaper, player: string): string {
  const label = labelOf(document, setup, player);
  const part = partPlayedBy(document, setup, player)?.part.name.trim() ?? '';
  return part === '' || label.toLowerCase().includes(part.toLowerCase()) ? label : `${label}: ${part}`;
}

/** Leaf by leaf every turn that takes it over, as after a repeat it may go over again. */
function firstTurns({ plan }: PlannedPaper, { station, leaves }: StationPlan): Turn[][] {
  return Array.from({ length: leaves }, (_, leaf) =>
    plan.turns.filter(
      (turn) => turn.station === station && turn.fromState === leaf && turn.toState === leaf + 1,
    ),
  );
}

/** "in bar 48 (2:17)", "in bar 12, first time (0:31) and again in bar 12, second time (2:05)". */
function whenWords(turns: readonly Turn[]): string {
  const [first = '', ...others] = turns.map(({ at, bar, pass }) =>
    bar === null ? t`at ${clockWords(at)}` : t`in ${barWords(bar, pass)} (${clockWords(at)})`,
  );
  return others.reduce((before, again) => t`${before} and again ${again}`, first);
}
