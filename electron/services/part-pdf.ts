/** The players' own parts as PDFs: how many pages, how large, and what is on them. */

import {
  PDFArray,
  PDFDict,
  PDFDocument,
  PDFName,
  PDFNumber,
  type PDFContext,
  type PDFObject,
} from '@cantoo/pdf-lib';
import { t } from '#model/words/say.ts';
import { FaultError } from './faults.ts';
import { damaged, guardPdf, tooMuchInside } from './part-pdf-guard.ts';

export interface PartPage {
  /** As it is looked at: turned, cropped and scaled as the file says. Millimetres. */
  readonly width: number;
  readonly height: number;
}

export interface PartPdf {
  readonly pages: readonly PartPage[];
  /** What is in the file and will not be printed. */
  readonly notes: readonly string[];
}

/** A page of a part with what it takes to place it on another sheet. */
export interface SourcePage extends PartPage {
  readonly dictionary: PDFDict;
  readonly resources: PDFObject | undefined;
  /** What is seen of it, in its own units: left, bottom, right, top. */
  readonly box: Box4;
  /** There is more on the page than is seen. */
  readonly cropped: boolean;
  /** Clockwise, degrees. */
  readonly rotate: 0 | 90 | 180 | 270;
  /** Points in one of its own units. */
  readonly unit: number;
}

export interface OpenedPart extends PartPdf {
  readonly name: string;
  readonly context: PDFContext;
  readonly pages: readonly SourcePage[];
}

export type Box4 = readonly [number, number, number, number];

/** Pages and their sizes, of a PDF as its file holds it. Throws `FaultError` with one clear sentence. */
export async function readPartPdf(bytes: Uint8Array, name: string): Promise<PartPdf> {
  const { pages, notes } = await openPartPdf(bytes, name);
  return { pages: pages.map(({ width, height }) => ({ width, height })), notes };
}

/** The same, with its pages ready to be placed. Throws `FaultError`. */
export async function openPartPdf(bytes: Uint8Array, name: string): Promise<OpenedPart> {
  guardPdf(bytes, name);
  const document = await parsed(bytes, name);
  try {
    const pages = pagesOf(document, name);
    if (pages.length === 0) throw new FaultError('pdf.noPages', t`"${name}" has no pages.`);
    return { name, context: document.context, pages, notes: annotationNotes(pages, name) };
  } catch (error) {
    if (error instanceof FaultError) throw error;
    // The library throws errors of many kinds, on first touch, at whatever is not as it should be.
    throw damaged(name);
  }
}

async function parsed(bytes: Uint8Array, name: string): Promise<PDFDocument> {
  const document = await PDFDocument.load(bytes, {
    updateMetadata: false,
    parseSpeed: Infinity,
    // Tried only on what is encrypted: files that anybody may open have the empty password.
    password: '',
  }).catch((error: unknown) => {
    throw lockedBy(error) ? locked(name) : damaged(name);
  });
  if (document.isEncrypted) throw locked(name);
  return document;
}

function lockedBy(error: unknown): boolean {
  return error instanceof Error && /password|encrypt/i.test(error.message);
}

function locked(name: string): FaultError {
  return new FaultError(
    'pdf.locked',
    t`"${name}" is locked with a password: save it without one and choose it again.`,
  );
}

const MOST_PAGES = 1000;
/** Of the tree of pages; a file may make it a circle. */
const DEEPEST = 50;

/** What a page takes over from the branches above it. */
interface Inherited {
  readonly resources: PDFObject | undefined;
  readonly mediaBox: PDFObject | undefined;
  readonly cropBox: PDFObject | undefined;
  readonly rotate: PDFObject | undefined;
}

function pagesOf(document: PDFDocument, name: string): SourcePage[] {
  const pages: SourcePage[] = [];
  const seen = new Set<PDFDict>();
  const walk = (node: PDFDict, above: Inherited, depth: number): void => {
    if (seen.has(node) || depth > DEEPEST) throw damaged(name);
    seen.add(node);
    const here = inheritedBy(node, above);
    const kids = node.lookup(PDFName.of('Kids'));
    if (!(kids instanceof PDFArray)) pages.push(sourcePage(node, here));
    else for (let index = 0; index < kids.size(); index++) walk(kids.lookup(index, PDFDict), here, depth + 1);
    if (pages.length > MOST_PAGES) throw tooMuchInside(name);
  };
  const root = document.catalog.lookup(PDFName.of('Pages'), PDFDict);
  const nothing = { resources: undefined, mediaBox: undefined, cropBox: undefined, rotate: undefined };
  walk(root, nothing, 0);
  return pages;
}

