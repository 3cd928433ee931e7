/**
 * Paints a time strip: the ruler, and a lane for each player. Only what the window shows is gone through, so that an hour
 * of music for many players takes no longer than a minute of it.
 */

import type { InstrumentSwap } from '#model/pages/running/changes.ts';
import type { PageSpan, PlayerLane } from '#model/pages/running/player-lane.ts';
import type { Run } from '#model/pages/running/run.ts';
import { lastBegun } from '#model/pages/running/stretches.ts';
import { isThin } from '#model/pages/running/warnings.ts';
import type { Turn } from '#model/pages/planner/plan.ts';
import type { Interval } from '#model/score/time-line.ts';
import { fontOf } from '../painter.ts';
import { rulerOf, type RepeatMark } from './ruler-marks.ts';
import { STRIP } from './strip-sizes.ts';
import { pixelOf, type TimeWindow } from './time-window.ts';

export interface StripInks {
  readonly ink: string;
  readonly paper: string;
  readonly faint: string;
  readonly hairline: string;
  /** Ground of what is played. */
  readonly played: string;
  /** Judgements. */
  readonly pencil: string;
}

export interface StripFrame {
  readonly run: Run;
  /** What is painted, as wide as `width`. */
  readonly window: TimeWindow;
  readonly width: number;
  readonly inks: StripInks;
  readonly chosen: Turn | null;
}

type Pen = CanvasRenderingContext2D;

/** Pages narrower than this, in pixels, run together. */
const NARROW = 4;

export function paintRuler(pen: Pen, { run, window, width, inks }: StripFrame): void {
  const { clock, bars, repeats } = rulerOf(run, window, width);
  pen.clearRect(0, 0, width, STRIP.ruler);
  pen.textBaseline = 'alphabetic';
  for (const { from, to, pass } of repeats) paintRepeat(pen, { from, to, pass }, inks);
  for (const { x, words } of clock) {
    line(pen, [x, 0, x, 13], inks.faint, 1);
    write(pen, words, { x: x + 4, y: 11 }, { colour: inks.ink, size: STRIP.text, bold: true });
  }
  for (const { x, words } of bars) {
    line(pen, [x, 21, x, STRIP.ruler], inks.hairline, 1);
    write(pen, words, { x: x + 3, y: 31 }, { colour: inks.faint, size: STRIP.smallText });
  }
}

/** A doubled line under the bars that are played once more, as at the end of a repeat. */
function paintRepeat(pen: Pen, mark: RepeatMark, inks: StripInks): void {
  const { from, to } = mark;
  line(pen, [from, 15.5, to, 15.5], inks.ink, 1);
  line(pen, [from, 18, to, 18], inks.ink, 2);
  paintPass(pen, mark, from, inks);
}

/** How often it is played by then, written from `x` on; left out where the line is too short. */
function paintPass(pen: Pen, { from, to, pass }: RepeatMark, x: number, inks: StripInks): void {
  if (to - from < 30) return;
  const words = `${pass}×`;
  pen.font = fontOf('bold', STRIP.smallText);
  const width = pen.measureText(words).width;
  pen.fillStyle = inks.paper;
  pen.fillRect(x + 5, 13, width + 6, 8);
  write(pen, words, { x: x + 8, y: 20.5 }, { colour: inks.ink, size: STRIP.smallText, bold: true });
}

export function paintLanes(pen: Pen, frame: StripFrame): void {
  const { run, width, inks } = frame;
  pen.clearRect(0, 0, width, run.players.length * STRIP.lane);
  for (const [index, lane] of run.players.entries()) {
    const top = index * STRIP.lane;
    line(pen, [0, top + STRIP.lane - 0.5, width, top + STRIP.lane - 0.5], inks.hairline, 1);
    paintPages(pen, lane, top, frame);
    paintRests(pen, lane.rests, top, frame);
    paintNumbers(pen, lane, top, frame);
    for (const turn of inView(lane.turns.map(spanOf), frame)) paintTurn(pen, turn.what, top, frame);
    for (const swap of run.swaps) if (swap.player === lane.player) paintSwap(pen, swap, top, frame);
  }
  for (const turn of run.turns) paintServed(pen, turn, frame);
}

