/** Copy, cut and paste through the browser's own events, which need no permission and reach other windows. */

import { remove } from '#model/commands/remove.ts';
import { isPlaced, type Point } from '#model/document/records.ts';
import { wayBeside } from '../canvas/placing.ts';
import { clipped, pasted, readClipped, type ClippedItem } from '../files/clipped-items.ts';
import type { Editor } from '../state/editor.svelte.ts';
import { text } from './text.ts';

export function copyTo(event: ClipboardEvent, editor: Editor): void {
  const items = isForEditor(event) ? clipped(editor.session.settled, editor.session.selection) : null;
  if (items === null) return;
  event.clipboardData?.setData('text/plain', items);
  event.preventDefault();
  if (event.type === 'cut')
    editor.carryOut(remove(editor.session.settled, { ids: editor.session.selection }));
  else editor.announce(text.copied(editor.session.selection.length));
}

export function pasteFrom(event: ClipboardEvent, editor: Editor): void {
  if (!isForEditor(event)) return;
  if (pasteText(event.clipboardData?.getData('text/plain') ?? '', editor)) event.preventDefault();
}

/**
 * Not by the browser's key: then it asks whoever sits before it, or refuses. `spot`: where a menu was opened; null or
 * left out: beside what stands there.
 */
export async function pasteByHand(editor: Editor, spot: Point | null = null): Promise<void> {
  const clip = await navigator.clipboard.readText().catch(() => null);
  if (clip === null) editor.tell(text.hands.pasteByKey);
  else pasteText(clip, editor, spot);
}

function pasteText(clip: string, editor: Editor, spot: Point | null = editor.view.pointer): boolean {
  const items = readClipped(clip);
  if (!items) return false;
  const { session } = editor;
  const by = spot ? towards(items, spot) : wayBeside(editor, items.filter(isPlaced));
  editor.carryOut(pasted(session.settled, items, { setup: session.setup, by }));
  return true;
}

/** Text that is being typed or read keeps its own clipboard. */
function isForEditor({ target }: Event): boolean {
  if (!(target instanceof Element)) return true;
  return !target.matches('input, select, textarea') && target.closest('dialog') === null;
}

/** The way that brings the middle of the items to a spot. */
function towards(items: readonly ClippedItem[], to: Point): Point {
  const spots = items.filter(isPlaced);
  const sum = spots.reduce((total, { x, y }) => ({ x: total.x + x, y: total.y + y }), { x: 0, y: 0 });
  const step = (value: number): number => Math.round(value / 10) * 10;
  return { x: step(to.x - sum.x / spots.length), y: step(to.y - sum.y / spots.length) };
}