function inheritedBy(node: PDFDict, above: Inherited): Inherited {
  const own = (key: string): PDFObject | undefined => node.lookup(PDFName.of(key));
  return {
    // As a reference where it is one, so that what pages share is copied once.
    resources: node.get(PDFName.of('Resources')) ?? above.resources,
    mediaBox: own('MediaBox') ?? above.mediaBox,
    cropBox: own('CropBox') ?? above.cropBox,
    rotate: own('Rotate') ?? above.rotate,
  };
}

/** What readers take where a file says nothing: 8.5 x 11 in (from memory). */
const USUAL_BOX: Box4 = [0, 0, 612, 792];
const POINTS_PER_MM = 72 / 25.4;

function sourcePage(dictionary: PDFDict, { resources, mediaBox, cropBox, rotate }: Inherited): SourcePage {
  const media = boxOf(mediaBox) ?? USUAL_BOX;
  const box = common(media, boxOf(cropBox) ?? media) ?? media;
  const unit = positive(dictionary.lookup(PDFName.of('UserUnit'))) ?? 1;
  const turned = quarterTurns(rotate);
  const millimetres = (length: number): number => (length * unit) / POINTS_PER_MM;
  const [across, along] = [millimetres(box[2] - box[0]), millimetres(box[3] - box[1])];
  const [width, height] = turned === 90 || turned === 270 ? [along, across] : [across, along];
  const cropped = box.some((edge, index) => Math.abs(edge - (media[index] ?? edge)) > 0.5);
  return { dictionary, resources, box, cropped, rotate: turned, unit, width, height };
}

/** The corners may be given in any order; null: that is no box with an area. */
function boxOf(object: PDFObject | undefined): Box4 | null {
  if (!(object instanceof PDFArray) || object.size() !== 4) return null;
  const [a = NaN, b = NaN, c = NaN, d = NaN] = [0, 1, 2, 3].map((index) => {
    const value = object.lookup(index);
    return value instanceof PDFNumber ? value.asNumber() : NaN;
  });
  return areaOf([Math.min(a, c), Math.min(b, d), Math.max(a, c), Math.max(b, d)]);
}

function common(a: Box4, b: Box4): Box4 | null {
  return areaOf([Math.max(a[0], b[0]), Math.max(a[1], b[1]), Math.min(a[2], b[2]), Math.min(a[3], b[3])]);
}

function areaOf(box: Box4): Box4 | null {
  return box.every(Number.isFinite) && box[2] > box[0] && box[3] > box[1] ? box : null;
}

function positive(object: PDFObject | undefined): number | null {
  const value = object instanceof PDFNumber ? object.asNumber() : NaN;
  return value > 0 && Number.isFinite(value) ? value : null;
}

function quarterTurns(object: PDFObject | undefined): SourcePage['rotate'] {
  const angle = object instanceof PDFNumber ? object.asNumber() : 0;
  const turned = ((angle % 360) + 360) % 360;
  return turned === 90 || turned === 180 || turned === 270 ? turned : 0;
}

/** Links are nothing to print; notes and strokes of a pen would be missed. */
const UNSEEN_ANNOTATIONS: ReadonlySet<string> = new Set(['/Link', '/Popup']);

function annotationNotes(pages: readonly SourcePage[], name: string): string[] {
  const marked = pages.flatMap(({ dictionary }, index) => (hasAnnotations(dictionary) ? [index + 1] : []));
  if (marked.length === 0) return [];
  const [first = 0] = marked;
  return [
    marked.length === 1
      ? t`"${name}" has notes or pen strokes laid over page ${first}: they are not printed. Print the part to a PDF with them first.`
      : t`"${name}" has notes or pen strokes laid over ${marked.length} pages, first on page ${first}: they are not printed. Print the part to a PDF with them first.`,
  ];
}

function hasAnnotations(page: PDFDict): boolean {
  const list = page.lookup(PDFName.of('Annots'));
  if (!(list instanceof PDFArray)) return false;
  return Array.from({ length: list.size() }, (_, index) => list.lookup(index)).some((each) => {
    const subtype = each instanceof PDFDict ? each.lookup(PDFName.of('Subtype')) : undefined;
    return subtype instanceof PDFName && !UNSEEN_ANNOTATIONS.has(subtype.asString());
  });
}
