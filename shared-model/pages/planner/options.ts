/** What can be set at a station: a kind of binding, and how many pages wide. */

import type { BindingKind } from '../bindings/binding.ts';
import type { PlanInstance, PlanStation } from './instance.ts';

export interface StationOption {
  readonly kind: BindingKind;
  /** Leaves can be turned. */
  readonly turning: boolean;
  /** Pages side by side, by side of the station. */
  readonly across: readonly number[];
}

/** For each station what is set there; null: it is not used. */
export type Setting = readonly (StationOption | null)[];

/** Of a book a reader sees two pages at a time; of a concertina at least two, and a turn moves it on by two. */
const PAGES_IN_OPENING = 2;

export function optionsOf(station: PlanStation): StationOption[] {
  return [...turningOptions(station), ...looseOptions(station)];
}

function turningOptions({ sides, bindings }: PlanStation): StationOption[] {
  const widths = sides.filter(({ reader }) => reader !== null).map(({ width }) => width);
  const narrowest = widths.reduce((least, width) => Math.min(least, width), Infinity);
  if (widths.length === 0) return [];
  if (sides.length === 2)
    return bindings.includes('ridge')
      ? countTo(narrowest).map((k) => ({ kind: 'ridge', turning: true, across: [k, k] }))
      : [];
  const kind = bindings.find((candidate) => candidate === 'book' || candidate === 'concertina');
  if (!kind || narrowest < PAGES_IN_OPENING) return [];
  const wide = bindings.includes('concertina') ? countTo(narrowest).filter((k) => k > PAGES_IN_OPENING) : [];
  return [
    ...wide.map((k): StationOption => ({ kind: 'concertina', turning: true, across: [k] })),
    { kind, turning: true, across: [PAGES_IN_OPENING] },
  ];
}

/** How many places of a view one turn moves it on by: all of them, unless the paper hangs together beyond. */
export function placesATurn({ kind, across }: Pick<StationOption, 'kind' | 'across'>): number {
  const all = across.reduce((sum, width) => sum + width, 0);
  return kind === 'concertina' ? Math.min(PAGES_IN_OPENING, all) : all;
}

/** What it shows stays in part when a leaf is turned. */
export function isStrip(option: Pick<StationOption, 'kind' | 'across'>): boolean {
  return placesATurn(option) < option.across.reduce((sum, width) => sum + width, 0);
}

function looseOptions({ sides, bindings }: PlanStation): StationOption[] {
  if (!bindings.includes('loose')) return [];
  const widest = sides.reduce(
    (most, { reader, width }) => (reader === null ? most : Math.max(most, width)),
    0,
  );
  return countTo(widest).map((k) => ({
    kind: 'loose',
    turning: false,
    across: sides.map(({ reader, width }) => (reader === null ? 0 : Math.min(k, width))),
  }));
}

function countTo(most: number): number[] {
  return Array.from({ length: Math.max(0, Math.floor(most)) }, (_, index) => most - index);
}

/**
 * What no other option of the station does at least as well, as far as turns, stations and panels go. A wider concertina shows all
 * that a narrower one, or a book, shows with the same paper.
 */
export function mostCapable(options: readonly StationOption[]): StationOption[] {
  return options.filter(
    (option, index) =>
      !options.some(
        (other, place) =>
          place !== index && coversOption(other, option) && (place < index || !coversOption(option, other)),
      ),
  );
}

function coversOption(a: StationOption, b: StationOption): boolean {
  return (a.turning || !b.turning) && a.across.every((width, side) => width >= (b.across[side] ?? 0));
}

/** Pages side by side before the reader who has most. */
export function widthOf({ players, stations }: PlanInstance, setting: Setting): number {
  return players.reduce((most, { id }) => Math.max(most, rowOf(stations, setting, id)), 0);
}

function rowOf(stations: readonly PlanStation[], setting: Setting, reader: string): number {
  let row = 0;
  for (const [index, station] of stations.entries())
    for (const [side, { reader: who }] of station.sides.entries())
      if (who === reader) row += setting[index]?.across[side] ?? 0;
  return row;
}

export function stationsIn(setting: Setting): number {
  return setting.filter((option) => option !== null).length;
}

export function settingKey(setting: Setting): string {
  return setting.map((option) => (option ? `${option.kind}${option.across.join('+')}` : '-')).join(' ');
}

/**
 * Two stations serve equally well when the same people read from places of the same width and turn in the same time:
 * they differ in nothing but where in the row they stand.
 */
export function servesAlike(a: PlanStation, b: PlanStation): boolean {
  return signature(a) === signature(b);
}

function signature({ sides, bindings, reach }: PlanStation): string {
  return JSON.stringify([
    sides.map(({ reader, width }) => [reader, width]),
    bindings.toSorted(),
    reach.map(({ player, hand, side, seconds }) => JSON.stringify([player, hand, side, seconds])).toSorted(),
  ]);
}
