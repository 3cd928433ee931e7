/** Decides what the pointer takes hold of, and leads the gesture from there. */

import { platformOf, type Document } from '#model/document/document.ts';
import { edgeOf } from '#model/document/openings.ts';
import { groupOf } from '#model/document/groups.ts';
import { labelOf } from '#model/document/labels.ts';
import { housePlaces, type HousePlace } from '#model/document/seating.ts';
import { asId, type Id } from '#model/document/ids.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { pointInPolygon } from '#model/geometry/polygon.ts';
import { distancePointToSegment } from '#model/geometry/segments.ts';
import { underlayOutline } from '#model/underlay/place.ts';
import { heldWith } from '../app/grouping.ts';
import { text } from '../app/text.ts';
import type { Editor } from '../state/editor.svelte.ts';
import { dragCorner } from './gestures/drag-corner.ts';
import { dragItems } from './gestures/drag-items.ts';
import { dragUnderlay } from './gestures/drag-underlay.ts';
import { clearTraces, type Gesture, type PointerAt } from './gestures/gesture.ts';
import { marquee } from './gestures/marquee.ts';
import { pan } from './gestures/pan.ts';
import type { PlanTool } from './gestures/tool.ts';
import { turnItems } from './gestures/turn-items.ts';
import { HANDLE_REACH_PIXELS, platformCorners, turnHandle } from './handles.ts';
import { itemAt } from './picking.ts';
import { pickables } from './pickables.ts';
import { placingOutcome, settledForPlacing } from './placing.ts';
import { seatFigure } from './seat-figures.ts';
import type { HandTraces } from './traces.svelte.ts';

/** A press that moves less than this is a click. */
const STILL_PIXELS = 3;
const ITEM_REACH_PIXELS = 8;
const EDGE_REACH_PIXELS = 7;
/** Half of a seat's width, about. */
const SEAT_REACH = 300;

interface Press {
  readonly from: PointerAt;
  readonly gesture: Gesture;
  readonly click: (() => void) | null;
  begun: boolean;
}

export class Hands {
  readonly #editor: Editor;
  readonly #traces: HandTraces;
  #press: Press | null = null;

  constructor(editor: Editor, traces: HandTraces) {
    this.#editor = editor;
    this.#traces = traces;
  }

  get busy(): boolean {
    return this.#press !== null;
  }

  /** `toPan`: the middle button or the space bar is held. */
  down(at: PointerAt, toPan: boolean): void {
    const { view } = this.#editor;
    if (toPan || view.hand === 'pan') return this.#take(at, pan(this.#bench, at.pixel), null);
    const { tool } = view;
    if (tool) return this.#take(at, pan(this.#bench, at.pixel), () => tool.click(at));
    if (view.armed) return this.#place(at);
    this.#takeHold({ ...at, add: at.add || at.free });
  }

  move(at: PointerAt): void {
    this.#editor.view.pointer = at.spot;
    const press = this.#press;
    if (!press) return this.#hover(at);
    const moved = Math.hypot(at.pixel.x - press.from.pixel.x, at.pixel.y - press.from.pixel.y);
    if (!press.begun && moved < STILL_PIXELS) return;
    press.begun = true;
    this.#traces.cursor = press.gesture.cursor;
    press.gesture.move(at);
  }

