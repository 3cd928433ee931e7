/** Actions on the setups of the programme. */

import {
  addSetup,
  copySetup,
  removeSetup,
  renameSetup,
  reorderSetup,
  setupAddedBy,
} from '#model/commands/setups.ts';
import type { Outcome } from '#model/commands/command.ts';
import type { Setup } from '#model/document/records.ts';
import type { Editor } from '../state/editor.svelte.ts';
import { text } from './text.ts';

export function setupInView({ session }: Editor): Setup {
  const setup = session.setups.find(({ id }) => id === session.setup);
  if (!setup) throw new Error('the setup in view is not in the document');
  return setup;
}

export function setupTitle({ name, order }: Setup): string {
  return name || text.setups.unnamed(order);
}

export function addEmptySetup(editor: Editor): void {
  added(editor, addSetup(editor.session.settled, { name: '' }));
}

export function addSetupCopy(editor: Editor): void {
  const setup = setupInView(editor);
  const name = text.setups.copyOf(setupTitle(setup));
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
  const { id, order } = setupInView(editor);
  editor.carryOut(reorderSetup(editor.session.settled, { setup: id, to: order + by }));
}

/** A new setup is shown at once. */
function added(editor: Editor, outcome: Outcome): void {
  const setup = setupAddedBy(outcome);
  if (editor.carryOut(outcome) && setup !== null) editor.session.showSetup(setup);
}
