/** When a player puts one instrument down and takes up another, and how far he goes for it. */

import { gripsOf } from '../../checks/reach/grips.ts';
import { freeHands } from '../../checks/reach/hands.ts';
import { reachOf } from '../../checks/reach/reach.ts';
import { find, inSetup, type Document } from '../../document/document.ts';
import { asId, type Id } from '../../document/ids.ts';
import { partPlayedBy } from '../../document/parts.ts';
import type { Instrument } from '../../document/records.ts';
import { partNameOf, type PartName } from '../../score/parts/part-name.ts';
import type { Performance } from '../../score/music/performance.ts';
import type { Interval, Seconds } from '../../score/time-line.ts';
import { barLabels } from '../../score/words/bar-labels.ts';
import { passesOf, type Pass } from '../../score/words/bar-words.ts';
import { MOMENT } from '../planner/instance.ts';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface InstrumentSwap {
  readonly player: string;
  /** What he plays from then on, as the part calls it. */
  readonly name: string;
  /** When he lets go of the old one. */
  readonly at: Seconds;
  /** There and, if he has to leave his place, back, with an allowance for care; null: nobody knows where the instrument lies. */
  readonly seconds: Seconds | null;
  /** The same at the usual pace, as the check of reach tells it. */
  readonly usualSeconds: Seconds | null;
  /** The rest that he has for it; nothing long when there is none. */
  readonly window: Interval;
  /** The bar from which on he plays it, as of `barLabels`. */
  readonly bar: string;
  /** Which time through that bar. */
  readonly pass: Pass;
  /** From his place to where one of the two instruments waits; null: nobody knows. */
  readonly spots: { readonly from: Spot; readonly to: Spot } | null;
  /** He leaves his place for it. */
  readonly walk: boolean;
}

export interface SwapRequest {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly player: string;
  readonly performance: Performance;
  /** His rests, disjoint and in order. */
  readonly rests: readonly Interval[];
  /** What keeps him busy otherwise. */
  readonly busy: readonly Interval[];
}

/** In the order of the performance. As early in the rest as he is not turning pages. */
export function instrumentSwaps(request: SwapRequest): InstrumentSwap[] {
  const { document, setup, player, performance, rests, busy } = request;
  const played = partPlayedBy(document, setup, player);
  if (!played) return [];
  const nameOf = barLabels(played.music);
  const passes = passesOf(performance.played);
  const asked = new Map(played.part.instruments.map(({ bar, name }) => [bar, name]));
  const swaps: InstrumentSwap[] = [];
  let holds: string | null = null;
  for (const [index, bar] of performance.played.entries()) {
    const name = asked.get(bar);
    // A repeat asks once more for what he already has in his hands.
    if (name === undefined || name === holds) continue;
    const begins = performance.begins[index] ?? 0;
    const window = restAround(rests, begins, performance.begins[index + 1] ?? begins);
    const { seconds, ...way } = wayTo(document, setup, player, [name, holds]);
    const at = firstFree(window, busy, seconds ?? 0);
    const pass = passes[index] ?? { time: 1, of: 1 };
    swaps.push({ player, name, at, seconds, window, bar: nameOf(bar), pass, ...way });
    holds = name;
  }
  return swaps;
}

/** The longest rest that touches the bar, as the check of reach has it; else the moment of the bar. */
function restAround(rests: readonly Interval[], from: Seconds, to: Seconds): Interval {
  return rests
    .filter((rest) => rest.from <= to + MOMENT && rest.to >= from - MOMENT)
    .reduce((longest, rest) => (rest.to - rest.from > longest.to - longest.from ? rest : longest), {
      from,
      to: from,
    });
}

/** Falls back to the beginning where nothing is free for long enough. */
function firstFree(window: Interval, busy: readonly Interval[], seconds: Seconds): Seconds {
  const isFree = (at: Seconds) =>
    at + seconds <= window.to + MOMENT &&
    busy.every(({ from, to }) => to <= at + MOMENT || from >= at + seconds - MOMENT);
  const starts = [window.from, ...busy.map(({ to }) => to).filter((to) => to > window.from)];
  return starts.sort((a, b) => a - b).find(isFree) ?? window.from;
}

type Way = Pick<InstrumentSwap, 'seconds' | 'usualSeconds' | 'spots' | 'walk'>;

const UNKNOWN: Way = { seconds: null, usualSeconds: null, spots: null, walk: false };

/** Of what he takes up and what he lays down, one waits on a stand: that is where he goes. */
function wayTo(document: Document, setup: Id<'setup'>, id: string, names: readonly (string | null)[]): Way {
  const player = find(document, asId<'player'>(id));
  const waiting = inSetup(document, setup, 'instrument').filter(
    (instrument) => instrument.player === id && instrument.support !== null,
  );
  const named = waiting.find(({ name }) => names.some((one) => one !== null && isNamed(name, one)));
  const [only, another] = waiting;
  const item: Instrument | undefined =
    named ?? (only && !another && mayBe(only.name, names) ? only : undefined);
  const grip = item && gripsOf(document, setup).find((one) => one.id === `${item.id}/pickUp`);
  if (!player || !grip) return UNKNOWN;
  const hands = freeHands(document, setup, player.id);
  const { manner, seconds: usualSeconds, secondsRange } = reachOf({ document, setup, player, grip, hands });
  if (manner === 'none') return UNKNOWN;
  const spots = { from: { x: player.x, y: player.y }, to: { x: grip.x, y: grip.y } };
  const walk = manner === 'step' || manner === 'walk';
  return { seconds: secondsRange[1], usualSeconds, spots, walk };
}

function isNamed(name: string, asked: string): boolean {
  const [a, b] = [name.trim().toLowerCase(), asked.trim().toLowerCase()];
  return (a !== '' && a === b) || isAlike(partNameOf(name), partNameOf(asked));
}

/** "Klarinette in A" is a "Clarinet in A", and may be a "Clarinet". */
function isAlike(a: PartName | null, b: PartName | null): boolean {
  if (a === null || a.kind !== b?.kind) return false;
  return a.key === null || b.key === null || a.key === b.key;
}

/** Of one that waits alone nobody says what it is, or what is asked for: it may be that. A clarinet is no piccolo. */
function mayBe(name: string, asked: readonly (string | null)[]): boolean {
  return partNameOf(name) === null || asked.every((one) => one === null || partNameOf(one) === null);
}
