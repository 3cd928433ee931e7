/** A result as lines of plain text. Ids go by `nameOf`. */

import type { Seconds } from '../../score/time-line.ts';
import { barWords } from '../../score/words/bar-words.ts';
import { clockWords } from '../../score/words/clock-words.ts';
import {
  COST_ORDER,
  isProved,
  type Plan,
  type PlanCost,
  type PlanView,
  type Proof,
  type StationPlan,
  type Turn,
} from './plan.ts';
import type { Pin, PlanInstance } from './instance.ts';
import type { PlanSight } from '../instance/placed-plan.ts';
import type { Beside } from './plan-json.ts';
import type { PlanResult } from './planner.ts';
import type { Remedy } from './remedies.ts';
import type { RemedyPair } from './remedy-pairs.ts';
import type { Blocked } from './ways-out.ts';
import { withoutWords } from './without-words.ts';

export type NameOf = (id: string) => string;

const FIGURES: Readonly<Record<keyof PlanCost, readonly [string, string]>> = {
  turns: ['turn', 'turns'],
  stations: ['station', 'stations'],
  width: ['page before a reader', 'pages before a reader'],
  panels: ['printed panel', 'printed panels'],
  jumps: ['jump of the eye', 'jumps of the eye'],
};

const KINDS: Readonly<Record<StationPlan['kind'], string>> = {
  loose: 'loose pages',
  book: 'book',
  concertina: 'concertina',
  ridge: 'ridge booklet',
};

export function wordsOf(
  instance: PlanInstance,
  result: PlanResult,
  {
    remedies = [],
    blocked = [],
    sights = [],
    nameOf = (id) => id,
  }: Beside & { readonly nameOf?: NameOf } = {},
): string[] {
  switch (result.status) {
    case 'faulty':
      return result.faults.map((fault) => `cannot be planned: ${fault}`);
    case 'none':
      return [
        result.proved ? 'there is no plan' : 'no plan was found in the steps allowed',
        ...(remedies.length > 0 ? whereLines(blocked, nameOf) : []),
        ...remedies.map((remedy) => `  would make one: ${remedyWords(remedy, instance, nameOf)}`),
        ...(remedies.length === 0 ? blockedLines(blocked, instance, nameOf) : []),
      ];
    case 'planned':
      return [
        ...costWords(result.cost, result.proof),
        ...sightLine(sights[0], nameOf),
        ...planWords(instance, result.plan, nameOf),
        ...(result.front.length > 1 ? ['Other plans:'] : []),
        ...result.front.slice(1).map(({ cost }, index) => {
          const seen = sightLine(sights[index + 1], nameOf).map((words) => `; ${words}`);
          return `  ${shortCostWords(cost)}${seen.join('')}`;
        }),
      ];
  }
}

/** So that nobody sets it against the times of `check`, which are of the hand's way to the leaf alone. */
const WHAT_A_TURN_IS =
  'To spare is what is left after the whole turn, made with care: the hand to the leaf, the leaf over, the hand back.';

/** What each station shows, and every turn. */
export function planWords(instance: PlanInstance, { stations, turns }: Plan, nameOf: NameOf): string[] {
  return [
    ...stations.flatMap((station) => stationWords(instance, station, nameOf)),
    ...turns.map((turn) => turnWords(turn, nameOf)),
    ...(turns.length > 0 ? [WHAT_A_TURN_IS] : []),
  ];
}

function counted(count: number, [one, many]: readonly [string, string]): string {
  return `${count} ${count === 1 ? one : many}`;
}

function costWords(cost: PlanCost, proof: Proof): string[] {
  return COST_ORDER.map((figure) => {
    const bound = proof[figure];
    const shown = isProved(bound)
      ? 'fewest possible'
      : `at least ${bound.atLeast}; not shown to be the fewest`;
    return `${counted(cost[figure], FIGURES[figure])} (${shown})`;
  });
}

function sightLine(sight: PlanSight | null | undefined, nameOf: NameOf): string[] {
  return sight ? [`seen from the house: ${planSightWords(sight, nameOf)}`] : [];
}

