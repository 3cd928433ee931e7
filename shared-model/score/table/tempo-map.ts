/** How fast a piece goes whose players typed tables: by the first table that says so, and no other may contradict it. */

import type { Fraction } from '../fraction.ts';
import { FASTEST_TEMPO, SLOWEST_TEMPO } from '../limits.ts';
import { ASSUMED_TEMPO, type Tempo } from '../music.ts';
import { Refusal } from '../problem.ts';
import { atMost } from '../../words/numbers.ts';
import { t } from '../../words/say.ts';
import { columnWords } from './columns.ts';
import type { Entry } from './entries.ts';
import type { TablePlayer } from './part-table.ts';

export interface TempoMap {
  readonly tempos: readonly Tempo[];
  /** Nothing is said of some bars. */
  readonly assumed: boolean;
}

/** Players measure with a stopwatch: shares of the whole by which two tables may differ. Common practice, no source. */
const SLACK = 0.02;

/** `beats`: quarters of each bar. Throws `Refusal` when a table lasts longer or shorter than the one that leads. */
export function tempoMapOf(players: readonly TablePlayer[], beats: readonly Fraction[]): TempoMap {
  const leads = players.find(({ entries }) => entries.some(({ pace }) => pace !== null)) ?? players[0];
  if (!leads) return { tempos: [], assumed: true };
  const spans = spansOf(leads.entries, beats);
  const seconds = lengthOf(spans);
  for (const player of players) {
    const theirs = spansOf(player.entries, beats);
    const length = lengthOf(theirs);
    if (length === null || seconds === null || Math.abs(length - seconds) <= SLACK * seconds) continue;
    throw new Refusal({
      code: 'tables.length',
      seconds: length,
      other: { name: leads.name, seconds },
    });
  }
  return {
    tempos: spans.flatMap(({ bar, tempo }, index) =>
      index > 0 && spans[index - 1]?.tempo === tempo
        ? []
        : [{ bar, at: 0, quartersPerMinute: tempo ?? ASSUMED_TEMPO, source: 'typed' as const }],
    ),
    assumed: spans.some(({ tempo }) => tempo === null),
  };
}

/** A row: where it begins, how many quarters it has, and how fast they go; null: nothing is said, here or before. */
interface Span {
  readonly bar: number;
  readonly quarters: number;
  readonly tempo: number | null;
}

function spansOf(entries: readonly Entry[], beats: readonly Fraction[]): Span[] {
  const spans: Span[] = [];
  let bar = 0;
  for (const entry of entries) {
    const next = bar + entry.last - entry.first + 1;
    const quarters = beats.slice(bar, next).reduce((sum, { n, d }) => sum + n / d, 0);
    spans.push({ bar, quarters, tempo: tempoOf(entry, quarters) ?? spans.at(-1)?.tempo ?? null });
    bar = next;
  }
  return spans;
}

function tempoOf({ pace, row }: Entry, quarters: number): number | null {
  if (pace === null || 'quartersPerMinute' in pace) return pace?.quartersPerMinute ?? null;
  const tempo = (quarters * 60) / pace.seconds;
  if (tempo >= SLOWEST_TEMPO && tempo <= FASTEST_TEMPO) return tempo;
  throw new Refusal({
    code: 'table.cell',
    row,
    column: columnWords('seconds'),
    given: atMost(pace.seconds, 6),
    advice: t`${atMost(quarters, 6)} quarters in that time make ${atMost(threeDigits(tempo), 6)} a minute; ${SLOWEST_TEMPO} to ${FASTEST_TEMPO} are possible`,
  });
}

function threeDigits(value: number): number {
  return Number(value.toPrecision(3));
}

/** Null: not all of it is timed. */
function lengthOf(spans: readonly Span[]): number | null {
  let seconds = 0;
  for (const { quarters, tempo } of spans) {
    if (tempo === null) return null;
    seconds += (quarters * 60) / tempo;
  }
  return seconds;
}
