/** Booklets and cue cards that a window asks for: from the text of its document, whose kept plan is the one printed. */

import type { PaperRequest } from '#contract/contract.ts';
import type { Document } from '#model/document/document.ts';
import { find } from '#model/document/document.ts';
import { asId, type Id } from '#model/document/ids.ts';
import { scoreOf } from '#model/document/parts.ts';
import { readDocument } from '#model/file-format/read.ts';
import { judgedPlan } from '#model/pages/kept/judged.ts';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import type { Fs } from './fs.ts';
import type { Handles } from './handles.ts';
import { openPartFile } from './part-file.ts';
import { printPlanned, type PartPages, type PrintedPlan } from './planned-print.ts';
import { hashOf } from './save-file.ts';

export interface PaperShelf {
  readonly fs: Fs;
  readonly handles: Handles;
  readonly now: () => Date;
}

/** Throws `FaultError`: what was sent is no document with a plan, a PDF is another than the concert knows, a page does not fit. */
export async function renderPaper(request: PaperRequest, shelf: PaperShelf): Promise<PrintedPlan> {
  const read = readDocument(request.text);
  if (!read.ok) throw new FaultError('paper.notADocument', read.problem.message);
  const { document } = read;
  const setup = asId<'setup'>(request.setup);
  if (!find(document, setup))
    throw new FaultError('paper.noSetup', t`The concert has no setup "${request.setup}".`);
  const planned = judgedPlan(document, setup);
  if (!planned) throw new FaultError('paper.noPlan', t`This setup has no page plan to print.`);
  const { instance, plan } = planned;
  const parts = await openedParts(document, setup, request.pdfs, shelf);
  const { booklets, cards } = request;
  return printPlanned({ document, setup, instance, plan, parts, booklets, cards, now: shelf.now() });
}

/** A file that two players read from is opened once. */
async function openedParts(
  document: Document,
  setup: Id<'setup'>,
  pdfs: PaperRequest['pdfs'],
  { fs, handles }: PaperShelf,
): Promise<Map<string, PartPages>> {
  const score = scoreOf(document, setup);
  const opened = new Map<string, ReturnType<typeof openPartFile>>();
  const parts = new Map<string, PartPages>();
  for (const { player, handle } of pdfs) {
    const pdf = score?.pdfs[score.players.findIndex((one) => one === player)];
    if (!pdf) throw new FaultError('paper.noPart', t`The concert names no PDF for "${player}".`);
    const opening = opened.get(handle) ?? openPartFile(fs, handles.pathOf(handle));
    opened.set(handle, opening);
    const { bytes, part } = await opening;
    if (hashOf(bytes) !== pdf.sha256)
      throw new FaultError(
        'paper.otherPart',
        t`"${part.name}" is another file than the one that was given to the part: show it again in the music of the setup.`,
      );
    parts.set(player, { part, pages: pdf.pages.map((page) => (page === null ? null : page - 1)) });
  }
  return parts;
}
