/** The PDF of a part: chosen, found again, shown, and kept in the concert by a command. */

import type { Handle, PartFile } from '#contract/contract.ts';
import { setPartPdf } from '#model/commands/score.ts';
import type { Id } from '#model/document/ids.ts';
import type { PartPdf } from '#model/document/records.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import { done } from '../properties/change.ts';
import { text } from '../text.ts';
import { chosenHandle } from './chosen-file.ts';
import { fittedTo, inOrder } from './page-map.ts';

/** A part of a score, by its index. */
export interface PartOf {
  readonly score: Id<'score'>;
  readonly part: number;
}

export type ChosenPart =
  | { readonly outcome: 'chosen'; readonly handle: Handle; readonly file: PartFile }
  | { readonly outcome: 'left' }
  | { readonly outcome: 'refused'; readonly problem: string };

/** The user chooses a file, and the shell looks it over. */
export async function choosePart(editor: Editor): Promise<ChosenPart> {
  const handle = await chosenHandle(editor, 'pdf');
  if (handle === null) return { outcome: 'left' };
  if (typeof handle !== 'string') return { outcome: 'refused', problem: handle.problem };
  return readPart(editor, handle);
}

export async function readPart({ host }: Editor, handle: Handle): Promise<ChosenPart> {
  const read = await host.call('part.read', handle);
  if (!read.ok) return { outcome: 'refused', problem: read.error.message };
  return { outcome: 'chosen', handle, file: read.value };
}

/** Keeps the file as what the part is printed in; of the one before the map and the staff size, as far as they fit. */
export function keepPart(
  editor: Editor,
  { score, part }: PartOf,
  { handle, file }: { readonly handle: Handle; readonly file: PartFile },
): string | null {
  const before = pdfOf(editor, { score, part });
  const { name, sha256, sizes } = file;
  const isSame = before?.sha256 === sha256 || before?.file === name;
  const pdf: PartPdf = {
    file: name,
    sha256,
    sizes,
    pages: before && isSame ? fittedTo(before.pages, sizes.length) : inOrder(sizes.length),
    staffSize: before && isSame ? before.staffSize : null,
  };
  const problem = setPdf(editor, { score, part }, pdf);
  if (problem === null) editor.partFiles.remember(pdf, handle);
  return problem;
}

/** What is wrong with it, or null. */
export function setPdf(editor: Editor, { score, part }: PartOf, pdf: PartPdf | null): string | null {
  const { staffSize } = pdf ?? { staffSize: null };
  if (staffSize !== null && !(staffSize >= STAFF_LEAST && staffSize <= STAFF_MOST))
    return text.pdf.staffBad(STAFF_LEAST, STAFF_MOST);
  return done(editor, setPartPdf(editor.session.settled, { score, part, pdf }));
}

export function pdfOf(editor: Editor, { score, part }: PartOf): PartPdf | null {
  const record = editor.session.document.records.get(score);
  return record?.kind === 'score' ? (record.pdfs[part] ?? null) : null;
}

/** As the file takes it, mm. */
const [STAFF_LEAST, STAFF_MOST] = [1, 100];

/** The bytes behind a handle; a sentence when they cannot be had. */
export async function bytesOf({ host }: Editor, handle: Handle): Promise<Uint8Array | string> {
  const answer = await host.call('part.bytes', handle);
  if (!answer.ok) return answer.error.message;
  return Uint8Array.from(atob(answer.value), (character) => character.charCodeAt(0));
}
