/**
 * A table for one part of music that is there already, such as a part that a score lacks: its pages and the bars in which
 * the player does not play. Rows go through the bars as they are printed, from the first to the last and each once: what
 * is repeated, how long bars are and how fast they go, the music knows.
 */

import { MOST_ROWS, MOST_TABLE } from '../limits.ts';
import type { BarSilence, Music, PageStart, Part } from '../music.ts';
import { outcomeOf, Refusal, type Outcome } from '../problem.ts';
import { isAll, nameFrom, ordinalOf } from './bar-cells.ts';
import { rowsOf } from './cells.ts';
import { columnWords, refuseSpare, withColumns, type Column, type Table } from './columns.ts';
import { PART_COLUMNS, saidAlready } from './grid.ts';
import { t } from '../../words/say.ts';

/** What a table says of a part. */
export type TabledPart = Pick<Part, 'pages' | 'silences' | 'ownPages'>;

const MOST_PAGE = 999;

/**
 * `before`: the part that the table replaces, if any; the rests in bars of which the table says nothing new stay as they
 * are, to the tick. Never throws; refusals name the row and the column.
 */
export function partFromTable(music: Music, text: string, before: Part | null): Outcome<TabledPart> {
  return outcomeOf(() => {
    if (text.length > MOST_TABLE) throw new Refusal({ code: 'table.rows', most: MOST_ROWS });
    const table = withColumns(rowsOf(text));
    if (table.rows.length > MOST_ROWS) throw new Refusal({ code: 'table.rows', most: MOST_ROWS });
    const stretches = stretchesOf(music, table);
    const free = new Set(stretches.flatMap((stretch) => stretch.free));
    return { pages: pagesOf(stretches), silences: silencesOf(music, free, before), ownPages: true };
  });
}

/** Bars by index, both ends included. */
interface Stretch {
  readonly page: number;
  readonly first: number;
  readonly last: number;
  readonly free: readonly number[];
}

function stretchesOf(music: Music, { columns, rows }: Table): Stretch[] {
  const stretches: Stretch[] = [];
  rows.forEach(({ line, cells }, index) => {
    refuseSpare({ line, cells }, columns.length);
    const row = new PartRow(music, line, (column) => cells[columns.indexOf(column)] ?? '');
    const stretch = row.from((stretches.at(-1)?.last ?? -1) + 1);
    if (index === rows.length - 1) row.isToEnd(stretch.last);
    stretches.push(stretch);
  });
  return stretches;
}

/** One row, and what is wrong with it. */
class PartRow {
  constructor(
    private readonly music: Music,
    private readonly line: number,
    private readonly cell: (column: Column) => string,
  ) {}

  /** `first`: the bar behind those of the rows before. */
  from(first: number): Stretch {
    for (const column of ['tempo', 'seconds', 'beats'] as const)
      if (this.cell(column) !== '') throw saidAlready(this.line, column, this.cell(column));
    const last = this.last(this.first(first));
    return { page: this.page(), first, last, free: this.free(first, last) };
  }

  isToEnd(last: number): void {
    const end = this.music.bars.length - 1;
    if (last === end) return;
    throw this.bad('last bar', t`the music goes on to ${this.words(end)}; give rows as far as that`);
  }

  private page(): number {
    const page = /^\d{1,3}$/.test(this.cell('page')) ? Number(this.cell('page')) : 0;
    if (page >= 1) return page;
    throw this.bad('page', t`write a whole number from 1 to ${MOST_PAGE}`);
  }

  private first(first: number): number {
    if (first >= this.music.bars.length)
      throw this.bad('first bar', t`the row before ends with the last bar of the music`);
    if (this.named(this.cell('first bar'), first, first) === first) return first;
    const advice =
      first === 0
        ? t`the music begins with ${this.words(0)}`
        : t`the row before ends with ${this.words(first - 1)}, so this one begins with ${this.words(first)}`;
    throw this.bad('first bar', advice);
  }

  private last(first: number): number {
    const end = this.music.bars.length - 1;
    const last = this.named(this.cell('last bar'), first, end);
    if (last !== null) return last;
    throw this.bad('last bar', t`write a bar from ${this.words(first)} to ${this.words(end)}`);
  }

