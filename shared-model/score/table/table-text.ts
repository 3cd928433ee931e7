/** Music that was typed, back as the tables that give it: tabs between cells, so that a spreadsheet takes it, too. */

import type { Music, Part } from '../music.ts';
import { performanceOf } from '../music/performance.ts';
import { pageOfEachBar } from '../music/readings.ts';
import { atMost } from '../../words/numbers.ts';

const HEAD = ['page', 'first bar', 'last bar', 'tempo', 'beats', 'free hands'];

/** A row for each stretch as it is played. The table of one part of music for which `isTyped` holds. One of its tables gives the tempo. */
export function tableOf(music: Music, part: Part): string {
  const pages = pageOfEachBar(part.pages, music.bars.length);
  const tempos = part === leaderOf(music) ? music.tempos : [];
  const begins = new Set([...part.pages, ...tempos].map(({ bar }) => bar));
  const free = new Set(part.silences.map(([bar]) => bar));
  const rows: string[][] = [];
  const { played } = performanceOf(music);
  let from = played[0] ?? 0;
  for (const [index, to] of played.entries()) {
    const next = played[index + 1];
    if (next === to + 1 && !begins.has(next) && follows(music, to)) continue;
    rows.push([
      String(pages[from]),
      ...cellsOf({ ...music, tempos }, from, to),
      freeCell(music, { from, to, free }),
    ]);
    from = next ?? 0;
  }
  return [HEAD, ...rows].map((row) => row.join('\t')).join('\n');
}

/** The first part whose rows change where the tempo does, else the first of all. */
function leaderOf({ parts, tempos }: Music): Part | undefined {
  const isWhole = ({ pages }: Part) => tempos.every((tempo) => pages.some(({ bar }) => bar === tempo.bar));
  return parts.find(isWhole) ?? parts[0];
}

/** The next bar has the number and the length to go on in the same row. */
function follows({ bars }: Music, bar: number): boolean {
  const [here, next] = [bars[bar], bars[bar + 1]];
  return next !== undefined && Number(next.number) === Number(here?.number) + 1 && next.ticks === here?.ticks;
}

function cellsOf({ bars, tempos, ticksPerQuarter, remarks }: Music, from: number, to: number): string[] {
  const tempo = tempos.findLast(({ bar }) => bar <= from);
  const assumed = remarks.some(({ code }) => code === 'tempo.assumed');
  return [
    bars[from]?.number ?? '',
    bars[to]?.number ?? '',
    tempo && !assumed ? atMost(tempo.quartersPerMinute, 4) : '',
    atMost((bars[from]?.ticks ?? 0) / ticksPerQuarter, 4),
  ];
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  /** Bars in which the player is silent. */
  readonly free: ReadonlySet<number>;
}

function freeCell({ bars }: Music, { from, to, free }: Stretch): string {
  const runs: string[] = [];
  for (let bar = from; bar <= to; bar += 1) {
    if (!free.has(bar)) continue;
    const begin = bar;
    while (bar < to && free.has(bar + 1)) bar += 1;
    const [first, last] = [bars[begin]?.number ?? '', bars[bar]?.number ?? ''];
    runs.push(first === last ? first : `${first}-${last}`);
  }
  return runs.join(', ');
}
