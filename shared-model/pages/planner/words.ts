/** A result as lines of plain text. Ids go by `nameOf`. */

import type { Seconds } from '../../score/time-line.ts';
import { barWords } from '../../score/words/bar-words.ts';
import { clockWords } from '../../score/words/clock-words.ts';
import { fixed } from '../../words/numbers.ts';
import { msgid, ngettext, t } from '../../words/say.ts';
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

const FIGURES: Readonly<Record<keyof PlanCost, (count: number) => string>> = {
  turns: (count) => ngettext(msgid`${count} turn`, `${count} turns`, count),
  stations: (count) => ngettext(msgid`${count} station`, `${count} stations`, count),
  width: (count) => ngettext(msgid`${count} page before a reader`, `${count} pages before a reader`, count),
  panels: (count) => ngettext(msgid`${count} printed panel`, `${count} printed panels`, count),
  jumps: (count) => ngettext(msgid`${count} jump of the eye`, `${count} jumps of the eye`, count),
};

const KINDS: Readonly<Record<StationPlan['kind'], () => string>> = {
  loose: () => t`loose pages`,
  book: () => t`book`,
  concertina: () => t`concertina`,
  ridge: () => t`ridge booklet`,
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
      return result.faults.map((fault) => t`cannot be planned: ${fault}`);
    case 'none':
      return [
        result.proved ? t`there is no plan` : t`no plan was found in the steps allowed`,
        ...(remedies.length > 0 ? whereLines(blocked, nameOf) : []),
        ...remedies.map((remedy) => `  ${wouldMakeOne(remedyWords(remedy, instance, nameOf))}`),
        ...(remedies.length === 0 ? blockedLines(blocked, instance, nameOf) : []),
      ];
    case 'planned':
      return [
        ...costWords(result.cost, result.proof),
        ...sightLine(sights[0], nameOf),
        ...planWords(instance, result.plan, nameOf),
        ...(result.front.length > 1 ? [t`Other plans:`] : []),
        ...result.front.slice(1).map(({ cost }, index) => {
          const seen = sightLine(sights[index + 1], nameOf).map((words) => `; ${words}`);
          return `  ${shortCostWords(cost)}${seen.join('')}`;
        }),
      ];
  }
}

function wouldMakeOne(remedies: string): string {
  return t`would make one: ${remedies}`;
}

/** So that nobody sets it against the times of `check`, which are of the hand's way to the leaf alone. */
function whatATurnIs(): string {
  return t`To spare is what is left after the whole turn, made with care: the hand to the leaf, the leaf over, the hand back.`;
}

/** What each station shows, and every turn. */
export function planWords(instance: PlanInstance, { stations, turns }: Plan, nameOf: NameOf): string[] {
  return [
    ...stations.flatMap((station) => stationWords(instance, station, nameOf)),
    ...turns.map((turn) => turnWords(turn, nameOf)),
    ...(turns.length > 0 ? [whatATurnIs()] : []),
  ];
}

function costWords(cost: PlanCost, proof: Proof): string[] {
  return COST_ORDER.map((figure) => {
    const bound = proof[figure];
    const shown = isProved(bound)
      ? t`fewest possible`
      : t`at least ${bound.atLeast}; not shown to be the fewest`;
    return `${FIGURES[figure](cost[figure])} (${shown})`;
  });
}

function sightLine(sight: PlanSight | null | undefined, nameOf: NameOf): string[] {
  return sight ? [t`seen from the house: ${planSightWords(sight, nameOf)}`] : [];
}

