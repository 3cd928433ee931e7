/** What a plan breaks, in plain sentences, and what each of them is about. Ids go by `nameOf`. */

import type { Interval, Seconds } from '../../score/time-line.ts';
import { barWords, stretchOfBars } from '../../score/words/bar-words.ts';
import { tenthsWords } from '../../score/words/clock-words.ts';
import { fixed } from '../../words/numbers.ts';
import { msgid, ngettext, t } from '../../words/say.ts';
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
      return t`${nameOf(player)} needs page ${page} ${stretchWords(judged, player, violation)}, and it is not in view all that time.`;
    }
    case 'unknown-station':
      return t`Nobody who has a part reads at ${nameOf(violation.station)}, so the plan cannot use it.`;
    case 'station-twice':
      return t`${nameOf(violation.station)} is in the plan twice.`;
    case 'too-many-stations':
      return t`The plan uses ${violation.stations} stands; ${violation.most} are allowed.`;
    case 'binding-not-allowed':
      return t`${nameOf(violation.station)} does not take paper that is bound like this.`;
    case 'too-wide':
      return tooWideWords(violation.pages, nameOf(violation.station), violation.width);
    case 'views-do-not-fit':
      return t`The views of ${nameOf(violation.station)} do not fit its leaves and its pages side by side.`;
    case 'no-such-page':
      return t`${nameOf(violation.station)} shows page ${violation.page}, which its reader’s part does not have.`;
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
  if (!turn) return t`A turn of the plan is not there.`;
  const who = t`${nameOf(turn.player)}, who turns at ${nameOf(turn.station)} at ${moment(turn)},`;
  switch (violation.code) {
    case 'out-of-reach':
      return turn.hand === 'left'
        ? t`${who} does not get to the leaf with the left hand without a step.`
        : t`${who} does not get to the leaf with the right hand without a step.`;
    case 'hand-not-free':
      return turn.hand === 'left'
        ? t`${who} has no left hand free for the ${tenths(turn.seconds)} that it takes.`
        : t`${who} has no right hand free for the ${tenths(turn.seconds)} that it takes.`;
    case 'turn-too-short':
      return t`${who} needs ${tenths(violation.needed)} for it; the plan gives ${tenths(turn.seconds)}.`;
    case 'wrong-state':
      return turn.direction === 'back'
        ? t`${who} finds no leaf there to turn back.`
        : t`${who} finds no leaf there to turn on.`;
    case 'wrong-side':
      return t`${who} would lift the leaf from the side where it does not lie.`;
    case 'two-turns-at-once': {
      const other = plan.turns[violation.other];
      return other
        ? t`${who} is at it while another turn is made, at ${nameOf(other.station)} by ${nameOf(other.player)}; neither leaves the other time.`
        : t`${who} is at it while another turn is made; neither leaves the other time.`;
    }
  }
}

function pinWords(pin: Pin, nameOf: NameOf): string {
  if (pin.kind === 'page')
    return t`Page ${pin.page} is pinned on ${nameOf(pin.station)}, ${leavesTurned(pin.state)}, and is not there.`;
  return t`A turn by ${nameOf(pin.player)} at ${nameOf(pin.station)} is pinned between ${tenthsWords(pin.from)} and ${tenthsWords(pin.to)}, and there is none.`;
}

function leavesTurned(state: number): string {
  if (state === 0) return t`before any leaf is turned`;
  return ngettext(msgid`with ${state} leaf turned`, `with ${state} leaves turned`, state);
}

function stretchWords({ instance }: Judged, player: string, { from, to }: Interval): string {
  const owner = instance.players.find(({ id }) => id === player);
  const bar = (time: Seconds) => (owner ? barAt(owner, time) : null);
  const [first, last] = [bar(Math.max(0, from)), bar(to - 1e-3)];
  const bars = first === null || last === null ? '' : ` (${barsWords(first, last)})`;
  return t`from ${tenthsWords(Math.max(0, from))} to ${tenthsWords(to)}` + bars;
}

function barsWords(first: PlayedBar, last: PlayedBar): string {
  const [from, to] = [first, last].map(({ label, pass }) => ({ label, pass: pass ?? null }));
  return from && to ? stretchOfBars(from, to) : '';
}

function moment({ at, bar, pass }: Turn): string {
  return bar === null ? tenthsWords(at) : `${tenthsWords(at)} (${barWords(bar, pass)})`;
}

function tooWideWords(count: number, station: string, width: number): string {
  return ngettext(
    msgid`${count} page side by side are too wide for ${station}, which holds ${width}.`,
    `${count} pages side by side are too wide for ${station}, which holds ${width}.`,
    count,
  );
}

function tenths(seconds: Seconds): string {
  return `${fixed(seconds, 1)} s`;
}
