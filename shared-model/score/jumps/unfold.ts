/** The order of the performance: repeats, endings and jumps carried out bar by bar. */

import { MOST_PLAYED_BARS } from '../limits.ts';
import { Refusal } from '../problem.ts';
import type { BackwardRepeat } from '../score.ts';
import type { Ending } from './endings.ts';
import type { Jump, JumpPlan } from './jump-plan.ts';

export interface Course {
  readonly bars: number;
  readonly movementStarts: readonly number[];
  readonly forward: ReadonlySet<number>;
  readonly backward: ReadonlyMap<number, BackwardRepeat>;
  readonly endings: readonly Ending[];
  readonly plan: JumpPlan;
  /** Whether repeats are made again after D.C. or D.S.; usually they are not. */
  readonly repeatsAfterJump: boolean;
}

export interface Unfolded {
  /** Bars in the order in which they are played. */
  readonly order: Int32Array;
  /** Bars whose repeat sign stands within another repeat that is still open. */
  readonly nested: readonly number[];
}

/** Throws `Refusal` where it would go on beyond all music. */
export function unfold(course: Course): Unfolded {
  const walk = new Walk(course);
  while (walk.bar < course.bars) walk.step();
  return { order: Int32Array.from(walk.played), nested: [...walk.nested] };
}

/** A passage being repeated, from `start` on. */
interface Frame {
  start: number;
  /** Counted from 1. */
  pass: number;
  /** Begun by a repeat sign, not by the beginning of the music or the end of another repeat. */
  readonly signed: boolean;
}

class Walk {
  bar = 0;
  readonly played: number[] = [];
  readonly nested = new Set<number>();
  private frames: Frame[] = [fresh(0)];
  /** The jump that has been made in this movement; null: none. */
  private jumped: Jump | null = null;
  private inCoda = false;
  private readonly done = new Set<number>();
  /** For each bar where the next movement begins. */
  private readonly followingStart: Int32Array;
  private readonly endingAt: ReadonlyMap<number, Ending>;
  private readonly endingTo: ReadonlyMap<number, Ending>;

  constructor(private readonly course: Course) {
    this.followingStart = new Int32Array(course.bars).fill(course.bars);
    course.movementStarts.forEach((start, index) => {
      if (index > 0) this.followingStart.fill(start, course.movementStarts[index - 1], start);
    });
    this.endingAt = new Map(course.endings.map((ending) => [ending.first, ending]));
    this.endingTo = new Map(course.endings.map((ending) => [ending.last, ending]));
  }

  step(): void {
    if (this.stopsHere()) return;
    const ending = this.endingAt.get(this.bar);
    if (ending && !this.isBackAt(this.bar) && !this.takes(ending)) {
      this.passOver(ending);
      return;
    }
    this.beginRepeat();
    this.play();
    this.leave();
  }

  /** A D.C. without Fine ends before the Trio. */
  private stopsHere(): boolean {
    if (this.jumped === null || this.bar !== this.jumped.stopsBefore) return false;
    this.enter(this.jumped.bar + 1);
    return true;
  }

  private play(): void {
    if (this.played.length >= MOST_PLAYED_BARS)
      throw new Refusal({ code: 'jumps.endless', most: MOST_PLAYED_BARS });
    this.played.push(this.bar);
  }

  private passOver({ last, group }: Ending): void {
    if (last + 1 === group.after) this.closeRepeat(group.after);
    this.advance(last + 1);
  }

  private get frame(): Frame {
    return this.frames.at(-1) ?? fresh(this.bar);
  }

  private isBackAt(bar: number): boolean {
    return this.frame.start === bar && this.frame.pass > 1;
  }

  private takes({ numbers, group }: Ending): boolean {
    return numbers.includes(this.repeats(null) ? this.frame.pass : group.passes);
  }

  private repeats(sign: BackwardRepeat | null): boolean {
    return this.jumped === null || this.course.repeatsAfterJump || sign?.afterJump === true;
  }

  private beginRepeat(): void {
    if (!this.course.forward.has(this.bar) || this.isBackAt(this.bar)) return;
    if (this.frame.signed && this.frame.start === this.bar) return;
    if (this.frame.signed) this.nested.add(this.bar);
    this.frames.push({ start: this.bar, pass: 1, signed: true });
  }

  /** In this order: the end after a jump, the coda, repeats, jumps, the way round further endings. */
  private leave(): void {
    if (this.leaveAtEnd() || this.leaveToCoda() || this.leaveBack() || this.leaveByJump()) return;
    const ending = this.endingTo.get(this.bar);
    if (ending) this.closeRepeat(ending.group.after);
    this.advance(ending ? ending.group.after : this.bar + 1);
  }

  private leaveAtEnd(): boolean {
    const { jumped } = this;
    if (!jumped || !this.course.plan.fines.has(this.bar)) return false;
    if (jumped.until === 'coda' && !this.inCoda) return false;
    if (this.repeatIsDue()) return false;
    this.enter(this.bar <= jumped.bar ? jumped.bar + 1 : this.nextMovement());
    return true;
  }

  private leaveToCoda(): boolean {
    const coda = this.course.plan.codas.get(this.bar);
    if (coda === undefined || !this.jumped || this.inCoda || this.jumped.until === 'fine') return false;
    this.inCoda = true;
    this.frames = [fresh(coda)];
    this.bar = coda;
    return true;
  }

  private leaveBack(): boolean {
    if (!this.course.backward.has(this.bar)) return false;
    if (!this.repeatIsDue()) {
      if (!this.endingTo.has(this.bar)) this.closeRepeat(this.bar + 1);
      return false;
    }
    this.frame.pass += 1;
    this.bar = this.frame.start;
    return true;
  }

  private repeatIsDue(): boolean {
    const sign = this.course.backward.get(this.bar);
    if (!sign || !this.repeats(sign)) return false;
    const passes = this.endingTo.get(this.bar)?.group.passes ?? 0;
    return this.frame.pass < (passes > 0 ? passes : (sign.times ?? 2));
  }

  private leaveByJump(): boolean {
    const jump = this.course.plan.jumps.get(this.bar);
    if (!jump || this.done.has(jump.bar)) return false;
    this.done.add(jump.bar);
    [this.jumped, this.inCoda] = [jump, false];
    this.frames = [fresh(jump.target)];
    this.bar = jump.target;
    return true;
  }

  /** Back to the repeat around this one, or on to music that begins anew at `next`. */
  private closeRepeat(next: number): void {
    if (this.frame.signed) this.frames.pop();
    if (!this.frame.signed) this.frames = [fresh(next)];
  }

  private advance(next: number): void {
    if (this.nextMovement() <= next && next < this.course.bars) this.enter(next);
    else this.bar = next;
  }

  /** Begins a movement, or what lies behind a jump that is over. */
  private enter(bar: number): void {
    [this.jumped, this.inCoda] = [null, false];
    this.frames = [fresh(bar)];
    this.bar = bar;
  }

  private nextMovement(): number {
    return this.followingStart[this.bar] ?? this.course.bars;
  }
}

function fresh(start: number): Frame {
  return { start, pass: 1, signed: false };
}
