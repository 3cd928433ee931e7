/**
 * Parts without a score, as tables: a row for each page as it is read, in the order of the performance. Columns: page,
 * first bar, last bar, tempo (quarters a minute) or seconds, beats (quarters in a bar, 4 if no table says), free hands
 * (bars in which the player does not play, such as "12-14, 20"). They become music like that of a score; a bar that is
 * played again is listed again, and the page with it: it is one bar, as in a score (`folded.ts`).
 */

import { fraction, type Fraction } from '../fraction.ts';
import type { BarSilence, Music, PageStart, Part } from '../music.ts';
import { Refusal, type Outcome, type Problem } from '../problem.ts';
import { inTicks, ticksFor, type Ticks } from '../music/ticks.ts';
import { entriesOf, type Entry } from './entries.ts';
import { tempoMapOf, type TempoMap } from './tempo-map.ts';
import { folded } from './folded.ts';
import { checkSameBars, playedOf, type Played } from './same-bars.ts';

export interface NamedTable {
  /** What the part is called. */
  readonly name: string;
  readonly text: string;
}

export type TablesOutcome =
  | { readonly ok: true; readonly value: Music }
  /** `table`: the index of the one to mend. */
  | { readonly ok: false; readonly problem: Problem; readonly table: number };

/** Never throws, whatever the text. Refusals name the row, as the spreadsheet counts it, and the column. */
export function musicFromTable(text: string, name: string): Outcome<Music> {
  const outcome = musicFromTables([{ name, text }], name);
  return outcome.ok ? outcome : { ok: false, problem: outcome.problem };
}

/**
 * One piece of what several players read, a part each: all go through the same bars in the same order and time, and what
 * says otherwise is refused. Never throws.
 */
export function musicFromTables(tables: readonly NamedTable[], title: string): TablesOutcome {
  const players: TablePlayer[] = [];
  for (const [table, { name, text }] of tables.entries()) {
    try {
      const entries = entriesOf(text);
      const player = { name, entries, played: playedOf(entries) };
      checkSameBars(players, player);
      players.push(player);
    } catch (error) {
      return refusedBy(error, table);
    }
  }
  return togetherOr(players, title);
}

/** What one player goes through. */
export interface TablePlayer {
  readonly name: string;
  readonly entries: readonly Entry[];
  /** Bar for bar. */
  readonly played: readonly Played[];
}

function togetherOr(players: readonly TablePlayer[], title: string): TablesOutcome {
  const first = players[0];
  if (!first) return { ok: false, problem: { code: 'table.empty' }, table: 0 };
  const beats = first.played.map((_, index) => beatsAt(players, index));
  for (const table of [...players.keys()]) {
    try {
      tempoMapOf(players.slice(0, table + 1), beats);
    } catch (error) {
      return refusedBy(error, table);
    }
  }
  return { ok: true, value: folded(musicOf(players, { title, beats, tempo: tempoMapOf(players, beats) })) };
}

function refusedBy(error: unknown, table: number): TablesOutcome {
  if (error instanceof Refusal) return { ok: false, problem: error.problem, table };
  throw error;
}

const USUAL_BEATS = fraction(4);

function beatsAt(players: readonly TablePlayer[], index: number): Fraction {
  for (const { played } of players) {
    const beats = played[index]?.entry.beats;
    if (beats) return beats;
  }
  return USUAL_BEATS;
}

interface Common {
  readonly title: string;
  /** Quarters of each bar. */
  readonly beats: readonly Fraction[];
  readonly tempo: TempoMap;
}

function musicOf(players: readonly TablePlayer[], { title, beats, tempo }: Common): Music {
  const ticks = ticksFor(beats);
  const numbers = players[0]?.played ?? [];
  return {
    title,
    ticksPerQuarter: ticks.perQuarter,
    bars: numbers.map(({ number }, index) => ({
      number: String(number),
      ticks: inTicks(beats[index] ?? USUAL_BEATS, ticks),
    })),
    tempos: tempo.tempos,
    movements: [0],
    order: [[0, numbers.length - 1]],
    afterJump: null,
    ambiguous: false,
    parts: players.map((player, index) => partOf(player, index, { beats, ticks })),
    remarks: tempo.assumed ? [{ code: 'tempo.assumed', bar: null }] : [],
  };
}

const TYPED_ID = 'typed';

/** Whether all of its parts were typed as tables. */
export function isTyped({ parts }: Music): boolean {
  return parts.every(isTypedPart);
}

export function isTypedPart({ id }: Pick<Part, 'id'>): boolean {
  return id === TYPED_ID || id.startsWith(`${TYPED_ID}-`);
}

/** For a part that is typed beside others. */
export function freeTypedId({ parts }: Pick<Music, 'parts'>): string {
  const taken = new Set(parts.map(({ id }) => id));
  for (let number = 1; ; number += 1) if (!taken.has(typedId(number))) return typedId(number);
}

function typedId(number: number): string {
  return number === 1 ? TYPED_ID : `${TYPED_ID}-${number}`;
}

function partOf(
  { name, entries, played }: TablePlayer,
  index: number,
  { beats, ticks }: { readonly beats: readonly Fraction[]; readonly ticks: Ticks },
): Part {
  const silences = played.flatMap(({ number, entry }, bar): BarSilence[] =>
    entry.free.some(([from, to]) => number >= from && number <= to)
      ? [[bar, 0, inTicks(beats[bar] ?? USUAL_BEATS, ticks)]]
      : [],
  );
  return {
    id: typedId(index + 1),
    name,
    silences,
    pages: pagesOf(entries),
    ownPages: true,
    instruments: [],
    transpositions: [],
  };
}

/** Rows that follow one another on one page are one. */
function pagesOf(entries: readonly Entry[]): PageStart[] {
  const pages: PageStart[] = [];
  let bar = 0;
  for (const { page, first, last } of entries) {
    if (pages.at(-1)?.page !== page) pages.push({ page, bar });
    bar += last - first + 1;
  }
  return pages;
}
