/** One group of players and one choice of bindings, compiled to indices for the search. */

import type { Seconds } from '../../score/time-line.ts';
import type { SideIndex } from '../bindings/binding.ts';
import { earliestEnd, type Chance, type Chances } from './chances.ts';
import { isStrip, placesATurn, servesAlike, type Setting, type StationOption } from './options.ts';
import type { PagePin, PlanInstance, TurnPin } from './instance.ts';
import type { Need } from './needs.ts';

export interface ProblemStation {
  /** Index into the instance's stations. */
  readonly index: number;
  readonly option: StationOption;
  /** First cell of each side within a view, and after the last: `[0, k]` or `[0, k, 2k]`. */
  readonly offsets: readonly number[];
  /** Cells of a view that one turn moves it on by: all, or two of a wider concertina, whose places are then no longer alike. */
  readonly step: number;
  /** Indexed by the side on which the leaf lies. */
  readonly chances: readonly [readonly Chance[], readonly Chance[]];
  /** Classes of "last needed until": those alike in when a leaf can be turned next have the same. By index into `times`. */
  readonly readyClass: readonly number[];
  /** The station before this one in the problem serves as well as this, so this one is not used first. */
  readonly afterTwin: boolean;
  readonly pins: readonly PagePin[];
}

/** A place where a player reads. */
export interface ReadingPlace {
  /** Index into the problem's stations. */
  readonly station: number;
  readonly side: SideIndex;
  /** Pages to the left of it in the reader's row. */
  readonly offset: number;
  /** Pages side by side there. */
  readonly across: number;
}

export interface Problem {
  readonly instance: PlanInstance;
  readonly needs: readonly Need[];
  readonly stations: readonly ProblemStation[];
  /** By player of the instance, from his left. */
  readonly places: readonly (readonly ReadingPlace[])[];
  /** Ends of needs in order, with -Infinity first: "never needed yet". */
  readonly times: readonly Seconds[];
  /** By need: the index into `times` of its end. */
  readonly endIndex: readonly number[];
  /** By need: nobody needs that page after it. */
  readonly isLast: readonly boolean[];
  /** By need: it is of the page that its player needed last before it. */
  readonly isSamePage: readonly boolean[];
  /** Index of the need, then player: how many different pages he needs from there on. */
  readonly ahead: readonly (readonly number[])[];
  readonly turnPins: readonly TurnPin[];
}

export interface Compiled {
  readonly instance: PlanInstance;
  readonly needs: readonly Need[];
  readonly chances: Chances;
}

/** The problem of the players whose indices are in `group` on the stations that the setting uses. */
export function problemOf(compiled: Compiled, group: ReadonlySet<number>, setting: Setting): Problem {
  const { instance } = compiled;
  const needs = compiled.needs.filter(({ player }) => group.has(player));
  const times = [-Infinity, ...new Set(needs.map(({ to }) => to).toSorted((a, b) => a - b))];
  const indexOfTime = new Map(times.map((time, index) => [time, index]));
  const stations = stationsOf(compiled, setting, times);
  return {
    instance,
    needs,
    stations,
    places: instance.players.map(({ id }) => placesOf(instance, stations, id)),
    times,
    endIndex: needs.map(({ to }) => indexOfTime.get(to) ?? 0),
    isLast: lastNeeds(needs),
    isSamePage: samePages(needs),
    ahead: pagesAhead(needs, instance.players.length),
    turnPins: (instance.pins ?? []).filter(
      (pin) =>
        pin.kind === 'turn' && stations.some(({ index }) => instance.stations[index]?.id === pin.station),
    ) as TurnPin[],
  };
}