  private free(first: number, last: number): number[] {
    const text = this.cell('free hands');
    if (text === '') return [];
    if (isAll(text)) return range(first, last);
    let after = first;
    return text.split(/[,;]/).flatMap((piece) => {
      const [begin = '', end = begin, ...more] = piece.split(/[-\u2013]/).map((name) => name.trim());
      const from = this.named(begin, after, last);
      const to = from === null ? null : this.named(end, from, last);
      if (from === null || to === null || more.length > 0) {
        const advice = t`write bars from ${this.words(after)} to ${this.words(last)} in their order`;
        throw this.bad('free hands', advice);
      }
      after = to;
      return range(from, to);
    });
  }

  /** The first bar of that name between two; null: there is none. */
  private named(name: string, from: number, to: number): number | null {
    const ordinal = ordinalOf(name);
    if (ordinal !== null) return ordinal >= from && ordinal <= to ? ordinal : null;
    for (let bar = from; bar <= to; bar += 1) if (this.music.bars[bar]?.number === name.trim()) return bar;
    return null;
  }

  private words(bar: number): string {
    const number = this.music.bars[bar]?.number ?? '';
    return number === '' ? `#${bar + 1}` : t`bar ${number}`;
  }

  private bad(column: Column, advice: string): Refusal {
    const given = this.cell(column).slice(0, 40);
    return new Refusal({ code: 'table.cell', row: this.line, column: columnWords(column), given, advice });
  }
}

/** Rows that follow one another on one page are one. */
function pagesOf(stretches: readonly Stretch[]): PageStart[] {
  const begins = stretches.filter(({ page }, index) => stretches[index - 1]?.page !== page);
  return begins.map(({ page, first }) => ({ page, bar: first }));
}

function silencesOf({ bars }: Music, free: ReadonlySet<number>, before: Part | null): BarSilence[] {
  const silent = before ? silentBars({ bars }, before) : new Set<number>();
  const kept = (before?.silences ?? []).filter(([bar]) => free.has(bar) === silent.has(bar));
  const added = [...free]
    .filter((bar) => !silent.has(bar))
    .map((bar): BarSilence => [bar, 0, bars[bar]?.ticks ?? 0]);
  return [...kept, ...added].toSorted((a, b) => a[0] - b[0]);
}

/** Bars in which the part is silent from end to end. */
function silentBars({ bars }: Pick<Music, 'bars'>, { silences }: Part): Set<number> {
  const whole = silences.filter(([bar, from, to]) => from === 0 && to === bars[bar]?.ticks && to > 0);
  return new Set(whole.map(([bar]) => bar));
}

function range(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, index) => from + index);
}

/** The table that `partFromTable` reads as the part; of a part whose pages are not known a row with all bars. */
export function tableOfPart(music: Music, part: Part | null): string {
  const pages = part?.ownPages ? part.pages : [{ page: 1, bar: 0 }];
  const silent = part ? silentBars(music, part) : new Set<number>();
  const rows = pages.map(({ page, bar }, index) => {
    const last = (pages[index + 1]?.bar ?? music.bars.length) - 1;
    return [
      String(page),
      nameFrom(music, bar, bar),
      nameFrom(music, last, bar),
      freeCell(music, { first: bar, last, silent }),
    ];
  });
  return [PART_COLUMNS, ...rows].map((row) => row.join('\t')).join('\n');
}

interface Page {
  readonly first: number;
  readonly last: number;
  readonly silent: ReadonlySet<number>;
}

function freeCell(music: Music, { first, last, silent }: Page): string {
  const runs: string[] = [];
  let after = first;
  for (let bar = first; bar <= last; bar += 1) {
    if (!silent.has(bar)) continue;
    const begin = bar;
    while (bar < last && silent.has(bar + 1)) bar += 1;
    const from = nameFrom(music, begin, after);
    runs.push(begin === bar ? from : `${from}-${nameFrom(music, bar, begin)}`);
    after = bar;
  }
  return runs.join(', ');
}
