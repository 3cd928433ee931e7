/** Turns, stations and remedies in words. Whoever they name is named by `nameOf`, by id. */

import type { StationPlan, Turn } from '#model/pages/planner/plan.ts';
import type { Remedy } from '#model/pages/planner/remedies.ts';
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
    when: words.at(tenthsWords(turn.at), turn.bar),
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

export function remedyWords(remedy: Remedy, nameOf: NameOf): string {
  switch (remedy.kind) {
    case 'rest':
      return words.remedy.rest(
        remedy.seconds,
        nameOf(remedy.player),
        remedy.afterPage,
        tenthsWords(remedy.at),
      );
    case 'wider':
      return words.remedy.wider(remedy.pages, nameOf(remedy.station));
    case 'station':
      return words.remedy.station(nameOf(remedy.like));
    case 'pin':
      return words.remedy.pin(remedy.index + 1);
  }
}
