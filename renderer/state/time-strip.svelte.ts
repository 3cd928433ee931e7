/** The time strip: which moment of the performance is looked at, and how much of it is shown. Nothing of it is stored. */

import { isSameMoment, momentAt, type RunMoment } from '#model/pages/running/moment.ts';
import { runOf } from '#model/pages/running/run.ts';
import { warningsOf } from '#model/pages/running/warnings.ts';
import type { Turn } from '#model/pages/planner/plan.ts';
import {
  followed,
  shifted,
  turnedTo,
  wholeOf,
  zoomed,
  type TimeWindow,
} from '../canvas/strip/time-window.ts';
import type { ShownPlan } from './shown-plan.ts';

export const SPEEDS = [0.5, 1, 2, 4, 8] as const;

/** A window that was asleep does not leap ahead, s. */
const LONGEST_STEP = 0.25;

export class TimeStrip {
  /** The moment looked at, s. */
  time = $state(0);
  playing = $state(false);
  /** Seconds of the performance a second of the clock. */
  speed: number = $state(1);
  /** The turn that was gone to last. */
  chosen: Turn | null = $state.raw(null);
  /** Null: all of it. */
  #window: TimeWindow | null = $state.raw(null);
  readonly #shown: () => ShownPlan | null;

  constructor(shown: () => ShownPlan | null) {
    this.#shown = shown;
  }

  readonly shown = $derived.by(() => this.#shown());

  readonly run = $derived.by(() => this.shown && runOf(this.shown.instance, this.shown.plan, this.shown));

  readonly warnings = $derived.by(() => (this.run ? warningsOf(this.run) : []));

  /** The same object for as long as it tells the same, so that while it plays nobody draws anything twice. */
  readonly moment = $derived.by(() => {
    const now = this.run && momentAt(this.run, this.time);
    if (!now || !this.#moment || !isSameMoment(now, this.#moment)) this.#moment = now;
    return this.#moment;
  });
  #moment: RunMoment | null = null;

  readonly length = $derived.by(() => this.run?.seconds ?? 0);

  readonly window: TimeWindow = $derived.by(() => this.#window ?? wholeOf(this.length));

  go(time: number): void {
    this.time = Math.min(this.length, Math.max(0, time));
    this.#window = this.#window && turnedTo(this.#window, this.length, this.time);
  }

  /** By so many seconds of the clock. `even`: what is shown moves along with it. */
  advance(seconds: number, even: boolean): void {
    this.time = Math.min(this.length, this.time + Math.min(LONGEST_STEP, seconds) * this.speed);
    const window = this.#window;
    const follow = even ? followed : turnedTo;
    if (window) this.#window = follow(window, this.length, this.time);
    if (this.time >= this.length) this.playing = false;
  }

  /** From the end it begins again. */
  togglePlaying(): void {
    if (!this.playing && this.time >= this.length) this.go(0);
    this.playing = !this.playing && this.length > 0;
  }

  zoom(factor: number, time: number = this.time): void {
    const window = zoomed(this.window, this.length, time, factor);
    this.#window = window.seconds >= wholeOf(this.length).seconds ? null : window;
  }

  showAll(): void {
    this.#window = null;
  }

  shift(seconds: number): void {
    this.#window = this.#window && shifted(this.#window, this.length, seconds);
  }

  /** Of another piece nothing is kept but the moment, as far as it goes. */
  begin(): void {
    this.playing = false;
    this.chosen = null;
    this.#window = null;
    this.time = Math.min(this.time, this.length);
  }

  /** The turn after or before this moment. */
  turnBeside(step: 1 | -1): Turn | null {
    const turns = this.run?.turns ?? [];
    // A turn that was gone to begins now.
    if (step > 0) return turns.find(({ at }) => at > this.time + NOW) ?? null;
    return turns.findLast(({ at }) => at < this.time - NOW) ?? null;
  }

  /** When the bar after this one begins, or the one before: this one's own beginning, if it is some way back. */
  barBeside(step: 1 | -1): number {
    const begins = this.run?.bars.map(({ from }) => from) ?? [];
    if (step > 0) return begins.find((from) => from > this.time + NOW) ?? this.length;
    return begins.findLast((from) => from < this.time - NOW) ?? 0;
  }
}

/** Moments nearer than this are one, s. */
const NOW = 0.02;
