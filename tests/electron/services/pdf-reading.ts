/** Two independent readers of the PDFs that are printed: pdf.js and poppler. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  getDocument,
  OPS,
  Util,
  type PDFDocumentProxy,
  type PDFPageProxy,
} from 'pdfjs-dist/legacy/build/pdf.mjs';

type Matrix = readonly [number, number, number, number, number, number];

/** A straight-sided or curved path as it lies on the page, in points, y upwards. */
export interface PageBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface PageText extends PageBox {
  readonly text: string;
  /** Font size in points. */
  readonly size: number;
}

export async function openPdf(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  // pdf.js takes over the buffer it is given.
  return getDocument({ data: bytes.slice(), isEvalSupported: false, verbosity: 0 }).promise;
}

/** The boxes of all paths of a page, each path's own, after every transformation. */
export async function pathBoxes(page: PDFPageProxy): Promise<PageBox[]> {
  const { fnArray, argsArray } = await page.getOperatorList();
  const boxes: PageBox[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  const stack: Matrix[] = [];
  fnArray.forEach((operator, index) => {
    const args: unknown = argsArray[index];
    if (operator === OPS.save) stack.push(matrix);
    else if (operator === OPS.restore) matrix = stack.pop() ?? [1, 0, 0, 1, 0, 0];
    else if (operator === OPS.transform)
      matrix = Util.transform([...matrix], [...(args as number[])]) as unknown as Matrix;
    else if (operator === OPS.constructPath) boxes.push(...boxesOf(args, matrix));
  });
  return boxes;
}

/** pdf.js packs a path as numbers: what to do (0 move, 1 line, 2 curve, 4 close), then the points it takes. */
const POINTS_OF: Readonly<Record<number, number>> = { 0: 1, 1: 1, 2: 3, 3: 2, 4: 0 };

function boxesOf(args: unknown, matrix: Matrix): PageBox[] {
  const [, [data]] = args as [number, [ArrayLike<number> | null]];
  if (!data) return [];
  const boxes: PageBox[] = [];
  let points: [number, number][] = [];
  const close = () => {
    if (points.length > 1) boxes.push(boxAround(points));
    points = [];
  };
  for (let at = 0; at < data.length;) {
    const step = data[at++] ?? 0;
    if (step === 0) close();
    for (let count = POINTS_OF[step] ?? 0; count > 0; count--) {
      const [x, y] = [data[at++] ?? 0, data[at++] ?? 0];
      points.push([matrix[0] * x + matrix[2] * y + matrix[4], matrix[1] * x + matrix[3] * y + matrix[5]]);
    }
  }
  close();
  return boxes;
}

function boxAround(points: readonly (readonly [number, number])[]): PageBox {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}

/** Every stretch of text with the box it takes on the page, from baseline to the height of its letters. */
export async function pageTexts(page: PDFPageProxy): Promise<PageText[]> {
  const { items } = await page.getTextContent({ disableNormalization: true });
  return items.flatMap((item) => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [a, b, c, d, e, f] = item.transform as unknown as Matrix;
    const size = Math.hypot(c, d);
    const [along, up] = [
      [(a / Math.hypot(a, b)) * item.width, (b / Math.hypot(a, b)) * item.width],
      [c * LETTER_HEIGHT, d * LETTER_HEIGHT],
    ] as const;
    const corners = [
      [e, f],
      [e + along[0], f + along[1]],
      [e + up[0], f + up[1]],
      [e + along[0] + up[0], f + along[1] + up[1]],
    ] as const;
    return [{ text: item.str, size, ...boxAround(corners) }];
  });
}

/** Of the font size: capitals and figures. */
const LETTER_HEIGHT = 0.67;

/** Pairs of texts on one page that have more than a hair in common. */
export function overlaps(page: readonly PageText[]): string[] {
  return page.flatMap((a, index) =>
    page.slice(index + 1).flatMap((b) => {
      const width = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
      const height = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
      return Math.min(width, height) < 0.2 ? [] : [`${a.text} | ${b.text}`];
    }),
  );
}

/** Runs one of poppler's programs on the bytes; null when poppler is not on this machine. */
export function poppler(
  program: 'pdfinfo' | 'pdffonts' | 'pdftotext',
  bytes: Uint8Array,
  ...options: string[]
): string | null {
  const folder = mkdtempSync(join(tmpdir(), 'standlines-pdf-'));
  try {
    const file = join(folder, 'plot.pdf');
    writeFileSync(file, bytes);
    return execFileSync(program, [...options, file, ...(program === 'pdftotext' ? ['-'] : [])], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
    });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
    console.warn(`NOT RUN: ${program} of poppler is not on this machine, so this check was left out.`);
    return null;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
