/** Small planning instances by seed, on a grid of whole seconds, for comparison with other ways of solving them. */

import type {
  FreeWindow,
  PlanInstance,
  PlanPlayer,
  PlanStation,
  StationReach,
} from '#model/pages/planner/instance.ts';
import type { PageReading } from '#model/score/time-line.ts';
import { diceOf, type Dice } from './seeded.ts';

export interface Size {
  readonly pages: number;
  readonly players: number;
  readonly stations: number;
}

/**
 * Two by two the players face each other over back-to-back pairs that they share. Every page takes 20 to 45 s; a rest
 * of 4 to 14 s comes every half minute or so, mostly not where a page ends.
 */
export function orchestraLike(seed: number, { pages, players, stations }: Size): PlanInstance {
  const dice = diceOf(seed);
  const desks = Math.ceil(players / 2);
  const people = Array.from({ length: players }, (_, index) => player(dice, `p${index}`, pages));
  return {
    players: people,
    stations: Array.from({ length: stations }, (_, index) => {
      const desk = index % desks;
      const [left, right] = [people[2 * desk], people[2 * desk + 1]];
      return right && left ? pair(index, left.id, right.id) : single(index, left?.id ?? '');
    }),
  };
}

function player(dice: Dice, id: string, pages: number): PlanPlayer {
  const readings: PageReading[] = [];
  let time = 0;
  for (let page = 1; page <= pages; page++) {
    const to = time + dice.whole(20, 45);
    readings.push({ page, from: time, to });
    time = to;
  }
  const free: FreeWindow[] = [];
  for (let at = dice.whole(5, 25); at < time; at += dice.whole(12, 40)) {
    const to = at + dice.whole(4, 14);
    free.push({ from: at, to, hands: ['left', 'right'], silent: true });
    at = to;
  }
  return { id, pages, readings, free, lookAhead: 2 };
}

function pair(index: number, left: string, right: string): PlanStation {
  return {
    id: `s${index}`,
    order: index,
    sides: [
      { reader: left, width: 2, position: index },
      { reader: right, width: 2, position: -index },
    ],
    bindings: ['ridge', 'loose'],
    reach: [reachOf(left, 0), reachOf(right, 1)],
  };
}

function single(index: number, reader: string): PlanStation {
  return {
    id: `s${index}`,
    order: index,
    sides: [{ reader, width: 2, position: index }],
    bindings: ['book', 'loose'],
    reach: [reachOf(reader, 0)],
  };
}

function reachOf(id: string, side: 0 | 1): StationReach {
  return { player: id, hand: 'right', side, seconds: 2 };
}

/** A handful of readings, with repeats, tight rests and people who turn for others. */
export function tiny(seed: number): PlanInstance {
  const dice = diceOf(seed);
  const count = dice.whole(1, 2);
  const players = Array.from({ length: count }, (_, index) =>
    tinyPlayer(dice, `p${index}`, count === 1 ? 6 : 4),
  );
  const stations = Array.from({ length: dice.whole(1, 2) }, (_, index) => tinyStation(dice, index, players));
  return { players, stations };
}

function tinyPlayer(dice: Dice, id: string, most: number): PlanPlayer {
  const readings: PageReading[] = [];
  let [time, page] = [0, 1];
  const count = dice.whole(3, most);
  for (let index = 0; index < count; index++) {
    const to = time + dice.whole(3, 8);
    readings.push({ page, from: time, to });
    time = to;
    page = dice.chance(0.2) ? dice.whole(1, page) : Math.min(page + 1, count);
  }
  const free: FreeWindow[] = [];
  for (let at = dice.whole(0, 5); at < time;) {
    const to = at + dice.whole(1, 6);
    const silent = dice.chance(0.85);
    free.push({ from: at, to, hands: dice.chance(0.6) ? ['left', 'right'] : ['left'], silent });
    at = to + dice.whole(1, 5);
  }
  return {
    id,
    pages: count,
    readings: readings.filter(({ page: own }) => own <= count),
    free,
    lookAhead: dice.whole(0, 1),
  };
}

function tinyStation(dice: Dice, index: number, players: readonly PlanPlayer[]): PlanStation {
  const [first, second] = players;
  const isPair = dice.chance(0.7);
  const width = (): number => dice.whole(1, 2);
  const readers = isPair ? [first?.id ?? null, second?.id ?? null] : [dice.pick(players).id];
  const side = (reader: string | null, position: number) => ({
    reader,
    width: isPair ? width() : 2,
    position,
  });
  const reach: StationReach[] = [];
  for (const { id } of players)
    for (const hand of ['left', 'right'] as const)
      for (const from of isPair ? ([0, 1] as const) : ([0] as const))
        if (dice.chance(readers[from] === id ? 0.85 : 0.25))
          reach.push({ player: id, hand, side: from, seconds: dice.whole(1, 2) });
  return {
    id: `s${index}`,
    order: index,
    sides: isPair
      ? [side(readers[0] ?? null, index), side(readers[1] ?? null, -index)]
      : [side(readers[0] ?? null, index)],
    bindings: isPair ? ['ridge', 'loose'] : dice.chance(0.5) ? ['book', 'loose'] : ['concertina', 'loose'],
    reach,
  };
}

/** Mostly one desk, of two to four pages, for one reader, with pages that come back more often than in `tiny`. */
export function tinyDesks(seed: number): PlanInstance {
  const dice = diceOf(seed);
  const base = tinyPlayer(dice, 'p0', 8);
  const readings = base.readings.map((reading) =>
    dice.chance(0.2) ? { ...reading, page: dice.whole(1, base.pages) } : reading,
  );
  const free = [...base.free, ...rests(dice, readings)];
  const stations = Array.from({ length: dice.chance(0.15) ? 2 : 1 }, (_, index): PlanStation => ({
    id: `s${index}`,
    order: index,
    sides: [{ reader: 'p0', width: index > 0 ? 2 : dice.whole(2, 4), position: index }],
    bindings: dice.chance(0.6) ? ['loose', 'book', 'concertina'] : ['concertina'],
    reach: [{ player: 'p0', hand: 'left', side: 0, seconds: dice.whole(1, 2) }],
  }));
  return { players: [{ ...base, readings, free, lookAhead: 0 }], stations };
}

/** Where some pages end. */
function rests(dice: Dice, readings: readonly PageReading[]): FreeWindow[] {
  return readings.flatMap(({ to }): FreeWindow[] =>
    dice.chance(0.5) ? [{ from: to - 1, to: to + dice.whole(1, 3), hands: ['left'], silent: true }] : [],
  );
}
