/** The sentences of a cue card. */

import { labelOf } from '../../document/labels.ts';
import type { StationPlan, Turn } from '../../pages/planner/plan.ts';
import { MOMENT } from '../../pages/planner/instance.ts';
import { barAt } from '../../pages/running/bar-at.ts';
import type { InstrumentSwap } from '../../pages/running/changes.ts';
import type { Run } from '../../pages/running/run.ts';
import { isThin } from '../../pages/running/warnings.ts';
import type { Seconds } from '../../score/time-line.ts';
import { barWords } from '../../score/words/bar-words.ts';
import { clockWords } from '../../score/words/clock-words.ts';
import type { Moment } from './moments.ts';
import type { PlannedPaper } from './order.ts';
import type { OwnPaper } from './own-paper.ts';

/** Lines of one entry; the first is the one to be read in the rest itself. */
export interface Said {
  readonly when: readonly string[];
  readonly what: string;
  readonly more: readonly string[];
  /** Too little to spare to be sure of it. */
  readonly warning: string | null;
}

/** Who it is for, and the plan as it runs. */
export interface Reader {
  readonly planned: PlannedPaper;
  readonly run: Run;
  readonly player: string;
}

export function wordsOfMoment(reader: Reader, moment: Moment): Said {
  switch (moment.kind) {
    case 'beginning':
      return { when: ['At first'], what: 'Lay your pages so.', more: [], warning: null };
    case 'swap':
      return swapWords(reader, moment.swap);
    case 'turn':
      return moment.turn.player === reader.player
        ? ownTurn(reader, moment.turn, moment.number)
        : turnedForHim(reader, moment.turn, moment.number);
  }
}

function whenOf({ run }: Reader, at: Seconds, bar: string | null): string[] {
  const known = barAt(run, at + MOMENT);
  if (known !== '') return timed(known, at);
  return bar === null || bar === '' ? [clockWords(at)] : timed(barWords(bar, null), at);
}

/** "bar 48", "2:17", "movement 2", "second time": lines of a narrow column. */
function timed(bar: string, at: Seconds): string[] {
  const [first = bar, ...times] = bar.split(/, | of (?=movement )/);
  return [first, clockWords(at), ...times];
}

/** When he takes it up is in the rest; the bar from which on he plays it is another one as a rule. */
function swapWords(reader: Reader, swap: InstrumentSwap): Said {
  const { name: instrument, at, seconds: needed, window } = swap;
  const rest = window.to - window.from;
  if (at <= 0 && rest <= 0)
    return {
      when: whenOf(reader, at, swap.bar),
      what: `Begin with: ${instrument}.`,
      more: [],
      warning: null,
    };
  const isTight = needed === null ? rest <= 0 : isThin(rest - needed, needed);
  return {
    when: whenOf(reader, at, swap.bar),
    what: `Take up: ${instrument}.`,
    more: [
      `You play it from ${barWords(swap.bar, swap.pass)} on.`,
      `You rest for ${seconds(rest)}${changeTakes(swap)}.`,
    ],
    warning: isTight && at > 0 ? 'Thin: hardly time to change!' : null,
  };
}

function changeTakes({ seconds: needed, usualSeconds }: InstrumentSwap): string {
  if (needed === null || usualSeconds === null) return '';
  return `; the change takes ${seconds(usualSeconds)}, with care ${seconds(needed)}`;
}

function ownTurn(reader: Reader, turn: Turn, number: number): Said {
  const { planned, player } = reader;
  const { hand, station, direction, margin, window } = turn;
  const others = othersServed(planned, player, turn);
  const rest = window.to - window.from;
  const takes = `the turn takes ${seconds(turn.seconds)} with care, hand there and back`;
  const time = Number.isFinite(rest)
    ? `Hand and leaf free for ${seconds(rest)}; ${takes}; ${seconds(Math.max(0, margin))} to spare.`
    : `Hand and leaf free for any time; ${takes}.`;
  const back = direction === 'back' ? ' back' : '';
  const page = pageWords(turn, player);
  return {
    when: whenOf(reader, turn.at, turn.bar),
    what: `Turn ${number}: you turn ${name(planned, station)}${back}, ${hand} hand${page === '' ? '' : `, ${page}`}.`,
    more: [time, ...(others === '' ? [] : [`It is also for ${others}.`])],
    warning: isThin(margin, turn.seconds) ? `Thin: ${seconds(Math.max(0, margin))} to spare!` : null,
  };
}

function turnedForHim(reader: Reader, turn: Turn, number: number): Said {
  const { planned, player } = reader;
  const back = turn.direction === 'back' ? ' back' : '';
  const page = pageWords(turn, player);
  const own = turn.readers.find((one) => one.player === player);
  const who = name(planned, turn.player);
  return {
    when: whenOf(reader, turn.at, own?.bar ?? turn.bar),
    what: `Turn ${number}: ${who} turns ${name(planned, turn.station)}${back} for you${page === '' ? '' : `, ${page}`}.`,
    more: ['Leave your hands off it.'],
    warning: null,
  };
}

function pageWords({ readers }: Turn, player: string): string {
  const own = readers.find((reader) => reader.player === player);
  if (!own || own.page === null) return '';
  return own.during ? `while you are on page ${own.page}` : `after page ${own.page}`;
}

/** Everybody else who gets new pages by the turn. */
function othersServed(planned: PlannedPaper, player: string, { station, servesPartner }: Turn): string {
  if (!servesPartner) return '';
  const sides = planned.instance.stations.find(({ id }) => id === station)?.sides ?? [];
  const readers = sides.flatMap(({ reader }) => (reader === null || reader === player ? [] : [reader]));
  return readers.map((reader) => name(planned, reader)).join(' and ');
}

export function name({ document, setup }: PlannedPaper, id: string): string {
  return labelOf(document, setup, id);
}

function seconds(time: number): string {
  return `${time.toFixed(1)} s`;
}

const KINDS: Readonly<Record<StationPlan['kind'], string>> = {
  loose: 'Loose pages side by side',
  book: 'A book',
  concertina: 'A concertina',
  ridge: 'A booklet over the ridge',
};

/** A turn moves it on by two pages; whatever else lies open stays in view. */
function concertinaWords(leaves: number, open: number): string {
  const bound = `${KINDS.concertina}, ${leaves} ${leaves === 1 ? 'leaf' : 'leaves'}`;
  return open > 2 ? `${bound}, ${open} pages open at a time; each turn moves them on by two` : bound;
}

/** How the paper there is bound, who else reads from it and on whose side its leaves lie at first. */
export function paperWords(planned: PlannedPaper, { plan, station, side }: OwnPaper): string {
  const { kind, leaves, stackSide, pagesAcross } = plan;
  if (kind === 'concertina' && leaves > 0) return `${concertinaWords(leaves, pagesAcross[side] ?? 0)}.`;
  const bound = leaves === 0 ? KINDS[kind] : `${KINDS[kind]}, ${leaves} ${leaves === 1 ? 'leaf' : 'leaves'}`;
  if (kind !== 'ridge') return `${bound}.`;
  const partner = station.sides[side === 0 ? 1 : 0]?.reader ?? null;
  const other = partner === null ? 'nobody' : name(planned, partner);
  const shared = `${other} reads on the other side`;
  if (leaves === 0) return `${bound}; ${shared}.`;
  const stack = stackSide === side ? 'your' : 'the other';
  return `${bound}, at first all on ${stack} side; ${shared}.`;
}
