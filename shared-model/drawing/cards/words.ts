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
import { OF_MOVEMENT } from '../../score/words/movement-words.ts';
import { fixed } from '../../words/numbers.ts';
import { msgid, ngettext, t } from '../../words/say.ts';
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
      return { when: [t`At first`], what: t`Lay your pages so.`, more: [], warning: null };
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

/** "bar 48", "2:17", "movement 2", "second time", or "Takt 48", "2:17", "im 2. Satz", "2. Mal": lines of a narrow column. */
function timed(bar: string, at: Seconds): string[] {
  const [place = bar, ...times] = bar.split(', ');
  const movement = OF_MOVEMENT.exec(place)?.[0] ?? '';
  const rest = movement === '' ? times : [movement.trim().replace(/^of /, ''), ...times];
  return [place.slice(0, place.length - movement.length), clockWords(at), ...rest];
}

/** When he takes it up is in the rest; the bar from which on he plays it is another one as a rule. */
function swapWords(reader: Reader, swap: InstrumentSwap): Said {
  const { name: instrument, at, seconds: needed, window } = swap;
  const rest = window.to - window.from;
  if (at <= 0 && rest <= 0)
    return {
      when: whenOf(reader, at, swap.bar),
      what: t`Begin with: ${instrument}.`,
      more: [],
      warning: null,
    };
  const isTight = needed === null ? rest <= 0 : isThin(rest - needed, needed);
  return {
    when: whenOf(reader, at, swap.bar),
    what: t`Take up: ${instrument}.`,
    more: [t`You play it from ${barWords(swap.bar, swap.pass)} on.`, restWords(rest, swap)],
    warning: isTight && at > 0 ? t`Thin: hardly time to change!` : null,
  };
}

function restWords(rest: Seconds, { seconds: needed, usualSeconds }: InstrumentSwap): string {
  if (needed === null || usualSeconds === null) return t`You rest for ${seconds(rest)}.`;
  return t`You rest for ${seconds(rest)}; the change takes ${seconds(usualSeconds)}, with care ${seconds(needed)}.`;
}

function ownTurn(reader: Reader, turn: Turn, number: number): Said {
  const { planned, player } = reader;
  const { station, margin } = turn;
  const others = othersServed(planned, player, turn);
  const done = [youTurn(turn, name(planned, station)), ...pageWords(turn, player)].join(', ');
  return {
    when: whenOf(reader, turn.at, turn.bar),
    what: t`Turn ${number}: ${done}.`,
    more: [timeWords(turn), ...(others === '' ? [] : [t`It is also for ${others}.`])],
    warning: isThin(margin, turn.seconds) ? t`Thin: ${seconds(Math.max(0, margin))} to spare!` : null,
  };
}

function youTurn({ direction, hand }: Turn, station: string): string {
  if (direction === 'back')
    return hand === 'left' ? t`you turn ${station} back, left hand` : t`you turn ${station} back, right hand`;
  return hand === 'left' ? t`you turn ${station}, left hand` : t`you turn ${station}, right hand`;
}

function timeWords({ window, seconds: needed, margin }: Turn): string {
  const rest = window.to - window.from;
  return Number.isFinite(rest)
    ? t`Hand and leaf free for ${seconds(rest)}; the turn takes ${seconds(needed)} with care, hand there and back; ${seconds(Math.max(0, margin))} to spare.`
    : t`Hand and leaf free for any time; the turn takes ${seconds(needed)} with care, hand there and back.`;
}

function turnedForHim(reader: Reader, turn: Turn, number: number): Said {
  const { planned, player } = reader;
  const own = turn.readers.find((one) => one.player === player);
  const [who, station] = [name(planned, turn.player), name(planned, turn.station)];
  const done =
    turn.direction === 'back' ? t`${who} turns ${station} back for you` : t`${who} turns ${station} for you`;
  return {
    when: whenOf(reader, turn.at, own?.bar ?? turn.bar),
    what: t`Turn ${number}: ${[done, ...pageWords(turn, player)].join(', ')}.`,
    more: [t`Leave your hands off it.`],
    warning: null,
  };
}

function pageWords({ readers }: Turn, player: string): string[] {
  const own = readers.find((reader) => reader.player === player);
  if (!own || own.page === null) return [];
  return [own.during ? t`while you are on page ${own.page}` : t`after page ${own.page}`];
}

/** Everybody else who gets new pages by the turn. */
function othersServed(planned: PlannedPaper, player: string, { station, servesPartner }: Turn): string {
  if (!servesPartner) return '';
  const sides = planned.instance.stations.find(({ id }) => id === station)?.sides ?? [];
  const readers = sides.flatMap(({ reader }) => (reader === null || reader === player ? [] : [reader]));
  const [first = '', ...others] = readers.map((reader) => name(planned, reader));
  return others.reduce((before, other) => t`${before} and ${other}`, first);
}

export function name({ document, setup }: PlannedPaper, id: string): string {
  return labelOf(document, setup, id);
}

function seconds(time: number): string {
  return `${fixed(time, 1)} s`;
}

const KINDS: Readonly<Record<StationPlan['kind'], () => string>> = {
  loose: () => t`Loose pages side by side`,
  book: () => t`A book`,
  concertina: () => t`A concertina`,
  ridge: () => t`A booklet over the ridge`,
};

function boundWords(kind: StationPlan['kind'], leaves: number): string {
  const bound = KINDS[kind]();
  return leaves === 0
    ? bound
    : ngettext(msgid`${bound}, ${leaves} leaf`, `${bound}, ${leaves} leaves`, leaves);
}

/** A turn moves it on by two pages; whatever else lies open stays in view. */
function concertinaWords(leaves: number, open: number): string {
  const bound = boundWords('concertina', leaves);
  return open > 2 ? t`${bound}, ${open} pages open at a time; each turn moves them on by two` : bound;
}

/** How the paper there is bound, who else reads from it and on whose side its leaves lie at first. */
export function paperWords(planned: PlannedPaper, { plan, station, side }: OwnPaper): string {
  const { kind, leaves, stackSide, pagesAcross } = plan;
  if (kind === 'concertina' && leaves > 0) return `${concertinaWords(leaves, pagesAcross[side] ?? 0)}.`;
  const bound = boundWords(kind, leaves);
  if (kind !== 'ridge') return `${bound}.`;
  const partner = station.sides[side === 0 ? 1 : 0]?.reader ?? null;
  const shared =
    partner === null
      ? t`nobody reads on the other side`
      : t`${name(planned, partner)} reads on the other side`;
  if (leaves === 0) return `${bound}; ${shared}.`;
  return stackSide === side
    ? t`${bound}, at first all on your side; ${shared}.`
    : t`${bound}, at first all on the other side; ${shared}.`;
}
