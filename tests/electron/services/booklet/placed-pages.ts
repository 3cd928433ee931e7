/** Reads with pdf.js where the pages of parts came to lie on the sheets of a booklet: every form that is painted. */

import { OPS, Util, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

type Matrix = [number, number, number, number, number, number];

export interface PlacedForm {
  /** On the sheet, points, y upwards. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly matrix: Matrix;
}

export async function placedForms(page: PDFPageProxy): Promise<PlacedForm[]> {
  const { fnArray, argsArray } = await page.getOperatorList();
  const found: PlacedForm[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  const stack: Matrix[] = [];
  fnArray.forEach((operator, index) => {
    const args = argsArray[index] as unknown[];
    if (operator === OPS.save) stack.push(matrix);
    else if (operator === OPS.restore) matrix = stack.pop() ?? [1, 0, 0, 1, 0, 0];
    else if (operator === OPS.transform) matrix = Util.transform(matrix, args as number[]) as Matrix;
    else if (operator === OPS.paintFormXObjectBegin) found.push(placed(matrix, args[1] as ArrayLike<number>));
  });
  return found;
}

function placed(matrix: Matrix, box: ArrayLike<number>): PlacedForm {
  const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = Array.from(box);
  const [a, b, c, d, e, f] = matrix;
  const corners = [
    [x0, y0],
    [x1, y1],
  ].map(([x = 0, y = 0]) => [a * x + c * y + e, b * x + d * y + f] as const);
  const [p, q] = corners as [readonly [number, number], readonly [number, number]];
  return {
    x: Math.min(p[0], q[0]),
    y: Math.min(p[1], q[1]),
    width: Math.abs(p[0] - q[0]),
    height: Math.abs(p[1] - q[1]),
    matrix,
  };
}

/** Degrees anticlockwise by which the page's text is turned on the sheet. */
export function turnOf({ matrix: [a, b] }: PlacedForm): number {
  return (Math.round((Math.atan2(b, a) * 180) / Math.PI) + 360) % 360;
}