/**
 * What is written at the left edge because it began before it: the pages that go on. `frame` is what is shown; over lanes that
 * were painted for more than that.
 */
export function paintPagesGoingOn(pen: Pen, frame: StripFrame): void {
  pen.textBaseline = 'alphabetic';
  for (const [index, lane] of frame.run.players.entries()) {
    const [span] = ordered(lane.spans, frame);
    if (!span?.place || pixelOf(frame.window, frame.width, span.from) >= 0) continue;
    const number = numberOf(pen, span, frame);
    if (!number || inView(lane.turns.map(spanOf), frame).some((turn) => covers(turn, number, frame)))
      continue;
    pen.fillStyle = frame.inks.played;
    const top = index * STRIP.lane;
    pen.fillRect(0, top + STRIP.pageTop + 2, number.width + 6, STRIP.pageBottom - STRIP.pageTop - 4);
    write(pen, number.words, { x: 4, y: top + 22 }, { colour: frame.inks.ink, bold: true });
  }
}

/** The same of the ruler: how often a stretch is played by now. */
export function paintPassGoingOn(pen: Pen, { run, window, width, inks }: StripFrame): void {
  pen.textBaseline = 'alphabetic';
  for (const repeat of rulerOf(run, window, width).repeats)
    if (repeat.from < 0 && repeat.to > 30) paintPass(pen, { ...repeat, from: 0 }, 0, inks);
}

function covers(turn: Interval, { width }: PageNumber, frame: StripFrame): boolean {
  return across(turn, frame)[0] < width + 8;
}

interface PageNumber {
  readonly words: string;
  readonly x: number;
  readonly width: number;
}

/** Where its page begins, or at the left edge while it goes on; null: there is no room. */
function numberOf(pen: Pen, span: PageSpan, frame: StripFrame): PageNumber | null {
  const [left, right] = across(span, frame);
  if (right - left < 12) return null;
  const words = String(span.page);
  pen.font = fontOf('bold', STRIP.text);
  const { width } = pen.measureText(words);
  const x = Math.max(left, 0) + 4;
  return x + width > right ? null : { words, x, width };
}

interface Spanned<T> extends Interval {
  readonly what: T;
}

function spanOf(turn: Turn): Spanned<Turn> {
  return {
    from: Math.min(turn.at, turn.window.from),
    to: Math.max(turn.at + turn.seconds, turn.window.to),
    what: turn,
  };
}

/** What begins before the window's end and ends after its beginning. */
function inView<T extends Interval>(spans: readonly T[], { window }: StripFrame): T[] {
  return spans.filter(({ from, to }) => to >= window.from && from <= window.from + window.seconds);
}

/** The same of many spans that are disjoint and in order: found by halving. */
function ordered<T extends Interval>(spans: readonly T[], { window }: StripFrame): readonly T[] {
  const first = Math.max(0, lastBegun(spans, window.from));
  return spans.slice(first, lastBegun(spans, window.from + window.seconds) + 1);
}

function across({ from, to }: Interval, { window, width }: StripFrame): [number, number] {
  const clip = (x: number): number => Math.max(-8, Math.min(width + 8, x));
  return [clip(pixelOf(window, width, from)), clip(pixelOf(window, width, to))];
}

