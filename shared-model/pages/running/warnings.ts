/** Where a run goes by a hair's breadth, or does not work: for people to look at before a rehearsal does. */

import type { Seconds } from '../../score/time-line.ts';
import { tenthsWords } from '../../score/words/clock-words.ts';
import { fixed } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import type { Turn } from '../planner/plan.ts';
import { barAt } from './bar-at.ts';
import type { InstrumentSwap } from './changes.ts';
import type { PageSpan } from './player-lane.ts';
import type { Run } from './run.ts';

export type RunWarning =
  | { readonly code: 'thin-turn'; readonly at: Seconds; readonly turn: Turn }
  | { readonly code: 'thin-swap'; readonly at: Seconds; readonly swap: InstrumentSwap }
  /** What he changes to is not there, or he cannot get to it. */
  | { readonly code: 'unset-swap'; readonly at: Seconds; readonly swap: InstrumentSwap }
  | { readonly code: 'no-page'; readonly at: Seconds; readonly player: string; readonly span: PageSpan };

/** Common practice, no source: less than this to spare, or less than this share of what it needs, asks for a look. */
const [LEAST_SPARE, LEAST_SHARE] = [1, 0.5] as const;

export function isThin(spare: Seconds, needed: Seconds): boolean {
  return spare < LEAST_SPARE || spare < LEAST_SHARE * needed;
}

/** In the order of time. */
export function warningsOf({ turns, swaps, players }: Run): RunWarning[] {
  const found: RunWarning[] = [];
  for (const turn of turns)
    if (isThin(turn.margin, turn.seconds)) found.push({ code: 'thin-turn', at: turn.at, turn });
  for (const swap of swaps)
    if (swap.seconds !== null && isThin(spareOf(swap), swap.seconds))
      found.push({ code: 'thin-swap', at: swap.at, swap });
  const unset = swaps.filter(({ seconds }) => seconds === null);
  for (const swap of unset) {
    const isTold = unset.find(({ player, name }) => player === swap.player && name === swap.name) !== swap;
    if (!isTold) found.push({ code: 'unset-swap', at: swap.at, swap });
  }
  for (const { player, spans } of players)
    for (const span of spans)
      if (span.needed && !span.place) found.push({ code: 'no-page', at: span.from, player, span });
  return found.sort((a, b) => a.at - b.at);
}

function spareOf({ window, seconds }: InstrumentSwap): Seconds {
  return window.to - window.from - (seconds ?? 0);
}

/** Players and stands are named by `nameOf`, by id. */
export function warningSentence(warning: RunWarning, run: Run, nameOf: (id: string) => string): string {
  const when = momentWords(run, warning.at);
  switch (warning.code) {
    case 'thin-turn': {
      const { player, station, seconds, margin } = warning.turn;
      const [there, needed] = [secondsWords(seconds + margin), secondsWords(seconds)];
      return t`${when}: ${nameOf(player)} turns ${nameOf(station)}; that needs ${needed} with care, and ${there} are there.`;
    }
    case 'thin-swap': {
      const { player, name, seconds, window } = warning.swap;
      const [there, needed] = [secondsWords(window.to - window.from), secondsWords(seconds ?? 0)];
      return t`${when}: ${nameOf(player)} changes to ${name}; that needs ${needed} with care, and ${there} are there.`;
    }
    case 'unset-swap': {
      const { player, name } = warning.swap;
      return t`${when}: ${nameOf(player)} changes to ${name}; that is not set anywhere within reach, so nobody knows how long it takes.`;
    }
    case 'no-page': {
      const { page, from, to } = warning.span;
      return t`${when}: ${nameOf(warning.player)} has no page ${page} for ${secondsWords(to - from)}.`;
    }
  }
}

/** "2:57.7, bar 58, second time" */
function momentWords(run: Run, time: Seconds): string {
  const bar = barAt(run, time);
  return bar === '' ? tenthsWords(time) : `${tenthsWords(time)}, ${bar}`;
}

/** With a no-break space. */
function secondsWords(seconds: Seconds): string {
  return `${fixed(Math.max(0, seconds), 1)}\u00a0s`;
}
