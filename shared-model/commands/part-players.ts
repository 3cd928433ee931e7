/** Which players parts are for, where the names of the instruments tell it beyond doubt. */

import type { Part } from '../document/music.ts';
import { partNameOf, type PartName } from '../score/parts/part-name.ts';

/** A player, and the names of what he may play: his own name, and his instruments'. */
export interface Playing {
  readonly id: string;
  readonly names: readonly string[];
}

interface Wanted extends PartName {
  readonly index: number;
}

interface Able {
  readonly id: string;
  readonly plays: readonly PartName[];
}

/** Several of them read one part, so that the second violin need not be the player of the second part. */
const SECTIONS: ReadonlySet<string> = new Set(['violin', 'viola', 'cello', 'double bass']);

/**
 * Index of the part to id of its player. Parts and players of one instrument are brought together, first those in the
 * same key, when there are as many of the one as of the other, or when the parts' numbers tell which player is meant.
 * `taken`: players who have a part already; `isOpen`: whether a part may be given.
 */
export function playersFor(
  parts: readonly Pick<Part, 'name'>[],
  players: readonly Playing[],
  taken: ReadonlySet<string>,
  isOpen: (part: number) => boolean,
): ReadonlyMap<number, string> {
  const wanted = parts.flatMap(({ name }, index): Wanted[] => {
    const said = isOpen(index) ? partNameOf(name) : null;
    return said ? [{ ...said, index }] : [];
  });
  const able = players.map(ableOf);
  const found = new Map<number, string>();
  for (const inKey of [true, false]) {
    for (const group of groupsOf(wanted, inKey)) {
      const busy = new Set([...taken, ...found.values()]);
      const left = group.filter(({ index }) => !found.has(index));
      for (const [part, player] of matched(left, able, busy, inKey)) found.set(part, player);
    }
  }
  return found;
}

function ableOf({ id, names: [own = '', ...instruments] }: Playing): Able {
  const said = partNameOf(own);
  if (said) return { id, plays: [said] };
  return { id, plays: instruments.flatMap((name) => partNameOf(name) ?? []) };
}

function groupsOf(wanted: readonly Wanted[], inKey: boolean): Wanted[][] {
  const groups = new Map<string, Wanted[]>();
  for (const part of wanted) {
    if (inKey && part.key === null) continue;
    const key = inKey ? `${part.kind} ${part.key}` : part.kind;
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  return [...groups.values()];
}

interface Candidate {
  readonly id: string;
  readonly number: number | null;
}

function matched(
  parts: readonly Wanted[],
  able: readonly Able[],
  busy: ReadonlySet<string>,
  inKey: boolean,
): (readonly [number, string])[] {
  const [first] = parts;
  if (!first) return [];
  const all = able.flatMap(({ id, plays }): Candidate[] => {
    const said = plays.find(({ kind, key }) => kind === first.kind && (!inKey || key === first.key));
    return said ? [{ id, number: said.number }] : [];
  });
  const free = all.filter(({ id }) => !busy.has(id));
  return byNumbers(parts, all, busy) ?? inOrder(parts, free) ?? [];
}

/** Null: some part has no number, or a number that does not tell who is meant. */
function byNumbers(
  parts: readonly Wanted[],
  all: readonly Candidate[],
  busy: ReadonlySet<string>,
): (readonly [number, string])[] | null {
  const pairs = parts.map(({ kind, number, index }) => {
    const player = number === null ? undefined : numbered(all, number, SECTIONS.has(kind), parts);
    return player !== undefined && !busy.has(player) ? ([index, player] as const) : null;
  });
  const known = pairs.filter((pair) => pair !== null);
  const apart = new Set(known.map(([, player]) => player)).size;
  return known.length === parts.length && apart === parts.length ? known : null;
}

/** Who has that number; where no player has one, who comes in that place. */
function numbered(
  all: readonly Candidate[],
  number: number,
  isSection: boolean,
  parts: readonly Wanted[],
): string | undefined {
  const [only, another] = all.filter((player) => player.number === number);
  if (only) return another ? undefined : only.id;
  if (all.some((player) => player.number !== null)) return undefined;
  const highest = parts.reduce((most, part) => Math.max(most, part.number ?? 0), 0);
  return isSection && all.length > Math.max(2, highest) ? undefined : all[number - 1]?.id;
}

/** As many players as parts: by their numbers, and without numbers as they come. Null: not as many, or at odds. */
function inOrder(parts: readonly Wanted[], free: readonly Candidate[]): (readonly [number, string])[] | null {
  if (parts.length !== free.length) return null;
  const players = free.toSorted(byNumber);
  const pairs = parts.toSorted(byNumber).map((part, place) => ({ part, player: players[place] }));
  const atOdds = pairs.some(
    ({ part, player }) =>
      part.number !== null && player && player.number !== null && part.number !== player.number,
  );
  if (atOdds) return null;
  return pairs.flatMap(({ part, player }) => (player ? [[part.index, player.id] as const] : []));
}

function byNumber(a: Pick<Candidate, 'number'>, b: Pick<Candidate, 'number'>): number {
  return (a.number ?? 0) - (b.number ?? 0);
}
