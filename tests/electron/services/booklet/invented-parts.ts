/** Part PDFs made for the tests: pages that say their number, of any size, turned, cropped, scaled. */

import { degrees, PDFDocument, PDFName, PDFNumber, rgb, StandardFonts } from '@cantoo/pdf-lib';

export interface PartLook {
  readonly pages: number;
  /** Points. */
  readonly size?: readonly [number, number];
  readonly rotate?: 0 | 90 | 180 | 270;
  /** Cut off on each side, points. */
  readonly crop?: number;
  readonly userUnit?: number;
  /** Lower left corner of the media box. */
  readonly origin?: readonly [number, number];
  readonly staves?: number;
}

export const A4: readonly [number, number] = [595.276, 841.89];

/** Every page says "NAME page N" near its lower left corner as it is stored, and has a line along its foot. */
export async function partPdf(name: string, look: PartLook): Promise<Uint8Array> {
  const { pages, size = A4, rotate = 0, crop = 0, userUnit = 1, origin = [0, 0], staves = 0 } = look;
  const document = await PDFDocument.create({ updateMetadata: false });
  const font = await document.embedFont(StandardFonts.Helvetica);
  for (let number = 1; number <= pages; number++) {
    const page = document.addPage([size[0], size[1]]);
    page.setMediaBox(origin[0], origin[1], size[0], size[1]);
    page.setRotation(degrees(rotate));
    if (crop > 0) page.setCropBox(origin[0] + crop, origin[1] + crop, size[0] - 2 * crop, size[1] - 2 * crop);
    if (userUnit !== 1) page.node.set(PDFName.of('UserUnit'), PDFNumber.of(userUnit));
    page.drawText(`${name} page ${number}`, { x: origin[0] + 72, y: origin[1] + 144, size: 14, font });
    for (let staff = 0; staff < 5 * staves; staff++) {
      const y = origin[1] + 80 + staff * 6 + Math.floor(staff / 5) * 40;
      page.drawLine({
        start: { x: 40, y },
        end: { x: size[0] - 40, y },
        thickness: 0.5,
        color: rgb(0, 0, 0),
      });
      for (let note = 0; note < 40; note++)
        page.drawEllipse({ x: 50 + note * 12, y: y + ((note * 7 + number) % 9) * 2, xScale: 3, yScale: 2 });
    }
  }
  return document.save();
}
