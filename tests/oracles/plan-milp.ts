/**
 * Fewest turns of an instance as a mixed-integer linear programme for a general solver, with leaves that only go on. For each
 * station the times at which a turn could begin cut the performance into periods; a page is in view in a period or not, and
 * what is in view changes only where a turn is made.
 *
 * A turn may be moved to an earlier time until it meets the end of a need, of another turn or the beginning of a free
 * stretch; so if all turns take equally long, starts at such moments and whole turns later are enough.
 */

import { chancesOf, type Chance } from '#model/pages/planner/chances.ts';
import type { PlanInstance } from '#model/pages/planner/instance.ts';
import { needsOf, type Need } from '#model/pages/planner/needs.ts';
import { mostCapable, optionsOf, type StationOption } from '#model/pages/planner/options.ts';

/** In the CPLEX LP format, one programme for each choice of the most capable bindings: the least of their optima counts. */
export function programmesOf(instance: PlanInstance): string[] {
  let settings: StationOption[][] = [[]];
  for (const station of instance.stations)
    settings = settings.flatMap((so) => mostCapable(optionsOf(station)).map((option) => [...so, option]));
  return settings.map((setting) => new Programme(instance, setting).text());
}

interface Start {
  readonly name: string;
  readonly station: number;
  readonly at: number;
  readonly seconds: number;
  readonly player: number;
  readonly side: number;
}

class Programme {
  readonly #instance: PlanInstance;
  readonly #setting: readonly StationOption[];
  readonly #needs: readonly Need[];
  readonly #starts: readonly Start[];
  readonly #rows: string[] = [];
  readonly #binaries: string[] = [];
  readonly #shares: string[] = [];

  constructor(instance: PlanInstance, setting: readonly StationOption[]) {
    this.#instance = instance;
    this.#setting = setting;
    this.#needs = needsOf(instance);
    this.#starts = setting.flatMap((option, station) => (option.turning ? this.#startsAt(station) : []));
  }

  text(): string {
    for (const start of this.#starts) this.#binaries.push(start.name);
    this.#placeNeeds();
    for (let station = 0; station < this.#setting.length; station++) this.#stationRows(station);
    for (let player = 0; player < this.#instance.players.length; player++)
      this.#oneAtATime(this.#starts.filter((start) => start.player === player));
    const objective = this.#starts.map(({ name }) => name).join(' + ') || '0 none';
    return [
      'Minimize',
      ` turns: ${wrapped(objective)}`,
      'Subject To',
      ...this.#rows.map((row, index) => ` r${index}: ${wrapped(row)}`),
      'Bounds',
      ...this.#shares.map((name) => ` 0 <= ${name} <= 1`),
      ...(this.#starts.length === 0 ? [' 0 <= none <= 0'] : []),
      'Binaries',
      ...this.#binaries.map((name) => ` ${name}`),
      'End',
      '',
    ].join('\n');
  }

  #startsAt(station: number): Start[] {
    const chances = chancesOf(this.#instance)[station]!;
    const sides = this.#setting[station]!.kind === 'ridge' ? [0, 1] : [0];
    return sides.flatMap((side) =>
      chances[side]!.flatMap((chance, index) =>
        this.#moments(chance).map((at, number) => ({
          name: `z${station}_${side}_${index}_${number}`,
          station,
          at,
          seconds: chance.seconds,
          player: chance.player,
          side,
        })),
      ),
    );
  }

  #moments({ from, to, seconds }: Chance): number[] {
    const bases = [from, ...this.#needs.map((need) => need.to)];
    const all = bases.flatMap((base) => this.#setting.map((_, index) => base + index * seconds));
    const fit = all.filter((at) => at >= from && at + seconds <= to);
    return [...new Set(fit)].sort((a, b) => a - b);
  }

  #placeNeeds(): void {
    for (const [index, { player }] of this.#needs.entries()) {
      const places = this.#placesOf(player).map(({ station }) => `a${index}_${station}`);
      this.#binaries.push(...places);
      this.#rows.push(places.length > 0 ? `${places.join(' + ')} = 1` : 'impossible >= 1');
      if (places.length === 0) this.#rows.push('impossible <= 0');
    }
  }

  #placesOf(player: number): { station: number; side: number }[] {
    const { players, stations } = this.#instance;
    return stations.flatMap(({ sides }, station) =>
      sides.flatMap(({ reader }, side) => (reader === players[player]!.id ? [{ station, side }] : [])),
    );
  }

  #stationRows(station: number): void {
    const starts = this.#starts.filter((start) => start.station === station);
    const moments = [...new Set(starts.map(({ at }) => at))].sort((a, b) => a - b);
    if (this.#setting[station]!.kind === 'ridge') this.#oneStackSide(station, starts);
    this.#oneAtATime(starts);
    for (const [side, { reader }] of this.#instance.stations[station]!.sides.entries()) {
      const player = this.#instance.players.findIndex(({ id }) => id === reader);
      if (player >= 0) this.#sideRows({ station, side, player, starts, moments });
    }
  }

  #oneStackSide(station: number, starts: readonly Start[]): void {
    this.#binaries.push(`x${station}`);
    for (const { name, side } of starts)
      this.#rows.push(side === 0 ? `${name} + x${station} <= 1` : `${name} - x${station} <= 0`);
  }

  #sideRows(view: SideView): void {
    const { station, side, player, starts, moments } = view;
    const needs = [...this.#needs.entries()].filter(([, need]) => need.player === player);
    const pages = [...new Set(needs.map(([, { page }]) => page))];
    const shown = (page: number, period: number): string => `v${station}_${side}_${page}_${period}`;
    for (let period = 0; period <= moments.length; period++) {
      const all = pages.map((page) => shown(page, period));
      this.#shares.push(...all);
      this.#rows.push(`${all.join(' + ')} <= ${this.#setting[station]!.across[side]!}`);
      if (period === 0) continue;
      const turns = starts.filter(({ at }) => at === moments[period - 1]).map(({ name }) => ` - ${name}`);
      for (const page of pages) {
        const [before, after] = [shown(page, period - 1), shown(page, period)];
        this.#rows.push(
          `${after} - ${before}${turns.join('')} <= 0`,
          `${before} - ${after}${turns.join('')} <= 0`,
        );
      }
    }
    for (const [index, need] of needs) {
      const name = `a${index}_${station}`;
      const period = moments.filter((at) => at <= need.start).length;
      this.#rows.push(`${name} - ${shown(need.page, period)} <= 0`);
      for (const start of starts)
        if (start.at < need.to && start.at + start.seconds > need.start)
          this.#rows.push(`${name} + ${start.name} <= 1`);
    }
  }

  #oneAtATime(starts: readonly Start[]): void {
    for (const at of new Set(starts.map((start) => start.at))) {
      const busy = starts.filter((start) => start.at <= at && start.at + start.seconds > at);
      if (busy.length > 1) this.#rows.push(`${busy.map(({ name }) => name).join(' + ')} <= 1`);
    }
  }
}

interface SideView {
  readonly station: number;
  readonly side: number;
  readonly player: number;
  readonly starts: readonly Start[];
  readonly moments: readonly number[];
}

/** The format limits the length of a line. */
function wrapped(row: string): string {
  return row.replace(/(.{1,200})( |$)/g, '$1\n  ').trimEnd();
}
