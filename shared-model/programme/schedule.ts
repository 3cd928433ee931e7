/**
 * Who of two does what in which order, so that both are through about together. Light things go to whoever can begin
 * sooner, heavy ones to both. A few rules of preference are tried, and the order that ends first is kept; that no other
 * order ends sooner is not promised.
 */

import type { Span } from '../checks/reach/motion-times.ts';

export type Hands = 'A' | 'B' | 'both';

/** A piece of work between two stops, which are known by number. */
export interface Job {
  readonly crew: 1 | 2;
  readonly start: number;
  readonly end: number;
  /** From the first touch to the last, carrying included. */
  readonly time: Span;
  /** Jobs that have to be done before this one is begun, by index. */
  readonly waitsFor: readonly number[];
}

export interface Turn {
  readonly job: number;
  readonly hands: Hands;
  /** Seconds from the beginning of the changeover. */
  readonly begins: number;
  readonly ends: number;
}

export interface Schedule {
  /** In the order in which they begin. */
  readonly turns: readonly Turn[];
  /** When each of the two is through. */
  readonly through: { readonly A: number; readonly B: number };
  /** When all is done, with its range: the same order at the least and the most of every time. */
  readonly time: Span;
}

/** Seconds from one stop to another with empty hands; from null (the beginning): none. */
export type Walk = (from: number | null, to: number) => Span;

export function schedule(jobs: readonly Job[], walk: Walk): Schedule {
  const [best] = ordersFor(jobs, walk);
  if (!best) throw new Error('no rule of preference');
  return scheduleOf(best, jobs, walk);
}

/** The orders that the rules make, each once, the one that ends first before the others. */
export function ordersFor(jobs: readonly Job[], walk: Walk): Turn[][] {
  const tails = tailsOf(jobs);
  const orders = RULES.map((rule) => ordered(jobs, walk, { ...rule, tails }));
  const named = new Map(
    orders.toReversed().map((turns) => [turns.map(({ job, hands }) => `${job}${hands}`).join(), turns]),
  );
  return [...named.values()].reverse().sort((a, b) => (isBetter(a, b) ? -1 : isBetter(b, a) ? 1 : 0));
}

/** An order with all of its times. `turns`: in an order in which they can be made. */
export function scheduleOf(turns: readonly Turn[], jobs: readonly Job[], walk: Walk): Schedule {
  const at = (length: keyof Span): number => endOf(replayed(jobs, walk, turns, length));
  return {
    turns: turns.toSorted((a, b) => a.begins - b.begins),
    through: { A: lastOf(turns, 'A'), B: lastOf(turns, 'B') },
    time: { least: at('least'), usual: endOf(turns), most: at('most') },
  };
}

interface Rule {
  /** How much it counts what else waits for a job. */
  readonly chain: number;
  /** Seconds by which a job for both goes before others; negative: behind them. */
  readonly heavy: number;
}

const RULES: readonly Rule[] = [0, 0.5, 1].flatMap((chain) =>
  [-1e4, -60, 0, 60, 1e4].map((heavy) => ({ chain, heavy })),
);

function isBetter(a: readonly Turn[], b: readonly Turn[]): boolean {
  const [endA, endB] = [endOf(a), endOf(b)];
  if (Math.abs(endA - endB) > 1e-6) return endA < endB;
  return Math.abs(lastOf(a, 'A') - lastOf(a, 'B')) < Math.abs(lastOf(b, 'A') - lastOf(b, 'B')) - 1e-6;
}

function endOf(turns: readonly Turn[]): number {
  return turns.reduce((last, { ends }) => Math.max(last, ends), 0);
}

function lastOf(turns: readonly Turn[], who: 'A' | 'B'): number {
  return endOf(turns.filter(({ hands }) => hands === who || hands === 'both'));
}

/** For each job how long the longest chain of jobs is that wait for it, one for another. */
function tailsOf(jobs: readonly Job[]): number[] {
  const known: (number | undefined)[] = [];
  const followers = jobs.map((_, index) =>
    jobs.flatMap(({ waitsFor }, other) => (waitsFor.includes(index) ? [other] : [])),
  );
  const tail = (index: number): number =>
    (known[index] ??= (followers[index] ?? []).reduce(
      (most, next) => Math.max(most, (jobs[next]?.time.usual ?? 0) + tail(next)),
      0,
    ));
  return jobs.map((_, index) => tail(index));
}

/** Of whom it is known when he is free, and at which stop. */
interface Person {
  free: number;
  at: number | null;
}

export type Crew = Record<'A' | 'B', Person>;

interface Preference extends Rule {
  readonly tails: readonly number[];
}

function ordered(jobs: readonly Job[], walk: Walk, { chain, heavy, tails }: Preference): Turn[] {
  const crew: Crew = { A: { free: 0, at: null }, B: { free: 0, at: null } };
  const ends = new Map<number, number>();
  const turns: Turn[] = [];
  while (turns.length < jobs.length) {
    let best: { turn: Turn; score: number } | null = null;
    for (const [job, each] of jobs.entries()) {
      if (ends.has(job) || !each.waitsFor.every((other) => ends.has(other))) continue;
      for (const hands of each.crew === 2 ? BOTH : EITHER) {
        const turn = turnOf({ job, hands }, { jobs, walk, crew, ends, length: 'usual' });
        const score = turn.begins - chain * (tails[job] ?? 0) - (each.crew === 2 ? heavy : 0);
        if (!best || score < best.score - 1e-9) best = { turn, score };
      }
    }
    if (!best) throw new Error('jobs that wait for each other in a ring');
    turns.push(best.turn);
    takeTurn(best.turn, jobs, crew, ends);
  }
  return turns;
}

const BOTH = ['both'] as const;
const EITHER = ['A', 'B'] as const;

interface State {
  readonly jobs: readonly Job[];
  readonly walk: Walk;
  readonly crew: Readonly<Crew>;
  readonly ends: ReadonlyMap<number, number>;
  readonly length: keyof Span;
}

export function turnOf({ job, hands }: Pick<Turn, 'job' | 'hands'>, state: State): Turn {
  const { jobs, walk, crew, ends, length } = state;
  const each = jobs[job];
  if (!each) throw new Error(`no job ${job}`);
  const arrivals = peopleOf(hands).map((who) => crew[who].free + walk(crew[who].at, each.start)[length]);
  const done = each.waitsFor.map((other) => ends.get(other) ?? 0);
  const begins = [...arrivals, ...done].reduce((latest, time) => Math.max(latest, time), 0);
  return { job, hands, begins, ends: begins + each.time[length] };
}

export function takeTurn(
  { job, hands, ends: end }: Turn,
  jobs: readonly Job[],
  crew: Crew,
  ends: Map<number, number>,
): void {
  ends.set(job, end);
  for (const who of peopleOf(hands)) crew[who] = { free: end, at: jobs[job]?.end ?? null };
}

export function peopleOf(hands: Hands): readonly ('A' | 'B')[] {
  return hands === 'both' ? ['A', 'B'] : [hands];
}

/** The same hands in the same order, with other times. */
function replayed(jobs: readonly Job[], walk: Walk, turns: readonly Turn[], length: keyof Span): Turn[] {
  const crew: Crew = { A: { free: 0, at: null }, B: { free: 0, at: null } };
  const ends = new Map<number, number>();
  return turns.map(({ job, hands }) => {
    const turn = turnOf({ job, hands }, { jobs, walk, crew, ends, length });
    takeTurn(turn, jobs, crew, ends);
    return turn;
  });
}