/** What the house sees with a plan's stands: of whom it sees least. */
export function planSightWords({ player, seenWell, seesWell, worst }: PlanSight, nameOf: NameOf): string {
  const well = t`${percent(seenWell)} of the places see at least ${percent(seesWell)} of ${nameOf(player)}`;
  return t`${well}; worst ${percent(worst.share)} of ${nameOf(worst.player)} from ${worst.label}`;
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

export function shortCostWords(cost: PlanCost): string {
  return (['turns', 'stations', 'panels'] as const).map((figure) => FIGURES[figure](cost[figure])).join(', ');
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
  const stack =
    kind === 'ridge' && leaves > 0
      ? `; ${stackWords(leaves, readerOn(stackSide) ?? t`the side without a reader`)}`
      : '';
  return [
    `${nameOf(station)}: ${paperWords(KINDS[kind](), leaves)}${stack}`,
    ...views.flatMap((states, side) => {
      const reader = readerOn(side);
      return reader === null ? [] : [`  ${t`${reader} sees ${oneAfterTheOther(states)}`}`];
    }),
  ];
}

function paperWords(kind: string, leaves: number): string {
  if (leaves === 0) return kind;
  return ngettext(msgid`${kind} with ${leaves} leaf`, `${kind} with ${leaves} leaves`, leaves);
}

function stackWords(leaves: number, reader: string): string {
  return ngettext(msgid`at first it lies before ${reader}`, `at first they lie before ${reader}`, leaves);
}

function oneAfterTheOther(states: readonly PlanView[]): string {
  return states.map(viewWords).reduce((before, view) => t`${before}, then ${view}`);
}

/** Left to right; a dash stands for a blank. */
function viewWords(view: PlanView): string {
  const count = view.filter((page) => page !== null).length;
  const pages = view.map((page) => page ?? '-').join(' ');
  return ngettext(msgid`page ${pages}`, `pages ${pages}`, count);
}

function turnWords(turn: Turn, nameOf: NameOf): string {
  const own = turn.readers.find(({ player }) => player === turn.player);
  const done = [
    whoTurns(turn, nameOf(turn.player), nameOf(turn.station)),
    ...(own?.page ? [own.during ? t`during page ${own.page}` : t`after page ${own.page}`] : []),
    ...(turn.servesPartner ? [t`for the partner too`] : []),
  ].join(', ');
  return `${whenWords(turn)} ${t`${done}; ${seconds(turn.margin)} to spare`}`;
}

function whenWords({ at, bar, pass }: Turn): string {
  const time = clockWords(at);
  return bar === null ? time : t`${time} ${barWords(bar, pass)},`;
}

function whoTurns({ direction, hand }: Turn, player: string, station: string): string {
  if (direction === 'back')
    return hand === 'left'
      ? t`${player} turns ${station} back with the left hand`
      : t`${player} turns ${station} back with the right hand`;
  return hand === 'left'
    ? t`${player} turns ${station} with the left hand`
    : t`${player} turns ${station} with the right hand`;
}

function whereLines(blocked: readonly Blocked[], nameOf: NameOf): string[] {
  return blocked.flatMap(({ without }) => (without ? [`  ${withoutWords(without, nameOf)}`] : []));
}

/** "  Violin 1: it can be planned up to …; would make one: a rest of 4.0 s …; or room for 3 pages at desk 1" */
function blockedLines(blocked: readonly Blocked[], instance: PlanInstance, nameOf: NameOf): string[] {
  const lines = blocked.map(({ players, remedies, pairs, without }, index) => {
    const names = players.map(nameOf).reduce((before, name) => t`${before} with ${name}`);
    const who = index === 0 ? names : t`and ${names}`;
    const where = without ? [withoutWords(without, nameOf)] : [];
    const ways = either(remedies.map((remedy) => remedyWords(remedy, instance, nameOf)));
    const both = either(pairs.map((pair) => pairWords(pair, instance, nameOf)));
    const single = ways === '' ? t`no single remedy was found` : wouldMakeOne(ways);
    const double = both === '' ? [] : [t`two changes at once do: ${both}`];
    return `  ${who}: ${[...where, single, ...double].join('; ')}`;
  });
  if (blocked.length < 2) return lines;
  return [`  ${t`each of these needs one of its own remedies:`}`, ...lines];
}

function either(ways: readonly string[]): string {
  const [first = '', ...others] = ways;
  return others.reduce((before, way) => t`${before}; or ${way}`, first);
}

/** "a rest of 2.0 s for …, and one more station like desk 1" */
function pairWords(pair: RemedyPair, instance: PlanInstance, nameOf: NameOf): string {
  const [first, second] = pair;
  if (first?.kind === 'station' && second?.kind === 'station' && first.like === second.like)
    return t`two more stations like ${nameOf(first.like)}`;
  return pair
    .map((remedy) => remedyWords(remedy, instance, nameOf))
    .reduce((before, change) => t`${before}, and ${change}`);
}

function remedyWords(remedy: Remedy, { pins = [] }: PlanInstance, nameOf: NameOf): string {
  switch (remedy.kind) {
    case 'rest':
      return t`a rest of ${seconds(remedy.seconds)} for ${nameOf(remedy.player)} after page ${remedy.afterPage}, at ${restMoment(remedy, clockWords(remedy.at))}`;
    case 'wider':
      return t`room for ${remedy.pages} pages at ${nameOf(remedy.station)}`;
    case 'station':
      return t`one more station like ${nameOf(remedy.like)}`;
    case 'pin':
      return withoutPin(pins[remedy.index], nameOf);
  }
}

/** "4:23 (bar 45, second time)"; the time as it is told where the words go. */
export function restMoment({ bar, pass }: Extract<Remedy, { kind: 'rest' }>, time: string): string {
  return bar === undefined ? time : `${time} (${barWords(bar, pass ?? null)})`;
}

function withoutPin(pin: Pin | undefined, nameOf: NameOf): string {
  if (!pin) throw new Error('a remedy lets go of a pin that is not there');
  return pin.kind === 'page'
    ? t`letting go of the pin on page ${pin.page} on ${nameOf(pin.station)}`
    : t`letting go of the pin on the turn by ${nameOf(pin.player)} at ${nameOf(pin.station)}`;
}

function seconds(time: Seconds): string {
  return Number.isFinite(time) ? `${fixed(time, 1)} s` : t`any time`;
}
