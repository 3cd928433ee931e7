/** What a plan breaks, in plain sentences, and what each of them is about. Ids go by `nameOf`. */

import type { Interval, Seconds } from '../../score/time-line.ts';
import { barWords, stretchOfBars } from '../../score/words/bar-words.ts';
import { tenthsWords } from '../../score/words/clock-words.ts';
import { barAt, type Pin, type PlanInstance, type PlayedBar } from './instance.ts';
import type { Violation } from './judge.ts';
import type { Plan, Turn } from './plan.ts';
import type { NameOf } from './words.ts';

export interface Judged {
  readonly instance: PlanInstance;
  readonly plan: Plan;
}

/** One sentence. */
export function violationWords(violation: Violation, judged: Judged, nameOf: NameOf): string {
  switch (violation.code) {
    case 'page-not-in-view': {
      const { player, page } = violation;
      return `${nameOf(player)} needs page ${page} ${stretchWords(judged, player, violation)}, and it is not in view all that time.`;
    }
    case 'unknown-station':
      return `Nobody who has a part reads at ${nameOf(violation.station)}, so the plan cannot use it.`;
    case 'station-twice':
      return `${nameOf(violation.station)} is in the plan twice.`;
    case 'too-many-stations':
      return `The plan uses ${violation.stations} stands; ${violation.most} are allowed.`;
    case 'binding-not-allowed':
      return `${nameOf(violation.station)} does not take paper that is bound like this.`;
    case 'too-wide':
      return `${pages(violation.pages)} side by side are too wide for ${nameOf(violation.station)}, which holds ${violation.width}.`;
    case 'views-do-not-fit':
      return `The views of ${nameOf(violation.station)} do not fit its leaves and its pages side by side.`;
    case 'no-such-page':
      return `${nameOf(violation.station)} shows page ${violation.page}, which its reader’s part does not have.`;
    case 'pin-lost':
      return pinWords(violation.pin, nameOf);
    default:
      return turnWords(violation, judged, nameOf);
  }
}

/** Ids of the records to look at: the player, the stand. */
export function violationSubjects(violation: Violation, { plan }: Judged): string[] {
  switch (violation.code) {
    case 'page-not-in-view':
      return [violation.player];
    case 'too-many-stations':
      return plan.stations.map(({ station }) => station);
    case 'pin-lost':
      return violation.pin.kind === 'turn'
        ? [violation.pin.player, violation.pin.station]
        : [violation.pin.station];
    default:
      if ('station' in violation) return [violation.station];
      return [violation.turn, 'other' in violation ? violation.other : violation.turn]
        .flatMap((index) => plan.turns[index] ?? [])
        .flatMap(({ player, station }) => [player, station])
        .filter((id, index, all) => all.indexOf(id) === index);
  }
}

type TurnViolation = Extract<Violation, { readonly turn: number }>;

function turnWords(violation: TurnViolation, { plan }: Judged, nameOf: NameOf): string {
  const turn = plan.turns[violation.turn];
  if (!turn) return 'A turn of the plan is not there.';
  const who = `${nameOf(turn.player)}, who turns at ${nameOf(turn.station)} at ${moment(turn)},`;
  switch (violation.code) {
    case 'out-of-reach':
      return `${who} does not get to the leaf with the ${turn.hand} hand without a step.`;
    case 'hand-not-free':
      return `${who} has no ${turn.hand} hand free for the ${tenths(turn.seconds)} that it takes.`;
    case 'turn-too-short':
      return `${who} needs ${tenths(violation.needed)} for it; the plan gives ${tenths(turn.seconds)}.`;
    case 'wrong-state':
      return `${who} finds no leaf there to turn ${turn.direction === 'back' ? 'back' : 'on'}.`;
    case 'wrong-side':
      return `${who} would lift the leaf from the side where it does not lie.`;
    case 'two-turns-at-once': {
      const other = plan.turns[violation.other];
      const where = other ? `, at ${nameOf(other.station)} by ${nameOf(other.player)}` : '';
      return `${who} is at it while another turn is made${where}; neither leaves the other time.`;
    }
  }
}

function pinWords(pin: Pin, nameOf: NameOf): string {
  if (pin.kind === 'page')
    return `Page ${pin.page} is pinned on ${nameOf(pin.station)}, ${leavesTurned(pin.state)}, and is not there.`;
  return `A turn by ${nameOf(pin.player)} at ${nameOf(pin.station)} is pinned between ${tenthsWords(pin.from)} and ${tenthsWords(pin.to)}, and there is none.`;
}

function leavesTurned(state: number): string {
  if (state === 0) return 'before any leaf is turned';
  return `with ${state} ${state === 1 ? 'leaf' : 'leaves'} turned`;
}

function stretchWords({ instance }: Judged, player: string, { from, to }: Interval): string {
  const owner = instance.players.find(({ id }) => id === player);
  const bar = (time: Seconds) => (owner ? barAt(owner, time) : null);
  const [first, last] = [bar(Math.max(0, from)), bar(to - 1e-3)];
  const bars = first === null || last === null ? '' : ` (${barsWords(first, last)})`;
  return `from ${tenthsWords(Math.max(0, from))} to ${tenthsWords(to)}${bars}`;
}

function barsWords(first: PlayedBar, last: PlayedBar): string {
  const [from, to] = [first, last].map(({ label, pass }) => ({ label, pass: pass ?? null }));
  return from && to ? stretchOfBars(from, to) : '';
}

function moment({ at, bar, pass }: Turn): string {
  return bar === null ? tenthsWords(at) : `${tenthsWords(at)} (${barWords(bar, pass)})`;
}

function pages(count: number): string {
  return `${count} ${count === 1 ? 'page' : 'pages'}`;
}

function tenths(seconds: Seconds): string {
  return `${seconds.toFixed(1)} s`;
}
