/** Places pages of parts on printed sheets, at their true size, under what is drawn there. */

import { deflateSync } from 'node:zlib';
import {
  decodePDFRawStream,
  PDFArray,
  PDFDocument,
  PDFName,
  PDFObjectCopier,
  PDFRawStream,
  type PDFContext,
  type PDFObject,
  type PDFPage,
  type PDFRef,
} from '@cantoo/pdf-lib';
import { damaged, inflated, tooMuchInside } from './part-pdf-guard.ts';
import type { OpenedPart, SourcePage } from './part-pdf.ts';

export interface Placement {
  /** Index of the sheet. */
  readonly sheet: number;
  readonly part: OpenedPart;
  /** Index of the page in the part's PDF. */
  readonly page: number;
  /** Where the top left corner of the page's area on the sheet comes to lie, mm from the sheet's top left corner. */
  readonly x: number;
  readonly y: number;
  /** Standing on its head. */
  readonly turned: boolean;
}

/** `a b c d e f`: x' = ax + cy + e, y' = bx + dy + f. Points, y upwards. */
export type Matrix = readonly [number, number, number, number, number, number];

const POINTS_PER_MM = 72 / 25.4;

/** The sheets with the pages on them. Throws `FaultError` when a page cannot be taken over. */
export async function imposePages(sheets: Uint8Array, placements: readonly Placement[]): Promise<Uint8Array> {
  const document = await PDFDocument.load(sheets, { updateMetadata: false, parseSpeed: Infinity });
  const forms = new Forms(document.context);
  const pages = document.getPages();
  for (const [index, page] of pages.entries()) {
    const onThis = placements.filter(({ sheet }) => sheet === index);
    if (onThis.length > 0) underlay(page, onThis, forms);
  }
  return document.save({
    addDefaultPage: false,
    updateFieldAppearances: false,
    objectsPerTick: Infinity,
    useObjectStreams: false,
  });
}

/** The map from a page's own units to a sheet of `sheetHeight` points, at scale 1. */
export function placingMatrix(
  page: SourcePage,
  at: Omit<Placement, 'part' | 'page' | 'sheet'>,
  sheetHeight: number,
): Matrix {
  const [width, height] = [page.width * POINTS_PER_MM, page.height * POINTS_PER_MM];
  const [left, bottom] = [at.x * POINTS_PER_MM, sheetHeight - at.y * POINTS_PER_MM - height];
  const [a, b, c, d, e, f] = uprightMatrix(page);
  return at.turned
    ? [-a, -b, -c, -d, left + width - e, bottom + height - f]
    : [a, b, c, d, left + e, bottom + f];
}

/** To points from the bottom left of the page as it is looked at. */
function uprightMatrix({ box: [x0, y0, x1, y1], rotate, unit: u }: SourcePage): Matrix {
  switch (rotate) {
    case 0:
      return [u, 0, 0, u, -u * x0, -u * y0];
    case 90:
      return [0, -u, u, 0, -u * y0, u * x1];
    case 180:
      return [-u, 0, 0, -u, u * x1, u * y1];
    case 270:
      return [0, u, -u, 0, u * y1, -u * x0];
  }
}

/** Draws before everything that is on the sheet already, and leaves no trace in its graphics state. */
function underlay(page: PDFPage, placements: readonly Placement[], forms: Forms): void {
  const { context } = page.doc;
  const names = placements.map((_, index) => `Part${index}`);
  const drawing = placements.map(({ part, page: index, ...at }, order) => {
    const source = sourceOf(part, index);
    page.node.setXObject(PDFName.of(names[order] ?? ''), forms.formOf(part, source));
    const matrix = placingMatrix(source, at, page.getHeight()).map(decimal).join(' ');
    return `q ${matrix} cm /${names[order]} Do Q`;
  });
  // Marked as an artifact: what it shows is told by the words on the sheet.
  // A few dozen bytes: packing them would take longer than writing them.
  const content = context.stream(`/Artifact BMC\n${drawing.join('\n')}\nEMC\n`);
  const before = page.node.normalizedEntries().Contents;
  const contents = context.obj([context.register(content)]);
  for (let index = 0; before && index < before.size(); index++) contents.push(before.get(index));
  page.node.set(PDFName.Contents, contents);
}

function sourceOf(part: OpenedPart, page: number): SourcePage {
  const source = part.pages[page];
  if (!source) throw new Error(`"${part.name}" has no page ${page}`);
  return source;
}

