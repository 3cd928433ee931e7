/** Actions on files and houses. */

import { replaceHouse } from '#model/commands/replace-venue.ts';
import { unitsIn } from '#model/document/regions.ts';
import type { Units } from '#model/document/measures.ts';
import { readDemo } from '#model/file-format/demo.ts';
import { newConcert } from '../store/new-concert.ts';
import type { Editor } from '../state/editor.svelte.ts';
import { showEverything } from './looking.ts';
import { text } from './text.ts';

export async function startNew(editor: Editor): Promise<void> {
  if (!(await editor.desk.mayLeave())) return;
  const house = await editor.questions.ask('newConcert', null);
  if (!house) return;
  editor.desk.begin(newConcert(house, unitsOfNew(editor)), text.files.untitled, { pristine: true });
}

/** Those that were chosen, else what is usual where the window is. */
function unitsOfNew({ settings: { units } }: Editor): Units {
  return units === 'document' ? unitsIn(navigator.language) : units;
}

export async function openDemo(editor: Editor): Promise<void> {
  if (!(await editor.desk.mayLeave())) return;
  const answer = await editor.whileComing(editor.host.call('files.demo'));
  if (!answer.ok) return editor.warn(answer.error.message, 'opening');
  const reading = readDemo(answer.value.text, navigator.language);
  if (!reading.ok) return editor.warn(`${answer.value.name}: ${reading.problem.message}`, 'opening');
  editor.desk.begin(reading.document, answer.value.name, { pristine: true });
}

export async function takeOtherHouse(editor: Editor): Promise<void> {
  const house = await editor.questions.ask('otherHouse', null);
  if (house && editor.carryOut(replaceHouse(editor.session.settled, { house }))) showEverything(editor);
}
