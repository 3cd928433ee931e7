/**
 * Pages of a part's PDF as pictures. All that draws them comes with the program: the worker, the fonts that every PDF
 * may use without holding them, and what unpacks scans (JPEG 2000, JBIG2). Fonts of the file are drawn as outlines, so
 * that none is loaded into the window.
 */

import type { PDFDocumentProxy, RenderTask } from 'pdfjs-dist';
import Worker from 'pdfjs-dist/build/pdf.worker.min.mjs?worker';

export interface PdfPages {
  readonly count: number;
  /** Of a page (from 1), as it is looked at, in points. */
  sizeOf(page: number): Promise<{ readonly width: number; readonly height: number }>;
  /** Draws a page (from 1) as wide as the canvas is to be, in its own pixels. False: that page cannot be drawn. */
  draw(page: number, canvas: HTMLCanvasElement, width: number): Promise<boolean>;
  close(): void;
}

const FONTS = import.meta.glob<string>('../../../node_modules/pdfjs-dist/standard_fonts/*.{pfb,ttf}', {
  query: '?url',
  import: 'default',
  eager: true,
});

/** The library has JBIG2 in no other form; JPEG 2000 goes the same way. */
const UNPACKERS = import.meta.glob<string>('../../../node_modules/pdfjs-dist/wasm/{jbig2,openjpeg}.wasm', {
  query: '?url',
  import: 'default',
  eager: true,
});

const SHIPPED: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  standardFontDataUrl: FONTS,
  wasmUrl: UNPACKERS,
};

/** Gives the worker files under the names that the build has given them. */
class ShippedFiles {
  async fetch({ kind, filename }: { readonly kind: string; readonly filename: string }): Promise<Uint8Array> {
    const files = Object.entries(SHIPPED[kind] ?? {});
    const address = files.find(([path]) => path.endsWith(`/${filename}`))?.[1];
    if (address === undefined) throw new Error(`${filename} does not come with the program`);
    return new Uint8Array(await (await fetch(address)).arrayBuffer());
  }
}

/** Throws when it is no PDF that can be shown; the shell has looked it over before. */
export async function openPdfPages(bytes: Uint8Array): Promise<PdfPages> {
  const pdfjs = await import('pdfjs-dist');
  const port = new Worker();
  const worker = pdfjs.PDFWorker.create({ port });
  const loading = pdfjs.getDocument({
    data: bytes,
    worker,
    isEvalSupported: false,
    useWorkerFetch: false,
    disableFontFace: true,
    useSystemFonts: false,
    enableXfa: false,
    BinaryDataFactory: ShippedFiles,
    verbosity: pdfjs.VerbosityLevel.ERRORS,
  });
  const close = (): void => {
    void loading.destroy().finally(() => {
      worker.destroy();
      port.terminate();
    });
  };
  try {
    const document = await loading.promise;
    const draw = drawing(document, pdfjs.AnnotationMode.DISABLE);
    const sizeOf = async (page: number) => (await document.getPage(page)).getViewport({ scale: 1 });
    return { count: document.numPages, sizeOf, draw, close };
  } catch (error) {
    close();
    throw error;
  }
}

/** Without notes that somebody put on top, for these are not printed either. */
function drawing(document: PDFDocumentProxy, annotationMode: number): PdfPages['draw'] {
  const running = new WeakMap<HTMLCanvasElement, RenderTask>();
  return async (number, canvas, width) => {
    running.get(canvas)?.cancel();
    try {
      const page = await document.getPage(number);
      const own = page.getViewport({ scale: 1 });
      const viewport = page.getViewport({ scale: width / own.width });
      canvas.width = Math.round(viewport.width);
      canvas.height = Math.round(viewport.height);
      const task = page.render({ canvas, viewport, annotationMode });
      running.set(canvas, task);
      await task.promise;
      return true;
    } catch (error) {
      // Another picture was asked for on the same canvas meanwhile.
      return error instanceof Error && error.name === 'RenderingCancelledException';
    }
  };
}