function stationsOf(
  { instance, chances }: Compiled,
  setting: Setting,
  times: readonly Seconds[],
): ProblemStation[] {
  const stations: ProblemStation[] = [];
  for (const [index, option] of setting.entries()) {
    const station = instance.stations[index];
    if (!option || !station) continue;
    const own = chances[index] ?? [[], []];
    const before = stations.at(-1);
    const twin = before && instance.stations[before.index];
    const pinned = (instance.pins ?? []).some(
      (pin) => pin.station === station.id || pin.station === twin?.id,
    );
    const offsets = [0];
    for (const width of option.across) offsets.push((offsets.at(-1) ?? 0) + width);
    stations.push({
      index,
      option,
      offsets,
      step: placesATurn(option),
      chances: own,
      readyClass: pinned ? times.map((_, place) => place) : readyClasses(own, times),
      afterTwin: !pinned && twin !== undefined && alike(before?.option, option) && servesAlike(twin, station),
      pins: pagePinsOf(instance, station.id, option),
    });
  }
  return stations;
}

/** In a wide concertina a page that is pinned to no place of a view gets the first that no other pin takes. */
function pagePinsOf({ pins = [] }: PlanInstance, station: string, option: StationOption): PagePin[] {
  const own = pins.flatMap((pin) => (pin.kind === 'page' && pin.station === station ? [pin] : []));
  if (!isStrip(option)) return own;
  const step = placesATurn(option);
  const placeOf = ({ state, slot }: PagePin): number => state * step + (slot ?? -Infinity);
  const taken = new Set(own.map(placeOf));
  return own.map((pin) => {
    if (pin.slot !== null) return pin;
    let slot = 0;
    while (taken.has(placeOf({ ...pin, slot }))) slot++;
    taken.add(placeOf({ ...pin, slot }));
    return { ...pin, slot };
  });
}

function alike(a: StationOption | undefined, b: StationOption): boolean {
  return a?.kind === b.kind && a.across.every((width, side) => width === b.across[side]);
}

/** Times between which no chance begins or runs out are one: the last of them stands for all. */
function readyClasses(chances: ProblemStation['chances'], times: readonly Seconds[]): number[] {
  const keys = times.map((time) => chances.map((side) => earliestEnd(side, time)).join(' '));
  const classes = keys.map((_, index) => index);
  for (let index = keys.length - 2; index >= 0; index--)
    if (keys[index] === keys[index + 1]) classes[index] = classes[index + 1] ?? index;
  return classes;
}

function placesOf(
  instance: PlanInstance,
  stations: readonly ProblemStation[],
  reader: string,
): ReadingPlace[] {
  const sides = stations.flatMap((station, place) =>
    (instance.stations[station.index]?.sides ?? []).flatMap((side, index) =>
      side.reader === reader
        ? [
            {
              station: place,
              side: index as SideIndex,
              position: side.position,
              width: station.option.across[index] ?? 0,
            },
          ]
        : [],
    ),
  );
  let row = 0;
  return sides
    .sort((a, b) => a.position - b.position)
    .map(({ station, side, width }) => {
      const offset = row;
      row += width;
      return { station, side, offset, across: width };
    });
}

function samePages(needs: readonly Need[]): boolean[] {
  const last = new Map<number, number>();
  return needs.map(({ player, page }) => {
    const isSame = last.get(player) === page;
    last.set(player, page);
    return isSame;
  });
}

function lastNeeds(needs: readonly Need[]): boolean[] {
  const seen = new Set<string>();
  return needs
    .toReversed()
    .map(({ player, page }) => {
      const key = `${player} ${page}`;
      const isLast = !seen.has(key);
      seen.add(key);
      return isLast;
    })
    .reverse();
}

function pagesAhead(needs: readonly Need[], players: number): number[][] {
  const isLast = lastNeeds(needs);
  let counts = Array.from({ length: players }, () => 0);
  const ahead = [counts];
  for (let index = needs.length - 1; index >= 0; index--) {
    const need = needs[index];
    if (need && isLast[index]) counts = counts.with(need.player, (counts[need.player] ?? 0) + 1);
    ahead.push(counts);
  }
  return ahead.reverse();
}
