/** A result as lines of plain text. */

import type { Seconds } from '../../score/time-line.ts';
import { clockWords } from '../../score/words/clock-words.ts';
import {
  COST_ORDER,
  isProved,
  type PlanCost,
  type PlanView,
  type Proof,
  type StationPlan,
  type Turn,
} from './plan.ts';
import type { PlanInstance } from './instance.ts';
import type { PlanResult } from './planner.ts';
import type { Remedy } from './remedies.ts';

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
  remedies: readonly Remedy[] = [],
): string[] {
  switch (result.status) {
    case 'faulty':
      return result.faults.map((fault) => `cannot be planned: ${fault}`);
    case 'none':
      return [
        result.proved ? 'there is no plan' : 'no plan was found in the steps allowed',
        ...remedies.map((remedy) => `  would make one: ${remedyWords(remedy)}`),
      ];
    case 'planned':
      return [
        ...costWords(result.cost, result.proof),
        ...result.plan.stations.flatMap((station) => stationWords(instance, station)),
        ...result.plan.turns.map(turnWords),
        ...(result.front.length > 1 ? ['Other plans:'] : []),
        ...result.front.slice(1).map(({ cost }) => `  ${shortWords(cost)}`),
      ];
  }
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

function shortWords(cost: PlanCost): string {
  return (['turns', 'stations', 'panels'] as const)
    .map((figure) => counted(cost[figure], FIGURES[figure]))
    .join(', ');
}

function stationWords(
  instance: PlanInstance,
  { station, kind, leaves, stackSide, views }: StationPlan,
): string[] {
  const sides = instance.stations.find(({ id }) => id === station)?.sides ?? [];
  const readerOn = (side: number) => sides[side]?.reader ?? null;
  const paper = leaves === 0 ? '' : ` with ${counted(leaves, ['leaf', 'leaves'])}`;
  const stack =
    kind === 'ridge' && leaves > 0
      ? `; at first ${leaves === 1 ? 'it lies' : 'they lie'} before ${readerOn(stackSide) ?? 'the side without a reader'}`
      : '';
  return [
    `${station}: ${KINDS[kind]}${paper}${stack}`,
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

function turnWords(turn: Turn): string {
  const bar = turn.bar === null ? '' : ` bar ${turn.bar},`;
  const own = turn.readers.find(({ player }) => player === turn.player);
  const page = own?.page ? `, ${own.during ? 'during' : 'after'} page ${own.page}` : '';
  const partner = turn.servesPartner ? ', for the partner too' : '';
  const way = turn.direction === 'back' ? ' back' : '';
  return `${clockWords(turn.at)}${bar} ${turn.player} turns ${turn.station}${way} with the ${turn.hand} hand${page}${partner}; ${seconds(turn.margin)} to spare`;
}

function remedyWords(remedy: Remedy): string {
  switch (remedy.kind) {
    case 'rest':
      return `a rest of ${seconds(remedy.seconds)} for ${remedy.player} after page ${remedy.afterPage}, at ${clockWords(remedy.at)}`;
    case 'wider':
      return `room for ${remedy.pages} pages at ${remedy.station}`;
    case 'station':
      return `one more station like ${remedy.like}`;
    case 'pin':
      return `letting go of pin ${remedy.index + 1}`;
  }
}

function seconds(time: Seconds): string {
  return Number.isFinite(time) ? `${time.toFixed(1)} s` : 'any time';
}
