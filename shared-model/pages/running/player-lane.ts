/** A player through the performance: which page he reads when, and at which place of which stand it lies before him. */

import type { Interval, Seconds } from '../../score/time-line.ts';
import type { SideIndex } from '../bindings/binding.ts';
import { MOMENT, type PlanPlayer } from '../planner/instance.ts';
import { joined, type Need } from '../planner/needs.ts';
import type { Turn } from '../planner/plan.ts';
import type { StationLane } from './station-lane.ts';
import { holding } from './stretches.ts';

/** Where a page lies. */
export interface PagePlace {
  readonly station: string;
  readonly side: SideIndex;
  /** From the reader's left, from 0. */
  readonly slot: number;
}

/** A piece of a reading during which the page stays where it is. */
export interface PageSpan extends Interval {
  readonly page: number;
  /** null: it is not before him then. */
  readonly place: PagePlace | null;
  /** He plays from it meanwhile, or rests too briefly to look away: without a place he has no page. */
  readonly needed: boolean;
}

export interface PlayerLane {
  readonly player: string;
  /** In order, without gaps from the first page to the end of the last. */
  readonly spans: readonly PageSpan[];
  /** When he is silent; disjoint, in order. */
  readonly rests: readonly Interval[];
  /** Those that he makes. */
  readonly turns: readonly Turn[];
}

export interface LaneRequest {
  readonly player: PlanPlayer;
  readonly stations: readonly StationLane[];
  readonly turns: readonly Turn[];
  /** His, in order. */
  readonly needs: readonly Need[];
}

export function playerLane({ player, stations, turns, needs }: LaneRequest): PlayerLane {
  const shown = shownPages(player.id, stations);
  const rests = joined(player.free.filter(({ silent }) => silent));
  const needed = joined(needs);
  let before: PagePlace | null = null;
  const spans: PageSpan[] = [];
  for (const { page, from, to } of player.readings) {
    for (const piece of pieces({ from, to }, shown.get(page) ?? [], before)) {
      before = piece.place ?? before;
      spans.push(...cutByNeed(piece, needed).map((part) => ({ ...part, page })));
    }
  }
  return { player: player.id, spans, rests, turns: turns.filter((turn) => turn.player === player.id) };
}

interface Shown extends Interval {
  readonly place: PagePlace;
  /** The reader's sides from his left to his right are in the order of this number. */
  readonly position: number;
}

/** When each page of a reader lies still before him, in the order of time. */
function shownPages(reader: string, stations: readonly StationLane[]): Map<number, Shown[]> {
  const shown = new Map<number, Shown[]>();
  for (const { station, sides, bound, spans } of stations)
    for (const [index, side] of sides.entries())
      if (side.reader === reader)
        for (const { state, from, to, turn } of spans)
          for (const [slot, page] of (turn ? [] : (bound.views[index]?.[state] ?? [])).entries()) {
            if (page === null) continue;
            const place: PagePlace = { station, side: index as SideIndex, slot };
            const known = shown.get(page) ?? [];
            known.push({ place, position: side.position, from, to });
            shown.set(page, known);
          }
  for (const known of shown.values()) known.sort((a, b) => a.from - b.from);
  return shown;
}

interface Piece extends Interval {
  readonly place: PagePlace | null;
}

/** Of several places he keeps to the one before, else takes the one that lasts longest, else the one farthest left. */
function pieces({ from, to }: Interval, shown: readonly Shown[], before: PagePlace | null): Piece[] {
  const found: Piece[] = [];
  let [time, last] = [from, before];
  while (to - time > MOMENT) {
    const now = shown.filter((one) => one.from <= time + MOMENT && one.to > time + MOMENT);
    const best = now.sort(
      (a, b) =>
        Number(isSame(b.place, last)) - Number(isSame(a.place, last)) ||
        Math.min(b.to, to) - Math.min(a.to, to) ||
        a.position - b.position ||
        a.place.slot - b.place.slot,
    )[0];
    const end = Math.min(to, best ? best.to : nextBeginning(shown, time));
    last = best?.place ?? last;
    found.push({ place: best?.place ?? null, from: time, to: end });
    time = end;
  }
  return found;
}

function nextBeginning(shown: readonly Shown[], time: Seconds): Seconds {
  return shown.find((one) => one.from > time + MOMENT)?.from ?? Infinity;
}

function isSame(a: PagePlace, b: PagePlace | null): boolean {
  return b !== null && a.station === b.station && a.side === b.side && a.slot === b.slot;
}

/** Only where the page is not before him does it matter whether he needs it. */
function cutByNeed(piece: Piece, needed: readonly Interval[]): Omit<PageSpan, 'page'>[] {
  const parts: Omit<PageSpan, 'page'>[] = [];
  let { from } = piece;
  while (piece.to - from > MOMENT) {
    const need = holding(needed, from + MOMENT);
    const next = need?.to ?? needed.find((one) => one.from > from + MOMENT)?.from ?? Infinity;
    const to = piece.place ? piece.to : Math.min(piece.to, next);
    parts.push({ place: piece.place, from, to, needed: need !== null });
    from = to;
  }
  return parts;
}
