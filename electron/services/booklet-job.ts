/** From a described booklet to what is printed: its parts opened, every page in its place. */

import { basename, resolve } from 'node:path';
import { paperModel } from '#model/catalogue/paper.ts';
import { pagesInView, type Binding, type PageRef, type View } from '#model/pages/bindings/binding.ts';
import { bindingFault } from '#model/pages/bindings/fault.ts';
import { pagesOf } from '#model/pages/bindings/make.ts';
import { t } from '#model/words/say.ts';
import type { BookletDescription, DescribedSide } from './booklet-description.ts';
import { descriptionFault, pageList } from './booklet-description.ts';
import type { BookletJob } from './booklet.ts';
import { FaultError, faultOf } from './faults.ts';
import type { Fs } from './fs.ts';
import { openBytes } from './open-file.ts';
import { openPartPdf, type OpenedPart } from './part-pdf.ts';

interface Surroundings {
  readonly fs: Fs;
  /** Folder of the description: paths of PDFs start there. */
  readonly folder: string;
  readonly now: Date;
}

/** Throws `FaultError`. */
export async function jobFrom(
  described: BookletDescription,
  { fs, folder, now }: Surroundings,
): Promise<BookletJob> {
  const parts = await openParts(described, fs, folder);
  const sides = described.sides.map((side, index) => sourceOfSide(side, index, parts));
  const binding = bindingFrom(described, sides);
  refuseSpareCues(described, binding);
  return {
    title: described.title,
    binding,
    players: described.sides.map(({ player }) => player),
    page: described.pageSize === null ? null : paperOf(described.pageSize),
    paper: paperOf(described.paper),
    cues: described.cues,
    sourceOf: ({ part, page }) => {
      const side = sides[Number(part)];
      const pdfPage = side?.pdfPages[page - 1];
      return side?.pdf && pdfPage !== undefined ? { part: side.pdf, page: pdfPage - 1 } : null;
    },
    now,
  };
}

function paperOf(id: string) {
  const model = paperModel(id);
  if (!model) throw new Error(`the catalogue has no paper ${id}`);
  return model;
}

/** Each file once, even where both sides read from it. */
async function openParts(
  { sides }: BookletDescription,
  fs: Fs,
  folder: string,
): Promise<ReadonlyMap<string, OpenedPart>> {
  const parts = new Map<string, OpenedPart>();
  for (const { pdf } of sides) {
    if (pdf === null || parts.has(pdf)) continue;
    const path = resolve(folder, pdf);
    const bytes = await openBytes(fs, path, 'part').catch((error: unknown) => {
      const { code, message } = faultOf(error, path);
      throw new FaultError(code, message);
    });
    parts.set(pdf, await openPartPdf(bytes, basename(path)));
  }
  return parts;
}

interface SideSource {
  /** What each page of the part is in the PDF, from 1; as long as the part when there is one. */
  readonly pdfPages: readonly number[];
  readonly pdf: OpenedPart | null;
  /** Of the part. */
  readonly count: number;
}

function sourceOfSide(
  side: DescribedSide,
  index: number,
  parts: ReadonlyMap<string, OpenedPart>,
): SideSource {
  const pdf = side.pdf === null ? null : (parts.get(side.pdf) ?? null);
  if (!pdf) return { pdf, pdfPages: [], count: side.player === '' ? 0 : (side.pages ?? 0) };
  const all = pdf.pages.length;
  const typed = side.pdfPages === null ? oneToOne(all) : pageList(side.pdfPages, all);
  if (typeof typed === 'string') throw descriptionFault(`sides[${index}].pdfPages`, side.pdfPages, typed);
  const count = side.pages ?? typed.length;
  if (count > typed.length)
    throw descriptionFault(`sides[${index}].pages`, count, t`"${pdf.name}" gives ${typed.length} of them`);
  return { pdf, pdfPages: typed.slice(0, count), count };
}

function oneToOne(count: number): number[] {
  return Array.from({ length: count }, (_, index) => index + 1);
}

function bindingFrom(described: BookletDescription, sides: readonly SideSource[]): Binding {
  const { binding: kind } = described;
  const pagesPerPanel = panelWidth(described, sides);
  const views = described.sides.map(
    (side, index) => side.views?.map((view) => viewFrom(view, index, sides)) ?? null,
  );
  const leaves = described.leaves ?? leavesNeeded(described, sides, { kind, pagesPerPanel });
  const shape = {
    kind,
    leaves,
    pagesPerPanel,
    stackSide: kind === 'ridge' && described.stackSide === 'second' ? 1 : 0,
  } as const;
  const binding: Binding = {
    ...shape,
    views: views.map((given, index) => given ?? inOrder(shape, index, sides[index]?.count ?? 0)),
  };
  const fault = bindingFault(binding);
  if (fault) throw new FaultError('booklet.badDescription', t`The binding cannot be made: ${fault}.`);
  return binding;
}

function panelWidth(
  { binding, pagesPerPanel, sides: described }: BookletDescription,
  sides: readonly SideSource[],
): number {
  if (binding === 'book') return 1;
  return binding === 'loose' ? (described[0]?.views?.[0]?.length ?? sides[0]?.count ?? 1) : pagesPerPanel;
}

function viewFrom(view: readonly (number | null)[], side: number, sides: readonly SideSource[]): View {
  const count = sides[side]?.count ?? 0;
  return view.map((page): PageRef | null => {
    if (page === null) return null;
    if (page > count)
      throw descriptionFault(`sides[${side}].views`, page, t`the part has pages 1 to ${count}`);
    return { part: String(side), page };
  });
}

type Shape = Pick<Binding, 'kind' | 'pagesPerPanel'>;

/** By how many places the pages in view go on with a turn. */
function stepOf({ kind, pagesPerPanel }: Shape): number {
  return kind === 'ridge' ? pagesPerPanel : 2;
}

/** A book begins on the right. */
function before({ kind }: Shape): number {
  return kind === 'book' ? 1 : 0;
}

function leavesNeeded(
  { sides: described }: BookletDescription,
  sides: readonly SideSource[],
  shape: Shape,
): number {
  if (shape.kind === 'loose') return 0;
  const given = described.find(({ views }) => views !== null)?.views;
  if (given) return given.length - 1;
  const most = sides.reduce((count, side) => Math.max(count, side.count), 0) + before(shape);
  return Math.max(0, Math.ceil((most - pagesInView(shape)) / stepOf(shape)));
}

function inOrder(shape: Shape & Pick<Binding, 'leaves'>, side: number, count: number): View[] {
  const [step, places] = [stepOf(shape), pagesInView(shape)];
  const pages: View = [...Array<null>(before(shape)).fill(null), ...pagesOf(String(side), 1, count)];
  const room = step * shape.leaves + places;
  if (pages.length > room)
    throw descriptionFault(
      `sides[${side}].pages`,
      count,
      t`${shape.leaves} leaves have room for ${room - before(shape)}`,
    );
  return Array.from({ length: shape.leaves + 1 }, (_, state) =>
    Array.from({ length: places }, (__, place) => pages[state * step + place] ?? null),
  );
}

function refuseSpareCues({ cues }: BookletDescription, { leaves }: Binding): void {
  if (cues.length > leaves) throw descriptionFault('cues', cues, t`there are ${leaves} turns`);
}