/** What the house sees with a plan's stands: of whom it sees least. */
export function planSightWords({ player, seenWell, seesWell, worst }: PlanSight, nameOf: NameOf): string {
  const well = `${percent(seenWell)} of the places see at least ${percent(seesWell)} of ${nameOf(player)}`;
  return `${well}; worst ${percent(worst.share)} of ${nameOf(worst.player)} from ${worst.label}`;
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

export function shortCostWords(cost: PlanCost): string {
  return (['turns', 'stations', 'panels'] as const)
    .map((figure) => counted(cost[figure], FIGURES[figure]))
    .join(', ');
}

function stationWords(
  instance: PlanInstance,
  { station, kind, leaves, stackSide, views }: StationPlan,
  nameOf: NameOf,
): string[] {
  const sides = instance.stations.find(({ id }) => id === station)?.sides ?? [];
  const readerOn = (side: number): string | null => {
    const reader = sides[side]?.reader ?? null;
    return reader === null ? null : nameOf(reader);
  };
  const paper = leaves === 0 ? '' : ` with ${counted(leaves, ['leaf', 'leaves'])}`;
  const stack =
    kind === 'ridge' && leaves > 0
      ? `; at first ${leaves === 1 ? 'it lies' : 'they lie'} before ${readerOn(stackSide) ?? 'the side without a reader'}`
      : '';
  return [
    `${nameOf(station)}: ${KINDS[kind]}${paper}${stack}`,
    ...views.flatMap((states, side) => {
      const reader = readerOn(side);
      return reader === null ? [] : [`  ${reader} sees ${states.map(viewWords).join(', then ')}`];
    }),
  ];
}

/** Left to right; a dash stands for a blank. */
function viewWords(view: PlanView): string {
  const pages = view.filter((page) => page !== null).length;
  return `${pages === 1 ? 'page' : 'pages'} ${view.map((page) => page ?? '-').join(' ')}`;
}

function turnWords(turn: Turn, nameOf: NameOf): string {
  const bar = turn.bar === null ? '' : ` ${barWords(turn.bar, turn.pass)},`;
  const own = turn.readers.find(({ player }) => player === turn.player);
  const page = own?.page ? `, ${own.during ? 'during' : 'after'} page ${own.page}` : '';
  const partner = turn.servesPartner ? ', for the partner too' : '';
  const way = turn.direction === 'back' ? ' back' : '';
  return `${clockWords(turn.at)}${bar} ${nameOf(turn.player)} turns ${nameOf(turn.station)}${way} with the ${turn.hand} hand${page}${partner}; ${seconds(turn.margin)} to spare`;
}

function whereLines(blocked: readonly Blocked[], nameOf: NameOf): string[] {
  return blocked.flatMap(({ without }) => (without ? [`  ${withoutWords(without, nameOf)}`] : []));
}

/** "  Violin 1: it can be planned up to …; would make one: a rest of 4.0 s …; or room for 3 pages at desk 1" */
function blockedLines(blocked: readonly Blocked[], instance: PlanInstance, nameOf: NameOf): string[] {
  const lines = blocked.map(({ players, remedies, pairs, without }, index) => {
    const who = `${index === 0 ? '' : 'and '}${players.map(nameOf).join(' with ')}`;
    const where = without ? [withoutWords(without, nameOf)] : [];
    const ways = remedies.map((remedy) => remedyWords(remedy, instance, nameOf)).join('; or ');
    const both = pairs.map((pair) => pairWords(pair, instance, nameOf)).join('; or ');
    const single = ways === '' ? 'no single remedy was found' : `would make one: ${ways}`;
    return `  ${who}: ${[...where, single, ...(both === '' ? [] : [`two changes at once do: ${both}`])].join('; ')}`;
  });
  return blocked.length > 1 ? ['  each of these needs one of its own remedies:', ...lines] : lines;
}

/** "a rest of 2.0 s for …, and one more station like desk 1" */
function pairWords(pair: RemedyPair, instance: PlanInstance, nameOf: NameOf): string {
  const [first, second] = pair;
  if (first?.kind === 'station' && second?.kind === 'station' && first.like === second.like)
    return `two more stations like ${nameOf(first.like)}`;
  return pair.map((remedy) => remedyWords(remedy, instance, nameOf)).join(', and ');
}

function remedyWords(remedy: Remedy, { pins = [] }: PlanInstance, nameOf: NameOf): string {
  switch (remedy.kind) {
    case 'rest':
      return `a rest of ${seconds(remedy.seconds)} for ${nameOf(remedy.player)} after page ${remedy.afterPage}, at ${restMoment(remedy, clockWords(remedy.at))}`;
    case 'wider':
      return `room for ${remedy.pages} pages at ${nameOf(remedy.station)}`;
    case 'station':
      return `one more station like ${nameOf(remedy.like)}`;
    case 'pin':
      return `letting go of ${pinWords(pins[remedy.index], nameOf)}`;
  }
}

/** "4:23 (bar 45, second time)"; the time as it is told where the words go. */
export function restMoment({ bar, pass }: Extract<Remedy, { kind: 'rest' }>, time: string): string {
  return bar === undefined ? time : `${time} (${barWords(bar, pass ?? null)})`;
}

function pinWords(pin: Pin | undefined, nameOf: NameOf): string {
  if (!pin) throw new Error('a remedy lets go of a pin that is not there');
  return pin.kind === 'page'
    ? `the pin on page ${pin.page} on ${nameOf(pin.station)}`
    : `the pin on the turn by ${nameOf(pin.player)} at ${nameOf(pin.station)}`;
}

function seconds(time: Seconds): string {
  return Number.isFinite(time) ? `${time.toFixed(1)} s` : 'any time';
}
