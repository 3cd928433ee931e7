/**
 * Two changes at once that make a plan where no single one does. All pairs are tried, those of kinds with few changes first, until
 * some are found or the states allowed for it are used up. Most pairs fail at the very page at which there is no plan without
 * them, so what is played until then is planned first: that takes little.
 */

import type { Seconds } from '../../score/time-line.ts';
import { limitsOf, type PlanInstance } from './instance.ts';
import { planning, type PlanProgress } from './planner.ts';
import { STATES_A_TRIAL, TRIALS, type Remedy } from './remedies.ts';

/** Changes that make a plan together: two, or one that is twice as large. */
export type RemedyPair = readonly Remedy[];

/** For all pairs together. */
const STATES_FOR_PAIRS = 200_000;
/** Planning has a price besides its states: so many trials in all. */
const MOST_TRIALS = 2000;
/** Of each pair of kinds the first that does, and of all of them no more than these. */
const MOST_PAIRS = 3;

type Steps<T> = Generator<PlanProgress, T>;

/** Cuts an instance, with whatever changes, off behind the first page that nobody can have in view. */
export interface UpTo {
  readonly at: Seconds;
  readonly cut: (instance: PlanInstance) => PlanInstance;
}

/** `upTo`: null: not known. */
export function* remedyPairsFor(instance: PlanInstance, upTo: UpTo | null): Steps<RemedyPair[]> {
  const found: RemedyPair[] = [];
  const trials = new Trials();
  for (const [first, second] of kindPairs(instance)) {
    if (found.length === MOST_PAIRS) break;
    const pair = yield* firstThatDoes({ instance, first, second, upTo }, trials);
    if (pair) found.push(pair);
  }
  return found;
}

type Kind = (typeof TRIALS)[number];

/** Those with the fewest pairs first. */
function kindPairs(instance: PlanInstance): [Kind, Kind][] {
  const counts = new Map(TRIALS.map((kind) => [kind, kind(instance).length]));
  const size = ([a, b]: [Kind, Kind]): number => (counts.get(a) ?? 0) * (counts.get(b) ?? 0);
  return TRIALS.flatMap((first, place) => TRIALS.slice(place).map((second): [Kind, Kind] => [first, second]))
    .filter((pair) => size(pair) > 0)
    .sort((a, b) => size(a) - size(b));
}

interface Search {
  readonly instance: PlanInstance;
  readonly first: Kind;
  readonly second: Kind;
  readonly upTo: UpTo | null;
}

function* firstThatDoes({ instance, first, second, upTo }: Search, trials: Trials): Steps<RemedyPair | null> {
  const singles = second(instance).map(([remedy]) => JSON.stringify(remedy));
  for (const [index, [one, changed]] of first(instance).entries())
    for (const [raw, both] of second(changed)) {
      const other = namedBeside(one, raw);
      const place = singles.indexOf(JSON.stringify(other));
      // Each pair of one kind once, in the order of the kind.
      const isTold = first === second && place >= 0 && place < index;
      const pair = together(one, other);
      if (isTold || !isOfInstance(other, instance) || comesTooLate(pair, upTo)) continue;
      if (yield* trials.help(both, upTo)) return pair;
    }
  return null;
}

/** Pins count as they did before the other one was let go. */
function namedBeside(one: Remedy, other: Remedy): Remedy {
  if (one.kind !== 'pin' || other.kind !== 'pin') return other;
  return { ...other, index: other.index >= one.index ? other.index + 1 : other.index };
}

/** A desk made wider twice is one change. */
function together(one: Remedy, other: Remedy): RemedyPair {
  const isSameDesk = one.kind === 'wider' && other.kind === 'wider' && one.station === other.station;
  return isSameDesk ? [other] : [one, other];
}

/** Not about a station that only the first change would set. */
function isOfInstance(remedy: Remedy, { stations }: PlanInstance): boolean {
  const named = remedy.kind === 'wider' ? remedy.station : remedy.kind === 'station' ? remedy.like : null;
  return named === null || stations.some(({ id }) => id === named);
}

/** Rests after the page that nobody can have in view do nothing about it; nor does the same rest twice. */
function comesTooLate(pair: RemedyPair, upTo: UpTo | null): boolean {
  const rests = pair.flatMap((remedy) => (remedy.kind === 'rest' ? [remedy] : []));
  const [a, b] = rests;
  if (!a || !b) return false;
  return (a.player === b.player && a.at === b.at) || (upTo !== null && a.at > upTo.at && b.at > upTo.at);
}

class Trials {
  #states = STATES_FOR_PAIRS;
  #left = MOST_TRIALS;

  *help(both: PlanInstance, upTo: UpTo | null): Steps<boolean> {
    if (upTo && !(yield* this.#hasPlan(upTo.cut(both)))) return false;
    return yield* this.#hasPlan(both);
  }

  *#hasPlan(instance: PlanInstance): Steps<boolean> {
    const allowed = Math.min(limitsOf(instance).maxStates, STATES_A_TRIAL, this.#states);
    if (allowed <= 0 || this.#left-- <= 0) return false;
    const steps = planning({ ...instance, limits: { ...instance.limits, maxStates: allowed } });
    let used = 0;
    for (;;) {
      const step = steps.next();
      if (step.done) {
        this.#states -= used;
        return step.value.status === 'planned';
      }
      used = step.value.states;
      yield step.value;
    }
  }
}
