/** An hour of music for many players who turn all the time, with its kept plan: what a time strip has most to show of. */

import { documentOf, type Document } from '#model/document/document.ts';
import { asId } from '#model/document/ids.ts';
import type { KeptStation, KeptTurn } from '#model/document/kept-plan.ts';
import type { BarSilence, Music, Part } from '#model/document/music.ts';
import type { AnyRecord } from '#model/document/records.ts';
import {
  aConcert,
  aPagePlan,
  aPlatform,
  aPlayer,
  aScore,
  aSeatBlock,
  aSetup,
  aStand,
  SIDE,
} from '../helpers/build.ts';

export interface LongRun {
  readonly players: number;
  /** Each of `BAR_SECONDS`. */
  readonly bars: number;
  /** On a page, of which two lie open: every other one ends with a turn. */
  readonly barsPerPage: number;
}

/** An hour for 12 players, each of whom turns every 24 seconds: 1788 turns. */
export const HOUR: LongRun = { players: 12, bars: 1800, barsPerPage: 6 };

const BAR_SECONDS = 2;
const TICKS = 4;

export function longRun(size: LongRun): Document {
  const pages = Math.ceil(size.bars / size.barsPerPage);
  const indices = Array.from({ length: size.players }, (_, index) => index);
  const leaves = Math.ceil(pages / 2) - 1;
  const people = indices.flatMap((index): AnyRecord[] => {
    const [x, y] = [(index - size.players / 2) * 1200, 2500 + (index % 3) * 1300];
    const reader = playerId(index);
    return [
      aPlayer({ id: reader, name: `Part ${index + 1}`, x, y }),
      aStand({ id: standId(index), x, y: y - 600, sides: [{ ...SIDE, reader }] }),
    ];
  });
  return documentOf([
    aConcert({ name: 'An hour of turns' }),
    aSetup(),
    aPlatform({
      outline: [
        { x: -9000, y: 0 },
        { x: 9000, y: 0 },
        { x: 9000, y: 8000 },
        { x: -9000, y: 8000 },
      ],
    }),
    aSeatBlock({ rows: 6, y: -2000 }),
    ...people,
    aScore({ music: musicOf(size), players: indices.map(playerId) }),
    aPagePlan({
      stations: indices.map((index) => bookOf(index, leaves)),
      turns: turnsOf(size, leaves),
    }),
  ]);
}

const playerId = (index: number) => asId<'player'>(`player-${index + 1}`);
const standId = (index: number) => asId<'stand'>(`stand-${index + 1}`);

function musicOf({ players, bars, barsPerPage }: LongRun): Music {
  return {
    title: 'An hour',
    ticksPerQuarter: 1,
    bars: Array.from({ length: bars }, (_, bar) => ({ number: String(bar + 1), ticks: TICKS })),
    tempos: [{ bar: 0, at: 0, quartersPerMinute: (60 * TICKS) / BAR_SECONDS, source: 'typed' }],
    movements: [0],
    order: [[0, bars - 1]],
    afterJump: null,
    ambiguous: false,
    parts: Array.from({ length: players }, (_, index) => partOf(index, bars, barsPerPage)),
    remarks: [],
  };
}

/** A rest of a bar at the end of every other page, and one somewhere else. */
function partOf(index: number, bars: number, barsPerPage: number): Part {
  const pages = Array.from({ length: Math.ceil(bars / barsPerPage) }, (_, page) => ({
    page: page + 1,
    bar: page * barsPerPage,
  }));
  const silences = Array.from({ length: bars }, (_, bar) => bar)
    .filter((bar) => bar % (2 * barsPerPage) === 2 * barsPerPage - 1 || (bar + index) % 7 === 0)
    .map((bar): BarSilence => [bar, 0, TICKS]);
  return {
    id: `P${index + 1}`,
    name: `Part ${index + 1}`,
    silences,
    pages,
    ownPages: true,
    instruments: [],
    transpositions: [],
  };
}

function bookOf(index: number, leaves: number): KeptStation {
  const views = Array.from({ length: leaves + 1 }, (_, state) => [2 * state + 1, 2 * state + 2]);
  return { station: standId(index), kind: 'book', leaves, pagesAcross: [2], stackSide: 0, views: [views] };
}

/** In the last bar of every other page. */
function turnsOf({ players, barsPerPage }: LongRun, leaves: number): KeptTurn[] {
  return Array.from({ length: leaves }, (_, state) => state).flatMap((state) =>
    Array.from({ length: players }, (_, index) => ({
      station: standId(index),
      player: playerId(index),
      hand: 'right' as const,
      place: 2 * barsPerPage * (state + 1) - 0.9 + index / 1000,
      fromState: state,
      toState: state + 1,
    })),
  );
}