function paintPages(pen: Pen, { spans }: PlayerLane, top: number, frame: StripFrame): void {
  const { inks } = frame;
  const height = STRIP.pageBottom - STRIP.pageTop;
  for (const span of ordered(spans, frame)) {
    const [left, right] = across(span, frame);
    const y = top + STRIP.pageTop;
    if (span.place) {
      pen.fillStyle = inks.played;
      pen.fillRect(left, y, right - left, height);
      line(pen, [left, y + height, right, y + height], inks.ink, 1);
      // Edges nearer to each other than this would only blacken the lane.
      if (right - left < NARROW) continue;
      line(pen, [left, y, left, y + height], inks.ink, 1);
      line(pen, [right, y, right, y + height], inks.ink, 1);
    } else if (span.needed) paintLost(pen, { left, right, y, height }, inks);
  }
}

/** He plays without his page: crossed out in the colour of judgements. */
function paintLost(
  pen: Pen,
  { left, right, y, height }: { left: number; right: number; y: number; height: number },
  inks: StripInks,
): void {
  for (let x = left; x < right; x += 7)
    line(pen, [x, y + height, Math.min(right, x + 7), y], inks.pencil, 1.5);
  pen.strokeStyle = inks.pencil;
  pen.lineWidth = 1.5;
  pen.strokeRect(left, y, Math.max(1, right - left), height);
}

/** A bar with upright ends, as a rest of several bars is printed, on empty ground. */
function paintRests(pen: Pen, rests: readonly Interval[], top: number, frame: StripFrame): void {
  const { inks } = frame;
  const middle = top + (STRIP.pageTop + STRIP.pageBottom) / 2;
  for (const rest of ordered(rests, frame)) {
    const [left, right] = across(rest, frame);
    if (right - left < 1.5) continue;
    pen.fillStyle = inks.paper;
    pen.fillRect(left + 0.5, top + STRIP.pageTop, right - left - 1, STRIP.pageBottom - STRIP.pageTop - 1);
    if (right - left < 7) continue;
    line(pen, [left + 2, middle, right - 2, middle], inks.faint, 3);
    line(pen, [left + 2, middle - 4, left + 2, middle + 4], inks.faint, 1);
    line(pen, [right - 2, middle - 4, right - 2, middle + 4], inks.faint, 1);
  }
}

/** At the beginning of each page. */
function paintNumbers(pen: Pen, { spans }: PlayerLane, top: number, frame: StripFrame): void {
  let before: PageSpan | null = null;
  for (const span of ordered(spans, frame)) {
    const [left] = across(span, frame);
    const goesOn = before?.page === span.page && before.place !== null && before.to === span.from;
    before = span;
    const number = span.place && !(goesOn && left > 0) ? numberOf(pen, span, frame) : null;
    if (!number) continue;
    const { words, x, width } = number;
    pen.fillStyle = frame.inks.played;
    pen.fillRect(x - 2, top + STRIP.pageTop + 2, width + 4, STRIP.pageBottom - STRIP.pageTop - 4);
    write(pen, words, { x, y: top + 22 }, { colour: frame.inks.ink, bold: true });
  }
}

/** The leaf as a solid block as long as it moves, with a point the way it goes; above it the time that there is for it. */
function paintTurn(pen: Pen, turn: Turn, top: number, frame: StripFrame): void {
  const { inks, chosen } = frame;
  const [left, end] = across({ from: turn.at, to: turn.at + turn.seconds }, frame);
  const right = Math.max(end, left + 3);
  const thin = isThin(turn.margin, turn.seconds);
  const colour = thin ? inks.pencil : inks.ink;
  paintWindow(pen, across(turn.window, frame), top, colour);
  pen.fillStyle = colour;
  pen.fillRect(left, top + STRIP.pageTop, right - left, STRIP.pageBottom - STRIP.pageTop);
  pen.beginPath();
  const [tip, base] = turn.direction === 'forward' ? [right + 7, right] : [left - 7, left];
  pen.moveTo(base, top + 12);
  pen.lineTo(tip, top + 17.5);
  pen.lineTo(base, top + 23);
  pen.fill();
  if (thin) paintThin(pen, { x: (left + right) / 2, y: top + 17.5 }, inks);
  if (turn !== chosen) return;
  pen.strokeStyle = inks.ink;
  pen.lineWidth = 2;
  pen.strokeRect(left - 3, top + 5, right - left + 4, STRIP.lane - 6);
}

