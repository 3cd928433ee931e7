/** Actions on the view and the selection. */

import { tick } from 'svelte';
import { outlineOf } from '#model/catalogue/outlines.ts';
import { type Document, placedInSetup, platformOf } from '#model/document/document.ts';
import { groupOf, isHidden } from '#model/document/groups.ts';
import { isPlaced } from '#model/document/records.ts';
import { housePlaces } from '#model/document/seating.ts';
import type { Vec2 } from '#model/geometry/frame.ts';
import { storageOutline } from '#model/drawing/plan/storages.ts';
import { underlayOutline } from '#model/underlay/place.ts';
import { atRatio, capped, extentOf, fitted, grown, panned, zoomedAt, type Camera } from '../canvas/camera.ts';
import { firstLook, stageLook, wholeLook } from '#model/drawing/screen/first-look.ts';
import type { Editor } from '../state/editor.svelte.ts';
import type { View } from '../state/view.svelte.ts';
import type { Onlooker } from '../workers/protocol.ts';
import { glideTo } from './glide.ts';
import { heldWith, leaveGroup } from './grouping.ts';
import { setupTitle } from './setup-actions.ts';
import { text } from './text.ts';

/** Round the selection, in mm. */
const ROUND_SELECTION = 900;
/** In pixels, about what is looked at closely. */
const CLOSE = { top: 48, bottom: 48, sides: 48 };

export function undo(editor: Editor): void {
  const name = editor.session.undoName;
  editor.session.undo();
  if (name !== null) editor.announce(text.undid(name));
}

export function redo(editor: Editor): void {
  const name = editor.session.redoName;
  editor.session.redo();
  if (name !== null) editor.announce(text.redid(name));
}

/** Escape: first drops the tool or stops placing, then looking from a seat, then leaves the group, then lets go of finding and selection. */
export function letGo(editor: Editor): void {
  const { view, session } = editor;
  if (view.tool) view.tool.cancel();
  else if (view.armed) {
    view.armed = null;
    session.dropDraft();
  } else if (view.seat !== null) view.seat = null;
  else if (view.entered !== null) leaveGroup(editor);
  else {
    view.finding = null;
    session.select([]);
  }
}

/** The place that is looked into, or else the player, the place or the first place of the seats selected alone. */
function onlookerOf(editor: Editor): Onlooker | null {
  const { view, session } = editor;
  if (view.seat !== null) return { kind: 'seat', seat: view.seat };
  const [only, more] = session.selection;
  if (only === undefined || more !== undefined) return null;
  if (session.document.records.get(only)?.kind === 'player') return { kind: 'player', player: only };
  const seat = firstPlaceOf(editor, only);
  return seat === null ? null : { kind: 'seat', seat };
}

function firstPlaceOf({ session }: Editor, record: string): string | null {
  return housePlaces(session.document).find((place) => place.record === record)?.id ?? null;
}

export const mayLookFromPlaces = ({ session }: Editor): boolean => housePlaces(session.document).length > 0;

/** Looks into the place so many further on in its block or row; at first into that of the selection, or the first of all. */
export function lookFromPlace(editor: Editor, further: number): void {
  const { view, session } = editor;
  const places = housePlaces(session.document);
  const [selected] = session.selection;
  const start = selected === undefined ? null : firstPlaceOf(editor, selected);
  const now = places.findIndex(({ id }) => id === view.seat);
  const next = now < 0 ? places.findIndex(({ id }) => id === start) : now + further;
  view.seat = places[now < 0 ? Math.max(0, next) : (next + places.length) % places.length]?.id ?? null;
}

export const mayLookFrom = (editor: Editor): boolean => onlookerOf(editor) !== null;

export function lookFrom(editor: Editor): void {
  const from = onlookerOf(editor);
  if (from) void editor.questions.ask('seen', { from });
}

export function zoomBy(editor: Editor, factor: number): void {
  const { camera, size } = editor.view;
  glideTo(editor.view, zoomedAt(camera, size, { x: size.width / 2, y: size.height / 2 }, factor));
}

const PAN_PIXELS = 40;

export function panBy({ view }: Editor, right: number, up: number): void {
  view.camera = panned(view.camera, { x: -Math.sign(right) * PAN_PIXELS, y: Math.sign(up) * PAN_PIXELS });
}

export function showEverything({ session, view }: Editor): void {
  frame(view, () => wholeLook(session.document, view.size), glideTo);
}

export function showStage({ session, view }: Editor): void {
  frame(view, () => stageLook(session.document, session.setup, view.size), glideTo);
}

export function showAtFirst({ session, view }: Editor): void {
  frame(view, () => firstLook(session.document, session.setup, view.size), jumpTo);
}

