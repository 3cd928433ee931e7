/**
 * The drawing of the plan for the screen: the very primitives that go on paper, at a scale near the one on the
 * screen, so that lines and letters keep their paper size. What did not change is not drawn again; and while a
 * gesture lasts, what is slow to draw is drawn less often.
 */

import type { Document } from '#model/document/document.ts';
import { isPlaced, type PlacedRecord } from '#model/document/records.ts';
import {
  drawAnnotations,
  drawGround,
  drawItem,
  drawItems,
  drawOverlays,
  type PlanContext,
} from '#model/drawing/plan.ts';
import { createOccupancy } from '#model/drawing/occupancy.ts';
import { drawDimensions } from '#model/drawing/plan/dimensions.ts';
import type { GroupPrimitive, MeasureText, Primitive } from '#model/drawing/primitives.ts';
import { screenContext, type ScreenPlan } from '#model/drawing/screen/plan-on-screen.ts';
import type { Extent } from './camera.ts';
import { writtenIn } from './written.ts';

export interface PictureRequest extends ScreenPlan {
  /** A gesture is under way: rather a little behind than late. */
  readonly hurried: boolean;
}

export interface PictureParts {
  /** House and platform; the very same list as long as nothing of it changed. */
  readonly ground: readonly Primitive[];
  readonly items: readonly Primitive[];
  readonly paperScale: number;
}

/** Drawing that takes longer than this is spared while a gesture lasts. */
const SLOW_MS = 14;
/** A slow ground is drawn at most in this part of the time. */
const GROUND_SHARE = 6;

interface Kept<T> {
  readonly value: T;
  readonly key: readonly unknown[];
  readonly took: number;
  readonly at: number;
}

interface DrawnItems {
  readonly records: Document['records'];
  readonly items: readonly GroupPrimitive[];
  readonly above: readonly GroupPrimitive[];
}

export class Picture {
  readonly #measure: MeasureText;
  readonly #now: () => number;
  #ground: Kept<readonly GroupPrimitive[]> | null = null;
  #items: Kept<DrawnItems> | null = null;

  constructor(measure: MeasureText, now: () => number = () => performance.now()) {
    this.#measure = measure;
    this.#now = now;
  }

  /** Whether all of it can be drawn anew within a frame. */
  get isQuick(): boolean {
    return (this.#ground?.took ?? 0) + (this.#items?.took ?? 0) <= SLOW_MS;
  }

  draw(request: PictureRequest): PictureParts {
    return {
      ground: this.drawGround(request),
      items: this.drawItems(request),
      paperScale: request.paperScale,
    };
  }

  /** House and platform alone; the very same list as long as nothing of it changed. */
  drawGround(request: PictureRequest): readonly Primitive[] {
    return this.#groundOf(this.#contextOf(request), request);
  }

  /** What stands on the platform, clear of the words of the ground. */
  drawItems(request: PictureRequest): readonly Primitive[] {
    const context = this.#contextOf(request);
    const { items, above } = this.#itemsOf(context, request, this.#groundOf(context, request));
    return [...drawOverlays(context), ...items, ...above];
  }

  /** Where something is written in what was drawn at a scale, in mm of the stage. */
  writtenIn(drawn: readonly Primitive[], paperScale: number): readonly Extent[] {
    return writtenIn(drawn, paperScale, this.#measure);
  }

  #contextOf(request: PictureRequest): PlanContext {
    return screenContext(request, this.#measure);
  }

  #groundOf(context: PlanContext, request: PictureRequest): readonly GroupPrimitive[] {
    const key = groundKey(request);
    const kept = this.#ground;
    if (kept && sameKey(kept.key, key)) return kept.value;
    const isSpared = kept && request.hurried && kept.took > SLOW_MS && kept.key[0] === key[0];
    if (isSpared && this.#now() - kept.at < kept.took * GROUND_SHARE) return kept.value;
    this.#ground = this.#timed(key, () => drawGround(context));
    return this.#ground.value;
  }

  #itemsOf(context: PlanContext, request: PictureRequest, ground: readonly Primitive[]): DrawnItems {
    const { document, hurried, paperScale, theme, units, setup } = request;
    const key = [paperScale, theme, units, setup];
    const kept = this.#items;
    if (hurried && kept && kept.took > SLOW_MS && sameKey(kept.key, key)) {
      const quick = redrawn(kept.value, context);
      if (quick) return quick;
    }
    this.#items = this.#timed(key, () => {
      const items = drawItems(context);
      const { above } = drawAnnotations(context, [...ground, ...items]);
      return { records: document.records, items, above };
    });
    return this.#items.value;
  }

  #timed<T>(key: readonly unknown[], work: () => T): Kept<T> {
    const begun = this.#now();
    const value = work();
    const at = this.#now();
    return { value, key, took: at - begun, at };
  }
}

/**
 * The items as drawn before with only the changed ones drawn anew. Their labels are left out, for finding room for them
 * is what takes the time; the dimensions asked for are there, in the way of whatever they meet. Null: not that simple.
 */
function redrawn(drawn: DrawnItems, context: PlanContext): DrawnItems | null {
  const changed = changedItems(drawn.records, context.document.records);
  if (!changed) return null;
  const stays = ({ subject }: GroupPrimitive): boolean => subject === undefined || !changed.has(subject);
  const items = drawn.items.map((group) => {
    const record = group.subject === undefined ? undefined : changed.get(group.subject);
    return record ? drawItem(record, context) : group;
  });
  const nothing = createOccupancy();
  const dimensions = drawDimensions(context, { texts: nothing, things: nothing });
  return {
    records: drawn.records,
    items,
    // Over the marks, which do not make way for them while things move.
    above: [...drawn.above.filter(stays), ...dimensions],
  };
}

/** Placed records that are not the same ones; null when something came, went, or is no placed record. */
function changedItems(
  before: Document['records'],
  after: Document['records'],
): ReadonlyMap<string, PlacedRecord> | null {
  if (before.size !== after.size) return null;
  const changed = new Map<string, PlacedRecord>();
  for (const [id, record] of after) {
    if (before.get(id) === record) continue;
    if (!before.has(id) || !isPlaced(record)) return null;
    changed.set(id, record);
  }
  return changed;
}

const GROUND_KINDS: readonly string[] = ['platform', 'door', 'seatBlock', 'place', 'storage'];

/** Everything that the ground depends on; records are immutable, so sameness is identity. */
function groundKey({ document, report, paperScale, theme, units, layers, frame }: PictureRequest): unknown[] {
  const records = [...document.records.values()].filter(({ kind }) => GROUND_KINDS.includes(kind));
  const { seats, sightBands, grid, words } = layers;
  const shares = sightBands ? report?.sight.visible : null;
  const look = frame && [frame.x, frame.y, frame.width, frame.height].join(' ');
  return [paperScale, theme, units, seats, grid, words, sightBands?.player, shares, look, ...records];
}

function sameKey(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((part, index) => part === b[index]);
}
