/** What stands at the foot of a panel for the one who reads it: whose it is, and when it is turned. */

import type { Panel } from '../../pages/bindings/strip.ts';
import { pagesInView, statesOf, type Binding, type SideIndex } from '../../pages/bindings/binding.ts';
import { t } from '../../words/say.ts';
import type { Box, Primitive } from '../primitives.ts';
import { TEXT } from '../style.ts';
import { wrapped, type Type } from '../text.ts';
import { BAND, CLEAR, note } from './note.ts';
import type { Piece } from './layout.ts';
import type { BookletOrder } from './order.ts';

const LABEL: Type = { size: TEXT.small, weight: 'regular' };
const CUE: Type = { size: TEXT.strong, weight: 'bold' };

/** As read, upright in `box`. The middle of the foot is left to what tells how to tape it. */
export function readerMarks(order: BookletOrder, panel: Panel, piece: Piece, box: Box): Primitive[] {
  const third = (box.width - BAND.middle) / 2 - CLEAR;
  const left = box.x + CLEAR;
  const foot = box.y + box.height - CLEAR;
  const label = note(
    [labelOf(order, panel)],
    { x: left, y: foot, width: third, anchor: 'start' },
    LABEL,
    order.tools,
  );
  const isLast = piece.places.includes(panel.pages.length - 1);
  const cue = isLast ? cueOf(order, panel, piece) : '';
  if (cue === '') return [label];
  const lines = wrapped(cue, third, CUE, order.tools.measure).slice(0, 3);
  const right = box.x + box.width - CLEAR;
  return [
    label,
    note(lines, { x: right, y: foot, width: third, anchor: 'end', framed: true }, CUE, order.tools),
  ];
}

function labelOf({ binding, players }: BookletOrder, { name, side, states }: Panel): string {
  const reader = players[side] || t`nobody reads here`;
  const first = (states[0] ?? 0) + 1;
  const last = (states.at(-1) ?? 0) + 1;
  const all = statesOf(binding);
  if (all === 1) return `${reader}, ${name}`;
  const views = first === last ? t`view ${first} of ${all}` : t`views ${first} to ${last} of ${all}`;
  return `${reader}, ${name}, ${views}`;
}

/** "after bar 48: turn for both"; empty where no turn follows, or it is not said when. */
function cueOf(order: BookletOrder, panel: Panel, { panel: index }: Piece): string {
  const turn = turnAfter(order, panel, index);
  if (turn === null) return '';
  const cue = order.cues[turn] ?? '';
  return cue === '' ? '' : cueWords(cue, order, panel, turn);
}

/** The turn before which the panel is the last to be read, counted from 0; null: none. */
function turnAfter({ binding }: BookletOrder, panel: Panel, index: number): number | null {
  const state = panel.states.at(binding.kind === 'concertina' ? 0 : -1);
  if (state === undefined || state >= binding.leaves) return null;
  if (binding.kind === 'concertina') return index === 2 * state + pagesInView(binding) - 1 ? state : null;
  if (binding.kind === 'book') return panel.name.endsWith('recto') ? state : null;
  return state;
}

/** For the one who turns it says whether somebody else gets new pages by it, for all others who does it. */
function cueWords(cue: string, order: BookletOrder, { side }: Panel, turn: number): string {
  const { binding, players } = order;
  const reader = players[side] ?? '';
  const atLeaves = binding.kind === 'ridge' ? players[binding.stackSide] || t`the one opposite` : reader;
  const turner = order.turners?.[turn] || atLeaves;
  if (!isNamed(reader, turner)) return t`${cue}: ${turner} turns`;
  const other = binding.kind === 'ridge' && players[side === 0 ? 1 : 0];
  return other && hasPages(binding, side === 0 ? 1 : 0, turn + 1)
    ? t`${cue}: turn for both`
    : t`${cue}: turn`;
}

/** A reader may be named with his part behind his label. */
function isNamed(reader: string, turner: string): boolean {
  return reader === turner || reader.startsWith(`${turner}: `);
}

function hasPages({ views }: Binding, side: SideIndex, state: number): boolean {
  return views[side]?.[state]?.some((page) => page !== null) ?? false;
}
