/** Saves what was chosen, one file after the other, so that it can be stopped between them. */

import type { Handle, PaperRequest } from '#contract/contract.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { fileNameFor } from '../../files/file-names.ts';
import { text } from '../text.ts';

/** One PDF to be saved. */
export interface PaperFile {
  /** Without its ending. */
  readonly title: string;
  readonly booklets: PaperRequest['booklets'];
  readonly cards: string | null;
}

export interface Saving {
  readonly files: readonly PaperFile[];
  readonly common: Pick<PaperRequest, 'text' | 'setup'>;
  /** Where the parts are; it may still have to be found out. */
  readonly pdfs: () => Promise<PaperRequest['pdfs']>;
  /** Files beside the first one may be replaced; of the first one the user is asked. */
  readonly replace: boolean;
  readonly progress: (done: number) => void;
  readonly isStopped: () => boolean;
}

export interface SavingOutcome {
  readonly saved: readonly string[];
  readonly notes: readonly string[];
  readonly problem: string | null;
}

interface Place {
  readonly handle: Handle;
  readonly replace: boolean;
}

/** Null: the user changed his mind about the place. */
export async function savePaper(editor: Editor, saving: Saving): Promise<SavingOutcome | null> {
  const [first] = saving.files;
  if (!first) return null;
  const begun = await chosenPlace(editor, nameOf(first));
  if (begun === null) return null;
  if ('problem' in begun) return { saved: [], notes: [], problem: begun.problem };
  const places = await placesOf(editor, saving, begun);
  if ('problem' in places) return { saved: [], notes: [], problem: places.problem };
  return saveEach(editor, saving, places.found);
}

async function chosenPlace(
  editor: Editor,
  name: string,
): Promise<Place | { readonly problem: string } | null> {
  if (!editor.hello.nativeDialogs) return editor.questions.ask('place', { mode: 'save', type: 'pdf', name });
  const answer = await editor.host.call('files.askSave', name, 'pdf');
  if (!answer.ok) return { problem: answer.error.message };
  // The system's dialog has asked about replacing by itself.
  return answer.value === null ? null : { handle: answer.value, replace: true };
}

/** Nothing is written before every place is known to be free. */
async function placesOf(
  { host }: Editor,
  { files, replace }: Saving,
  first: Place,
): Promise<{ readonly found: readonly Place[] } | { readonly problem: string }> {
  const found: Place[] = [first];
  for (const file of files.slice(1)) {
    const beside = await host.call('files.beside', first.handle, nameOf(file));
    if (!beside.ok) return { problem: beside.error.message };
    if (beside.value.exists && !replace) return { problem: text.paper.exists(nameOf(file)) };
    found.push({ handle: beside.value.handle, replace });
  }
  return { found };
}

async function saveEach(
  { host }: Editor,
  { files, common, pdfs, progress, isStopped }: Saving,
  places: readonly Place[],
): Promise<SavingOutcome> {
  const [saved, notes]: [string[], Set<string>] = [[], new Set()];
  const told = (problem: string | null): SavingOutcome => ({ saved, notes: [...notes], problem });
  const request = { ...common, pdfs: await pdfs() };
  for (const [index, { booklets, cards }] of files.entries()) {
    const place = places[index];
    if (!place) break;
    if (isStopped()) return told(text.paper.stopped(index, files.length));
    progress(index);
    const result = await host.call(
      'paper.save',
      { ...request, booklets, cards },
      place.handle,
      place.replace,
    );
    if (!result.ok) return told(result.error.message);
    saved.push(result.value.name);
    for (const note of result.value.notes) notes.add(note);
    if (result.value.warning) notes.add(result.value.warning);
  }
  return told(null);
}

function nameOf({ title }: PaperFile): string {
  return `${fileNameFor(title) || text.files.untitled}.pdf`;
}
