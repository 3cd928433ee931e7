/** Sheets as a PDF: vectors and embedded fonts only. It translates; no size, colour or position is born here. */

import { once } from 'node:events';
import { Writable } from 'node:stream';
import { setImmediate as nextTurn } from 'node:timers/promises';
import PDFDocument from 'pdfkit';
import type { Box, PathPrimitive, Primitive, Sheet, TextPrimitive } from '#model/drawing/primitives.ts';
import { createMeasure, loadFaces, runWidth, setRuns, type Face, type Faces } from './fonts.ts';
import { startBookmarks } from './pdf-bookmarks.ts';
import { escapeMetadata } from './pdf-metadata.ts';
import { startStructure } from './pdf-structure.ts';

export interface PdfMeta {
  readonly title: string;
  readonly author: string;
  /** Written into the file; with the sheets it decides every byte. */
  readonly created: Date;
  /** Language of the sheets, as a tag: "en". */
  readonly language: string;
}

export interface PaintedSheets {
  readonly sheets: number;
  /** Characters that no font has, each once; they were printed as boxes. */
  readonly missingGlyphs: readonly string[];
}

export interface PaintedPdf extends PaintedSheets {
  readonly bytes: Uint8Array;
}

const POINTS_PER_MM = 72 / 25.4;

/** Draws on a page that is still empty; `sheet` is its index. */
export type Underlay = (document: PDFKit.PDFDocument, sheet: number) => void;

/** One page a sheet, each exactly as large as its sheet. The same sheets and meta give the same bytes. */
export async function paintPdf(
  sheets: Iterable<Sheet>,
  meta: PdfMeta,
  underlay?: Underlay,
): Promise<PaintedPdf> {
  const chunks: Uint8Array[] = [];
  const sink = new Writable({
    write: (chunk: Uint8Array, _, done) => {
      chunks.push(chunk);
      done();
    },
  });
  const painted = await paintPdfTo(sink, sheets, meta, underlay);
  return { ...painted, bytes: new Uint8Array(Buffer.concat(chunks)) };
}

/**
 * The same into a stream, sheet after sheet: each is taken when the one before has been handed on, and none is kept. Rejects
 * with whatever the sheets or the stream throw; what has been written by then is no whole file.
 */
export async function paintPdfTo(
  sink: Writable,
  sheets: Iterable<Sheet> | AsyncIterable<Sheet>,
  meta: PdfMeta,
  underlay?: Underlay,
): Promise<PaintedSheets> {
  const faces = loadFaces();
  const document = openDocument(faces, meta);
  const pipe = startPipe(document, sink);
  const structure = startStructure(document, createMeasure(faces));
  const bookmarks = startBookmarks(document);
  const painter = new Painter(document, faces);
  let count = 0;
  for await (const sheet of sheets) {
    document.addPage({ size: [points(sheet.width), points(sheet.height)], margin: 0 });
    underlay?.(document, count);
    bookmarks.add(sheet);
    structure.sheet(sheet, (primitive) => painter.paint(primitive));
    count += 1;
    await pipe.handedOn();
  }
  structure.end();
  document.end();
  await pipe.finished;
  return { sheets: count, missingGlyphs: [...painter.missing] };
}

/** What pdfkit has made goes on to the sink; whoever makes more waits until that has room again. */
function startPipe(document: Pdf, sink: Writable) {
  const finished = once(sink, 'finish');
  // Looked at where it is awaited; a fault must not count as unhandled until then.
  finished.catch(() => undefined);
  document.pipe(sink);
  return {
    finished,
    handedOn: async (): Promise<void> => {
      // Only between turns of the event loop does a stream hand on what it has, and only then is anybody else heard.
      await nextTurn();
      if (sink.errored) throw sink.errored;
      if (sink.writableNeedDrain) await once(sink, 'drain');
    },
  };
}

type Pdf = PDFKit.PDFDocument;

