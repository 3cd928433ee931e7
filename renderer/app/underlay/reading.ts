/** From a file that the user chose to what an underlay holds, or to one clear line. */

import type { Handle, UnderlayFile } from '#contract/contract.ts';
import type { UnderlayPicture } from '#model/document/records.ts';
import type { DxfLines } from '#model/underlay/dxf-lines.ts';
import { bytesOf } from '../../canvas/underlay-pictures.ts';
import type { Editor } from '../../state/editor.svelte.ts';
import {
  LONGEST_SIDE,
  pictureOf,
  type UnderlayAnswer,
  type UnderlayProblem,
  type UnderlayQuestion,
  type UnderlayReady,
} from '../../workers/underlay-content.ts';
import { chosenHandle } from '../music/chosen-file.ts';
import { openPdfPages, type PdfPages } from '../music/pdf-pages.ts';
import { text } from '../text.ts';

export type ReadUnderlay =
  | {
      readonly type: 'picture';
      readonly name: string;
      readonly picture: UnderlayPicture;
      readonly note: string | null;
    }
  | {
      readonly type: 'lines';
      readonly name: string;
      readonly lines: DxfLines;
      readonly note: string | null;
    }
  /** A page is still to be chosen. */
  | { readonly type: 'pages'; readonly name: string; readonly pages: PdfPages }
  | { readonly type: 'left' }
  | { readonly type: 'refused'; readonly problem: string };

/** What reading may take before it is given up. */
const PATIENCE_MS = 2000;
/** Of a page, which may hold a whole house. */
const PAGE_PATIENCE_MS = 15_000;

export async function chooseUnderlay(editor: Editor, busy: () => void): Promise<ReadUnderlay> {
  const handle = await chosenHandle(editor, 'underlay');
  if (handle === null) return { type: 'left' };
  if (typeof handle !== 'string') return refused(handle.problem);
  busy();
  return readUnderlay(editor, handle);
}

async function readUnderlay({ host }: Editor, handle: Handle): Promise<ReadUnderlay> {
  const read = await host.call('underlay.read', handle);
  if (!read.ok) return refused(read.error.message);
  const { name, type, base64 } = read.value;
  const bytes = bytesOf(base64);
  if (!bytes) return refused(text.underlay.damaged(name));
  if (type === 'pdf') return openedPdf(bytes, name);
  const question: UnderlayQuestion = {
    kind: type === 'dxf' ? 'dxf' : 'picture',
    bytes,
    media: `image/${type}`,
  };
  return fromAnswer(await answerTo(question), name);
}

async function openedPdf(bytes: Uint8Array, name: UnderlayFile['name']): Promise<ReadUnderlay> {
  const opening = openPdfPages(bytes).catch((error: unknown) => (isLocked(error) ? 'locked' : null));
  const pages = await within(PAGE_PATIENCE_MS, opening);
  if (pages === 'late') {
    void opening.then((late) => late && late !== 'locked' && late.close());
    return refused(text.underlay.tooLong(name));
  }
  if (pages === 'locked') return refused(text.underlay.locked(name));
  return pages ? { type: 'pages', name, pages } : refused(text.underlay.damaged(name));
}

/** By the name that the library gives it. */
function isLocked(error: unknown): boolean {
  return error instanceof Error && error.name === 'PasswordException';
}

function fromAnswer(answer: UnderlayAnswer | 'late', name: string): ReadUnderlay {
  if (answer === 'late') return refused(text.underlay.tooLong(name));
  if (!answer.ok) return refused(PROBLEMS[answer.problem](name));
  if ('lines' in answer) {
    const things = answer.leftOut.map(({ name: kind, count }) => `${kind} ${count}`).join(', ');
    return { type: 'lines', name, lines: answer.lines, note: things && text.underlay.leftOut(name, things) };
  }
  const { picture, smaller } = answer.picture;
  const note = smaller ? text.underlay.smaller(name, picture.width, picture.height) : null;
  return { type: 'picture', name, picture, note };
}

const PROBLEMS: Readonly<Record<UnderlayProblem, (name: string) => string>> = {
  damaged: (name) => text.underlay.damaged(name),
  empty: (name) => text.underlay.noLines(name),
  tooMany: (name) => text.underlay.tooManyLines(name),
  tooLarge: (name) => text.underlay.tooFarApart(name),
};

/** In a worker of its own, which is ended when it is done or takes too long; its time runs from when it is there. */
async function answerTo(question: UnderlayQuestion): Promise<UnderlayAnswer | 'late'> {
  const worker = new Worker(new URL('../../workers/underlay.worker.ts', import.meta.url), { type: 'module' });
  const isThere = new Promise((resolve) => worker.addEventListener('message', resolve, { once: true }));
  const answer = new Promise<UnderlayAnswer>((resolve) => {
    worker.addEventListener('message', ({ data }: MessageEvent<UnderlayAnswer | UnderlayReady>) => {
      if (data !== 'ready') resolve(data);
    });
    worker.addEventListener('error', () => resolve({ ok: false, problem: 'damaged' }));
    worker.postMessage(question, [question.bytes.buffer]);
  });
  const inTime = isThere.then(() => within(PATIENCE_MS, answer));
  return Promise.race([answer, inTime]).finally(() => worker.terminate());
}

function within<T>(milliseconds: number, work: Promise<T>): Promise<T | 'late'> {
  let timer: ReturnType<typeof setTimeout>;
  const late = new Promise<'late'>((resolve) => (timer = setTimeout(() => resolve('late'), milliseconds)));
  return Promise.race([work, late]).finally(() => clearTimeout(timer));
}

/** A page of a PDF as a picture whose longer side has `LONGEST_SIDE` pixels. */
export async function readPage(pages: PdfPages, page: number, name: string): Promise<ReadUnderlay> {
  const canvas = document.createElement('canvas');
  const draw = (width: number) => within(PAGE_PATIENCE_MS, pages.draw(page, canvas, width));
  const isKnown = await draw(TRIAL);
  if (isKnown === 'late') return refused(text.underlay.tooLong(name));
  const ratio = canvas.height / canvas.width;
  if (!isKnown || !(ratio > 1 / 100 && ratio < 100)) return refused(text.underlay.noPages(name));
  const done = await draw(Math.round(LONGEST_SIDE / Math.max(1, ratio)));
  if (done === 'late') return refused(text.underlay.tooLong(name));
  if (!done) return refused(text.underlay.noPages(name));
  const copy = new OffscreenCanvas(canvas.width, canvas.height);
  copy.getContext('2d')?.drawImage(canvas, 0, 0);
  return { type: 'picture', name, picture: await pictureOf(copy), note: null };
}

/** Pixels across, to see how high a page is. */
const TRIAL = 60;

function refused(problem: string): ReadUnderlay {
  return { type: 'refused', problem };
}
