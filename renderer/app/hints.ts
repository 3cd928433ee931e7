/** The first things to try: where each is on the screen, and how to be taken there. The words are in `text.hints`. */

import { tick } from 'svelte';
import { placedInSetup } from '#model/document/document.ts';
import type { Editor } from '../state/editor.svelte.ts';
import { actionNamed } from './actions.ts';
import { focusOn, showSelection } from './looking.ts';

export interface Hint {
  /** `data-hint` of what is to be used: it gets a ring while the step is shown. */
  readonly mark: string;
  readonly show: (editor: Editor) => void;
}

export const HINTS: readonly Hint[] = [
  { mark: 'house', show: colourByLast },
  { mark: 'findings', show: goToFaults },
  { mark: 'plan', show: takeUpStand },
  { mark: 'properties', show: goToPlace },
  { mark: 'print', show: (editor) => actionNamed('file.print').run(editor) },
];

/** The player who was set last is another one than most seats see worst. */
function colourByLast({ session, view }: Editor): void {
  const last = placedInSetup(session.document, session.setup).findLast(({ kind }) => kind === 'player');
  if (last) view.colouring = last.id;
}

/** In the demo the other way to set a piece is the worse one. */
function goToFaults({ session }: Editor): void {
  const setup = session.setups.find(({ variantOf }) => variantOf !== null) ?? session.setups[1];
  if (setup) session.showSetup(setup.id);
}

function takeUpStand(editor: Editor): void {
  selectStand(editor);
  showSelection(editor);
  focusOn('plan');
}

function goToPlace(editor: Editor): void {
  if (editor.session.selection.length === 0) selectStand(editor);
  editor.view.rightOpen = true;
  void tick().then(() => fieldOf('properties')?.focus());
}

function selectStand({ session }: Editor): void {
  const stand = placedInSetup(session.document, session.setup).find(({ kind }) => kind === 'stand');
  if (stand) session.select([stand.id]);
}

/** The first field is the name; the next one is the place. */
function fieldOf(mark: string): HTMLElement | null {
  return document.querySelectorAll<HTMLElement>(`[data-hint="${mark}"] input`)[1] ?? null;
}

/** A ring round what a step is about, until the answer is called. */
export function ringed(mark: string): () => void {
  const element = document.querySelector(`[data-hint="${mark}"]`);
  element?.setAttribute('data-hinted', '');
  return () => element?.removeAttribute('data-hinted');
}
