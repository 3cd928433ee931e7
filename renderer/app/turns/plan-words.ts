/** Turns, stations and remedies in words. Whoever they name is named by `nameOf`, by id. */

import type { PlanSight } from '#model/pages/instance/placed-plan.ts';
import type { Pin } from '#model/pages/planner/instance.ts';
import type { Judgement } from '#model/pages/planner/judge.ts';
import type { PlanCost, StationPlan, Turn } from '#model/pages/planner/plan.ts';
import type { Remedy } from '#model/pages/planner/remedies.ts';
import type { RemedyPair } from '#model/pages/planner/remedy-pairs.ts';
import type { Without } from '#model/pages/planner/first-without.ts';
import { restMoment } from '#model/pages/planner/words.ts';
import { withoutWords as whereItFails } from '#model/pages/planner/without-words.ts';
import { barWords } from '#model/score/words/bar-words.ts';
import { tenthsWords } from '#model/score/words/clock-words.ts';
import { text } from '../text.ts';

export type NameOf = (id: string) => string;

const words = text.turns;

export interface TurnWords {
  readonly when: string;
  readonly who: string;
  /** Where, on which page, with how much time to spare, and whom it serves besides. */
  readonly how: string;
}

export function turnWords(turn: Turn, nameOf: NameOf): TurnWords {
  const own = turn.readers.find(({ player }) => player === turn.player);
  return {
    when: words.at(tenthsWords(turn.at), turn.bar === null ? null : barWords(turn.bar, turn.pass)),
    who: words.who(nameOf(turn.player), words.hands[turn.hand]),
    how: words.sentence([
      nameOf(turn.station),
      ...(turn.direction === 'back' ? [words.back] : []),
      ...(own && own.page !== null ? [words.page(own.page, own.during)] : []),
      words.spare(turn.margin),
      ...(turn.servesPartner ? [words.serves] : []),
    ]),
  };
}

/** `readers` by side; null: nobody reads there. */
export function bindingWords(
  { kind, leaves, stackSide }: StationPlan,
  readers: readonly (string | null)[],
  nameOf: NameOf,
): string {
  const bound = words.binding(words.kinds[kind], leaves);
  if (kind !== 'ridge' || leaves === 0) return bound;
  const reader = readers[stackSide] ?? null;
  return `${bound}; ${words.stack(reader === null ? words.side(stackSide) : nameOf(reader))}`;
}

/** `pins` are those that were planned with. */
export function remedyWords(remedy: Remedy, nameOf: NameOf, pins: readonly Pin[]): string {
  switch (remedy.kind) {
    case 'rest':
      return words.remedy.rest(
        remedy.seconds,
        nameOf(remedy.player),
        remedy.afterPage,
        restMoment(remedy, tenthsWords(remedy.at)),
      );
    case 'wider':
      return words.remedy.wider(remedy.pages, nameOf(remedy.station));
    case 'station':
      return words.remedy.station(nameOf(remedy.like));
    case 'pin':
      return pinRemedyWords(pins[remedy.index], nameOf);
  }
}

/** Changes that make a plan only together. */
export function pairWords(pair: RemedyPair, nameOf: NameOf, pins: readonly Pin[]): string {
  const [first, second] = pair;
  if (first?.kind === 'station' && second?.kind === 'station' && first.like === second.like)
    return words.remedy.twoStations(nameOf(first.like));
  return words.remedy.both(pair.map((remedy) => remedyWords(remedy, nameOf, pins)));
}

/** Where it fails, and why. */
export function withoutWords(without: Without, nameOf: NameOf): string {
  return words.without(whereItFails(without, nameOf));
}

function pinRemedyWords(pin: Pin | undefined, nameOf: NameOf): string {
  if (!pin) throw new Error('a remedy lets go of a pin that is not there');
  return pin.kind === 'page'
    ? words.remedy.pinnedPage(pin.page, nameOf(pin.station))
    : words.remedy.pinnedTurn(nameOf(pin.player), nameOf(pin.station));
}

export function sightWords({ player, seenWell, seesWell, worst }: PlanSight, nameOf: NameOf): string {
  return words.sentence([
    words.seen(seenWell, seesWell, nameOf(player)),
    words.seenWorst(worst.share, worst.label),
  ]);
}

/** What a kept plan is compared with; null: nothing is known, or it breaks rules and so is no better for taking less. */
export function comparedWith(
  { violations }: Pick<Judgement, 'violations'>,
  best: PlanCost | null,
): PlanCost | null {
  return violations.length > 0 ? null : best;
}

/** A figure beside the same of the best plan that is known; empty: they are equal. */
export function comparisonWords(own: number, best: number): string {
  if (own === best) return '';
  return own > best ? words.comparison.more(own - best) : words.comparison.fewer(best - own);
}
