/** Files for the venue's and the crew's other programs. */

import type { ExportRequest, Handle } from '#contract/contract.ts';
import { writeDocument } from '#model/file-format/write.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { text } from '../text.ts';

/** Asks for a place and saves there; nothing that is there is replaced unless the user has agreed to it. */
export async function exportFile(editor: Editor, what: ExportRequest['what']): Promise<void> {
  const { session, host } = editor;
  const place = await placeFor(editor, what);
  if (!place) return;
  const request: ExportRequest = { text: writeDocument(session.settled), setup: session.setup, what };
  const saved = await host.call('export.save', request, place.handle, place.replace);
  if (!saved.ok) return editor.warn(saved.error.message, 'saving');
  editor.announce(text.exports.saved(saved.value.name));
  editor.done = text.exports.saved(saved.value.name);
  if (saved.value.warning) editor.warn(saved.value.warning, 'saving');
}

interface Place {
  readonly handle: Handle;
  readonly replace: boolean;
}

async function placeFor(editor: Editor, what: ExportRequest['what']): Promise<Place | null> {
  const { hello, host, questions } = editor;
  const type = what === 'dxf' ? 'dxf' : 'csv';
  const name = `${suggested(editor, what)}.${type}`;
  if (!hello.nativeDialogs) return questions.ask('place', { mode: 'save', type, name });
  const answer = await host.call('files.askSave', name, type);
  if (!answer.ok) editor.warn(answer.error.message, 'saving');
  // The system's dialog has asked about replacing by itself.
  return answer.ok && answer.value !== null ? { handle: answer.value, replace: true } : null;
}

/** A plain name on every system. */
function suggested({ session }: Editor, what: ExportRequest['what']): string {
  const setup = session.setups.find(({ id }) => id === session.setup);
  const whose = what === 'inventory' ? session.concert.name : setup?.name;
  const plain = (whose ?? '')
    .replace(/[^\p{L}\p{N} _-]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  return [plain.slice(0, 60), text.exports.fileOf[what]].filter(Boolean).join(' ');
}
