/** What the time strip's moment looks like on the plan: the pages on every desk, leaves in motion, ways that people go. */

import { desksOf, type Desk } from '#model/document/desks.ts';
import { find, type Document } from '#model/document/document.ts';
import { asId, type Id } from '#model/document/ids.ts';
import { labelOf } from '#model/document/labels.ts';
import { floorHeightAt } from '#model/document/levels.ts';
import type { Stand } from '#model/document/records.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import type { InstrumentSwap } from '#model/pages/running/changes.ts';
import type { RunMoment, SideNow, StationNow } from '#model/pages/running/moment.ts';
import type { Turn } from '#model/pages/planner/plan.ts';

export interface DeskMark {
  /** Over which the pages' row is centred: a desk's middle, or the middle of the ridge. */
  readonly middle: Vec2;
  /** From the reader's left to his right. */
  readonly along: Vec2;
  /** From the desk to the reader; the pages hang down this way from a ridge. */
  readonly out: Vec2;
  readonly overRidge: boolean;
  /** On the plan, mm. */
  readonly pageWidth: number;
  readonly depth: number;
  /** From the reader's left; null: a blank. */
  readonly pages: readonly (number | null)[];
  readonly reading: number | null;
  /** The reader plays nothing for the moment. */
  readonly rests: boolean;
  /** A leaf of the stand is in motion: nobody can read here. */
  readonly moving: boolean;
}

export interface LeafMark {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly words: string;
}

export interface WayMark {
  readonly from: Vec2;
  readonly to: Vec2;
  /** He leaves his place; otherwise the line only says for what he reaches. */
  readonly walks: boolean;
  readonly words: string;
}

export interface RunningMarks {
  readonly desks: readonly DeskMark[];
  readonly leaves: readonly LeafMark[];
  readonly ways: readonly WayMark[];
}

interface RunningWords {
  readonly turns: (player: string, hand: Turn['hand']) => string;
  readonly changes: (player: string, instrument: string) => string;
}

export interface RunningRequest {
  readonly document: Document;
  readonly setup: Id<'setup'>;
  readonly moment: RunMoment;
  readonly words: RunningWords;
}

/** Stands and players that are no longer there have no marks. */
export function runningMarks({ document, setup, moment, words }: RunningRequest): RunningMarks {
  const nameOf = (id: string): string => labelOf(document, setup, id);
  const stands = moment.stations.flatMap((now) => {
    const stand = find(document, asId<'stand'>(now.station));
    return stand ? [{ now, stand, desks: desksOf(stand, floorHeightAt(document, setup, stand)) }] : [];
  });
  return {
    desks: stands.flatMap(({ now, stand, desks }) =>
      desks.flatMap((desk) => {
        const side = now.sides[desk.sideIndex];
        if (!side || side.reader === null) return [];
        const rests = moment.players.some(({ player, rests }) => player === side.reader && rests);
        return [{ ...deskMark(stand, desk, side, now), rests }];
      }),
    ),
    leaves: stands.flatMap(({ now: { turn }, desks }) =>
      turn ? leafMark(desks, turn, words.turns(nameOf(turn.player), turn.hand)) : [],
    ),
    ways: moment.swaps.flatMap((swap) => wayMark(swap, words.changes(nameOf(swap.player), swap.name))),
  };
}

function deskMark(stand: Stand, desk: Desk, side: SideNow, { turn }: StationNow): Omit<DeskMark, 'rests'> {
  const [lipLeft, lipRight, topRight, topLeft] = desk.board;
  const [lip, top] = [between(lipLeft, lipRight), between(topLeft, topRight)];
  const overRidge = stand.form === 'backToBack';
  return {
    middle: overRidge ? top : between(lip, top),
    along: unit(lipLeft, lipRight),
    out: desk.towardsReader,
    overRidge,
    pageWidth: desk.side.pageWidth,
    depth: Math.hypot(lip.x - top.x, lip.y - top.y),
    pages: side.view,
    reading: turn ? null : side.reading,
    moving: turn !== null,
  };
}

/** Over the ridge, or from one side of the desk to the other. */
function leafMark(desks: readonly Desk[], turn: Turn, words: string): LeafMark[] {
  const own = desks[turn.liftedFrom];
  if (!own) return [];
  const other = desks.find((desk) => desk !== own);
  const [lipLeft, lipRight, topRight, topLeft] = own.board;
  if (other) return [{ from: middleOf(own), to: middleOf(other), words }];
  const [left, right] = [between(lipLeft, topLeft), between(lipRight, topRight)];
  return [turn.direction === 'forward' ? { from: right, to: left, words } : { from: left, to: right, words }];
}

function wayMark({ walk, spots }: InstrumentSwap, words: string): WayMark[] {
  return spots ? [{ ...spots, walks: walk, words }] : [];
}

function middleOf({ board: [a, , c] }: Desk): Vec2 {
  return between(a, c);
}

function between(a: Vec2, b: Vec2): Vec2 {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function unit(from: Vec2, to: Vec2): Vec2 {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}
