/** Pages of parts as forms of a new file: each page once, and what pages of one part share once. */

import { deflateSync } from 'node:zlib';
import {
  decodePDFRawStream,
  PDFArray,
  PDFDict,
  PDFName,
  PDFPageLeaf,
  PDFPageTree,
  PDFRawStream,
  PDFRef,
  type PDFContext,
  type PDFObject,
} from '@cantoo/pdf-lib';
import { damaged, inflated, tooMuchInside } from './part-pdf-guard.ts';
import type { OpenedPart, SourcePage } from './part-pdf.ts';

type Reference = PDFKit.PDFKitReference;

export class PartForms {
  readonly #copiers = new Map<OpenedPart, Copier>();
  readonly #known = new Map<SourcePage, Reference>();

  constructor(private readonly document: PDFKit.PDFDocument) {}

  /** Throws `FaultError`: the page is damaged, or holds too much. */
  formOf(part: OpenedPart, page: SourcePage): Reference {
    const known = this.#known.get(page);
    if (known) return known;
    const copier = this.#copiers.get(part) ?? new Copier(part.context, this.document);
    this.#copiers.set(part, copier);
    const form = this.#form(part, page, copier);
    this.#known.set(page, form);
    return form;
  }

  #form({ name }: OpenedPart, page: SourcePage, copier: Copier): Reference {
    const { bytes, packing } = contentOf(page, name);
    const entries = {
      ...packing,
      Resources: page.resources,
      Group: page.dictionary.get(PDFName.of('Group')),
    };
    try {
      const copies = copier.dictionary(Object.entries(entries));
      const form = this.document.ref({});
      endStream(form, { Type: 'XObject', Subtype: 'Form', BBox: [...page.box], ...copies }, bytes);
      return form;
    } catch {
      // Nested without end, or other than it should be.
      throw damaged(name);
    }
  }
}

/** Takes objects of one file over into another, each once. */
class Copier {
  readonly #known = new Map<PDFRef, Reference>();

  constructor(
    private readonly from: PDFContext,
    private readonly to: PDFKit.PDFDocument,
  ) {}

  dictionary(entries: Iterable<readonly [string, PDFObject | undefined]>): Record<string, unknown> {
    const copies: [string, unknown][] = [];
    for (const [key, object] of entries) if (object) copies.push([key, this.#copy(object)]);
    return Object.fromEntries(copies);
  }

  #copy(object: PDFObject): unknown {
    if (object instanceof PDFRef) return this.#reference(object);
    if (object instanceof PDFDict) return this.dictionary(entriesOf(object));
    if (object instanceof PDFArray) return object.asArray().map((item) => this.#copy(item));
    return new Written(object);
  }

  #reference(ref: PDFRef): Reference | null {
    const known = this.#known.get(ref);
    if (known) return known;
    const object = this.from.lookup(ref);
    // A page is no part of how another one looks, and would bring all pages with it.
    if (!object || object instanceof PDFPageLeaf || object instanceof PDFPageTree) return null;
    const reference = this.to.ref({});
    // Before what it holds is looked at, as objects may refer to one another in a circle.
    this.#known.set(ref, reference);
    if (object instanceof PDFRawStream)
      endStream(reference, this.dictionary(entriesOf(object.dict)), object.contents);
    else endWith(reference, this.#copy(object));
    return reference;
  }
}

function* entriesOf(dictionary: PDFDict): Generator<[string, PDFObject]> {
  for (const [key, object] of dictionary.entries()) yield [key.asString().slice(1), object];
}

/** Written out as the part's own file has it, to the last digit. */
class Written {
  readonly [Symbol.toStringTag] = 'Written';

  constructor(private readonly object: PDFObject) {}

  toString(): string {
    return this.object.toString();
  }
}

/** The bytes go in as they are: packed already, or left so. */
function endStream(reference: Reference, dictionary: Record<string, unknown>, bytes: Uint8Array): void {
  reference.compress = false;
  Object.assign(reference, { data: { ...dictionary, Length: 0 } });
  // Without any bytes it would be written as a dictionary.
  reference.end(bytes.length > 0 ? bytes : NEWLINE);
}

/** pdfkit writes whatever it refers to; its types know dictionaries alone. */
function endWith(reference: Reference, data: unknown): void {
  Object.assign(reference, { data });
  reference.end(undefined);
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