/** After the window has another size: shows the same again, unless the view was moved by hand since. */
export function showAgain({ view }: Editor): void {
  const { framing } = view;
  if (framing && view.camera === framing.camera) frame(view, framing.again, jumpTo);
}

function frame(view: View, again: () => Camera, go: (view: View, camera: Camera) => void): void {
  const camera = again();
  view.framing = { camera, again };
  go(view, camera);
}

function jumpTo(view: View, camera: Camera): void {
  view.camera = camera;
}

export function showSelection({ session, view }: Editor): void {
  const extent = extentOf(session.selection.flatMap((id) => pointsOf(session.document, id)));
  if (extent) glideTo(view, fitted(grown(extent, ROUND_SELECTION), view.size, capped(CLOSE, view.size)));
}

export function showActualSize({ view }: Editor): void {
  glideTo(view, atRatio(view.camera, 1));
}

/** Brings a spot and the things named into the view, without changing the scale more than needed. */
export function lookAt({ session, view }: Editor, spot: Vec2 | null, ids: readonly string[]): void {
  const points = ids.flatMap((id) => pointsOf(session.document, id));
  const extent = extentOf(spot ? [spot, ...points] : points);
  if (!extent) return;
  const closest = fitted(grown(extent, ROUND_SELECTION), view.size, capped(CLOSE, view.size));
  const scale = Math.min(closest.scale, Math.max(view.camera.scale, closest.scale * 0.6));
  glideTo(view, { ...closest, scale } satisfies Camera);
}

/** The next of what can be taken hold of: a thing, a whole group, or inside a group the next of it. */
export function selectBeside(editor: Editor, step: 1 | -1): void {
  const { session, view } = editor;
  const { document } = session;
  const units = new Map<string, readonly string[]>();
  for (const { id } of placedInSetup(document, session.setup)) {
    if (isHidden(document, id)) continue;
    if (view.entered !== null && groupOf(document, id)?.id !== view.entered) continue;
    const held = heldWith(editor, [id]);
    units.set(held[0] ?? id, held);
  }
  const items = [...units.values()];
  if (items.length === 0) return;
  const last = session.selection.at(-1) ?? '';
  const at = items.findIndex((held) => held.includes(last));
  const next = items[(at + step + items.length + (at < 0 && step < 0 ? 1 : 0)) % items.length];
  if (!next) return;
  session.select(next);
  tellWhere(editor);
}

/** Says where the selection is now. */
export function tellWhere(editor: Editor): void {
  editor.announce(editor.session.selection.map((id) => editor.whereIs(id)).join('; '));
}

export function showSetupBeside(editor: Editor, step: 1 | -1): void {
  const { session } = editor;
  const at = session.setups.findIndex(({ id }) => id === session.setup);
  const next = session.setups[at + step];
  if (!next) return;
  session.showSetup(next.id);
  editor.announce(setupTitle(session.settled, next));
}

export type FocusPart = 'plan' | 'store' | 'outline' | 'turns' | 'strip' | 'strip-time' | 'programme';

/** A part whose script still has to come gets the focus as it comes, unless that takes so long that nobody waits for it. */
export function focusOn(part: FocusPart): void {
  waiting?.stop();
  waiting = null;
  if (!focusNow(part)) waiting = focusWhenThere(part);
}

/** Focuses what a change just made brings into the window: at once, for the next key may be meant for it. */
export function focusOnNew(part: () => FocusPart): void {
  void tick().then(() => focusOn(part()));
}

const LONGEST_WAIT_MS = 10_000;

let waiting: { readonly stop: () => void } | null = null;

function focusNow(part: FocusPart): boolean {
  const element = document.querySelector<HTMLElement>(`[data-${part}]`);
  element?.focus();
  return element !== null;
}

function focusWhenThere(part: FocusPart): { readonly stop: () => void } {
  const changes = new MutationObserver(() => focusNow(part) && stop());
  const late = setTimeout(() => stop(), LONGEST_WAIT_MS);
  const stop = (): void => {
    changes.disconnect();
    clearTimeout(late);
  };
  changes.observe(document.body, { childList: true, subtree: true });
  return { stop };
}

export function openAndFocus({ view }: Editor, part: 'store' | 'outline'): void {
  view.leftOpen = true;
  focusOnNew(() => part);
}

function pointsOf(document: Document, id: string): readonly Vec2[] {
  const record = document.records.get(id);
  if (!record) return [];
  if (isPlaced(record)) return outlineOf(record);
  if (record.kind === 'platform') return platformOf(document).outline;
  if (record.kind === 'underlay') return underlayOutline(record);
  if (record.kind === 'storage') return storageOutline(record);
  return housePlaces(document).filter((place) => place.record === id);
}