function paintWindow(pen: Pen, [from, to]: [number, number], top: number, colour: string): void {
  const y = top + STRIP.windowLine;
  line(pen, [from, y, to, y], colour, 1.5);
  line(pen, [from, y - 2.5, from, y + 3], colour, 1.5);
  line(pen, [to, y - 2.5, to, y + 3], colour, 1.5);
}

/** A triangle with a stroke in it, as the cautions on the plan have. */
function paintThin(pen: Pen, { x, y }: { x: number; y: number }, inks: StripInks): void {
  pen.beginPath();
  pen.moveTo(x, y - 9);
  pen.lineTo(x + 8.5, y + 7);
  pen.lineTo(x - 8.5, y + 7);
  pen.closePath();
  pen.fillStyle = inks.paper;
  pen.fill();
  pen.strokeStyle = inks.pencil;
  pen.lineWidth = 1.5;
  pen.stroke();
  line(pen, [x, y - 4, x, y + 1.5], inks.pencil, 2);
  line(pen, [x, y + 3.5, x, y + 5], inks.pencil, 2);
}

/** Down to whom it serves besides: a broken line from the turn to their lanes. */
function paintServed(pen: Pen, turn: Turn, frame: StripFrame): void {
  const lanes = frame.run.players.map(({ player }) => player);
  const own = lanes.indexOf(turn.player);
  const [x] = across({ from: turn.at, to: turn.at }, frame);
  if (own < 0 || x < 0 || x > frame.width) return;
  pen.setLineDash([3, 3]);
  for (const { player } of turn.readers) {
    const other = lanes.indexOf(player);
    if (other < 0 || other === own) continue;
    const y = other * STRIP.lane + (other > own ? 0 : STRIP.lane);
    const edge = own * STRIP.lane + (other > own ? STRIP.pageBottom : STRIP.pageTop);
    const into = other > own ? y + STRIP.pageBottom : y - STRIP.lane + STRIP.pageTop;
    line(pen, [x, edge, x, into], frame.inks.ink, 1);
  }
  pen.setLineDash([]);
}

/** Where hands are told of, above the page: a lozenge where one instrument is laid down, a line as long as it takes. */
function paintSwap(pen: Pen, swap: InstrumentSwap, top: number, frame: StripFrame): void {
  const { inks, width } = frame;
  const [left, right] = across({ from: swap.at, to: swap.at + (swap.seconds ?? 0) }, frame);
  if (right < 0 || left > width) return;
  const y = top + STRIP.windowLine;
  line(pen, [left, y, Math.max(right, left), y], inks.ink, 2.5);
  pen.beginPath();
  pen.moveTo(left, y - 4);
  pen.lineTo(left + 4, y);
  pen.lineTo(left, y + 4);
  pen.lineTo(left - 4, y);
  pen.closePath();
  pen.fillStyle = inks.paper;
  pen.fill();
  pen.strokeStyle = inks.ink;
  pen.lineWidth = 1.5;
  pen.stroke();
}

function line(
  pen: Pen,
  [fromX, fromY, toX, toY]: readonly [number, number, number, number],
  colour: string,
  width: number,
): void {
  pen.beginPath();
  pen.moveTo(fromX, fromY);
  pen.lineTo(toX, toY);
  pen.strokeStyle = colour;
  pen.lineWidth = width;
  pen.stroke();
}

interface Letters {
  readonly colour: string;
  readonly size?: number;
  readonly bold?: boolean;
}

function write(pen: Pen, words: string, { x, y }: { x: number; y: number }, letters: Letters): void {
  const { colour, size = STRIP.text, bold = false } = letters;
  pen.font = fontOf(bold ? 'bold' : 'regular', size);
  pen.textAlign = 'left';
  pen.fillStyle = colour;
  pen.fillText(words, x, y);
}