function openDocument(faces: Faces, meta: PdfMeta): Pdf {
  const document = new PDFDocument({
    autoFirstPage: false,
    pdfVersion: '1.7',
    lang: meta.language,
    tagged: true,
    subset: 'PDF/UA' as unknown as 'PDF/A-1',
    displayTitle: true,
    info: {
      Title: meta.title,
      Author: meta.author,
      Creator: 'Standlines',
      Producer: 'Standlines',
      CreationDate: meta.created,
    },
    // Otherwise pdfkit would begin with a standard font that cannot be embedded.
    font: fontSource(faces.regular[0]),
  });
  for (const face of [...faces.regular, ...faces.bold]) document.registerFont(face.name, fontSource(face));
  escapeMetadata(document);
  return document;
}

/** pdfkit takes a font that fontkit has opened; its types know only files and bytes. */
function fontSource(face: Face): string {
  return face.font as unknown as string;
}

function points(millimetres: number): number {
  return millimetres * POINTS_PER_MM;
}

class Painter {
  readonly missing = new Set<string>();

  constructor(
    private readonly document: Pdf,
    private readonly faces: Faces,
  ) {}

  paint(primitive: Primitive): void {
    if (primitive.kind === 'path') this.paintPath(primitive);
    else if (primitive.kind === 'text') this.paintText(primitive);
    else if (primitive.role !== undefined) this.paintLines(primitive.children);
    else this.paintGroup(primitive.children, primitive.clip);
  }

  private paintGroup(children: readonly Primitive[], clip: Box | undefined): void {
    if (clip) this.startClip(clip);
    for (const child of children) this.paint(child);
    if (clip) this.document.restore();
  }

  /** Lines of one passage: whoever hears them or copies them gets a blank between one and the next. */
  private paintLines(children: readonly Primitive[]): void {
    const last = children.findLastIndex(({ kind }) => kind === 'text');
    children.forEach((child, index) => {
      this.paint(child);
      if (child.kind === 'text' && index < last) this.paintBlank(child);
    });
  }

  private paintBlank({ x, y, size, weight }: TextPrimitive): void {
    const { document, faces } = this;
    document.fontSize(points(size)).font(faces[weight][0].name);
    document.text(' ', points(x), points(y), { lineBreak: false, baseline: 'alphabetic' });
  }

  private startClip({ x, y, width, height }: Box): void {
    this.document.save();
    this.document.rect(points(x), points(y), points(width), points(height)).clip();
  }

  private paintPath({ path, fill, stroke }: PathPrimitive): void {
    if (path.length === 0 || (!fill && !stroke)) return;
    const { document } = this;
    if (stroke) this.setPen(stroke.width, stroke.dash);
    for (const item of path) this.trace(item);
    if (fill && stroke) document.fillAndStroke(fill, stroke.colour);
    else if (fill) document.fill(fill);
    else if (stroke) document.stroke(stroke.colour);
  }

  private setPen(width: number, dash: readonly number[] | undefined): void {
    const { document } = this;
    document.lineWidth(points(width)).lineCap('round').lineJoin('round');
    // The types know one dash length; pdfkit takes the whole pattern.
    if (dash) document.dash(dash.map(points) as unknown as number, {});
    else document.undash();
  }

  private trace(item: PathPrimitive['path'][number]): void {
    const { document } = this;
    if (item[0] === 'M') document.moveTo(points(item[1]), points(item[2]));
    else if (item[0] === 'L') document.lineTo(points(item[1]), points(item[2]));
    else if (item[0] === 'Z') document.closePath();
    else {
      const [, x1, y1, x2, y2, x, y] = item;
      document.bezierCurveTo(points(x1), points(y1), points(x2), points(y2), points(x), points(y));
    }
  }

  private paintText({ text, x, y, size, weight, anchor, colour, turn }: TextPrimitive): void {
    const { document } = this;
    const { runs, missing } = setRuns(this.faces, text, weight);
    for (const character of missing) this.missing.add(character);
    const widths = runs.map((run) => runWidth(run) * size);
    const whole = widths.reduce((sum, width) => sum + width, 0);
    let at = anchor === 'start' ? x : anchor === 'middle' ? x - whole / 2 : x - whole;
    if (turn) document.save().rotate(turn, { origin: [points(x), points(y)] });
    document.fillColor(colour).fontSize(points(size));
    runs.forEach((run, index) => {
      document
        .font(run.face.name)
        .text(run.text, points(at), points(y), { lineBreak: false, baseline: 'alphabetic' });
      at += widths[index] ?? 0;
    });
    if (turn) document.restore();
  }
}