  up(at: PointerAt): void {
    if (this.#editor.view.carried) return this.#letGo(at);
    const press = this.#press;
    this.#press = null;
    if (!press) return;
    if (press.begun) press.gesture.finish(at);
    else press.click?.();
    this.#hover(at);
  }

  cancel(): void {
    const press = this.#press;
    this.#press = null;
    if (press?.begun) press.gesture.cancel();
    this.#traces.cursor = 'default';
  }

  leave(): void {
    this.#editor.view.pointer = null;
    this.#traces.hovered = null;
    this.#traces.caption = null;
    this.#editor.view.tool?.leave();
    if (this.#press) return;
    clearTraces(this.#traces);
    if (this.#editor.view.armed) this.#editor.session.dropDraft();
  }

  get #bench() {
    return { editor: this.#editor, traces: this.#traces };
  }

  #take(from: PointerAt, gesture: Gesture, click: (() => void) | null): void {
    this.#press = { from, gesture, click, begun: false };
  }

  #takeHold(at: PointerAt): void {
    const { session, view } = this.#editor;
    const { document, selection } = session;
    const handle = turnHandle(document, selection, view.camera);
    if (handle && this.#isNear(at, handle.at)) return this.#take(at, turnItems(this.#bench, handle), null);
    const corner = platformCorners(document, selection).findIndex((spot) => this.#isNear(at, spot));
    if (corner >= 0) return this.#take(at, dragCorner(this.#bench, corner), null);
    const item = this.#itemUnder(at);
    if (item !== null) return this.#takeItem(at, item);
    const loose = this.#looseUnderlayUnder(at);
    if (loose) return this.#take(at, dragUnderlay(this.#bench, loose, at.spot), null);
    this.#take(at, marquee(this.#bench, at.spot, at.add), () => this.#clickGround(at));
  }

  /** Pressing an item selects it at once; whether the others stay selected is decided when it was only a click. */
  #takeItem(at: PointerAt, item: string): void {
    const { session, view } = this.#editor;
    const { selection } = session;
    if (groupOf(session.document, item)?.id !== view.entered) view.entered = null;
    const held = heldWith(this.#editor, [item]);
    const wasSelected = held.every((id) => selection.includes(id));
    view.finding = null;
    if (!wasSelected) session.select(at.add ? [...new Set([...selection, ...held])] : held);
    const click = (): void => {
      if (at.add && wasSelected) session.select(selection.filter((id) => !held.includes(id)));
      else if (!at.add) session.select(held);
    };
    this.#take(at, dragItems(this.#bench, item, at), click);
  }

  /** What is under the pointer beside the items is what the menu is about: an underlay, a place, the platform, nothing. */
  pointOut(at: PointerAt): void {
    const { session } = this.#editor;
    session.select([]);
    const loose = this.#looseUnderlayUnder(at);
    if (loose) session.select([loose]);
    else this.#clickGround({ ...at, add: false });
  }

  #clickGround(at: PointerAt): void {
    const { session, view } = this.#editor;
    view.finding = null;
    view.entered = null;
    const { document } = session;
    const seat = seatAt(document, at.spot);
    view.seat = seat;
    if (seat !== null || at.add) return;
    const reach = EDGE_REACH_PIXELS / view.camera.scale;
    session.select(isAtPlatformEdge(document, at.spot, reach) ? [platformOf(document).id] : []);
  }

  #place(at: PointerAt): void {
    const { view, session } = this.#editor;
    const thing = view.armed;
    if (!thing) return;
    const { x, y } = settledForPlacing(this.#editor, at.spot);
    clearTraces(this.#traces);
    const placed = this.#editor.carryOut(placingOutcome(this.#editor, thing, { x, y }));
    if (placed && !at.add) view.armed = null;
    if (!placed) session.dropDraft();
  }

  /** What was carried here from the shelf stays; where it may not, it goes back. */
  #letGo(at: PointerAt): void {
    this.#place({ ...at, add: false });
    this.#editor.view.armed = null;
    this.#hover(at);
  }

  #hover(at: PointerAt): void {
    const { view, session } = this.#editor;
    if (view.tool) return this.#hoverWith(view.tool, at);
    if (view.armed) {
      const settled = settledForPlacing(this.#editor, at.spot);
      this.#traces.guides = settled.guides;
      this.#traces.cursor = 'copy';
      session.preview(placingOutcome(this.#editor, view.armed, settled));
      return;
    }
    const item = this.#itemUnder(at);
    const seat = item === null ? seatAt(session.document, at.spot) : null;
    this.#traces.hovered = item;
    // The card says more of the place that is looked into.
    this.#traces.caption = seat === null || seat === view.seat ? null : this.#seatCaption(seat);
    this.#traces.cursor = seat === null ? this.#cursorOver(at, item) : 'pointer';
  }

  #hoverWith(tool: PlanTool, at: PointerAt): void {
    this.#traces.hovered = null;
    this.#traces.caption = null;
    this.#traces.cursor = 'crosshair';
    tool.hover(at);
  }

  #seatCaption(seatId: string): HandTraces['caption'] {
    const { checks, view, session } = this.#editor;
    if (view.colouring === null || checks.report?.setup !== session.setup) return null;
    const figure = seatFigure(checks.report, seatId, view.colouring);
    if (!figure) return null;
    const name = labelOf(session.document, session.setup, figure.player);
    return { at: figure.seat, words: text.seat.short(figure.seat.label, name, figure.share) };
  }

  #cursorOver(at: PointerAt, item: string | null): string {
    const { session, view } = this.#editor;
    if (view.hand === 'pan') return 'grab';
    const handle = turnHandle(session.document, session.selection, view.camera);
    if (handle && this.#isNear(at, handle.at)) return 'grab';
    if (platformCorners(session.document, session.selection).some((spot) => this.#isNear(at, spot)))
      return 'grab';
    return item === null && !this.#looseUnderlayUnder(at) ? 'default' : 'move';
  }

  #looseUnderlayUnder(at: PointerAt): Id<'underlay'> | null {
    const { session, view } = this.#editor;
    const record = session.document.records.get(view.looseUnderlay ?? '');
    if (record?.kind !== 'underlay' || !record.shown) return null;
    return pointInPolygon(at.spot, underlayOutline(record)) ? record.id : null;
  }

  #itemUnder(at: PointerAt): string | null {
    const { session, view } = this.#editor;
    return itemAt(pickables(session.document, session.setup), at.spot, ITEM_REACH_PIXELS / view.camera.scale);
  }

  #isNear(at: PointerAt, spot: Vec2): boolean {
    const distance = Math.hypot(at.spot.x - spot.x, at.spot.y - spot.y);
    return distance * this.#editor.view.camera.scale <= HANDLE_REACH_PIXELS;
  }
}

const placesOf = new WeakMap<Document, readonly HousePlace[]>();

/** The place of the house under a spot; null: none. */
export function seatAt(document: Document, spot: Vec2): string | null {
  const places = placesOf.get(document) ?? housePlaces(document);
  placesOf.set(document, places);
  let best: { id: string; distance: number } | null = null;
  for (const { id, x, y } of places) {
    const distance = Math.hypot(x - spot.x, y - spot.y);
    if (distance <= SEAT_REACH && (!best || distance < best.distance)) best = { id, distance };
  }
  return best?.id ?? null;
}

function isAtPlatformEdge(document: Document, spot: Vec2, reach: number): boolean {
  const platform = platformOf(document);
  return platform.outline.some((_, index) => {
    const { a, b } = edgeOf(platform, index);
    return distancePointToSegment(spot, a, b) <= reach;
  });
}

/** A player with the stand he alone reads from; or a stand's reader with it: what belongs together on the floor. */
export function wholePlaceOf(document: Document, id: string): string[] {
  const record = document.records.get(id);
  if (record?.kind === 'player') return [id, ...ownStands(document, id)];
  if (record?.kind !== 'stand') return [id];
  const readers = record.sides.flatMap(({ reader }) => reader ?? []);
  return [id, ...readers];
}

function ownStands(document: Document, player: string): string[] {
  const own: string[] = [];
  for (const record of document.records.values()) {
    if (record.kind !== 'stand') continue;
    const readers = record.sides.map(({ reader }) => reader);
    if (readers.every((reader) => reader === asId(player))) own.push(record.id);
  }
  return own;
}