/** Enough digits for a hundredth of a point on any sheet, and never in powers of ten, which PDF does not know. */
function decimal(value: number): string {
  return value.toFixed(6).replace(/\.?0+$/, '');
}

/** Pages as forms of the new file: each page once, and what pages of one part share once. */
class Forms {
  readonly #copiers = new Map<OpenedPart, PDFObjectCopier>();
  readonly #known = new Map<SourcePage, PDFRef>();

  constructor(private readonly context: PDFContext) {}

  formOf(part: OpenedPart, page: SourcePage): PDFRef {
    const known = this.#known.get(page);
    if (known) return known;
    const copier = this.#copiers.get(part) ?? PDFObjectCopier.for(part.context, this.context);
    this.#copiers.set(part, copier);
    const form = this.context.register(this.#form(part, page, copier));
    this.#known.set(page, form);
    return form;
  }

  #form({ name }: OpenedPart, page: SourcePage, copier: PDFObjectCopier): PDFRawStream {
    const { bytes, packing } = contentOf(page, name);
    const entries = new Map<PDFName, PDFObject>();
    const keep = (key: string, object: PDFObject | undefined): void => {
      if (object) entries.set(PDFName.of(key), copied(object, copier, name));
    };
    for (const [key, object] of Object.entries(packing)) keep(key, object);
    keep('Resources', page.resources);
    keep('Group', page.dictionary.get(PDFName.of('Group')));
    const form = this.context.obj({ Type: 'XObject', Subtype: 'Form', BBox: [...page.box] });
    for (const [key, object] of entries) form.set(key, object);
    return PDFRawStream.of(form, bytes);
  }
}

function copied(object: PDFObject, copier: PDFObjectCopier, name: string): PDFObject {
  try {
    return copier.copy(object);
  } catch (error) {
    // Nested without end, or other than it should be.
    if (error instanceof RangeError || error instanceof Error) throw damaged(name);
    throw error;
  }
}

interface Content {
  readonly bytes: Uint8Array;
  /** How they are packed: `Filter` and `DecodeParms`, as in the part. */
  readonly packing: Readonly<Record<string, PDFObject | undefined>>;
}

/** One stream is taken as it is, without unpacking. Several have to be joined, as they are one program cut anywhere. */
function contentOf({ dictionary }: SourcePage, name: string): Content {
  const contents = dictionary.lookup(PDFName.Contents);
  if (contents instanceof PDFRawStream) return asItIs(contents);
  if (!(contents instanceof PDFArray)) return { bytes: new Uint8Array(), packing: {} };
  const streams = Array.from({ length: contents.size() }, (_, index) => contents.lookup(index));
  const raw = streams.filter((stream) => stream instanceof PDFRawStream);
  const [only] = raw;
  if (only && raw.length === 1) return asItIs(only);
  return { bytes: deflateSync(joined(raw, name)), packing: { Filter: PDFName.of('FlateDecode') } };
}

function asItIs(stream: PDFRawStream): Content {
  const get = (key: string) => stream.dict.get(PDFName.of(key));
  return { bytes: stream.contents, packing: { Filter: get('Filter'), DecodeParms: get('DecodeParms') } };
}

/** Of one page, unpacked. */
const MOST_CONTENT = 64 * 1024 * 1024;
/** Packed in a way that only the library can unpack, without a limit of its own. */
const MOST_ODD_CONTENT = 512 * 1024;

function joined(streams: readonly PDFRawStream[], name: string): Buffer {
  const pieces: Uint8Array[] = [];
  let left = MOST_CONTENT;
  for (const stream of streams) {
    const piece = unpacked(stream, left, name);
    left -= piece.length;
    pieces.push(piece, NEWLINE);
  }
  return Buffer.concat(pieces);
}

const NEWLINE = Uint8Array.of(10);

function unpacked(stream: PDFRawStream, most: number, name: string): Uint8Array {
  const filter = stream.dict.lookup(PDFName.of('Filter'));
  const plain = stream.dict.lookup(PDFName.of('DecodeParms')) === undefined;
  try {
    if (filter === undefined) return stream.contents;
    if (filter === PDFName.of('FlateDecode') && plain) return inflated(stream.contents, most);
    if (stream.contents.length > MOST_ODD_CONTENT) throw new RangeError('too much to unpack');
    return decodePDFRawStream(stream).decode();
  } catch (error) {
    throw error instanceof RangeError ? tooMuchInside(name) : damaged(name);
  }
}
