/** Actions on the setups of the programme. */

import {
  addSetup,
  chooseVariant,
  copySetup,
  removeSetup,
  renameSetup,
  reorderSetup,
  setupAddedBy,
  varySetup,
} from '#model/commands/setups.ts';
import { mirroringNotes, mirrorSetup } from '#model/commands/mirror-setup.ts';
import type { Outcome } from '#model/commands/command.ts';
import { programmeOf, type Document } from '#model/document/document.ts';
import type { Setup } from '#model/document/records.ts';
import { placeInProgramme } from '#model/programme/programme.ts';
import type { Editor } from '../state/editor.svelte.ts';
import { text } from './text.ts';

export function setupInView({ session }: Editor): Setup {
  const setup = session.setups.find(({ id }) => id === session.setup);
  if (!setup) throw new Error('the setup in view is not in the document');
  return setup;
}

/** Its name, or the place in the programme that it has or is a variant for. */
export function setupTitle(document: Document, setup: Setup): string {
  return setup.name || text.setups.unnamed(placeInProgramme(document, setup));
}

export function addEmptySetup(editor: Editor): void {
  added(editor, addSetup(editor.session.settled, { name: '' }));
}

export function addSetupCopy(editor: Editor): void {
  const setup = setupInView(editor);
  const name = text.setups.copyOf(setupTitle(editor.session.settled, setup));
  added(editor, copySetup(editor.session.settled, { setup: setup.id, name }));
}

export async function askForSetupName(editor: Editor): Promise<void> {
  const setup = setupInView(editor);
  const name = await editor.questions.ask('setupName', { title: text.setups.nameTitle, name: setup.name });
  if (name !== null) editor.carryOut(renameSetup(editor.session.settled, { setup: setup.id, name }));
}

export function removeSetupInView(editor: Editor): void {
  editor.carryOut(removeSetup(editor.session.settled, { setup: editor.session.setup }));
}

export function shiftSetup(editor: Editor, by: 1 | -1): void {
  const { id } = setupInView(editor);
  const place = programmeOf(editor.session.settled).findIndex((piece) => piece.id === id) + 1;
  editor.carryOut(reorderSetup(editor.session.settled, { setup: id, to: place + by }));
}

/** Another version of it, shown at once. */
export function varied(editor: Editor, setup: Setup): void {
  const name = text.programme.variantOf(setupTitle(editor.session.settled, setup));
  added(editor, varySetup(editor.session.settled, { setup: setup.id, name }));
}

/** True when the variant has taken its place in the programme. */
export function chooseAsPlayed(editor: Editor, { id }: Setup): boolean {
  return editor.carryOut(chooseVariant(editor.session.settled, { setup: id }));
}

/** Says what of it has no mirror image. */
export function mirrorWhole(editor: Editor, { id }: Setup): void {
  const { settled } = editor.session;
  const outcome = mirrorSetup(settled, { setup: id });
  if (!editor.carryOut(outcome) || !outcome.ok) return;
  const notes = mirroringNotes(settled, outcome);
  if (notes.length > 0) editor.tell(notes.join(' '));
}

/** A new setup is shown at once. */
function added(editor: Editor, outcome: Outcome): void {
  const setup = setupAddedBy(outcome);
  if (editor.carryOut(outcome) && setup !== null) editor.session.showSetup(setup);
}
